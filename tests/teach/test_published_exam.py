"""Questions of the governing body's examination for players, and of other published quizzes: decided rightly in both editions.

Told in our own words. "Academy" is the final examination of The R&A's Rules Academy, of which each address asks another part
(randa.org/sk-SK/rules-academy/final-exam and likewise tr-TR, sv-SE, zh-TW, da-DK, read in 2026). It prints questions and answers
to choose from but no key: what is right is read from the Rule beside each, in the text of both editions (from memory). Other
sources print their answer: golftimemag.com/rules/how-well-do-you-know-the-2019-rules-of-golf; jeopardylabs.com/print/2025-07-03-473;
parkstoneproshop.com/parkstone-pro-shop-rules-quiz-answers. Without a key too: remueragolfclub.com, article 20760;
golfmonthly.com/features/golf-rules/rules-of-golf-knowledge-239162.
"""

from datetime import date
from typing import NamedTuple

import pytest

from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Action, Ruling
from marram.words.headline import total_words

DAYS = {"2019": date(2022, 5, 1), "2023": date(2024, 5, 1)}


class Asked(NamedTuple):
    """A question: what happened, and what a right answer says. A price of one edition alone stands beside its year."""

    told: str
    incident: str
    facts: dict[str, str]
    total: str | dict[str, str]
    rule: str
    action: Action | None = None
    form: str = "stroke_play"


FREE, ONE, TWO = "no penalty", "one penalty stroke", "two penalty strokes"
ASKED = [
    Asked("dropped from the shoulder, noticed before it was played (Academy)", "ball_dropped",
          {"way_of_dropping": "not_knee_height"}, FREE, "14.3b", Action.DROP_AGAIN),
    Asked("dropped rightly, rolled out of the relief area the first time (Academy)", "ball_dropped",
          {"way_of_dropping": "right", "deflection_of_drop": "nothing", "ball_in_relief_area": "no", "drop_number": "first"}, FREE, "14.3c", Action.DROP_AGAIN),
    Asked("dropped rightly, against the own foot, still in the relief area (Academy)", "ball_dropped",
          {"way_of_dropping": "right", "deflection_of_drop": "by_accident", "ball_in_relief_area": "yes"}, FREE, "14.3c", Action.PLAY_AS_IT_LIES),
    Asked("against the knee before the ground, played from the relief area (Parkstone)", "dropped_ball_played",
          {"way_of_dropping": "touched_before_ground", "ball_in_relief_area": "yes"}, ONE, "14.3b"),
    Asked("sand touched in the backswing (Academy)", "sand_touched",
          {"ball_and_bunker": "lies_in_it", "sand_touch": "backswing"}, TWO, "12.2b(1)"),
    Asked("a stone embedded in the green taken out, a spike mark pressed down (Academy)", "green_repaired",
          {"mark_on_green": "person_or_outside_influence", "repair_within_limits": "yes", "repair_delayed_play": "no"}, FREE, "13.1c(2)"),
    Asked("moved by practice swings in the rough, put back (Academy)", "ball_moved_by_player",
          {"movement_certain": "yes", "cause_known": "yes", "area_of_ball": "general_area", "movement_accidental": "yes", "moved_while": "something_else"},
          ONE, "9.4b", Action.REPLACE),
    Asked("a putter dropped on the ball on the green (Academy)", "ball_moved_by_player",
          {"movement_certain": "yes", "cause_known": "yes", "area_of_ball": "putting_green", "movement_accidental": "yes"}, FREE, "13.1d(1)", Action.REPLACE),
    Asked("moved with a club while it was searched for (Academy)", "ball_moved_in_search",
          {"while_searching": "yes", "movement_accidental": "yes", "lie_before_moving": "open"}, FREE, "7.4", Action.REPLACE),
    Asked("played from outside the teeing area, put right (Academy)", "began_outside_teeing_area", {"next_hole_started": "no"}, TWO, "6.1b(2)"),
    Asked("from the wrong tee-markers in a match, and cancelled (Academy)", "began_outside_teeing_area",
          {"tee_stroke_cancelled": "yes"}, FREE, "6.1b(1)", form="match_play"),
    Asked("from the wrong tee-markers in a match, and let stand (Academy)", "began_outside_teeing_area",
          {"tee_stroke_cancelled": "no"}, FREE, "6.1b(1)", Action.PLAY_AS_IT_LIES, form="match_play"),
    Asked("the club of a tee shot named to who plays next (Academy)", "advice_exchanged",
          {"advice_deed": "gave", "was_advice": "yes", "during_round": "yes", "advice_to_or_from": "player_on_course"}, TWO, "10.2a"),
    Asked("lifted to identify it, the spot not marked (Academy)", "ball_lifted_to_identify",
          {"whose_ball_lifted": "players", "area_of_ball": "general_area", "lifting_needed_to_identify": "yes", "spot_marking": "not_marked"},
          ONE, "7.3", Action.REPLACE),
    Asked("another ball dropped in taking relief (Academy)", "another_ball_put_in_play", {"why_substituted": "taking_relief"}, FREE, "6.3b(1)"),
    Asked("the flagstick left in the hole hit (Academy)", "ball_hit_flagstick",
          {"flagstick_state": "left_in_hole", "flagstick_leant_on_purpose": "no"}, FREE, "13.2a(2)", Action.PLAY_AS_IT_LIES),
    Asked("lifted and replaced on the green, then blown away (Academy)", "ball_moved_by_natural_forces",
          {"area_of_ball": "putting_green", "lifted_and_replaced_on_green": "yes"}, FREE, "13.1d(2)", Action.REPLACE),
    Asked("the original found on the course in three minutes (Academy)", "provisional_ball",
          {"original_ball": "found_on_course", "stroke_at_provisional": "none"}, FREE, "18.3c(3)", Action.PLAY_AS_IT_LIES),
    Asked("the provisional ball played from nearer the hole (Academy)", "provisional_ball",
          {"original_ball": "not_found_yet", "nearer_stroke_at_provisional": "yes"}, ONE, "18.3c(2)"),
    Asked("water touched in the backswing in a penalty area (Academy)", "done_in_penalty_area",
          {"penalty_area_action": "touched_ground_or_water", "improved_in_penalty_area": "no"}, FREE, "17.1b"),
    Asked("a loose impediment taken out of the bunker (Academy; Remuera: an apple)", "thing_removed_from_bunker",
          {"removed_reasonably": "yes", "removal_moved_ball": "no"}, FREE, "12.2a"),
    Asked("hit twice by accident (Remuera)", "ball_struck_unfairly", {"contact": "hit_again_by_accident"}, FREE, "10.1a"),
    Asked("off the bunker's face, or a tree, against the player (Remuera; Golftime)", "deflected_off_green",
          {"rests_on": "on_course"}, FREE, "11.1a", Action.PLAY_AS_IT_LIES),
    Asked("on the course beyond a road that is out of bounds, no Local Rule in force (Jeopardy)", "beyond_public_road", {}, FREE, "18.2a(2)"),
    Asked("a favourite ball put down for putting (Jeopardy)", "another_ball_put_in_play",
          {"why_substituted": "no_procedure", "played_since_put_down": "yes", "substituted_in_wrong_place": "no"},
          {"2019": TWO, "2023": ONE}, "6.3b"),
    Asked("knocked off the tee by a practice swing (Golf Monthly)", "fell_off_tee", {"tee_ball_struck": "no"}, FREE, "6.2b"),
]  # fmt: skip


