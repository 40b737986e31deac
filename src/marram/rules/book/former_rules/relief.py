"""Before and after 2019: dropping, measuring, substituting, and the relief options."""

from marram.rules.book.former_rules.options import (
    former_drop,
    former_stroke_and_distance,
    free_and_replace,
    with_any_ball,
    with_the_same_ball,
)
from marram.rules.book.rule_06_substituted_ball import substitution_in_taking_relief
from marram.rules.book.rule_14_dropped_ball_played import club_length_measured
from marram.rules.book.rule_14_dropping import dropped_but_wrongly, dropped_in_right_way
from marram.rules.book.rule_16_embedded import embedded_ball, is_embedded
from marram.rules.book.rule_17_penalty_areas import ball_in_penalty_area
from marram.rules.book.rule_18_lost import lost_or_out
from marram.rules.book.rule_19_unplayable import unplayable_ball
from marram.rules.editions import EDITION_2019
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.dropping import DropNumber, drop_number
from marram.rules.facts.former import (
    DropHeight,
    closely_mown,
    drop_height,
    embedded_rule_adopted,
    relief_cost_a_stroke,
    rolled_too_far,
)
from marram.rules.facts.lost import AT_HAND, ProvisionalState, provisional_state
from marram.rules.facts.penalty_area import (
    Colour,
    certain_in_penalty_area,
    found_in_penalty_area,
    last_stroke_from_penalty_area,
    penalty_area_colour,
)
from marram.rules.facts.relief import in_sand_not_fairway, stroke_unreasonable_anyway
from marram.rules.facts.replacing import original_ball_unavailable
from marram.rules.facts.unplayable import spot_of_ball_known
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.penalty import general, strokes
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.ruling import (
    Action,
    Deadline,
    NotCovered,
    Ruling,
    WhichBall,
    general_penalty,
    no_penalty,
    penalty,
)


@provision("14.3")
def ball_was_dropped(case: Case) -> Ruling:
    """Since 2019 from knee height into a relief area; before, from shoulder height, and it could roll."""
    if not case.played_since(EDITION_2019):
        return former_dropped(case)
    if case.is_one_of(drop_height, DropHeight.KNEE):
        return dropped_in_right_way(case)
    return dropped_but_wrongly(case)


@provision("former 20-2a")
def former_dropped(case: Case) -> Ruling:
    """A ball was dropped from shoulder height; played after another drop, it cost a stroke."""
    if case.is_one_of(drop_height, DropHeight.SHOULDER):
        return former_drop_came_to_rest(case)
    return (
        no_penalty("former 20-2a")
        .under("former 20-6")
        .next(Action.DROP_AGAIN)
        .note("former_how_to_drop")
        .correct("former_drop_from_shoulder", Deadline.BEFORE_STROKE, strokes(1, "former 20-2a"))
    )


@provision("former 20-2c")
def former_drop_came_to_rest(case: Case) -> Ruling:
    """Dropped again once if it rolled where it must not; then placed where the second drop struck the course."""
    if not case[rolled_too_far]:
        return no_penalty("former 20-2c").play_as_it_lies()
    if case.is_one_of(drop_number, DropNumber.FIRST):
        return no_penalty("former 20-2c").next(Action.DROP_AGAIN).note("former_how_to_drop")
    return no_penalty("former 20-2c").next(Action.PLACE).note("former_place_where_it_struck")


@provision("Definitions: club-length")
def club_used_to_measure(case: Case) -> Ruling:
    """Since 2019 a club-length has one measure; before, it was that of any club the player chose."""
    if not case.played_since(EDITION_2019):
        return former_any_club(case)
    return club_length_measured(case)


@provision("former Decision 20/1")
def former_any_club(_case: Case) -> Ruling:
    """Any club selected for the round could be used, but the same one throughout a situation."""
    return no_penalty("former Decision 20/1").next(Action.PLAY_ON).note("former_same_club_throughout")


@provision("6.3b(1)")
def another_ball_used_for_relief(case: Case) -> Ruling:
    """Since 2019 any ball may be used in taking relief; before, free relief kept the player to the same ball."""
    if not case.played_since(EDITION_2019):
        return former_substitution(case)
    return substitution_in_taking_relief(case)


@provision("former 15-2")
def former_substitution(case: Case) -> Ruling:
    """Another ball in free relief was allowed only if the ball could not be got back at once."""
    if case[relief_cost_a_stroke] or case[original_ball_unavailable]:
        return no_penalty("former 15-2").next(Action.PLAY_ON, WhichBall.ORIGINAL_OR_ANOTHER)
    if case[played_since_put_down]:
        ruling = general_penalty("former 15-2").stroke_counts()
        if case.match_play:
            return ruling.next(Action.HOLE_OVER)
        return ruling.play_as_it_lies().note("play_out_with_substituted_ball")
    return (
        no_penalty("former 20-6")
        .under("former 15-2")
        .next(Action.CORRECT_MISTAKE, WhichBall.ORIGINAL)
        .correct("change_back_to_original_ball", Deadline.BEFORE_STROKE, general("former 15-2"))
    )


@provision("17.1b")
def relief_from_penalty_area(case: Case) -> Ruling | NotCovered:
    """Since 2019 a red penalty area has no relief on the opposite side, unless a Local Rule gives it."""
    if not case.played_since(EDITION_2019):
        return former_water_hazard(case)
    return ball_in_penalty_area(case)


