"""Two answers of one question say different things, and none is ruled out by what is told, nor stands out by being free."""

from dataclasses import replace
from itertools import islice

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.relief import LineRelief
from marram.rules.penalty import Who, general, strokes
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes.apart import MAY_BE_TAKEN_AWAY, is_allowed_too, told_apart
from marram.teach.quizzes.believable import is_believable
from marram.teach.quizzes.drafting import MOST_ANSWERS, draft, told_in
from marram.teach.quizzes.near import Near
from marram.teach.quizzes.quiz import questions
from marram.teach.quizzes.saying import said_as_answer
from marram.teach.situations.order_of_telling import in_order
from marram.teach.situations.reaching import TODAY
from marram.teach.situations.sampling import situations
from marram.teach.situations.situation import Situation, ruled
from marram.words.headline import costs_something
from marram.words.telling import telling

STROKE, MATCH = FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY
FREE = ReliefOption(ReliefKind.FREE, "16.1b", Reference.NEAREST_POINT, 1, ())
AGAIN = ReliefOption(ReliefKind.STROKE_AND_DISTANCE, "19.2a", Reference.PREVIOUS_STROKE, None, (), 1)


def test_a_penalty_of_a_partner_is_not_told_apart_from_one_that_names_nobody() -> None:
    """Two strokes for this partner alone (Rule 23.9a(1)) are two strokes; for each partner they are another answer."""
    alone, unnamed, each = (
        Ruling().also(general("23.9a(1)", who)).next(Action.PLAY_ON)
        for who in (Who.ONE_PARTNER, Who.PLAYER, Who.EACH_PARTNER)
    )
    assert not told_apart((alone, STROKE), (unnamed, STROKE))
    assert told_apart((alone, STROKE), (each, STROKE))


def test_what_a_ruling_leaves_open_is_no_wrong_answer() -> None:
    """Relief at large may be placing (Rule 14.3), and a provisional ball may be gone on with beside free relief (Rule 18.3c(2))."""
    placed = Ruling().under("11.1b(1)").next(Action.PLACE)
    relief = Ruling().under("16.1b").with_options(FREE, may_play_as_it_lies=False).next(Action.TAKE_RELIEF)
    assert is_allowed_too(placed, relief)
    second = ReliefOption(ReliefKind.PROVISIONAL, "18.3c(2)", Reference.PROVISIONAL_BALL, None, (), 1)
    either = (
        Ruling().under("16.1e").with_options(FREE, second, may_play_as_it_lies=False).next(Action.TAKE_RELIEF)
    )
    gone_on = Ruling().also(strokes(1, "18.3c(2)")).next(Action.PLAY_PROVISIONAL)
    assert is_allowed_too(either, gone_on)
    assert not is_allowed_too(relief, gone_on)


def test_playing_on_says_less_than_playing_from_the_teeing_area() -> None:
    """So it does beside going on with the relief; a hole finished after a suspension is the last (Rule 5.7b(2))."""
    on = Ruling().under("5.7b(2)").next(Action.PLAY_ON)
    for vague in (Action.PLAY_FROM_TEEING_AREA, Action.GO_ON_WITH_RELIEF, Action.STOP_PLAY):
        assert not told_apart((on, STROKE), (Ruling().under("5.7b(2)").next(vague), STROKE))
    stopped = Ruling().under("5.7b(2)").next(Action.STOP_PLAY).note("hole_finished_now_stop")
    assert told_apart((on, STROKE), (stopped, STROKE))


def test_relief_that_must_be_taken_is_not_told_apart_from_more_kinds_of_it() -> None:
    """Free relief, or for a stroke, is a part of free relief, or for one or two."""
    dear = replace(AGAIN, penalty=2)
    less, more = (
        Ruling().with_options(*options, may_play_as_it_lies=False)
        for options in ((FREE, AGAIN), (FREE, AGAIN, dear))
    )
    paid = Ruling().with_options(AGAIN, may_play_as_it_lies=False)
    assert not told_apart((less, STROKE), (more, STROKE))
    assert told_apart((less, STROKE), (paid, STROKE))


