"""Rule 6.3c: playing a wrong ball, and a ball that another player played as a wrong ball."""

from dataclasses import replace

from marram.rules.book.correctable import correct_before_next_hole
from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.book.relief_options import stroke_and_distance
from marram.rules.book.rule_09_replacing import place_on_similar_lie
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.replacing import Material, lie_altered, material_of_lie
from marram.rules.facts.substitution import (
    BallStruck,
    Exchange,
    ball_struck,
    exchange_of_balls,
    exchanged_during_hole,
    played_by_another_known,
    wrong_ball_corrected,
    wrong_ball_moving_in_water,
)
from marram.rules.facts.wrong_place import next_hole_started
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Ruling, WhichBall, general_penalty, no_penalty


@provision("6.3c(1)")
def wrong_ball_played(case: Case) -> Ruling:
    """A stroke was made at a ball that may have been a wrong ball."""
    if not case.is_one_of(ball_struck, BallStruck.WRONG):
        return no_wrong_ball(case)
    if case[wrong_ball_moving_in_water]:
        return wrong_ball_in_moving_water(case)
    return wrong_ball_penalty(case)


@provision("Definitions: wrong ball")
def no_wrong_ball(_case: Case) -> Ruling:
    """The ball in play, a provisional ball and a second ball played under a Rule are never wrong balls."""
    return no_penalty("Definitions: wrong ball").next(Action.PLAY_ON)


@provision("6.3c(1) Exception")
def wrong_ball_in_moving_water(_case: Case) -> Ruling:
    """A stroke at a wrong ball moving in water does not count and costs nothing, but must be corrected."""
    return (
        no_penalty("6.3c(1) Exception")
        .next(Action.CORRECT_MISTAKE)
        .stroke_does_not_count()
        .note("go_on_with_right_ball")
    )


@provision("6.3c(1)")
def wrong_ball_penalty(case: Case) -> Ruling:
    """The general penalty: loss of hole, or two strokes and the mistake must be corrected in time."""
    if case.match_play:
        return wrong_ball_in_match(case)
    return wrong_ball_in_stroke_play(case)


@provision("6.3c(1)")
def wrong_ball_in_match(case: Case) -> Ruling:
    """The first of two to play a wrong ball loses the hole; if nobody knows who, the balls stay exchanged."""
    exchange = case[exchange_of_balls]
    if exchange is Exchange.NOT_KNOWN:
        return no_penalty("6.3c(1)").next(Action.PLAY_ON).note("play_out_with_balls_exchanged")
    who = Who.OPPONENT if exchange is Exchange.OPPONENT_FIRST else Who.PLAYER
    return general_penalty("6.3c(1)", who).next(Action.HOLE_OVER)


@provision("6.3c(1)")
def wrong_ball_in_stroke_play(case: Case) -> Ruling:
    """Two strokes; strokes at the wrong ball do not count; the right ball must be played out."""
    if case[wrong_ball_corrected]:
        return (
            general_penalty("6.3c(1)")
            .next(Action.PLAY_ON)
            .stroke_does_not_count()
            .note("strokes_with_wrong_ball_void")
        )
    if case[next_hole_started]:
        return disqualified_or_without_score(case, "6.3c(1)")
    ruling = (
        general_penalty("6.3c(1)")
        .next(Action.CORRECT_MISTAKE)
        .stroke_does_not_count()
        .note("go_on_with_right_ball", "strokes_with_wrong_ball_void", "owner_replaces_ball")
    )
    return correct_before_next_hole(case, ruling, "continue_with_right_ball", "6.3c(1)")


@provision("6.3c(1)")
def ball_out_of_play_played(case: Case, what: str, *citations: str) -> Ruling:
    """A ball that is out of play is a wrong ball too, also the player's own.

    Args:
        case: the case.
        what: the note key of how the mistake is corrected.
        citations: the provisions that put the ball out of play.
    """
    ruling = general_penalty("6.3c(1)").under(*citations).stroke_does_not_count()
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    ruling = ruling.next(Action.CORRECT_MISTAKE)
    return correct_before_next_hole(case, ruling, what, "6.3c(1)")


@provision("6.3a")
def balls_found_exchanged(case: Case) -> Ruling:
    """Two players find that they finished a hole with each other's ball."""
    if case[exchanged_during_hole]:
        ruling = wrong_ball_penalty(case)
        return ruling if case.match_play else ruling.note("applies_to_both_players")
    return exchanged_at_unknown_place(case)


@provision("Clarification 6.3a/1")
def exchanged_at_unknown_place(_case: Case) -> Ruling:
    """Unless the exchange is known to have happened on this hole, it is taken to have happened before it."""
    return (
        no_penalty("6.3a").under("Clarification 6.3a/1").next(Action.PLAY_ON).note("exchanged_between_holes")
    )


@provision("6.3c(2)")
def ball_played_by_another_player(case: Case) -> Ruling:
    """The owner of a ball played as a wrong ball replaces it, or another ball, without penalty."""
    if not case[played_by_another_known]:
        return not_known_to_be_played_by_another(case)
    ruling = no_penalty("6.3c(2)")
    if not case[lie_altered]:
        ruling = ruling.next(Action.REPLACE)
    elif case.is_one_of(material_of_lie, Material.SAND):
        ruling = ruling.next(Action.REPLACE).under("14.2d(1)").note("shape_the_lie_in_sand")
    else:
        ruling = place_on_similar_lie(ruling)
    ruling = replace(ruling, which_ball=WhichBall.ORIGINAL_OR_ANOTHER).under("14.2a Exception")
    return ruling.note("even_if_not_found", "replace_as_rule_14_2_says")


@provision("18.2b")
def not_known_to_be_played_by_another(_case: Case) -> Ruling:
    """Short of virtual certainty a ball that is not found in time is lost."""
    return (
        no_penalty("18.2b")
        .with_options(stroke_and_distance("18.2b"), may_play_as_it_lies=False)
        .note("search_time_goes_on")
    )
