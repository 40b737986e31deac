"""A dangerous animal as a condition on the map (Rule 16.2).

Keep away from the animal and follow local advice: safety comes before any measuring. The radius is for the
referee or the Committee to judge from the kind of animal; the Rules name none.
"""

from math import cos, isfinite, pi

import numpy as np
import shapely

from marram.errors import BadPlace
from marram.relief.geometry.outline import XY, Outline
from marram.said import said

_CORNERS = 48


def danger(animal: XY, radius: float) -> Outline:
    """Return the ground within ``radius`` metres of an animal as a condition to take relief from.

    The outline is a polygon around the circle, at most 0.22 % of the radius outside it: never too small.

    Raises:
        BadPlace: if the radius is not a positive length.
    """
    if not isfinite(radius) or radius <= 0:
        raise BadPlace(
            said("A radius of {radius} m around an animal cannot be; give metres above 0.", radius=radius)
        )
    angles = np.arange(_CORNERS) * 2 * pi / _CORNERS
    outer = radius / cos(pi / _CORNERS)
    points = np.column_stack([animal[0] + outer * np.cos(angles), animal[1] + outer * np.sin(angles)])
    return Outline(shapely.Polygon(points))
