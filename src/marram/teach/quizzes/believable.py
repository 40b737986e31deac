"""Which wrong answers can be believed: a step that is taken after such a thing, with nothing and nobody that is not there."""

from collections.abc import Callable, Mapping
from enum import Enum, auto

from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import incident
from marram.rules.penalty import OWN, PenaltyKind, Who
from marram.rules.relief_family import family
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes.apart import MAY_BE_TAKEN_AWAY
from marram.teach.quizzes.near import Near, is_within_boundary
from marram.teach.quizzes.of_incident import bears_of, step, steps_of
from marram.teach.quizzes.prices_of_relief import at_several_prices, priced_apart
from marram.teach.situations.situation import Situation
from marram.words.headline import said_by_note

PARTNERS = "Other forms of play, partners and teams"
"""The theme whose rulings name a side or a partner."""
_GENERAL_PENALTY = 2
"""Strokes of the general penalty in stroke play (Rule 1.3c(2))."""
_COUNTED = (PenaltyKind.STROKES, PenaltyKind.GENERAL)
_ORDINARY = (*_COUNTED, PenaltyKind.LOSS_OF_HOLE, PenaltyKind.DISQUALIFICATION)


class Spoken(Enum):
    """What an answer can speak of that has to be there; where it is not, the answer goes without a Rule."""

    PROVISIONAL = auto()
    SECOND_PROVISIONAL = auto()
    ORIGINAL = auto()
    BALL_AT_HAND = auto()
    ANOTHER_PLAYER = auto()
    PARTNER = auto()
    ONE_OF_PARTNERS = auto()
    TEEING_AREA = auto()
    PENALTY_AREA = auto()
    SAND = auto()
    TWO_BALLS = auto()
    HOLED = auto()
    HOLE_OVER = auto()
    RELIEF_UNDER_WAY = auto()
    PLAYED_LATE = auto()
    NOT_YET_PLAYED = auto()
    LIFTED_OR_MOVED = auto()
    PUT_BY_CADDIE = auto()
    OTHER_BALL = auto()


