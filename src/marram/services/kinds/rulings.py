"""Rulings, and what is said about an entry afterwards: a note, a withdrawal, the erasing of what is personal."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, ClassVar

from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import A_CASE, AN_ENTRY, WORDS, Kind

MOST_STROKES = 20
"""Penalty strokes of one ruling at most (own choice): more is a slip of the hand."""


@dataclass(frozen=True)
class Instead:
    """What was given in place of what was computed.

    Attributes:
        penalty_strokes: penalty strokes the player got; ``None``: not said, or none of it is a stroke.
        disqualified: whether the player was disqualified.
        hole_lost: whether the hole was lost, in match play.
    """

    __pydantic_config__: ClassVar = STRICT

    penalty_strokes: int | None = field(default=None, metadata=give(said("a whole number of strokes")))
    disqualified: bool = field(default=False, metadata=give(said("true or false")))
    hole_lost: bool = field(default=False, metadata=give(said("true or false")))


@dataclass(frozen=True)
class RulingContent:
    """What the entry of a ruling holds.

    Attributes:
        case: the case as it was told, with the option taken and all that it was made with.
        outcome: what the Rules said of it.
        headline: what the official was shown, in one line.
        otherwise: whether it was ruled otherwise than computed; the reason is sealed beside the entry.
        instead: what was given instead, as far as it counts.
        rules: the Rules it rests on, by number.
        finding: what of a card it rules on, by its name there; empty for a ruling given on the course.
        device_ahead: by how many seconds the clock of the device it waited on was ahead of the desk's as it arrived;
            ``None``: they went together, or it is not known.
    """

    __pydantic_config__: ClassVar = STRICT

    case: Mapping[str, Any] = field(metadata=give(A_CASE))
    outcome: Mapping[str, Any] = field(metadata=give(said("an object")))
    headline: str = field(metadata=give(WORDS))
    otherwise: bool = field(default=False, metadata=give(said("true or false")))
    instead: Instead | None = field(default=None, metadata=give(said("an object, or leave it out")))
    rules: tuple[str, ...] = field(default=(), metadata=give(said("a list of numbers of Rules")))
    finding: str = field(default="", metadata=give(WORDS))
    device_ahead: int | None = field(default=None, metadata=give(said("a whole number of seconds")))


@dataclass(frozen=True)
class NoteContent:
    """What the entry of a note holds; its words are sealed beside it.

    Attributes:
        about: the entry it is about.
    """

    __pydantic_config__: ClassVar = STRICT

    about: str | None = field(default=None, metadata=give(AN_ENTRY))


def _faults(found: RulingContent) -> Iterator[str]:
    instead = found.instead
    if instead is not None and not found.otherwise:
        yield said("ruling: something else was given instead, and otherwise is not true; say it is.")
    strokes = instead.penalty_strokes if instead else None
    if strokes is not None and not 0 <= strokes <= MOST_STROKES:
        yield said(
            "ruling: {strokes} penalty strokes were given instead; give 0 to {most}.",
            strokes=strokes,
            most=MOST_STROKES,
        )


KINDS = (
    Kind("ruling", RulingContent, faults=_faults, decides=True),
    Kind("note", NoteContent, points_at=("about",)),
    Kind("withdrawn", needs=("corrects",), parts=("reason",)),
    Kind("erasure", needs=("player",), parts=()),
)
