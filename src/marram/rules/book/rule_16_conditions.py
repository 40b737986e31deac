"""Rule 16.1 and 16.2: abnormal course conditions and dangerous animals."""

from marram.rules.book.local_rules.area_e_options import only_dropping_zone, with_dropping_zone
from marram.rules.book.local_rules.area_f_limits import stance_relief_denied
from marram.rules.book.relief_options import offer
from marram.rules.book.rule_16_options import in_bunker, in_general_area, in_penalty_area, on_putting_green
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_19_unplayable import as_it_lies_or_unplayable
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.relief import (
    ABNORMAL_COURSE_CONDITIONS,
    Animal,
    Interference,
    InTheWay,
    animal_near_ball,
    in_the_way,
    interference,
    only_by_unreasonable_choice,
    point_in_penalty_area_exists,
    stroke_unreasonable_anyway,
)
from marram.rules.relief_option import Limit, ReliefKind, ReliefOption
from marram.rules.ruling import Action, HandOver, Ruling, WhichBall, no_penalty

_WHY_NO_CONDITION = {
    InTheWay.ANIMAL_TRACK: "track_is_no_animal_hole",
    InTheWay.UNMARKED_GROUND: "damage_is_not_under_repair",
    InTheWay.BOUNDARY_OR_INTEGRAL_OBJECT: "fixed_without_free_relief",
    InTheWay.NATURAL_OBJECT: "nature_gives_no_free_relief",
    InTheWay.WATER_OF_PENALTY_AREA: "pond_is_no_temporary_water",
}


@provision("16.1")
def something_interferes(case: Case) -> Ruling | HandOver:
    """Where something interferes, it is asked whether that is an abnormal course condition at all."""
    elsewhere = case.is_one_of(area_of_ball, Area.PENALTY_AREA, Area.TEEING_AREA)
    if elsewhere:
        return abnormal_course_condition(case)
    if not interferes(case):
        return on_line_near_green(case) or abnormal_course_condition(case)
    if case.is_one_of(in_the_way, InTheWay.TWO_CONDITIONS):
        return two_conditions(case)
    if case.is_one_of(in_the_way, *ABNORMAL_COURSE_CONDITIONS):
        return abnormal_course_condition(case)
    return no_abnormal_course_condition(case)


@provision("F-5")
def on_line_near_green(case: Case) -> HandOver | None:
    """Where the Local Rule is adopted, an obstruction on the line of play alone is a case of its own."""
    on_line = case.is_one_of(interference, Interference.LINE_OF_PLAY)
    if not on_line or not case.is_one_of(area_of_ball, Area.GENERAL_AREA) or not case.local_rule("F-5"):
        return None
    if not case.is_one_of(in_the_way, InTheWay.IMMOVABLE_OBSTRUCTION):
        return None
    return HandOver("obstruction_near_green", "F-5", (("obstruction_on_line", "yes"),))


@provision("Clarification 16.1/3")
def two_conditions(case: Case) -> Ruling:
    """Of two conditions that interfere at once the player takes relief from either, and then, if need be, the other."""
    ruling = abnormal_course_condition(case)
    if any(
        option.kind is not ReliefKind.STROKE_AND_DISTANCE and not option.penalty for option in ruling.relief
    ):
        return ruling.note("relief_from_either_condition").under(
            "Clarification 16.1/2", "Clarification 16.1/3"
        )
    return ruling


@provision("Definitions: abnormal course condition")
def no_abnormal_course_condition(case: Case) -> Ruling | HandOver:
    """What is none gives no relief under Rule 16.1; water of a penalty area and movable things have Rules of their own."""
    in_it = case.is_one_of(interference, Interference.BALL, Interference.BALL_ABOVE_GROUND)
    if in_it and case.is_one_of(in_the_way, InTheWay.WATER_OF_PENALTY_AREA):
        return HandOver("ball_in_penalty_area", "17.1a", (("found_in_penalty_area", "yes"),))
    if case.is_one_of(in_the_way, InTheWay.MOVABLE_OBSTRUCTION):
        return movable_obstruction_in_the_way(case)
    ruling = no_penalty("Definitions: abnormal course condition").under("16.1")
    return as_it_lies_or_unplayable(ruling.note(_WHY_NO_CONDITION[case[in_the_way]]), case)