_PARTNERS = frozenset({Who.ONE_PARTNER, Who.OTHER_PARTNER, Who.EACH_PARTNER, Who.SIDE})
_ONE_OF_PARTNERS = frozenset({Who.ONE_PARTNER, Who.OTHER_PARTNER})
OTHERS = frozenset({Who.OPPONENT, Who.OTHER_PLAYER, Who.OTHER_SIDE, Who.EACH_PLAYER, Who.EACH_SIDE})
"""Those who bear a penalty besides the player, or instead."""
_AS_IT_LIES = (Action.PLAY_AS_IT_LIES, Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF)
WHAT_WAS_DONE = frozenset(
    {"aide_act", "amputee_act", "blind_help", "device_act", "team_advice", "wheeled_relief"}
)
"""Facts that tell what it is all about: were they otherwise, steps would follow that have nothing to do with what is told."""
_NO_STEP = (None, Action.PLAY_ON, Action.PLAY_AS_IT_LIES)
_OF_PENALTY_AREA = "17"
_TWO = 2
"""The family of penalty area relief."""
_DONE_AGAIN = frozenset({"player_drops_again", "player_replaces_again"})
"""What is put right where a caddie put down a ball that the caddie may not put down."""
_AFTER_WRONG_PLACE = frozenset(
    {"first_ball_counts_second_ignored", "play_out_both_balls", "play_out_from_right_place"}
)
"""Notes of what is done only after a stroke from a wrong place."""
_OF_PROVISIONAL = frozenset({"choose_one_as_provisional", "provisional_may_be_played_on"})
"""Notes of what is done with a provisional ball, which answers say."""
_SPEAKS: Mapping[Spoken, Callable[[Ruling], bool]] = {
    Spoken.PROVISIONAL: lambda one: (
        one.action is Action.PLAY_PROVISIONAL
        or any(option.kind is ReliefKind.PROVISIONAL for option in one.relief)
        or not _OF_PROVISIONAL.isdisjoint(one.notes)
    ),
    Spoken.SECOND_PROVISIONAL: lambda one: "second_provisional_counts" in one.notes,
    Spoken.ORIGINAL: lambda one: any(each.what == "correct_by_playing_original" for each in one.corrections),
    Spoken.BALL_AT_HAND: lambda one: one.action in _AS_IT_LIES,
    Spoken.ANOTHER_PLAYER: lambda one: any(each.who in OTHERS for each in one.penalties),
    Spoken.PARTNER: lambda one: any(each.who in _PARTNERS for each in one.penalties),
    Spoken.ONE_OF_PARTNERS: lambda one: any(each.who in _ONE_OF_PARTNERS for each in one.penalties),
    Spoken.TEEING_AREA: lambda one: one.action is Action.PLAY_FROM_TEEING_AREA,
    Spoken.PENALTY_AREA: lambda one: _OF_PENALTY_AREA in {family(each) for each in one.relief},
    Spoken.SAND: lambda one: "shape_the_lie_in_sand" in one.notes,
    Spoken.TWO_BALLS: lambda one: not _AFTER_WRONG_PLACE.isdisjoint(one.notes),
    Spoken.HOLED: lambda one: one.action is Action.HOLED,
    Spoken.HOLE_OVER: lambda one: one.action is Action.HOLE_OVER and not one.penalties,
    Spoken.RELIEF_UNDER_WAY: lambda one: one.action is Action.GO_ON_WITH_RELIEF,
    Spoken.PLAYED_LATE: lambda one: any(
        each.what == "correct_wrong_ball_when_lost" for each in one.corrections
    ),
    Spoken.NOT_YET_PLAYED: lambda one: any(each.what == "put_relief_right" for each in one.corrections),
    Spoken.LIFTED_OR_MOVED: lambda one: one.action is Action.REPLACE or "go_on_under_that_rule" in one.notes,
    Spoken.PUT_BY_CADDIE: lambda one: any(each.what in _DONE_AGAIN for each in one.corrections),
    Spoken.OTHER_BALL: lambda one: (
        one.action is Action.PLAY_OTHER_BALL
        or (
            one.action is Action.CORRECT_MISTAKE
            and any(each.what == "put_relief_right" for each in one.corrections)
        )
    ),
}
_GONE = frozenset({"lost", "out_of_bounds", "not_found_yet", "in_condition", "moved_by_outside_influence", "in_movable_obstruction", "certain_in_penalty_area", "in_the_hole"})  # fmt: skip
"""What is known of an original ball that is not at hand on the course."""
_NOT_AT_HAND: Mapping[str, frozenset[str]] = {
    "ball_found_in_accumulation": frozenset({"no"}),
    "found_in_obstruction": frozenset({"no"}),
    "found_in_penalty_area": frozenset({"no"}),
    "original_ball": _GONE,
    "spot_of_ball_known": frozenset({"no"}),
}
_LOST_TOO = ("lost_or_out", "both_lost_or_out")
"""What became of provisional balls with which nobody goes on."""
_OTHERS_ARE_THERE = ("opponent", "other_player", "another_player", "by_agreement", "players", "agreed")
_WRONG_PLACE_TOLD = ("played_since_put_down", "played_despite_zone", "serious_breach")
"""Facts by which it is told that a ball was played from where it lay."""
_NOTHING_LIFTED = frozenset({"conceded", "decided_on_relief", "restored_conditions", "routine_help"})
"""What a caddie does without lifting or moving a ball."""
_ANYWHERE = frozenset({"ball_played_by_another_player"})
"""Incidents that tell of no sand, nor where the ball lay."""
_ELSEWHERE = ("bunker", "unplayable")
"""Words of answers by which it is told that relief is not from a penalty area."""
_OF_PARTNERS = ("partner", "four_ball", "foursomes", "team", "concession")
_WITH_OTHERS = frozenset({"ball_marker_in_the_way", "concession", "decided_among_players", "group_over_time", "helping_ball", "hole_or_match_result", "ignored_a_rule", "interfering_ball", "penalty_told", "played_out_of_turn", "shared_caddie_in_breach", "strokes_told"})  # fmt: skip
"""Incidents that tell of another player or the opponent, whatever the answers."""
_ALTERNATIVE = "alternative_to_stroke_and_distance"
_NOT_FOUND = frozenset({"ball_not_found", _ALTERNATIVE})
"""Incidents of a ball that is not there to be played as it lies."""
_PROVISIONAL_IN_NAME, _TEEING_RULE = "provisional", "6"


def is_believable(one: Situation, near: Near) -> bool:
    """Whether an answer can be taken for the right one by somebody who does not know the Rule."""
    right, other = one.ruling, near.ruling
    if at_several_prices(other) and not (priced_apart(right) and priced_apart(other)):
        return False  # which relief costs what is asked only where that is the ruling
    if _is_right_in_part(one, other):
        return False
    if any(_SPEAKS[each](other) and not _is_there(each, one) for each in Spoken):
        return False
    otherwise = [name for name, _ in near.otherwise]
    of_something_else = not WHAT_WAS_DONE.isdisjoint([*one.facts] if near.incident else otherwise)
    if of_something_else and other.action not in (*_NO_STEP, right.action):
        return False
    if of_something_else and not step(other)[2] <= step(right)[2] | {"free"}:
        return False
    one_ball_more = near.misjudged and bool(right.penalties) and other.relief == right.relief != ()
    if _strokes(other) > max(_strokes(right), _GENERAL_PENALTY) + one_ball_more:
        return False
    partners = bool(near.incident) and incident(near.incident).theme == PARTNERS
    if partners and incident(one.incident).theme != PARTNERS:
        return False
    return not near.incident or _is_of_its_kind(one, other)


def _is_of_its_kind(one: Situation, other: Ruling) -> bool:
    """Whether the ruling of another incident comes to something that rulings of this one come to as well."""
    right = one.ruling
    kinds = {*_ORDINARY, *(each.kind for each in right.penalties)}
    if not {each.kind for each in other.penalties} <= kinds:
        return False
    ends = (Action.HOLED, Action.HOLE_OVER, Action.STOP_PLAY)
    if other.action in ends and (right.action not in ends or right.penalties):
        return False
    if said_by_note(other) not in {"", said_by_note(right)}:
        return False
    if MAY_BE_TAKEN_AWAY.intersection(other.notes) - {*right.notes}:
        return False  # nothing is there that may be taken away
    return step(other) in {*steps_of(one.incident), step(right)}


