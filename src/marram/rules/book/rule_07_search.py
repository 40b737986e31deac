"""Rules 7.1 and 7.4: searching fairly; ball moved by accident while trying to find or identify it."""

from marram.rules.book.rule_08_breach import breach
from marram.rules.book.rule_08_restoring import restored_by_original_object
from marram.rules.book.rule_09_others import certainly_moved_by_outside_influence, moved_by_opponent
from marram.rules.book.rule_09_player import moved_by_player
from marram.rules.book.rule_09_replacing import place_on_similar_lie
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.cause import Mover, movement_accidental, while_searching, who_moved_ball
from marram.rules.facts.conditions_affecting import original_object_back
from marram.rules.facts.search import (
    LieBefore,
    improved_by_search,
    lie_before_moving,
    played_after_search,
    sand_changed_lie,
    sand_lie_recreated,
    search_was_reasonable,
    was_covered_by_sand,
)
from marram.rules.penalty import general
from marram.rules.ruling import Deadline, Ruling, no_penalty


@provision("7.1a")
def search_improved_conditions(case: Case) -> Ruling:
    """A fair search may improve the conditions affecting the stroke; going further is a breach of 8.1a."""
    if not case[improved_by_search] or case[search_was_reasonable]:
        return no_penalty("7.1a").play_as_it_lies()
    if case[original_object_back]:
        return restored_by_original_object(case)
    return breach(case, "8.1a", "7.1a")


@provision("7.1b")
def sand_moved_in_search(case: Case) -> Ruling:
    """Sand may be moved in a search, but the lie in the sand must be re-created before the ball is played."""
    if not case[sand_changed_lie]:
        return no_penalty("7.1a").play_as_it_lies()
    if not case[played_after_search]:
        ruling = no_penalty("7.1b").play_as_it_lies().note("recreate_lie_in_sand")
        if case[was_covered_by_sand]:
            ruling = ruling.note("small_part_may_stay_visible")
        return ruling.correct("recreate_lie_in_sand", Deadline.BEFORE_STROKE, general("7.1b"))
    if case[sand_lie_recreated]:
        return no_penalty("7.1b").play_as_it_lies()
    return breach(case, "7.1b").stroke_counts()


@provision("7.4")
def ball_moved_in_search(case: Case) -> Ruling:
    """Whoever moves it by accident while trying to find or identify it, it goes back without penalty."""
    if case[while_searching] and case[movement_accidental]:
        return put_back_after_search(case)
    if case.is_one_of(who_moved_ball, Mover.PLAYER):
        return moved_by_player(case)
    if case.is_one_of(who_moved_ball, Mover.OPPONENT) and case.match_play:
        return moved_by_opponent(case)
    return certainly_moved_by_outside_influence(case)


@provision("7.4")
def put_back_after_search(case: Case) -> Ruling:
    """The original spot, estimated if need be, includes what the ball lay on, under or against, and the sand."""
    ruling = (
        no_penalty("7.4")
        .replace_ball()
        .note("loose_impediments_need_not_go_back")
        .correct("replace_before_stroke", Deadline.BEFORE_STROKE, general("7.4"))
    )
    if case.is_one_of(lie_before_moving, LieBefore.OPEN):
        return ruling
    if case.is_one_of(lie_before_moving, LieBefore.ALTERED):
        return place_on_similar_lie(no_penalty("7.4")).note("loose_impediments_need_not_go_back")
    if case.is_one_of(lie_before_moving, LieBefore.ON_UNDER_OR_AGAINST):
        return ruling.note("back_on_under_or_against")
    ruling = ruling.under("14.2d(1)").note("recreate_lie_in_sand")
    if case.is_one_of(lie_before_moving, LieBefore.COVERED_BY_SAND):
        return ruling.note("small_part_may_stay_visible")
    return ruling