def test_free_relief_for_the_ball_is_no_part_of_taking_away_what_may_be_moved() -> None:
    """Without its Local Rule leaves may be taken away (Rule 15.1a), and no relief is taken from them."""
    note = min(MAY_BE_TAKEN_AWAY)
    moved = Ruling().play_as_it_lies().note(note)
    assert is_allowed_too(moved, Ruling().play_as_it_lies())
    assert not is_allowed_too(moved, Ruling().with_options(FREE).note(note))
    on_tee = Ruling().next(Action.PLAY_FROM_TEEING_AREA).note(note)
    assert is_allowed_too(on_tee, Ruling().with_options(FREE).note(note))  # moved freely (Rule 6.2b(6))


def test_where_free_relief_is_refused_a_loose_impediment_may_still_be_taken_away() -> None:
    """An ant hill stays one (Rule 15.1a), whatever Rule 16.1a(3) or Model Local Rule F-6 says of relief from it."""
    told = [
        one
        for one in islice(situations(3, incidents=("ant_hill", "animal_dung")), 60)
        if {"no_free_relief", "no_relief_stroke_unreasonable", "no_relief_unreasonable_choice"}
        & {*one.ruling.notes}
    ]
    assert told
    for one in told:
        said = said_as_answer(one, one.ruling, one.form, by_finding=False)
        assert "may be taken away" in said
        assert "no free relief" in said


def test_whoever_takes_a_ball_for_out_of_bounds_would_play_again() -> None:
    """Where no Local Rule makes a boundary of it (Model Local Rule A-4), that is the mistake to be made (Rule 18.2b)."""
    drafted = [
        draft(one)
        for one in islice(situations(3, incidents=("beyond_internal_boundary", "beyond_public_road")), 30)
        if one.ruling.action is Action.PLAY_AS_IT_LIES
    ]
    assert drafted
    for one in drafted:
        assert one is not None
        assert any("play again" in each.words for each in one.answers)


def test_a_right_answer_that_costs_something_is_not_the_only_one() -> None:
    """Beside three answers without a penalty, the one with it would be taken for right whatever was told."""
    found = list(islice(questions(83, incidents=("concession", "ball_dropped", "dropped_once_more")), 60))
    asked = [
        one for one in found if len(one.answers) == MOST_ANSWERS and costs_something(one.situation.ruling)
    ]
    assert asked
    for one in asked:
        wrong = [each.near.ruling for each in one.answers if each.near]
        assert any(costs_something(each) for each in wrong), [each.words for each in one.answers]


def test_nothing_follows_a_stroke_from_a_wrong_place_that_was_not_made() -> None:
    """A ball that was not played yet leaves no two balls to be played out (Rule 14.7b), and no late ball to be given up."""
    asked = ("dropped_where_lost", "no_play_zone", "ball_found_in_time", "zone_beyond_boundary")
    drawn = list(islice(questions(29, incidents=asked), 80))
    unplayed = [
        one
        for one in drawn
        if "no"
        in {one.situation.facts.get(name) for name in ("played_since_put_down", "played_despite_zone")}
    ]
    assert unplayed
    assert not [
        each.words
        for one in unplayed
        for each in one.answers
        if "both balls" in each.words or "hole out" in each.words
    ]
    kept = [one for one in drawn if one.situation.facts.get("late_ball_played") == "no"]
    assert kept
    assert not [each.words for one in kept for each in one.answers if "one stroke more" in each.words]


def test_no_penalty_names_another_form_of_play() -> None:
    """Holes are deducted in a match, and strokes count elsewhere (Rule 4.1b)."""
    for one in islice(questions(37, incidents=("club_shared",)), 40):
        if one.situation.form is STROKE:
            assert not [each.words for each in one.answers if "deducted" in each.words]
        if one.situation.form is MATCH:
            assert not [each.words for each in one.answers if "Four penalty strokes" in each.words]


def test_two_strokes_are_two_strokes_by_whatever_name() -> None:
    """The general penalty in stroke play and two strokes for relief come to the same (Rule 1.3c(2)); in a match they do not."""
    named = Ruling().also(general("18.3")).next(Action.PLAY_OTHER_BALL)
    counted = Ruling().also(strokes(2, "18.3")).next(Action.PLAY_OTHER_BALL)
    assert not told_apart((named, STROKE), (counted, STROKE))
    assert told_apart((named, MATCH), (counted, MATCH))
    assert told_apart(
        (named, STROKE), (Ruling().also(strokes(1, "18.3")).next(Action.PLAY_OTHER_BALL), STROKE)
    )


