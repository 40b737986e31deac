"""Cards and results at the desk: entered without a script, refused where something is open, ruled by the Rules, shown live."""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.schema import read_json
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signed_in
from tests.services.scoring import PARS, scoring
from tests.services.test_card_log import MOVED, _ruling

SCORES = {"scores": ["gross"], "results_public": True}


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    event = {**read_json(EVENT, "event"), **SCORES}
    with scoring(tmp_path, event) as found:
        yield keep_here(found.records)


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def card_of(kept: KeptHere, name: str = "Fenwin Dulsey", number: int = 1) -> str:
    """The address of a player's card."""
    player = next(ident for ident, known in kept.names().items() if known == name)
    return f"/cards/{number}/{player}"


def fill(desk: TestClient, url: str, **more: str) -> Any:
    """Fill in the figures as the form of the page holds them: par on every hole, but for what is given otherwise."""
    page = desk.get(url).text
    seen = re.search(r'name="seen" value="(\d+)"', page)
    assert seen
    figures = {f"{by}-{hole}": str(par) for by in ("player", "marker") for hole, par in enumerate(PARS, 1)}
    sent = {**figures, "seen": seen[1], "tapped": new_ident(), **more}
    return desk.post(f"{url}/figures", data=sent)


def bring_in(desk: TestClient, url: str, **more: str) -> Any:
    """Enter the return."""
    sent = {"player_certified": "true", "marker_certified": "true", "at": "12:30", "tapped": new_ident()}
    return desk.post(f"{url}/return", data={**sent, **more})


def test_a_card_is_entered_and_stands_on_the_board(kept: KeptHere, desk: TestClient) -> None:
    """Figures, then the return; one tap twice is one entry; the list and the board say so, and the page is no form any more."""
    url = card_of(kept)
    tapped = new_ident()
    assert {fill(desk, url, tapped=tapped).status_code for _ in range(2)} == {303}
    assert len(kept.log.entries(kept.event_id, kind="card_figures")) == 2
    assert bring_in(desk, url).headers["location"].startswith("/cards?round=1&done=")

    assert "hole 18: 5" in desk.get("/log/1").text
    assert "state-returned" in desk.get("/cards?round=1").text
    board = desk.get("/results").text
    assert re.search(r'class="place">1</td>\s*<th scope="row"><a [^>]*>Fenwin Dulsey', board)
    page = desk.get(url).text
    assert 'name="player-1"' not in page
    assert "Fenwin Dulsey leads" in desk.get(f"/results/why?side={url.rpartition('/')[2]}").text


def test_figures_that_differ_are_asked_about(kept: KeptHere, desk: TestClient) -> None:
    """The card is not taken until they agree, or until somebody says that it left the scoring area as it is."""
    url = card_of(kept)
    fill(desk, url, **{"marker-7": "5"})
    refused = bring_in(desk, url)

    assert refused.status_code == 400
    assert "Figures differ or are missing" in refused.text
    assert "Hole 7: the player has 4, the marker 5." in desk.get(url).text
    assert fill(desk, url, **{"marker-8": "x"}).status_code == 400
    fill(desk, url)
    assert bring_in(desk, url).status_code == 303


def test_two_scorers_at_once_are_shown_side_by_side(kept: KeptHere, desk: TestClient) -> None:
    """The second did not see the first's figure: both stand on the page, and the card is not taken until one is chosen."""
    url = card_of(kept)
    fill(desk, url, **{"player-3": "5"})
    fill(desk, url, **{"player-3": "6", "seen": "0"})

    page = desk.get(url).text
    assert "entered at once" in page
    shown = dict(re.findall(r'name="((?:player|marker)-\d+)" value="([^"]*)"', page))
    assert shown["player-3"] == ""
    seen = re.search(r'name="seen" value="(\d+)"', page)
    assert seen
    desk.post(f"{url}/figures", data={**shown, "player-4": "7", "seen": seen[1], "tapped": new_ident()})
    page = desk.get(url).text
    assert 'name="player-4" value="7"' in page
    assert "entered at once" in page  # a save of another hole decides nothing
    assert "two figures were entered at once" in bring_in(desk, url).text
    fill(desk, url)
    assert "entered at once" not in desk.get(url).text


