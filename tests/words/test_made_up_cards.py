"""The pages of cards and results speak the reader's language, but for names of people and clubs."""

from pathlib import Path

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from marram.records.entry import new_ident
from marram.schema import read_json
from tests.desk.asking import TestClient
from tests.desk.test_cards import SCORES, bring_in, card_of, fill
from tests.services.scoring import scoring
from tests.services.test_card_log import MOVED, _ruling
from tests.words.made_up import speaking
from tests.words.outside import names_of
from tests.words.unmarked import seen_in, unmarked


def test_cards_and_results_say_nothing_of_their_own(tmp_path: Path, locales: Path) -> None:
    """An open card with a ruling beside it, one with a question, the list, the boards, why, and the close."""
    base = read_json(EVENT, "event")
    players = [{**one, "playing_handicap": 6} for one in base["players"]]
    event = {**base, **SCORES, "scores": ["gross", "net"], "players": players}
    with scoring(tmp_path, event) as found, speaking(locales):
        kept = keep_here(found.records)
        desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
        round_ = kept.round_on(kept.event.played_on)  # type: ignore[arg-type]
        assert round_
        one, other = card_of(kept), card_of(kept, "Maris Quillan-Roe")
        kept.add(_ruling((one.rpartition("/")[2], round_.id), 14, "ball_moved_by_player", MOVED))
        fill(desk, one, **{"marker-7": "5"})
        fill(desk, other)
        bring_in(desk, other, marker_certified="false")
        desk.post("/published", data={"what": "starting_times", "tapped": new_ident()})
        (listed,) = kept.log.entries(kept.event_id, kind="list_published")
        published = listed.content["digest"]
        why = f"/results/why?side={other.rpartition('/')[2]}&score=net"
        people = {*kept.names().values(), kept.event.name, *kept.event.rounds.values()}
        people |= {published}
        people |= {one.receipt for one in kept.log.entries(kept.event_id)}
        names = {*names_of(desk.app.state.workplace.course), *people}  # type: ignore[attr-defined]
        pages = (
            one,
            other,
            "/cards?round=1",
            "/results?score=net",
            why,
            "/board",
            "/results/close",
            "/ready?round=2",
            "/published",
            "/papers",
            "/walk",
            "/walk/1/1?hole=2",
            f"/published/{published}.html",
            "/log/2",
        )
        for page in pages:
            assert unmarked(seen_in(desk.get(page).text), names) == set(), page
