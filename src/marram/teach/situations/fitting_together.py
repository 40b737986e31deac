"""Which facts can be told together: an opponent is in a match, and what is said to have moved was not only touched."""

from collections.abc import Mapping
from typing import Any

from marram.rules.facts.conditions import FormOfPlay

OF_MATCH_PLAY: Mapping[str, frozenset[str]] = {
    "caddie_deed": frozenset({"conceded"}),
    "exchange_of_balls": frozenset({"opponent_first"}),
    "how_hole_ended": frozenset({"conceded", "result_decided"}),
    "stop_reason": frozenset({"agreed_in_match"}),
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
NOT_IN_MATCHES = frozenset(
    {
        "card_handicap_wrong",
        "four_ball_card",
        "hole_score_wrong",
        "marker_changed_or_missing",
        "scorecard_fault",
    }
)
"""Incidents of scorecards, which decide no match (Rule 3.2 and 3.3b)."""
NOT_OF_INCIDENT: Mapping[str, Mapping[str, frozenset[str]]] = {
    "animal_damage": {"area_of_ball": frozenset({"putting_green"})},
    "ball_dislodged_from_tree": {"area_of_ball": frozenset({"putting_green"})},
    "ball_moved_by_opponent": {"opponent_cause_known": frozenset({"no"})},
    "ball_moved_by_outside_influence": {"outside_cause_known": frozenset({"no"})},
    "ball_moved_by_player": {"cause_known": frozenset({"no"})},
    "ball_moved_during_swing": {"handling_allowed": frozenset({"yes"})},
    "ball_moved_in_search": {"opponent_act": frozenset({"touched_on_purpose"})},
    "hoof_damage": {
        "area_of_ball": frozenset({"putting_green"}),
        "interference": frozenset({"ball_above_ground"}),
    },
    **{
        name: {"interference": frozenset({"ball_above_ground"})}
        for name in (
            "accumulated_loose_impediments",
            "animal_dung",
            "ant_hill",
            "flooded_bunker",
            "painted_line",
            "road_or_path",
        )
    },
    "partner_stood_behind": {"sides": frozenset({"individual"})},
    "tree_root": {"area_of_ball": frozenset({"putting_green"})},
}
"""By incident and fact: answers against what is told of the incident first, or of ground that is never like that.

Damage by animals on the putting green is repaired (Rule 13.1c(2)), and no ball is moved for it."""
_NOT_GENERAL = frozenset({"bunker", "penalty_area", "putting_green", "teeing_area"})
NEVER_TOGETHER: tuple[Mapping[str, frozenset[str | int]], ...] = (
    # A reference point is on the line behind the spot it starts from: whoever is not nearer than the one is not nearer
    # than the other.
    {
        "rest_nearer_than_chosen_point": frozenset({"no"}),
        "rest_nearer_than_start_of_line": frozenset({"yes"}),
    },
    # Who stood there until the stroke was there in the stance, and kept nobody waiting for a new one.
    {"left_before_stroke": frozenset({"no"}), "in_place_at_stance": frozenset({"no"})},
    {"left_before_stroke": frozenset({"no"}), "backed_away": frozenset({"yes"})},
    # Embedded in the general area is nowhere else (Rule 16.3a).
    {"condition_found": frozenset({"embedded"}), "area_of_ball": _NOT_GENERAL},
    # A ball off the ground is in something that grows in the ground under repair, or on something built.
    {
        "interference": frozenset({"ball_above_ground"}),
        "in_the_way": frozenset(
            {
                "animal_hole",
                "animal_track",
                "movable_obstruction",
                "natural_object",
                "temporary_water",
                "unmarked_ground",
                "water_of_penalty_area",
            }
        ),
    },
    # What went on during several holes was on two of them at least.
    {"breach_when": frozenset({"several_holes"}), "holes_of_breach": frozenset({0, 1, "0", "1"})},
)
"""Answers that no course has seen together, whatever the incident: by geometry, or by the order of time."""


def fit_together(incident: str, facts: Mapping[str, Any], form: FormOfPlay) -> bool:
    """Return whether nothing told speaks against the rest, nor against the form of play.

    Args:
        incident: the name of the incident.
        facts: the facts, answers as tokens.
        form: the form of play.
    """
    if form is FormOfPlay.MATCH_PLAY and incident in NOT_IN_MATCHES:
        return False
    if contradict(facts):
        return False
    barred = [NOT_OF_INCIDENT.get(incident, {})]
    if form is not FormOfPlay.MATCH_PLAY:
        barred.append(OF_MATCH_PLAY)
    return not any(facts.get(name) in tokens for one in barred for name, tokens in one.items())


def contradict(facts: Mapping[str, Any]) -> bool:
    """Return whether two of the answers cannot both be true, in any incident and form of play.

    Args:
        facts: the facts, answers as tokens.
    """
    return any(all(facts.get(name) in tokens for name, tokens in one.items()) for one in NEVER_TOGETHER)
