"""What is asked and what is answered, as plain values: places in degrees, an option's fields, GeoJSON."""

from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path


@dataclass(frozen=True)
class Question:
    """One ball and what is known of it; places are (longitude, latitude)."""

    file: Path
    hole: int
    sort: str
    """What kind of place the ball was put at, for the table."""
    incident: str
    edition: int
    ball: tuple
    crossing: tuple | None = None
    previous: tuple | None = None
    boundary: tuple | None = None
    club_length: float = 1.15
    right_handed: bool = True
    local_rules: tuple = ()
    facts: dict = field(default_factory=dict)
    course: str | None = None


@dataclass(frozen=True)
class Answer:
    """One option's answer.

    Attributes:
        option: the option's fields as plain data (kind, citation, reference, club_lengths, limits …).
        state: ``Drawn``, ``NoRelief`` or ``NeedsPlace``.
        why: the reason, where nothing was drawn.
        features: the GeoJSON features of each area drawn: the area first, then its construction.
        accepts: for each area, a function of places in degrees (rows) that gives the verdict on each, of a ball at
            rest there where its radius in metres is given too.
        measures: for each area the tape measures, as (from, to, metres).
        said: what was said to be taken for granted.
    """

    option: dict
    state: str
    why: str = ""
    features: tuple = ()
    accepts: tuple[Callable, ...] = ()
    measures: tuple = ()
    said: tuple = ()


@dataclass(frozen=True)
class Violation:
    """Something that is not as the Rules and the ground have it."""

    sort: str
    what: str
    at: tuple | None = None
    by: float = 0.0
