"""Rule 14.2: replacing a ball on its spot."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_09_replacing import SIMILAR_LIE
from marram.rules.book.rule_19_unplayable import penalty_relief_in
from marram.rules.engine.case import Case
from marram.rules.engine.fact import Fact
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.replacing import (
    Material,
    Stays,
    ball_stays_on_spot,
    lie_altered,
    material_of_lie,
    original_ball_unavailable,
    spot_that_stays_exists,
)
from marram.rules.penalty import general
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.ruling import Action, Deadline, HandOver, Ruling, WhichBall, no_penalty

_WHERE_IT_MAY_STAY = {
    Area.TEEING_AREA: Limit.GENERAL_AREA_OR_TEE,
    Area.GENERAL_AREA: Limit.GENERAL_AREA,
    Area.BUNKER: Limit.IN_BUNKER,
    Area.PENALTY_AREA: Limit.IN_PENALTY_AREA,
    Area.PUTTING_GREEN: Limit.ON_GREEN_OR_GENERAL_AREA,
}


@provision("14.2")
def ball_to_be_replaced(case: Case) -> Ruling | HandOver:
    """A ball has to be replaced: which ball, on which spot, and what if it will not stay?"""
    if case[lie_altered]:
        return lie_was_altered(case)
    if case.is_one_of(ball_stays_on_spot, Stays.MOVED_LATER):
        return moved_after_it_stayed(case)
    if case.is_one_of(ball_stays_on_spot, Stays.NO):
        return replaced_ball_does_not_stay(case)
    return with_the_right_ball(case, no_penalty("14.2c").replace_ball().note("spot_includes_height"))


@provision("14.2d")
def lie_was_altered(case: Case) -> Ruling:
    """Where the lie was altered, sand is shaped again; elsewhere the nearest similar lie counts."""
    if case.is_one_of(material_of_lie, Material.SAND):
        return lie_in_sand_altered(case)
    return lie_elsewhere_altered(case)


@provision("14.2d(1)")
def lie_in_sand_altered(case: Case) -> Ruling:
    """The original lie in sand is re-created and the ball replaced on its spot in it."""
    ruling = (
        no_penalty("14.2d(1)")
        .replace_ball()
        .note("shape_the_lie_in_sand", "estimate_the_lie_if_not_known")
        .correct("shape_the_lie_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    )
    return with_the_right_ball(case, ruling)


@provision("14.2d(2)")
def lie_elsewhere_altered(case: Case) -> Ruling:
    """The ball is placed on the nearest spot with the most similar lie within one club-length."""
    ruling = (
        Ruling(relief=(SIMILAR_LIE,))
        .under("14.2d(2)")
        .next(Action.PLACE, WhichBall.ORIGINAL)
        .note("nearest_spot_with_similar_lie", "estimate_the_lie_if_not_known")
    )
    return with_the_right_ball(case, ruling)


@provision("14.2e")
def replaced_ball_does_not_stay(case: Case) -> Ruling:
    """After two failures the ball goes to the nearest spot, not nearer the hole, where it will stay."""
    if not case[spot_that_stays_exists]:
        return no_spot_where_it_stays(case, area_of_ball)
    ruling = place_on_nearest_spot(case, area_of_ball, "14.2e")
    return with_the_right_ball(case, ruling)


@provision("14.2e")
def moved_after_it_stayed(_case: Case) -> HandOver:
    """A ball that came to rest where it was placed is in play: what moves it afterwards is a matter of Rule 9.3."""
    return HandOver("ball_moved_by_natural_forces", "9.3", (("put_in_play_by_hand", "yes"),))


@provision("14.2e")
def place_on_nearest_spot(case: Case, area: Fact[Area], *citations: str) -> Ruling:
    """The nearest spot lies in the area of the course of the spot required, or off the green onto the fringe."""
    option = ReliefOption(
        ReliefKind.NEAREST_SPOT,
        "14.2e",
        Reference.BALL,
        None,
        (Limit.NOT_NEARER, _WHERE_IT_MAY_STAY[case[area]]),
        setting=Setting.PLACE,
    )
    return (
        Ruling(relief=(option,))
        .under(*citations)
        .next(Action.PLACE, WhichBall.ORIGINAL)
        .note("nearest_spot_where_it_stays")
    )


@provision("Clarification 14.2e/1")
def no_spot_where_it_stays(case: Case, area: Fact[Area]) -> Ruling:
    """Where the ball would stay only nearer the hole, penalty relief is what is left: Rule 17 in a penalty area, or 19.

    Of the Clarification only what others tell of it was read, not its text: which relief is left where is from memory.
    """
    ruling = no_penalty("14.2e").under("Clarification 14.2e/1")
    options = penalty_relief_in(case, area)
    return offer(ruling, *options, may_play_as_it_lies=False).note("only_penalty_relief_left")


@provision("14.2a")
def with_the_right_ball(case: Case, ruling: Ruling) -> Ruling:
    """The original ball must be used, unless one of four exceptions allows another."""
    if not case[original_ball_unavailable]:
        return ruling.under("14.2a")
    action = ruling.action or Action.REPLACE
    return ruling.under("14.2a Exception").next(action, WhichBall.ORIGINAL_OR_ANOTHER)
