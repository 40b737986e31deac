"""Penalties in words, resolved by the form of play where it is known."""

from collections.abc import Collection, Sequence
from dataclasses import replace

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.penalty import Penalty, PenaltyKind, Who
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


def penalty_words(penalty: Penalty, form: FormOfPlay | None, times: int = 1) -> str:
    """Return one penalty as a sentence: what it is, for whom, under which provision, and how often it is given."""
    if times > 1:
        total = penalties_in_short([replace(penalty, who=Who.PLAYER)] * times, form)
        return say("TERMS", "penalty_times").format(
            total=total,
            whom=term(penalty.who),
            level=level_words(penalty, form),
            count=count_words(times),
            citation=penalty.citation,
        )
    level = say("TERMS", "penalty_under").format(
        level=level_words(penalty, form), whom=term(penalty.who), citation=penalty.citation
    )
    return level[0].upper() + level[1:]


def penalties_in_short(
    penalties: Sequence[Penalty], form: FormOfPlay | None, *, relief: Collection[int] = ()
) -> str:
    """Return all penalties in a few words, each person's strokes as one number.

    Args:
        penalties: the penalties.
        form: how general penalties are resolved; both ways are said when unknown.
        relief: what relief that the player must take costs, over its options: it is counted in.
    """
    persons: dict[Who, list[Penalty]] = {}
    for one in penalties:
        persons.setdefault(one.who, []).append(one)
    if any(relief) and not persons.keys() & set(_PAYS_FOR_RELIEF):
        persons = {Who.PLAYER: [], **persons}
    several = len(persons) > 1
    payer = next((who for who in _PAYS_FOR_RELIEF if who in persons), None)
    parts = [
        level
        if who is Who.PLAYER and not several
        else say("TERMS", "penalty_for").format(level=level, whom=term(who))
        for who, own in persons.items()
        for level in _levels_in_short(own, form, relief if who is payer and any(relief) else (0,))
    ]
    joined = say("TERMS", "penalty.and").join(parts) if parts else strokes_words(0)
    return joined[0].upper() + joined[1:]


_PAYS_FOR_RELIEF = (Who.PLAYER, Who.SIDE, Who.ONE_PARTNER)
"""Whose the ball is that relief is taken for, by the name that a penalty gives that person."""


def _levels_in_short(
    own: Sequence[Penalty], form: FormOfPlay | None, relief: Collection[int]
) -> Sequence[str]:
    """Return what the penalties of one person come to: the strokes in all, then whatever is no stroke."""
    generals = sum(1 for one in own if one.kind is PenaltyKind.GENERAL)
    charged = sum(one.strokes for one in own if one.kind is PenaltyKind.STROKES)
    others = [level_words(one, form) for one in own if one.kind not in _IN_STROKES]
    first: list[str] = []
    general = next((one for one in own if one.kind is PenaltyKind.GENERAL), None)
    if general is not None and form is FormOfPlay.MATCH_PLAY:
        first = [level_words(general, form)]  # the hole is lost: its strokes do not matter
    elif general is not None and generals == 1 and not charged and not any(relief):
        first = [level_words(general, form)]
    elif general is not None or charged or any(relief):
        totals = sorted({charged + GENERAL_IN_STROKES * generals + cost for cost in relief})
        first = [totals_words(totals)]
        if general is not None and form is None:
            first = [say("TERMS", "level.general.summed").format(strokes=first[0])]
    return (*first, *dict.fromkeys(others))


def totals_words(totals: Sequence[int]) -> str:
    """Return what strokes come to, where it depends on the option: ``one or two penalty strokes``."""
    if len(totals) == 1:
        return strokes_words(totals[0])
    if totals[0] == 0:
        rest = totals_words(totals[1:])
        return say("TERMS", "or.after_comma").join((strokes_words(0), rest))
    counts = say("TERMS", "or").join(count_words(one) for one in totals)
    return say("TERMS", "strokes.n").format(count=counts)


GENERAL_IN_STROKES = 2
"""The general penalty in stroke play (Rule 1.3c(2))."""

_IN_STROKES = (PenaltyKind.STROKES, PenaltyKind.GENERAL)