@pytest.mark.parametrize("edition", DAYS)
@pytest.mark.parametrize("asked", ASKED, ids=[one.told for one in ASKED])
def test_a_published_question_is_decided_rightly(asked: Asked, edition: str) -> None:
    """The price, the Rule, and where it is asked what to do next, that too."""
    form = FormOfPlay(asked.form)
    found = rule(asked.incident, asked.facts, played_on=DAYS[edition], form_of_play=form, local_rules=[])
    assert isinstance(found, Ruling), found
    wanted = asked.total if isinstance(asked.total, str) else asked.total[edition]
    assert wanted in total_words(found, form).lower()
    assert any(one.startswith(asked.rule) for one in found.citations), found.citations
    assert asked.action in {None, found.action}


@pytest.mark.parametrize("edition", DAYS)
def test_back_on_the_line_outside_the_bunker_costs_two(edition: str) -> None:
    """An unplayable ball in a bunker, played back on the line outside it (Academy; Golftime): two strokes (Rule 19.3b)."""
    facts = {"area_of_ball": "bunker", "spot_of_ball_known": "yes", "last_stroke_from_penalty_area": "no"}
    found = rule(
        "unplayable_ball",
        facts,
        played_on=DAYS[edition],
        form_of_play=FormOfPlay.STROKE_PLAY,
        local_rules=[],
    )
    assert isinstance(found, Ruling), found
    assert [one.penalty for one in found.relief if one.citation == "19.3b"] == [2]
