"""What somebody sends from a page or the shell, and the entries of the log that are made of it."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from uuid import UUID, uuid5

from marram.errors import InputError
from marram.records.entry import Entry, Part
from marram.said import said


@dataclass(frozen=True)
class Tap:
    """What somebody sends from a page.

    Attributes:
        ident: its identifier, so that the same tap enters it once.
        at: when.
        by: the official; ``None``: not known.
        seen: the number of the last entry that the page showed.
    """

    ident: str
    at: datetime
    by: str | None = None
    seen: int = 0


@dataclass(frozen=True)
class About:
    """What an entry is about.

    Attributes:
        player: whose, by identifier; of a side the partner under whose name it is entered.
        round: the identifier of the round.
        hole: the hole; ``None``: none of its own.
    """

    player: str
    round: str
    hole: int | None = None


def entered(
    kind: str,
    tap: Tap,
    about: About,
    content: Mapping[str, Any],
    *,
    note: str = "",
    corrects: str | None = None,
) -> Entry:
    """Return an entry of a kind; the same tap gives the same one.

    Args:
        kind: the kind.
        tap: who enters it, and when.
        about: what it is about.
        content: what it holds.
        note: what somebody writes beside it; empty for nothing.
        corrects: the entry that it puts right.
    """
    return Entry(
        kind,
        tap.at,
        str(uuid5(UUID(tap.ident), kind)),
        by=tap.by,
        player=about.player,
        round=about.round,
        hole=about.hole,
        corrects=corrects,
        content=dict(content),
        parts=(Part("note", note.strip().encode()),) if note.strip() else (),
    )


def taken_back(entry: str, why: str, tap: Tap, about: About) -> Entry:
    """Return the entry that withdraws one made by mistake; that one stays in the log.

    Raises:
        InputError: nobody said why.
    """
    if not why.strip():
        raise InputError(said("Say why it is taken back."))
    return Entry(
        "withdrawn",
        tap.at,
        tap.ident,
        by=tap.by,
        player=about.player,
        round=about.round,
        corrects=entry,
        parts=(Part("reason", why.strip().encode()),),
    )
