"""Words for Rule 7."""

PROVISIONS: dict[str, str] = {
    "7.1a": "A player may do what is reasonable to find and identify the ball, even if that improves the conditions affecting the stroke; more than that is a breach of Rule 8.1a.",
    "7.1b": "A lie in sand that changed in searching must be made again before the ball is played; a ball that had been covered may be left showing a little.",
    "7.2": "A ball counts as the player's when someone saw it come to rest, when it bears the player's identifying mark, or when it is of the same kind and in the expected place, and no other ball there can be confused with it.",
    "7.3": "A ball that might be the player's may be lifted or turned to identify it, if that is necessary, once its spot is marked, and cleaned no more than needed. Otherwise it costs one stroke.",
    "7.4": "Whoever moves the ball by accident in searching for it or identifying it is not penalised; it goes back to where and how it lay.",
}

NOTES: dict[str, str] = {
    "small_part_may_stay_visible": "A ball that had been covered by sand may be left with a small part showing.",
    "recreate_lie_in_sand": "Make the lie in the sand again as nearly as you can.",
    "loose_impediments_need_not_go_back": "Loose impediments that came away in the search need not be put back.",
    "back_on_under_or_against": "Put the ball back on, under or against what it had lain on, under or against, at the same height.",
    "go_on_searching": "Nobody has this ball in play: leave it or pocket it, and go on searching within the search time.",
    "no_need_to_announce": "Nobody need be told before lifting to identify, and nobody need watch.",
}
