"""A Four-Ball Stableford of 24 sides played through the pages, from the list of entries to the closed and published result.

Every number is worked out by hand in the words beside it. Pars 4 3 5 4 3 4 4 3 5, 4 4 4 3 5 4 4 3 5, stroke indexes 9 17 5 3 15 11 1 13 7,
6 14 8 18 2 10 12 16 4. Stableford (Rule 21.1b): a net par is 2 points, a net birdie 3, a net bogey 1; 18 pars are 36 points. Of
partners the ball with more points counts on each hole (Rule 23.2a).

Side n has so many birdies of its first player, on holes 1, 2, …: sides 1 to 12 have n - 1, so 36 + n - 1 points. Sides 13 to 24 have
n - 12 bogeys of both players on holes 1, 2, …, so 36 - (n - 12) points. Playing Handicaps are 0, but for the second player of side 5,
whose Playing Handicap is 2: a stroke on holes 7 and 14 (indexes 1 and 2). The changes to it stand at each step below.
"""

import re
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

import pytest

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.records.field import entrants
from marram.schema import read_json
from marram.services.day.suspension import on_now
from marram.services.results.scored import scored_in
from tests.desk.asking import TestClient
from tests.desk.test_cards import bring_in
from tests.desk.test_cards_of_partners import fill
from tests.desk.test_entries import fields, take, upload
from tests.services.scoring import PARS, scoring

FIRST = ["Ada", "Ben", "Cleo", "Dov", "Elke", "Finn", "Gus", "Hedda", "Ivo", "Jana", "Kai", "Lene"]
LAST = ["Brill", "Coyle", "Dunn", "Ester"]
NAMES = [f"{first} {last}" for last in LAST for first in FIRST]
Balls = tuple[dict[int, str | int], dict[int, str | int]]


def event() -> dict[str, Any]:
    told = {
        "form_of_play": "stableford",
        "sides": "four_ball",
        "scores": ["net"],
        "results_public": True,
        "local_rules": [],
        "rounds": [],
        "ties": {"first_place": ["countback"], "other_places": ["shared"]},
        "players": [
            {
                "name": name,
                "side": f"Side {at // 2 + 1:02}",
                "playing_handicap": 2 if at == 9 else 0,
                "handicap_index": 1.0,
            }
            for at, name in enumerate(NAMES)
        ],
        "starting_times": [],
    }
    return {**read_json(EVENT, "event"), **told}


def balls(side: int) -> Balls:
    """The gross scores of both players of a side where they are not par."""
    if side <= 12:
        return {hole: PARS[hole - 1] - 1 for hole in range(1, side)}, {}
    bogeys: dict[int, str | int] = {hole: PARS[hole - 1] + 1 for hole in range(1, side - 11)}
    return bogeys, dict(bogeys)


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with scoring(tmp_path, event()) as found:
        yield keep_here(found.records)


def cards(kept: KeptHere) -> Mapping[int, str]:
    """The address of the card of each side by its number."""
    sides = {one.side_name: one.side for one in entrants(kept.records, kept.event_id)}
    return {int(str(name)[-2:]): f"/cards/1/{side}" for name, side in sides.items()}


def totals(kept: KeptHere) -> dict[int, tuple[int | None, int | None]]:
    """Place and points of each side by its number; no place for who is out."""
    (result,) = scored_in(kept.records).now().results
    return {
        int(one.side[-2:]): (one.place, one.score.total if one.out is None else None)
        for one in result.board.places
    }


