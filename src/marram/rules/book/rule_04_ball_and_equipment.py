"""Rules 4.2 and 4.3: the ball, and the use of other equipment."""

from marram.rules.book.local_rules.area_g_books import only_approved_books_broken
from marram.rules.book.plain_outcomes import free, in_breach, out
from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.equipment import (
    BallDamage,
    BallFault,
    BallSetDown,
    Equipment,
    LiftingFault,
    ball_damage,
    ball_fault,
    ball_set_down,
    equipment_breach_again,
    equipment_use,
    green_map_within_limits,
    lifting_fault,
    medical_use_accepted,
    stroke_at_ball_counted,
    tape_not_excessive,
)
from marram.rules.penalty import general
from marram.rules.ruling import Action, Deadline, Ruling, WhichBall, general_penalty, no_penalty, penalty

_NOT_MARKED = (LiftingFault.NOT_MARKED, LiftingFault.NOT_MARKED_AND_MORE)
_ALLOWED = (
    Equipment.COMPASS,
    Equipment.WEATHER_REPORT,
    Equipment.GRASS_TOSSED,
    Equipment.EARLIER_INFORMATION,
    Equipment.AUDIO_UNRELATED,
    Equipment.PLAIN_GLOVE_OR_TOWEL,
    Equipment.STRETCHING,
)
_ITEM = {
    Equipment.COMPASS: "4.3a(1)",
    Equipment.ELEVATION_OR_RECOMMENDATION: "4.3a(1)",
    Equipment.WEATHER_REPORT: "4.3a(2)",
    Equipment.GRASS_TOSSED: "4.3a(2)",
    Equipment.WIND_MEASURED: "4.3a(2)",
    Equipment.EARLIER_INFORMATION: "4.3a(3)",
    Equipment.ROUND_ANALYSED: "4.3a(3)",
    Equipment.AUDIO_UNRELATED: "4.3a(4)",
    Equipment.AUDIO_OR_VIDEO_HELP: "4.3a(4)",
    Equipment.PLAIN_GLOVE_OR_TOWEL: "4.3a(5)",
    Equipment.GRIP_AID: "4.3a(5)",
    Equipment.STRETCHING: "4.3a(6)",
    Equipment.SWING_AID: "4.3a(6)",
}
"""Under which of its headings Rule 4.3a gives each use as an example."""


@provision("4.2a")
def ball_doubtful(case: Case) -> Ruling:
    """A stroke at a ball that does not conform, or was deliberately altered, disqualifies."""
    fault = case[ball_fault]
    if fault is BallFault.NOTHING:
        return free("4.2a(1)").note("ball_may_come_from_anyone")
    citation = "4.2a(1)" if fault is BallFault.NOT_CONFORMING else "4.2a(2)"
    if case[stroke_at_ball_counted]:
        return out(citation)
    return free(citation).note("play_a_conforming_ball")


@provision("4.2b")
def ball_broke(_case: Case) -> Ruling:
    """A ball that breaks into pieces after a stroke: the stroke does not count and is played again."""
    return (
        no_penalty("4.2b")
        .stroke_does_not_count()
        .next(Action.REPLAY, WhichBall.ANOTHER)
        .note("play_another_ball_same_spot")
        .correct("play_from_where_stroke_was", Deadline.BEFORE_STROKE, general("14.7a"))
    )


@provision("4.2c(1)")
def lifted_to_see_damage(case: Case) -> Ruling:
    """A ball believed cut or cracked may be lifted to look at it: marked first, and not cleaned; one stroke for all faults."""
    fault = case[lifting_fault]
    if fault is LiftingFault.NONE:
        return _back(no_penalty("4.2c(1)"))
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return lying_in_teeing_area(case)
    if fault not in _NOT_MARKED and case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return _back(no_penalty("13.1b").under("4.2c(1)"))
    return _back(penalty(1, "4.2c(1)"))


def _back(ruling: Ruling) -> Ruling:
    return must_go_back(ruling).note("other_ball_only_if_cut_or_cracked")


