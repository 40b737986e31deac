"""Sheets that follow from play: how long groups took, and who still waits for a start in a later round."""

import json
from datetime import datetime
from pathlib import Path

import pytest

from marram.demo import EVENT
from marram.paper.event.pace import GroupPace, RoundPace
from marram.paper.sheet import Cards, Sheet, Table, Words
from marram.records.starting_sheet import GroupOfDay, groups
from marram.services.day.suspension import resuming, suspending, suspensions
from marram.services.kinds.suspension import Cause, Suspension
from marram.services.sheets.event_papers import SheetName
from marram.services.sheets.event_papers_kept import papers_of_records
from tests.services.scoring import PARS, Scoring, scoring


def first_groups(here: Scoring) -> list[GroupOfDay]:
    return groups(here.records, here.competition.rounds[0].id)


def at(clock: str) -> datetime:
    return datetime.fromisoformat(f"2025-06-21T{clock}").astimezone()


def returned(here: Scoring, group: GroupOfDay, *clocks: str) -> None:
    """Return the cards of a group at these times, in its order."""
    for player, clock in zip(group.players, clocks, strict=False):
        here.whole((player.id, here.competition.rounds[0].id), at=at(clock).isoformat())


def paces(here: Scoring) -> tuple[RoundPace, ...]:
    return papers_of_records(here.records, None, course=here.course).paces


def stopped(here: Scoring, first: str, last: str) -> None:
    ident = f"00000000-0000-4000-8000-{len(suspensions(here.log, here.event)):012d}"
    here.add(suspending(ident, at(first), Suspension.IMMEDIATE, Cause.LIGHTNING))
    (now,) = [one for one in suspensions(here.log, here.event) if one.entry.id == ident]
    here.add(resuming(ident.replace("-8000-", "-9000-"), at(last), now, at(last)))


def test_a_group_takes_from_its_start_to_its_last_card(tmp_path: Path) -> None:
    """The last of three cards counts; a group of which a card is out is not among those that are in."""
    with scoring(tmp_path) as here:
        one, two, *_ = first_groups(here)
        returned(here, one, "12:20", "12:35", "12:31")
        returned(here, two, "12:30", "12:40")
        first, second = paces(here)
        told = papers_of_records(here.records, None, course=here.course).sheet(SheetName.REPORT)
    assert first.groups == (GroupPace(1, 1, at("08:00"), at("12:35"), 275),)
    assert (first.of, first.given, second.groups) == (4, 270, ())
    words = [line.replace("\xa0", " ") for _, line in told.lines()]
    assert (
        "1 of 4 groups are in: 4 h 35 min on average, the shortest 4 h 35 min, the longest 4 h 35 min."
        in words
    )
    assert "A group was given 4 h 30 min: 1 took longer." in words
    (table,) = [part for part in told.parts if isinstance(part, Table) and len(part.columns) == 6]
    assert table.rows[0][-1].words.replace("\xa0", " ") == "+5 min"


def test_time_that_play_was_stopped_is_taken_off(tmp_path: Path) -> None:
    """Half an hour in the round counts in full, of a stop before the start only what falls into the round."""
    with scoring(tmp_path) as here:
        returned(here, first_groups(here)[0], "12:35", "12:35", "12:35")
        stopped(here, "07:30", "08:10")
        stopped(here, "10:00", "10:30")
        (one,) = paces(here)[0].groups
    assert one.minutes == 275 - 10 - 30


def test_who_ended_without_a_card_keeps_no_group_out(tmp_path: Path) -> None:
    """A group of which one withdrew is in with the cards of the others; one of whom all did took no time."""
    with scoring(tmp_path) as here:
        one, two, *_ = first_groups(here)
        round_ = here.competition.rounds[0].id
        returned(here, one, "12:10", "12:20")
        for player in (one.players[2], *two.players):
            here.entry("card_ended", (player.id, round_), {"how": "withdrawn"})
        (found,) = paces(here)[0].groups
    assert (found.number, found.minutes) == (1, 260)


def test_the_report_says_where_no_group_is_in(tmp_path: Path) -> None:
    """Nothing is made up before the first cards."""
    with scoring(tmp_path) as here:
        told = papers_of_records(here.records, None, course=here.course).sheet(SheetName.REPORT)
    (part,) = [one for one in told.parts if isinstance(one, Words) and one.heading == "Pace of play"]
    assert part.sentences == ("No group has returned all its cards.",)


def waiting(sheet: Sheet) -> set[str]:
    lists = [one for one in sheet.parts if isinstance(one, Words) and "Without" in one.heading]
    return {line.split(",")[0].split(" · ")[0] for one in lists for line in one.sentences}


@pytest.mark.parametrize("withdrawn", [False, True])
def test_who_plays_no_more_waits_for_no_start(tmp_path: Path, withdrawn: bool) -> None:
    """After the cut the sheets of the second round are for those who play on, and nobody else."""
    event = json.loads(EVENT.read_text(encoding="utf-8"))
    event |= {"scores": ["gross"], "cut": {"after_round": 1, "places": 5, "ties": False}}
    with scoring(tmp_path, event) as here:
        first = here.competition.rounds[0].id
        people = list(here.competition.people.items())
        for worse, (_, who) in enumerate(people):
            here.whole((who, first), (PARS[0] + worse, *PARS[1:]))
        if withdrawn:
            here.entry("card_ended", (people[0][1], here.competition.rounds[1].id), {"how": "withdrawn"})
        papers = papers_of_records(here.records, None, course=here.course, round_=2)
    through = {name for name, _ in people[withdrawn:5]}
    assert waiting(papers.sheet(SheetName.STARTING_SHEET)) == through
    (cards,) = papers.sheet(SheetName.SCORECARDS).parts
    assert isinstance(cards, Cards)
    assert {card.player for card in cards.cards} == through


def test_who_is_in_a_group_stays_on_the_first_sheet(tmp_path: Path) -> None:
    """A starting sheet printed again after play names everybody who started, also those who missed the cut since."""
    event = json.loads(EVENT.read_text(encoding="utf-8"))
    event |= {"scores": ["gross"], "cut": {"after_round": 1, "places": 1, "ties": False}}
    with scoring(tmp_path, event) as here:
        for worse, who in enumerate(here.competition.people.values()):
            here.whole((who, here.competition.rounds[0].id), (PARS[0] + worse, *PARS[1:]))
        sheet = papers_of_records(here.records, None, course=here.course).sheet(SheetName.STARTING_SHEET)
        names = set(here.competition.people)
    (table,) = [one for one in sheet.parts if isinstance(one, Table)]
    assert {cell.words for row in table.rows for cell in row[3:] if cell.words} == names
    assert not waiting(sheet)
