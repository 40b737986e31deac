"""Incidents: wrong ball, other ball, order of play."""

from marram.rules.incidents.incident import Incident

THEME = "Wrong ball, other ball, order of play"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "another_ball_put_in_play",
        "A player put another ball down during the play of a hole",
        "6.3b",
        THEME,
        "book.rule_06_substituted_ball:another_ball_put_in_play",
        "substituted substitution changed ball new ball putting ball swapped different incorrectly wrong ball "
        "pocket mistake replaced with between holes change",
    ),
    Incident(
        "original_found_after_substitution",
        "The original ball was found after another ball was put in play",
        "6.3b(2)",
        THEME,
        "book.rule_06_substituted_ball:original_found_after_substitution",
        "found lost three minutes dropped ball out of play second ball",
    ),
    Incident(
        "wrong_ball_played",
        "A wrong ball was played, or may have been",
        "6.3c(1)",
        THEME,
        "book.rule_06_wrong_ball:wrong_ball_played",
        "wrong ball stray another player's exchanged switched mixed up whiff provisional abandoned range ball "
        "opponent's played each other's water uses mistake competitor "
        "hit wrong ball then found own four-ball match foursomes",
    ),
    Incident(
        "balls_found_exchanged",
        "Two players finished a hole with each other's ball",
        "6.3a",
        THEME,
        "book.rule_06_wrong_ball:balls_found_exchanged",
        "exchanged swapped identical unknown where switched balls mixed up discover each other's",
    ),
    Incident(
        "ball_played_by_another_player",
        "The player's ball was played by another player",
        "6.3c(2)",
        THEME,
        "book.rule_06_wrong_ball:ball_played_by_another_player",
        "stolen wrong ball replace not found somebody else hit my ball someone",
    ),
    Incident(
        "played_out_of_turn",
        "A player played out of turn",
        "6.4",
        THEME,
        "book.rule_06_order_of_play:played_out_of_turn",
        "order of play ready golf cancel stroke recall honour wrong turn first agreed out advantage honor "
        "match",
    ),
    Incident(
        "whose_turn",
        "Whose turn is it to play?",
        "6.4",
        THEME,
        "book.rule_06_order_of_play:whose_turn",
        "order of play honour farthest provisional first honor away relief who plays next "
        "partner farther away lets the other putt first",
    ),
    Incident(
        "hole_completed",
        "Is the hole completed?",
        "6.5",
        THEME,
        "book.rule_06_order_of_play:hole_completed",
        "holed conceded picked up result decided finished complete",
    ),
    Incident(
        "played_on_after_hole",
        "A player played on after the hole was completed",
        "6.5",
        THEME,
        "book.rule_06_order_of_play:played_on_after_hole",
        "did not know completed practice continued putted out after conceded",
    ),
)
