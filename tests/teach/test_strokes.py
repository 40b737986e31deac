"""Which stroke is next: the engine's count, and wrong numbers that a mistake in counting leads to."""

from itertools import islice

import pytest

from marram.rules.ruling import Action, Ruling
from marram.rules.story.story import Happened, rule_story
from marram.teach.quizzes.miscounting import ANSWERS, Mistake
from marram.teach.quizzes.one_after_another import can_follow
from marram.teach.quizzes.strokes import strokes_questions

DRAWN = list(islice(strokes_questions(4), 60))


@pytest.mark.parametrize("one", DRAWN, ids=lambda one: "+".join(act.incident for act in one.happened))
def test_the_count_is_the_engines_and_one_answer_is_right(one) -> None:
    """Ruled anew, the story comes to the stroke that is called right; every other number is named by its mistake."""
    again = rule_story(
        one.happened,
        form_of_play="stroke_play",
        strokes_before=one.count.before,
        edition=2023,
    )
    assert again.next_stroke == one.answers[one.right].stroke
    numbers = [each.stroke for each in one.answers]
    assert len(set(numbers)) == len(numbers) == ANSWERS
    assert min(numbers) >= 1
    assert [each for each in one.answers if each.mistake is None] == [one.answers[one.right]]


def test_the_stroke_is_what_was_taken_and_made_and_the_penalty_strokes() -> None:
    """Strokes before, strokes made and penalty strokes add up to one less than the next stroke."""
    for one in DRAWN:
        count = one.count
        assert count.before + count.made + count.total + 1 == count.next_stroke


def test_a_penalty_left_out_is_among_the_mistakes_of_most() -> None:
    """Where the story costs something, the number without it is offered in at least half of the questions."""
    costly = [one for one in DRAWN if one.count.total]
    offered = [one for one in costly if Mistake.PENALTY_LEFT_OUT in {each.mistake for each in one.answers}]
    assert len(offered) * 2 > len(costly) > 0


def test_adding_up_alone_leads_to_no_number() -> None:
    """The sum without a penalty is always the first number, and which of the four is right is about as often each."""
    drawn = list(islice(strokes_questions(20_261), 240))
    for one in drawn:
        assert one.answers[0].stroke == one.count.before + one.count.made + 1
    often = [sum(one.right == place for one in drawn) for place in range(ANSWERS)]
    assert max(often) < len(drawn) * 0.45, often
    assert min(often) > len(drawn) * 0.05, often


def test_no_price_is_told_and_relief_of_two_prices_is_told_apart() -> None:
    """Rules 17.2b and 19.3: which relief it was, and never what it costs."""
    for one in islice(strokes_questions(31_807), 150):
        assert "for two strokes" not in " ".join(one.told("Saltwhin"))


def test_a_ball_searched_for_had_been_struck_before() -> None:
    """The stroke whose ball was deliberately stopped is the one told before the search (Rules 11.2c and 18.2a)."""
    stopped = {"whereabouts": "deliberately_stopped", "provisional_state": "not_played"}
    stopped |= {"would_have_stopped": "on_course"}
    danger = {"animal_near_ball": "harmless", "area_of_ball": "general_area"}
    danger |= {"last_stroke_from_penalty_area": "no"}
    search = Happened("ball_not_found", stopped, option="free")
    for acts in ([search], [Happened("dangerous_animal", danger, option="as_it_lies", strokes=1), search]):
        found = rule_story(acts, form_of_play="stroke_play", strokes_before=4, edition=2023)
        assert found.next_stroke == 4 + len(acts)


def test_it_is_told_what_was_taken_and_how_often_it_was_played() -> None:
    """Of two acts the strokes between are told, and of an act the option that was taken."""
    two = next(one for one in DRAWN if len(one.happened) == 2 and one.happened[0].option == "lateral")
    said = " ".join(two.told("Saltwhin"))
    assert f"With that ball {two.player} then made" in said
    assert f"{two.player} had taken" in said


def test_two_provisional_balls_gone_leave_the_seventh_stroke() -> None:
    """First stroke, two provisional balls from the same spot (third and fifth), all gone: the next is the seventh.

    The order of balls played from one place, and what each costs: Clarification 18.3a/3 with Rule 18.2b.
    """
    facts = {
        "whereabouts": "out_of_bounds",
        "provisional_state": "both_lost_or_out",
        "last_stroke_from_penalty_area": "no",
        "local_rule_e_5": "no",
    }
    found = rule_story(
        [Happened("ball_not_found", facts)], form_of_play="stroke_play", strokes_before=1, edition=2023
    )
    assert found.next_stroke == 7


def test_a_stroke_is_told_once_and_every_ball_in_play_is_known() -> None:
    """No story tells by what a stroke hit or where it went that it was made, has two balls open, or was decided between holes."""
    for one in islice(strokes_questions(7717), 150):
        for place, act in enumerate(one.happened):
            assert act.incident not in ("ball_hit_flagstick", "played_from_penalty_area", "green_tested")
            assert place == 0 or act.facts.get("put_in_play_by_hand") != "yes"
            ruling = one.result.parts[place]
            assert isinstance(ruling, Ruling)
            assert "play_out_both_balls" not in ruling.notes
            assert act.option != "provisional" or ruling.action is Action.PLAY_PROVISIONAL


