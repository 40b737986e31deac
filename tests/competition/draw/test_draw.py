"""A draw obeys every wish, or names wishes that clash; the same seed gives the same draw."""

from datetime import UTC, date, datetime, time, timedelta
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.competition.draw.calendar import calendar
from marram.competition.draw.daylight import polar_night, sunset
from marram.competition.draw.next_round import turned
from marram.competition.draw.order import by_score, by_seed
from marram.competition.draw.round_robin import round_robin
from marram.competition.draw.solving import draw, no_repeats
from marram.competition.draw.wishes import (
    Apart,
    ClubsApart,
    Drawn,
    NotBefore,
    Part,
    Together,
    Within,
    in_part,
    starts,
)
from marram.errors import InputError

PLAYERS = [Drawn(f"p{number}", f"club {number % 5}") for number in range(17)]
STARTS = starts(time(8), 6, minutes=10, tees=(1, 10))


def test_without_wishes_the_order_fills_the_starts() -> None:
    """Players go in as they come; groups differ by one, the smaller first."""
    found = draw(PLAYERS, STARTS)

    assert [len(group) for group in found.groups] == [2, 3, 3, 3, 3, 3]
    assert [key for group in found.groups for key in group] == [one.key for one in PLAYERS]


def test_every_wish_is_obeyed() -> None:
    """Together, apart, early, a tee, a time, and no two of a club: all hold, and everybody starts once."""
    wishes = [
        ClubsApart(),
        Together(("p0", "p8")),
        Apart(("p1", "p2", "p3")),
        Within("p4", Part.LATE),
        Within("p5", Part.OTHER_TEE),
        NotBefore("p6", time(8, 20)),
    ]

    found = draw(PLAYERS, STARTS, wishes)

    at = {key: start for start, group in enumerate(found.groups) for key in group}
    club = {one.key: one.club for one in PLAYERS}
    assert set(at) == set(club)
    assert at["p0"] == at["p8"]
    assert len({at["p1"], at["p2"], at["p3"]}) == 3
    assert in_part(STARTS, at["p4"], Part.LATE)
    assert STARTS[at["p5"]].tee == 10
    assert STARTS[at["p6"]].time >= time(8, 20)
    assert all(len({club[key] for key in group}) == len(group) for group in found.groups)
    assert draw(PLAYERS, STARTS, wishes) == found


def test_wishes_that_clash_are_named_and_no_others() -> None:
    """Of five wishes three cannot hold together: those are told, and nobody is drawn."""
    clash = [Together(("p0", "p8")), Together(("p8", "p3")), Apart(("p0", "p3"))]

    found = draw(PLAYERS, STARTS, [ClubsApart(), *clash, Within("p4", Part.EARLY)])

    # p8 and p3 are of one club: that they be together clashes with the clubs alone
    assert set(found.clash) in ({clash[0], clash[1], clash[2]}, {ClubsApart(), clash[1]})
    assert not any(found.groups)
    for one in found.clash:
        assert not draw(PLAYERS, STARTS, [wish for wish in found.clash if wish is not one]).clash


def test_nobody_meets_twice() -> None:
    """A second round on the wish that no pair of the first meets again."""
    first = draw(PLAYERS, STARTS).groups

    second = draw(PLAYERS, STARTS, no_repeats(first)).groups

    met = {frozenset(pair) for group in first for pair in combinations(group, 2)}
    assert not met & {frozenset(pair) for group in second for pair in combinations(group, 2)}


def test_the_second_round_turns_the_day() -> None:
    """Who went early from the first tee goes late from the other one, and the other way round."""
    players = [Drawn(f"p{number}") for number in range(24)]
    slots = starts(time(8), 8, minutes=10, tees=(1, 10))
    first = draw(players, slots).groups
    again = [Drawn(key) for key in turned(first, slots)]

    second = draw(again, slots).groups

    at = [{key: start for start, group in enumerate(groups) for key in group} for groups in (first, second)]
    for one in players:
        before, after = (where[one.key] for where in at)
        assert slots[before].tee != slots[after].tee
        assert in_part(slots, before, Part.EARLY) != in_part(slots, after, Part.EARLY)


def test_every_fault_of_a_draw_is_told() -> None:
    """A key twice, too many players, and a wish of somebody not drawn: in one answer."""
    with pytest.raises(InputError) as refused:
        draw([*PLAYERS, PLAYERS[0], Drawn("x")], STARTS, [Within("nobody", Part.EARLY)])

    assert len(refused.value.faults) == 3
    with pytest.raises(InputError, match="midnight"):
        starts(time(20), 60, minutes=10)


@given(st.permutations([one.key for one in PLAYERS]), st.text(min_size=1))
def test_a_random_order_depends_on_the_seed_alone(order: list[str], seed: str) -> None:
    """In which order players are named does not matter."""
    assert by_seed(order, seed) == by_seed([one.key for one in PLAYERS], seed)


def test_after_a_cut_the_leaders_go_last() -> None:
    """The highest score first."""
    assert by_score({"a": 70, "b": 75, "c": 72}, "x") == ("b", "c", "a")


@settings(deadline=None)
@given(st.integers(2, 15))
def test_in_a_round_robin_all_meet_once(count: int) -> None:
    """Every pair once, nobody twice in a round."""
    players = [str(number) for number in range(count)]

    rounds = round_robin(players)

    met = [frozenset(pair) for one in rounds for pair in one]
    assert len(met) == len(set(met)) == count * (count - 1) // 2
    for one in rounds:
        named = [key for pair in one for key in pair]
        assert len(named) == len(set(named))


@pytest.mark.parametrize(
    ("day", "latitude", "longitude", "told"),
    [
        (
            date(2024, 6, 20),
            51.4769,
            0.0,
            "20:21",
        ),  # Greenwich, 21:21 British Summer Time as almanacs print it
        (date(2024, 12, 21), 51.4769, 0.0, "15:53"),
    ],
)
def test_sunset_is_what_almanacs_print(day: date, latitude: float, longitude: float, told: str) -> None:
    """Within two minutes (times of Greenwich from memory, as almanacs print them)."""
    found = sunset(day, latitude, longitude)

    assert found is not None
    expected = datetime.combine(day, time.fromisoformat(told), UTC)
    assert abs(found - expected) <= timedelta(minutes=2)


def test_where_the_sun_does_not_set_there_is_no_sunset() -> None:
    """Midsummer beyond the polar circle; in midwinter the sun does not rise there, and in the south it is the other way round."""
    assert sunset(date(2024, 6, 21), 70.0, 25.0) is None
    assert not polar_night(date(2024, 6, 21), 70.0, 25.0)
    assert polar_night(date(2024, 12, 21), 70.0, 25.0)
    assert polar_night(date(2024, 6, 21), -70.0, 25.0)
    assert not polar_night(date(2024, 12, 21), -54.8, -68.3)


def test_a_time_as_a_calendar() -> None:
    """Lines of 75 octets at most, ended as RFC 5545 has it, commas escaped, the moment in UTC."""
    text = calendar(
        "Möwenpokal, first round " * 5,
        datetime(2025, 6, 21, 10, 30, tzinfo=UTC),
        minutes=250,
        where="Quillsand Links",
        key="cup-1-p7",
        made_at=datetime(2025, 6, 20, tzinfo=UTC),
        change=1,
    )

    assert "DTSTART:20250621T103000Z\r\n" in text
    assert "DTEND:20250621T144000Z\r\n" in text
    assert "Möwenpokal\\, first" in text
    assert max(len(line.encode()) for line in text.split("\r\n")) <= 75
