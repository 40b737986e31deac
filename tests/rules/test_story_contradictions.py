"""Acts of one story that cannot both be true are refused, with every fault and what to give instead."""

import pytest

import marram
from marram.errors import InputError
from marram.rules.result import NeedFacts
from marram.rules.ruling import HandOver
from marram.rules.story.story import Happened, rule_story

LOST = Happened(
    "ball_not_found",
    {"whereabouts": "not_known", "provisional_state": "not_played", "last_stroke_from_penalty_area": "no"},
    "nothing_yet",
)
HOLED = Happened("ball_in_hole", {"ball_in_hole": "all_below"})
ADVICE = {"advice_deed": "asked"}


def faults(*acts: Happened, form: str | None = "stroke_play", sides: str | None = None) -> tuple[str, ...]:
    with pytest.raises(InputError) as refused:
        rule_story(acts, edition=2023, form_of_play=form, sides=sides, local_rules=[])
    return refused.value.faults


def test_a_lost_ball_without_another_is_not_played() -> None:
    """Nothing put into play for a lost ball, and then a ball in play: refused, naming the option and both acts."""
    (fault,) = faults(LOST, Happened("hole_completed", {"how_hole_ended": "holed"}))
    assert "option_taken_1" in fault
    assert "hole_completed" in fault


def test_a_stroke_that_counts_is_a_stroke() -> None:
    """No strokes told of an act that is itself a stroke that counts: refused, with what to give."""
    (fault,) = faults(Happened("ball_in_hole", {"ball_in_hole": "all_below"}, strokes=0))
    assert "1 or more" in fault


def test_one_story_has_one_form_of_play() -> None:
    """Two acts under two forms of play are refused, also where the story has one and an act another."""
    match, stroke = ({"form_of_play": form} for form in ("match_play", "stroke_play"))
    (fault,) = faults(Happened("advice_exchanged", match), Happened("advice_exchanged", stroke), form=None)
    assert "match_play" in fault
    assert "stroke_play" in fault
    (fault,) = faults(Happened("advice_exchanged", match))
    assert "the story" in fault


def test_one_story_has_one_kind_of_sides_and_one_set_of_local_rules() -> None:
    """Sides and Local Rules that differ from act to act are refused together with every other fault."""
    found = faults(
        Happened("advice_exchanged", {"sides": "four_ball", "local_rule_e_5": "yes"}),
        Happened("advice_exchanged", {"sides": "foursomes", "local_rule_e_5": "no", "nonsense": "yes"}),
    )
    assert len(found) == 3
    assert [
        word for word in ("sides", "local_rule_e_5", "nonsense") if not any(word in one for one in found)
    ] == []


def test_a_misspelt_incident_and_a_bad_answer_are_told_together() -> None:
    """A name that no incident has hides no fault of the answers given with it."""
    with pytest.raises(InputError) as refused:
        marram.rule("ball_lifte", {"area_of_ball": "gren", "nonsense": "yes"}, edition=2023)
    told = " ".join(refused.value.faults)
    assert len(refused.value.faults) == 3
    assert all(word in told for word in ("ball_lifte", "gren", "nonsense"))


def test_strokes_while_play_is_stopped_are_another_incident() -> None:
    """A stroke after play stopped, play not resumed, is handed over to playing on after a suspension (Rule 5.7b)."""
    stopped = Happened("stopped_play", {"stop_reason": "suspended"})
    asked = rule_story([stopped, HOLED], edition=2023, form_of_play="stroke_play", local_rules=[]).combined
    assert isinstance(asked, NeedFacts)
    assert asked.fact == "play_resumed_1"
    told = {"play_resumed_1": "no"}
    rather = rule_story(
        [stopped, HOLED], told, edition=2023, form_of_play="stroke_play", local_rules=[]
    ).combined
    assert isinstance(rather, HandOver)
    assert rather.incident == "played_after_suspension"


def test_the_next_stroke_is_not_said_across_two_holes() -> None:
    """What is told of a later hole leaves it open which stroke comes next there: only the first hole's were told."""
    dropped = Happened(
        "unplayable_ball",
        {"area_of_ball": "general_area", "spot_of_ball_known": "yes", "last_stroke_from_penalty_area": "no"},
        "lateral",
    )
    ruled = rule_story(
        [HOLED, dropped],
        {"after_hole_1": "later_hole"},
        edition=2023,
        form_of_play="stroke_play",
        local_rules=[],
        strokes_before=3,
    )
    assert ruled.next_stroke is None
    before = rule_story(
        [dropped, HOLED], edition=2023, form_of_play="stroke_play", local_rules=[], strokes_before=3
    )
    assert before.count is not None
    assert before.count.total == 1
