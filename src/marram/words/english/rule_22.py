"""Words for Rule 22."""

PROVISIONS: dict[str, str] = {
    "22.1": "In Foursomes the side plays one ball and is treated like one player. Where the card must show handicaps (until 2022), it shows that of each partner; otherwise the side is disqualified.",
    "22.3": "In Foursomes partners alternate in teeing off and on each hole. A stroke in the wrong order gets the general penalty and in stroke play is corrected before another hole is begun; otherwise disqualification.",
    "22.4": "At the starting time the partner who plays first is ready at the start, and the other is there or near where the tee shot should come to rest; otherwise Rule 5.3a is breached.",
    "22.6": "In Foursomes a player does not watch from behind, on or near the line, while the partner plays, to learn something for the side's next stroke. Rule 10.2b(4) limits standing there as well.",
    "22.5": "In Foursomes partners may share clubs if they have no more than 14 together.",
}

NOTES: dict[str, str] = {
    "right_partner_plays_from_first_wrong_spot": "The right partner plays from where the first stroke in the wrong order was made; strokes in the wrong order do not count.",
    "penalties_do_not_change_order": "Penalty strokes do not change whose turn it is.",
    "right_partner_plays": "The right partner plays from that spot.",
}
