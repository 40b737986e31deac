"""Words for Rule 2."""

PROVISIONS: dict[str, str] = {
    "2.1": "The Committee sets the boundaries of the course; everything beyond them is out of bounds.",
    "2.2c": "A ball counts as lying in one area only: a specific area before the general area, and among specific areas first penalty area, then bunker, then putting green.",
    "2.3": "Some things and conditions give free relief; boundary objects, integral objects and growing things do not.",
    "2.4": "No ball may be played from a no play zone, nor with one interfering with stance or swing.",
    "Definitions: boundary object": "An object that marks or shows out of bounds counts as immovable, and gives no free relief.",
    "Definitions: integral object": "An object the Committee declares part of the challenge of the course counts as immovable, and gives no free relief.",
}

NOTES: dict[str, str] = {
    "lies_in_penalty_area": "The ball counts as lying in the penalty area: apply the Rules for a ball there.",
    "lies_in_bunker": "The ball counts as lying in the bunker: apply the Rules for a ball there.",
    "lies_on_putting_green": "The ball counts as lying on the putting green: apply the Rules for a ball there.",
    "lies_in_general_area": "The ball lies in the general area, unless it touches the teeing area of the hole being played.",
    "may_remove_loose_impediment": "It may be taken away, in any way and anywhere; if that moves the ball off the green, one stroke, and the ball goes back.",
    "may_remove_movable_obstruction": "It may be taken away without penalty; a ball that moves as it is taken away goes back.",
    "do_not_move_it": "Leave it where it is: moving, bending or breaking it to improve the stroke costs the general penalty.",
}
