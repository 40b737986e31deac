"""How often things happen on courses: common practice, our own judgement; nobody publishes counts."""

from collections.abc import Mapping
from math import log
from typing import Any

from marram.rules.engine.fact import Fact
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.facts.conditions import form_of_play as the_form
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.incidents.incident import Incident

IN_MOST_ROUNDS = frozenset(
    {
        "abnormal_course_condition",
        "advice_exchanged",
        "another_ball_played",
        "artificial_thing_removed",
        "ball_dropped",
        "ball_in_penalty_area",
        "ball_lifted",
        "ball_may_have_moved",
        "ball_near_boundary",
        "ball_not_found",
        "embedded_ball",
        "green_repaired",
        "natural_thing_removed",
        "provisional_ball",
        "unplayable_ball",
        "whose_turn",
    }
)
IN_MANY_ROUNDS = frozenset(
    {
        "ball_found_in_time",
        "ball_hit_flagstick",
        "ball_in_hole",
        "ball_moved_by_natural_forces",
        "ball_moved_by_outside_influence",
        "ball_moved_by_player",
        "ball_moved_in_search",
        "ball_overhung_hole",
        "caddie_behind_ball",
        "conditions_worsened",
        "deflected_off_green",
        "done_in_penalty_area",
        "dropped_ball_played",
        "equipment_used",
        "fell_off_tee",
        "fixed_object_moved",
        "helping_ball",
        "hole_score_wrong",
        "identifying_ball",
        "interfering_ball",
        "lie_preferred",
        "line_of_play_shown",
        "object_set_down_for_aim",
        "played_from_wrong_place",
        "played_out_of_turn",
        "practised_during_round",
        "putt_hit_something",
        "sand_touched",
        "scorecard_fault",
        "something_in_the_way",
        "stableford_points",
        "thing_removed_from_bunker",
        "two_balls",
        "wrong_ball_played",
        "wrong_green",
    }
)
_RARE_THEMES = frozenset(
    {
        "Local Rules: course, equipment and conduct",
        "Local Rules: mats",
        "Local Rules: relief",
        "Other forms of play, partners and teams",
        "Players with disabilities",
        "Resolving doubt and disputes",
    }
)

_USUAL = 5.0
"""How much likelier the usual answer of a fact is than any other."""
_NOT_ADOPTED = 6.0
"""How much likelier it is that a Local Rule is not in force, where an incident is not about it."""
_OFTEN: dict[str, dict[str, float]] = {
    "area_of_ball": {
        "general_area": 6.0,
        "bunker": 4.0,
        "putting_green": 4.0,
        "penalty_area": 3.0,
        "teeing_area": 0.5,
    },
    "in_the_way": {
        "immovable_obstruction": 12.0,
        "temporary_water": 8.0,
        "ground_under_repair": 8.0,
        "animal_hole": 3.0,
        "two_conditions": 0.4,
    },
    "interference": {
        "ball": 8.0,
        "stance_or_swing": 8.0,
        "line_of_play": 1.5,
        "ball_above_ground": 0.4,
        "out_of_bounds_only": 0.4,
        "none": 0.4,
    },
    "provisional_state": {"not_played": 6.0, "found": 4.0, "second_found": 0.2, "both_lost_or_out": 0.1},
    "spot_of_ball_known": {"yes": 8.0},
    "whereabouts": {
        "not_known": 9.0,
        "out_of_bounds": 4.0,
        "penalty_area": 3.0,
        "deliberately_stopped": 0.1,
        "movable_obstruction": 0.3,
    },
}
"""How likely answers are where they differ much on courses; those left out are 1."""
_FORMS = {
    FormOfPlay.STROKE_PLAY: 12.0,
    FormOfPlay.MATCH_PLAY: 5.0,
    FormOfPlay.STABLEFORD: 2.0,
    FormOfPlay.MAXIMUM_SCORE: 0.5,
    FormOfPlay.PAR_BOGEY: 0.5,
}


_MATCH = FormOfPlay.MATCH_PLAY
ONLY_IN: Mapping[str, FormOfPlay] = {
    "ball_moved_by_opponent": _MATCH,
    "concession": _MATCH,
    "handicap_declared_wrong": _MATCH,
    "handicap_strokes_misapplied": _MATCH,
    "hole_or_match_result": _MATCH,
    "match_score_wrong": _MATCH,
    "three_ball_marker_moved": _MATCH,
    "three_ball_moved_by_opponent": _MATCH,
    "three_ball_out_of_turn": _MATCH,
    "maximum_score_hole": FormOfPlay.MAXIMUM_SCORE,
    "par_bogey_hole": FormOfPlay.PAR_BOGEY,
    "penalty_told": _MATCH,
    "play_off_not_completed": FormOfPlay.STROKE_PLAY,
    "ruling_requested_in_match": _MATCH,
    "stableford_points": FormOfPlay.STABLEFORD,
    "strokes_told": _MATCH,
}
"""Incidents whose telling names a form of play, or an opponent: told in that form."""
NOT_IN: Mapping[str, frozenset[FormOfPlay]] = {
    "did_not_hole_out": frozenset({FormOfPlay.MATCH_PLAY}),
    "hopeless_ball_stopped": frozenset({FormOfPlay.MATCH_PLAY, FormOfPlay.STROKE_PLAY}),
}
"""Incidents told of holes scored on their own (Rules 21.1d, 21.2d and 21.3d), or of holes that must be holed out (Rule 3.3c)."""


def weight(one: Incident) -> float:
    """Return how often an incident happens, against the others."""
    if one.name in IN_MOST_ROUNDS:
        return 27.0
    if one.name in IN_MANY_ROUNDS:
        return 9.0
    return 1.0 if one.theme in _RARE_THEMES else 3.0


def rarity(one: Incident) -> int:
    """Return how seldom an incident happens: 0 in most rounds, 1 in many, 2 now and then, 3 rarely."""
    return round(log(27.0 / weight(one), 3))


def likelihood(fact: Fact[Any], answer: Any) -> float:
    """Return how likely an answer is, against the others of its fact."""
    if fact is the_form:
        return _FORMS[answer]
    if fact is the_sides:
        return _USUAL if answer is Sides.INDIVIDUAL else 1.0
    if fact.name.startswith("local_rule_"):
        return 1.0 if answer else _NOT_ADOPTED  # an incident about it has no ruling without it
    if fact.name in _OFTEN:
        return _OFTEN[fact.name].get(fact.token(answer), 1.0)
    return _USUAL if fact.usual is not None and answer == fact.usual else 1.0


def oddity(facts: Mapping[Fact[Any], Any]) -> float:
    """Return how far answers are from the likeliest ones of their facts: 0 where each is, more for each that is rarer.

    Args:
        facts: the facts, with answers as the engine takes them.
    """
    return sum(
        log(max(likelihood(fact, each) for each in fact.answers) / likelihood(fact, answer))
        for fact, answer in facts.items()
        if fact.answers
    )
