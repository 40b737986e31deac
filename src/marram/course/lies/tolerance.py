"""How near is touching, each number named once."""

BALL_RADIUS = 0.04267 / 2
"""Half the least diameter of a ball, metres (Equipment Rules, Part 4: not less than 1.680 inches, 42.67 mm)."""

EDGE_TOLERANCE = 1e-6
"""A ball this near an edge touches it, metres: far below what can be seen, far above rounding."""

TOUCH = BALL_RADIUS + EDGE_TOLERANCE
"""A ball touches an area when its centre is no further from the area than this, metres."""

SEAM = 0.02
"""Two areas no further apart than this are drawn as joined, metres (own choice).

Maps are kept to seven decimals of a degree, 11 mm on the ground: two edges that are meant to be one, with corners
at different places along it, lie up to 16 mm apart in such a map.
"""
