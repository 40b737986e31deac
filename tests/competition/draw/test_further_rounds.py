"""A further round out of the results so far; brackets by numbers; everybody's start in one calendar."""

from datetime import UTC, date, datetime, time
from itertools import combinations
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.cli.times import appointments
from marram.competition.conditions.choices import Score
from marram.competition.conditions.event_file import Cut, EventFile, Group, Ties
from marram.competition.draw.calendar import Appointment, calendar_of
from marram.competition.draw.wishes import starts
from marram.competition.matches.bracket import moved_on
from marram.competition.matches.seeding import numerical_draw
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import Hole, RoundCard, Row
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay
from marram.services.field.next_round import FurtherRound, draw_further
from tests.paper.events import event, on_paper

HOLE = (Hole(1, 4, 1),)


def board(
    scores: list[int], cut: Cut | None = None, form: FormOfPlay = FormOfPlay.STROKE_PLAY
) -> LeaderBoard:
    """The first of two rounds of one hole, with these scores of P0, P1 …."""
    terms = Terms(Scoring(form, Score.GROSS), (1, 1), cut, Ties())
    return LeaderBoard(
        terms, [RoundCard(f"P{at}", 1, HOLE, (Row(f"P{at}", (one,)),)) for at, one in enumerate(scores)]
    )


def further(
    scores: list[int], by: FurtherRound, cut: Cut | None = None, form: FormOfPlay = FormOfPlay.STROKE_PLAY
) -> list[str]:
    """The players of a further round in the order in which they start, two in a group."""
    slots = starts(time(8), 20, minutes=10, places=2)
    drawn = draw_further(EventFile(), board(scores, cut, form), slots, by)
    return [name for group in drawn.groups for name in group]


@settings(deadline=None, max_examples=25)
@given(scores=st.lists(st.integers(1, 9), min_size=1, max_size=9), leaders_first=st.booleans())
def test_a_further_round_goes_by_score(scores: list[int], leaders_first: bool) -> None:
    """Nobody with a better score starts before one with a worse, or after, where the leaders start first."""
    order = [scores[int(name[1:])] for name in further(scores, FurtherRound("s", leaders_first))]
    assert order == sorted(scores, reverse=not leaders_first)


def test_who_missed_the_cut_is_not_drawn() -> None:
    """The first two and ties play on; of the equal the seed decides, and always the same."""
    cut = Cut(1, places=2, ties=True)
    first = further([4, 3, 5, 4, 9], FurtherRound("s"), cut)
    assert set(first) == {"P0", "P1", "P3"}
    assert first[-1] == "P1"
    assert first == further([4, 3, 5, 4, 9], FurtherRound("s"), cut)


def test_with_points_the_leader_has_the_most() -> None:
    """Stableford: an ace is the most points, and the leader starts last."""
    assert further([5, 1, 4], FurtherRound("s"), form=FormOfPlay.STABLEFORD) == ["P0", "P2", "P1"]


def test_nobody_plays_again_with_whom_they_played() -> None:
    """By score the same pairs would meet; the wish takes them apart."""
    before = (Group("08:00", 1, ("P0", "P1")), Group("08:10", 1, ("P2", "P3")))
    slots = starts(time(8), 2, minutes=10, places=2)
    by = FurtherRound("s", before=before, not_again=True)
    drawn = draw_further(EventFile(), board([3, 3, 5, 5]), slots, by)
    pairs = {frozenset(pair) for group in drawn.groups for pair in combinations(group, 2)}
    assert pairs.isdisjoint({frozenset(("P0", "P1")), frozenset(("P2", "P3"))})


def test_nobody_plays_again_with_anybody_of_an_earlier_round() -> None:
    """Of four, P0 met P1 and then P2: only P3 is left; by the round before alone P0 could meet P1 again."""
    first = (Group("08:00", 1, ("P0", "P1")), Group("08:10", 1, ("P2", "P3")))
    second = (Group("08:00", 1, ("P0", "P2")), Group("08:10", 1, ("P1", "P3")))
    slots = starts(time(8), 2, minutes=10, places=2)
    by = FurtherRound("s", before=second, not_again=True, earlier=first)
    drawn = draw_further(EventFile(), board([3, 3, 5, 5]), slots, by)
    assert {frozenset(group) for group in drawn.groups} == {frozenset(("P0", "P3")), frozenset(("P1", "P2"))}


def test_turned_the_late_start_early() -> None:
    """The later half of the groups goes first, whatever the score."""
    before = tuple(Group(f"08:{at}0", 1, (f"P{2 * at}", f"P{2 * at + 1}")) for at in range(4))
    order = further([3] * 8, FurtherRound("s", before=before, turn=True))
    assert order == ["P4", "P5", "P6", "P7", "P0", "P1", "P2", "P3"]


