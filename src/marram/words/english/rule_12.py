"""Words for Rule 12."""

PROVISIONS: dict[str, str] = {
    "12.1": "A ball inside the edge of a bunker is in it when any part touches sand, or when it rests on ground, or on a thing lying on ground, where sand is or would normally be; on soil or grass without sand it is not.",
    "12.2a": "Before playing from a bunker, loose impediments and movable obstructions may be removed, with as much sand as that reasonably moves.",
    "Clarification 12.2a/1": "Moving sand by removing a thing is free only if it was done in a reasonable way; an intrusive way that improves the conditions is a breach.",
    "12.2b": "With the ball in a bunker there are limits on touching its sand before the stroke.",
    "12.2b(1)": "The sand must not be touched deliberately to test it, nor with a club right in front of or behind the ball, in a practice swing, or in the backswing.",
    "12.2b(2)": "Otherwise the sand may be touched, such as with the feet, by smoothing, setting things down, measuring, leaning or in anger, as long as the conditions affecting the stroke are not improved.",
    "12.2b(3)": "Once the ball has been played out, or relief is or will be taken outside, the sand may be touched, and smoothed to care for the course even on the line of play.",
}

NOTES: dict[str, str] = {
    "ball_is_in_bunker": "The ball is in the bunker: the limits of Rule 12.2 apply.",
    "ball_is_not_in_bunker": "The ball is not in the bunker; it is in the area of the course it touches.",
    "reasonable_touching_is_free": "Do not touch more sand than searching or removing takes.",
    "restrictions_return_with_ball": "If a ball comes back into the bunker or is dropped there, the limits apply again to that ball.",
}
