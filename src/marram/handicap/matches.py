"""Strokes in a match: what the others receive from the player or side with the lowest handicap (Appendix C).

Three ways of working out a Four-Ball match are in print, and can differ by a stroke: the Terms of the Competition name
one. The governing text is the default.
"""

from collections.abc import Sequence
from enum import Enum
from fractions import Fraction

from marram.errors import BadHandicap
from marram.handicap.allowances import Allowance
from marram.handicap.arithmetic import to_whole
from marram.handicap.course_handicaps import CourseHandicap
from marram.handicap.playing_handicaps import Basis, playing_handicap
from marram.handicap.worked import Worked, step, worked
from marram.said import said


class MatchMethod(Enum):
    """In which order allowance, rounding and difference are taken."""

    PLAYING_HANDICAPS = "playing_handicaps"
    """Allowance and rounding for each, then the difference from the lowest: the text of Appendix C."""
    UNROUNDED_DIFFERENCE = "unrounded_difference"
    """Difference of the unrounded Course Handicaps, then the allowance, then one rounding (an American association's
    guidance to Rule 7, told by an analyst in February 2025)."""
    ROUNDED_DIFFERENCE = "rounded_difference"
    """Difference of the whole-number Course Handicaps, then the allowance, then one rounding (a paper for English
    captains, April 2024)."""


def match_strokes(
    courses: Sequence[CourseHandicap],
    share: Allowance,
    *,
    method: MatchMethod = MatchMethod.PLAYING_HANDICAPS,
    basis: Basis = Basis.UNROUNDED,
) -> tuple[Worked, ...]:
    """Return the strokes that each player of a match receives, in the order given; the lowest receives none.

    Args:
        courses: the Course Handicaps of all players of the match (two of a single, four of a Four-Ball match).
        share: 100 % for a single, 90 % for Four-Ball, unless the Terms say otherwise.
        method: the order of the steps.
        basis: with ``PLAYING_HANDICAPS``, what the allowance is applied to.

    Raises:
        BadHandicap: fewer than two players, or an allowance of a side.
    """
    if len(courses) < 2:
        raise BadHandicap(said("A match has two players at least. Give the Course Handicap of each."))
    if method is MatchMethod.PLAYING_HANDICAPS:
        return differences([playing_handicap(one, share, basis=basis) for one in courses])
    playing_handicap(courses[0], share)  # says what is wrong with the allowance
    values = [
        one.unrounded if method is MatchMethod.UNROUNDED_DIFFERENCE else Fraction(one.rounded)
        for one in courses
    ]
    lowest = min(values)
    found = []
    for value in values:
        apart = value - lowest
        allowed = apart * share.of(0)
        found.append(
            worked(
                step("course_difference", "C", apart, value=value, lowest=lowest),
                step("allowed", "6.2a", allowed, value=apart, share=share.shares[0]),
                step("strokes_rounded", "6.2a", to_whole(allowed), value=allowed),
            )
        )
    return tuple(found)


def differences(playing: Sequence[Worked]) -> tuple[Worked, ...]:
    """Return what players, or sides of Foursomes, receive from the one with the lowest Playing Handicap."""
    lowest = min(one.value for one in playing)
    return tuple(
        worked(
            *one.steps, step("playing_difference", "C", one.value - lowest, value=one.value, lowest=lowest)
        )
        for one in playing
    )
