"""What a set of tees is rated at."""

from dataclasses import dataclass
from fractions import Fraction

from marram.handicap.checking import Checking
from marram.said import said

STANDARD_SLOPE = 113
"""The Slope Rating of a course of standard difficulty (Definitions)."""
LEAST_SLOPE, MOST_SLOPE = 55, 155
"""The Slope Rating runs from 55 to 155 (Definitions; second-hand)."""


@dataclass(frozen=True, slots=True)
class RatedTee:
    """A set of tees as it is rated for a player.

    Attributes:
        course_rating: of the holes played, in strokes.
        slope: the Slope Rating of the holes played.
        par: of the holes played.
        holes: 18 or 9; the ratings of nine holes are those of the very nine that are played (Rule 6.1b).
    """

    course_rating: Fraction
    slope: int
    par: int
    holes: int = 18

    @classmethod
    def read(cls, course_rating: object, slope: object, par: object, holes: object = 18) -> "RatedTee":
        """Read a rating as it is given.

        Raises:
            BadHandicap: with every figure that cannot be used.
        """
        checking = Checking()
        found = cls.checked(checking, course_rating, slope, par, holes)
        checking.done()
        return found

    @classmethod
    def checked(
        cls, checking: Checking, course_rating: object, slope: object, par: object, holes: object = 18
    ) -> "RatedTee":
        """Read a rating, its faults kept by ``checking``."""
        count = checking.whole_number(said("The number of holes"), holes)
        if count not in {9, 18}:
            checking.fault(said("A rating is one of 9 or 18 holes, not of {holes}.", holes=str(holes)))
            count = 18
        return cls(
            checking.number(
                said("Course Rating"), course_rating, least=2 * count, most=6 * count, tenths=True
            ),
            checking.whole_number(said("Slope Rating"), slope, least=LEAST_SLOPE, most=MOST_SLOPE),
            checking.whole_number(said("Par"), par, least=3 * count, most=6 * count),
            count,
        )
