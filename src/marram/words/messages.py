"""Looking a message up in the catalogue, in the reader's language."""

from collections.abc import Callable
from enum import Enum
from functools import cache
from pathlib import Path

from marram.words.english import find


@cache
def translate() -> Callable[[str], str]:
    """Return the function that puts an English sentence into the reader's language (gettext).

    Translations are looked for in ``words/locale``; without any, sentences stay as they are.
    """
    locales = Path(__file__).with_name("locale")
    if not locales.is_dir():
        return str
    from gettext import translation  # noqa: PLC0415 - only needed once there is a translation

    return translation("marram", locales, fallback=True).gettext


def say(kind: str, key: str) -> str:
    """Return message ``key`` of ``"NOTES"``, ``"TERMS"`` or ``"PROVISIONS"``; the key itself if it has no words."""
    return translate()(find(kind, key) or key)


def term(member: Enum, suffix: str = "") -> str:
    """Return the words of a member of a result enum."""
    return say("TERMS", f"{type(member).__name__}.{member.name}{suffix}")