def test_a_four_ball_stableford_from_the_entries_to_the_published_result(kept: KeptHere) -> None:
    desk = TestClient(create_app(kept_here=kept), follow_redirects=False)

    # A player of side 7 withdraws; another is entered for the side, from a list, before the draw.
    gone = next(one for one in entrants(kept.records, kept.event_id) if one.name == NAMES[13])
    desk.post("/entries/withdraw", data={"person": gone.person, "tapped": new_ident()})
    assert take(desk, upload(desk, "Name;HCP;Pair\nMaks Niven;1,0;Side 07\n").text).status_code == 303

    # The draw keeps partners together: 24 sides in 12 groups of four.
    asked = {"round": "1", "seed": "7", "first": "08:00", "minutes": "10", "places": "4", "tees": "1,10"}
    assert desk.post("/draw/keep", data=fields(desk.post("/draw", data=asked).text)).status_code == 303
    draw = kept.log.entries(kept.event_id, kind="draw_made")[-1].content["groups"]
    side_of = {one.person: one.side for one in entrants(kept.records, kept.event_id)}
    assert [len(one["players"]) for one in draw] == [4] * 12
    assert all(side_of[a] == side_of[b] for one in draw for a, b in (one["players"][:2], one["players"][2:]))

    # Play is suspended for an hour and resumed: nothing of it costs a stroke.
    desk.post("/suspension", data={"tapped": new_ident(), "how": "normal", "cause": "water"})
    stopped = on_now(kept.log, kept.event_id)
    assert stopped is not None
    goes_on = {"suspension": stopped.entry.id, "at": "23:59", "tapped": new_ident()}
    assert desk.post("/suspension/resume", data=goes_on).status_code == 303

    # The cards. Side 11 has one birdie more, of its second player on hole 18: 46 + 1 = 47 points, as side 12 has.
    for number, url in cards(kept).items():
        first, second = balls(number)
        if number == 11:
            second[18] = 4
        fill(desk, url, first, second)
        if number not in {9, 10, 24}:
            assert bring_in(desk, url).status_code == 303

    # Side 10: no marker certifies. Side 9: late, and it could have been in time. Both are disqualified (Rule 3.3b(2)).
    bring_in(desk, cards(kept)[10], marker_certified="false", as_it_is="true")
    bring_in(desk, cards(kept)[9], promptly="no")
    for side, fault in ((10, "marker"), (9, "late")):  # and the marker, or the Committee, was not the reason
        told = {"finding": f"scorecard_fault-{fault}", "marker_at_fault": "no", "tapped": new_ident()}
        assert desk.post(f"{cards(kept)[side]}/answer", data=told).status_code == 303
    # Side 24 is disqualified under the Code of Conduct (Rule 1.2b).
    desk.post(
        f"{cards(kept)[24]}/end", data={"how": "disqualified", "citation": "1.2b", "tapped": new_ident()}
    )

    found = totals(kept)
    # Side 5: four birdies on holes 1 to 4 (40 points), and net birdies of the second player's pars on 7 and 14: 42, as side 7 has.
    assert found[5][1] == 36 + 4 + 2
    assert found[7][1] == 36 + 6
    # Last nine: side 12 has birdies on 10 and 11, side 11 on 10 and 18: 20 points each. Last six (13 to 18): 12 and 13: side 11 wins.
    assert found[11] == (1, 47)
    assert found[12] == (2, 47)
    # Then 8 (43 points), 5 and 7 share the fourth place (42), 6 (41), 4 (39), 3 (38), 2 (37), 1 (36), 13 (35) … 23 (25).
    assert found[8] == (3, 43)
    assert found[5][0] == found[7][0] == 4
    assert found[6] == (6, 41)
    assert [found[number] for number in (4, 3, 2, 1)] == [(7, 39), (8, 38), (9, 37), (10, 36)]
    assert [found[number] for number in range(13, 24)] == [(n - 2, 48 - n) for n in range(13, 24)]
    assert {number for number, (place, _) in found.items() if place is None} == {9, 10, 24}

    # Closed, published, and on the page for everybody.
    closing = desk.get("/results/close").text
    assert desk.post("/results/close", data=fields(closing)).status_code == 303, closing
    assert desk.post(f"{cards(kept)[1]}/figures", data={"tapped": new_ident()}).status_code != 303
    desk.post("/published", data={"what": "results", "tapped": new_ident()})
    digest = re.search(r"/published/([0-9a-f]{64})\.json", desk.get("/published").text)
    assert digest
    (told,) = desk.get(f"/published/{digest[1]}.json").json()["results"]
    assert [(one["place"], one["name"].partition(" (")[0], one["total"]) for one in told["places"][:3]] == [
        (1, "Side 11", 47),
        (2, "Side 12", 47),
        (3, "Side 08", 43),
    ]
    assert {one["name"].partition(" (")[0]: one["rule"] for one in told["places"] if one["out"]}[
        "Side 24"
    ] == "1.2b"
    assert "Side 11" in desk.get("/board").text