@provision("15.2a")
def movable_obstruction_in_the_way(case: Case) -> HandOver:
    """A movable obstruction is taken away; a ball in or on it has relief under Rule 15.2a(2)."""
    if case.is_one_of(interference, Interference.BALL):
        return HandOver("ball_in_or_on_movable_obstruction", "15.2a(2)", (("found_in_obstruction", "yes"),))
    return HandOver("artificial_thing_removed", "15.2a(1)", (("artificial_thing", "movable_obstruction"),))


@provision("16.1")
def abnormal_course_condition(case: Case) -> Ruling:
    """Free relief from an animal hole, ground under repair, immovable obstruction or temporary water."""
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return no_relief_in_penalty_area(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    if not interferes(case):
        return no_interference(case)
    if stance_relief_denied(case):
        return as_it_lies_or_unplayable(no_penalty("F-6").note("no_free_relief"), case)
    if unreasonable_anyway(case):
        return stroke_unreasonable(case)
    if only_by_choice(case):
        return unreasonable_choice(case)
    ruling = no_penalty("16.1").under("16.1a(1)")
    ruling = offer(ruling, *condition_or_zone(case)).note("unplayable_is_open_too")
    if any(
        option.kind is ReliefKind.FREE and Limit.GENERAL_AREA in option.limits for option in ruling.relief
    ):
        ruling = ruling.note("no_point_no_free_relief")
    if case.is_one_of(interference, Interference.BALL_ABOVE_GROUND):
        return ruling.note("measure_from_ground_below")
    return ruling


@provision("16.1a(1)")
def interferes(case: Case) -> bool:
    """Ball, stance or swing; for a ball on the putting green the line of play too."""
    if case.is_one_of(
        interference, Interference.BALL, Interference.BALL_ABOVE_GROUND, Interference.STANCE_OR_SWING
    ):
        return True
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return case.is_one_of(interference, Interference.LINE_OF_PLAY)
    return False


@provision("16.1a(3)")
def unreasonable_anyway(case: Case) -> bool:
    """Whether something that gives no free relief makes a stroke at the ball clearly unreasonable."""
    return case[stroke_unreasonable_anyway]


@provision("16.1a(3)")
def only_by_choice(case: Case) -> bool:
    """Whether only a clearly unreasonable club, stance, swing or direction brings the interference."""
    return case[only_by_unreasonable_choice]


@provision("16.1b")
def condition_relief(case: Case) -> tuple[ReliefOption, ...]:
    """The relief of Rule 16.1b, 16.1c or 16.1d, by the area of the course where the ball lies."""
    if case.is_one_of(area_of_ball, Area.BUNKER):
        return bunker_relief(case)
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return (green_relief(case),)
    return (in_general_area(),)


@provision("16.1")
def condition_or_zone(case: Case) -> tuple[ReliefOption, ...]:
    """The relief of Rule 16.1, and a dropping zone as one more option or, where the notice says so, alone."""
    usual = () if only_dropping_zone(case) else condition_relief(case)
    return with_dropping_zone(case, usual, penalty=0)


@provision("16.1c")
def bunker_relief(case: Case) -> tuple[ReliefOption, ...]:
    """In the bunker without penalty, as far as it can be had there; or outside it for one stroke."""
    return in_bunker(case)


@provision("16.1d")
def green_relief(case: Case) -> ReliefOption:
    """On the putting green the ball is placed, not dropped."""
    return on_putting_green(case)


@provision("16.1a(1)")
def no_interference(case: Case) -> Ruling:
    """Being near, or a distraction, is no interference; nor is a line of play off the putting green."""
    ruling = no_penalty("16.1a(1)")
    if case.is_one_of(interference, Interference.OUT_OF_BOUNDS_ONLY):
        ruling = no_penalty("16.1a(2)")
    return as_it_lies_or_unplayable(ruling.note("no_free_relief"), case)


@provision("16.1a(2)")
def no_relief_in_penalty_area(case: Case) -> Ruling:
    """There is no free relief from a condition for a ball in a penalty area."""
    ruling = no_penalty("16.1a(2)").under("17.3").note("no_free_relief")
    return offer(ruling, *penalty_area_relief(case))


@provision("6.2b(6)")
def in_teeing_area(_case: Case) -> Ruling:
    """A ball lying in the teeing area may be moved, and played from anywhere inside it."""
    return no_penalty("6.2b(6)").next(Action.PLAY_FROM_TEEING_AREA, WhichBall.ORIGINAL_OR_ANOTHER)


@provision("16.1a(3)")
def stroke_unreasonable(case: Case) -> Ruling:
    """No free relief when something else makes a stroke at the ball clearly unreasonable."""
    return as_it_lies_or_unplayable(no_penalty("16.1a(3)").note("no_relief_stroke_unreasonable"), case)


@provision("16.1a(3)")
def unreasonable_choice(case: Case) -> Ruling:
    """No free relief when only a clearly unreasonable club, stance, swing or direction brings interference."""
    return as_it_lies_or_unplayable(no_penalty("16.1a(3)").note("no_relief_unreasonable_choice"), case)


@provision("16.2")
def dangerous_animal(case: Case) -> Ruling:
    """Free relief, wherever the ball lies, from an animal that could seriously injure the player."""
    what = case[animal_near_ball]
    if what is not Animal.DANGEROUS:
        return no_dangerous_animal(case).caution(
            "other_danger" if what is Animal.NOT_AN_ANIMAL else "animal_still_alive"
        )
    return from_dangerous_animal(case).caution("keep_away_from_animal")


@provision("16.2a")
def no_dangerous_animal(case: Case) -> Ruling:
    """A harmless animal, or a danger that is no animal, gives no relief under this Rule; in the teeing area none is needed."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    ruling = no_penalty("16.2a").note("no_free_relief")
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return offer(ruling, *penalty_area_relief(case))
    return as_it_lies_or_unplayable(ruling, case)


@provision("16.2b")
def from_dangerous_animal(case: Case) -> Ruling:
    """Relief as from an abnormal course condition; in a penalty area inside it, or with penalty outside."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    unreasonable = case[stroke_unreasonable_anyway] or case[only_by_unreasonable_choice]
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return animal_in_penalty_area(case, unreasonable=unreasonable)
    if unreasonable:
        return no_relief_from_animal(case)
    return offer(no_penalty("16.2b(1)"), *condition_or_zone(case))


@provision("16.2b(2)")
def animal_in_penalty_area(case: Case, *, unreasonable: bool) -> Ruling:
    """In a penalty area: free relief inside it where there is any, or penalty relief outside."""
    ruling = no_penalty("16.2b(2)").note("animal_again_after_penalty_relief")
    if unreasonable:
        ruling = ruling.under(_no_relief_citation(case))
    elif case[point_in_penalty_area_exists]:
        return offer(ruling, in_penalty_area("16.2b(2)"), *penalty_area_relief(case))
    return offer(ruling, *penalty_area_relief(case))


def no_relief_from_animal(case: Case) -> Ruling:
    """No free relief when the stroke is clearly unreasonable for another reason, or by choice."""
    return as_it_lies_or_unplayable(no_penalty(_no_relief_citation(case)).note("no_free_relief"), case)


def _no_relief_citation(case: Case) -> str:
    """The exception stood in Rule 16.2a until 2022, and stands in 16.2b(3) since 2023."""
    return "16.2b(3)" if case.played_since(EDITION_2023) else "16.2a"
