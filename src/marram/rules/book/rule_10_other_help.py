"""Rule 10.2b: other help."""

from datetime import date

from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.help import (
    HelpInStroke,
    LineShownBy,
    ObjectKind,
    asked_or_allowed,
    attending_flagstick,
    backed_away,
    help_in_stroke,
    in_place_at_stance,
    left_before_stroke,
    line_shown_by,
    meant_to_help_aim,
    regular_routine,
    shown_by_own_side,
    stance_with_object,
    still_there_in_stroke,
    stood_there_deliberately,
    stood_there_for_aim,
    touch_improved_green,
    what_was_set_down,
)
from marram.rules.ruling import NotCovered, Ruling, general_penalty, no_penalty

BACKING_AWAY_CLARIFIED = date(2019, 2, 6)
"""From this day a player anywhere on the course may back away (Clarification of Rule 10.2b(4))."""

SELF_STANDING_PUTTERS = date(2025, 1, 1)
"""From this day Clarification 10.2b/1 is applied to every use of a self-standing putter (10.2b(3)/2)."""


def _free(citation: str) -> Ruling:
    """No penalty; a stroke made counts."""
    return no_penalty(citation).stroke_counts().play_as_it_lies()


def _in_breach(citation: str) -> Ruling:
    """The general penalty; a stroke made counts."""
    return general_penalty(citation).stroke_counts().play_as_it_lies()


def _free_before(citation: str) -> Ruling:
    """No penalty for what was done before the stroke, made or still to come."""
    return no_penalty(citation).play_as_it_lies()


def _in_breach_before(citation: str) -> Ruling:
    """The general penalty for what was done before the stroke, made or still to come."""
    return general_penalty(citation).play_as_it_lies()


@provision("10.2b")
def line_of_play_shown(case: Case) -> Ruling:
    """How the line of play may be shown depends on whether the ball is on the putting green."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return line_shown_on_green(case)
    return line_shown_off_green(case)


@provision("10.2b(1)")
def line_shown_off_green(case: Case) -> Ruling:
    """Off the green a person may show the line before the stroke; since 2023 an object never."""
    how = case[line_shown_by]
    if how is LineShownBy.TOUCH:
        return _free_before("10.2b(1)")
    if how is LineShownBy.OBJECT and case.played_since(EDITION_2023):
        return _in_breach_before("10.2b(1)").note("removing_object_does_not_help")
    if case[still_there_in_stroke]:
        return _in_breach("10.2b(1)")
    return _free("10.2b(1)")


@provision("10.2b(2)")
def line_shown_on_green(case: Case) -> Ruling:
    """On the green only the player's side may show the line, without an object, and not during the stroke."""
    if not case[shown_by_own_side]:
        if case[asked_or_allowed]:
            return _in_breach_before("10.2b(2)")
        return _free_before("10.2b(2)").note("outsiders_line_is_advice")
    if case.is_one_of(line_shown_by, LineShownBy.OBJECT):
        return _in_breach_before("10.2b(2)").note("removing_object_does_not_help")
    if case.is_one_of(line_shown_by, LineShownBy.TOUCH) and case[touch_improved_green]:
        return _in_breach_before("8.1a")
    if not case[still_there_in_stroke]:
        return _free("10.2b(2)")
    return still_shown_during_stroke(case)


@provision("10.2b(2) Exception")
def still_shown_during_stroke(case: Case) -> Ruling:
    """Where a caddie stands to attend the flagstick is free; a club or hand that still points out the line is not."""
    if case.is_one_of(line_shown_by, LineShownBy.PERSON) and case[attending_flagstick]:
        return _free("10.2b(2) Exception")
    return _in_breach("10.2b(2)")


@provision("10.2b(3)")
def object_set_down(case: Case) -> Ruling | NotCovered:
    """No object may be set down to help with aim or stance; 2019: no stance taken with its help."""
    if not case[meant_to_help_aim]:
        return _free_before("10.2b(3)")
    what = case[what_was_set_down]
    if what is ObjectKind.CLUBHEAD_STILL_HELD:
        return _free_before("Clarification 10.2b(3)/1")
    if what in (ObjectKind.BALL_AT_REST, ObjectKind.BALL_MARKER):
        return _free_before("10.2b(3)")
    if what is ObjectKind.SELF_STANDING_PUTTER:
        return self_standing_putter(case)
    if what is ObjectKind.ALIGNMENT_BALL_MARKER:
        return NotCovered("alignment_marker_under_rule_4", "10.2b(3)")
    if what is ObjectKind.MARK_IN_GROUND and not case.played_since(EDITION_2023):
        return NotCovered("mark_in_ground_before_2023", "10.2b(3)")
    return set_down_for_stance(case)


@provision("10.2b(3)")
def set_down_for_stance(case: Case) -> Ruling:
    """Since 2023 setting it down is the breach; 2019: taking the stance while it lies there."""
    if case.played_since(EDITION_2023) or case[stance_with_object]:
        return _in_breach_before("10.2b(3)").note("removing_object_does_not_help")
    return _free_before("10.2b(3)").note("object_gone_before_stance")


@provision("Clarification 10.2b/1")
def self_standing_putter(case: Case) -> Ruling | NotCovered:
    """A putter that stands by itself may not be set down to help with the line or the stance."""
    if case.played_since(SELF_STANDING_PUTTERS):
        return _in_breach_before("10.2b(3)").under("Clarification 10.2b/1")
    return NotCovered("self_standing_putter_before_2025", "Clarification 10.2b(3)/2")


@provision("10.2b(4)")
def caddie_behind_ball(case: Case) -> Ruling:
    """The caddie must not stand on the line behind the ball to help a player who has begun the stance."""
    if not case[in_place_at_stance] or not case[stood_there_deliberately]:
        return _free("10.2b(4)")
    if case.played_since(EDITION_2023):
        return caddie_in_restricted_area(case)
    if not case[backed_away]:
        return _in_breach("10.2b(4)")
    if case.played_since(BACKING_AWAY_CLARIFIED):
        return _free("Clarification 10.2b(4)/1")
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return _free("10.2b(4) Exception")
    return _in_breach("10.2b(4)")


@provision("10.2b(4)")
def caddie_in_restricted_area(case: Case) -> Ruling:
    """Since 2023 the purpose decides: aim needs backing away; other help must end before the stroke."""
    if case[stood_there_for_aim]:
        return _free("10.2b(4)") if case[backed_away] else _in_breach("10.2b(4)")
    if case[left_before_stroke] and not case[regular_routine]:
        return _free("10.2b(4)").note("other_help_ended_in_time")
    return _in_breach("10.2b(4)")


@provision("10.2b(5)")
def helped_in_stroke(case: Case) -> Ruling:
    """The stroke is made alone: no physical help and nobody placed for protection."""
    got = case[help_in_stroke]
    if got in (HelpInStroke.PHYSICAL_HELP, HelpInStroke.PROTECTION_FROM_ELEMENTS):
        return _in_breach("10.2b(5)")
    if got is HelpInStroke.DISTRACTIONS_KEPT_OFF and case.played_since(EDITION_2023):
        return _in_breach("10.2b(5)")
    return _free("10.2b(5)")
