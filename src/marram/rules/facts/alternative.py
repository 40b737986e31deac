"""Facts about the Local Rule alternative to stroke and distance (Model Local Rule E-5)."""

from marram.rules.engine.fact import DecidedBy, yes_no

alternative_ball_dropped = yes_no(
    "alternative_ball_dropped",
    "Has a ball been dropped under this Local Rule already?",
    help="Dropped on the course, not from where the previous stroke was made.",
    source="E-5",
)

alternative_ball_in_area = yes_no(
    "alternative_ball_in_area",
    "Does it lie in the relief area: general area, between the two lines, not nearer the hole?",
    help="Two club-lengths are added outside each line: through where the ball was lost, and the fairway point.",
    source="E-5",
    decided_by=DecidedBy.MAP,
)
