"""Exact numbers, and the one way in which the Rules of Handicapping round.

A value of .5 is always rounded upwards, towards plus infinity: 30.5 becomes 31, -1.5 becomes -1, and a differential
of -1.55 becomes -1.5 (Rules 5.1c and 6.1, as read in the published text; Appendix C says of a plus Playing Handicap
that it moves up towards zero, rounding included).
"""

from decimal import Decimal
from fractions import Fraction
from math import floor

HALF = Fraction(1, 2)

Number = int | Decimal | Fraction
"""An exact number. A binary floating-point number is none: 14.3 cannot be held in it."""


def to_whole(value: Fraction) -> int:
    """Return the nearest whole number, .5 upwards."""
    return floor(value + HALF)


def to_tenth(value: Fraction) -> Fraction:
    """Return the nearest tenth, .05 upwards."""
    return Fraction(to_whole(value * 10), 10)


def is_tenth(value: Fraction) -> bool:
    """Return whether a value has one decimal at most."""
    return (value * 10).denominator == 1
