"""Rule 6.2 and Appendix C: a Course Handicap becomes a Playing Handicap, of a player or of a side."""

from collections.abc import Sequence
from enum import Enum
from fractions import Fraction

from marram.handicap.allowances import Allowance
from marram.handicap.arithmetic import to_whole
from marram.handicap.checking import Checking
from marram.handicap.course_handicaps import CourseHandicap
from marram.handicap.worked import Step, Worked, step, worked
from marram.said import said


class Basis(Enum):
    """What an allowance is applied to."""

    UNROUNDED = "unrounded"
    """The unrounded Course Handicap: the text of 2024 (Rule 6.2a, Appendix C), recommended in 2020 too (6.1/2)."""
    ROUNDED_FIRST = "rounded_first"
    """The whole-number Course Handicap: England, Ireland and Wales (a rules adviser's published note)."""


def playing_handicap(course: CourseHandicap, share: Allowance, *, basis: Basis = Basis.UNROUNDED) -> Worked:
    """Return the Playing Handicap of one player: the allowance, then one rounding (Rule 6.2a).

    Raises:
        BadHandicap: the allowance is one of a side, or outside 0 to 200 per cent.
    """
    checking = Checking()
    _check(checking, share)
    if share.of_side:
        checking.fault(
            said("This allowance makes one handicap of a side. Give the Course Handicaps of all partners.")
        )
    checking.done()
    value = _basis(course, basis)
    allowed = value * share.of(0)
    return worked(
        *_without_rounding(course),
        *_rounded_first(course, basis),
        step("allowed", "6.2a", allowed, value=value, share=share.shares[0]),
        step("playing_rounded", "6.2a", to_whole(allowed), value=allowed),
    )


def side_handicap(
    courses: Sequence[CourseHandicap], share: Allowance, *, basis: Basis = Basis.UNROUNDED
) -> Worked:
    """Return the one Playing Handicap that partners have together: the sum of their shares, rounded once (Appendix C).

    Args:
        courses: the Course Handicaps of all partners, in any order: the shares go from the lowest handicap up.
        share: e.g. 50/50 for Foursomes, 60/40 for greensomes, 25/20/15/10 for a scramble of four.
        basis: what the shares are taken of.

    Raises:
        BadHandicap: there are more or fewer partners than shares.
    """
    steps, total = _shared(courses, share, basis)
    return worked(
        *steps,
        step("side_sum", "C", total),
        step("side_rounded", "6.2a", to_whole(total), value=total),
    )


def side_sum(
    courses: Sequence[CourseHandicap], share: Allowance, *, basis: Basis = Basis.UNROUNDED
) -> Worked:
    """Return the sum of the shares of a side before it is rounded, for what is still to be added to it.

    Raises:
        BadHandicap: there are more or fewer partners than shares.
    """
    steps, total = _shared(courses, share, basis)
    return worked(*steps, step("side_sum", "C", total))


def _shared(courses: Sequence[CourseHandicap], share: Allowance, basis: Basis) -> tuple[list[Step], Fraction]:
    checking = Checking()
    _check(checking, share)
    if len(courses) != len(share.shares):
        checking.fault(
            said(
                "This allowance is for a side of {sides}, not of {count}.",
                sides=len(share.shares),
                count=len(courses),
            )
        )
    checking.done()
    steps: list[Step] = []
    total = Fraction(0)
    for place, course in enumerate(sorted(courses, key=lambda one: _basis(one, basis))):
        value = _basis(course, basis)
        part = value * share.of(place)
        total += part
        steps += _without_rounding(course)
        steps += _rounded_first(course, basis)
        steps.append(step("share", "C", part, value=value, share=share.shares[place]))
    return steps, total


def _check(checking: Checking, share: Allowance) -> None:
    for one in share.shares:
        checking.whole_number(said("A handicap allowance in per cent"), one, least=0, most=200)


def _basis(course: CourseHandicap, basis: Basis) -> Fraction:
    return course.unrounded if basis is Basis.UNROUNDED else Fraction(course.rounded)


def _rounded_first(course: CourseHandicap, basis: Basis) -> tuple[Step, ...]:
    if basis is Basis.UNROUNDED:
        return ()
    return (step("rounded_first", "6.2a", _basis(course, basis), value=course.unrounded),)


def _without_rounding(course: CourseHandicap) -> tuple[Step, ...]:
    return tuple(one for one in course.steps if one.key != "course_rounded")
