"""Provisions in words: the citation and what it says."""

from dataclasses import dataclass

from marram.words.english import find
from marram.words.language import translate


@dataclass(frozen=True, slots=True)
class Cited:
    """A provision and what it says, in our own words."""

    citation: str
    statement: str


def cited(citation: str) -> Cited:
    """Return a provision with its statement."""
    statement = find("PROVISIONS", citation)
    return Cited(citation, translate()(statement) if statement else "")
