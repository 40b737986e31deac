"""What was unclear or contradicted itself when rulings of every incident were read through, and is said rightly since.

Sources: Rules of Golf 2019 and 2023 as named at each test. The situations are our own.
"""

from datetime import date
from typing import Any

import pytest

from marram.rules.engine.request import rule
from marram.rules.nearby import missing_relief
from marram.rules.ruling import HandOver, Judgement, Ruling
from marram.words.messages import listed
from marram.words.sheet import Sheet, sheet
from marram.words.telling import told

DAY = date(2026, 6, 1)
STROKE, MATCH = "stroke_play", "match_play"


def ruled(incident: str, form: str, *local_rules: str, **facts: Any) -> Any:
    return rule(incident, facts, played_on=DAY, form_of_play=form, local_rules=list(local_rules))


def said(incident: str, form: str, *local_rules: str, **facts: Any) -> Sheet:
    found = ruled(incident, form, *local_rules, **facts)
    assert isinstance(found, Ruling), found
    return sheet(found, form_of_play=form, given=facts)


def test_nobody_plays_on_once_the_card_is_in() -> None:
    """Model Local Rule L-1: the strokes go on the last hole of a round that is over."""
    words = said("scorecard_fault", STROKE, "L-1", card_fault="marker_did_not_certify", marker_at_fault="no")
    assert words.headline == "Two penalty strokes (the general penalty)."
    assert words.tell == "You get two penalty strokes (the general penalty)."


@pytest.mark.parametrize("among", [{}, {"sides": "four_ball", "whom_else": "neither"}])
def test_who_must_put_the_opponents_ball_back_is_its_player(among: dict[str, str]) -> None:
    """Rules 7.3, 9.5b and 14.7a: the opponent's ball is played by the opponent, not by whoever lifted it."""
    words = said(
        "ball_lifted_to_identify", MATCH, whose_ball_lifted="opponents", lifting_needed_to_identify="no", **among
    )  # fmt: skip
    assert words.if_wrong[0].endswith("loss of hole (the general penalty) for the opponent (14.7a).")


def test_a_ball_that_must_go_to_its_new_spot_is_not_sent_to_its_old_one() -> None:
    """Rules 9.3 and 9.4b: the spot is where natural forces had taken it."""
    words = said(
        "ball_put_back_when_not_allowed", STROKE, area_of_ball="general_area", played_since_put_down="no"
    )
    assert "original spot" not in words.if_wrong[0]
    assert "where it had come to rest" in words.if_wrong[0]


def test_sand_moved_in_a_search_is_put_back_first() -> None:
    """Rule 7.1b: the lie is made again before the ball is played."""
    words = said(
        "sand_moved_in_search", STROKE, sand_changed_lie="yes", played_after_search="no", was_covered_by_sand="no"
    )  # fmt: skip
    assert words.headline.endswith("once the lie in the sand has been made again.")


def test_a_hole_conceded_while_the_ball_was_stopped_is_over_whoever_stopped_it() -> None:
    """Rules 3.2b and 11.2a Exception: no relief is left to take."""
    words = said(
        "deliberately_deflected", MATCH, deflector="outsider", could_be_holed="no", why_stopped="hole_or_match_conceded"
    )  # fmt: skip
    assert words.headline.endswith("the hole is over.")
    assert not words.options


def test_a_hole_lost_leaves_no_step_with_the_ball() -> None:
    """Rules 6.5 and 11.2b in a match: the ball that was stopped is placed nowhere, and no stroke is made again."""
    stopped = {"deflector": "own_side", "could_be_holed": "yes"}
    placed = said(
        "deliberately_deflected", MATCH, **stopped, played_from_green="no", would_have_stopped="putting_green"
    )
    assert [step for step in placed.steps if "spot" in step] == []
    again = said("deliberately_deflected", MATCH, **stopped, played_from_green="yes", sides="foursomes")
    assert [step for step in again.steps if "makes it again" in step] == []


def test_two_who_are_penalised_are_told_apart() -> None:
    """Rule 8.3b and Clarification 8.3/1: the one who is told is "you", and nobody else is."""
    words = said(
        "anothers_conditions_altered", STROKE, deliberate_act="altered_ground_sand_or_water", purpose_of_act="affect_play",
        other_player_let_it_happen="yes",
    )  # fmt: skip
    assert words.tell.startswith(
        "You get two penalty strokes (the general penalty), with two penalty strokes"
    )
    assert "for the player" not in words.tell
    match = said(
        "anothers_conditions_altered", MATCH, deliberate_act="altered_ground_sand_or_water", purpose_of_act="affect_play",
        other_player_let_it_happen="yes",
    )  # fmt: skip
    assert match.tell == "Each of you loses the hole (the general penalty)."
    stopped = said(
        "deliberately_deflected", STROKE, deflector="other_player", played_from_green="no", would_have_stopped="out_of_bounds"
    )  # fmt: skip
    assert stopped.tell.startswith("You get one penalty stroke, with two penalty strokes")


def test_one_partners_strokes_are_one_number_with_the_relief_that_must_be_taken() -> None:
    """Rules 9.4b, 18.1 and 23.9a(1): lifted, and then played again from before, costs that partner two."""
    words = said("lifted_then_played_again", STROKE, lifted_to_play_again="no", sides="four_ball")
    assert words.headline.startswith("Two penalty strokes for this partner alone: ")


