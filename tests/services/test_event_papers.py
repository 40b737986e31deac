"""The sheets of an event out of its records: the report holds each ruling as it stands once, and those disputed with their relief."""

import re
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from marram.errors import InputError
from marram.paper.event.event_report import RulingLine
from marram.paper.sheet import Picture, Sheet, Table, Words
from marram.records.entry import Entry, Kept, new_ident
from marram.records.log import Log
from marram.services.cases.case import Act, Case, Spot
from marram.services.day.suspension import resuming, suspending, suspensions
from marram.services.kinds.rulings import Instead
from marram.services.kinds.suspension import Cause, Suspension
from marram.services.log.differences import put_before_chief
from marram.services.log.log import About, ruling_entry
from marram.services.log.opinions import answering, asking
from marram.services.sheets.event_papers import EventPapers, SheetName
from marram.services.sheets.event_papers_kept import papers_of_records
from marram.services.sheets.report_lines import ruling_lines
from tests.services.scoring import NOON, Scoring, scoring

UNPLAYABLE = {
    "area_of_ball": "general_area",
    "spot_of_ball_known": "yes",
    "last_stroke_from_penalty_area": "no",
}
IN_THE_OPEN = Spot(55.002449, 4.006564)
"""A place in the general area of the fifteenth of the invented course."""


@pytest.fixture
def here(tmp_path: Path) -> Iterator[Scoring]:
    with scoring(tmp_path) as made:
        yield made


class Ruled:
    """Rulings added to a log one after the other, five minutes apart."""

    def __init__(self, here: Scoring) -> None:
        self.here, self.at = here, NOON

    def case(self, hole: int = 15, option: str | None = None, spot: Spot | None = IN_THE_OPEN) -> Case:
        conditions = self.here.competition.file
        places = {} if spot is None else {"ball": spot}
        return Case(
            conditions.played_on or NOON.date(),
            (Act("unplayable_ball", UNPLAYABLE, places, option=option),),
            conditions.form_of_play,
            conditions.sides,
            conditions.local_rules,
            hole,
        )

    def ruling(self, about: About | None = None, case: Case | None = None) -> Kept:
        self.at += timedelta(minutes=5)
        return self.here.add(ruling_entry(case or self.case(), self.at, about))

    def asked(self, about: Kept) -> Kept:
        ident = f"00000000-0000-4000-8000-{about.number:012d}"
        return self.here.add(
            asking(ident, self.at, by=None, about=about.id, case=None, headline="", thinks="I fear so.")
        )

    def answered(self, asked: Kept, *, agrees: bool) -> Kept:
        ident = f"00000000-0000-4000-9000-{asked.number:012d}"
        after = self.at + timedelta(minutes=3)
        return self.here.add(answering(ident, after, asked, by=None, agrees=agrees, words="It is so."))

    def lines(self) -> list[RulingLine]:
        return list(ruling_lines(self.here.log, self.here.event, UTC, self.here.course))

    def papers(self) -> EventPapers:
        return papers_of_records(self.here.records, None, course=self.here.course)


def words_of(sheet: Sheet) -> str:
    return "\n".join(words for _, words in sheet.lines())


def table(sheet: Sheet, heading: str) -> list[tuple[str, ...]]:
    (found,) = [one for one in sheet.parts if isinstance(one, Table) and one.heading == heading]
    return [tuple(cell.words for cell in row) for row in found.rows]


def disputed(sheet: Sheet) -> list[str]:
    return [one.heading for one in sheet.parts if isinstance(one, Words) and "Disputed" in one.heading]


def test_each_ruling_that_stands_is_reported_once(here: Scoring) -> None:
    """One that was corrected gives way to the correction, one that was withdrawn is gone; nothing else is left out."""
    ruled = Ruled(here)
    plain = ruled.ruling()
    wrong = ruled.ruling()
    right = ruled.ruling(About(corrects=wrong.id), ruled.case(hole=3))
    gone = ruled.ruling()
    here.add(Entry("withdrawn", ruled.at, corrects=gone.id))
    assert [(one.number, one.hole, one.corrects) for one in ruled.lines()] == [
        (plain.number, 15, False),
        (right.number, 3, True),
    ]
    sheet = ruled.papers().sheet(SheetName.REPORT)
    assert table(sheet, "By hole") == [("3", "1"), ("15", "1")]
    assert "2 rulings are in the log" in words_of(sheet)
    assert "of an earlier ruling" in words_of(sheet)


def test_rules_holes_and_hours_add_up(here: Scoring) -> None:
    """By hole and by hour each ruling counts once, by Rule once for each Rule it rests on; Rules stand in their order."""
    ruled = Ruled(here)
    ruled.at = datetime(2025, 6, 21, 12, 50, tzinfo=UTC)
    for hole in (15, 2, 15):
        ruled.ruling(case=ruled.case(hole=hole, spot=None))
    sheet = ruled.papers().sheet(SheetName.REPORT)
    assert table(sheet, "By hole") == [("2", "1"), ("15", "2")]
    by_hour = table(sheet, "By hour")
    assert [count for _, count in by_hour] == ["1", "2"]
    by_rule = table(sheet, "By Rule")
    assert all(count == "3" for _, count in by_rule)
    assert [rule for rule, _ in by_rule] == sorted(
        (rule for rule, _ in by_rule), key=lambda one: int(re.match(r"\d+", one)[0])
    )  # type: ignore[index]


