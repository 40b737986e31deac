"""What is said of a kind of entries, once."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

from marram.records.entry import PART_KINDS, ident
from marram.said import said

AN_ENTRY = said("the identifier of an entry, a UUID")
A_CASE = said("a case, as 'marram situation --json' writes it")
WORDS = said("words in quotation marks")


@dataclass(frozen=True)
class Kind:
    """A kind of entries.

    Attributes:
        name: as the log keeps it.
        content: the dataclass that the content is read into, strictly; ``None``: there is no content.
        needs: what such an entry must have beside its content: ``by``, ``player``, ``round``, ``hole``, ``place``,
            ``corrects``.
        parts: what may be sealed beside it (:data:`marram.records.entry.PART_KINDS`).
        points_at: the keys of its content that hold the identifier of an entry or of a case begun.
        faults: finds what no such content can hold although its shape is right.
        decides: whether it is of a ruling, so that it counts for what a player scored.
    """

    name: str
    content: type[Any] | None = None
    needs: tuple[str, ...] = ()
    parts: tuple[str, ...] = PART_KINDS
    points_at: tuple[str, ...] = ()
    faults: Callable[[Any], Iterator[str]] | None = None
    decides: bool = False


def is_ident(given: str) -> bool:
    """Tell whether this is an identifier in its written form."""
    try:
        return ident(given, "id") == given
    except ValueError:
        return False
