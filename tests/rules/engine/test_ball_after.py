"""After several incidents it is told what to do with the ball, which ball counts, and what can be corrected.

Sources: Rules of Golf 2019 and 2023, Rules 14.2 (a ball to be replaced), 14.5a (a mistake can be corrected
until the ball is played), 6.3c(1), 6.1b(2) and 14.7b(1) (until the mistake is corrected neither strokes nor
penalty strokes solely from playing that ball count), 6.5 (a hole is completed by holing out).
"""

from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import marram
from marram.rules.book.relief_options import stroke_and_distance
from marram.rules.engine.request import fact_named
from marram.rules.penalty import Who, disqualified, general, strokes
from marram.rules.result import NeedFacts
from marram.rules.ruling import (
    Action,
    Deadline,
    HandOver,
    Ruling,
    Stroke,
    disqualification,
    general_penalty,
    no_penalty,
    penalty,
)

DAY = date(2024, 5, 1)
MOVED = penalty(1, "9.4b").replace_ball().correct("replace", Deadline.BEFORE_STROKE, general("14.7a"))
WRONG_PLACE = general_penalty("14.7a").play_as_it_lies().stroke_counts()
WRONG_BALL = (
    general_penalty("6.3c(1)")
    .next(Action.CORRECT_MISTAKE)
    .stroke_does_not_count()
    .correct("right_ball", Deadline.BEFORE_NEXT_HOLE, disqualified("6.3c(1)"))
)
FREE = no_penalty("8.1b").play_as_it_lies()
HOLED = no_penalty("6.5").next(Action.HOLE_OVER)
CORRECTED = general_penalty("6.3c(1)").next(Action.PLAY_ON).stroke_does_not_count()
SERIOUS = (
    general_penalty("14.7a")
    .under("14.7b(1)")
    .next(Action.CORRECT_MISTAKE)
    .stroke_does_not_count()
    .correct("right_place", Deadline.BEFORE_NEXT_HOLE, disqualified("14.7b(1)"))
)
OFFERED = no_penalty("16.1").with_options(stroke_and_distance("18.1"))
PUT_RIGHT = (
    no_penalty("14.5b(2)")
    .under("14.5c")
    .next(Action.CORRECT_MISTAKE)
    .correct("put_right", Deadline.BEFORE_STROKE, general("14.7a"))
)
OUT = disqualification("1.2a")


def together(*parts: Ruling, **facts: str) -> Ruling:
    result = marram.combine(list(parts), facts, played_on=DAY)
    assert isinstance(result, Ruling), result
    return result


def test_what_was_required_stands_until_it_is_done() -> None:
    """A ball to be replaced has to be replaced, although something else happened before it was."""
    assert together(MOVED, FREE, ball_settled_1="no").action is Action.REPLACE
    done = together(MOVED, FREE, ball_settled_1="yes")
    assert (done.action, done.corrections) == (Action.PLAY_AS_IT_LIES, ())


def test_whether_it_was_done_is_asked() -> None:
    """Nobody knows but the people there; it is never assumed."""
    asked = marram.combine([MOVED, FREE], played_on=DAY)
    assert isinstance(asked, NeedFacts)
    assert asked.fact == "ball_settled_1"


def test_a_stroke_at_the_ball_ends_what_was_required() -> None:
    """Played from a wrong place, the ball is no longer to be replaced; nothing is asked about that."""
    result = together(MOVED, WRONG_PLACE, moved_ball_not_replaced_1="yes")
    assert (result.action, result.corrections) == (Action.PLAY_AS_IT_LIES, ())


def test_a_stroke_at_a_wrong_ball_leaves_the_ball_to_be_replaced() -> None:
    """The moved ball is still the ball in play: it goes back, and the wrong ball must be corrected in time."""
    result = together(MOVED, WRONG_BALL, intervening_event_1="yes", ball_settled_1="no")
    assert result.action is Action.CORRECT_MISTAKE
    assert [one.what for one in result.corrections] == ["replace", "right_ball"]


@pytest.mark.parametrize(
    ("had_been", "strokes", "action", "deadlines"),
    [
        ("same_ball", 2, Action.CORRECT_MISTAKE, [Deadline.BEFORE_NEXT_HOLE]),
        ("corrected", 4, Action.PLAY_AS_IT_LIES, []),
        ("something_else", 4, Action.CORRECT_MISTAKE, [Deadline.BEFORE_NEXT_HOLE]),
    ],
)
def test_until_a_wrong_ball_is_corrected_playing_it_costs_nothing_more(
    had_been: str, strokes: int, action: Action, deadlines: list[Deadline]
) -> None:
    """A wrong place with a wrong ball is void; with the right ball it counts, and the correction is done."""
    result = together(WRONG_BALL, WRONG_PLACE, earlier_mistake_1=had_been, intervening_event_1="yes")
    assert sum(one.strokes for one in result.penalties) == strokes
    assert result.action is action
    assert [one.until for one in result.corrections] == deadlines


