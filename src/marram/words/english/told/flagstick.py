"""How somebody tells it: facts about the flagstick (Rule 13.2)."""

TOLD: dict[str, str] = {
    "attendance_authorised.yes": "{player} knew that the flagstick was being attended and played anyway, or had asked for it.",
    "attendance_authorised.no": "{player} neither knew that the flagstick was being attended nor had asked for it.",
    "flagstick_leant_on_purpose.yes": "{player} had deliberately put the flagstick in a position other than centred.",
    "flagstick_leant_on_purpose.no": "Nobody had leant the flagstick on purpose.",
    "flagstick_moved_to_affect.yes": "It was moved to affect where the ball in motion might come to rest.",
    "flagstick_moved_to_affect.no": "It was not moved to affect where the ball might come to rest.",
    "hit_by_design.yes": "It was no accident: the ball was stopped on purpose, or the flagstick was left where it might stop it.",
    "hit_by_design.no": "Nobody meant the ball to be stopped.",
    "moved_with_flagstick.yes": "The flagstick was then removed, and the ball moved.",
    "moved_with_flagstick.no": "The ball did not move with the flagstick.",
    "part_in_hole.yes": "Part of the ball resting against the flagstick was below the surface of the green, inside the hole.",
    "part_in_hole.no": "No part of the ball was below the surface of the green.",
    "flagstick_mover": "It was moved by {answer}.",
    "flagstick_state.left_in_hole": "{player} had decided to leave the flagstick in the hole, nobody attending.",
    "flagstick_state.attended_or_removed": "{player} had decided to have the flagstick attended or removed.",
    "who_meant_the_hit": "It was done on purpose by {answer}.",
    "who_meant_the_hit.own_side": "It was done on purpose by {player} or the caddie.",
}
