"""Incidents: lost, out of bounds, provisional ball."""

from marram.rules.incidents.incident import Incident

THEME = "Lost, out of bounds, provisional ball"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "ball_not_found",
        "The ball is lost: not found in three minutes",
        "18.2",
        THEME,
        "book.rule_18_lost:ball_not_found",
        "lost ball search known or virtually certain declared lost in ground under repair hole leaves gone taken",
    ),
    Incident(
        "ball_found_in_time",
        "A ball is found: was it in time, and is it the player's?",
        "18.2a(1)",
        THEME,
        "book.rule_18_lost:found_in_time",
        "three minutes search time late identify "
        "caddie started searching before the player arrived interrupted suspension",
    ),
    Incident(
        "ball_near_boundary",
        "The ball is out of bounds, or close to the boundary",
        "18.2a(2)",
        THEME,
        "book.rule_18_lost:near_boundary",
        "OB white stakes line fence boundary stand",
    ),
    Incident(
        "another_ball_played",
        "Another ball is played from the same spot: is it a provisional ball?",
        "18.3a",
        THEME,
        "book.rule_18_provisional:another_ball_played",
        "announce provisional reload second ball mulligan breakfast tee it up again did not say provisional "
        "re-load",
    ),
    Incident(
        "ball_after_provisional",
        "After a provisional ball yet another ball was played from the same spot",
        "18.3a",
        THEME,
        "book.rule_18_further_ball:further_ball_played",
        "third ball second provisional two provisional balls reload again not announced",
    ),
    Incident(
        "provisional_ball",
        "A provisional ball was played: which ball must be played on?",
        "18.3c",
        THEME,
        "book.rule_18_provisional:provisional_played",
        "original found abandon continue in play",
    ),
    Incident(
        "provisional_ball_holed",
        "The provisional ball was holed",
        "18.3c(2)",
        THEME,
        "book.rule_18_provisional:provisional_holed",
        "par three hole out original",
    ),
    Incident(
        "provisional_ball_lifted",
        "The player lifted the provisional ball",
        "18.3c",
        THEME,
        "book.rule_18_provisional:provisional_lifted",
        "picked up thinking the original was good later learned original out of bounds",
    ),
    Incident(
        "provisional_ball_not_told_apart",
        "The player cannot tell the original ball from the provisional ball",
        "18.3c(2)",
        THEME,
        "book.rule_18_provisional:balls_not_told_apart",
        "same brand number no mark identify",
    ),
    Incident(
        "own_ball_out_of_play_played",
        "The player played the original ball though it was out of bounds, lost, or no longer in play",
        "6.3c(1)",
        THEME,
        "book.rule_18_out_of_play:own_ball_out_of_play_played",
        "played from out of bounds OB wrong ball after provisional in play found late abandoned original",
    ),
    Incident(
        "dropped_where_lost",
        "The player dropped a ball near where the original was lost or went out of bounds",
        "18.2b",
        THEME,
        "book.rule_18_lost:dropped_where_lost",
        "wrong place did not go back serious breach",
    ),
    Incident(
        "play_again_from_previous_spot",
        "The player wants to play again, or has, from where the last stroke was made (no provisional ball)",
        "18.1",
        THEME,
        "book.rule_18_lost:play_again_from_previous_spot",
        "stroke and distance any time original then found mulligan breakfast ball tee it up",
    ),
    Incident(
        "lifted_then_played_again",
        "The player lifted the ball in play and now wants to play from where the last stroke was made",
        "18.1",
        THEME,
        "book.rule_18_lost:lifted_then_played_again",
        "picked up stroke and distance",
    ),
    Incident(
        "alternative_to_stroke_and_distance",
        "Ball lost or out of bounds: the Local Rule alternative to stroke and distance",
        "E-5",
        THEME,
        "book.local_rules.area_e:alternative_to_stroke_and_distance",
        "two strokes drop fairway local rule",
    ),
)