def test_holing_out_with_a_wrong_ball_completes_nothing() -> None:
    """The mistake still has to be corrected before the next hole."""
    result = together(WRONG_BALL, HOLED, earlier_mistake_1="same_ball")
    assert (result.action, result.stroke) == (Action.CORRECT_MISTAKE, Stroke.DOES_NOT_COUNT)


def test_a_completed_hole_stays_completed() -> None:
    """What is found out after the hole leaves no ball to be played."""
    assert together(HOLED, FREE).action is Action.HOLE_OVER
    assert together(MOVED, HOLED, ball_settled_1="yes").corrections == ()


def test_play_that_must_stop_stays_stopped() -> None:
    """A ball to be replaced does not lead a player back out into a storm (Rule 5.7b)."""
    stopped = no_penalty("5.7b").next(Action.STOP_PLAY).caution("seek_shelter")
    result = together(stopped, MOVED, ball_settled_1="no")
    assert result.action is Action.STOP_PLAY
    assert "seek_shelter" in result.cautions
    assert [one.what for one in result.corrections] == ["replace"]


def test_the_ball_in_play_is_not_forgotten() -> None:
    """Once another ball is in play, it stays so, with the word on the original."""
    other = penalty(1, "18.1").next(Action.PLAY_OTHER_BALL).note("original_out_of_play")
    result = together(other, FREE)
    assert result.action is Action.PLAY_OTHER_BALL
    assert "original_out_of_play" in result.notes
    moved = together(other, MOVED, intervening_event_1="yes")
    assert moved.action is Action.REPLACE
    assert "original_out_of_play" in moved.notes


def test_a_mistake_left_while_play_is_stopped_is_still_asked_about() -> None:
    """A wrong ball played after play had to stop, and then something else: whether it was corrected is the question."""
    stopped = no_penalty("5.7b").next(Action.STOP_PLAY)
    asked = marram.combine([stopped, WRONG_BALL, MOVED], {}, played_on=DAY)
    assert isinstance(asked, NeedFacts)
    answered = together(stopped, WRONG_BALL, MOVED, earlier_mistake_2="same_ball", ball_settled_1="no")
    assert isinstance(answered, Ruling)


STOPPED = no_penalty("5.7b").next(Action.STOP_PLAY)
POOL = (STOPPED, MOVED, WRONG_PLACE, WRONG_BALL, FREE, HOLED, CORRECTED, SERIOUS, OFFERED, PUT_RIGHT, OUT)


@settings(max_examples=80, deadline=None)
@given(st.lists(st.sampled_from(POOL), min_size=1, max_size=3), st.data())
def test_every_sequence_comes_to_a_ruling(parts: list[Ruling], data: st.DataObject) -> None:
    """Whatever happened in whatever order, and however each question is answered, one ruling stands at the end.

    Only where a stroke was made though play had not been resumed is it another incident (Rule 5.7b).
    """
    facts: dict[str, str] = {}
    result = marram.combine(parts, facts, played_on=DAY)
    while isinstance(result, NeedFacts):
        assert result.fact not in facts, "asked twice"
        fact = fact_named(result.fact)
        answers = [answer for stake in result.stakes for answer in stake.answers]
        facts[result.fact] = fact.token(data.draw(st.sampled_from(answers), label=result.fact))
        result = marram.combine(parts, facts, played_on=DAY)
    if isinstance(result, HandOver):
        assert result.incident == "played_after_suspension"
        assert "no" in [answer for name, answer in facts.items() if name.startswith("play_resumed")]
        return
    assert isinstance(result, Ruling)
    assert result.action is not None
    relief = {strokes(one.penalty, one.citation) for part in parts for one in part.relief}
    assert set(result.penalties) <= {one for part in parts for one in part.penalties} | relief
    assert set(result.corrections) <= {one for part in parts for one in part.corrections}


def test_somebody_else_out_does_not_end_the_player_s_hole() -> None:
    """Only a disqualification of the player leaves nothing to be done with the ball."""
    other = disqualification("1.2a", Who.OTHER_PLAYER)
    assert together(other, MOVED).action is Action.REPLACE
    own = together(disqualification("1.2a"), MOVED)
    assert (own.action, own.corrections) == (Action.HOLE_OVER, ())
