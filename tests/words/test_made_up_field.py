"""The pages of entries and draw speak the reader's language, but for names of people and clubs, and what a list holds."""

from pathlib import Path

from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from tests.desk.asking import TestClient
from tests.desk.test_draw import ASKED
from tests.desk.test_entries import fields, take, upload
from tests.services.scoring import scoring
from tests.words.made_up import speaking
from tests.words.outside import names_of
from tests.words.unmarked import seen_in, unmarked

BAD = "Name;Vorgabe;Heimat\nAda Quill;eleven;Reedham\nBo Sund;2,0;Reedham\nBo Sund;2,0;Reedham\n"


def test_entries_and_draw_say_nothing_of_their_own(tmp_path: Path, locales: Path) -> None:
    """A list with faults and one without, the field with lots and a withdrawal, wishes that clash, groups, and what changed."""
    with scoring(tmp_path) as found, speaking(locales):
        kept = keep_here(found.records)
        desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
        bad = upload(desk, BAD).text
        good = upload(desk, "Name;Heimat\nAda Quill;Reedham\n").text
        take(desk, good)
        clash = desk.post("/draw", data={**ASKED, "wishes": "apart: Ada Quill, Bo"}).text
        page = desk.post("/draw", data={**ASKED, "places": "4"}).text
        desk.post("/draw/keep", data=fields(page))
        desk.post(
            "/published", data={"what": "starting_times", "round": "2", "tapped": fields(page)["tapped"]}
        )
        player = next(who for who, name in kept.names().items() if name == "Ada Quill")
        gone = {"person": player, "tapped": fields(good)["tapped"].replace("4", "5")}
        desk.post("/entries/withdraw", data=gone)
        people = {*kept.names().values(), kept.event.name, *kept.event.rounds.values(), "Bo Sund"}
        names = (
            people
            | names_of(desk.app.state.workplace.course)
            | {"Reedham", "Heimat", "Vorgabe", "Name", "eleven", "UTF-8", "apart: Ada Quill, Bo", "Bo"}
        )  # type: ignore[attr-defined]
        later = [desk.get(one).text for one in ("/entries", "/draw?round=2")]
        for at, shown in enumerate((bad, good, clash, page, *later)):
            assert unmarked(seen_in(shown), names) == set(), at
