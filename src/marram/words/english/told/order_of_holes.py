"""How somebody tells it: facts about where a round, and each of its holes, is begun (Rules 5.1, 5.3a, 6.1b)."""

TOLD: dict[str, str] = {
    "order_set_by_committee.yes": "The Committee had set this order of holes, or told {player} to play that hole then.",
    "order_set_by_committee.no": "The Committee had not told {player} to play that hole then.",
    "sent_there_by_committee.yes": "The Committee had sent {player} to that starting point.",
    "sent_there_by_committee.no": "The Committee had not sent {player} to that starting point.",
}