@provision("4.2c(2)")
def damaged_ball_changed(case: Case) -> Ruling:
    """Only a ball clearly cut or cracked on the hole being played may be changed on that hole."""
    if case[ball_damage] is BallDamage.CUT_OR_CRACKED_ON_HOLE:
        return no_penalty("4.2c(2)").next(Action.REPLACE, WhichBall.ORIGINAL_OR_ANOTHER)
    down = case[ball_set_down]
    if down is BallSetDown.ANOTHER_PLAYED:
        return damaged_ball_changed_wrongly(case)
    ruling = no_penalty("4.2c(2)").replace_ball()
    if down is BallSetDown.ORIGINAL:
        return ruling.note("other_ball_between_holes")
    otherwise = damaged_ball_changed_wrongly(case).penalties[0]
    return ruling.under("14.5a").correct("change_ball_back", Deadline.BEFORE_STROKE, otherwise)


@provision("6.3b")
def damaged_ball_changed_wrongly(case: Case) -> Ruling:
    """A stroke at a ball wrongly substituted: the general penalty until 2022, one stroke since."""
    begin = penalty(1, "6.3b(3)") if case.played_since(EDITION_2023) else general_penalty("6.3b(3)")
    return begin.under("4.2c(2)").play_as_it_lies().stroke_counts().note("finish_hole_with_other_ball")


@provision("4.3a")
def equipment_used(case: Case) -> Ruling:
    """Equipment may help, but not replace a skill or judgement that the game asks for."""
    if case.is_one_of(equipment_use, *_ALLOWED):
        return allowed_unless_forbidden_by_local_rule(case)
    use = case[equipment_use]
    if use is Equipment.DISTANCE_OR_DIRECTION:
        return distance_device(case)
    if use is Equipment.GREEN_MAP:
        return green_map(case)
    if use is Equipment.MEDICAL:
        return medical_equipment(case)
    if use is Equipment.MEDICAL_TAPE:
        return medical_tape(case)
    if use is Equipment.ABNORMAL_STROKE:
        return equipment_breach(case, "4.3a")
    return equipment_breach(case, "4.3a").under(_ITEM[use])


@provision("4.3a")
def allowed_unless_forbidden_by_local_rule(case: Case) -> Ruling:
    """Sound and video that have nothing to do with the competition, and books of one's own, may be forbidden."""
    if case.is_one_of(equipment_use, Equipment.AUDIO_UNRELATED) and case.local_rule("G-8"):
        return equipment_breach(case, "G-8")
    if case.is_one_of(equipment_use, Equipment.EARLIER_INFORMATION) and only_approved_books_broken(case):
        return equipment_breach(case, "G-11")
    return free("4.3a").under(_ITEM[case[equipment_use]])


@provision("4.3a(1)")
def distance_device(case: Case) -> Ruling:
    """Distance and direction may be measured, unless a Local Rule forbids distance devices; a compass measures none."""
    if case.local_rule("G-5"):
        return equipment_breach(case, "G-5")
    return free("4.3a(1)")


@provision("Clarification 4.3a/1")
def green_map(case: Case) -> Ruling:
    """Putting-green reading material is limited in size and scale, and further by Local Rule."""
    if case[green_map_within_limits]:
        if only_approved_books_broken(case):
            return equipment_breach(case, "G-11")
        return free("Clarification 4.3a/1")
    return equipment_breach(case, "4.3a").under("Clarification 4.3a/1")


@provision("4.3b")
def medical_equipment(case: Case) -> Ruling:
    """Equipment used for a medical reason is allowed if it gives no unfair advantage."""
    if case[medical_use_accepted]:
        return free("4.3b")
    return equipment_breach(case, "4.3a").under("4.3b")


@provision("4.3b(2)")
def medical_tape(case: Case) -> Ruling:
    """Tape for a medical reason is allowed unless there is too much of it or it helps more than needed."""
    if case[tape_not_excessive]:
        return free("4.3b(2)")
    return equipment_breach(case, "4.3a").under("4.3b(2)")


@provision("4.3")
def equipment_breach(case: Case, citation: str) -> Ruling:
    """The first breach gets the general penalty, a second and separate one disqualification."""
    if case[equipment_breach_again]:
        return out(citation)
    return in_breach(citation).note("on_next_hole_if_between")
