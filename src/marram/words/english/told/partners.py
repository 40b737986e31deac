"""How somebody tells it: facts about partners: turns in Foursomes, and what partners do for each other in Four-Ball (Rules 22 and 23)."""

TOLD: dict[str, str] = {
    "first_to_tee_off_was_right.yes": "It was the turn of the partner who teed off first.",
    "first_to_tee_off_was_right.no": "It was not the turn of the partner who teed off first.",
    "match_hole_decided.yes": "The hole was conceded, or its result decided already.",
    "match_hole_decided.no": "The result of the hole was not decided yet.",
    "other_partner_completed.yes": "The other partner completed that hole under the Rules.",
    "other_partner_completed.no": "The other partner did not complete that hole.",
    "act_for_partner": "Had {player} done the same, it would have been a breach: {answer}.",
    "act_for_partner.one_stroke": "Had {player} done the same, it would have cost one penalty stroke.",
    "act_for_partner.general": "Had {player} done the same, it would have cost the general penalty.",
    "act_for_partner.allowed": "{player} would have been allowed to do the same.",
    "out_for": "What the partner would be disqualified for: {answer}.",
    "turn_after": "What has just happened: {answer}.",
    "side_on_hole.both_done": "Both partners have holed out, or in a match have had their next strokes conceded.",
    "side_on_hole.one_done_other_stopped": "One partner has completed the hole; the other will not play on, or has no score that can count.",
    "side_on_hole.one_still_playing": "A partner whose score can count has still to play.",
}
