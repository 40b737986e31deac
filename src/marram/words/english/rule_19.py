"""Words for Rule 19."""

PROVISIONS: dict[str, str] = {
    "19.1": "Whether the ball is unplayable is for the player alone to say; for a ball in a penalty area this Rule gives nothing.",
    "19.2": "Unplayable ball relief costs one stroke; for relief on the line or lateral relief the spot of the ball must be known.",
    "19.2a": "Play a ball from where the previous stroke was made.",
    "19.2b": "Drop on the line from the hole through the spot of the ball, as far back as wished.",
    "19.2c": "Drop within two club-lengths of the spot of the ball, not nearer the hole.",
    "19.3": "In a bunker, relief on the line and lateral relief stay in the bunker, unless one stroke more is paid.",
    "19.3a": "For one stroke: stroke and distance, or drop in the bunker on the line or within two club-lengths.",
    "19.3b": "For two strokes in all, drop outside the bunker on the line from the hole through the spot of the ball.",
}

NOTES: dict[str, str] = {
    "unplayable_no_guarantee": "A ball off the ground (in a tree) is measured from the spot straight below it. Relief once taken counts: if the ball is unplayable again, each further relief costs its stroke anew.",
    "provisional_is_no_way_out": "A provisional ball played for it cannot be used instead: stroke and distance means going back.",
    "unplayable_spot_must_be_known": "For the other options the spot of the ball must be known; a guess will not do.",
}
