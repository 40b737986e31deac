"""The sheets of an event: the same ones for paper, page and terminal."""

from dataclasses import dataclass
from enum import Enum
from pathlib import Path

from marram.competition.conditions.event_file import EventFile
from marram.competition.conditions.reading import read_event_file
from marram.course.model import Course
from marram.errors import InputError
from marram.paper.event.bracket_sheet import BracketOnPaper, bracket_sheet
from marram.paper.event.event_report import RulingLine, Stop, event_report
from marram.paper.event.notice import notice_sheet
from marram.paper.event.officials_sheet import officials_sheet
from marram.paper.event.on_paper import OnPaper
from marram.paper.event.pace import RoundPace
from marram.paper.event.referees_sheet import referees_sheet
from marram.paper.event.result_sheet import result_sheet
from marram.paper.event.scorecards import scorecards
from marram.paper.event.starters_sheet import starters_sheet
from marram.paper.event.starting_sheet import starting_sheet
from marram.paper.event.tie_words import Listed
from marram.paper.sheet import Sheet
from marram.said import said
from marram.services.field.draw_file import read_draw
from marram.services.results.competition_kept import holes_of
from marram.services.results.competition_results import Result, read_results
from marram.words.texts import text


class SheetName(Enum):
    """A sheet of the event; the value is what is typed."""

    NOTICE = "notice"
    STARTING_SHEET = "starting-sheet"
    SCORECARDS = "scorecards"
    STARTERS_SHEET = "starters-sheet"
    REFEREES_SHEET = "referees-sheet"
    OFFICIALS_SHEET = "officials-sheet"
    RESULTS = "results"
    REPORT = "report"
    BRACKET = "bracket"


@dataclass(frozen=True)
class EventPapers:
    """What the sheets of a round of an event are made of.

    Attributes:
        event: the round.
        course: the map; ``None`` without one.
        results: every result; ``None`` where no cards are known.
        closed: whether the result is closed.
        rulings: the rulings of the log; ``None`` without a log.
        stops: when play was stopped.
        paces: how long the groups of each round took.
        bracket: the bracket or round robin; ``None``: none is drawn.
    """

    event: OnPaper
    course: Course | None = None
    results: tuple[Result, ...] | None = None
    closed: bool = False
    rulings: tuple[RulingLine, ...] | None = None
    stops: tuple[Stop, ...] = ()
    paces: tuple[RoundPace, ...] = ()
    bracket: BracketOnPaper | None = None

    def possible(self) -> tuple[SheetName, ...]:
        """Return the sheets that there is enough for."""
        return tuple(
            one
            for one in SheetName
            if not (one is SheetName.RESULTS and self.results is None)
            and not (one is SheetName.REPORT and self.rulings is None)
            and not (one is SheetName.BRACKET and self.bracket is None)
            and not (one is SheetName.SCORECARDS and not self.event.holes)
        )

    def sheet(self, name: SheetName, *, yards: bool = False) -> Sheet:
        """Return a sheet.

        Args:
            name: which.
            yards: whether lengths of holes are in yards.

        Raises:
            InputError: what it is made of is missing.
        """
        if name is SheetName.RESULTS:
            if self.results is None:
                raise InputError(said("There are no cards. Give a file of cards, or records with an event."))
            listed = [Listed(_name_of(one), one.board, one.teams) for one in self.results]
            return result_sheet(self.event, listed, closed=self.closed)
        if name is SheetName.REPORT:
            if self.rulings is None:
                raise InputError(said("There is no log. Give records with an event."))
            return event_report(self.event, self.rulings, self.stops, self.paces)
        if name is SheetName.BRACKET:
            if self.bracket is None:
                raise InputError(text("matches.bracket.none"))
            return bracket_sheet(self.event, self.bracket)
        if name is SheetName.REFEREES_SHEET:
            return referees_sheet(self.event, self.course, yards=yards)
        makers = {
            SheetName.NOTICE: notice_sheet,
            SheetName.STARTING_SHEET: starting_sheet,
            SheetName.SCORECARDS: scorecards,
            SheetName.STARTERS_SHEET: starters_sheet,
            SheetName.OFFICIALS_SHEET: officials_sheet,
        }
        return makers[name](self.event)


def _name_of(result: Result) -> str:
    score = text(f"competition.score.{result.score.value}")
    if result.division is None:
        return score
    return text("competition.of_division", score=score, division=result.division.name)


def papers_of_file(
    event: Path | None,
    *,
    course: Course | None = None,
    round_: int = 1,
    draw: Path | None = None,
    cards: Path | None = None,
) -> EventPapers:
    """Return what the sheets of an event in files are made of.

    Args:
        event: ``event.json``; ``None``: the event that the file of cards holds.
        course: the map.
        round_: the number of the round, from 1.
        draw: the groups of the round, as ``marram draw --json`` prints them; ``None``: those of the event.
        cards: the file of cards.

    Raises:
        InputError: a file cannot be used; every fault is listed.
    """
    found: EventFile | None = None if event is None else read_event_file(event)
    results: tuple[Result, ...] | None = None
    if cards is not None:
        of_cards, results = read_results(cards)
        found = found or of_cards
    if found is None:
        raise InputError(said("No event is given. Name its file, or a file of cards, or records."))
    drawn = None if draw is None else read_draw(draw)
    holes = holes_of(course, found.holes) if course else ()
    return EventPapers(OnPaper(found, round_, holes, course.name if course else "", drawn), course, results)
