"""A match-play event of 16 through the pages: entries, lots, a bracket with seeds, four rounds, and the bracket published.

Net match play at 100 per cent (Rules of Handicapping, Appendix C): the lower Playing Handicap receives none, the other the difference, a
stroke on each hole of stroke index up to it (9 17 5 3 15 11 1 13 7, 6 14 8 18 2 10 12 16 4 on holes 1 to 18). Numbers 1 to 16 meet as
1-16, 8-9, 4-13, 5-12, 2-15, 7-10, 3-14, 6-11 (A208569). Every result is worked out by hand where it is entered.
"""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.records.field import entrants
from marram.services.day.suspension import on_now
from tests.desk.asking import TestClient
from tests.desk.test_bracket import draw, event, now, pairs, result, start
from tests.desk.test_matches import enter
from tests.services.scoring import PARS, scoring

PEOPLE = """Ada Brill, Ben Coyle, Cleo Dunn, Dov Ester, Elke Frey, Finn Gad, Gus Holm, Hedda Iversen, Ivo Jordt, Jana Kepner, Kai Lund,
Lene Mohr, Maks Niven, Nora Oster, Odd Pahl, Pia Quist, Quint Rask"""
NAMES = tuple(one.strip() for one in PEOPLE.split(","))


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    days = [{"name": f"Day {at}", "played_on": f"2025-06-2{at}"} for at in (1, 2, 3, 4)]
    players = [{"name": one, "playing_handicap": at} for at, one in enumerate(NAMES)]
    with scoring(tmp_path, event(NAMES, rounds=days, scores=["net"], players=players)) as found:
        yield keep_here(found.records)


def match(desk: TestClient, first: str, second: str) -> str:
    """The address of a match of two by name."""
    every = re.findall(r'<a href="(/matches/\d[^"]+)">(.*?)</a>', desk.get("/matches").text, re.DOTALL)
    return next(url for url, words in every if first in words and second in words)


def playing(kept: KeptHere) -> set[str]:
    """The names of everybody who has a place."""
    return {one.name for one in entrants(kept.records, kept.event_id)}


def words(kept: KeptHere, stage: int, number: int) -> str:
    """How a match of the bracket ended."""
    decided = now(kept).stages[stage - 1][number - 1].decided
    assert decided
    return str(decided.words)


def first_round(desk: TestClient, kept: KeptHere, order: list[str]) -> None:
    """Play the eight matches of the first round, with an hour's suspension."""
    # Round 1, eight matches in groups of two, at 8:00, 8:10, 8:20 and 8:30.
    assert start(desk, 1, 1, in_a_group="2").status_code == 303
    groups = kept.log.entries(kept.event_id, kind="draw_made")[-1].content["groups"]
    assert [one["time"] for one in groups] == ["08:00", "08:10", "08:20", "08:30"]

    # Match 2, numbers 8 and 9: with this seed Playing Handicaps one apart, and gross pars by both. The one who receives the stroke
    # has it on hole 7 (index 1) and wins it; the others are tied: 1 up.
    first, second = order[7], order[8]
    assert NAMES.index(second) - NAMES.index(first) == 1
    url = match(desk, first, second)
    for par in PARS:
        enter(desk, url, "scores", **{"score-1": str(par), "score-2": str(par)})
    assert words(kept, 1, 2) == "1 up"
    assert now(kept).names[str(now(kept).stages[0][1].decided.winner)] == second  # type: ignore[union-attr]

    # Play is suspended for an hour in the first round: the matches stand as they were.
    desk.post("/suspension", data={"tapped": new_ident(), "how": "immediate", "cause": "lightning"})
    stopped = on_now(kept.log, kept.event_id)
    assert stopped is not None
    goes_on = {"suspension": stopped.entry.id, "at": "23:59", "tapped": new_ident()}
    assert desk.post("/suspension/resume", data=goes_on).status_code == 303

    # Match 3: number 13 is disqualified on the course (Rule 1.2b). Match 4: conceded after one hole.
    url = match(desk, order[3], order[12])
    desk.post(f"{url}/end", data={"how": "disqualified-second", "citation": "1.2b", "tapped": new_ident()})
    url = match(desk, order[4], order[11])
    enter(desk, url, "won-first")
    desk.post(f"{url}/end", data={"how": "conceded-first", "tapped": new_ident()})
    # Match 5: tied on all 18, the twentieth wins: 1 up after 20 holes (Rule 3.2a(4)).
    url = match(desk, order[1], order[14])
    for how in (*["tied"] * 19, "won-second"):
        enter(desk, url, how)
    assert words(kept, 1, 5) == "1 up after 20 holes"
    # The others without their holes.
    result(desk, 1, 1, "played-first", up="5", left="4")
    result(desk, 1, 6, "walkover-second")
    result(desk, 1, 7, "played-first", up="1")
    result(desk, 1, 8, "played-first", up="2", left="1")


