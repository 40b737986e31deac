"""Lengths and areas as the place of the reader measures them: metres, or yards with feet and inches below ten yards.

A club-length and what is measured with a tape are told in feet and inches where courses are measured in yards (common
practice); the metres stand beside them, as yards stand beside metres elsewhere.
"""

from marram.words.place import writing
from marram.words.texts import text

YARD = 0.9144
"""Metres; by definition (international yard of 1959)."""
FOOT = YARD / 3
_INCHES = 12
_NEAR = 10 * YARD
"""Metres below which feet and inches are told; own choice."""


def length_words(metres: float) -> str:
    """Return a length that is measured on the ground, in the reader's unit and in the other: ``2.30 m (2.52 yd)``."""
    decimals = 2 if metres < 10 else 1
    if not writing().yards:
        return text(
            "relief.measure.length",
            metres=f"{metres:.{decimals}f}",
            yards=f"{metres / YARD:.{decimals}f}",
        )
    told = f"{metres:.{decimals}f}"
    if metres < _NEAR:
        return text("relief.measure.length.feet", length=near_words(metres), metres=told)
    return text("relief.measure.length.yards", metres=told, yards=f"{metres / YARD:.1f}")


def near_words(metres: float) -> str:
    """Return a short length in feet and inches, to the inch."""
    feet, inches = divmod(round(metres / FOOT * _INCHES), _INCHES)
    return text("relief.length.feet", feet=feet, inches=inches)


def bar_words(metres: float) -> str:
    """Return the length of a scale bar in words; it is round in the reader's unit."""
    if writing().yards:
        return text("relief.scale.yards", yards=f"{metres / YARD:.6g}")
    return text("relief.scale", metres=f"{metres:g}")


def square_feet(square_metres: float) -> float:
    """Return an area in square feet."""
    return square_metres / FOOT**2