def test_a_ruling_is_settled_before_the_card_is_taken(kept: KeptHere, desk: TestClient) -> None:
    """Its penalty lies beside the card with three answers; not included, what follows is asked, ruled and recorded."""
    url = card_of(kept)
    player, round_ = url.rpartition("/")[2], kept.round_on(kept.event.played_on)  # type: ignore[arg-type]
    assert round_
    ruling = kept.add(_ruling((player, round_.id), 14, "ball_moved_by_player", MOVED))
    fill(desk, url)
    assert "Say whether its penalty is included" in bring_in(desk, url).text
    settle = {"ruling": ruling.id, "how": "not_included", "tapped": new_ident()}
    assert desk.post(f"{url}/settle", data=settle).status_code == 303
    assert bring_in(desk, url).headers["location"] == url
    page = desk.get(url).text
    assert 'name="why_too_low" value="penalty_not_known"' in page
    told = {"finding": "hole_score_wrong-14", "why_too_low": "penalty_not_known", "tapped": new_ident()}
    desk.post(f"{url}/answer", data=told)

    assert "Hole 14: 1 stroke added by the Committee" in desk.get(url).text
    rulings = kept.log.entries(kept.event_id, kind="ruling")
    assert [one.content.get("finding") for one in rulings] == [None, "hole_score_wrong-14"]
    assert rulings[1].told["hole"] == 14


def test_a_card_not_certified_disqualifies_as_the_rules_say(kept: KeptHere, desk: TestClient) -> None:
    """The Rules ask whose fault it was; the answer puts the player out, with the Rule, on card, board and in the log."""
    url = card_of(kept)
    fill(desk, url)
    assert bring_in(desk, url, marker_certified="false").headers["location"] == url
    finding = re.search(r'name="finding" value="([^"]+)"', desk.get(url).text)
    assert finding
    desk.post(f"{url}/answer", data={"finding": finding[1], "marker_at_fault": "no", "tapped": new_ident()})

    assert "Disqualified (Rule 3.3b(2))" in desk.get("/results").text
    (ruling,) = kept.log.entries(kept.event_id, kind="ruling")
    assert ruling.content["outcome"]["combined"]["penalties"][0]["kind"] == "disqualification"
    returned = kept.log.entries(kept.event_id, kind="card_returned")[0].id
    sent = {"entry": returned, "tapped": new_ident()}
    assert desk.post(f"{url}/take-back", data=sent).status_code == 400
    assert desk.post(f"{url}/take-back", data={**sent, "note": "the wrong row"}).status_code == 303
    assert "Disqualified" not in desk.get("/results").text
    assert [one.kind for one in kept.log.corrections(ruling.id)] == ["withdrawn"]


def test_a_name_leads_to_its_card(kept: KeptHere, desk: TestClient) -> None:
    """Part of a name that one player has opens the card; of several lists them; nobody and no such round are said."""
    assert desk.get("/cards?round=1&q=dulsey").headers["location"] == card_of(kept)
    assert desk.get("/cards?round=1&q=a").status_code == 200
    assert "No group has such a player" in desk.get("/cards?round=1&q=zzz").text
    assert desk.get("/cards?round=9").status_code == 404
    assert desk.get(f"/cards/1/{new_ident()}").status_code == 404


def test_a_result_is_closed_and_reopened_only_as_the_rules_allow(kept: KeptHere, desk: TestClient) -> None:
    """Open cards stand between; closed, nothing on a card changes but what is found out; 20.2d lets a mistake be mended."""
    names = [one for one in kept.names().values() if card_exists(kept, one)]
    for strokes, name in enumerate(names):
        for number in (1, 2):
            url = card_of(kept, name, number)
            fill(desk, url, **{f"{by}-1": str(3 + strokes) for by in ("player", "marker")})
            bring_in(desk, url)
            if (strokes, number) == (0, 1):
                refused = desk.post("/results/close", data={"tapped": new_ident()})
                assert refused.status_code == 400
                assert "Not everybody" in refused.text
    assert desk.post("/results/close", data={"tapped": new_ident()}).status_code == 303
    assert "closed" in desk.get("/results").text
    url = card_of(kept, names[0])
    late = {"entry": kept.log.entries(kept.event_id, kind="card_returned")[0].id, "note": "x"}
    assert desk.post(f"{url}/take-back", data={**late, "tapped": new_ident()}).status_code == 400
    assert fill(desk, url).status_code == 400
    found = desk.post(f"{url}/found-out", data={"hole": "2", "score": "9", "tapped": new_ident()})
    assert found.status_code == 303
    assert "why_too_low" in desk.get(url).text

    page = desk.get("/results/close")
    assert page.status_code == 200
    assert 'value="administrative"' in page.text
    asked = desk.post("/results/reopen", data={"change": "breach", "tapped": new_ident()})
    assert 'name="late_breach"' in asked.text
    assert kept.log.entries(kept.event_id, kind="competition_reopened") == []
    mended = {"change": "administrative", "do": "reopen", "note": "tie", "tapped": new_ident()}
    assert desk.post("/results/reopen", data=mended).status_code == 303
    (reopened,) = kept.log.entries(kept.event_id, kind="competition_reopened")
    assert reopened.corrects == kept.log.entries(kept.event_id, kind="competition_closed")[0].id


