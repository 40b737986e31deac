"""Rules 7.2 and 7.3: identifying a ball, and lifting it to do so."""

from marram.rules.book.relief_options import stroke_and_distance
from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_18_provisional import balls_not_told_apart
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.lifting import Marking, cleaned_when_lifted, spot_marking
from marram.rules.facts.search import (
    HowIdentified,
    WhoseBall,
    how_identified,
    identical_ball_there,
    lifting_needed_to_identify,
    own_two_balls_alike,
    whose_ball_lifted,
)
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Ruling, no_penalty, penalty


@provision("7.2")
def identifying_ball(case: Case) -> Ruling:
    """A ball is the player's when it is identified in one of three ways and no other can be confused with it."""
    if case.is_one_of(how_identified, HowIdentified.SEEN_TO_COME_TO_REST):
        return identified(case)
    if case.is_one_of(how_identified, HowIdentified.NOT_AT_ALL):
        return not_identified(case)
    if not case[identical_ball_there]:
        return identified(case)
    if case[own_two_balls_alike]:
        return balls_not_told_apart(case).under("7.2")
    return not_identified(case)


@provision("7.2")
def identified(_case: Case) -> Ruling:
    """The identified ball is the player's ball in play."""
    return no_penalty("7.2").play_as_it_lies()


@provision("18.2a(1)")
def not_identified(_case: Case) -> Ruling:
    """A ball not identified in time is lost, and the player plays again under stroke and distance."""
    relief = stroke_and_distance("18.2b")
    return no_penalty("18.2a(1)").under("7.2").with_options(relief, may_play_as_it_lies=False)


@provision("7.3")
def ball_lifted_to_identify(case: Case) -> Ruling:
    """A ball that might be the player's may be marked, lifted and cleaned as far as needed to identify it."""
    if case.is_one_of(whose_ball_lifted, WhoseBall.STRAY):
        return no_penalty("7.3").next(Action.PLAY_ON).note("go_on_searching")
    if case.is_one_of(whose_ball_lifted, WhoseBall.OPPONENTS, WhoseBall.ANOTHER_PLAYERS):
        return somebody_elses_ball_lifted(case)
    return own_ball_lifted_to_identify(case)


@provision("7.3")
def own_ball_lifted_to_identify(case: Case) -> Ruling:
    """The player's own ball: one stroke if lifting was not needed, or the spot not marked, or it was cleaned."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return lying_in_teeing_area(case)
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return lifted_on_green(case)
    as_allowed = (
        case[lifting_needed_to_identify]
        and case.is_one_of(spot_marking, Marking.RIGHT)
        and not case[cleaned_when_lifted]
    )
    return put_back(no_penalty("7.3") if as_allowed else penalty(1, "7.3"))


@provision("13.1b")
def lifted_on_green(case: Case) -> Ruling:
    """On the green the ball may be lifted and cleaned for any reason, once its spot is marked."""
    if case.is_one_of(spot_marking, Marking.RIGHT):
        return put_back(no_penalty("13.1b"))
    return put_back(penalty(1, "14.1a"))


@provision("7.3")
def somebody_elses_ball_lifted(case: Case) -> Ruling:
    """Another's ball lifted to identify one's own goes back; in match play lifting the opponent's wrongly costs one."""
    if not (case.is_one_of(whose_ball_lifted, WhoseBall.OPPONENTS) and case.match_play):
        return put_back(no_penalty("7.3"), Who.OTHER_PLAYER)
    if case[lifting_needed_to_identify] and case.is_one_of(spot_marking, Marking.RIGHT):
        return put_back(no_penalty("7.3"), Who.OPPONENT)
    return put_back(penalty(1, "9.5b"), Who.OPPONENT)


def put_back(ruling: Ruling, played_by: Who = Who.PLAYER) -> Ruling:
    """The lifted ball goes back to its original spot before its player plays it."""
    return must_go_back(ruling, played_by).note("no_need_to_announce")