def test_an_exchange_of_balls_in_a_match_is_lost_by_one() -> None:
    """Rule 6.3c(1): whoever played the other's ball first loses the hole; nothing holds for both."""
    words = said(
        "balls_found_exchanged", MATCH, exchanged_during_hole="yes", exchange_of_balls="opponent_first"
    )
    assert "each of the two players" not in " ".join(words.steps)


def test_a_fixed_object_that_was_removed_is_handed_over() -> None:
    """Rules 8.1a and 15.2a: what is no movable obstruction is a matter of improving the conditions."""
    found = ruled("artificial_thing_removed", STROKE, artificial_thing="no_movable_obstruction")
    assert isinstance(found, HandOver)
    assert found.incident == "fixed_object_moved"
    assert isinstance(rule("fixed_object_moved", found.carry({"conditions_improved": "no", "meant_for_later_play": "no"}),
                           played_on=DAY, form_of_play=STROKE), Ruling)  # fmt: skip


def test_a_partner_out_by_a_rule_on_no_list_has_no_score_for_the_hole() -> None:
    """Rule 23.9b(3): the Committee's choice is between the side and that partner's hole, never "no penalty"."""
    found = ruled("four_ball_disqualified", STROKE, out_for="another_rule")
    assert isinstance(found, Judgement)
    assert [sheet(one, form_of_play=STROKE).headline.split(":")[0] for one in found.outcomes] == [
        "Disqualification for the side.",
        "Disqualification for the hole for this partner alone",
    ]


def test_a_side_is_named_where_the_wrong_ball_would_cost_it() -> None:
    """Rules 6.3c(1) and 22.2: in Foursomes it is the side's penalty, also where only relief has cost anything yet."""
    words = said(
        "beyond_internal_boundary", STROKE, "A-4", boundary_for_this_hole="yes", all_of_ball_out_of_bounds="yes",
        provisional_state="found", sides="foursomes",
    )  # fmt: skip
    assert words.if_wrong[0].endswith("for the side (6.3c(1)).")


def test_who_plays_next_in_foursomes_is_no_finding() -> None:
    """Rules 18.1 and 22.3: with one way on, the headline says what was found of the ball, and a step who plays."""
    words = said("lifted_then_played_again", STROKE, lifted_to_play_again="no", sides="foursomes")
    assert words.headline.startswith("Two penalty strokes for the side: ")
    assert "The partner who did not make the last stroke plays next." in words.further


def test_a_title_that_asks_is_handed_over_in_one_sentence() -> None:
    """The title of the other incident keeps no question mark before the full stop."""
    found = ruled("helped_ball_in_motion", STROKE, meant_to_affect_ball="yes", moved_in_path="ball_on_green")
    assert sheet(found).headline == "This is rather: A ball was lifted: who, why, marked, cleaned."


def test_a_dropping_zone_is_no_stroke_and_distance() -> None:
    """Model Local Rules E-1.3 and E-5: with a dropping zone to choose, the player is not sent back."""
    words = said(
        "ball_near_boundary", STROKE, "E-1", "E-1.3", "E-5", all_of_ball_out_of_bounds="yes", provisional_state="not_played",
        dropping_zone_provided="yes", dropping_zone_is_only_option="yes", last_stroke_from_penalty_area="no",
    )  # fmt: skip
    assert {option.kind for option in words.options} == {"stroke_and_distance", "dropping_zone"}
    assert words.headline == "Out of bounds: one or two penalty strokes; take penalty relief."


def test_who_is_disqualified_misses_no_relief() -> None:
    """Rule 14.7b: after a disqualification nobody is told which relief there might have been."""
    facts = {
        "wrong_point_known": "before_but_played",
        "serious_breach": "yes",
        "balls_after_wrong_place": "not_corrected",
        "next_hole_started": "yes",
    }
    found = ruled("crossing_point_was_wrong", STROKE, **facts)
    assert isinstance(found, Ruling), found
    assert missing_relief("crossing_point_was_wrong", facts, found, played_on=DAY, form_of_play=STROKE) == ()


def test_answers_with_commas_stay_apart_in_a_list() -> None:
    """A list of answers that hold commas themselves is read with semicolons."""
    assert listed(("a", "b", "c")) == "a, b or c"
    assert listed(("a: it touches, or lies in, b", "c", "d")) == "a: it touches, or lies in, b; c; or d"


def test_help_for_choosing_an_answer_is_no_part_of_what_happened() -> None:
    """A telling holds what happened, and nothing that only helps to choose an answer."""
    assert "answer" not in told("mark_on_green", "wear_of_hole", "Ivo")


def test_a_provisional_ball_beside_a_ball_that_was_stopped_is_not_passed_over() -> None:
    """Rules 11.2c(1) and 18.3c: that it counts is not said there, so the player is told to ask."""
    facts = {
        "whereabouts": "deliberately_stopped",
        "nearer_stroke_at_provisional": "no",
        "would_have_stopped": "out_of_bounds",
        "last_stroke_from_penalty_area": "no",
    }
    beside = said("ball_not_found", STROKE, **facts, provisional_state="found")
    alone = said("ball_not_found", STROKE, **facts, provisional_state="not_played")
    assert [step for step in beside.further if step not in alone.further] == [
        "That the provisional ball counts instead is not said in Rule 18.3c: ask the Committee before it is played on."
    ]


def test_a_ball_embedded_on_the_green_need_not_be_lifted() -> None:
    """Rules 13.1b and 13.1c(2): the player may lift it and repair the damage; nothing is out of its place yet."""
    words = said("embedded_ball", STROKE, area_of_ball="putting_green")
    assert (
        words.headline == "No penalty: mark, lift and clean it if wished, repair the damage, and replace it."
    )
