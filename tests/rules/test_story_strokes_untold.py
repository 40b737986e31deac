"""Whether a ball was played between two reliefs is asked, or told: never taken for granted.

Rules of Golf 2019 and 2023, Rules 14.4 and 14.5: a ball dropped is in play, and may lie where there is relief again before or
after it was played (Rule 16.1b and 19.2; Clarification 19.2/1 lets relief be taken twice in a row).
"""

import pytest

from marram.rules.result import NeedFacts
from marram.rules.story.story import Happened, rule_story
from marram.words.story import story_sheet

UNPLAYABLE = {
    "area_of_ball": "general_area",
    "spot_of_ball_known": "yes",
    "last_stroke_from_penalty_area": "no",
}


def twice(strokes: int | None) -> tuple[Happened, Happened]:
    return (
        Happened("unplayable_ball", UNPLAYABLE, option="lateral", strokes=strokes),
        Happened("unplayable_ball", UNPLAYABLE, option="lateral"),
    )


@pytest.mark.parametrize("edition", [2019, 2023])
def test_strokes_between_two_reliefs_are_not_assumed(edition: int) -> None:
    """After two reliefs, none told to follow a stroke, the next stroke is open, and the sheet says between which acts."""
    result = rule_story(
        twice(None), strokes_before=2, edition=edition, form_of_play="stroke_play", local_rules=[]
    )
    assert not isinstance(result.combined, NeedFacts)
    assert result.count is not None
    assert (result.count.total, result.count.made, result.next_stroke) == (2, None, None)
    assert result.count.strokes_untold == 1
    sheet = story_sheet(result, form_of_play="stroke_play")
    assert sheet is not None
    assert "between incidents 1 and 2" in sheet.headline


@pytest.mark.parametrize(("strokes", "comes"), [(0, 5), (1, 6), (2, 7)])
def test_strokes_between_two_reliefs_count_as_told(strokes: int, comes: int) -> None:
    """Two strokes before, two of relief, and as many as were told between: the next one follows."""
    result = rule_story(
        twice(strokes), strokes_before=2, edition=2023, form_of_play="stroke_play", local_rules=[]
    )
    assert result.next_stroke == comes
    assert result.count is not None
    assert result.count.strokes_untold is None


def test_relief_not_taken_yet_leaves_nothing_open() -> None:
    """Where no ball was put in play after the first relief, none can have been played."""
    first, second = twice(None)
    waiting = Happened(first.incident, first.facts, option="nothing_yet")
    result = rule_story(
        [waiting, second], strokes_before=2, edition=2023, form_of_play="stroke_play", local_rules=[]
    )
    assert result.count is not None
    assert result.count.strokes_untold is None
    assert result.next_stroke == 4


@pytest.mark.parametrize(("strokes", "comes", "untold"), [(None, None, 1), (0, 4, None), (1, 5, None)])
def test_a_ball_put_back_may_have_been_played_before_the_relief(
    strokes: int | None, comes: int | None, untold: int | None
) -> None:
    """One stroke before, one for a marker moved, one of relief: whether the ball replaced was played is not taken for granted."""
    moved = {"who_moved_marker": "player", "movement_accidental": "no", "marker_move_allowed": "no"}
    acts = (
        Happened("ball_marker_moved", moved, strokes=strokes),
        Happened("unplayable_ball", UNPLAYABLE, option="lateral"),
    )
    result = rule_story(acts, strokes_before=1, edition=2023, form_of_play="stroke_play", local_rules=[])
    assert result.count is not None
    assert (result.count.total, result.next_stroke, result.count.strokes_untold) == (2, comes, untold)


def test_two_gaps_are_told_together() -> None:
    """Three reliefs in a row leave two gaps open, both told in one sentence; told both, the next stroke follows."""
    one, last = twice(None)
    result = rule_story(
        [one, one, last], strokes_before=1, edition=2023, form_of_play="stroke_play", local_rules=[]
    )
    assert result.count is not None
    assert (result.count.strokes_untold, result.count.gaps_untold) == (1, (1, 2))
    sheet = story_sheet(result, form_of_play="stroke_play")
    assert sheet is not None
    assert "1 and 2 and between incidents 2 and 3" in sheet.headline
    played, _ = twice(1)
    whole = rule_story(
        [played, played, last], strokes_before=1, edition=2023, form_of_play="stroke_play", local_rules=[]
    )
    assert whole.next_stroke == 7  # one before, two played, three for the reliefs


def test_of_two_gaps_after_one_relief_the_first_is_asked() -> None:
    """Between a relief and a ball moved something that needs no ball happened: the strokes may lie before or after it."""
    first, _ = twice(None)
    advice = Happened(
        "advice_exchanged",
        {
            "during_round": "yes",
            "advice_deed": "asked",
            "was_advice": "yes",
            "advice_to_or_from": "player_on_course",
        },
    )
    moved = Happened(
        "ball_moved_by_player",
        {
            "cause_known": "yes",
            "movement_accidental": "yes",
            "moved_while": "something_else",
            "area_of_ball": "general_area",
        },
    )
    between = {"intervening_event_1": "yes", "intervening_event_2": "yes"}
    result = rule_story(
        [first, advice, moved],
        between,
        strokes_before=1,
        edition=2023,
        form_of_play="stroke_play",
        local_rules=[],
    )
    assert result.count is not None
    assert result.count.gaps_untold == (1,)
