"""What is told of a situation does not speak against itself."""

from dataclasses import replace
from itertools import islice

import pytest

import marram
from marram.rules.facts.conditions import LOCAL_RULES, FormOfPlay
from marram.rules.local_rules.register import REGISTER
from marram.rules.penalty import Who, general
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption
from marram.rules.ruling import Action, Deadline, Ruling, general_penalty, penalty
from marram.teach.quizzes.apart import differs_by_price_of_relief, is_allowed_too, told_apart
from marram.teach.quizzes.drafting import MOST_ANSWERS, draft
from marram.teach.quizzes.quiz import questions
from marram.teach.situations.fitting_together import contradict, fit_together
from marram.teach.situations.order_of_telling import in_order
from marram.teach.situations.sampling import situations
from marram.words.headline import headline
from marram.words.telling import telling, told


@pytest.mark.parametrize(
    "incident", ["ball_moved_in_search", "handicap_strokes_misapplied", "scorecard_fault"]
)
def test_opponents_are_in_matches_and_scorecards_are_not(incident: str) -> None:
    """Definitions: opponent, "the person a player competes against in a match"; no scorecard decides a match (Rule 3.2)."""
    drawn = list(islice(situations(4, incidents=(incident,)), 30))
    assert {one.form for one in drawn}
    for one in drawn:
        if "opponent" in one.facts.values() or incident == "handicap_strokes_misapplied":
            assert one.form is FormOfPlay.MATCH_PLAY
        if incident == "scorecard_fault":
            assert one.form is not FormOfPlay.MATCH_PLAY


def test_a_ball_that_is_said_to_have_moved_was_not_only_touched() -> None:
    """Told first that it was moved, an answer that it was not would make no sense."""
    facts = {"who_moved_ball": "opponent", "opponent_act": "touched_on_purpose"}
    assert not fit_together("ball_moved_in_search", facts, FormOfPlay.MATCH_PLAY)
    assert fit_together("ball_moved_by_opponent", facts, FormOfPlay.MATCH_PLAY)


def test_a_ball_is_not_nearer_than_the_line_starts_and_behind_the_point_on_it() -> None:
    """The point is on the line behind its start (Rule 19.2b), so that the second cannot be without the first."""
    behind = {"rest_nearer_than_chosen_point": "no", "rest_nearer_than_start_of_line": "no"}
    assert fit_together("back_on_the_line_drop", behind, FormOfPlay.STROKE_PLAY)
    ahead = {**behind, "rest_nearer_than_start_of_line": "yes"}
    assert not fit_together("back_on_the_line_drop", ahead, FormOfPlay.STROKE_PLAY)


