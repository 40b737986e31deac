"""A made-up language that marks every sentence, loaded as any other: a gettext catalogue in a folder.

Each sentence stands in white brackets, its letters in their fullwidth forms. A plain letter on a page, in an answer
of a command or on a drawing is then a word that went past the catalogue.
"""

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from babel.messages.catalog import Catalog
from babel.messages.mofile import write_mo

from marram.docs.messages import messages
from marram.words.language import DOMAIN, language
from tests.words.letters import altered

MADE_UP = "eo"
"""Babel knows plural forms by the code of a language; this one has two, as English has."""


def write_made_up(folder: Path) -> None:
    """Write the catalogue of the made-up language below a folder of catalogues."""
    catalog = Catalog(locale=MADE_UP, domain=DOMAIN, fuzzy=False)
    for one in messages():
        if one.several:
            catalog.add((one.sentence, one.several), (altered(one.sentence), altered(one.several)))
        else:
            catalog.add(one.sentence, altered(one.sentence))
    place = folder / MADE_UP / "LC_MESSAGES"
    place.mkdir(parents=True)
    with (place / f"{DOMAIN}.mo").open("wb") as file:
        write_mo(file, catalog)


def environment(folder: Path) -> dict[str, str | None]:
    """Return what a program's environment holds to speak the made-up language."""
    return {"MARRAM_LANGUAGE": MADE_UP, "MARRAM_LOCALES": str(folder)}


@contextmanager
def speaking(folder: Path | None) -> Iterator[None]:
    """Speak the made-up language of a folder in this process; ``None``: English."""
    wanted = environment(folder) if folder else dict.fromkeys(environment(Path()))
    before = {key: os.environ.get(key) for key in wanted}
    _set(wanted)
    try:
        yield
    finally:
        _set(before)


def _set(values: dict[str, str | None]) -> None:
    for key, value in values.items():
        os.environ.pop(key, None) if value is None else os.environ.update({key: value})
    language.cache_clear()
