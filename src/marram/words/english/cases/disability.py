"""Players with disabilities: one case told of each fact."""

_CARRIED = "{player} has a caddie, and the aide carried the clubs for a while as well."
_COURTESY = "{player} has a caddie, and the aide held a club for a moment to help with the alignment."
_AUTHORIZED = "A person whom {player} had authorized for the whole round dropped the ball in taking relief."

CASES: dict[str, str] = {
    "dropped_with_disability/player_eligible.yes": "{player} is eligible in one of the categories of disability.",
    "dropped_with_disability/player_eligible.no": "{player} is eligible in none of the categories of disability.",
    "blind_help.aide_carried_clubs+handled_clubs_as_courtesy.yes": _COURTESY,
    "blind_help.aide_carried_clubs": _CARRIED,
    "aide_act.aide_carried_clubs+handled_clubs_as_courtesy.yes": _COURTESY,
    "aide_act.aide_carried_clubs": _CARRIED,
    "device_act.aide_carried_clubs+handled_clubs_as_courtesy.yes": _COURTESY,
    "device_act.aide_carried_clubs": _CARRIED,
    "handled_clubs_as_courtesy.yes": "",
    "amputee_act.prosthesis": "{player} made strokes with an artificial arm.",
    "amputee_act.dropped_by_other": _AUTHORIZED,
    "device_accepted.no+amputee_act.prosthesis": "The Committee finds that this arm gives an unfair advantage.",
    "device_accepted.no": "The Committee finds that the device gives an unfair advantage.",
    "equipment_breach_again.yes+device_accepted.no": "It was the second, separate breach of the Rule on equipment in the round.",
    "equipment_breach_again.no+device_accepted.no": "It was the first breach of the Rule on equipment in the round.",
    "device_act.device_itself": "{player} made strokes while leaning on the device.",
    "device_act.held_during_stroke": "The caddie held {player} while the stroke was made.",
    "device_act.help_with_position": "The caddie helped to put the device in position before the stroke.",
    "device_act.stance_with_device": "{player} pressed the device into the ground for the stance, no more than needed to stand firmly.",
    "device_act.device_on_line": "{player} made a stroke with the device placed on purpose on the line of play behind the ball.",
    "device_act.sand_touched": "In a bunker the device touched the sand while {player} took the stance.",
    "device_act.dropped_by_other": _AUTHORIZED,
    "device_act.replaced_with_equipment": "{player} put the ball back on its spot by rolling it there with a club.",
    "intellectual_disability/aide_act.object_set_down+what_was_set_down.mark_in_ground": "The aide made a mark in the turf near the ball.",
    "intellectual_disability/what_was_set_down.mark_in_ground": "",
    "intellectual_disability/aide_act.object_set_down+what_was_set_down.ball_at_rest": "The aide, asked to replace the ball on the green, turned it so that a line on it pointed to the hole.",
    "intellectual_disability/what_was_set_down.ball_at_rest": "",
    "intellectual_disability/aide_act.object_set_down+what_was_set_down.self_standing_putter": "The aide stood a putter that keeps upright by itself behind the ball, and let go of it.",
    "intellectual_disability/what_was_set_down.self_standing_putter": "",
    "what_was_set_down.self_standing_putter": "It was a putter that stands upright by itself, and nobody held it.",
}