def test_a_ball_played_as_it_lay_is_told_with_its_strokes_once() -> None:
    """That is a stroke itself: no second sentence counts strokes "then made", which could be added to it."""
    seen = 0
    for one in islice(strokes_questions(31), 150):
        told = one.told("Q")
        for each in one.happened:
            if each.option == "as_it_lies":
                seen += 1
                assert any("played the ball as it lay, " in sentence for sentence in told)
        followed = [each for each in one.happened if each.strokes and each.option != "as_it_lies"]
        provisional = [each for each in followed if each.option == "provisional"]
        assert sum("in all." in sentence for sentence in told) >= len(provisional)  # its own first stroke too
        assert sum("With that ball" in sentence for sentence in told) == len(followed)
    assert seen


def test_no_stroke_is_asked_for_where_it_is_open_which_ball_counts() -> None:
    """After a provisional ball the next stroke depends on the original (Rule 18.3c)."""
    for one in islice(strokes_questions(32), 150):
        for each, part in zip(one.happened, one.result.parts, strict=True):
            if each.incident in ("another_ball_played", "provisional_ball", "wrong_ball_played"):
                assert isinstance(part, Ruling)
                assert part.action is not Action.PLAY_ON or part.stroke is not None
            assert "go_on_under_that_rule" not in part.notes  # that relief may have a price
            if each.facts.get("stroke_was_made") == "yes":
                assert part.stroke is not None


def test_relief_back_on_the_line_in_a_bunker_says_where_the_drop_is() -> None:
    """Rule 19.3: in the bunker for one stroke, outside it for two; what is told leaves no choice between them."""
    found = 0
    for one in islice(strokes_questions(4), 150):
        for act, ruling in zip(one.happened, one.result.parts, strict=True):
            outside = (
                any(each.penalty == 2 for each in ruling.relief) if isinstance(ruling, Ruling) else False
            )
            if act.option == "back_on_the_line" and outside and act.facts.get("area_of_ball") == "bunker":
                assert any(told.endswith("with the drop in the bunker.") for told in one.told("Q")), one.told(
                    "Q"
                )
                found += 1
    assert found


@pytest.mark.parametrize(
    ("acts", "before", "can"),
    [
        # the ball played as it lies in a penalty area was last played from inside it
        ([("ball_in_penalty_area", "as_it_lies", {}), ("embedded_ball", "as_it_lies", {"last_stroke_from_penalty_area": "no"})], 3, False),
        ([("ball_in_penalty_area", "as_it_lies", {}), ("embedded_ball", "as_it_lies", {"last_stroke_from_penalty_area": "yes"})], 3, True),
        # a ball dropped outside it was not
        ([("ball_in_penalty_area", "lateral", {}), ("embedded_ball", "as_it_lies", {"last_stroke_from_penalty_area": "yes"})], 3, False),
        # one stroke takes a ball into a penalty area, and another one out of it
        ([("dangerous_animal", "lateral", {"last_stroke_from_penalty_area": "yes"})], 1, False),
        ([("dangerous_animal", "lateral", {"last_stroke_from_penalty_area": "yes"})], 2, True),
        # the penalty area it was played from is the one it lay in
        ([("ball_in_penalty_area", "as_it_lies", {"penalty_area_colour": "yellow"}), ("embedded_ball", "as_it_lies", {"last_stroke_from_penalty_area": "yes", "first_penalty_area_colour": "red"})], 3, False),
        ([("no_play_zone", None, {"area_of_ball": "teeing_area"})], 2, False),
        # a Local Rule is in force for the whole round, or not
        ([("ball_in_penalty_area", "lateral", {"local_rule_e_1": "yes"}), ("embedded_ball", "free", {"local_rule_e_1": "no"})], 3, False),
        ([("ball_not_found", "stroke_and_distance", {"local_rule_e_5": "yes"}), ("dropped_where_lost", None, {})], 3, False),
        ([("ground_altered", None, {"altered_place": "own_teeing_area"})], 3, False),
        ([("unplayable_ball", "lateral", {"area_of_ball": "putting_green"})], 3, False),
        ([("abnormal_course_condition", "free", {"area_of_ball": "putting_green"})], 3, True),
    ],
)  # fmt: skip
def test_a_story_does_not_contradict_where_the_ball_was(acts, before: int, can: bool) -> None:
    """The act before says where the last stroke was made from; on the tee and on the green nobody pays for relief."""
    happened = tuple(Happened(name, facts, option=option, strokes=1) for name, option, facts in acts)
    assert can_follow(happened, before) is can


def test_a_ball_called_unplayable_is_not_played_as_it_lies() -> None:
    """Rule 19.1: the player has said so; what follows is one of the reliefs."""
    acts = [
        act
        for one in islice(strokes_questions(8), 60)
        for act in one.happened
        if act.incident == "unplayable_ball"
    ]
    assert acts
    assert "as_it_lies" not in {act.option for act in acts}


def test_no_story_leaves_strokes_uncounted_or_goes_where_nobody_goes() -> None:
    """What was played on with is told with its strokes, nobody plays an unplayable ball as it lies, and none leaves the green."""
    for one in islice(strokes_questions(225), 150):
        areas = [act.facts.get("area_of_ball") for act in one.happened]
        assert "teeing_area" not in areas
        assert areas[0] != "putting_green" or areas[-1] in (None, "putting_green")
        for act in one.happened:
            assert act.facts.get("wrong_ball_corrected") != "yes"
            assert act.facts.get("preparing_how") != "stroke"
            assert act.facts.get("altered_place") != "own_teeing_area"
            assert act.facts.get("after_lifting") != "went_elsewhere"
            assert (act.incident, act.option) != ("unplayable_ball", "as_it_lies")