def test_a_match_play_event_of_sixteen(kept: KeptHere) -> None:
    """From seventeen entries to the winner, with a reserve, a disqualification, extra holes and a result put right."""
    desk = TestClient(create_app(kept_here=kept), follow_redirects=False)

    # Seventeen entered, sixteen places: lots are cast, the lowest handicaps first; none is known, so the seed decides.
    lots: dict[str, Any] = {"seed": "tern", "places": "16", "limit": "", "tapped": new_ident()}
    assert desk.post("/entries/ballot", data=lots).status_code == 303
    waiting = set(NAMES) - playing(kept)
    assert len(waiting) == 1
    order = [one for one in NAMES if one not in waiting]
    assert draw(desk, seeded="\n".join(order)).status_code == 303
    met = [(0, 15), (7, 8), (3, 12), (4, 11), (1, 14), (6, 9), (2, 13), (5, 10)]
    assert pairs(now(kept), 1) == [(order[a], order[b]) for a, b in met]

    # Number 16 withdraws after the draw: the reserve stands in the very place, also in the draw.
    gone = now(kept).stages[0][0].second
    desk.post("/entries/withdraw", data={"person": str(gone), "tapped": new_ident()})
    (reserve,) = waiting
    assert pairs(now(kept), 1)[0] == (order[0], reserve)

    first_round(desk, kept, order)

    # Quarter-finals: 1 v 9, 4 v 12, 15 v 10, 3 v 6.
    assert pairs(now(kept), 2) == [
        (order[0], order[8]),
        (order[3], order[11]),
        (order[14], order[9]),
        (order[2], order[5]),
    ]
    assert start(desk, 2, 2).status_code == 303
    url = match(desk, order[14], order[9])
    for how in (
        *["won-first"] * 4,
        *["tied"] * 10,
        "won-first",
    ):  # 4 up after 14 of 18, then 5 up with 3 left
        enter(desk, url, how)
    assert words(kept, 2, 3) == "5 and 3"
    for number in (1, 2, 4):
        result(desk, 2, number, "played-first", up="3", left="2")

    # A result put right in the second match of the quarter-finals moves the other on.
    seen = now(kept).stages[1][1].decided.entry.id  # type: ignore[union-attr]
    result(desk, 2, 2, "played-second", up="3", left="2", corrects=seen)
    assert pairs(now(kept), 3) == [(order[0], order[11]), (order[14], order[2])]
    result(desk, 3, 1, "played-second", up="1", holes="19")
    result(desk, 3, 2, "played-second", up="6", left="5")
    assert pairs(now(kept), 4) == [(order[11], order[2])]
    assert start(desk, 4, 4, first="14:00").status_code == 303
    url = match(desk, order[11], order[2])
    for how in (
        *["won-second"] * 9,
        *["tied"] * 1,
    ):  # 9 up after 9, dormie; a tied hole then: 9 up with 8 left
        enter(desk, url, how)
    assert words(kept, 4, 1) == "9 and 8"
    found = now(kept)
    assert found.winner is not None
    assert found.names[found.winner] == order[2]
    assert list(found.doubts) == []

    desk.post("/published", data={"what": "bracket", "tapped": new_ident()})
    digest = re.search(r"/published/([0-9a-f]{64})\.json", desk.get("/published").text)
    assert digest
    told = desk.get(f"/published/{digest[1]}.json").json()["rounds"]
    assert [len(one) for one in told] == [8, 4, 2, 1]
    assert "1.2b" in told[0][2]["result"]
    assert told[3][0]["result"] == "9 and 8"
