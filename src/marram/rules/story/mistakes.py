"""Mistakes that void strokes until they are corrected: what is done with that ball costs nothing (6.3c, 14.5c, 14.7b)."""

from collections.abc import Sequence

from marram.rules.engine.case import Case
from marram.rules.facts.several import EarlierMistake, earlier_mistake, with_ball_corrected
from marram.rules.penalty import Penalty
from marram.rules.ruling import Action, Ruling
from marram.rules.story.deeds import Deed, only_strokes
from marram.rules.story.standing import VOID_UNTIL_CORRECTED, ask, leaves_mistake


def penalties_that_count(case: Case, deeds: Sequence[Deed]) -> list[tuple[Penalty, ...]]:
    """Return the penalties of each incident, less those that came solely from playing a ball that does not count."""
    parts = [deed.ruling for deed in deeds]
    counting = [parts[0].penalties]
    mistake = parts[0] if leaves_mistake(parts[0]) else None
    for gap, part in enumerate(parts[1:]):
        penalties = part.penalties
        if mistake is not None and tells_the_correction(mistake, part):
            penalties = _beyond(mistake.penalties, penalties)
            mistake = None
        elif mistake is not None and any(only_strokes(one) for one in penalties):
            had_been = had_been_corrected(case, gap, parts[: gap + 1])
            if had_been is EarlierMistake.CORRECTED:
                mistake = None
            elif had_been is EarlierMistake.SAME_BALL:
                penalties = tuple(one for one in penalties if not only_strokes(one))
        counting.append(penalties)
        mistake = part if mistake is None and leaves_mistake(part) else mistake
        if corrects_what_was_put_down(part):
            counting[: gap + 1] = [
                _void_by_correction(case, place, counted) for place, counted in enumerate(counting[: gap + 1])
            ]
    return counting


def tells_the_correction(mistake: Ruling, part: Ruling) -> bool:
    """Whether a later act tells the same mistake again, corrected: one breach, and play goes on with the right ball."""
    if leaves_mistake(part) or part.action not in (Action.PLAY_ON, Action.CORRECT_MISTAKE):
        return False
    return any(
        one.citation == other.citation and only_strokes(other)
        for one in mistake.penalties
        for other in part.penalties
    )


def _beyond(counted: tuple[Penalty, ...], again: tuple[Penalty, ...]) -> tuple[Penalty, ...]:
    """Return the penalties told again that are not counted yet."""
    left = list(again)
    for one in counted:
        if one in left:
            left.remove(one)
    return tuple(left)


def had_been_corrected(case: Case, gap: int, earlier: Sequence[Ruling]) -> EarlierMistake:
    """Read whether the mistake had been corrected, under the provision that demands it."""
    demanding = [
        rule
        for part in earlier
        for rule in VOID_UNTIL_CORRECTED
        if leaves_mistake(part) and any(citation.startswith(rule) for citation in part.citations)
    ]
    return ask(case, demanding[-1], earlier_mistake[gap])


def own_ball_waits(mistake: Ruling) -> bool:
    """Whether the right ball still lies where it was: a wrong ball was played (6.3c(1)), with no stroke and distance due."""
    citations = mistake.citations
    return any(one.startswith("6.3c(1)") for one in citations) and not any(
        one.startswith(("18.1", "18.2")) for one in citations
    )


def corrects_what_was_put_down(part: Ruling) -> bool:
    """Whether a ball wrongly put down is lifted to be put right (Rule 14.5c)."""
    return "14.5c" in part.citations


def _void_by_correction(case: Case, place: int, penalties: tuple[Penalty, ...]) -> tuple[Penalty, ...]:
    """Rule 14.5c: strokes solely from acts with a ball wrongly put down do not count once that is corrected."""
    if any(only_strokes(one) for one in penalties) and ask(case, "14.5c", with_ball_corrected[place]):
        return tuple(one for one in penalties if not only_strokes(one))
    return penalties