def test_whoever_was_excused_may_stop_as_well() -> None:
    """Playing on during a suspension can be justified (Rule 5.7b Exception); then stopping is no wrong answer."""
    excused = Ruling().under("5.7b Exception").next(Action.PLAY_ON)
    stop = Ruling().under("5.7b(2)").next(Action.STOP_PLAY).note("hole_finished_now_stop")
    assert is_allowed_too(excused, stop)
    assert not is_allowed_too(stop, excused)


def test_whoever_plays_on_does_so_with_the_ball_in_play_and_on_the_next_hole() -> None:
    """A substituted ball is the ball in play (Rule 6.3b(2)); after a hole that was completed, play goes on at the next (Rule 6.5)."""
    on, over = Ruling().next(Action.PLAY_ON), Ruling().next(Action.HOLE_OVER)
    substituted = Ruling().under("6.3b(2)").next(Action.PLAY_OTHER_BALL).note("go_on_with_substituted_ball")
    assert is_allowed_too(substituted, on)
    assert not is_allowed_too(Ruling().under("18.3c").next(Action.PLAY_OTHER_BALL), on)
    assert is_allowed_too(over, on)
    assert not is_allowed_too(over.note("hole_is_completed"), on.note("hole_goes_on"))


def test_a_penalty_that_two_bear_alike_is_said_once() -> None:
    """Both are penalised where the one asked for it (Clarification 8.3/1); said of each of the two it would be the longest answer."""
    drawn = situations(5, incidents=("anothers_conditions_altered",))
    asked = next(one for one in islice(drawn, 400) if one.facts.get("other_player_let_it_happen") == "yes")
    said = said_as_answer(asked, asked.ruling, asked.form, by_finding=False)
    assert said.count("(the general penalty) for each player involved") == 1, said


def test_no_sand_is_spoken_of_where_none_is_told() -> None:
    """Of a ball that another player may have taken, it is not told where it lay."""
    drawn = situations(5, incidents=("ball_played_by_another_player",))
    gone = next(one for one in islice(drawn, 100) if one.facts["played_by_another_known"] == "no")
    shaped = Ruling().under("14.2d(1)").next(Action.REPLACE).note("shape_the_lie_in_sand")
    assert not is_believable(gone, Near(shaped, gone.form))


def test_what_was_done_and_in_doing_what_is_told_at_once() -> None:
    """Nobody asks at which moment it was, and a thing that was moved has a name."""
    asked = {"fixed_object": "immovable_or_boundary", "original_object_back": "no", "preparing_how": "searching", "actions_reasonable": "no"}  # fmt: skip
    said = telling("fixed_object_moved", in_order(asked), "Pella", STROKE)
    assert said[0] == "In searching for the ball Pella bent the wire of a fixed fence near it."
    assert said[1:] == (
        "What was done was more than was reasonable for searching for the ball.",
        "What had been moved was not put back before the stroke.",
    )
    worsened = {"worsened_by": "player_or_authorised", "improved_what_was_worsened": "yes", "conditions_improved": "yes"}  # fmt: skip
    assert telling("conditions_worsened", worsened, "Pella", STROKE)[1:3] == (
        "The conditions were worsened by the player's caddie, whose foot left a print there.",
        "Pella had already smoothed that over.",
    )


def test_what_a_sentence_speaks_of_is_told_before_it() -> None:
    """The provisional ball comes before a further stroke with it, and what interferes before the stroke in mind."""
    asked = {"nearer_stroke_at_provisional": "yes", "provisional_state": "found"}
    assert list(in_order(asked)) == ["provisional_state", "nearer_stroke_at_provisional"]
    zone = {
        "stroke_unreasonable_anyway": "no",
        "area_of_ball": "bunker",
        "in_the_way": "animal_hole",
        "interference": "ball",
    }
    assert list(in_order(zone)) == [
        "in_the_way",
        "interference",
        "stroke_unreasonable_anyway",
        "area_of_ball",
    ]
    assert in_order(zone) == zone


