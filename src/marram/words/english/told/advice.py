"""How somebody tells it: facts about advice and about caddies (Rules 10.2a and 10.3)."""

TOLD: dict[str, str] = {
    "caddie_authorised.yes": "{player} had authorised the caddie to do it, this time.",
    "caddie_authorised.no": "{player} had not authorised the caddie to do it this time.",
    "during_round.yes": "It happened during the round, with play going on.",
    "during_round.no": "It did not happen during play: the round had not begun, was over, or play had stopped.",
    "relief_evident.yes": "What {player} did or said showed that relief would be taken.",
    "relief_evident.no": "Nothing showed that relief would be taken.",
    "was_advice.yes": "It was meant to tell or to learn which club, how to swing or how to play.",
    "was_advice.no": "It was not about which club, how to swing or how to play.",
    "advice_deed": "What {player} or the caddie did: {answer}.",
    "advice_to_or_from": "The other person was {answer}.",
    "caddie_deed": "The caddie {answer}.",
    "caddie_deed.routine_help": "The caddie did what caddies do, such as carrying clubs, searching, advising, raking or attending the flagstick.",
    "for_whom_shared_caddie_acted": "The shared caddie acted {answer}.",
    "for_whom_shared_caddie_acted.ball_of_one": "Nobody had told the caddie to act; the ball of one of the players was involved.",
    "for_whom_shared_caddie_acted.neither": "Nobody had told the caddie to act, and no ball of these players was involved.",
    "ongoing_advice.once": "The unasked advice was given once.",
    "ongoing_advice.went_on_and_objected": "The unasked advice went on, and {player} took reasonable steps to stop it.",
    "ongoing_advice.went_on_unopposed": "The unasked advice went on, and {player} did nothing about it.",
    "second_helper": "The second person {answer}.",
    "shared_caddie_breach": "The Rule broken carries {answer}.",
}
