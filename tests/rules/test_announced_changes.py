"""The changes that the R&A and the USGA announced are found by comparing the editions as encoded.

Sources: "Principal Changes Introduced in the 2023 Rules of Golf" (USGA and R&A) with the news of both bodies of
November 2022; "Summary of the Major Changes in the Rules of Golf for 2019" (R&A and USGA, March 2018) with the
Explanation for Each Major Change. Each row names the Rule, what the announcement says in our own words, and the
outcomes it means; nothing is taken from the code.
"""

from dataclasses import dataclass, field
from datetime import date
from typing import Any

import pytest

import marram
from marram.rules.editions import EDITION_2019, EDITION_2023, FORMER_RULES
from marram.rules.engine.changes import Change, changes
from marram.rules.engine.request import fact_named
from marram.rules.ruling import Ruling
from tests.published.cases import penalty_words


@dataclass(frozen=True)
class Announced:
    """One announced change: the facts it speaks of, and what was ruled before and since."""

    rule: str
    says: str
    incident: str
    before: dict[str, Any]
    after: dict[str, Any]
    facts: dict[str, str] = field(default_factory=dict)


NONE: dict[str, Any] = {"penalty": []}
ONE: dict[str, Any] = {"penalty": ["1"]}
GENERAL: dict[str, Any] = {"penalty": ["general"]}
OUT: dict[str, Any] = {"penalty": ["disqualification"]}

SINCE_2023 = [
    Announced("3.3b(4)", "no handicap need stand on the card", "card_handicap_wrong", OUT, NONE, {"handicap_shown": "none"}),
    Announced("4.1a(2)", "a club damaged, but not by abuse, may be replaced", "club_damaged", GENERAL, NONE, {"after_damage": "replaced"}),
    Announced("6.3b(3)", "an incorrectly substituted ball costs one stroke", "another_ball_put_in_play", GENERAL, ONE),
    Announced("9.3 Exception 2", "a ball put down that moves to another area goes back", "ball_moved_by_natural_forces", {"penalty": [], "action": "play_as_it_lies"}, {"penalty": [], "action": "replace"}, {"new_place": "another_area"}),
    Announced("9.3 Exception 2", "so does one that moves out of bounds", "ball_moved_by_natural_forces", {"penalty": [], "action": "take_relief"}, {"penalty": [], "action": "replace"}, {"new_place": "out_of_bounds"}),
    Announced("10.2b(1)", "no object set down to show the line, even if removed", "line_of_play_shown", NONE, GENERAL, {"line_shown_by": "object", "still_there_in_stroke": "no"}),
    Announced("10.2b(3)", "no object set down for the stance, even if removed", "object_set_down_for_aim", NONE, GENERAL),
    Announced("10.2b(4)", "backing away helps anywhere (since the clarifications of 2019)", "caddie_behind_ball", GENERAL, NONE, {"backed_away": "yes"}),
    Announced("11.1b(2)", "a putt that hits the player, the club or an insect is played as it lies", "putt_hit_something", {"action": "replay"}, {"action": "play_as_it_lies", "cites": "11.1b(2)"}),
    Announced("14.3b(3)", "back on the line the ball is dropped on the line: unplayable ball", "unplayable_ball", {"on_line": False}, {"on_line": True}),
    Announced("14.3b(3)", "back on the line the ball is dropped on the line: penalty area", "ball_in_penalty_area", {"on_line": False}, {"on_line": True}),
    Announced("14.3b(3)", "it may come to rest nearer the hole than where it was dropped", "back_on_the_line_drop", {"action": "drop_again"}, {"action": "play_as_it_lies"}),
    Announced("21.1c", "in Stableford clubs cost strokes on the hole, not points", "club_added", {"penalty": ["points_deducted"]}, GENERAL),
    Announced("21.1c", "in Stableford a late start costs strokes on the hole", "started_off_time", {"penalty": ["points_deducted"]}, GENERAL),
    Announced("21.1c", "in Stableford a first unreasonable delay costs one stroke on the hole", "unreasonable_delay", {"penalty": ["points_deducted"]}, ONE),
    Announced("21.3c", "the same in Par/Bogey", "started_off_time", {"penalty": ["holes_deducted"]}, GENERAL, {"form_of_play": "par_bogey"}),
    Announced("22.6", "no standing behind a partner to learn for the next stroke", "partner_stood_behind", NONE, GENERAL, {"sides": "foursomes"}),
    Announced("23.8", "the same in Four-Ball", "partner_stood_behind", NONE, {"penalty": ["general"], "cites": "23.8"}),
    Announced("25", "the modifications for players with disabilities apply in every competition", "amputee_player", {"kind": "NotCovered"}, NONE, {"modifications_adopted": "no"}),
    Announced("25.4n", "out of a bunker with a wheeled device for one stroke", "wheeled_device_relief", {"penalty": [], "costs": [2]}, {"penalty": [], "costs": [1]}, {"modifications_adopted": "no"}),
]  # fmt: skip

