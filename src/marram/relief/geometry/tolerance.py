"""The tolerances of the layer, each named once.

Distances decide; polygons only draw. A buffered circle is a polygon *inside* the circle, so a point near
its edge would be refused by the picture and allowed by a tape.
"""

from marram.course.lies import tolerance as course

TOLERANCE = 0.001
"""Metres: a distance decides to this. Far finer than any tape or estimate on the ground (Rule 1.3b(2)
accepts reasonable judgement), far coarser than the rounding of a double (1e-13 m at 500 m)."""

ROUNDING = 1e-10
"""Metres: how deep an exact construction may cut into a shape because of rounding."""

ARC_ERROR = 0.0001
"""Metres: how far a drawn arc may lie from the true circle, always on the cautious side."""

BALL_RADIUS = course.BALL_RADIUS
"""Metres: half the smallest diameter of a ball."""

YARD = 0.9144
"""Metres in an international yard."""