@pytest.mark.parametrize(
    ("incident", "facts", "form"),
    [
        # A side has a partner; whoever plays alone has none.
        ("partner_stood_behind", {"sides": "individual"}, FormOfPlay.STROKE_PLAY),
        # An opponent is in a match only (Definitions: opponent).
        ("partner_acted_on_ball", {"whom_else": "hurt_opponent"}, FormOfPlay.STROKE_PLAY),
        # Nothing is off the ground in a footprint (Rule 16.1a(1)).
        ("something_in_the_way", {"interference": "ball_above_ground", "in_the_way": "animal_track"}, FormOfPlay.STROKE_PLAY),
        # A ball at rest in a bunker is moved into no hole by wind; of one in the hole no stroke is told as of one that moved.
        ("ball_may_have_moved", {"new_place": "in_the_hole", "area_of_ball": "bunker"}, FormOfPlay.STROKE_PLAY),
        ("moved_ball_not_replaced", {"new_place": "in_the_hole"}, FormOfPlay.STROKE_PLAY),
        # A result is decided before the hole is played out in a match only (Rule 5.5a).
        ("practised_during_round", {"struck": "decided_hole"}, FormOfPlay.STROKE_PLAY),
        # Certain to have left its spot, a ball was not only touched.
        ("ball_may_have_moved", {"movement_certain": "yes", "opponent_act": "touched_on_purpose"}, FormOfPlay.MATCH_PLAY),
        # Two Local Rules on dropping zones speak against each other.
        ("ball_in_penalty_area", {"local_rule_e_1": "yes", "local_rule_e_1_3": "yes"}, FormOfPlay.STROKE_PLAY),
        # No tree stands on a putting green.
        ("ball_dislodged_from_tree", {"area_of_ball": "putting_green"}, FormOfPlay.STROKE_PLAY),
        # The sand at a ball outside the bunker is not touched in grounding the club, and nothing is searched for on a green.
        ("ground_altered", {"altered_place": "bunker", "preparing_how": "grounding_club", "area_of_ball": "teeing_area"}, FormOfPlay.STROKE_PLAY),
        ("ground_altered", {"altered_place": "putting_green", "preparing_how": "searching"}, FormOfPlay.STROKE_PLAY),
        # Wind takes no ball from a bunker into a hole.
        ("ball_moved_by_natural_forces", {"area_of_ball": "bunker", "new_place": "in_the_hole"}, FormOfPlay.STROKE_PLAY),
        # A ball that nobody could identify does not tell where the player's is.
        ("ball_found_in_time", {"identified_in_reasonable_time": "no", "whereabouts": "penalty_area"}, FormOfPlay.STROKE_PLAY),
        # Who set a ball down, or played the original after another, exchanged no balls with the opponent.
        ("ball_set_down", {"exchange_of_balls": "opponent_first"}, FormOfPlay.MATCH_PLAY),
        # No fringe belongs to a green that is no wrong green, and no Rule says what a caddie may lift in the teeing area.
        ("wrong_green", {"excluded_green": "under_repair", "fringe_interference": "swing"}, FormOfPlay.STROKE_PLAY),
        ("ball_lifted", {"who_lifted": "caddie_without_authority", "area_of_ball": "teeing_area"}, FormOfPlay.STROKE_PLAY),
        # On the putting green such damage is repaired (Rule 13.1c(2)).
        ("animal_damage", {"area_of_ball": "putting_green"}, FormOfPlay.STROKE_PLAY),
        # Sand is not aerated, a stroke between two holes counts for none, and of one stance one Local Rule is told.
        ("aeration_hole", {"area_of_ball": "bunker"}, FormOfPlay.STROKE_PLAY),
        ("ball_limited", {"breach_when": "between_holes"}, FormOfPlay.STROKE_PLAY),
        ("hoof_damage", {"condition_named_without_stance": "yes"}, FormOfPlay.STROKE_PLAY),
        # Whoever plays provisionally because of a penalty area is in doubt (Model Local Rule B-3).
        ("provisional_for_penalty_area", {"second_ball_reason": "no_doubt"}, FormOfPlay.STROKE_PLAY),
    ],
)  # fmt: skip
def test_what_no_course_has_seen_is_not_told(incident: str, facts: dict[str, str], form: FormOfPlay) -> None:
    """Nothing told speaks against the rest."""
    assert not fit_together(incident, facts, form)


