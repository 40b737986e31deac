"""Rule 12: bunkers."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.bunker import (
    BallAndBunker,
    BallOnInBunker,
    RemovedThing,
    SandTouch,
    ball_and_bunker,
    ball_in_bunker_on,
    removal_improved,
    removed_reasonably,
    sand_improved,
    sand_touch,
    thing_removed_in_bunker,
)
from marram.rules.facts.loose_things import removal_moved_ball
from marram.rules.ruling import Ruling, general_penalty, no_penalty, penalty

_NEVER_WITH_BALL_IN_BUNKER = (
    SandTouch.TESTING,
    SandTouch.CLUB_BY_BALL,
    SandTouch.PRACTICE_SWING,
    SandTouch.BACKSWING,
)
_AS_FAR_AS_REASONABLE = (SandTouch.REMOVING_OR_SEARCHING, SandTouch.TAKING_STANCE)


@provision("12.1")
def inside_edge_of_bunker(case: Case) -> Ruling:
    """A ball is in the bunker when it touches sand there, or rests where sand is or would normally be."""
    if case.is_one_of(ball_in_bunker_on, BallOnInBunker.GROWING_OR_SOIL):
        return no_penalty("12.1").play_as_it_lies().note("ball_is_not_in_bunker")
    return no_penalty("12.1").play_as_it_lies().note("ball_is_in_bunker")


@provision("12.2b")
def sand_touched(case: Case) -> Ruling:
    """Whether touching the sand is a breach depends on where the ball is and on how it was touched."""
    where = case[ball_and_bunker]
    if where is BallAndBunker.LIES_IN_IT:
        return sand_touched_with_ball_in_bunker(case)
    if case.is_one_of(sand_touch, *_AS_FAR_AS_REASONABLE):
        return sand_touched_reasonably(case)
    if where is BallAndBunker.LIES_ELSEWHERE:
        return sand_touched_with_ball_elsewhere(case)
    return sand_touched_afterwards(case)


@provision("12.2b(1)")
def sand_touched_with_ball_in_bunker(case: Case) -> Ruling:
    """Testing the sand, or touching it with a club by the ball, in a practice swing or in the backswing."""
    how = case[sand_touch]
    if how is SandTouch.BACKSWING:
        return general_penalty("12.2b(1)").stroke_counts().play_as_it_lies()
    if how in _NEVER_WITH_BALL_IN_BUNKER:
        return general_penalty("12.2b(1)").play_as_it_lies()
    return sand_touched_in_allowed_way(case)


@provision("12.2b(2)")
def sand_touched_in_allowed_way(case: Case) -> Ruling:
    """Any other touching is free, unless it improves the conditions affecting the stroke."""
    if case.is_one_of(sand_touch, *_AS_FAR_AS_REASONABLE):
        return sand_touched_reasonably(case)
    if case[sand_improved]:
        return general_penalty("8.1a").under("12.2b(2)").play_as_it_lies()
    return no_penalty("12.2b(2)").play_as_it_lies()


@provision("8.1b")
def sand_touched_reasonably(case: Case) -> Ruling:
    """Searching, removing a loose thing and taking a stance are free, even if they improve the conditions."""
    if case.is_one_of(sand_touch, SandTouch.TAKING_STANCE):
        return no_penalty("12.2b(2)").under("8.1b(5)").play_as_it_lies()
    return no_penalty("12.2b(1)").play_as_it_lies().note("reasonable_touching_is_free")


@provision("8.1b(7)")
def sand_touched_in_backswing(_case: Case) -> Ruling:
    """The backswing for a stroke that is made is free where the ball lies in no bunker, whatever it improves."""
    return no_penalty("8.1b(7)").stroke_counts().play_as_it_lies()


@provision("12.2b(3)")
def sand_touched_afterwards(case: Case) -> Ruling:
    """With the ball played out, or relief taken outside, the sand may be touched, and smoothed even on the line."""
    if case.is_one_of(sand_touch, SandTouch.BACKSWING):
        return sand_touched_in_backswing(case)
    if case.is_one_of(sand_touch, SandTouch.SMOOTHING) or not case[sand_improved]:
        return no_penalty("12.2b(3)").play_as_it_lies().note("restrictions_return_with_ball")
    return general_penalty("8.1a").under("12.2b(3)").play_as_it_lies()


@provision("12.2b")
def sand_touched_with_ball_elsewhere(case: Case) -> Ruling:
    """Rule 12.2b protects the bunker the ball lies in; elsewhere only improving is a breach."""
    if case.is_one_of(sand_touch, SandTouch.BACKSWING):
        return sand_touched_in_backswing(case)
    if case[sand_improved]:
        return general_penalty("8.1a").play_as_it_lies()
    return no_penalty("12.2b").play_as_it_lies()


@provision("12.2a")
def thing_removed_from_bunker(case: Case) -> Ruling:
    """Loose impediments and movable obstructions may be removed, with as much sand as that reasonably takes."""
    improved = not case[removed_reasonably] and case[removal_improved]
    moved = case[removal_moved_ball]
    if improved:
        return more_sand_moved_than_needed(case, moved=moved)
    if moved:
        return ball_moved_by_removing(case)
    return no_penalty("12.2a").play_as_it_lies()


@provision("Clarification 12.2a/1")
def more_sand_moved_than_needed(_case: Case, *, moved: bool) -> Ruling:
    """Moving more sand than the removal takes, to the gain of the next stroke, gets the general penalty."""
    ruling = general_penalty("8.1a").under("Clarification 12.2a/1")
    return ruling.replace_ball() if moved else ruling.play_as_it_lies()


@provision("15.1b")
def ball_moved_by_removing(case: Case) -> Ruling:
    """A ball moved in removing a loose impediment costs one stroke, in removing a movable obstruction none."""
    if case.is_one_of(thing_removed_in_bunker, RemovedThing.LOOSE_IMPEDIMENT):
        return penalty(1, "15.1b").replace_ball()
    return no_penalty("15.2a").replace_ball()
