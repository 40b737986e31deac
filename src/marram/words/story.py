"""A story in words: the total in the headline, which stroke comes next, and each ball by its name."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.several import StoryBall
from marram.rules.ruling import Action, Ruling
from marram.rules.story.provisional import in_play_at_its_cost
from marram.rules.story.story import StoryResult
from marram.words.messages import listed, say, term
from marram.words.sheet import Sheet, sheet

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
    first, *more = result.parts
    alone = not more and isinstance(first, Ruling) and in_play_at_its_cost(first) == result.combined
    # else no one finding speaks for all
    words = sheet(result.combined, form_of_play=form, given=given, with_finding=alone)
    if not isinstance(result.combined, Ruling):
        return words
    lines = [words.headline]
    if result.count is not None and result.count.next_stroke is not None:
        lines.append(next_stroke_words(result.count.next_stroke))
    if result.count is not None and result.count.stroke_missing is not None:
        lines.append(stroke_missing_words(result.count.stroke_missing))
    if result.count is not None and result.count.gaps_untold:
        lines.append(strokes_untold_words(*result.count.gaps_untold))
    if not alone:
        lines += _on_next_hole(result)
    others = _steps_of_other_balls(result)
    steps, further = (*words.steps, *others), (*words.further, *others)
    return replace(words, headline=" ".join(lines), steps=steps, further=further)


def ball_words(ball: StoryBall | str | None) -> str:
    """Return the name of a ball of a story; empty for the one in play, or where it was not told."""
    named = StoryBall(ball) if isinstance(ball, str) else ball
    return "" if named in (None, StoryBall.IN_PLAY) else term(named)


def next_stroke_words(count: int) -> str:
    """Return which stroke comes next as a sentence."""
    return say("TERMS", "situation.next").format(ordinal=ordinal_words(count))


def ordinal_words(count: int) -> str:
    """Return which stroke of the hole one is: ``"fourth"``."""
    key = f"ordinal.{count}" if count <= LAST_ORDINAL else "ordinal.n"
    return say("TERMS", key).format(count=count)


def stroke_missing_words(act: int) -> str:
    """Return why no next stroke is told, as a sentence: act ``act``, from 1, is about a ball that had been played."""
    return say("TERMS", "situation.stroke_missing").format(number=act)


def strokes_untold_words(*acts: int) -> str:
    """Return why no next stroke is told, as a sentence: whether the ball was played after each of ``acts``, from 1, is open."""
    if len(acts) == 1:
        return say("TERMS", "situation.strokes_untold").format(number=acts[0], following=acts[0] + 1)
    gaps = [say("TERMS", "situation.gap").format(number=one, following=one + 1) for one in acts]
    return say("TERMS", "situation.gaps_untold").format(gaps=listed(gaps, "and"))


def _on_next_hole(result: StoryResult) -> list[str]:
    """Return which penalties count on the hole after the one just played (Rule 5.5b)."""
    return [say("TERMS", "situation.on_next_hole").format(number=number) for number in result.on_next_hole]


def _steps_of_other_balls(result: StoryResult) -> list[str]:
    return [
        say("TERMS", "situation.other_ball").format(
            ball=ball_words(one.ball), number=one.act, what=term(one.action)
        )
        for one in result.other_balls
        if one.action not in _NOTHING_TO_SAY
    ]