def test_an_answer_that_can_be_right_too_is_no_wrong_one() -> None:
    """The other ball that goes back (Rule 9.6), relief in the right way (14.5b), one of two things left with the same penalty."""
    moved = Ruling().play_as_it_lies().note("other_ball_is_replaced")
    assert is_allowed_too(moved, Ruling().replace_ball())
    again = ReliefOption(ReliefKind.STROKE_AND_DISTANCE, "17.1d(1)", Reference.PREVIOUS_STROKE, None, (), 1)
    due = Ruling().with_options(again, may_play_as_it_lies=False)
    rightly = Ruling().correct("correct_relief_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    assert is_allowed_too(due, rightly.next(Action.CORRECT_MISTAKE))
    paid = penalty(1, "17.1d(1)")
    assert is_allowed_too(paid.with_options(again), paid.play_as_it_lies())
    assert not is_allowed_too(paid.with_options(again), Ruling().play_as_it_lies())


def test_two_ways_of_saying_one_thing_are_not_offered_together() -> None:
    """An altered lie is replaced by placing the ball (Rule 14.2d); relief for one stroke is one of that for one or two (19.3)."""
    form = FormOfPlay.STROKE_PLAY
    assert not told_apart(
        (Ruling().replace_ball(), form), (replace(Ruling().replace_ball(), action=Action.PLACE), form)
    )
    line = ReliefOption(ReliefKind.BACK_ON_THE_LINE, "19.3b", Reference.CROSSING_POINT, None, (), 2)
    near = replace(line, kind=ReliefKind.LATERAL, citation="19.2c", penalty=1)
    either = Ruling().with_options(near, line, may_play_as_it_lies=False)
    cheap = Ruling().with_options(near, may_play_as_it_lies=False)
    dear = Ruling().with_options(replace(near, penalty=2), may_play_as_it_lies=False)
    assert not told_apart((either, form), (cheap, form))
    assert told_apart((cheap, form), (dear, form))


def test_the_price_of_the_relief_under_way_is_no_wrong_answer() -> None:
    """A ball dropped wrongly is dropped again without penalty (Rule 14.3b); the relief may have cost a stroke itself."""
    again = Ruling().next(Action.DROP_AGAIN)
    assert differs_by_price_of_relief(again, penalty(1, "19.2").next(Action.DROP_AGAIN))
    assert not differs_by_price_of_relief(again, general_penalty("14.7a").next(Action.DROP_AGAIN))
    assert not differs_by_price_of_relief(again, penalty(1, "19.2").play_as_it_lies())
    drawn = map(draft, islice(situations(5, incidents=("back_on_the_line_drop",)), 24))
    drafted = [one for one in drawn if one is not None]
    assert len(drafted) > 12
    for one in drafted:
        assert len(one.answers) == MOST_ANSWERS
        for answer in one.answers:
            if answer.near is not None:
                assert not differs_by_price_of_relief(one.situation.ruling, answer.near.ruling)


def test_one_of_the_things_that_may_be_done_is_no_wrong_answer() -> None:
    """Relief for a penalty is open to whoever may play the ball as it lies (Rules 18.1 and 19.1); free relief is not."""
    plays = Ruling().play_as_it_lies()
    again = ReliefOption(ReliefKind.STROKE_AND_DISTANCE, "18.1", Reference.PREVIOUS_STROKE, None, (), 1)
    lateral = ReliefOption(ReliefKind.LATERAL, "19.2c", Reference.BALL, 2, (), 1)
    both = Ruling().with_options(again, lateral)
    assert is_allowed_too(plays, Ruling().with_options(again))
    assert is_allowed_too(plays, both)
    free = ReliefOption(ReliefKind.FREE, "16.1b", Reference.NEAREST_POINT, 1, ())
    assert not is_allowed_too(plays, Ruling().with_options(free))
    assert not is_allowed_too(Ruling().with_options(free), plays)
    assert is_allowed_too(both, Ruling().with_options(again, may_play_as_it_lies=False))
    assert is_allowed_too(both, plays)
    assert is_allowed_too(Ruling().next(Action.PLAY_FROM_TEEING_AREA), plays)


def test_relief_from_what_can_be_moved_is_to_move_it() -> None:
    """Free relief is no wrong answer where the thing in the way may be taken away (Rule 15.2a)."""
    free = ReliefOption(ReliefKind.FREE, "16.1b", Reference.NEAREST_POINT, 1, ())
    movable = Ruling().play_as_it_lies().note("may_remove_movable_obstruction")
    assert is_allowed_too(movable, Ruling().with_options(free))


def test_what_is_said_otherwise_is_not_another_answer() -> None:
    """A provisional ball by another name, and the penalty of a side by nobody's name, are the same answer."""
    form = FormOfPlay.STROKE_PLAY
    other, provisional = (
        penalty(1, "18.1").next(one) for one in (Action.PLAY_OTHER_BALL, Action.PLAY_PROVISIONAL)
    )
    assert not told_apart((other, form), (provisional, form))
    side, player = (general_penalty("22.3", who).next(Action.PLAY_ON) for who in (Who.SIDE, Who.PLAYER))
    assert not told_apart((side, form), (player, form))
    assert told_apart((side, form), (penalty(1, "22.3", Who.SIDE).next(Action.PLAY_ON), form))


@pytest.mark.parametrize(
    ("facts", "words"),
    [
        ({"condition_found": "embedded", "area_of_ball": "putting_green"}, "embedded off the general area"),
        ({"breach_when": "several_holes", "holes_of_breach": 0}, "several holes, and none"),
    ],
)
def test_a_ball_embedded_lies_in_the_general_area_and_several_holes_are_more_than_one(facts, words) -> None:
    """What cannot be both is not told together."""
    assert not fit_together("lifted_to_see", facts, FormOfPlay.STROKE_PLAY), words


@pytest.mark.parametrize(
    ("incident", "facts", "form"),
    [
        # The ball began to move: it was not only touched.
        ("ball_moved_during_swing", {"opponent_act": "touched_on_purpose"}, FormOfPlay.MATCH_PLAY),
        # An advice giver moved it, and no animal.
        ("advice_giver_moved_ball", {"outside_cause_known": "an_animal"}, FormOfPlay.STROKE_PLAY),
        # Each finished with the other's ball, so that both played a wrong one.
        ("balls_found_exchanged", {"exchange_of_balls": "only_the_player"}, FormOfPlay.MATCH_PLAY),
        # Outside the penalty area it was played from; another one has its own answer.
        ("played_from_penalty_area", {"area_of_ball": "penalty_area"}, FormOfPlay.STROKE_PLAY),
        # A ball that has a marker in its place is not searched for.
        ("three_ball_marker_moved", {"moved_while": "searching"}, FormOfPlay.MATCH_PLAY),
        # No flooded bunker reaches out of bounds.
        ("flooded_bunker", {"interference": "out_of_bounds_only"}, FormOfPlay.STROKE_PLAY),
        # A match knows no scorecard (Rule 3.2), and which of several holes are lost is not told.
        ("found_after_result", {"late_breach": "handicap_too_high"}, FormOfPlay.MATCH_PLAY),
        ("rode_during_round", {"breach_when": "several_holes"}, FormOfPlay.MATCH_PLAY),
        # One Local Rule makes the dropping zone an option, the other the only one (E-1).
        ("ball_in_penalty_area", {"local_rule_e_1": "yes", "local_rule_e_1_3": "yes"}, FormOfPlay.STROKE_PLAY),
        # In the teeing area a ball may be moved (Rule 6.2b(6)), so that none has to go back there.
        ("ball_to_be_replaced", {"area_of_ball": "teeing_area"}, FormOfPlay.STROKE_PLAY),
        # Right behind a ball outside the bunker there is none of its sand.
        ("sand_touched", {"sand_touch": "club_by_ball", "ball_and_bunker": "played_out"}, FormOfPlay.STROKE_PLAY),
        # No trench or cable runs through a putting green.
        ("temporary_line_in_the_way", {"area_of_ball": "putting_green"}, FormOfPlay.STROKE_PLAY),
        # A fence that is told of as the boundary is nothing "that stays where it is, water, or something about the ground".
        ("something_in_the_way", {"in_the_way": "natural_object"}, FormOfPlay.STROKE_PLAY),
        # Damage on the putting green is repaired (Rule 13.1c(2)).
        ("abnormal_course_condition", {"in_the_way": "animal_track", "area_of_ball": "putting_green"}, FormOfPlay.STROKE_PLAY),
        # The ball lies in a bunker that is ground under repair.
        ("flooded_bunker", {"bunker_taken_out_of_play": "yes", "interference": "none"}, FormOfPlay.STROKE_PLAY),
        ("flooded_bunker", {"bunker_taken_out_of_play": "yes", "interference": "stance_or_swing"}, FormOfPlay.STROKE_PLAY),
        ("natural_thing_removed", {"ball_when_removed": "to_be_replaced", "area_of_ball": "teeing_area"}, FormOfPlay.STROKE_PLAY),
        # The alternative to stroke and distance is no relief beside which there is but one.
        ("ball_not_found", {"local_rule_e_5": "yes", "local_rule_e_1_3": "yes"}, FormOfPlay.STROKE_PLAY),
        # An opponent concedes, and nobody else (Rule 3.2b).
        ("deliberately_deflected", {"deflector": "outsider", "why_stopped": "stroke_conceded"}, FormOfPlay.MATCH_PLAY),
    ],
)  # fmt: skip
def test_what_is_told_first_is_not_taken_back(incident: str, facts: dict[str, str], form: FormOfPlay) -> None:
    """No answer speaks against the opening or against another answer."""
    assert not fit_together(incident, facts, form)


def test_what_others_speak_of_is_told_before_them() -> None:
    """A provisional ball is there before it is played once more, and what interferes before it is weighed."""
    facts = {"nearer_stroke_at_provisional": "no", "provisional_state": "found"}
    _, first, second = telling("ball_not_found", in_order(facts), "Odo")
    assert first.startswith("A provisional ball was played")
    assert "had not been played from nearer" in second
    facts = {"in_the_way": "temporary_water", "stroke_unreasonable_anyway": "no", "interference": "ball"}
    said = telling("abnormal_course_condition", in_order(facts), "Odo")
    assert said.index(told("interference", "ball", "Odo")) == len(said) - 2


def test_a_choice_between_two_balls_names_the_provisional_one() -> None:
    """Model Local Rule B-3: the ball found in the penalty area is played, or the one played provisionally, for a stroke."""
    facts = {"penalty_area_provisional": "found_inside", "nearer_stroke_at_provisional": "no"}
    found = marram.rule(
        "provisional_for_penalty_area", facts, edition=2023, form_of_play="stroke_play", local_rules=["B-3"]
    )
    assert isinstance(found, Ruling)
    assert "go on with the provisional ball for one penalty stroke" in headline(found, FormOfPlay.STROKE_PLAY)
    assert is_allowed_too(found, replace(found, action=Action.PLAY_PROVISIONAL))
    assert is_allowed_too(found, penalty(1, "18.1").next(Action.PLAY_OTHER_BALL))
    assert not is_allowed_too(found, general_penalty("18.1").next(Action.PLAY_OTHER_BALL))


def test_a_stroke_counted_and_a_stroke_that_is_said_to_come_are_one_sum() -> None:
    """Rule 6.3c(1) with stroke and distance: three strokes, or two and the correction for one stroke more."""
    put_right = general_penalty("6.3c(1)").correct(
        "correct_wrong_ball_when_lost", Deadline.BEFORE_NEXT_HOLE, general("6.3c(1)")
    )
    put_right = put_right.next(Action.CORRECT_MISTAKE)
    paid = general_penalty("6.3c(1)").next(Action.PLAY_ON)
    dear = replace(paid, penalties=(*paid.penalties, *penalty(1, "18.2b").penalties))
    assert is_allowed_too(dear, put_right)
    assert not is_allowed_too(paid, put_right)


def test_free_relief_besides_has_to_be_given() -> None:
    """Model Local Rule F-12: what may be taken away gives free relief only where it interferes reasonably (Rule 16.1a(3))."""
    taken = Ruling().play_as_it_lies().note("may_remove_loose_impediment")
    free = ReliefOption(ReliefKind.FREE, "16.1b", Reference.NEAREST_POINT, 1, ())
    assert not is_allowed_too(taken, replace(taken, relief=(free,)))
    assert is_allowed_too(taken, Ruling().with_options(free))


def test_what_was_put_right_and_what_is_free_are_no_wrong_answers() -> None:
    """Rule 6.3c(1), once corrected; Rule 15.2b, whose relief is free, or for a stroke under stroke and distance."""
    right = general_penalty("6.3c(1)").next(Action.PLAY_ON)
    put_right = general_penalty("6.3c(1)").correct(
        "correct_by_playing_original", Deadline.BEFORE_NEXT_HOLE, general("6.3c(1)")
    )
    assert is_allowed_too(right, put_right.next(Action.CORRECT_MISTAKE))
    assert not is_allowed_too(put_right.next(Action.CORRECT_MISTAKE), right)
    free = ReliefOption(ReliefKind.FREE, "15.2b", Reference.ESTIMATED_SPOT, 1, ())
    again = ReliefOption(ReliefKind.STROKE_AND_DISTANCE, "18.1", Reference.PREVIOUS_STROKE, None, (), 1)
    other = replace(free, citation="16.1b", reference=Reference.NEAREST_POINT)
    both, alone = (
        Ruling().with_options(*each, may_play_as_it_lies=False) for each in ((free, again), (other,))
    )
    assert is_allowed_too(both, alone)
    assert not is_allowed_too(alone, both)


def test_relief_gone_on_with_is_relief_taken() -> None:
    """Rule 11.2b Exception: whoever lifts a ball moving in water to take relief goes on with it."""
    form = FormOfPlay.STROKE_PLAY
    free = ReliefOption(ReliefKind.FREE, "11.2c(1)", Reference.ESTIMATED_SPOT, None, ())
    under_way = Ruling().next(Action.GO_ON_WITH_RELIEF)
    taken = Ruling().with_options(free, may_play_as_it_lies=False)
    assert not told_apart((under_way, form), (taken, form))
    assert told_apart((under_way, form), (Ruling().play_as_it_lies(), form))


def test_an_answer_about_a_four_ball_card_is_no_truth_of_every_card() -> None:
    """Rule 23.2b: one partner's score, the lower of two, counts on every hole; the penalty of one partner needs one."""
    for one in islice(questions(12, incidents=("four_ball_card",)), 40):
        wrong = [answer.words for answer in one.answers if answer.near is not None]
        assert not [
            each for each in wrong if "One partner" in each or "lower score" in each or "alone" in each
        ], wrong


def test_free_relief_for_a_loose_impediment_is_offered_as_a_wrong_answer() -> None:
    """Among answers that all cost something but the right one, nobody has to know the Rule (Rule 15.1a; Model Local Rule F-12)."""
    for one in islice(questions(3, incidents=("animal_dung",)), 12):
        free = [answer for answer in one.answers if answer.words.startswith("No penalty")]
        assert len(free) > 1, [answer.words for answer in one.answers]


def test_nothing_is_taken_away_where_nothing_lies() -> None:
    """A ruling of another incident that something may be taken away is no answer where nothing is told of (Rule 15.1a)."""
    for one in islice(
        questions(5, incidents=("dropped_ball_played", "club_length_measured", "lie_preferred")), 60
    ):
        assert not [answer.words for answer in one.answers if "taken away" in answer.words]


def test_what_a_sentence_speaks_of_is_told_before_it() -> None:
    """ "For that purpose" comes after the purpose, and "it" after the ball that touched something."""
    assert next(iter(in_order({"actions_reasonable": "yes", "moved_while": "measuring"}))) == "moved_while"
    facts = {"stroke_unreasonable_anyway": "no", "area_of_ball": "bunker", "interference": "ball"}
    assert next(iter(in_order(facts))) == "interference"


def test_local_rules_that_exclude_each_other_are_never_told_as_both_in_force() -> None:
    """The register says which cannot be adopted together (F-2.1 and F-2.2 are two forms of one): no situation tells both."""
    assert contradict({"local_rule_f_2_1": "yes", "local_rule_f_2_2": "yes"})
    assert not contradict({"local_rule_f_2_1": "yes", "local_rule_f_2_2": "no"})
    for name in ("embedded_ball", "alternative_to_stroke_and_distance", "wrong_green"):
        for one in islice(situations(6, incidents=(name,)), 80):
            in_force = [code for code, fact in LOCAL_RULES.items() if one.facts.get(fact.name) == "yes"]
            assert not any({*REGISTER[code].not_with} & {*in_force} for code in in_force)
