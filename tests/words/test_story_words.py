"""What the headline of a story says: how many strokes, on which hole, what to do with which ball, and what is not known.

Sources: Rules of Golf 2019 and 2023, Rules 3.3b, 5.5b, 10.2a, 18.2b, 18.3c(2) and 20.1c(3).
"""

from datetime import date
from typing import Any

import pytest

from marram.rules.ruling import Ruling
from marram.rules.story.story import Happened, StoryResult, rule_story
from marram.words.sheet import Sheet
from marram.words.story import story_sheet
from tests.published.test_stories import ACTS, STORIES, ruled

DAYS = (date(2021, 6, 1), date(2024, 6, 1))


def act(name: str, option: str | None = None, **more: Any) -> Happened:
    return Happened(ACTS[name]["incident"], ACTS[name]["facts"], option, **more)


def told(*acts: Happened, day: date, **more: Any) -> tuple[StoryResult, Sheet]:
    result = rule_story(acts, {}, played_on=day, form_of_play="stroke_play", local_rules=[], **more)
    assert isinstance(result.combined, Ruling), result
    words = story_sheet(result, form_of_play="stroke_play")
    assert words is not None
    return result, words


@pytest.mark.parametrize("day", DAYS)
def test_a_ball_out_of_bounds_had_been_struck(day: date) -> None:
    """With no stroke told before it, the next stroke is asked for, not numbered; told, it is numbered (18.2b)."""
    advice, out = act("advice_asked"), act("out", "stroke_and_distance")
    result, words = told(advice, out, day=day, strokes_before=0)
    assert result.next_stroke is None
    assert result.count is not None
    assert result.count.stroke_missing == 2
    assert "incident 2 a ball had been played" in words.headline

    result, words = told(act("advice_asked", strokes=1), out, day=day, strokes_before=0)
    assert result.next_stroke == 5
    assert "the fifth" in words.headline

    alone, words = told(act("out"), day=day, strokes_before=0)
    assert alone.next_stroke is None
    assert "incident 1 a ball had been played" in words.headline


@pytest.mark.parametrize("day", DAYS)
def test_a_provisional_ball_in_play_costs_its_stroke_by_itself(day: date) -> None:
    """Told alone, with no option named, it is counted as it is in a longer story (18.3c(2))."""
    result, words = told(act("prov_original_lost"), day=day, strokes_before=1)
    assert result.count is not None
    assert (result.count.penalty_strokes, result.count.total, result.next_stroke) == (1, 1, 4)
    assert words.headline.startswith("The provisional ball is in play: one penalty stroke")


@pytest.mark.parametrize("day", DAYS)
def test_two_balls_played_out_leave_no_next_stroke(day: date) -> None:
    """Which of two balls counts does not tell how often it was played (20.1c(3))."""
    two = Happened(
        "two_balls", {"decided_before_stroke": "yes", "facts_reported": "yes", "chosen_ball": "allowed"}
    )
    result, words = told(two, day=day, strokes_before=1)
    assert result.next_stroke is None
    assert words.headline == "The chosen ball counts."


@pytest.mark.parametrize("day", DAYS)
@pytest.mark.parametrize("first", ["practice_swing_sand", "moved", "red_found"])
def test_nothing_is_played_once_the_card_is_in(first: str, day: date) -> None:
    """Beside a hole score returned too high, the penalty of the round stands, and no ball is left to play (3.3b(3))."""
    card = Happened("hole_score_wrong", {"returned_score": "higher"})
    _, words = told(act(first, "lateral" if first == "red_found" else None), card, day=day)
    said = " ".join((words.headline, *words.steps)).lower()
    assert "as it lies" not in said
    assert "replace" not in said
    assert "put into play" not in said
    assert words.headline.startswith(("One penalty stroke", "Two penalty strokes"))


@pytest.mark.parametrize("day", DAYS)
def test_a_penalty_between_holes_is_said_to_be_on_the_next(day: date) -> None:
    """Practice from a bunker between two holes counts on the one to come, and the strokes before are of that hole (5.5b)."""
    practised = Happened(
        "practised_during_round",
        {"struck": "ball_for_practice", "when_practised": "between_holes", "putt_or_chip_nearby": "no"},
    )
    result, words = told(practised, act("unplayable", "lateral"), day=day, strokes_before=1)
    assert "The penalty of incident 1 counts on the hole after it." in words.headline
    assert result.next_stroke == 5
    result, _ = told(act("unplayable", "lateral"), practised, day=day, strokes_before=1)
    assert result.next_stroke is None


@pytest.mark.parametrize("day", DAYS)
def test_relief_that_was_taken_is_not_called_a_ball_as_it_lies(day: date) -> None:
    """After stroke and distance the ball put into play is played, and no provisional ball is spoken of that nobody told."""
    _, words = told(act("advice_asked"), act("out", "stroke_and_distance"), day=day, strokes_before=1)
    assert "as it lies" not in " ".join((words.headline, *words.steps)).lower()
    assert "play the ball put into play in taking relief" in words.headline
    _, words = told(act("advice_asked"), act("in_bounds"), day=day, strokes_before=1)
    assert "provisional" not in " ".join(words.steps)
    _, words = told(act("provisional"), act("in_bounds"), day=day, strokes_before=1)
    assert "provisional" in " ".join(words.steps)


@pytest.mark.parametrize("day", DAYS)
def test_a_mistake_not_to_be_corrected_is_not_said_of_what_happened_later(day: date) -> None:
    """A stroke from a wrong place, then the ball is moved: it is put back, and nothing says that a mistake must stay.

    Rules of Golf 2019 and 2023, Rules 14.7b(1) and 9.4b: only the stroke from the wrong place is not to be corrected.
    """
    _, words = told(act("wrong_place"), day=day, strokes_before=1)
    assert "must not be corrected" in " ".join(words.steps)
    _, words = told(act("wrong_place"), act("moved"), day=day, strokes_before=1)
    assert "Replace the ball" in words.steps[0]
    assert "must not be corrected" not in " ".join(words.steps)


def in_match(name: str, day: date) -> Sheet:
    """Return the words of one of the published stories of matches."""
    story = next(one for one in STORIES if one["name"] == name)
    result, _ = ruled(story, "2019" if day < date(2023, 1, 1) else "2023")
    words = story_sheet(result, form_of_play=story["form"])
    assert words is not None
    return words


@pytest.mark.parametrize("day", DAYS)
def test_no_partner_plays_on_when_the_side_has_completed_the_hole(day: date) -> None:
    """Rules 23.3 and 23.9a(1): the other partner plays on after a loss of hole, but not on a hole that is done."""
    done = in_match("Four-Ball match: helped a rolling ball's way, holed by the partner", day)
    assert done.headline.endswith("the hole is over.")
    open_ = in_match("Four-Ball match: a foot on the line of play, helping nobody: the partner goes on", day)
    assert "the partner plays on" in open_.headline


@pytest.mark.parametrize("day", DAYS)
def test_a_stroke_conceded_ends_the_hole_in_the_headline(day: date) -> None:
    """Rule 3.2b(1): where nothing costs a stroke the headline still says what comes next, which is nothing."""
    words = in_match("Putting on after a concession helps the partner", day)
    assert words.headline == "No penalty: the hole is over."
