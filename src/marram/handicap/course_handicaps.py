"""Rule 6.1: a Handicap Index becomes a Course Handicap."""

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction

from marram.handicap.arithmetic import HALF, to_tenth, to_whole
from marram.handicap.checking import Checking
from marram.handicap.rated_tee import STANDARD_SLOPE, RatedTee
from marram.handicap.worked import Step, step


class Formula(Enum):
    """Whether the difference between Course Rating and par belongs to a Course Handicap."""

    WITH_RATING = "with_rating"
    """Index × Slope Rating ÷ 113 + (Course Rating − par): the text of Rule 6.1a, in both editions."""
    SLOPE_ONLY = "slope_only"
    """Index × Slope Rating ÷ 113: an option that several associations took until 2024 (a club's published table)."""


class HalfIndex(Enum):
    """How half a Handicap Index goes into the Course Handicap of nine holes."""

    EXACT = "exact"
    """As it is: by the text of Rule 6.1b rounding is the last step, to a whole number."""
    TO_A_TENTH = "to_a_tenth"
    """Rounded to a tenth first: the USGA's Local Guidance to Rule 6, with 8.7 ÷ 2 = 4.4 for an example."""


@dataclass(frozen=True, slots=True)
class CourseHandicap:
    """A Course Handicap, both ways in which it is used.

    Attributes:
        unrounded: what a handicap allowance is applied to (Rule 6.2a).
        rounded: what net double bogey, net par and strokes without an allowance go by (Rules 3.1b, 3.2, 6.1).
        tee: what it was worked out for; ``None`` where it was given as a number.
        steps: how.
    """

    unrounded: Fraction
    rounded: int
    tee: RatedTee | None
    steps: tuple[Step, ...]

    @classmethod
    def given(cls, course_handicap: object) -> "CourseHandicap":
        """Return a Course Handicap that was worked out elsewhere; a plus one is negative.

        Raises:
            BadHandicap: it is no number.
        """
        checking = Checking()
        value = checking.number("Course Handicap", course_handicap, least=-30, most=120)
        checking.done()
        steps = (step("course_given", "6.1", value),)
        return cls(value, to_whole(value), None, steps)


def course_handicap(
    handicap_index: object,
    tee: RatedTee,
    *,
    formula: Formula = Formula.WITH_RATING,
    half: HalfIndex = HalfIndex.EXACT,
) -> CourseHandicap:
    """Return the Course Handicap of a player on a set of tees (Rule 6.1a; nine holes: Rule 6.1b).

    Args:
        handicap_index: ``"14.3"``, ``"+1.4"``, or an exact number with plus handicaps negative.
        tee: the ratings of the holes to be played.
        formula: the governing text, or the national option of before 2024.
        half: for nine holes, the governing text, or the guidance of one association.

    Raises:
        BadHandicap: the index cannot be used.
    """
    checking = Checking()
    index = checking.index(handicap_index)
    checking.done()
    citation = "6.1a" if tee.holes == 18 else "6.1b"
    steps = []
    part = index
    if tee.holes == 9:
        part = index * HALF
        steps.append(step("half_index", citation, part, index=index))
        if half is HalfIndex.TO_A_TENTH:
            exact, part = part, to_tenth(part)
            steps.append(step("half_rounded", citation, part, value=exact))
    sloped = part * Fraction(tee.slope, STANDARD_SLOPE)
    steps.append(step("sloped", citation, sloped, index=part, slope=tee.slope))
    value = sloped
    if formula is Formula.WITH_RATING:
        value += tee.course_rating - tee.par
        steps.append(
            step("rated", citation, value, sloped=sloped, course_rating=tee.course_rating, par=tee.par)
        )
    rounded = to_whole(value)
    steps.append(step("course_rounded", "6.1", rounded, value=value))
    return CourseHandicap(value, rounded, tee, tuple(steps))