def test_without_the_groups_before_there_is_nothing_to_turn() -> None:
    """What is missing is asked for."""
    with pytest.raises(InputError, match="Give the draw of that round"):
        further([3], FurtherRound("s", turn=True))


def test_the_draw_of_sixty_four_begins_as_it_is_published() -> None:
    """ "Come Gestire Una Gara" (2016), page 99: the cards lie in the general numerical draw with 1 on top, then 64, then 32."""
    pairs = numerical_draw([str(one) for one in range(1, 65)])
    assert [one for pair in pairs for one in pair][:3] == ["1", "64", "32"]


@given(st.integers(1, 7))
def test_the_highest_stand_on_opposite_sides_and_so_on_down_the_line(halvings: int) -> None:
    """Committee Procedures 5F (The R&A, 2023): the first two in different halves, the first four in different quarters …"""
    count = 2**halvings
    pairs = numerical_draw([str(one) for one in range(1, count + 1)])
    order = [int(one) for pair in pairs for one in pair if one]
    for parts in (2**step for step in range(1, halvings + 1)):
        size = count // parts
        highest = [sum(one <= parts for one in order[at : at + size]) for at in range(0, count, size)]
        assert highest == [1] * parts
    assert {int(one) + int(two or 0) for one, two in pairs} == {count + 1}  # lowest handicap against highest


@given(st.integers(2, 70))
def test_the_highest_meet_as_late_as_can_be_and_have_the_byes(count: int) -> None:
    """If the higher always wins, the last 2, 4, 8 … are the first 2, 4, 8 … numbers; byes go from the top down."""
    pairs = numerical_draw([f"{number:02d}" for number in range(1, count + 1)])
    assert sorted(one for pair in pairs for one in pair if one) == [f"{at:02d}" for at in range(1, count + 1)]
    byes = sorted(one for one, two in pairs if two is None)
    assert byes == [f"{at:02d}" for at in range(1, len(byes) + 1)]
    won: dict[tuple[int, int], str] = {}
    for _ in range(8):
        rounds = moved_on(pairs, won)
        for one in (meeting for meetings in rounds for meeting in meetings):
            if one.first and one.second:
                won[one.round, one.number] = min(one.first, one.second)
    for meetings in moved_on(pairs, won)[1:]:
        here = sorted(side for one in meetings for side in (one.first, one.second) if side)
        assert here == [f"{at:02d}" for at in range(1, len(here) + 1)]


def test_a_bracket_needs_two_and_each_once() -> None:
    """Both faults at once."""
    with pytest.raises(InputError, match="two sides at least"):
        numerical_draw(["a"])
    with pytest.raises(InputError, match="twice"):
        numerical_draw(["a", "a"])


def test_everybodys_start_is_in_the_calendar_by_the_clock_of_the_place() -> None:
    """RFC 5545: one VEVENT with a UID of its own for each player; 08:00 in London in June is 07:00 UTC."""
    sheet = on_paper(event([1, 2, 3, 4], club="Quillsand; Links, Old"))
    made = appointments(sheet, date(2025, 6, 21), ZoneInfo("Europe/London"), 270, 2)
    written = calendar_of(made.values(), datetime(2025, 6, 1, tzinfo=UTC))
    lines = written.replace("\r\n ", "").split("\r\n")
    assert lines[0] == "BEGIN:VCALENDAR"
    assert lines[-2:] == ["END:VCALENDAR", ""]
    assert lines.count("BEGIN:VEVENT") == lines.count("END:VEVENT") == 4
    assert len({one for one in lines if one.startswith("UID:")}) == 4
    assert lines.count("SEQUENCE:2") == 4
    assert [one for one in lines if one.startswith("DTSTART")] == [
        *["DTSTART:20250621T070000Z"] * 3,
        "DTSTART:20250621T071000Z",
    ]
    assert "LOCATION:Quillsand\\; Links\\, Old\\, hole 1" in lines
    assert all(len(one.encode()) <= 75 for one in written.split("\r\n"))


def test_a_changed_start_keeps_its_key() -> None:
    """RFC 5545, 3.8.7.4: a later version of the same event has its UID and a higher SEQUENCE."""
    early = on_paper(event([1]))
    late = on_paper(event([1], starting_times=[{"time": "09:30", "tee": 10, "players": ["P0 Ölander-0"]}]))
    zone, day = ZoneInfo("Europe/London"), date(2025, 6, 21)
    (before,), (after,) = (list(appointments(one, day, zone, 270, 0).values()) for one in (early, late))
    assert isinstance(before, Appointment)
    assert before.key == after.key
    assert before.starts_at != after.starts_at
