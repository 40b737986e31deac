"""Matches at the desk: who meets whom, a hole a tap, how it stands, penalties of the log beside it, team matches, the close."""

import re
from collections.abc import Callable, Iterator, Mapping
from contextlib import ExitStack
from dataclasses import replace
from html import unescape
from pathlib import Path
from typing import Any
from urllib.parse import parse_qsl

import pytest

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.records.open_cases import begun
from marram.records.starting_sheet import round_conditions
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.schema import read_json
from marram.services.cases.case import Act, Case
from marram.services.log.log import About, ruling_entry
from tests.desk.asking import TestClient, question
from tests.desk.signing_in import guarded, signed_in
from tests.desk.test_entries import fields
from tests.services.scoring import NOON, scoring
from tests.services.test_card_log import MOVED

Opened = tuple[KeptHere, TestClient]


def match_event(sides: str = "individual", **more: Any) -> dict[str, Any]:
    """Return the invented event in match play: four players of two teams in one group, and four in a second round."""
    event = {
        **read_json(EVENT, "event"),
        "form_of_play": "match_play",
        "results_public": True,
        "local_rules": [],
    }
    teams = (
        ("Dunes", "Marsh", "Dunes", "Marsh")
        if sides == "individual"
        else ("Dunes", "Dunes", "Marsh", "Marsh")
    )
    players = [{**one, "team": team} for one, team in zip(event["players"][:4], teams, strict=True)]
    names = [one["name"] for one in players]
    times = [{"time": "08:00", "tee": 1, "players": names}]
    told = {
        "players": players,
        "starting_times": times,
        "sides": sides,
        "rounds": [],
        "match_may_end_tied": True,
    }
    return {**event, **told, **more}


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[Callable[[Mapping[str, Any]], Opened]]:
    with ExitStack() as stack:

        def open_(event: Mapping[str, Any]) -> Opened:
            records = stack.enter_context(scoring(tmp_path, event)).records
            kept = keep_here(records)
            return kept, TestClient(create_app(kept_here=kept), follow_redirects=False)

        yield open_


def addresses(desk: TestClient) -> list[str]:
    """The address of every match in the list."""
    return re.findall(r'<li><a href="(/matches/[^"]+)"', desk.get("/matches").text)


def enter(desk: TestClient, url: str, how: str, place: int | None = None, **more: str) -> Any:
    """Tap how the next hole ended, or put right the one of a place."""
    page = desk.get(url if place is None else f"{url}?place={place}").text
    sent = {name: re.search(rf'name="{name}" value="([^"]*)"', page) for name in ("place", "corrects")}
    told = {name: found[1] for name, found in sent.items() if found}
    return desk.post(f"{url}/hole", data={**told, "how": how, "tapped": new_ident(), **more})


def standing(desk: TestClient, url: str) -> str:
    """How the page says that a match stands."""
    found = re.search(r'class="match-state"[^>]*><strong>([^<]*)', desk.get(url).text)
    assert found
    return found[1]