def test_strokes_left_out_of_a_card_are_added_and_not_forgiven() -> None:
    """Nobody is disqualified for penalty strokes not known of (Rule 3.3b(3) Exception), and the score is put right."""
    one = next(
        one
        for one in islice(situations(3, incidents=("hole_score_wrong",)), 200)
        if (one.facts.get("why_too_low"), one.facts.get("competition_closed")) == ("penalty_not_known", "no")
    )
    assert "are added" in said_as_answer(one, one.ruling, one.form, by_finding=True)
    assert all(
        told_in(one) != told_in(asked.situation) or "are added" in asked.answers[asked.right].words
        for asked in islice(questions(3, incidents=("hole_score_wrong",)), 40)
    )


def test_whether_a_hole_is_over_is_asked_as_that() -> None:
    """Where a hole is over, or goes on, is the question (Rule 6.5), playing on is an answer to it; where it may be given up, none is."""
    drafts = map(draft, islice(situations(5, incidents=("hole_completed",)), 60))
    asked = [one for one in drafts if one is not None]
    assert asked
    for one in asked:
        words = {each.words for each in one.answers}
        assert {"No penalty; play on", "No penalty; the hole is over"} <= words
        assert one.situation.form in (STROKE, MATCH)


def test_a_penalty_of_somebody_else_does_not_stand_out_alone() -> None:
    """Where another player stopped the ball on purpose (Rule 14.3d), a second answer penalises that player, at one stroke."""
    facts = {
        "way_of_dropping": "right",
        "deflection_of_drop": "deliberate_by_other_player",
        "could_rest_in_relief_area": "yes",
    }
    for form in (STROKE, MATCH):
        drafted = draft(of_facts("ball_dropped", facts, form))
        assert drafted is not None
        whom = "opponent" if form is MATCH else "other player"
        assert sum(f"for the {whom}" in each.words for each in drafted.answers) > 1


def test_whoever_gave_up_the_ball_from_the_wrong_place_holes_out_with_it() -> None:
    """Rule 14.7b(1): without a serious breach the first ball counts; that ball is named, and playing it on is no wrong answer."""
    facts = {
        "not_a_wrong_place": "neither",
        "serious_breach": "no",
        "balls_after_wrong_place": "corrected_ball_only",
        "next_hole_started": "no",
    }
    drafted = draft(of_facts("played_from_wrong_place", facts, STROKE))
    assert drafted is not None
    assert drafted.answers[0].words.endswith("go back and hole out with the first ball")
    assert not any(each.words.startswith("Two") and "as it lies" in each.words for each in drafted.answers)


def test_penalty_area_relief_at_once_is_no_wrong_answer() -> None:
    """Rule 11.2c(1) Exception: a ball stopped on its way into a penalty area may have penalty area relief instead, for one stroke."""
    facts = {
        "deflector": "outsider",
        "played_from_green": "no",
        "would_have_stopped": "penalty_area",
    }
    drafted = draft(of_facts("deliberately_deflected", facts, STROKE))
    assert drafted is not None
    assert drafted.answers[0].words == "No penalty; take relief"
    assert not any(each.words.startswith("One penalty stroke; play again") for each in drafted.answers)


def test_the_price_of_relief_back_on_the_line_is_told_as_counted() -> None:
    """The strokes of Rules 16.1c(2), 17.1d(2), 19.2b and 19.3 are no part of the answers, and the limit is that of the Rule."""
    for line in LineRelief:
        facts = {
            "line_relief": line.value,
            "way_of_dropping": "right",
            "deflection_of_drop": "nothing",
            "rest_within_club_length": "yes",
            "rest_in_area_first_touched": "yes",
            "rest_nearer_than_start_of_line": "no",
        }
        said = " ".join(of_facts("back_on_the_line_drop", facts, STROKE).told(""))
        assert "counted already" in said
        assert ("crossed the edge" in said) is (line is LineRelief.PENALTY_AREA)


def of_facts(incident: str, facts: dict[str, str], form: FormOfPlay) -> Situation:
    found = ruled(incident, facts, form, TODAY)
    assert isinstance(found, Ruling)
    return Situation(incident, facts, form, TODAY, "Corin", 5, found)