@provision("former 26-1")
def former_water_hazard(case: Case) -> Ruling | NotCovered:
    """Play it as it lay, or relief for one stroke; not found, it had to be known or virtually certain to be there."""
    if case[last_stroke_from_penalty_area]:
        return NotCovered("former_played_within_hazard", "former 26-2")
    if case[found_in_penalty_area]:
        return with_any_ball(no_penalty("former 26-1").with_options(*former_water_hazard_options(case)))
    if not case[certain_in_penalty_area]:
        return former_lost(no_penalty("former 27-1").under("former 26-1"))
    options = former_water_hazard_options(case)
    return with_any_ball(no_penalty("former 26-1").with_options(*options, may_play_as_it_lies=False))


@provision("former 26-1")
def former_water_hazard_options(case: Case) -> tuple[ReliefOption, ...]:
    """Stroke and distance, on the line behind and, from a lateral water hazard, two club-lengths on either side."""
    options = (
        former_stroke_and_distance("former 26-1"),
        former_drop(
            ReliefKind.BACK_ON_THE_LINE,
            "former 26-1",
            Reference.LINE_THROUGH_CROSSING_POINT,
            (Limit.NOT_NEARER_THAN_CROSSING_POINT, Limit.OUTSIDE_PENALTY_AREA),
            penalty=1,
        ),
    )
    if case.is_one_of(penalty_area_colour, Colour.YELLOW):
        return options
    beside = (
        former_drop(
            ReliefKind.LATERAL,
            "former 26-1",
            reference,
            (Limit.NOT_NEARER, Limit.OUTSIDE_PENALTY_AREA),
            club_lengths=2,
            penalty=1,
        )
        for reference in (Reference.CROSSING_POINT, Reference.OPPOSITE_EDGE)
    )
    return (*options, *beside)


def former_lost(ruling: Ruling) -> Ruling:
    """Only stroke and distance is left."""
    option = former_stroke_and_distance("former 27-1")
    return with_any_ball(ruling.with_options(option, may_play_as_it_lies=False))


@provision("18.2b")
def ball_lost_or_out(case: Case) -> Ruling:
    """Since 2019 a Local Rule may offer a drop for two strokes; before, there was only stroke and distance."""
    if not case.played_since(EDITION_2019):
        return former_lost_or_out(case)
    return lost_or_out(case)


@provision("former 27-1")
def former_lost_or_out(case: Case) -> Ruling:
    """Play again from the previous spot for one stroke, or go on with the provisional ball."""
    provisional = case[provisional_state]
    if provisional in AT_HAND:
        option = ReliefOption(
            ReliefKind.PROVISIONAL,
            "former 27-2b",
            Reference.PROVISIONAL_BALL,
            None,
            (),
            2 if provisional is ProvisionalState.SECOND_FOUND else 1,
            Setting.PLAY,
        )
        ruling = no_penalty("former 27-2b").with_options(option)
        return ruling.next(Action.PLAY_PROVISIONAL)
    if provisional is ProvisionalState.LOST_OR_OUT:
        return former_lost(penalty(1, "former 27-1")).note("provisional_lost_too")
    if provisional is ProvisionalState.BOTH_LOST_OR_OUT:
        return former_lost(penalty(2, "former 27-1")).note("both_provisionals_lost_too")
    return former_lost(no_penalty("former 27-1"))


@provision("16.3a(1)")
def ball_was_embedded(case: Case) -> Ruling:
    """Since 2019 free relief throughout the general area; before, only in closely-mown ground, or by Local Rule."""
    if not case.played_since(EDITION_2019):
        return former_embedded(case)
    return embedded_ball(case)


@provision("former 25-2")
def former_embedded(case: Case) -> Ruling:
    """Dropped as near as possible to where it lay, through the green."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return free_and_replace("former 16-1b").note("former_repair_pitch_mark")
    if not case.is_one_of(area_of_ball, Area.GENERAL_AREA) or not is_embedded(case):
        return no_penalty("former 25-2").play_as_it_lies()
    if not case[closely_mown] and not former_local_rule_on_embedded_ball(case):
        return no_penalty("former 25-2").play_as_it_lies()
    option = former_drop(
        ReliefKind.FREE, "former 25-2", Reference.BALL, (Limit.NOT_NEARER, Limit.GENERAL_AREA)
    )
    return with_the_same_ball(no_penalty("former 25-2").with_options(option))


@provision("former Local Rule on embedded ball")
def former_local_rule_on_embedded_ball(case: Case) -> bool:
    """Where adopted it gave the relief through the green, but not in sand, nor where no stroke was reasonable."""
    return (
        case[embedded_rule_adopted] and not case[in_sand_not_fairway] and not case[stroke_unreasonable_anyway]
    )


@provision("19.1")
def ball_unplayable(case: Case) -> Ruling | NotCovered:
    """Since 2019 two strokes buy relief outside a bunker; before, dropping kept the player inside."""
    if not case.played_since(EDITION_2019):
        return former_unplayable(case)
    return unplayable_ball(case)


@provision("former 28")
def former_unplayable(case: Case) -> Ruling | NotCovered:
    """For one stroke: stroke and distance, on the line behind, or within two club-lengths; in a bunker, inside it."""
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return NotCovered("former_unplayable_in_hazard", "former 28")
    again = former_stroke_and_distance("former 28")
    if not case[spot_of_ball_known]:
        return with_any_ball(no_penalty("former 28").with_options(again, may_play_as_it_lies=False))
    inside = (Limit.IN_BUNKER,) if case.is_one_of(area_of_ball, Area.BUNKER) else ()
    line = former_drop(
        ReliefKind.BACK_ON_THE_LINE,
        "former 28",
        Reference.LINE_THROUGH_BALL,
        (Limit.NOT_NEARER_THAN_BALL, *inside),
        penalty=1,
    )
    near = former_drop(
        ReliefKind.LATERAL,
        "former 28",
        Reference.BALL,
        (Limit.NOT_NEARER, *inside),
        club_lengths=2,
        penalty=1,
    )
    return with_any_ball(no_penalty("former 28").with_options(again, line, near))
