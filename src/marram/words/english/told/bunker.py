"""How somebody tells it: facts about bunkers: is the ball in one, and what was done to the sand (Rule 12)."""

TOLD: dict[str, str] = {
    "removal_improved.yes": "Moving that sand improved the conditions affecting the stroke.",
    "removal_improved.no": "Moving that sand did not improve the conditions affecting the stroke.",
    "removed_reasonably.yes": "It was removed in a reasonable way, moving no more sand than that took.",
    "removed_reasonably.no": "It was removed in a way that moved more sand than necessary.",
    "sand_improved.yes": "It improved the conditions for {player}'s next stroke.",
    "sand_improved.no": "It did not improve the conditions for {player}'s next stroke.",
    "ball_and_bunker.lies_in_it": "The ball lay in that bunker, or relief was being taken inside it.",
    "ball_and_bunker.played_out": "The ball had been played out of that bunker and lay outside.",
    "ball_and_bunker.relief_outside": "{player} had taken, or meant to take, relief outside that bunker.",
    "ball_and_bunker.lies_elsewhere": "{player}'s ball lay somewhere else, such as on the grass or in another bunker.",
    "ball_in_bunker_on": "What the ball, inside the edge of the bunker, touched: {answer}.",
    "sand_touch": "The sand was touched {answer}.",
    "sand_touch.any_other_way": "The sand was touched in another way: leaning on a club, setting clubs down, measuring or in anger.",
    "thing_removed_in_bunker": "What was removed was {answer}.",
}