SINCE_2019 = [
    Announced("7.4", "moving the own ball in a search is free", "teaching_ball_moved_in_search", ONE, NONE),
    Announced("13.1d", "moving the ball on the green by accident is free", "teaching_ball_moved_on_green", ONE, NONE),
    Announced("13.1d(2)", "a ball replaced on the green goes back, even if wind moved it", "teaching_ball_blown_on_green", {"penalty": [], "action": "play_as_it_lies"}, {"penalty": [], "action": "replace"}, {"lifted_and_replaced_on_green": "yes"}),
    Announced("10.2b(3)", "no stance with a club laid down for aiming", "teaching_club_laid_down", NONE, GENERAL, {"stance_with_object": "yes", "club_lay_in_stroke": "no"}),
    Announced("9.2b", "the player is the cause only if virtually certain", "teaching_cause_of_movement", ONE, NONE, {"likelihood_player_moved_ball": "likelier"}),
    Announced("11.1", "a ball that hits its own side by accident is free", "teaching_ball_hit_own_side", ONE, NONE),
    Announced("10.1a", "an accidental double hit is free", "teaching_double_hit", ONE, NONE),
    Announced("14.3b", "drop from knee height", "teaching_dropped", {"action": "drop_again"}, {"action": "play_as_it_lies"}, {"drop_height": "knee"}),
    Announced("14.3b", "no longer from shoulder height", "teaching_dropped", {"action": "play_as_it_lies"}, {"action": "drop_again"}, {"drop_height": "shoulder"}),
    Announced("Definitions", "a club-length is that of the longest club but the putter", "teaching_club_length", {"action": "play_on"}, {"action": "correct_mistake"}, {"measured_with": "putter"}),
    Announced("18.2a", "three minutes for the search", "teaching_search_time", {"action": "play_as_it_lies"}, {"action": "take_relief"}, {"search_minutes": "5"}),
    Announced("14.3a", "another ball may always be used in taking relief", "teaching_substitution", GENERAL, NONE),
    Announced("16.3", "free relief for an embedded ball outside closely-mown ground", "teaching_embedded", {"action": "play_as_it_lies"}, {"costs": [0]}, {"closely_mown": "no"}),
    Announced("13.1c", "spike marks may be repaired", "teaching_green_repaired", GENERAL, NONE, {"repaired_mark": "shoe_damage"}),
    Announced("13.1", "touching the line is no breach in itself", "teaching_line_touched", GENERAL, NONE),
    Announced("10.2b(2)", "the green may be touched in showing the line", "teaching_line_shown", GENERAL, NONE, {"line_shown_by": "touch"}),
    Announced("13.1f", "the stance on a wrong green is interference", "teaching_wrong_green", {"action": "play_as_it_lies"}, {"action": "take_relief"}),
    Announced("13.2a", "a putt may hit the flagstick in the hole", "teaching_flagstick", GENERAL, NONE, {"flagstick_state": "left_in_hole"}),
    Announced("13.2b", "a ball may hit the attended flagstick by accident", "teaching_flagstick", GENERAL, NONE, {"flagstick_state": "attended_or_removed"}),
    Announced("13.2c", "a ball against the flagstick is holed if any part is below the lip", "teaching_against_flagstick", {"action": "place"}, {"action": "holed"}),
    Announced("17.1b", "ground and water may be touched in a penalty area", "teaching_penalty_area_touched", {"penalty": ["general"], "cites": "former 13-4"}, {"penalty": [], "cites": "17.1b"}),
    Announced("17.1b", "loose impediments may be removed in a penalty area", "teaching_penalty_area_touched", GENERAL, NONE, {"penalty_area_action": "removed_loose_impediment"}),
    Announced("17.1d", "no relief on the opposite side of a red penalty area", "teaching_penalty_area_relief", {"costs": [1, 1, 1, 1]}, {"costs": [1, 1, 1]}, {"penalty_area_colour": "red"}),
    Announced("12.2a", "loose impediments may be removed in a bunker", "teaching_thing_removed_from_bunker", GENERAL, NONE, {"thing_removed_in_bunker": "loose_impediment"}),
    Announced("12.2b", "sand may be touched in other ways", "teaching_sand_touched", GENERAL, NONE, {"sand_touch": "any_other_way"}),
    Announced("19.3b", "relief outside the bunker for two strokes", "teaching_unplayable", {"costs": [1, 1, 1]}, {"costs": [1, 1, 1, 2]}, {"area_of_ball": "bunker"}),
    Announced("E-5", "a Local Rule may offer a drop for two strokes", "teaching_lost_or_out", {"costs": [1]}, {"costs": [1, 2]}, {"provisional_state": "not_played"}),
    Announced("7.3", "lifting to identify need not be announced", "teaching_lifted_to_identify", ONE, NONE, {"announced_and_observed": "no"}),
    Announced("14.1b", "the caddie may lift on the green without authority", "teaching_caddie_lifted_on_green", ONE, NONE, {"caddie_authorised": "no"}),
    Announced("10.2b(4)", "the caddie must not stand behind once the stance is begun", "teaching_caddie_behind", NONE, GENERAL, {"left_before_stroke": "yes"}),
    Announced("6.4b", "agreeing to give an advantage costs the general penalty", "teaching_out_of_turn", OUT, GENERAL),
    Announced("21.2", "Maximum Score is a form of play", "teaching_picked_up", {"kind": "NotCovered"}, {"penalty": [], "action": "hole_over"}, {"form_of_play": "maximum_score"}),
]  # fmt: skip


