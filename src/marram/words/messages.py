"""Looking a message up in the catalogue, in the reader's language."""

from collections.abc import Sequence
from datetime import date
from enum import Enum

from marram.words.english import find
from marram.words.language import translate
from marram.words.texts import counted_amount


def say(kind: str, key: str) -> str:
    """Return message ``key`` of ``"NOTES"``, ``"TERMS"`` or ``"PROVISIONS"``; the key itself if it has no words."""
    return translate()(find(kind, key) or key)


def listed(parts: Sequence[str], last: str = "or") -> str:
    """Return a list as it is spoken: ``one``, ``one or two``, ``one, two or three``; parts with commas: ``a, b; or c``."""
    if len(parts) < 2:
        return "".join(parts)
    if any("," in part for part in parts):
        return f"{'; '.join(parts[:-1])};{say('TERMS', last)}{parts[-1]}"
    return f"{', '.join(parts[:-1])}{say('TERMS', last)}{parts[-1]}"


def amount_words(amount: float | date, unit: str) -> str:
    """Return a number with its unit, or a day: ``1 hole``, ``3 minutes``, ``2022-12-31``."""
    if isinstance(amount, date):
        return amount.isoformat()
    if not unit:
        return f"{amount:g}"
    return counted_amount(f"units.{unit}", amount)


def term(member: Enum, suffix: str = "") -> str:
    """Return the words of a member of a result enum."""
    return say("TERMS", f"{type(member).__name__}.{member.name}{suffix}")
