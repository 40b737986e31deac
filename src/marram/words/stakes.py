"""What the ends of a question cost, in few words: strokes as one number or several, then whatever is no stroke."""

from collections.abc import Iterable, Sequence

from marram.rules.cost import Cost
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.penalty import PenaltyKind, Who
from marram.words.headline import cost_words
from marram.words.messages import listed, say
from marram.words.penalties import count_words, strokes_words


def costs_in_short(costs: Iterable[Cost], form: FormOfPlay | None) -> str:
    """Return what several ends come to, least first: ``no penalty, or one or two penalty strokes if relief is taken``.

    Args:
        costs: what each end costs; no end gives no words.
        form: how general penalties are resolved; both ways are said when unknown.
    """
    every = tuple(costs)
    certain = _numbers(certain_strokes(one) for one in every)
    chosen = [one for one in _numbers(chosen_strokes(each) for each in every) if one not in certain]
    parts = [strokes_words(0)] if 0 in certain else []
    if any(certain):
        parts.append(_strokes([one for one in certain if one]))
    if chosen:
        parts.append(say("TERMS", "cost.if_taken").format(strokes=_strokes(chosen)))
    others = [one for one in every if not certain_strokes(one) and not chosen_strokes(one)]
    parts += [cost_words(one, form) for one in sorted(others, key=lambda one: one.weight)]
    return listed(tuple(dict.fromkeys(one.lower() for one in parts)))


def certain_strokes(cost: Cost) -> tuple[int, ...]:
    """Return the numbers of strokes that the player gets in any case; empty where that is not all."""
    if chosen_strokes(cost) or any(
        one.kind is not PenaltyKind.STROKES or one.who is not Who.PLAYER for one in cost.penalties
    ):
        return ()
    charged = sum(one.strokes for one in cost.penalties)
    return tuple(charged + one for one in cost.relief or (0,))


def chosen_strokes(cost: Cost) -> tuple[int, ...]:
    """Return the numbers of strokes of relief that is up to the player."""
    return () if cost.must else cost.relief


def _numbers(found: Iterable[tuple[int, ...]]) -> list[int]:
    return sorted({one for each in found for one in each})


def _strokes(numbers: Sequence[int]) -> str:
    """Return ``one, two or three penalty strokes``."""
    if len(numbers) == 1:
        return strokes_words(numbers[0])
    return say("TERMS", "strokes.n").format(count=listed([count_words(one) for one in numbers]))


__all__ = ["certain_strokes", "chosen_strokes", "costs_in_short"]
