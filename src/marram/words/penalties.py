"""Penalties in words, resolved by the form of play where it is known."""

from collections.abc import Sequence

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Penalty, PenaltyKind, Who
from marram.words.english import catalogue

_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")


def strokes_words(count: int) -> str:
    """Return ``count`` penalty strokes in words: ``no penalty``, ``one penalty stroke`` and so on."""
    if count == 0:
        return "no penalty"
    number = _NUMBERS[count] if count < len(_NUMBERS) else str(count)
    return f"{number} penalty stroke{'s' if count != 1 else ''}"


def level_words(penalty: Penalty, form: FormOfPlay | None) -> str:
    """Return what a penalty is, without whom it falls on."""
    if penalty.kind is PenaltyKind.STROKES:
        return strokes_words(penalty.strokes)
    if penalty.kind is PenaltyKind.DISQUALIFICATION:
        return "disqualification"
    if penalty.kind is PenaltyKind.LOSS_OF_HOLE:
        return "loss of hole"
    if form is FormOfPlay.MATCH_PLAY:
        return "loss of hole (the general penalty)"
    if form is None:
        return "the general penalty (two strokes; in match play loss of hole)"
    return "two penalty strokes (the general penalty)"


def penalty_words(penalty: Penalty, form: FormOfPlay | None) -> str:
    """Return one penalty as a sentence: what it is, for whom, under which provision."""
    level = level_words(penalty, form)
    whom = catalogue("TERMS")[f"Who.{penalty.who.name}"]
    return f"{level[0].upper()}{level[1:]} for {whom} ({penalty.citation})."


def penalties_in_short(penalties: Sequence[Penalty], form: FormOfPlay | None) -> str:
    """Return all penalties of a ruling in a few words."""
    if not penalties:
        return "No penalty"
    parts = []
    for penalty in penalties:
        whom = "" if penalty.who is Who.PLAYER else f" for {catalogue('TERMS')[f'Who.{penalty.who.name}']}"
        parts.append(level_words(penalty, form) + whom)
    joined = " and ".join(parts)
    return joined[0].upper() + joined[1:]
