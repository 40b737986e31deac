"""In Par/Bogey the total is the score against the target (Rule 21.3): board, sheet and list tell it once, with its sign."""

from pathlib import Path

from marram.course import load
from marram.demo import COURSE, EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from marram.paper.sheet import Table
from marram.schema import read_json
from marram.services.sheets.event_papers import SheetName
from marram.services.sheets.event_papers_kept import papers_of_records
from tests.desk.asking import TestClient
from tests.services.scoring import PARS, scoring


def test_one_column_tells_the_holes_up_or_down(tmp_path: Path) -> None:
    """Three birdies and a bogey, all others par: 3 won, 1 lost, so 2 up (+2)."""
    event = {
        **read_json(EVENT, "event"),
        "form_of_play": "par_bogey",
        "scores": ["gross"],
        "results_public": True,
    }
    with scoring(tmp_path, event) as there:
        competition = there.competition
        side, name = next(iter(competition.labels.items()))
        scores = tuple(par - 1 if at < 3 else par + (at == 3) for at, par in enumerate(PARS))
        there.whole((side, competition.rounds[0].id), scores)

        sheet = papers_of_records(there.records, None, course=load(COURSE), round_=1).sheet(
            SheetName("results")
        )
        desk = TestClient(create_app(kept_here=keep_here(there.records)), follow_redirects=False)
        board = desk.get("/results").text

    table = next(one for one in sheet.parts if isinstance(one, Table))
    row = next(one for one in table.rows if one[1].words == name)
    assert [one.words for one in row] == ["1", name, "+2"]
    assert '<td class="number against">+2</td>' in board
    head = board[board.index("<thead>") : board.index("</thead>")]
    assert ">Total</th>" not in head
