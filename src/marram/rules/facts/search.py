"""Facts about searching for a ball and identifying it (Rule 7)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class HowIdentified(Enum):
    """How a ball was identified as the player's (Rule 7.2)."""

    SEEN_TO_COME_TO_REST = "seen_to_come_to_rest"
    IDENTIFYING_MARK = "identifying_mark"
    SAME_KIND = "same_kind"
    NOT_AT_ALL = "not_at_all"


class WhoseBall(Enum):
    """Whose ball turned out to have been lifted."""

    PLAYERS = "players"
    OPPONENTS = "opponents"
    ANOTHER_PLAYERS = "another_players"
    STRAY = "stray"


class LieBefore(Enum):
    """How a ball lay before it was moved (Rule 7.4)."""

    COVERED_BY_SAND = "covered_by_sand"
    IN_SAND = "in_sand"
    ON_UNDER_OR_AGAINST = "on_under_or_against"
    OPEN = "open"
    ALTERED = "altered"


search_was_reasonable = yes_no(
    "search_was_reasonable",
    "Was what the player did a reasonable way of searching fairly?",
    help="Moving and bending, and breaking only as a result, is reasonable; pulling out, mowing down or breaking what could be avoided is not.",
    source="7.1a, Clarification 7.1a/1",
)
improved_by_search = yes_no(
    "improved_by_search",
    "Did the search improve the conditions affecting the player's next stroke?",
    help="The lie, the areas of stance and swing, the line of play, or the relief area: is there a potential advantage?",
    source="7.1a, 8.1a",
)
sand_changed_lie = yes_no(
    "sand_changed_lie",
    "Did moving the sand change the lie of the ball?",
    help="Sand anywhere on the course counts, not only in bunkers.",
    source="7.1b",
)
was_covered_by_sand = yes_no(
    "was_covered_by_sand",
    "Had the ball been covered by sand?",
    help="Then a small part of it may be left visible.",
    source="7.1b",
)
played_after_search = yes_no(
    "played_after_search",
    "Has the player played the ball since?",
    help="Until the ball is played everything can still be put right.",
    source="7.1b",
)
sand_lie_recreated = yes_no(
    "sand_lie_recreated",
    "Had the player re-created the original lie in the sand before playing?",
    help="As nearly as possible, but for a small visible part of a ball that had been covered.",
    source="7.1b",
)
how_identified = choice(
    "how_identified",
    "How was the ball identified as the player's, after lifting it if needed and within the search time?",
    {
        HowIdentified.SEEN_TO_COME_TO_REST: "someone saw it come to rest, and it is known to be the player's",
        HowIdentified.IDENTIFYING_MARK: "by the player's identifying mark",
        HowIdentified.SAME_KIND: "same brand, model, number and condition, where the player's ball was expected",
        HowIdentified.NOT_AT_ALL: "in none of these ways",
    },
    help="A ball that cannot be reached, such as one high in a tree, is identified in the same ways, for example with binoculars.",
    source="7.2, Clarification 7.2/1",
)
identical_ball_there = yes_no(
    "identical_ball_there",
    "Is there another ball in the same area that cannot be told apart from it?",
    help="With a mark: one with the same mark. Yes also if the player's provisional ball, even not found, is just like it.",
    source="7.2",
)
own_two_balls_alike = yes_no(
    "own_two_balls_alike",
    "Are the two balls the player's original and provisional balls?",
    help="Then a Rule of its own decides which is which.",
    source="18.3c(2)",
)
whose_ball_lifted = choice(
    "whose_ball_lifted",
    "Whose ball was it?",
    {
        WhoseBall.PLAYERS: "the player's own",
        WhoseBall.OPPONENTS: "the opponent's (match play)",
        WhoseBall.ANOTHER_PLAYERS: "another player's",
        WhoseBall.STRAY: "nobody's ball in play (a stray ball)",
    },
    help="A ball that nobody has in play may be lifted at will.",
    source="7.3",
)
lifting_needed_to_identify = yes_no(
    "lifting_needed_to_identify",
    "Was lifting or rotating it reasonably necessary to identify it?",
    help="It might be the player's, but could not be identified as it lay (the mark could not be seen).",
    source="7.3",
    decided_by=DecidedBy.REFEREE,
)
lie_before_moving = choice(
    "lie_before_moving",
    "How did the ball lie before it was moved?",
    {
        LieBefore.COVERED_BY_SAND: "covered by sand",
        LieBefore.IN_SAND: "in sand, not covered",
        LieBefore.ON_UNDER_OR_AGAINST: "on, under or against something growing, attached or fixed",
        LieBefore.ALTERED: "not in sand, and that lie is altered now: trodden in, pressed down",
        LieBefore.OPEN: "none of these",
    },
    help="Grass, branches, immovable obstructions, integral objects and boundary objects count as something fixed.",
    source="7.4, 14.2d(1)",
)
