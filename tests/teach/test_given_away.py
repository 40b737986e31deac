"""Nothing in a question gives its answer away: not the form of play, not a word that only the right one has, not the telling."""

from itertools import islice
from random import Random

import pytest

from marram.rules.facts.conditions import FormOfPlay
from marram.teach.quizzes.drafting import told_in
from marram.teach.quizzes.given_away import gives_itself_away, title_gives_away
from marram.teach.quizzes.quiz import numbered, question, questions
from marram.teach.quizzes.standing_out import OF_FINDINGS, Mark, marks
from marram.teach.situations.fitting_together import fit_together
from marram.teach.situations.sampling import situations

DRAWN = list(islice(questions(31), 240))
MATCH, STROKE = FormOfPlay.MATCH_PLAY, FormOfPlay.STROKE_PLAY
SCORES = {"No points for the hole", "The maximum score for the hole", "The hole is lost"}


def test_the_general_penalty_is_that_of_the_form_of_play() -> None:
    """Rule 1.3c(2): loss of hole in a match, two strokes otherwise; the other one would only stand beside a general penalty."""
    for one in DRAWN:
        words = [answer.words for answer in one.answers]
        other = (
            "Two penalty strokes (the general" if one.situation.form is MATCH else "oss of hole (the general"
        )
        assert not [each for each in words if other in each], (one.situation.incident, words)


def test_a_score_for_the_hole_is_no_answer_among_penalties() -> None:
    """Rule 21: what a hole comes to names the form of play, so that it would be right wherever it stood among penalties."""
    asked = [*DRAWN, *islice(questions(1, incidents=("began_outside_teeing_area", "wrong_ball_played")), 40)]
    for one in asked:
        words = {answer.words.rstrip(".") for answer in one.answers}
        assert not words & SCORES or one.situation.incident.endswith(("points", "hole")), words


def test_no_item_can_be_answered_by_a_mark_alone() -> None:
    """The right answer is not the only one to say what is told, not by far the longest, nor free where nothing wrong was told."""
    borne = {Mark.COSTS, Mark.ONLY_MISJUDGED, Mark.SCORE}
    for one in DRAWN:
        wrong = [(each.words, each.near) for each in one.answers if each.near]
        by_finding = one.answers[one.right].words == one.situation.headline
        alone = marks(one.situation, one.answers[one.right].words, wrong) - borne
        assert not (alone & OF_FINDINGS if by_finding else alone), (one.situation.incident, wrong)


def test_of_sixty_questions_none_tells_the_same_facts_as_another() -> None:
    """Neither in a quiz drawn at once, nor among the questions of a sitting that have an address each."""
    for drawn in (islice(questions(5), 60), (numbered(7, number, 1000) for number in range(1, 21))):
        told = [told_in(one.situation) for one in drawn]
        assert len(told) == len(set(told))


def test_playing_on_is_said_of_all_answers_or_of_none_beside_penalties_alone() -> None:
    """Where nothing else is to be done in any answer, none of them says to play on."""
    for one in DRAWN:
        words = [answer.words for answer in one.answers]
        if any("; play on" in each for each in words):
            assert any("; " in each and not each.endswith("; play on") for each in words), words


@pytest.mark.parametrize(
    ("incident", "fact", "tokens"),
    [
        ("another_ball_put_in_play", "why_substituted", {"playing_again", "taking_relief"}),
        ("hole_score_wrong", "why_too_low", {"penalty_is_disqualification"}),
        ("other_person_acted", "how_involved", {"neither"}),
        ("hole_completed", "how_hole_ended", {"holed"}),
        ("concession", "conceded", {"hole", "match"}),
        # with the club still in the bag, the next stroke would be the breach (Rule 4.1b(1))
        ("too_many_clubs", "holes_with_breach", {"0"}),
        ("club_shared", "holes_with_breach", {"0"}),
        ("unreasonable_delay", "delay_reasonable", {"yes"}),
        ("strokes_told", "strokes_right", {"yes"}),
        ("decided_among_players", "referee_assigned", {"yes"}),
        ("stroke_took_long", "policy_penalty", {"one_stroke", "general", "disqualification"}),
        ("scorecard_fault", "conduct_finding", {"disqualified", "no_disqualification"}),
        ("mistake_in_relief_noticed", "mistake_in_relief", {"drop_again", "wrong_rule"}),
        ("stopped_play", "stop_reason", {"suspended"}),
        ("ball_when_play_stopped", "ball_when_stopped", {"left_in_place"}),
        ("played_after_suspension", "playing_on_justified", {"yes"}),
        ("resumed_off_time", "ready_on_resumption", {"yes"}),
        ("tee_marker_moved", "tee_marker", {"missing"}),
        ("object_put_in_position", "meant_for_later_play", {"no"}),
        ("anothers_conditions_altered", "deliberate_act", {"none_of_these"}),
        ("identifying_ball", "how_identified", {"seen_to_come_to_rest"}),
    ],
)
def test_nothing_is_asked_where_the_answer_is_told(incident: str, fact: str, tokens: set[str]) -> None:
    """A penalty told as such, a hole that is holed out: of these no question is made."""
    drawn = [
        one for one in islice(situations(5, incidents=(incident,)), 400) if str(one.facts.get(fact)) in tokens
    ]
    assert drawn
    assert all(gives_itself_away(one) for one in drawn)
    assert not [one for one in drawn[:5] if question(one, Random(1))]


