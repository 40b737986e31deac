"""A citation as people read it: the number of a Rule as it stands, a Definition by its name in the reader's language."""

from collections.abc import Iterable

from marram.words.texts import text

_DEFINITIONS = (
    ("Definitions: ", "definitions.definition"),
    ("former Definitions: ", "definitions.former_definition"),
)
"""What a citation of a Definition begins with, and the text that says so."""


def named(citation: str) -> str:
    """Return a citation as it stands in a list: "17.1d", "E-5", "Definition: stroke"."""
    for chapter, key in _DEFINITIONS:
        if citation.startswith(chapter):
            return text(key, name=text(f"definitions.definition.{_key(citation.removeprefix(chapter))}"))
    return citation


def _key(name: str) -> str:
    return name.replace(" ", "_").replace("-", "_")


def named_all(citations: Iterable[str]) -> str:
    """Return citations as they stand in a list, one after the other."""
    return ", ".join(map(named, citations))


__all__ = ["named", "named_all"]
