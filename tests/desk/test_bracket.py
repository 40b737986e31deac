"""A bracket at the desk: drawn with seeds and byes, moved on by holes and by results, put right, published and printed; a round robin."""

import json
import re
from collections.abc import Callable, Iterator, Mapping
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import pytest

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.services.matches.bracket_kept import BracketNow, bracket_now
from marram.services.results.scored import scored_in
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signed_in
from tests.desk.test_matches import addresses, enter, match_event
from tests.services.scoring import scoring

Opened = tuple[KeptHere, TestClient]
SIX = ("Ada Brill", "Ben Coyle", "Cleo Dunn", "Dov Ester", "Elke Frey", "Finn Gad")


def event(names: tuple[str, ...] = SIX, **more: Any) -> dict[str, Any]:
    """Return an event of matches over three days, its players without groups."""
    days = [{"name": f"Day {at}", "played_on": f"2025-06-2{at}"} for at in (1, 2, 3)]
    return {
        **match_event(),
        "players": [{"name": one, "handicap_index": 5 + at} for at, one in enumerate(names)],
        "starting_times": [],
        "round": "Day 1",
        "played_on": "2025-06-21",
        "rounds": days,
        "match_may_end_tied": False,
        **more,
    }


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[Callable[[Mapping[str, Any]], Opened]]:
    with ExitStack() as stack:

        def open_(given: Mapping[str, Any]) -> Opened:
            kept = keep_here(stack.enter_context(scoring(tmp_path, given)).records)
            return kept, TestClient(create_app(kept_here=kept), follow_redirects=False)

        yield open_


def draw(desk: TestClient, plan: str = "bracket", seeded: str = "\n".join(SIX), **more: str) -> Any:
    told = {"plan": plan, "seed": "tide", "seeded": seeded, "tapped": new_ident(), **more}
    return desk.post("/matches/bracket/draw", data=told)


def start(desk: TestClient, stage: int, round_: int, **more: str) -> Any:
    told = {"stage": str(stage), "round": str(round_), "first": "08:00", "tapped": new_ident(), **more}
    return desk.post("/matches/bracket/starts", data=told)


def result(desk: TestClient, stage: int, number: int, how: str, **more: str) -> Any:
    told = {"stage": str(stage), "number": str(number), "how": how, "tapped": new_ident(), **more}
    return desk.post("/matches/bracket/result", data=told)


def now(kept: KeptHere) -> BracketNow:
    found = bracket_now(scored_in(kept.records))
    assert found
    return found


def pairs(found: BracketNow, stage: int) -> list[tuple[str, str]]:
    """Who meets whom in a round, by name; "bye" or "open" where nobody is there."""
    empty = "bye" if stage == 1 else "open"
    return [
        (found.names[one.first] if one.first else empty, found.names[one.second] if one.second else empty)
        for one in found.stages[stage - 1]
    ]


