"""The check of a dropped ball in words: did it land and rest inside, what comes next."""

from collections.abc import Iterator

from marram.cli.show import Line
from marram.relief.drop import DropCheck
from marram.relief.geometry.limits import Bound
from marram.words.messages import term

_LIMITS = {
    Bound.NOT_NEARER: "nearer the hole than allowed",
    Bound.SIZE: "outside the club-lengths",
    Bound.AREA: "in an area of the course that is not allowed",
    Bound.ON_COURSE: "out of bounds",
    Bound.COMPLETE_RELIEF: "where the condition still interferes",
    Bound.CORRIDOR: "outside the corridor",
    Bound.ON_LINE: "not on the line",
    Bound.SAME_AREA: "in another area of the course than it first touched",
}


def drop_lines(check: DropCheck) -> Iterator[Line]:
    """Yield what the check found and what comes next."""
    where = "where it must" if check.landed.inside else "outside"
    rests = "" if check.rests is None else f"; it rests {'inside' if check.rests.inside else 'outside'}"
    yield "item", f"The ball dropped first touched {where}{rests}."
    for one in (*check.landed.failures, *(check.rests.failures if check.rests else ())):
        yield "item", f"It is {_LIMITS[one.bound]}."
    counts = "" if check.counts else " This drop does not count."
    yield "title", f"  Next ({check.citation}): {term(check.next)}{counts}"