def test_a_match_is_won_by_more_holes_than_are_left(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """A hole a tap; one lead larger than what is left decides (Rule 3.2a(3)), and no hole is asked for after it."""
    kept, desk = opened(match_event())
    url, other = addresses(desk)
    assert standing(desk, url) == "all square"
    for how in ("won-first", "tied", "conceded-first", "penalty-second", *["won-first"] * 6):
        assert enter(desk, url, how).status_code == 303
    assert standing(desk, url) == "7 up"
    enter(desk, url, "agreed_tied")
    assert standing(desk, url) == "dormie 7"
    enter(desk, url, "tied")
    assert standing(desk, url) == "7 and 6"
    assert 'name="place"' not in desk.get(url).text
    assert standing(desk, other) == "all square"
    assert len(kept.log.entries(kept.event_id, kind="match_hole")) == 12


def test_a_hole_put_right_corrects_the_entry_that_was_seen(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """The former entry stays in the log; two who enter the same hole at once are told that their entries differ."""
    kept, desk = opened(match_event())
    url = addresses(desk)[0]
    enter(desk, url, "won-first")
    enter(desk, url, "won-second", place=1)
    assert "1 up" in standing(desk, url)
    first, second = kept.log.entries(kept.event_id, kind="match_hole")
    assert second.corrects == first.id
    enter(desk, url, "tied", place=1, corrects="")

    assert "was entered twice at once" in desk.get(url).text
    assert (
        desk.post(f"{url}/hole", data={"place": "1", "how": "nonsense", "tapped": new_ident()}).status_code
        == 422
    )


def test_scores_of_a_four_ball_match_give_the_hole_to_the_lower_net_ball(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """Handicap strokes come off the lowest of the four, at 90 per cent (Rules of Handicapping, Appendix C); a ball picked up
    does not count (Rule 23.2a)."""
    rated = {"tees": "white", "ratings": [{"tees": "white", "course_rating": 71, "slope": 113, "par": 71}]}
    kept, desk = opened(match_event("four_ball", scores=["net"], **rated))
    (url,) = addresses(desk)
    page = desk.get(url).text
    assert "Fenwin Dulsey / Maris Quillan-Roe" in page
    scores = {"score-1": "5", "score-2": "-", "score-3": "5", "score-4": "6"}
    enter(desk, url, "scores", **scores)
    # 90 % of 3.2, 5.8, 8.1 and 0.4 are 3, 5, 7 and 0: the third player receives 7, on holes of stroke index 1 to 7
    received = "•" in re.search(r"Tobiah Ling.*?</span>", page, re.DOTALL)[0]  # type: ignore[index]
    first = "•" in re.search(r"<span>Fenwin Dulsey.*?</span>", page, re.DOTALL)[0]  # type: ignore[index]
    assert standing(desk, url) == ("1 up" if received != first else "all square")
    assert (
        desk.post(
            f"{url}/hole",
            data={"place": "2", "how": "scores", "tapped": new_ident(), **dict.fromkeys(scores, "-")},
        ).status_code
        == 400
    )
    assert kept.log.entries(kept.event_id, kind="match_hole")[0].content["scores"] == [5, "-", 5, 6]


def test_a_ruling_that_costs_the_hole_is_held_against_what_is_entered(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """Loss of hole in the log and the hole entered as won by the same side: the page says so, until it is put right."""
    kept, desk = opened(match_event())
    url = addresses(desk)[0]
    player, round_ = url.split("/")[3], kept.round_on(kept.event.played_on)  # type: ignore[arg-type]
    assert round_
    case = Case(
        NOON.date(),
        (Act("ball_moved_by_player", MOVED),),
        FormOfPlay.MATCH_PLAY,
        Sides.INDIVIDUAL,
        (),
        hole=1,
    )
    entry = ruling_entry(case, NOON, About(player=player, round=round_.id))
    cost = {"kind": "general_penalty", "citation": "12.2b(1)", "who": "player", "strokes": 2}
    outcome = {**entry.content["outcome"], "combined": {"penalties": [cost]}}
    kept.add(replace(entry, content={**entry.content, "outcome": outcome}))
    enter(desk, url, "won-first")
    assert "Fenwin Dulsey loses it" in desk.get(url).text
    enter(desk, url, "penalty-second", place=1)

    assert "loses it" not in desk.get(url).text


def test_singles_add_up_to_a_team_match_that_everybody_sees(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """A point for a win, a half each for a tie; what is still played is told as it stands; closed, nothing can be entered."""
    kept, desk = opened(match_event())
    first, second = addresses(desk)
    for _ in range(10):
        enter(desk, first, "won-first")
    for how in ("won-first", "won-second", *["tied"] * 15):
        enter(desk, second, how)
    assert [one.strip() for one in re.findall(r'class="number">([\d.]+)<', desk.get("/matches").text)] == [
        "1",
        "1.5",
        "0",
        "0.5",
    ]
    assert desk.post("/results/close", data={"tapped": new_ident()}).status_code == 400
    enter(desk, second, "tied")
    public = signed_in(guarded(kept), kept, "public").get("/board")
    assert public.headers["location"] == "/matches/board"
    page = signed_in(guarded(kept), kept, "public").get("/matches/board").text
    assert re.findall(r'class="number">([\d.]+)<', page) == ["1.5", "1.5", "0.5", "0.5"]
    assert "10 and 8" in page
    assert '<li><a href="/matches' not in page
    desk.post(f"{first}/end", data={"how": "final", "tapped": new_ident()})
    assert "final" in desk.get(first).text
    assert desk.post("/results/close", data={"tapped": new_ident()}).status_code == 303
    assert enter(desk, first, "tied", place=1).status_code == 400


def test_a_match_is_conceded_or_lost_by_disqualification(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """Conceded, it is over and cannot be conceded again (Rule 3.2b(1)); a disqualification names its Rule; both can be taken back."""
    kept, desk = opened(match_event())
    first, second = addresses(desk)
    enter(desk, first, "won-first")
    assert desk.post(f"{first}/end", data={"how": "final", "tapped": new_ident()}).status_code == 400
    desk.post(f"{first}/end", data={"how": "conceded-first", "tapped": new_ident()})
    assert standing(desk, first) == "conceded"
    assert (
        desk.post(f"{first}/end", data={"how": "conceded-second", "tapped": new_ident()}).status_code == 400
    )
    assert (
        desk.post(f"{second}/end", data={"how": "disqualified-first", "tapped": new_ident()}).status_code
        == 400
    )
    told = {"how": "disqualified-first", "citation": "1.2b", "tapped": new_ident()}
    assert desk.post(f"{second}/end", data=told).status_code == 303
    assert standing(desk, second) == "disqualified (Rule 1.2b)"
    entry = kept.log.entries(kept.event_id, kind="match_ended")[0].id
    sent = {"entry": entry, "tapped": new_ident()}
    assert desk.post(f"{first}/take-back", data=sent).status_code == 400
    assert desk.post(f"{first}/take-back", data={**sent, "note": "the wrong match"}).status_code == 303
    assert standing(desk, first) == "1 up"


def test_a_second_round_may_be_played_by_pairs(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """Singles on the first day and Foursomes on the second are one team match; each round has its own sides."""
    rounds = [{"name": "Pairs", "played_on": "2025-06-22", "sides": "foursomes"}]
    kept, _ = opened(match_event(rounds=rounds))
    assert sorted(map(str, round_conditions(kept.records, kept.event_id).values())) == [
        "{'sides': 'foursomes'}",
        "{}",
    ]


def test_singles_and_pairs_are_one_team_match_from_the_draw_to_the_points(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """Two singles and, drawn at the desk for the second day, Foursomes: a win, a tie and a win are two and a half points to a half."""
    rounds = [{"name": "Pairs", "played_on": "2025-06-22", "sides": "foursomes"}]
    _, desk = opened(match_event(rounds=rounds))
    first, second = addresses(desk)
    asked = {"round": "2", "seed": "7", "first": "13:00", "places": "4", "tees": "1"}
    page = desk.post("/draw", data=asked)
    assert desk.post("/draw/keep", data=fields(page.text)).status_code == 303
    pairs = next(one for one in addresses(desk) if one not in (first, second))
    shown = desk.get(pairs).text
    title = re.search(r"<h1[^>]*>(.*?)</h1>", shown)
    assert title
    dunes_first = title[1].index("Fenwin Dulsey") < title[1].index("Maris Quillan-Roe")

    for _ in range(10):
        enter(desk, first, "won-first")
        enter(desk, pairs, "won-first" if dunes_first else "won-second")
    for _ in range(18):
        enter(desk, second, "tied")

    figures = re.findall(r'class="number">([\d.]+)<', desk.get("/matches").text)
    assert figures == ["2.5", "2.5", "0.5", "0.5"]
    assert desk.post("/results/close", data={"tapped": new_ident()}).status_code == 303


@pytest.mark.parametrize("form", ["stroke_play", "match_play"])
def test_a_group_of_stroke_play_is_no_match(opened: Callable[[Mapping[str, Any]], Opened], form: str) -> None:
    """Only match play has matches: players who go round together in stroke play do not meet."""
    event = match_event(form_of_play=form)
    if form == "stroke_play":
        del event["match_may_end_tied"]
    _, desk = opened(event)
    assert ("/matches/1/" in desk.get("/matches").text) is (form == "match_play")


def test_a_ruling_asked_for_begins_with_what_the_match_shows(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """Rule 20.1b(2): about the hole in play it is asked in time and given; about an earlier one the interview goes on; after the
    result is final as well (20.1b(3))."""
    kept, desk = opened(match_event())
    url = addresses(desk)[0]
    enter(desk, url, "won-first")
    enter(desk, url, "tied")

    def ask(**more: str) -> tuple[dict[str, str], str]:
        answer = desk.post(f"{url}/asked", data={"tapped": new_ident(), "by": "second", **more})
        assert answer.status_code == 303
        told = dict(parse_qsl(answer.headers["location"].partition("?")[2]))
        return told, unescape(desk.get(answer.headers["location"]).text)

    told, page = ask(about="3")
    assert told["what"] == "ruling_requested_in_match"
    assert (told["issue_from"], told["asked_in_time"], told["hole"]) == ("this_hole", "yes", "3")
    assert "The request is in time" in page
    begun_for = begun(kept.records, told["begun"])
    assert begun_for
    assert begun_for.player == url.rpartition("/")[2]

    assert ask(about="2", begun="no")[0]["issue_from"] == "this_hole"
    told, page = ask(about="2", begun="yes")
    assert told["issue_from"] == "earlier_hole"
    assert "asked_in_time" not in told
    assert question("asked_in_time") in page
    assert (
        desk.post(f"{url}/asked", data={"tapped": new_ident(), "by": "first", "about": "19"}).status_code
        == 422
    )

    for _ in range(10):
        enter(desk, url, "won-first")
    desk.post(f"{url}/end", data={"how": "final", "tapped": new_ident()})
    told, page = ask(about="12")
    assert told["result_final"] == "yes"
    assert question("facts_came_to_light_later") in page
