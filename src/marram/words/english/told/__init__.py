"""A fact as somebody tells it: one sentence for each answer, one file for each theme of the vocabulary.

Each module holds ``TOLD``: ``FACT.TOKEN``, or ``FACT`` with a place for the words of the answer, → sentence. ``{player}`` is
the name of the player it happened to, ``openings`` how the telling of an incident begins, where its title is no sentence
that a person would say. English sentences are the gettext message ids.
"""

from collections.abc import Mapping
from functools import cache
from importlib import import_module
from pathlib import Path


@cache
def told_sentences() -> Mapping[str, str]:
    """Return every sentence, by fact and token.

    Raises:
        ValueError: two modules give the same key.
    """
    found: dict[str, str] = {}
    here = Path(__file__)
    for path in sorted(here.parent.glob("*.py")):
        if path != here:
            part: Mapping[str, str] = getattr(import_module(f"{__name__}.{path.stem}"), "TOLD", {})
            if repeated := found.keys() & part.keys():
                raise ValueError(f"{path.stem}.TOLD repeats {', '.join(sorted(repeated))}; keep one of them.")
            found.update(part)
    return found
