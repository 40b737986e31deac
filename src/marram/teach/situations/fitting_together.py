"""Which facts can be told together: an opponent is in a match, and what is said to have moved was not only touched."""

from collections.abc import Mapping
from typing import Any

from marram.rules.editions import edition_of
from marram.rules.facts.conditions import LOCAL_RULES, FormOfPlay
from marram.rules.local_rules.register import REGISTER
from marram.teach.situations.how_often import NOT_IN
from marram.teach.situations.never_together import NEVER_TOGETHER
from marram.teach.situations.reaching import TODAY

OF_MATCH_PLAY: Mapping[str, frozenset[str]] = {
    "caddie_deed": frozenset({"conceded"}),
    "exchange_of_balls": frozenset({"opponent_first"}),
    "how_hole_ended": frozenset({"conceded", "result_decided"}),
    "stop_reason": frozenset({"agreed_in_match"}),
    "struck": frozenset({"decided_hole"}),
    "what_moved_ball": frozenset({"opponent"}),
    "whom_else": frozenset({"hurt_opponent"}),
    "who_ignored": frozenset({"opponents_breach"}),
    "who_moved_ball": frozenset({"opponent"}),
    "who_moved_marker": frozenset({"opponent"}),
    "whose_ball_lifted": frozenset({"opponents"}),
    "why_play_stopped": frozenset({"agreement"}),
    "why_stopped": frozenset({"stroke_conceded", "hole_or_match_conceded"}),
}
"""By fact: answers that name an opponent or a concession, which are in match play only (Definitions: opponent; Rule 3.2b)."""
NOT_IN_MATCH: Mapping[str, frozenset[str]] = {
    "breach_when": frozenset({"several_holes"}),
    "late_breach": frozenset({"handicap_too_high", "known_disqualification", "score_too_low"}),
    "played_on": frozenset({"finished_without_marker"}),
}
"""By fact: answers that name a marker or a scorecard, which only stroke play has (Definitions: marker; Rule 3.3b).

Nor is it told of a match that a breach went on for several holes: which of them are lost hangs on how each was played.
"""
NOT_IN_MATCHES = frozenset(
    {
        "card_handicap_wrong",
        "four_ball_card",
        "four_ball_disqualified",
        "hole_score_wrong",
        "marker_changed_or_missing",
        "scorecard_fault",
    }
)
"""Incidents of scorecards, or of mistakes to be corrected, which decide no match (Rules 3.2, 3.3b and 6.3c(1))."""
_DONE_OPENLY = frozenset(
    {
        "at_players_request",
        "conceded_hole_or_match",
        "conceded_stroke",
        "lifted_as_own",
        "lifted_or_moved_on_purpose",
    }
)
"""Acts of an opponent that nobody has to look into: it is known what moved the ball."""
_DOING_OTHER_THINGS = (
    "searching",
    "marking_lifting_replacing",
    "removing_movable_obstruction",
    "restoring_conditions",
    "taking_relief",
    "measuring",
    "removing_loose_impediment",
    "moving_away_from_ball",
)
"""What nobody does in the middle of a swing."""
_EXCHANGED = frozenset({"player_first", "opponent_first", "not_known"})
"""Balls of two players exchanged, which nobody tells of a ball that was set down or was the player's own."""
NOT_OF_INCIDENT: Mapping[str, Mapping[str, frozenset[str | int]]] = {
    "advice_giver_moved_ball": {
        "handling_allowed": frozenset({"yes"}),
        "outside_cause_known": frozenset({"an_animal", "no"}),
    },
    "aeration_hole": {"area_of_ball": frozenset({"bunker"})},
    "animal_damage": {"area_of_ball": frozenset({"putting_green"})},
    "ball_limited": {"breach_when": frozenset({"between_holes"})},
    "ball_dislodged_from_tree": {"area_of_ball": frozenset({"putting_green", "teeing_area"})},
    "ball_may_have_moved": {
        "handling_allowed": frozenset({"yes"}),
        "opponent_act": _DONE_OPENLY,
    },
    "ball_moved_by_opponent": {
        "area_of_ball": frozenset({"teeing_area"}),
        "opponent_cause_known": frozenset({"no"}),
    },
    "ball_after_provisional": {"nearer_stroke_at_provisional": frozenset({"yes"})},
    "ball_marker_moved": {
        "area_of_ball": frozenset({"teeing_area"}),
        "moved_while": frozenset({"searching", "moving_away_from_ball"}),
    },
    "ball_moved_by_outside_influence": {"outside_cause_known": frozenset({"no"})},
    "ball_moved_by_player": {"cause_known": frozenset({"no"})},
    "ball_moved_during_swing": {
        "handling_allowed": frozenset({"yes"}),
        "moved_while": frozenset(_DOING_OTHER_THINGS),
        "movement_accidental": frozenset({"no"}),
        "opponent_act": _DONE_OPENLY | {"touched_on_purpose"},
        "while_searching": frozenset({"yes"}),
    },
    "ball_moved_in_search": {
        "area_of_ball": frozenset({"putting_green", "teeing_area"}),
        "handling_allowed": frozenset({"yes"}),
        "while_searching": frozenset({"no"}),
        "opponent_act": frozenset(
            {"conceded_stroke", "conceded_hole_or_match", "at_players_request", "touched_on_purpose"}
        ),
    },
    "ball_set_down": {"exchange_of_balls": _EXCHANGED},
    "ball_to_be_replaced": {
        "area_of_ball": frozenset({"teeing_area"}),
        "local_rule_e_1_3": frozenset({"yes"}),
    },
    "balls_found_exchanged": {"exchange_of_balls": frozenset({"only_the_player"})},
    "conditions_worsened": {
        "alteration": frozenset({"dew_frost_water"}),
        "altered_place": frozenset({"own_teeing_area"}),
    },
    "dropped_where_lost": {"local_rule_e_5": frozenset({"yes"})},
    "four_ball_penalty": {"holes_with_breach": frozenset({0, "0"})},
    "hoof_damage": {
        "area_of_ball": frozenset({"putting_green"}),
        "condition_named_without_stance": frozenset({"yes", "no"}),
        "interference": frozenset({"ball_above_ground"}),
    },
    **{
        name: {"interference": frozenset({"ball_above_ground", "out_of_bounds_only"})}
        for name in (
            "accumulated_loose_impediments",
            "animal_dung",
            "ant_hill",
            "flooded_bunker",
            "movable_treated_as_immovable",
            "painted_line",
        )
    },
    "road_or_path": {
        "area_of_ball": frozenset({"putting_green"}),
        "interference": frozenset({"ball_above_ground"}),
    },
    "ground_beside_obstruction": {"interference": frozenset({"ball_above_ground", "out_of_bounds_only"})},
    "turf_seam": {"area_of_ball": frozenset({"bunker"})},
    "marker_changed_or_missing": {"who_kept_score": frozenset({"partner"})},
    "mobility_device": {
        "handling_allowed": frozenset({"yes"}),
        "moved_while": frozenset({"moving_away_from_ball"}),
    },
    "intellectual_disability": {"what_was_set_down": frozenset({"ball_marker", "clubhead_still_held"})},
    "original_found_after_substitution": {"exchange_of_balls": _EXCHANGED},
    "obstruction_near_green": {"area_of_ball": frozenset({"teeing_area"})},
    "other_person_acted": {
        "area_of_ball": frozenset({"teeing_area"}),
        "handling_allowed": frozenset({"yes"}),
        "movement_accidental": frozenset({"yes"}),
    },
    "ball_placed_after_two_drops": {"area_of_placing_spot": frozenset({"teeing_area", "putting_green"})},
    "moved_ball_not_replaced": {"new_place": frozenset({"in_the_hole", "out_of_bounds"})},
    "provisional_for_penalty_area": {"second_ball_reason": frozenset({"no_doubt"})},
    "stake_in_the_way": {
        "area_of_ball": frozenset({"putting_green"}),
        "interference": frozenset({"ball_above_ground", "out_of_bounds_only"}),
    },
    "three_ball_moved_by_opponent": {"area_of_ball": frozenset({"teeing_area"})},
    "played_from_penalty_area": {"area_of_ball": frozenset({"penalty_area", "teeing_area"})},
    "provisional_ball_holed": {"area_of_ball": frozenset({"putting_green", "teeing_area"})},
    "something_in_the_way": {
        "in_the_way": frozenset({"boundary_or_integral_object", "movable_obstruction", "natural_object"})
    },
    "temporary_line_in_the_way": {
        "area_of_ball": frozenset({"putting_green"}),
        "interference": frozenset({"ball_above_ground"}),
    },
    "temporary_immovable_obstruction": {"area_of_ball": frozenset({"putting_green"})},
    "three_ball_marker_moved": {
        "area_of_ball": frozenset({"teeing_area"}),
        "moved_while": frozenset({"moving_away_from_ball", "searching"}),
    },
    "unusual_damage": {
        "area_of_ball": frozenset({"putting_green"}),
        "interference": frozenset({"ball_above_ground", "out_of_bounds_only"}),
    },
    "young_tree": {"area_of_ball": frozenset({"putting_green"})},
    "partner_stood_behind": {"sides": frozenset({"individual"})},
    "tree_root": {"area_of_ball": frozenset({"putting_green"})},
}
"""By incident and fact: answers against what is told of the incident first, or of ground that is never like that.

Nobody plays a ball from the bottom of the hole or out of bounds as one that had moved. Of an act that the player may not do, and knew to be a breach, it is not told that a Rule allowed it or that it was an accident.

A stroke between two holes counts for none of them. Nobody aerates a bunker. Where one Local Rule says that the stance counts, no other one
is told of that denies it.

Damage by animals on the putting green is repaired (Rule 13.1c(2)), and no ball is moved for it."""


