"""A ball already dropped, checked against each relief area: did it land and rest inside, what comes next."""

from collections.abc import Iterator, Mapping, Sequence

from marram.cli.show import Line
from marram.errors import InputError
from marram.relief import Answer, Drawn
from marram.relief.drop import DropCheck, check_drop
from marram.relief.geometry.limits import Bound
from marram.words.messages import term

XY = tuple[float, float]

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


def drop_checks(
    answers: Sequence[Answer], dropped: XY | None, at_rest: XY | None, drop: int
) -> Mapping[int, DropCheck]:
    """Return the check of each option that a ball can be dropped under, by the option's number.

    Raises:
        InputError: a resting place is given without the spot first touched, or no such drop counts.
        BadPlace: the ball landed inside and no resting place is given.
    """
    if dropped is None:
        if at_rest is not None:
            raise InputError("--at-rest needs --dropped: where the ball first touched the ground.")
        return {}
    return {
        number: check_drop(answer.areas[0], dropped, at_rest, drop)
        for number, answer in enumerate(answers, start=1)
        if isinstance(answer, Drawn) and not answer.areas[0].is_spot and answer.areas[0].radius
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
