"""What players commonly believe and why it is wrong, tied to the facts of a ruling.

Each belief is an outcome that the engine gives: with one fact of the situation otherwise, or by the Rules until 2018 (the
incidents of teaching). It is told of a ruling only where that outcome is computed and is not the ruling; nothing is made up
for others. That players believe it is common practice: our own list.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from marram.rules.editions import FORMER_RULES
from marram.rules.engine.conditions import conditions_of
from marram.rules.engine.request import book, fact_named, read_facts
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.nearby import ends_left
from marram.rules.ruling import Ruling
from marram.words.changes import fact_words
from marram.words.headline import headline
from marram.words.texts import text

MOST_ENDS = 1
"""Of how many possible outcomes a belief is still told (own choice: of more than one it would not be told which)."""


@dataclass(frozen=True, slots=True)
class Belief:
    """Something players believe.

    Attributes:
        key: its name in the catalogue.
        rule: the provision it is about.
        about: the incidents whose rulings it belongs to.
        when: facts, as tokens, that the situation must have.
        otherwise: the answer with which it would be right, first, and what else is then so, for example; empty where it
            was right until 2018.
        former: the incident of teaching and its facts by which it was right until 2018.
    """

    key: str
    rule: str
    about: tuple[str, ...]
    when: Mapping[str, Any]
    otherwise: Mapping[str, Any]
    former: tuple[str, Mapping[str, Any]] | None = None


@dataclass(frozen=True, slots=True)
class Believed:
    """A belief told of a ruling.

    Attributes:
        key: the belief.
        said: what is believed.
        why: why it is wrong, in our own words.
        rule: the provision.
        computed: what the ruling would be or was, as computed.
    """

    key: str
    said: str
    why: str
    rule: str
    computed: tuple[str, ...]


BELIEFS: tuple[Belief, ...] = (
    Belief(
        "edge_of_bounds",
        "18.2a(2)",
        ("ball_near_boundary",),
        {"all_of_ball_out_of_bounds": "no"},
        {
            "all_of_ball_out_of_bounds": "yes",
            "provisional_state": "not_played",
            "local_rule_e_5": "no",
            "last_stroke_from_penalty_area": "no",
        },
    ),
    Belief(
        "search_five",
        "18.2a(1)",
        ("ball_found_in_time", "teaching_search_time"),
        {"late_ball_played": "no"},
        {"search_minutes": 3, "identified_in_reasonable_time": "yes"},
    ),
    Belief(
        "must_be_in_water",
        "17.1c",
        ("ball_in_penalty_area",),
        {"certain_in_penalty_area": "no"},
        {
            "certain_in_penalty_area": "yes",
            "last_stroke_from_penalty_area": "no",
            "local_rule_e_1": "no",
            "local_rule_e_1_3": "no",
            "local_rule_b_2": "no",
            "penalty_area_colour": "red",
        },
    ),
    Belief(
        "green_touch",
        "13.1d(1)",
        ("ball_moved_by_player",),
        {"area_of_ball": "putting_green", "movement_accidental": "yes"},
        {"area_of_ball": "general_area", "cause_known": "yes", "moved_while": "something_else"},
    ),
    Belief(
        "green_touch_former",
        "13.1d(1)",
        ("teaching_ball_moved_on_green",),
        {},
        {},
        ("teaching_ball_moved_on_green", {"moved_in_allowed_act": "no"}),
    ),
    Belief("double_hit", "10.1a", ("teaching_double_hit",), {}, {}, ("teaching_double_hit", {})),
    Belief(
        "hit_myself",
        "11.1a",
        ("deflected_off_green", "teaching_ball_hit_own_side"),
        {"rests_on": "on_course"},
        {},
        ("teaching_ball_hit_own_side", {"rests_on": "on_course"}),
    ),
    Belief(
        "putt_at_flagstick",
        "13.2a(2)",
        ("ball_hit_flagstick", "teaching_flagstick"),
        {"flagstick_state": "left_in_hole", "flagstick_leant_on_purpose": "no"},
        {},
        (
            "teaching_flagstick",
            {
                "flagstick_state": "left_in_hole",
                "flagstick_leant_on_purpose": "no",
                "played_from_green": "yes",
            },
        ),
    ),
    Belief(
        "leaves_in_bunker",
        "12.2a",
        ("thing_removed_from_bunker", "teaching_thing_removed_from_bunker"),
        {"removal_moved_ball": "no", "removed_reasonably": "yes"},
        {},
        (
            "teaching_thing_removed_from_bunker",
            {
                "removal_moved_ball": "no",
                "removed_reasonably": "yes",
                "thing_removed_in_bunker": "loose_impediment",
            },
        ),
    ),
    Belief(
        "ground_club_in_water",
        "17.1b",
        ("done_in_penalty_area", "teaching_penalty_area_touched"),
        {"penalty_area_action": "touched_ground_or_water", "improved_in_penalty_area": "no"},
        {},
        (
            "teaching_penalty_area_touched",
            {"penalty_area_action": "touched_ground_or_water", "touch_allowed_before_2019": "no"},
        ),
    ),
    Belief(
        "leaves_in_water",
        "17.1b",
        ("done_in_penalty_area", "teaching_penalty_area_touched"),
        {"penalty_area_action": "removed_loose_impediment", "removal_moved_ball": "no"},
        {},
        (
            "teaching_penalty_area_touched",
            {"penalty_area_action": "removed_loose_impediment", "removal_moved_ball": "no"},
        ),
    ),
    Belief(
        "spike_marks",
        "13.1c(2)",
        ("green_repaired", "teaching_green_repaired"),
        {"repair_within_limits": "yes", "repair_delayed_play": "no"},
        {},
        (
            "teaching_green_repaired",
            {"repaired_mark": "shoe_damage", "repair_within_limits": "yes", "repair_might_help": "yes"},
        ),
    ),
    Belief(
        "tee_ball_falls", "6.2b(5)", ("fell_off_tee",), {"tee_ball_struck": "no"}, {"tee_ball_struck": "yes"}
    ),
    Belief(
        "swing_begun",
        "Definitions: stroke",
        ("swing_in_doubt",),
        {"what_swing": "stopped_or_steered_clear"},
        {"what_swing": "struck_at"},
    ),
    Belief(
        "blown_after_replacing",
        "9.3 Exception 1",
        ("ball_moved_by_natural_forces",),
        {"area_of_ball": "putting_green", "lifted_and_replaced_on_green": "yes"},
        {"lifted_and_replaced_on_green": "no", "new_place": "same_area"},
    ),
    Belief(
        "embedded_everywhere",
        "16.3a(1)",
        ("embedded_ball", "teaching_embedded"),
        {"area_of_ball": "bunker"},
        {
            "area_of_ball": "general_area",
            "in_own_pitch_mark": "yes",
            "below_ground_level": "yes",
            "in_sand_not_fairway": "no",
            "stroke_unreasonable_anyway": "no",
            "local_rule_f_2_1": "no",
            "local_rule_f_2_2": "no",
            "spot_behind_in_general_area": "yes",
        },
    ),
    Belief(
        "path_in_penalty_area",
        "16.1a(2)",
        ("abnormal_course_condition",),
        {"area_of_ball": "penalty_area"},
        {
            "area_of_ball": "general_area",
            "in_the_way": "immovable_obstruction",
            "interference": "stance_or_swing",
            "local_rule_f_6": "no",
            "stroke_unreasonable_anyway": "no",
            "only_by_unreasonable_choice": "no",
            "local_rule_e_1_3": "no",
            "local_rule_e_1": "no",
        },
    ),
    Belief(
        "boundary_stake",
        "Definitions: boundary object",
        ("stake_in_the_way",),
        {"course_stake": "shows_line_or_fence", "local_rule_a_5": "no"},
        {
            "local_rule_a_5": "yes",
            "area_of_ball": "general_area",
            "interference": "stance_or_swing",
            "local_rule_f_6": "no",
            "stroke_unreasonable_anyway": "no",
            "only_by_unreasonable_choice": "no",
            "local_rule_e_1_3": "no",
            "local_rule_e_1": "no",
        },
    ),
    Belief(
        "out_of_turn",
        "6.4b",
        ("played_out_of_turn", "teaching_out_of_turn"),
        {"agreed_for_advantage": "no"},
        {"agreed_for_advantage": "yes"},
    ),
    Belief(
        "wait_at_the_hole", "13.3a", ("ball_overhung_hole",), {"overhang": "fell_in"}, {"seconds_at_hole": 10}
    ),
    Belief(
        "leaning_ball",
        "13.2c",
        ("ball_against_flagstick", "teaching_against_flagstick"),
        {"part_in_hole": "yes"},
        {"part_in_hole": "no", "moved_with_flagstick": "no"},
    ),
    Belief(
        "distance_is_advice",
        "Definitions: advice",
        ("advice_exchanged",),
        {"was_advice": "no"},
        {
            "was_advice": "yes",
            "advice_deed": "asked",
            "during_round": "yes",
            "advice_to_or_from": "player_on_course",
        },
    ),
    Belief(
        "clean_what_is_lifted",
        "16.4",
        ("lifted_to_see",),
        {"marked_and_not_cleaned": "no"},
        {"marked_and_not_cleaned": "yes"},
    ),
    Belief(
        "choose_provisional",
        "18.3c(3)",
        ("provisional_ball",),
        {"original_ball": "found_on_course"},
        {"original_ball": "lost"},
    ),
    Belief(
        "another_is_provisional",
        "18.3b",
        ("another_ball_played",),
        {"second_ball_reason": "might_be_lost_or_out", "announced": "not_clearly"},
        {"announced": "before"},
    ),
    Belief(
        "sand_everywhere",
        "12.2b(3)",
        ("sand_touched",),
        {"ball_and_bunker": "lies_elsewhere", "sand_improved": "no", "sand_touch": "practice_swing"},
        {"ball_and_bunker": "lies_in_it"},
    ),
)
"""Our own list (common practice)."""


def believed_of(
    incident: str, facts: Mapping[str, Any], line: str, *, form: FormOfPlay, played_on: date
) -> tuple[Believed, ...]:
    """Return what players believe of a situation and why it is wrong; empty where nothing of the list holds.

    Args:
        incident: the name of the incident.
        facts: what decides, as tokens.
        line: the ruling in one line.
        form: the form of play.
        played_on: the day of the round.
    """
    told = []
    for one in BELIEFS:
        if incident not in one.about or any(str(facts.get(name)) != str(to) for name, to in one.when.items()):
            continue
        first = next(iter(one.otherwise), None)
        if first is not None and (first not in facts or str(facts[first]) == str(one.otherwise[first])):
            continue
        lines = _lines(one, incident, facts, form, played_on)
        if not lines or line in lines:
            continue
        if one.former:
            computed = [text("beliefs.until", headline=line) for line in lines]
        else:
            changed = fact_words(first, one.otherwise[first]) if first else ""
            computed = [
                text("beliefs.if", facts=changed),
                *(text("beliefs.then", headline=line) for line in lines),
            ]
        said, why = text(f"beliefs.{one.key}.said"), text(f"beliefs.{one.key}.why")
        told.append(Believed(one.key, said, why, one.rule, tuple(computed)))
    return tuple(told)


def _lines(one: Belief, incident: str, facts: Mapping[str, Any], form: FormOfPlay, day: date) -> list[str]:
    """Return the rulings by which the belief would be right, in one line each; none where there are too many, or no ruling."""
    name, given, on = (
        (*one.former, FORMER_RULES) if one.former else (incident, {**facts, **one.otherwise}, day)
    )
    known = {**conditions_of(name, on, form, None), **_read(given)}
    ends = list(ends_left(book(name), known))
    lines = list(dict.fromkeys(headline(end, form) for end in ends if isinstance(end, Ruling)))
    rulings_only = all(isinstance(end, Ruling) for end in ends)
    return lines if rulings_only and len(lines) <= MOST_ENDS else []


def _read(facts: Mapping[str, Any]) -> Mapping[Any, Any]:
    """Return facts as values; local rules told as facts too."""
    return read_facts({name: to for name, to in facts.items() if fact_named(name)})
