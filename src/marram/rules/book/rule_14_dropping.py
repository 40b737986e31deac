"""Rule 14.3: dropping a ball in a relief area, before it is played."""

from collections.abc import Callable

from marram.rules.book.local_rules.area_e_options import played_outside_relief_area_by_local_rule
from marram.rules.book.rule_14_replacing import (
    moved_after_it_stayed,
    no_spot_where_it_stays,
    place_on_nearest_spot,
)
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.dropping import (
    Deflection,
    DropNumber,
    WayOfDropping,
    ball_in_relief_area,
    could_rest_in_relief_area,
    deflection_of_drop,
    drop_number,
    stays_where_first_touched,
    way_of_dropping,
)
from marram.rules.facts.replacing import Stays, area_of_placing_spot, spot_that_stays_exists
from marram.rules.penalty import Who, general, strokes
from marram.rules.ruling import Action, Deadline, HandOver, Ruling, WhichBall, general_penalty, no_penalty


@provision("14.3")
def ball_dropped(case: Case) -> Ruling:
    """A ball was put down in taking relief and has not been played: is relief complete?"""
    return drop_judged(case, dropped_in_right_way)


@provision("14.3")
def drop_judged(case: Case, at_rest: Callable[[Case], Ruling]) -> Ruling:
    """In which way was it dropped, did anybody deflect it, and then ``at_rest``: did it come to rest where it must?"""
    if not case.is_one_of(way_of_dropping, WayOfDropping.RIGHT):
        return dropped_in_wrong_way(case)
    deflection = case[deflection_of_drop]
    if deflection is Deflection.NOTHING:
        return at_rest(case)
    if deflection is Deflection.BY_ACCIDENT:
        return accidentally_deflected(case, at_rest)
    return deliberately_deflected(case)


@provision("14.3b")
def dropped_in_wrong_way(case: Case) -> Ruling:
    """Without limit, a ball dropped in a wrong way is dropped again, and that drop is not counted.

    Played as it is, it costs one stroke from inside the relief area and the general penalty from outside;
    placed instead of dropped, the general penalty from anywhere.
    """
    if case.is_one_of(way_of_dropping, WayOfDropping.PLACED):
        return _drop_again().correct("drop_in_right_way", Deadline.BEFORE_STROKE, general("14.3b"))
    return dropped_but_wrongly(case)


@provision("14.3b")
def dropped_but_wrongly(_case: Case) -> Ruling:
    """Dropped, but not from knee height or otherwise wrongly: one stroke once it is played from the relief area."""
    return (
        _drop_again()
        .note("wrong_drop_played_from_outside")
        .correct("drop_in_right_way", Deadline.BEFORE_STROKE, strokes(1, "14.3b"))
    )


def _drop_again() -> Ruling:
    return (
        no_penalty("14.3b")
        .under("14.5a")
        .next(Action.DROP_AGAIN, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("wrong_drops_are_not_counted", "how_to_drop")
    )


@provision("14.3c(1)")
def accidentally_deflected(case: Case, at_rest: Callable[[Case], Ruling]) -> Ruling:
    """What the ball hits by accident after the ground does not matter, only where it comes to rest."""
    return at_rest(case).note("accidental_deflection_does_not_matter")


@provision("14.3c")
def dropped_in_right_way(case: Case) -> Ruling:
    """At rest in the relief area it is played as it lies; else a second drop, then placing."""
    if case[ball_in_relief_area]:
        return no_penalty("14.3c(1)").play_as_it_lies().note("relief_is_complete")
    if played_outside_relief_area_by_local_rule(case):
        return may_be_played_or_dropped_again(case)
    return came_to_rest_outside(case)


@provision("E-12")
def may_be_played_or_dropped_again(_case: Case) -> Ruling:
    """Until 2022, where adopted: it may be played from outside the relief area, or dropped again."""
    return no_penalty("E-12").play_as_it_lies().note("may_also_drop_again")


@provision("14.3c(2)")
def came_to_rest_outside(case: Case) -> Ruling:
    """Outside once: drop a second time. Outside twice: place where the second drop first touched the ground."""
    if case.is_one_of(drop_number, DropNumber.FIRST):
        return second_drop(case)
    return _place_where_it_first_touched()


@provision("14.3c(2)")
def second_drop(_case: Case) -> Ruling:
    """A second drop in the right way, with any ball; back on the line another place on it may be chosen."""
    ruling = no_penalty("14.3c(2)").next(Action.DROP_AGAIN, WhichBall.ORIGINAL_OR_ANOTHER)
    return ruling.note("second_drop_is_counted", "watch_where_it_touches", "on_the_line_another_spot")


def _place_where_it_first_touched() -> Ruling:
    return (
        no_penalty("14.3c(2)")
        .next(Action.PLACE, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("place_where_second_drop_touched", "place_twice_if_it_rolls")
        .correct("place_where_required", Deadline.BEFORE_STROKE, general("14.7a"))
    )


@provision("14.3d")
def deliberately_deflected(case: Case) -> Ruling:
    """A drop deliberately deflected or stopped does not count; a player who did it gets the general penalty."""
    if not case[could_rest_in_relief_area]:
        return no_chance_to_rest_in_relief_area(case)
    who = {
        Deflection.DELIBERATE_BY_PLAYER: Who.PLAYER,
        Deflection.DELIBERATE_BY_OTHER_PLAYER: Who.OPPONENT if case.match_play else Who.OTHER_PLAYER,
    }.get(case[deflection_of_drop])
    if who is None:
        return (
            no_penalty("14.3d")
            .next(Action.DROP_AGAIN, WhichBall.ORIGINAL_OR_ANOTHER)
            .note("drop_not_counted")
        )
    ruling = general_penalty("14.3d", who)
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    return ruling.next(Action.DROP_AGAIN, WhichBall.ORIGINAL_OR_ANOTHER).note("drop_not_counted")


@provision("14.3d Exception")
def no_chance_to_rest_in_relief_area(case: Case) -> Ruling:
    """Stopped when it could no longer stay inside: no penalty, and it counts as a drop that ended outside."""
    return came_to_rest_outside(case).under("14.3d Exception")


@provision("14.3c(2)")
def ball_placed_after_two_drops(case: Case) -> Ruling | HandOver:
    """After two drops the ball is placed; if it will not stay there twice, the nearest spot where it will."""
    if case.is_one_of(stays_where_first_touched, Stays.MOVED_LATER):
        return moved_after_it_stayed(case)
    if case.is_one_of(stays_where_first_touched, Stays.YES):
        return no_penalty("14.3c(2)").play_as_it_lies().note("relief_is_complete")
    if not case[spot_that_stays_exists]:
        return no_spot_where_it_stays(case, area_of_placing_spot)
    ruling = place_on_nearest_spot(case, area_of_placing_spot, "14.3c(2)", "14.2e")
    return ruling.next(Action.PLACE, WhichBall.ORIGINAL_OR_ANOTHER)
