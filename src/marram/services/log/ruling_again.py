"""A recorded ruling as it is told to people who were not there: what happened, what was ruled, the relief as it was drawn."""

from collections.abc import Iterator, Sequence

from marram.course.model import Course
from marram.errors import MarramError
from marram.records.entry import Kept
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.pictures.sheet import sheet_svg
from marram.rules.relief_option import ReliefOption
from marram.rules.ruling import Ruling
from marram.services.cases.address import Address
from marram.services.cases.address_case import address_of
from marram.services.cases.case import Act, Case
from marram.services.cases.case_file import read_case
from marram.services.cases.flag import course_of
from marram.services.cases.rulings import rule_on
from marram.services.ground.relief import draw_options
from marram.words.telling import telling
from marram.words.texts import capital, text


def told_again(entry: Kept) -> tuple[str, ...]:
    """Return what was told of a recorded case, as sentences that name nobody; none where it can no longer be read."""
    case = _case(entry)
    if case is None:
        return ()
    sentences: list[str] = []
    for act in case.incidents:
        try:
            sentences += telling(act.incident, act.facts, text("situations.the_player"))
        except (MarramError, KeyError):  # a fact that nobody has said yet how to tell
            return ()
    return tuple(map(capital, sentences))


def relief_drawn(entry: Kept, course: Course) -> str:
    """Return the relief of a recorded case as one drawing, as the desk shows it; empty where there is none to draw.

    Of an act whose relief was taken the option taken is drawn, else every option that the places told allow.

    Args:
        entry: the entry of the ruling.
        course: the map of the day.
    """
    case = _case(entry)
    if case is None:
        return ""
    with_flag = course_of(course, case)
    drawings = [
        areas
        for number, act in enumerate(case.incidents, start=1)
        if act.places
        for areas in _areas(with_flag, case, act, number)
    ]
    return sheet_svg(drawings, course) if drawings else ""


def _case(entry: Kept) -> Case | None:
    try:
        return read_case(entry.content["case"])
    except (MarramError, KeyError):
        return None


def _areas(course: Course, case: Case, act: Act, number: int) -> Iterator[Sequence[ReliefArea]]:
    try:
        ruled = rule_on(course, address_of(Address, case, number).asked())
    except MarramError:  # a place off this map, or an answer that the book of today no longer takes
        return
    if not isinstance(ruled.result, Ruling) or ruled.lie.hole is None or ruled.lie.place is None:
        return
    for one in draw_options(course, ruled, _shown(ruled.result.relief, act.option)):
        if one.areas:
            yield one.areas


def _shown(options: Sequence[ReliefOption], taken: str | None) -> Sequence[ReliefOption]:
    of_that_kind = [one for one in options if one.kind.value == taken]
    return of_that_kind or ([] if taken == "as_it_lies" else options)