def fits(outcome: Any, wanted: dict[str, Any]) -> bool:
    """Tell whether an outcome is as announced, on what the announcement says."""
    if not isinstance(outcome, Ruling):
        return wanted.get("kind") == type(outcome).__name__
    shown = {
        "kind": "Ruling",
        "penalty": penalty_words(outcome),
        "action": outcome.action.value if outcome.action else None,
        "on_line": any(option.dropped_on_line for option in outcome.relief),
        "costs": sorted(option.penalty for option in outcome.relief),
    }
    cited = wanted.get("cites", outcome.citations[0])
    return cited in outcome.citations and all(
        shown[key] == value for key, value in wanted.items() if key != "cites"
    )


def speaks_of(change: Change, facts: dict[str, str]) -> bool:
    """Tell whether a change was found under facts the announcement speaks of (one example stands for each pair)."""
    found = {name: fact_named(name).token(answer) for name, answer in change.facts}
    return all(found.get(name) == answer for name, answer in facts.items())


def found_by_itself(announced: Announced, earlier: date, later: date) -> list[Change]:
    return [
        one
        for one in changes(announced.incident, earlier, later)
        if speaks_of(one, announced.facts)
        and fits(one.before, announced.before)
        and fits(one.after, announced.after)
    ]


@pytest.mark.parametrize("announced", SINCE_2023, ids=lambda one: f"{one.rule}: {one.says}")
def test_a_change_announced_for_2023_is_found(announced: Announced) -> None:
    """Comparing 2019 and 2023 shows it, among the facts the announcement speaks of."""
    assert found_by_itself(announced, EDITION_2019, EDITION_2023)


@pytest.mark.parametrize("announced", SINCE_2019, ids=lambda one: f"{one.rule}: {one.says}")
def test_a_major_change_of_2019_is_found(announced: Announced) -> None:
    """Comparing the former Rules and 2019 shows it in the incident of teaching."""
    assert found_by_itself(announced, FORMER_RULES, EDITION_2019)


def test_the_change_of_multiple_breaches_is_found() -> None:
    """Rule 1.3c(4): unrelated acts cost two penalties in 2019, one since 2023 without an intervening event."""
    facts = {
        "whose_ball_lifted": "players",
        "area_of_ball": "general_area",
        "lifting_needed_to_identify": "no",
    }
    first, second = (
        [
            marram.rule("ball_lifted_to_identify", facts, played_on=day, form_of_play="stroke_play")
            for _ in range(2)
        ]
        for day in (EDITION_2019, EDITION_2023)
    )
    unrelated = marram.combine(first, {"acts_related_1": "no"}, played_on=EDITION_2019)
    no_event = marram.combine(second, {"intervening_event_1": "no"}, played_on=EDITION_2023)

    assert isinstance(unrelated, Ruling)
    assert isinstance(no_event, Ruling)
    assert penalty_words(unrelated) == ["1", "1"]
    assert penalty_words(no_event) == ["1"]