def test_nobody_has_to_hole_out_where_each_hole_is_scored_alone() -> None:
    """Rule 3.3c with Rules 21.1c, 21.2c and 21.3c: a ball given up need not be holed there; in stroke play it must."""
    given_up = [
        one
        for one in islice(situations(5, incidents=("no_play_zone",)), 1500)
        if one.facts.get("balls_after_wrong_place") == "corrected_ball_only"
        and one.facts.get("next_hole_started") == "no"
    ]
    assert {one.form is STROKE for one in given_up} == {True, False}
    assert all(gives_itself_away(one) is (one.form is not STROKE) for one in given_up)


@pytest.mark.parametrize(
    ("incident", "facts", "form"),
    [
        # a ball in the condition has interference, whatever stroke is chosen (Rule 16.1a(1))
        ("animal_dung", {"interference": "ball", "only_by_unreasonable_choice": "yes"}, STROKE),
        ("hoof_damage", {"local_interference": "ball", "only_by_unreasonable_choice": "yes"}, STROKE),
        ("ball_moved_during_swing", {"moved_while": "removing_movable_obstruction"}, STROKE),
        ("ball_moved_in_search", {"opponent_act": "conceded_stroke"}, MATCH),
        ("ground_altered", {"preparing_how": "testing_whether_loose", "alteration": "surface"}, STROKE),
        ("fixed_object_moved", {"preparing_how": "grounding_club", "fixed_object": "tee_marker"}, STROKE),
        (
            "fixed_object_moved",
            {"preparing_how": "grounding_club", "fixed_object": "immovable_or_boundary"},
            STROKE,
        ),
        ("fixed_object_moved", {"preparing_how": "taking_stance", "fixed_object": "tee_marker"}, STROKE),
        ("conditions_worsened", {"worsened_by": "natural_forces", "alteration": "surface"}, STROKE),
        ("conditions_worsened", {"worsened_by": "natural_forces", "alteration": "dew_frost_water"}, STROKE),
        (
            "ball_moved_by_natural_forces",
            {"put_in_play_by_hand": "yes", "lifted_and_replaced_on_green": "no"},
            STROKE,
        ),
        ("ball_may_have_moved", {"opponent_act": "conceded_stroke"}, MATCH),
        ("ball_moved_in_search", {"area_of_ball": "putting_green"}, MATCH),
        # "may not do", "knew it was a breach": no Rule allowed it, and it was no accident (Rule 1.3c(1))
        ("other_person_acted", {"handling_allowed": "yes"}, STROKE),
        ("other_person_acted", {"movement_accidental": "yes"}, STROKE),
        # in the teeing area anybody may lift the ball for the player (Rule 6.2b(6))
        ("other_person_acted", {"area_of_ball": "teeing_area"}, STROKE),
        # the third bad time disqualifies (Model Local Rule K-2)
        ("stroke_took_long", {"bad_time_number": "fourth_or_later", "local_rule_k_3": "no"}, STROKE),
        ("embedded_ball", {"area_of_ball": "putting_green", "stroke_unreasonable_anyway": "yes"}, STROKE),
        ("mobility_device", {"handling_allowed": "yes"}, STROKE),
        ("advice_giver_moved_ball", {"outside_cause_known": "no"}, STROKE),
        # a marker is a person of stroke play (Definitions: marker)
        ("played_after_suspension", {"played_on": "finished_without_marker"}, MATCH),
        ("stake_in_the_way", {"course_stake": "internal_boundary", "local_rule_a_4": "no"}, STROKE),
        ("unplayable_ball", {"spot_of_ball_known": "no", "area_of_ball": "putting_green"}, STROKE),
        ("ball_moved_in_search", {"movement_accidental": "no", "opponent_act": "moved_by_accident"}, MATCH),
        # relief in a teeing area: there a ball may be moved without it (Rule 6.2b(6))
        ("ball_placed_after_two_drops", {"area_of_placing_spot": "teeing_area"}, STROKE),
        ("played_from_penalty_area", {"area_of_ball": "teeing_area"}, STROKE),
        # that no score hangs on a ball is told of holes scored on their own (Rules 21.1d, 21.2d, 21.3d)
        ("hopeless_ball_stopped", {"could_still_score": "no"}, STROKE),
    ],
)
def test_what_speaks_against_the_rest_is_not_told(
    incident: str, facts: dict[str, str], form: FormOfPlay
) -> None:
    """Two sentences of which one cannot be true beside the other, or beside the opening."""
    assert not fit_together(incident, facts, form)


@pytest.mark.parametrize(
    ("title", "told", "headline", "away"),
    [
        ("The ball is lost: not found in three minutes", "It was not found within three minutes.", "The ball is lost: one penalty stroke; play again.", True),
        ("The ball is lost: not found in three minutes", "The ball was lost in the rough.", "The ball is lost: one penalty stroke.", False),
        ("The ball is out of bounds, or close to the boundary", "It lay by the fence.", "Out of bounds: one penalty stroke.", False),
        ("Another ball is played: is it a provisional ball?", "A ball was played.", "It is a provisional ball: no penalty.", False),
        ("The putting green was repaired", "A mark was pressed down.", "That is allowed: no penalty.", False),
    ],
)  # fmt: skip
def test_a_title_that_says_what_the_ruling_finds_is_known(
    title: str, told: str, headline: str, away: bool
) -> None:
    """A title that asks or leaves a choice open says nothing; nor does one that only says what is told."""
    assert title_gives_away(title, told, headline) is away
