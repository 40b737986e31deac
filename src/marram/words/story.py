"""A story in words: the total in the headline, which stroke comes next, and each ball by its name."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.several import StoryBall
from marram.rules.ruling import Action, Penalty, PenaltyKind, Ruling, Who
from marram.rules.story.story import StoryResult
from marram.rules.story.strokes import StrokeCount
from marram.words.messages import say, term
from marram.words.penalties import strokes_words
from marram.words.sheet import Sheet, headline, sheet

LAST_ORDINAL = 12
"""Up to which stroke its number is said in words."""

_NOTHING_TO_SAY = (None, Action.PLAY_ON, Action.HOLE_OVER)


def story_sheet(
    result: StoryResult,
    *,
    form_of_play: FormOfPlay | str | None = None,
    given: Mapping[str, Any] | None = None,
) -> Sheet | None:
    """Return all acts of a story together in words; ``None`` while one of them is open.

    Args:
        result: what :func:`marram.rule_story` returned.
        form_of_play: how general penalties are resolved; both ways are said when unknown.
        given: the facts between the acts, as given.
    """
    if result.combined is None:
        return None
    form = FormOfPlay(form_of_play) if isinstance(form_of_play, str) else form_of_play
    words = sheet(result.combined, form_of_play=form, given=given)
    if not isinstance(result.combined, Ruling):
        return words
    lines = [headline(_summed(result.combined, form), form)]
    if result.count is not None:
        lines += _count_sentences(result.count)
    steps = (*words.steps, *_steps_of_other_balls(result))
    return replace(words, headline=" ".join(lines), steps=steps)


def ball_words(ball: StoryBall | str | None) -> str:
    """Return the name of a ball of a story; empty for the one in play, or where it was not told."""
    named = StoryBall(ball) if isinstance(ball, str) else ball
    return "" if named in (None, StoryBall.IN_PLAY) else term(named)


def next_stroke_words(count: int) -> str:
    """Return which stroke comes next as a sentence."""
    key = f"ordinal.{count}" if count <= LAST_ORDINAL else "ordinal.n"
    return say("TERMS", "situation.next").format(ordinal=say("TERMS", key).format(count=count))


def _count_sentences(count: StrokeCount) -> list[str]:
    """Return what the total comes to with relief that must be taken, and which stroke comes next."""
    lines = []
    if count.penalty_strokes and count.relief_to_come:
        total = strokes_words(count.penalty_strokes + count.relief_to_come)
        lines.append(say("TERMS", "situation.with_relief").format(strokes=total))
    if count.next_stroke is not None:
        lines.append(next_stroke_words(count.next_stroke))
    return lines


def _summed(ruling: Ruling, form: FormOfPlay | None) -> Ruling:
    """Return a ruling with the strokes of each person as one penalty, where strokes are what they come to."""
    general_in_strokes = form not in (None, FormOfPlay.MATCH_PLAY)
    by_person: dict[Who, list[Penalty]] = {}
    for one in ruling.penalties:
        by_person.setdefault(one.who, []).append(one)
    summed: list[Penalty] = []
    for own in by_person.values():
        adds_up = all(
            one.kind is PenaltyKind.STROKES or (one.kind is PenaltyKind.GENERAL and general_in_strokes)
            for one in own
        )
        if len(own) > 1 and adds_up:
            total = sum(one.strokes for one in own)
            own = [replace(own[0], kind=PenaltyKind.STROKES, strokes=total)]  # noqa: PLW2901 - one for all of them
        summed += own
    return replace(ruling, penalties=tuple(summed))


def _steps_of_other_balls(result: StoryResult) -> list[str]:
    return [
        say("TERMS", "situation.other_ball").format(
            ball=ball_words(one.ball), number=one.act, what=term(one.action)
        )
        for one in result.other_balls
        if one.action not in _NOTHING_TO_SAY
    ]
