"""Cards of partners at the desk: each ball's figures, who bears a penalty, what Rule 3.3b comes to for a side, the board."""

import re
from collections.abc import Callable, Iterator, Mapping
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import pytest

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.records.field import entrants
from marram.rules.facts.conditions import Sides
from tests.desk.asking import TestClient
from tests.desk.test_cards import bring_in
from tests.services.partners import with_partners
from tests.services.scoring import PARS, scoring
from tests.services.test_card_log import MOVED, _ruling

Opened = tuple[KeptHere, TestClient]


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[Callable[[Mapping[str, Any]], Opened]]:
    with ExitStack() as stack:

        def open_(event: Mapping[str, Any]) -> Opened:
            records = stack.enter_context(scoring(tmp_path, event)).records
            kept = keep_here(records)
            return kept, TestClient(create_app(kept_here=kept), follow_redirects=False)

        yield open_


def person(kept: KeptHere, name: str) -> str:
    """The identifier of a player."""
    return next(ident for ident, known in kept.names().items() if known == name)


def side(kept: KeptHere, name: str = "Fenwin Dulsey") -> str:
    """The address of the card of the side a player is in."""
    found = next(one.side for one in entrants(kept.records, kept.event_id) if one.name == name)
    return f"/cards/1/{found}"


def fill(desk: TestClient, url: str, *balls: Mapping[int, str | int]) -> Any:
    """Fill in the figures of each ball: par but for the holes given; the same by player and marker."""
    sent = {"tapped": new_ident(), "seen": "999999"}
    for number, given in enumerate(balls, start=1):
        suffix = "" if number == 1 else f"-{number}"
        for hole, par in enumerate(PARS, start=1):
            for by in ("player", "marker"):
                sent[f"{by}-{hole}{suffix}"] = str(given.get(hole, par))
    return desk.post(f"{url}/figures", data=sent)


def total(desk: TestClient, name: str = "Pair 1") -> str:
    """The total of a side on the board."""
    row = re.search(rf"{name}</a>.*?</tr>", desk.get("/results").text, re.DOTALL)
    assert row
    return re.findall(r'class="number">(\d*)<', row[0])[-1]


def moved_by(kept: KeptHere, name: str, hole: int, sides: Sides) -> str:
    """Record that a player of a side moved a ball at rest, which costs a stroke; return the entry."""
    round_ = kept.round_on(kept.event.played_on)  # type: ignore[arg-type]
    assert round_
    entry = _ruling((person(kept, name), round_.id), hole, "ball_moved_by_player", MOVED, sides=sides)
    return kept.add(entry).id