def _is_there(what: Spoken, one: Situation) -> bool:
    """Whether something may be spoken of: the right answer speaks of it, or it is told of and not told to be missing."""
    if _SPEAKS[what](one.ruling):
        return True
    told = one.facts
    provisional = told.get("provisional_state", "")
    if what is Spoken.PROVISIONAL:
        if provisional in _LOST_TOO or told.get("balls_alike") == "none":
            return False
        return provisional not in ("", "not_played") or _PROVISIONAL_IN_NAME in one.incident
    if what is Spoken.SECOND_PROVISIONAL:
        return str(provisional) == "second_found"
    if what is Spoken.ORIGINAL:
        return told.get("original_ball") not in _GONE
    if what is Spoken.BALL_AT_HAND:
        missing = any(told.get(name) in tokens for name, tokens in _NOT_AT_HAND.items())
        return not missing and one.incident not in _NOT_FOUND
    if what is Spoken.OTHER_BALL:
        return one.incident != _ALTERNATIVE or told.get("alternative_ball_dropped") == "yes"
    if what is Spoken.ANOTHER_PLAYER:
        tokens = [str(each) for each in told.values()]
        return one.incident in _WITH_OTHERS or any(
            word in each for word in _OTHERS_ARE_THERE for each in (*tokens, one.incident)
        )
    if what is Spoken.PARTNER:
        of_partners = any(word in one.incident for word in _OF_PARTNERS)
        return (of_partners and bool(bears_of(one.incident) & _PARTNERS)) or told.get("sides") not in (
            None,
            "individual",
        )
    if what is Spoken.ONE_OF_PARTNERS:
        return bool(bears_of(one.incident) & _ONE_OF_PARTNERS)
    if what is Spoken.TEEING_AREA:
        of_tee = incident(one.incident).rule.split(".")[0] == _TEEING_RULE or "tee" in one.incident
        return of_tee or Area.TEEING_AREA.value in told.values()
    if what is Spoken.PENALTY_AREA:
        if area_of_ball.name not in told and any(
            word in str(each) for each in told.values() for word in _ELSEWHERE
        ):
            return False
        return told.get(area_of_ball.name) in (None, Area.PENALTY_AREA.value)
    if what is Spoken.SAND:
        return told.get(area_of_ball.name) in (None, Area.BUNKER.value) and one.incident not in _ANYWHERE
    if what is Spoken.RELIEF_UNDER_WAY:
        return (
            any("relief" in str(each) for each in (*told, *told.values(), one.incident))
            or one.incident == "ball_lifted"
        )
    if what is Spoken.TWO_BALLS:
        return one.form is not FormOfPlay.MATCH_PLAY and any(
            told.get(name) not in (None, "no") for name in _WRONG_PLACE_TOLD
        )
    if what is Spoken.PLAYED_LATE:
        return told.get("late_ball_played") == "yes"
    if what is Spoken.PUT_BY_CADDIE:
        return told.get("caddie_deed") in ("dropped_or_placed", "replaced_ball_others_lifted")
    if what is Spoken.NOT_YET_PLAYED:
        # that a ball dropped for stroke and distance can be put right, no answer says
        return told.get("played_since_put_down") == "no" or is_within_boundary(one)
    if what is Spoken.LIFTED_OR_MOVED:
        if one.incident == "other_person_acted" and told.get("act_of_other") != "moved_ball":
            return False  # what was done to the ball is not told
        if told.get("handled_as") == "only_touched" or told.get("opponent_act") == "touched_on_purpose":
            return False  # it never left its spot
        return told.get("caddie_deed") not in _NOTHING_LIFTED and told.get("who_conceded") != "clearly"
    return "hole" in one.incident.split("_") or one.incident == "concession"


def _is_right_in_part(one: Situation, other: Ruling) -> bool:
    """Whether penalty area relief at two strokes is offered of a ball last played from a penalty area.

    There the player may come to it: dropped in the penalty area and then taken out of it, it is two strokes (Rule 17.2a).
    """
    if one.incident != "played_from_penalty_area" and one.facts.get("last_stroke_from_penalty_area") != "yes":
        return False
    own = sum(each.strokes for each in other.penalties)
    if priced_apart(one.ruling) or (own and other.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF):
        return False
    paid = {own + each.penalty for each in other.relief if family(each) == _OF_PENALTY_AREA}
    return _TWO in paid


def _strokes(ruling: Ruling) -> int:
    own = sum(each.strokes for each in ruling.penalties if each.who in OWN and each.kind in _COUNTED)
    choice = ruling.action in (*_AS_IT_LIES, Action.REPLACE)
    return own + (0 if choice else min((each.penalty for each in ruling.relief), default=0))