def test_an_asked_ruling_is_told_with_its_relief_and_its_answer(here: Scoring) -> None:
    """What was told, what was ruled by which Rule, when it was asked and answered, and the relief that was taken."""
    ruled = Ruled(here)
    kept = ruled.ruling(case=ruled.case(option="lateral"))
    ruled.answered(ruled.asked(kept), agrees=True)
    ruled.ruling()
    sheet = ruled.papers().sheet(SheetName.REPORT)
    (heading,) = disputed(sheet)
    assert heading.startswith(f"Disputed: ruling {kept.number}, hole 15, ")
    told = words_of(sheet)
    assert re.search(r"Asked again  Asked at \d\d:05, answered at \d\d:08: to be ruled so\.", told)
    assert re.search(r"Ruled  .*Rules: 19", told)
    (picture,) = [one for one in sheet.parts if isinstance(one, Picture)]
    assert "Lateral relief" in picture.svg
    assert "Stroke and distance" not in picture.svg
    assert "I fear so." not in told
    assert "It is so." not in told


def test_what_was_given_instead_is_told_beside_what_was_computed(here: Scoring) -> None:
    """A ruling otherwise than computed shows both, and that it was not said where it was not."""
    ruled = Ruled(here)
    ruled.ruling(About(otherwise="The marker saw it.", instead=Instead(penalty_strokes=2)))
    ruled.ruling(About(otherwise="I decided so."))
    sheet = ruled.papers().sheet(SheetName.REPORT)
    told = words_of(sheet)
    assert len(disputed(sheet)) == 2
    assert "Otherwise than computed: penalty strokes given: 2." in told
    assert "instead is not in the log" in told
    assert "By the Rules" in told
    assert "The marker saw it." not in told


def test_a_question_stays_with_the_ruling_that_stands_in_its_place(here: Scoring) -> None:
    """The answer led to another ruling: the report tells question and answer with that one."""
    ruled = Ruled(here)
    wrong = ruled.ruling()
    ruled.answered(ruled.asked(wrong), agrees=False)
    right = ruled.ruling(About(corrects=wrong.id))
    (line,) = ruled.lines()
    assert line.number == right.number
    assert line.disputed
    assert [(one.agrees, one.answered is None) for one in line.disputed.asked] == [(False, False)]


def test_a_ruling_unlike_an_earlier_one_is_disputed(here: Scoring) -> None:
    """Two rulings of the same situation that went apart: the later is told, with how many it is unlike."""
    ruled = Ruled(here)
    ruled.ruling()
    other = ruled.ruling(About(otherwise="x", instead=Instead(penalty_strokes=0)))
    put = put_before_chief(other, Log(here.records), ruled.at)
    assert put
    here.add(put)
    first, second = ruled.lines()
    assert first.disputed is None
    assert second.disputed
    assert second.disputed.unlike == 1


def test_a_place_off_the_map_keeps_no_report_away(here: Scoring) -> None:
    """Relief that cannot be drawn is left out; everything else is told."""
    ruled = Ruled(here)
    ruled.asked(ruled.ruling(case=ruled.case(spot=Spot(10.0, 10.0))))
    sheet = ruled.papers().sheet(SheetName.REPORT)
    assert not [one for one in sheet.parts if isinstance(one, Picture)]
    assert "and not given" in words_of(sheet)


def test_no_player_and_no_official_is_named_in_the_report(here: Scoring) -> None:
    """The report can leave the house: whoever was ruled on, and whoever ruled, stays out of it."""
    ruled = Ruled(here)
    people = here.competition.people
    player = next(iter(people.values()))
    ruled.asked(ruled.ruling(About(player=player)))
    told = words_of(ruled.papers().sheet(SheetName.REPORT))
    assert not [name for name in people if name in told]


def test_stops_are_told_with_their_day(here: Scoring) -> None:
    """From when until when play was stopped, and why; one that is on has no end yet; without one the report says so."""
    ruled = Ruled(here)
    assert "Play was not stopped." in words_of(ruled.papers().sheet(SheetName.REPORT))
    thunder = here.add(suspending(new_ident(), NOON, Suspension.IMMEDIATE, Cause.LIGHTNING))
    assert re.search(
        r"from .*21 .*\d\d:00: lightning", words_of(ruled.papers().sheet(SheetName.REPORT)), re.IGNORECASE
    )
    (stopped,) = [one for one in suspensions(here.log, here.event) if one.entry.id == thunder.id]
    on = NOON + timedelta(hours=1)
    here.add(resuming(new_ident(), on, stopped, on))
    (told,) = [one.cause for one in ruled.papers().stops if one.last]
    assert told
    assert re.search(
        r"21 .*\d\d:00–\d\d:00: lightning", words_of(ruled.papers().sheet(SheetName.REPORT)), re.IGNORECASE
    )


def test_papers_of_records_hold_groups_cards_and_log(here: Scoring) -> None:
    """Everything an event in records has is there to print: who starts when, the cards that are in, the rulings."""
    papers = Ruled(here).papers()
    assert {SheetName.STARTING_SHEET, SheetName.SCORECARDS, SheetName.REPORT} <= set(papers.possible())
    names = [name for group in papers.event.groups for name in group.players]
    assert sorted(names) == sorted(one.name for one in papers.event.players)
    assert [one.number for one in papers.event.holes] == list(range(1, 19))
    assert not papers.closed


def test_an_event_or_round_that_is_not_there_is_refused(here: Scoring) -> None:
    """A name that no event has, and a round the event does not have, are named with what there is."""
    with pytest.raises(InputError, match=r"no event of that name.*Quillsand Midsummer Cup"):
        papers_of_records(here.records, "Nowhere Cup", course=here.course)
    with pytest.raises(InputError, match="no round 9"):
        papers_of_records(here.records, None, course=here.course, round_=9)
