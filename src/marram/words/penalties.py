"""Penalties in words, resolved by the form of play where it is known."""

from collections.abc import Collection, Sequence

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Penalty, PenaltyKind, Who
from marram.words.messages import say, term


def count_words(count: float) -> str:
    """Return a small number in words, any other in figures."""
    key = f"count.{count:g}"
    words = say("TERMS", key)
    return words if words != key else f"{count:g}"


def strokes_words(count: int) -> str:
    """Return ``count`` penalty strokes in words: ``no penalty``, ``one penalty stroke`` and so on."""
    if count < 2:
        return say("TERMS", f"strokes.{count}")
    return say("TERMS", "strokes.n").format(count=count_words(count))


def relief_cost_words(costs: Collection[int]) -> str:
    """Return what relief costs, over all its options: ``without penalty or for one penalty stroke``."""
    parts = [say("TERMS", "relief_cost.0")] if 0 in costs else []
    charged = sorted(cost for cost in costs if cost)
    if charged:
        strokes = say("TERMS", "or").join(count_words(cost) for cost in charged)
        parts.append(say("TERMS", f"relief_cost.{1 if charged == [1] else 'n'}").format(strokes=strokes))
    return say("TERMS", "or").join(parts)


def level_words(penalty: Penalty, form: FormOfPlay | None) -> str:
    """Return what a penalty is, without whom it falls on."""
    if penalty.kind is PenaltyKind.STROKES:
        return strokes_words(penalty.strokes)
    if penalty.kind is PenaltyKind.GENERAL:
        known = "match" if form is FormOfPlay.MATCH_PLAY else "other"
        return say("TERMS", f"level.general.{'unknown' if form is None else known}")
    if penalty.kind in (PenaltyKind.HOLES_DEDUCTED, PenaltyKind.POINTS_DEDUCTED):
        count = "1" if penalty.strokes == 1 else "n"
        return say("TERMS", f"level.{penalty.kind.value}.{count}").format(count=count_words(penalty.strokes))
    return say("TERMS", f"level.{penalty.kind.value}")


def penalty_words(penalty: Penalty, form: FormOfPlay | None) -> str:
    """Return one penalty as a sentence: what it is, for whom, under which provision."""
    level = say("TERMS", "penalty_under").format(
        level=level_words(penalty, form), whom=term(penalty.who), citation=penalty.citation
    )
    return level[0].upper() + level[1:]


TWICE = 2
"""The same penalty on two holes, as for too many clubs, or for two wrong places."""


def penalties_in_short(penalties: Sequence[Penalty], form: FormOfPlay | None) -> str:
    """Return all penalties of a ruling in a few words."""
    parts = [
        level_words(one, form)
        if one.who is Who.PLAYER
        else say("TERMS", "penalty_for").format(level=level_words(one, form), whom=term(one.who))
        for one in penalties
    ]
    if len(parts) == TWICE and parts[0] == parts[1]:
        parts = [say("TERMS", "penalty.twice").format(level=parts[0])]
    joined = say("TERMS", "penalty.and").join(parts) if parts else strokes_words(0)
    return joined[0].upper() + joined[1:]
