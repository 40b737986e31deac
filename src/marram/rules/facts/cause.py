"""Facts about what moved, stopped or touched a ball, and how certain that is."""

from marram.rules.engine.fact import yes_no

cause_known = yes_no(
    "cause_known",
    "Is it known or virtually certain (about 95 %) that the player or caddie moved the ball?",
    help="Weigh all evidence reasonably available without unreasonable delay; no time limit applies.",
    source="9.2b(2)",
)
movement_accidental = yes_no(
    "movement_accidental",
    "Was the movement an accident?",
    help="Ask what the player meant to do.",
    source="9.4b",
)
while_searching = yes_no(
    "while_searching",
    "Did it happen while trying to find or identify the ball?",
    help="Before the ball was found, with the player or others looking for it.",
    source="7.4",
)
