"""The language people read: English, or a gettext catalogue chosen by the environment.

``MARRAM_LANGUAGE`` names the language and ``MARRAM_LOCALES`` a folder of catalogues beside those in
``words/locale``; each is ``LANGUAGE/LC_MESSAGES/marram.mo``. English sentences are the message ids.
"""

import os
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import NamedTuple

from marram.errors import UnknownLanguage

ENGLISH = "en"
DOMAIN = "marram"


class Language(NamedTuple):
    """A language: its code, and how it puts an English sentence, and one that depends on a number."""

    code: str
    sentence: Callable[[str], str]
    counted: Callable[[str, str, int], str]


@cache
def language() -> Language:
    """Return the reader's language.

    Raises:
        UnknownLanguage: there is no catalogue of the language that was asked for.
    """
    chosen = os.environ.get("MARRAM_LANGUAGE", "") or ENGLISH
    if chosen == ENGLISH:
        return Language(ENGLISH, str, _english_counted)
    from gettext import find, translation  # noqa: PLC0415 - English needs none

    folders = [Path(__file__).with_name("locale")]
    if given := os.environ.get("MARRAM_LOCALES", ""):
        folders.insert(0, Path(given))
    folder = next((one for one in folders if find(DOMAIN, one, [chosen])), None)
    if folder is None:
        raise UnknownLanguage(
            f"MARRAM_LANGUAGE is {chosen!r}, and there is no {chosen}/LC_MESSAGES/{DOMAIN}.mo in "
            f"{' or '.join(str(one) for one in folders)}. Add it, name its folder in MARRAM_LOCALES, or unset "
            "MARRAM_LANGUAGE for English."
        )
    found = translation(DOMAIN, folder, [chosen])
    return Language(chosen, found.gettext, found.ngettext)


def translate() -> Callable[[str], str]:
    """Return the function that puts an English sentence into the reader's language."""
    return language().sentence


def _english_counted(one: str, several: str, count: int) -> str:
    return one if count == 1 else several