def test_the_better_ball_of_partners_counts(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """Four-Ball: the lower of the partners' scores is the side's on each hole, and one ball is enough on it (Rule 23.2a)."""
    kept, desk = opened(with_partners(sides="four_ball", scores=["gross"]))
    url = side(kept)
    assert "Maris Quillan-Roe, Hole 7, Marker" in desk.get(url).text
    fill(desk, url, {1: 3, 2: "", 5: 9}, {1: 6, 2: 2, 9: "-"})
    assert bring_in(desk, url).headers["location"].startswith("/cards?round=1&done=")

    assert total(desk) == str(sum(PARS) - 2)
    listed = desk.get("/cards?round=1").text
    assert listed.count("Pair 1") == 1
    assert desk.get("/cards?round=1&q=quillan").headers["location"] == url
    assert desk.get(f"/cards/1/{person(kept, 'Maris Quillan-Roe')}").text.count("Pair 1")


def test_a_penalty_of_one_partner_is_laid_to_that_ball(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """Not included, its stroke is added to that partner's score alone; the side's total moves only where that one counts."""
    kept, desk = opened(with_partners(sides="four_ball", scores=["gross"]))
    url = side(kept)
    ruling = moved_by(kept, "Maris Quillan-Roe", 4, Sides.FOUR_BALL)
    fill(desk, url, {4: 5}, {4: 4})
    page = desk.get(url).text
    assert re.search(r"1 penalty stroke</strong> Maris Quillan-Roe:", page)
    desk.post(f"{url}/settle", data={"ruling": ruling, "how": "not_included", "tapped": new_ident()})
    bring_in(desk, url)
    told = {"finding": "hole_score_wrong-4-Maris Quillan-Roe", "tapped": new_ident()}
    desk.post(f"{url}/answer", data={**told, "score_counts_for_side": "yes"})
    desk.post(f"{url}/answer", data={**told, "why_too_low": "penalty_not_known"})

    assert "Hole 4: 1 stroke added by the Committee" in desk.get(url).text
    assert total(desk) == str(sum(PARS) + 1)
    found = kept.log.entries(kept.event_id, kind="ruling")[-1]
    assert found.told["player"] == person(kept, "Maris Quillan-Roe")


def test_a_score_that_does_not_count_for_the_side_costs_nothing(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """A returned score too low of the partner whose score does not count on the hole: no penalty (Rule 23.2b)."""
    kept, desk = opened(with_partners(sides="four_ball", scores=["gross"]))
    url = side(kept)
    fill(desk, url, {7: 4}, {7: 5})
    bring_in(desk, url)
    whose = person(kept, "Maris Quillan-Roe")
    assert (
        desk.post(f"{url}/found-out", data={"hole": 7, "score": "6", "tapped": new_ident()}).status_code
        == 400
    )
    desk.post(f"{url}/found-out", data={"hole": 7, "score": "6", "ball": whose, "tapped": new_ident()})
    told = {"finding": "hole_score_wrong-7-Maris Quillan-Roe", "tapped": new_ident()}
    desk.post(f"{url}/answer", data={**told, "why_too_low": "other"})

    assert "state-returned" in desk.get(url).text
    assert total(desk) == str(sum(PARS))


def test_a_score_too_low_that_counts_disqualifies_the_side(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """The same of the partner whose score counts: the side is disqualified (Rules 3.3b(3) and 23.2b)."""
    kept, desk = opened(with_partners(sides="four_ball", scores=["gross"]))
    url = side(kept)
    fill(desk, url, {7: 3}, {7: 5})
    bring_in(desk, url)
    whose = person(kept, "Fenwin Dulsey")
    desk.post(f"{url}/found-out", data={"hole": 7, "score": "4", "ball": whose, "tapped": new_ident()})
    told = {"finding": "hole_score_wrong-7-Fenwin Dulsey", "tapped": new_ident()}
    desk.post(f"{url}/answer", data={**told, "why_too_low": "other"})

    assert "Disqualified" in desk.get("/results").text


def test_a_hole_without_a_score_of_either_partner_disqualifies(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """A card that shows a score of neither partner on a hole: disqualification (Rules 3.3b(3) and 23.2b)."""
    kept, desk = opened(with_partners(sides="four_ball", scores=["gross"]))
    url = side(kept)
    fill(desk, url, {3: ""}, {3: ""})
    assert bring_in(desk, url).status_code == 400
    bring_in(desk, url, as_it_is="true")

    assert "Disqualified" in desk.get("/results").text


def test_the_card_of_partners_shows_a_handicap_of_each(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """With Model Local Rule L-2 a partner's missing handicap costs the side the net result; what is none is refused first."""
    rated = {"tees": "white", "ratings": [{"tees": "white", "course_rating": 72, "slope": 113, "par": 71}]}
    net = {"scores": ["gross", "net"], "allowance": 85, "local_rules": ["L-2"]}
    kept, desk = opened(with_partners(sides="four_ball", **net, **rated))
    url = side(kept)
    fill(desk, url, {}, {})
    page = desk.get(url).text
    assert "Handicap of Fenwin Dulsey on the card" in page
    assert "Handicap of Maris Quillan-Roe on the card" in page
    assert bring_in(desk, url, **{"handicap-1": "four", "handicap-2": "x"}).status_code == 400
    assert kept.log.entries(kept.event_id, kind="card_returned") == []

    bring_in(desk, url, **{"handicap-2": "-"})
    (entry,) = kept.log.entries(kept.event_id, kind="card_returned")
    assert entry.content["handicaps"] == {person(kept, "Maris Quillan-Roe"): "none"}
    found = kept.log.entries(kept.event_id, kind="ruling")[-1]
    assert found.told["player"] == person(kept, "Maris Quillan-Roe")
    assert "Handicap on the card" in desk.get(url).text
    assert total(desk) == str(sum(PARS))


def test_foursomes_have_one_ball_and_one_handicap(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """One column of figures, either partner's penalty is the side's (Rule 22.2), the handicap is that of the side."""
    rated = {"tees": "white", "ratings": [{"tees": "white", "course_rating": 72, "slope": 113, "par": 71}]}
    kept, desk = opened(with_partners(sides="foursomes", scores=["gross", "net"], **rated))
    url = side(kept)
    ruling = moved_by(kept, "Maris Quillan-Roe", 4, Sides.FOURSOMES)
    page = desk.get(url).text
    assert "Fenwin Dulsey, Maris Quillan-Roe" in page
    assert 'name="player-1-2"' not in page
    assert "1 penalty stroke</strong>" in page
    assert "Playing Handicap 6" in page  # (3.2 + 1) + (5.8 + 1) are 11, and half of that is 5.5, rounded to 6
    fill(desk, url, {4: 5})
    desk.post(f"{url}/settle", data={"ruling": ruling, "how": "included", "tapped": new_ident()})
    assert bring_in(desk, url).headers["location"].startswith("/cards?round=1&done=")
    assert total(desk) == str(sum(PARS) + 1)


def test_the_best_two_of_a_team_of_four_count(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """Best scores of a team: the two lowest of four balls count on each hole."""
    more = {"sides": "best_of_four", "scores": ["gross"], "scores_counting": 2, "side_size": 4}
    kept, desk = opened(with_partners(4, **more))
    url = side(kept)
    fill(desk, url, {1: 3}, {1: 3}, {1: 4}, {1: 8})
    assert bring_in(desk, url).status_code == 303

    assert total(desk) == str(2 * (sum(PARS) - 1))


def test_a_scramble_is_one_ball_of_the_team(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """A team of a scramble has one card with one ball, found under any of its players."""
    kept, desk = opened(with_partners(4, sides=None, variation="scramble", side_size=4, scores=["gross"]))
    url = side(kept, "Isaura Marram-Holt")
    fill(desk, url, {18: 4})
    assert bring_in(desk, url).status_code == 303
    assert total(desk) == str(sum(PARS) - 1)


def test_partners_nobody_knows_are_asked_for(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """Where an entry has no side, the page of cards says of whom, and takes no figures for granted."""
    event = dict(with_partners(sides="four_ball", scores=["gross"]))
    event["players"] = [
        {key: value for key, value in one.items() if key != "side"} for one in event["players"][:2]
    ] + event["players"][2:]
    _, desk = opened(event)

    assert "not known of Fenwin Dulsey, Maris Quillan-Roe" in desk.get("/cards").text


def test_a_returned_card_says_what_it_comes_to(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """Four-Ball Stableford: a birdie of one partner and pars are 37 points. The other side of the group is named once, by its side."""
    kept, desk = opened({"form_of_play": "stableford", "sides": "four_ball", "scores": ["gross"]})
    kept, desk = opened(with_partners(form_of_play="stableford", sides="four_ball", scores=["gross"]))
    url = side(kept)
    fill(desk, url, {1: PARS[0] - 1}, {})
    assert "<strong>37</strong>" not in desk.get(url).text
    bring_in(desk, url)
    page = desk.get(url).text
    assert "<span>Gross <strong>37</strong></span>" in page
    others = re.findall(r'<a class="quiet-button" href="/cards/1/[^"]+">([^<]+)</a>', page)
    assert others == ["Pair 2"]


def test_partners_from_tees_of_another_par_are_counted_by_their_own(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """Par of the third is one more from the red tees: the card, the scorer's page and the points go by it."""
    red = [par + (hole == 3) for hole, par in enumerate(PARS, start=1)]
    ratings = [
        {"tees": "white", "course_rating": 72, "slope": 113, "par": sum(PARS)},
        {"tees": "red", "course_rating": 72, "slope": 113, "par": sum(red), "hole_pars": red},
    ]
    event = dict(
        with_partners(
            sides="four_ball", form_of_play="stableford", scores=["gross"], ratings=ratings, tees="white"
        )
    )
    event["players"] = [
        {**one, "tees": "red"} if one["name"] == "Maris Quillan-Roe" else one for one in event["players"]
    ]
    kept, desk = opened(event)
    url = side(kept)
    page = desk.get(url).text
    assert f'data-hole="3" data-par="{PARS[2]}" data-whose="Fenwin Dulsey"' in page
    assert f'data-hole="3" data-par="{PARS[2] + 1}" data-whose="Maris Quillan-Roe"' in page
    fill(desk, url, {}, {})
    bring_in(desk, url)
    assert (
        total(desk) == "37"
    )  # two points a hole, and three with a par that is a stroke under it from the red tees
