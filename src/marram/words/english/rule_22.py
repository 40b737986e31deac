"""Words for Rule 22."""

PROVISIONS: dict[str, str] = {
    "22.1": "In Foursomes the side plays one ball and is treated like one player. Where the card must show handicaps (until 2022), it shows that of each partner; otherwise the side is disqualified.",
    "22.2": "In Foursomes either partner may act for the side, and what a partner or a caddie of either does, a breach too, counts for the side.",
    "22.3": "In Foursomes partners alternate in teeing off and on each hole. A stroke in the wrong order gets the general penalty and in stroke play is corrected before another hole is begun; otherwise disqualification.",
    "Clarification 22.3/1": "A stroke from a teeing area that is played again is played from the same teeing area, also in mixed Foursomes where the partners use different ones.",
    "Clarification 22.3/2": "If both partners tee off, the second ball is the side's ball: under stroke and distance if the first had the turn, else as the correction of a wrong order.",
    "Clarification 22.3/3": "Missing the ball on purpose does not change whose turn it is.",
    "22.4": "At the starting time the partner who plays first is ready at the start, and the other is there or near where the tee shot should come to rest; otherwise Rule 5.3a is breached.",
    "22.6": "In Foursomes a player does not watch from behind, on or near the line, while the partner plays, to learn something for the side's next stroke. Rule 10.2b(4) limits standing there as well.",
    "22.5": "In Foursomes partners may share clubs if they have no more than 14 together.",
}

NOTES: dict[str, str] = {
    "tee_off_by_odd_and_even": "One partner tees off on all odd-numbered holes, the other on all even-numbered ones.",
    "stroke_replayed_by_same_partner": "The partner who made the stroke makes it again.",
    "then_other_partner_plays": "The partner who did not make the last stroke plays next.",
    "after_relief_other_partner_plays": "Whatever the choice, the partner who did not make the last stroke plays next.",
    "other_partner_plays": "The partner who did not make the last stroke plays next.",
    "same_partner_plays": "A stroke by the other partner would be in the wrong order.",
    "next_in_turn_plays_provisional": "The partner whose turn it is for the side's next stroke plays the provisional ball, not the one who made the last stroke.",
    "same_tee_for_both_partners": "If it was the tee shot, that partner plays from the same teeing area, even where men and women use different ones.",
    "second_ball_has_taken_three": "The second ball is in play, the side has taken three strokes with the penalty, and the partner who teed off first plays next.",
    "right_partner_plays_from_first_wrong_spot": "The right partner plays from where the first stroke in the wrong order was made; strokes in the wrong order do not count.",
    "penalties_do_not_change_order": "Penalty strokes do not change whose turn it is.",
    "right_partner_plays": "The right partner plays from that spot.",
}
