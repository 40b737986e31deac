"""The referee's sheet: the holes with what is marked on them, the Local Rules, and who is where."""

from collections import Counter

from marram.course.model import Course, Feature, Kind
from marram.paper.event.notice import local_rules_part, officials_part
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Sheet, Side, Table, Words
from marram.words.ground import named_ground
from marram.words.lengths import YARD
from marram.words.texts import clock_words, text

MARKED = (
    Kind.RED_PENALTY_AREA,
    Kind.YELLOW_PENALTY_AREA,
    Kind.OUT_OF_BOUNDS,
    Kind.NO_PLAY_ZONE,
    Kind.DROPPING_ZONE,
    Kind.GROUND_UNDER_REPAIR,
    Kind.INTEGRAL_OBJECT,
)
"""What a referee looks up by hole."""
NEAR = 40.0
"""Metres from the line of play: what is so near, and belongs by the map to no single hole, stands with each such hole (own choice)."""


def referees_sheet(event: OnPaper, course: Course | None = None, *, yards: bool = False) -> Sheet:
    """Return the referee's sheet of a round.

    Args:
        event: the round.
        course: the map; without one, holes and markings are not listed, and the sheet says so.
        yards: whether lengths are in yards.
    """
    holes: Table | Words
    if course is None:
        holes = Words(text("paper.referee.holes"), (text("paper.referee.no_map"),))
    else:
        holes = _holes(event, course, yards=yards)
    columns = (
        Column(text("paper.column.time"), 0, names_row=True),
        Column(text("paper.column.tee"), 0, Side.RIGHT),
        Column(text("paper.column.player"), 1),
    )
    rows = tuple(
        (Cell(clock_words(group.time), strong=True), Cell(str(group.tee)), Cell(", ".join(group.players)))
        for group in event.groups
    )
    return Sheet(
        text("paper.title.referees_sheet"),
        event.name,
        event.about,
        event.day_words,
        (
            local_rules_part(event.found, text("paper.referee.codes")),
            officials_part(event.found),
            holes,
            Table(text("paper.groups"), columns, rows, text("paper.groups.none")),
        ),
        text("paper.foot.committee"),
    )


def _holes(event: OnPaper, course: Course, *, yards: bool) -> Table:
    played = {one.number for one in event.holes} or set(course.holes)
    columns = (
        Column(text("paper.column.hole"), 0, Side.RIGHT, names_row=True),
        Column(text("paper.column.par"), 0, Side.RIGHT),
        Column(text("paper.column.stroke_index"), 0, Side.RIGHT),
        Column(text("paper.column.length"), 0, Side.RIGHT),
        Column(text("paper.column.marked", near=_length(NEAR, yards=yards)), 1),
    )
    rows = []
    for number, hole in course.holes.items():
        if number not in played:
            continue
        length = hole.line.length
        rows.append(
            (
                Cell(str(number), strong=True),
                Cell("" if hole.par is None else str(hole.par)),
                Cell("" if hole.stroke_index is None else str(hole.stroke_index)),
                Cell(_length(length, yards=yards)),
                Cell(_marked(course, number) or text("paper.referee.nothing")),
            )
        )
    if elsewhere := _marked(course, None):
        rows.append((Cell(), Cell(), Cell(), Cell(), Cell(elsewhere, text("paper.referee.course"))))
    return Table(text("paper.referee.holes"), columns, tuple(rows))


def _length(metres: float, *, yards: bool) -> str:
    if yards:
        return text("paper.yards", yards=round(metres / YARD))
    return text("paper.metres", metres=round(metres))


def _marked(course: Course, hole: int | None) -> str:
    """Return what is marked on a hole, by the map or near its line of play; or what is near none."""
    found = [
        named_ground(one.kind, one.name)
        for one in course.of(*MARKED)
        if (hole in _holes_of(course, one) if hole is not None else not _holes_of(course, one))
    ]
    return "; ".join(f"{words} (×{count})" if count > 1 else words for words, count in Counter(found).items())


def _holes_of(course: Course, feature: Feature) -> tuple[int, ...]:
    """Return the holes of a feature: those that the map names, else those whose line of play passes near."""
    if feature.holes:
        return feature.holes
    return tuple(
        number for number, hole in course.holes.items() if hole.line.distance(feature.geometry) <= NEAR
    )