def test_a_bracket_of_six_moves_on_by_holes_walkover_and_concession(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """Numbers 1 to 6 in a draw of 8 meet as 1-8, 4-5, 2-7, 3-6 (A208569), so that the two highest have byes. The names are in
    the order of their numbers. Ester beats Frey by holes, 10 of 10 won: 10 up with 8 left, "10 and 8". Dunn has a walkover.
    Then Brill meets Ester and Coyle meets Dunn; Coyle concedes, and Brill wins on the 19th, an extra hole. The final is won
    3 and 2 by Dunn, entered without its holes."""
    kept, desk = opened(event())
    assert "Neither a bracket" in desk.get("/matches/bracket").text
    assert draw(desk).status_code == 303
    assert pairs(now(kept), 1) == [
        ("Ada Brill", "bye"),
        ("Dov Ester", "Elke Frey"),
        ("Ben Coyle", "bye"),
        ("Cleo Dunn", "Finn Gad"),
    ]
    assert pairs(now(kept), 2) == [
        ("Ada Brill", "open"),
        ("Ben Coyle", "open"),
    ]

    assert start(desk, 1, 1, in_a_group="2").status_code == 303
    (group,) = kept.log.entries(kept.event_id, kind="draw_made")[-1].content["groups"]
    assert len(group["players"]) == 4  # two matches in one group
    url = addresses(desk)[0]
    for _ in range(10):
        enter(desk, url, "won-first")
    assert result(desk, 1, 2, "nonsense-first").status_code == 422
    assert result(desk, 1, 4, "walkover-first").status_code == 303
    found = now(kept)
    assert [one.decided and one.decided.words for one in found.stages[0]] == [
        None,
        "10 and 8",
        None,
        "walkover",
    ]
    assert pairs(found, 2) == [("Ada Brill", "Dov Ester"), ("Ben Coyle", "Cleo Dunn")]

    assert draw(desk).status_code == 422  # something is decided
    assert start(desk, 2, 2).status_code == 303
    url, other = addresses(desk)[-2:]
    for how in ("won-first", "won-second", *["tied"] * 16, "won-first"):
        enter(desk, url, how)
    desk.post(f"{other}/end", data={"how": "conceded-first", "tapped": new_ident()})
    assert pairs(now(kept), 3) == [("Ada Brill", "Cleo Dunn")]
    assert now(kept).stages[1][0].decided.words == "1 up after 19 holes"  # type: ignore[union-attr]

    assert result(desk, 3, 1, "played-second", up="2", left="3").status_code == 422  # no match ends so
    assert result(desk, 3, 1, "played-second", up="3", left="2").status_code == 303
    found = now(kept)
    assert found.winner is not None
    assert found.names[found.winner] == "Cleo Dunn"
    page = desk.get("/matches/bracket").text
    assert "Cleo Dunn</strong>" in page
    assert "3 and 2" in page


def test_a_winner_put_right_moves_another_on_and_says_what_no_longer_fits(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """The later result is of sides that do not meet: it counts no more and is told, until it is looked at."""
    kept, desk = opened(event(SIX[:4]))
    draw(desk, seeded="\n".join(SIX[:4]))
    result(desk, 1, 1, "played-first", up="2")
    result(desk, 1, 2, "played-first", up="1", holes="20")
    result(desk, 2, 1, "played-first", up="5", left="4")
    assert now(kept).winner is not None
    seen = now(kept).stages[0][0].decided.entry.id  # type: ignore[union-attr]
    result(desk, 1, 1, "disqualified-second", citation="1.2b", corrects=seen)
    found = now(kept)
    assert found.winner is None
    assert pairs(found, 2) == [("Dov Ester", "Ben Coyle")]
    assert found.stages[0][0].decided.words == "disqualified (1.2b)"  # type: ignore[union-attr]
    assert [str(one) for one in found.doubts] != []
    assert "sides that do not meet there" in desk.get("/matches/bracket").text


def test_a_tie_moves_nobody_on(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """Where matches may end tied by mistake in the Terms, the bracket waits and says so; a result entered decides it."""
    kept, desk = opened(event(SIX[:2], match_may_end_tied=True))
    draw(desk, seeded="")
    start(desk, 1, 1)
    (url,) = addresses(desk)
    for _ in range(18):
        enter(desk, url, "tied")
    assert now(kept).winner is None
    assert "somebody has to move on" in desk.get("/matches/bracket").text
    assert result(desk, 1, 1, "played").status_code == 422
    assert result(desk, 1, 1, "played-second", up="1", holes="19").status_code == 303
    assert now(kept).winner is not None


def test_who_moves_up_after_the_draw_stands_in_the_very_place(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """A player who withdraws is followed by the reserve, in the bracket too; without one, the other side is told of a walkover."""
    kept, desk = opened(event())
    told = {"seed": "lots", "places": "5", "limit": "", "tapped": new_ident()}
    desk.post("/entries/ballot", data=told)
    draw(desk, seeded="")
    before = now(kept)
    one = next(each for each in before.stages[0] if not each.bye)
    assert one.first
    assert one.second
    desk.post("/entries/withdraw", data={"person": one.first, "tapped": new_ident()})
    after = now(kept)
    same = after.stages[0][one.number - 1]
    assert same.first != one.first
    assert same.second == one.second
    assert not after.gone
    desk.post("/entries/withdraw", data={"person": one.second, "tapped": new_ident()})
    assert now(kept).gone == {one.second}
    assert "plays no more" in desk.get("/matches/bracket").text
    assert result(desk, 1, one.number, "walkover-first").status_code == 303
    assert "plays no more" not in desk.get("/matches/bracket").text


def test_a_match_that_has_begun_stays_on_the_starting_sheet(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """The draw of the round that would part its players is refused; the rest of the bracket round joins beside it."""
    kept, desk = opened(event(SIX[:4]))
    draw(desk, seeded="")
    start(desk, 1, 1)
    url = addresses(desk)[0]
    enter(desk, url, "won-first")
    answer = desk.post(
        "/draw/keep",
        data={
            "round": "1",
            "seed": "x",
            "tapped": new_ident(),
            "groups": json.dumps([["09:00", 1, [now(kept).stages[0][1].first]]]),
        },
    )
    assert answer.status_code == 422
    assert "match of this round has begun" in answer.text
    assert len(addresses(desk)) == 2


def test_a_round_robin_has_a_table_with_points_and_shared_places(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """Of three, by hand: A beats B, A and C tie, C beats B. A and C have 1.5 points and share the first place; B has none."""
    kept, desk = opened(event(SIX[:3]))
    draw(desk, "round_robin", seeded="\n".join(SIX[:3]))
    won = {frozenset(SIX[:2]): SIX[0], frozenset(SIX[1:3]): SIX[2]}
    drawn = now(kept)
    for stage in drawn.stages:
        for one in stage:
            assert one.first
            assert one.second
            first, second = drawn.names[one.first], drawn.names[one.second]
            winner = won.get(frozenset((first, second)))
            how = "played" if winner is None else "played-first" if winner == first else "played-second"
            assert result(desk, one.stage, one.number, how, up="2" if winner else "").status_code == 303
    found = now(kept)
    told = [
        (one.place, found.names[one.side], one.won, one.tied, one.lost, float(one.points))
        for one in found.table
    ]
    assert sorted(told) == [
        (1, SIX[0], 1, 1, 0, 1.5),
        (1, SIX[2], 1, 1, 0, 1.5),
        (3, SIX[1], 0, 0, 2, 0.0),
    ]
    assert "1½" in desk.get("/matches/bracket").text


def test_a_bracket_is_published_and_printed(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """In the open formats with names and clubs only; the sheet has a row for every side and the winners beside them."""
    _, desk = opened(event())
    draw(desk)
    result(desk, 1, 2, "played-second", up="4", left="3")
    desk.post("/published", data={"what": "bracket", "tapped": new_ident()})
    digest = re.search(r"/published/([0-9a-f]{64})\.json", desk.get("/published").text)
    assert digest
    told = desk.get(f"/published/{digest[1]}.json").json()
    assert told["rounds"][0][1] == {
        "number": 2,
        "first": {"name": "Dov Ester", "club": ""},
        "second": {"name": "Elke Frey", "club": ""},
        "winner": "second",
        "result": "4 and 3",
    }
    assert "1,2,Dov Ester,Elke Frey,Elke Frey,4 and 3\r\n" in desk.get(f"/published/{digest[1]}.csv").text
    sheet = desk.get("/papers/1/bracket.html").text
    rows = re.findall(r"<tr>(.*?)</tr>", sheet, re.DOTALL)
    assert sum(name in sheet for name in SIX) == 6
    assert any("Dov Ester" in one and "Elke Frey" in one for one in rows)  # the winner beside the upper side
    assert desk.get("/papers/1/bracket.pdf").content.startswith(b"%PDF")


def test_everybody_sees_the_bracket_where_results_are_public(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """A guest sees names and results, and no link into a match; where results are not public, nothing."""
    kept, desk = opened(event())
    draw(desk)
    result(desk, 1, 2, "played-second", up="4", left="3")
    guest = signed_in(guarded(kept), kept, "public")
    page = guest.get("/matches/board").text
    assert "4 and 3" in page
    assert "/matches/1/" not in page
    assert guest.get("/matches/bracket").status_code == 303


def test_faults_of_a_draw_are_told_together(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """No seed, and somebody seeded who does not play, with the nearest name."""
    kept, desk = opened(event())
    answer = draw(desk, seeded="Ada Bril\nBen Coyle\nBen Coyle", seed=" ")
    assert answer.status_code == 422
    for words in ("needs a seed", "Ada Brill", "twice"):
        assert words in answer.text
    assert not kept.log.entries(kept.event_id, kind="bracket_drawn")


def test_a_match_decided_without_its_holes_is_not_all_square(
    opened: Callable[[Mapping[str, Any]], Opened],
) -> None:
    """In the list of matches and on its own page a walkover and a result by holes entered say so, with the winner."""
    _kept, desk = opened(event())
    draw(desk)
    start(desk, 1, 1)
    first, second = addresses(desk)[:2]
    assert desk.get("/matches").text.count("all square") == 2
    result(desk, 1, 2, "walkover-second")
    result(desk, 1, 4, "played-first", up="1", holes="20")

    listed = desk.get("/matches").text
    assert "all square" not in listed
    assert ">walkover<" in listed
    assert ">1 up after 20 holes<" in listed
    assert re.findall(r'class="side leads">([^<]+)<', listed) == ["Elke Frey", "Cleo Dunn"]
    page = desk.get(first).text
    assert "all square" not in page
    assert re.search(r"without its holes: <strong>walkover</strong> Elke Frey", page)
    assert re.search(r"<strong>1 up after 20 holes</strong> Cleo Dunn", desk.get(second).text)
    waits = desk.get("/results/close").text
    assert "is not over" not in waits
    assert "matches of the bracket or round robin are not decided" in waits


def test_two_rounds_of_a_bracket_on_one_day(opened: Callable[[Mapping[str, Any]], Opened]) -> None:
    """Round one in the morning and the semi-finals in the afternoon of one day: each stays on its own starting sheet."""
    days = [
        {"name": "Morning", "played_on": "2025-06-21"},
        {"name": "Afternoon", "played_on": "2025-06-21"},
        {"name": "Final", "played_on": "2025-06-22"},
    ]
    kept, desk = opened(event(rounds=days, round="Morning"))
    draw(desk)
    assert start(desk, 1, 1).status_code == 303
    result(desk, 1, 2, "played-first", up="3", left="2")
    result(desk, 1, 4, "played-second", up="1")
    assert start(desk, 2, 2, first="14:00").status_code == 303
    assert now(kept).stages[0][1].round == 1
    assert [one.round for one in now(kept).stages[1]] == [2, 2]
    listed = desk.get("/matches").text
    assert listed.index("Morning") < listed.index("Afternoon")
    assert len(addresses(desk)) == 4