def card_exists(kept: KeptHere, name: str) -> bool:
    """Whether somebody of this name plays."""
    return any(name == one.name for group in kept.all_groups() for one in group.players)


def test_everybody_sees_names_and_nothing_else(kept: KeptHere, desk: TestClient) -> None:
    """Without signing in: the board with names, no link to a card, no index; the cards and the why are not for players."""
    fill(desk, card_of(kept))
    app = guarded(kept)
    public, scorer = signed_in(app, kept, "public"), signed_in(app, kept, "scorer")
    page = public.get("/board")

    assert page.status_code == 200
    assert "Fenwin Dulsey" in page.text
    assert "/results/why" not in page.text
    assert "/cards/" not in page.text
    assert public.get("/cards").headers["location"].startswith("/sign-in")
    assert signed_in(app, kept, "player").get("/results").status_code == 403
    assert scorer.get("/cards").status_code == 200
    assert scorer.get("/results/close").status_code == 403


def test_a_board_is_public_only_where_the_conditions_say_so(tmp_path: Path) -> None:
    """Nothing said: nothing shown."""
    with scoring(tmp_path) as found:
        kept = keep_here(found.records)
        page = signed_in(guarded(kept), kept, "public").get("/board")

    assert page.status_code == 404
    assert "Fenwin" not in page.text
    assert "has not published results" in page.text


def test_a_play_off_decides_before_the_close(tmp_path: Path) -> None:
    """Two are level at the top: the close waits for the order of the play-off, which then stands behind the place."""
    base = read_json(EVENT, "event")
    players = base["players"][:2]
    names = [one["name"] for one in players]
    event = {
        **base,
        **SCORES,
        "players": players,
        "starting_times": [{"time": "08:00", "tee": 1, "players": names}],
        "rounds": [],
        "ties": {"first_place": ["play_off"]},
    }
    with scoring(tmp_path, event) as found:
        kept = keep_here(found.records)
        desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
        for name in names:
            fill(desk, card_of(kept, name))
            bring_in(desk, card_of(kept, name))
        waits = desk.post("/results/close", data={"tapped": new_ident()})
        assert waits.status_code == 400
        assert "are tied, and a play-off decides" in waits.text
        people = [card_of(kept, name).rpartition("/")[2] for name in names]
        order = {f"order-{person}": str(2 - place) for place, person in enumerate(people)}
        sent = {"method": "play_off", "tapped": new_ident()}
        assert 'name="order-' in desk.get("/results").text
        for wrong in ({f"order-{people[0]}": "1"}, dict.fromkeys(order, "1"), dict.fromkeys(order, "x")):
            assert desk.post("/results/tie", data={**sent, **wrong}).status_code == 400
        assert desk.post("/results/tie", data={**sent, **order}).status_code == 303
        assert desk.post("/results/close", data={"tapped": new_ident()}).status_code == 303
        why = desk.get(f"/results/why?side={people[0]}").text

    assert f"{names[0]} comes after {names[1]}" in why
    assert "in the play-off: 2 against 1" in why


def test_a_returned_score_that_was_doubted_may_stand(kept: KeptHere, desk: TestClient) -> None:
    """Returned as it is, below what the player had noted: one button says that the returned score is the actual one."""
    url = card_of(kept)
    fill(desk, url, **{"player-7": "5"})
    bring_in(desk, url, as_it_is="true")
    page = desk.get(url).text
    assert "state-open" in page
    assert "Hole 7: the returned 4" in page
    desk.post(f"{url}/found-out", data={"hole": 7, "score": "4", "tapped": new_ident()})

    page = desk.get(url).text
    assert "state-returned" in page
    assert "is right and stands" not in page
    assert not kept.log.entries(kept.event_id, kind="ruling")
    (entry,) = kept.log.entries(kept.event_id, kind="card_found_out")
    assert "hole 7: 4" in desk.get(f"/log/{entry.number}").text
