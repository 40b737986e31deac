"""Rules 14.3b and 14.7 after the stroke: a dropped or placed ball was played; and what a club-length is."""

from marram.rules.book.local_rules.area_e_options import played_outside_relief_area_by_local_rule
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.dropping import (
    DropsBefore,
    MeasuredWith,
    WayOfDropping,
    ball_in_relief_area,
    drops_before,
    measured_with,
    way_of_dropping,
)
from marram.rules.facts.replacing import replaced_on_right_spot
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.penalty import general
from marram.rules.ruling import Action, Deadline, Ruling, general_penalty, no_penalty, penalty


@provision("14.3b")
def dropped_ball_played(case: Case) -> Ruling:
    """A ball put down in taking relief was played: in which way had it been put down, and from where played?"""
    if case.is_one_of(way_of_dropping, WayOfDropping.PLACED):
        return placed_instead_of_dropped(case)
    if not case[ball_in_relief_area]:
        allowed = played_outside_relief_area_by_local_rule(case)
        if allowed and case.is_one_of(way_of_dropping, WayOfDropping.RIGHT):
            return no_penalty("E-12").play_as_it_lies().stroke_counts()
        return played_from_wrong_place(case).under("14.3c")
    if case.is_one_of(way_of_dropping, WayOfDropping.RIGHT):
        return no_penalty("14.3c").play_as_it_lies().stroke_counts()
    return wrong_way_but_from_relief_area(case)


@provision("14.3b")
def wrong_way_but_from_relief_area(_case: Case) -> Ruling:
    """One stroke for playing, from inside the relief area, a ball that was dropped in a wrong way."""
    return penalty(1, "14.3b").play_as_it_lies().stroke_counts()


@provision("14.3b")
def placed_instead_of_dropped(case: Case) -> Ruling:
    """The general penalty for playing a ball that was placed when it had to be dropped, wherever it lay."""
    if not case[ball_in_relief_area]:
        return played_from_wrong_place(case).under("14.3b")
    ruling = general_penalty("14.3b")
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    return ruling.play_as_it_lies().stroke_counts()


@provision("14.3c")
def dropped_once_more(case: Case) -> Ruling:
    """A further drop was made: was it required, was relief complete already, or had the ball to be placed?"""
    before = case[drops_before]
    if before is DropsBefore.STAYED:
        return dropped_again_without_need(case)
    if before is DropsBefore.TWO_OUTSIDE:
        return third_drop(case)
    return no_penalty("14.3c(2)").next(Action.PLAY_ON).note("second_drop_was_required")


@provision("14.3c(1)")
def dropped_again_without_need(case: Case) -> Ruling:
    """Once at rest in the relief area the ball was in play: lifting it costs a stroke, and it is replaced."""
    if case[played_since_put_down]:
        return played_from_wrong_place(case).under("14.3c(1)")
    return must_go_back(penalty(1, "9.4b").under("14.3c(1)"))


@provision("14.3c(2)")
def third_drop(case: Case) -> Ruling:
    """After two drops the ball must be placed; a third drop can be corrected until the ball is played."""
    if case[played_since_put_down]:
        return third_drop_played(case)
    return (
        no_penalty("14.5a")
        .under("14.3c(2)")
        .next(Action.PLACE)
        .note("place_where_second_drop_touched", "place_twice_if_it_rolls")
        .correct("place_where_required", Deadline.BEFORE_STROKE, general("14.7a"))
    )


@provision("14.3c(2)")
def third_drop_played(case: Case) -> Ruling:
    """Off the spot that the second drop first touched it is a wrong place; on it, only put down in a wrong way."""
    if case[replaced_on_right_spot]:
        return penalty(1, "14.2b(2)").under("14.3c(2)").play_as_it_lies().stroke_counts()
    return played_from_wrong_place(case).under("14.3c(2)")


@provision("Definitions: club-length")
def club_length_measured(case: Case) -> Ruling:
    """A club-length is that of the player's longest club other than a putter, whatever was used to measure."""
    if case.is_one_of(measured_with, MeasuredWith.LONGEST_CLUB):
        return measured_with_the_right_club(case)
    if case[ball_in_relief_area]:
        return inside_the_true_relief_area(case)
    if case[played_since_put_down]:
        return played_from_wrong_place(case).under("Definitions: club-length")
    return (
        no_penalty("14.5a")
        .under("Definitions: club-length")
        .next(Action.CORRECT_MISTAKE)
        .note("measure_with_longest_club", "any_option_of_the_same_rule")
        .correct("drop_in_true_relief_area", Deadline.BEFORE_STROKE, general("14.7a"))
    )


@provision("Definitions: club-length")
def measured_with_the_right_club(_case: Case) -> Ruling:
    """Measured with the longest club other than a putter, the relief area is what was measured."""
    return no_penalty("Definitions: club-length").next(Action.PLAY_ON).note("same_length_all_round")


@provision("Definitions: relief area")
def inside_the_true_relief_area(_case: Case) -> Ruling:
    """How the area was measured does not matter as long as the ball lies in the true one."""
    return (
        no_penalty("Definitions: relief area")
        .under("Definitions: club-length")
        .next(Action.PLAY_ON)
        .note("measure_with_longest_club")
    )