_LOCAL_RULES_APART: Mapping[str, frozenset[str]] = {
    fact.name: frozenset(LOCAL_RULES[other].name for other in REGISTER[code].not_with if other in LOCAL_RULES)
    for code, fact in LOCAL_RULES.items()
    if edition_of(TODAY).year in REGISTER[code].not_with_in
}
"""Local Rules, by the names of the facts that they are in force, with those that cannot be adopted beside each."""


def fit_together(incident: str, facts: Mapping[str, Any], form: FormOfPlay) -> bool:
    """Return whether nothing told speaks against the rest, nor against the form of play.

    Args:
        incident: the name of the incident.
        facts: the facts, answers as tokens.
        form: the form of play.
    """
    if form is FormOfPlay.MATCH_PLAY and incident in NOT_IN_MATCHES:
        return False
    if form in NOT_IN.get(incident, ()):
        return False
    if contradict(facts):
        return False
    barred = [NOT_OF_INCIDENT.get(incident, {})]
    barred.append(NOT_IN_MATCH if form is FormOfPlay.MATCH_PLAY else OF_MATCH_PLAY)
    return not any(facts.get(name) in tokens for one in barred for name, tokens in one.items())


def contradict(facts: Mapping[str, Any]) -> bool:
    """Return whether two of the answers cannot both be true, in any incident and form of play.

    Args:
        facts: the facts, answers as tokens.
    """
    if any(all(facts.get(name) in tokens for name, tokens in one.items()) for one in NEVER_TOGETHER):
        return True
    in_force = {name for name in _LOCAL_RULES_APART if facts.get(name) == "yes"}
    return any(not _LOCAL_RULES_APART[name].isdisjoint(in_force) for name in in_force)
