"""Facts about an unplayable ball."""

from marram.rules.engine.fact import yes_no

spot_of_ball_known = yes_no(
    "spot_of_ball_known",
    "Is the spot of the ball known?",
    help="A ball seen and known to be the player's, even in a tree. Without its spot, nothing can be measured.",
    source="19.2",
    usual=True,
)
