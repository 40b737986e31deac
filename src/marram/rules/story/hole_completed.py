"""What is told after the hole was completed: before it, after it, or on a later hole (Rule 6.5).

A player who has holed out, whose next stroke is conceded, or whose hole is decided has completed the hole. What is
then done with that ball is no play of the hole, and costs nothing there. A breach that needs no ball, such as asking for advice, counts on the hole to come.
"""

from collections.abc import Sequence
from dataclasses import replace

from marram.rules.engine.case import Case
from marram.rules.facts.several import (
    AfterHole,
    StoryBall,
    about_ball,
    after_hole,
    option_taken,
)
from marram.rules.ruling import Action, Stroke
from marram.rules.story.breaches import Told
from marram.rules.story.card_returned import card_is_in, told_late, with_card_in
from marram.rules.story.deeds import NOTHING_DONE, Deed
from marram.rules.story.notes_in_story import ON_NEXT_HOLE, begins_next_hole
from marram.rules.story.provisional import PROVISIONAL_BALLS
from marram.rules.story.standing import ask, leaves_mistake

_SAYS_THE_HOLE_IS_OVER = frozenset({"concession", "hole_completed", "hole_or_match_result"})
_OF_THE_COMPLETED_HOLE = frozenset(
    {
        "another_ball_played",
        "ball_after_provisional",
        "ball_against_flagstick",
        "ball_in_hole",
        "ball_overhung_hole",
        "balls_found_exchanged",
        "did_not_hole_out",
        "mistake_not_corrected",
        "one_of_two_balls_picked_up",
        "played_on_after_hole",
        "provisional_ball",
        "provisional_ball_holed",
        "provisional_ball_lifted",
        "second_ball_after_wrong_place",
        "two_balls",
    }
    | _SAYS_THE_HOLE_IS_OVER
)
"""Incidents that speak of the end of a hole themselves, or of which of two balls ended it."""
OF_NEXT_HOLE = "completed_hole_keeps_result"
"""The note of a ruling that a breach between two holes leaves the completed one as it was."""
_SHOWS_PLAY_RESUMED = frozenset({"played_after_suspension", "resumed_off_time"})
_WITH_A_BALL = (
    Action.REPLACE,
    Action.TAKE_RELIEF,
    Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF,
    Action.DROP,
    Action.DROP_AGAIN,
    Action.PLACE,
    Action.REPLAY,
    Action.LIFT,
    Action.GO_ON_WITH_RELIEF,
)


def completed_by(deed: Deed) -> bool:
    """Whether an act completes the hole for the player, or tells that it was completed, without a loss of the hole."""
    action = deed.ruling.action
    if action is Action.HOLED:
        return not deed.ruling.relief
    return action is Action.HOLE_OVER and deed.incident in _SAYS_THE_HOLE_IS_OVER


def about_a_ball_in_play(deed: Deed) -> bool:
    """Whether an act is about a ball in play: a stroke, relief, a ball to be put back, a breach with that ball."""
    if deed is NOTHING_DONE or not deed.incident or deed.incident in _OF_THE_COMPLETED_HOLE:
        return False
    ruling = deed.ruling
    stroke = ruling.stroke is not None or bool(ruling.relief)
    return stroke or ruling.action in _WITH_A_BALL or deed.solely_from_a_ball or deed.follows_a_stroke


def told_after_hole(deeds: Sequence[Deed], told: Told) -> list[int]:
    """Return the acts, from 0, told after an act that completed the hole, where it matters when they happened.

    They are about a ball in play, or a breach that can also happen between two holes.
    """
    found: list[int] = []
    completed = False
    for place, deed in enumerate(deeds):
        about = told.get(about_ball[place])
        if about is StoryBall.OTHER_PLAYERS:
            continue
        if completed and (about_a_ball_in_play(deed) or _can_be_between_holes(deed)):
            found.append(place)
        if completed_by(deed) and about not in PROVISIONAL_BALLS:
            completed = True
    return found


def without_what_came_after(case: Case, deeds: Sequence[Deed], told: Told) -> list[Deed]:
    """Return the acts, less what was done with the ball after the hole was completed.

    What happened before, and is only told afterwards, keeps its penalties, and a mistake that must be corrected;
    with the ball nothing is left to do.
    """
    left = with_card_in(deeds, told)
    for place in told_after_hole(left, told):
        when = ask(case, "6.5", after_hole[place - 1])
        if when is AfterHole.AFTER and _can_be_between_holes(deeds[place]):
            left[place] = replace(deeds[place], ruling=deeds[place].ruling.note(ON_NEXT_HOLE, OF_NEXT_HOLE))
        elif when is AfterHole.AFTER:
            left[place] = NOTHING_DONE
        elif when is AfterHole.BEFORE and not leaves_mistake(deeds[place].ruling):
            left[place] = told_late(deeds[place], told.get(option_taken[place]))
        else:
            break  # a hole begun anew, or to be corrected
    return left


def _can_be_between_holes(deed: Deed) -> bool:
    return deed is not NOTHING_DONE and deed.can_be_between_holes and not begins_next_hole(deed)


def between_holes(deeds: Sequence[Deed], told: Told) -> list[int]:
    """Return the acts, from 0, whose penalty counts on the hole to come: breaches between two holes."""
    after = [place for place in told_after_hole(deeds, told) if _can_be_between_holes(deeds[place])]
    said = [place for place in after if told.get(after_hole[place - 1]) is AfterHole.AFTER]
    noted = [place for place, deed in enumerate(deeds) if deed.ruling.penalties and begins_next_hole(deed)]
    return sorted({*said, *noted})


def of_the_last_hole(deeds: Sequence[Deed], told: Told) -> list[Deed]:
    """Return the acts, nothing done in those of the holes before: what is open with the ball is of the last hole."""
    begun = [place for place in told_after_hole(deeds, told) if _on_later_hole(told, place)]
    start = begun[-1] if begun else 0
    return [NOTHING_DONE if place < start else deed for place, deed in enumerate(deeds)]


def _on_later_hole(told: Told, place: int) -> bool:
    return told.get(after_hole[place - 1]) is AfterHole.LATER_HOLE


def strokes_count(deeds: Sequence[Deed], told: Told) -> tuple[list[Deed], bool]:
    """Return the acts whose strokes count on the hole, and whether all of them are acts of one hole."""
    left = list(deeds)
    if card_is_in(deeds) or any(place for place in between_holes(deeds, told)):
        return left, False
    for place in told_after_hole(deeds, told):
        if told.get(after_hole[place - 1]) is AfterHole.AFTER:
            left[place] = NOTHING_DONE
        elif _on_later_hole(told, place):
            return left, False
    return left, True


def made_while_stopped(deeds: Sequence[Deed]) -> list[int]:
    """Return the acts, from 0, that are strokes while play, as the acts before tell, was stopped."""
    found: list[int] = []
    stopped = False
    for place, deed in enumerate(deeds):
        if deed.incident in _SHOWS_PLAY_RESUMED or deed.is_replacing:
            stopped = False
        elif stopped and (deed.ruling.stroke is Stroke.COUNTS or deed.plays_the_ball):
            found.append(place)
            stopped = False
        if deed.ruling.action is Action.STOP_PLAY:
            stopped = True
    return found
