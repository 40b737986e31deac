"""Play stopped, where the balls lay, and play resumed (Rule 5.7)."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import datetime
from enum import Enum
from typing import ClassVar

from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import AN_ENTRY, Kind


class Suspension(Enum):
    """How play was stopped (Rule 5.7b)."""

    IMMEDIATE = "immediate"
    NORMAL = "normal"


class Cause(Enum):
    """What play was stopped for."""

    LIGHTNING = "lightning"
    OTHER_DANGER = "other_danger"
    WATER = "water"
    DARKNESS = "darkness"
    VISIBILITY = "visibility"
    WIND = "wind"
    OTHER = "other"


class Ball(Enum):
    """What was done with the ball when play stopped (Rule 5.7d)."""

    MARKED_AND_LIFTED = "marked_and_lifted"
    LEFT = "left"
    NOT_FOUND_YET = "not_found_yet"
    BETWEEN_HOLES = "between_holes"


@dataclass(frozen=True)
class PlaySuspended:
    """What the entry of a suspension holds; it holds from the time of the entry on.

    Attributes:
        how: immediate, or normal.
        cause: what for.
    """

    __pydantic_config__: ClassVar = STRICT

    how: Suspension = field(
        metadata=give(said("one of {known}", known=", ".join(one.value for one in Suspension)))
    )
    cause: Cause = field(
        default=Cause.OTHER,
        metadata=give(said("one of {known}", known=", ".join(one.value for one in Cause))),
    )


@dataclass(frozen=True)
class PositionKept:
    """Where a ball lay when play stopped; words about it are sealed beside the entry.

    Attributes:
        suspension: the entry of the suspension.
        ball: what was done with it.
        lie: the area or the condition it lay in, in a word.
        strokes: strokes made on the hole, penalty strokes included, where told.
    """

    __pydantic_config__: ClassVar = STRICT

    suspension: str = field(metadata=give(AN_ENTRY))
    ball: Ball = field(metadata=give(said("one of {known}", known=", ".join(one.value for one in Ball))))
    lie: str = field(default="", metadata=give(said("words in quotation marks")))
    strokes: int | None = field(default=None, metadata=give(said("a whole number of strokes")))


@dataclass(frozen=True)
class PlayResumed:
    """When play goes on.

    Attributes:
        suspension: the entry of the suspension.
        at: the time of resumption, ISO 8601 with its distance from UTC.
        in_position_at: the time by which players are to be where they stopped; ``None``: not said.
        settles: what was said before and holds no longer: the entries of it.
    """

    __pydantic_config__: ClassVar = STRICT

    suspension: str = field(metadata=give(AN_ENTRY))
    at: str = field(metadata=give(said("a time such as 2025-06-21T15:30:00+01:00")))
    in_position_at: str | None = field(
        default=None, metadata=give(said("a time such as 2025-06-21T15:20:00+01:00"))
    )
    settles: list[str] = field(default_factory=list, metadata=give(said("a list of identifiers of entries")))


def _moments(found: PlayResumed) -> Iterator[str]:
    for what in ("at", "in_position_at"):
        given = getattr(found, what)
        try:
            whole = given is None or datetime.fromisoformat(given).tzinfo is not None
        except ValueError:
            whole = False
        if not whole:
            yield said(
                "play_resumed: {what} is {given}; give a time with its distance from UTC.",
                what=what,
                given=given,
            )


def _strokes(found: PositionKept) -> Iterator[str]:
    if found.strokes is not None and not 0 <= found.strokes <= 99:
        yield said("position_kept: strokes is {strokes}; give 0 to 99.", strokes=found.strokes)


KINDS = (
    Kind("play_suspended", PlaySuspended, parts=("note",)),
    Kind("position_kept", PositionKept, needs=("player",), points_at=("suspension",), faults=_strokes),
    Kind("play_resumed", PlayResumed, points_at=("suspension",), parts=("note",), faults=_moments),
)
