"""A draw in a file, as ``marram draw --json`` prints it: the groups of a round."""

from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import ClassVar

from marram.competition.conditions.event_file import TIME, WORDS, Group
from marram.errors import InputError
from marram.said import said
from marram.schema import STRICT, give, read_into, read_json


@dataclass(frozen=True)
class DrawnPlayer:
    """A player of a draw, as ``marram draw --json`` prints one."""

    __pydantic_config__: ClassVar = STRICT

    key: str = field(metadata=give(WORDS))
    name: str = field(metadata=give(WORDS))


@dataclass(frozen=True)
class DrawnGroup:
    """A group of a draw, as ``marram draw --json`` prints one."""

    __pydantic_config__: ClassVar = STRICT

    time: str = field(metadata=give(TIME))
    tee: int = field(metadata=give(said("the number of the hole it starts at")))
    players: tuple[DrawnPlayer, ...] = field(metadata=give(said("a list of players")))


@dataclass(frozen=True)
class DrawFile:
    """A draw, as ``marram draw --json`` prints it."""

    __pydantic_config__: ClassVar = STRICT

    groups: tuple[DrawnGroup, ...] = field(metadata=give(said("a list of groups")))
    marram: int = field(default=1, metadata=give(said("1")))
    kind: str = field(default="draw", metadata=give(said("draw")))
    seed: str = field(default="", metadata=give(WORDS))
    clash: tuple[str, ...] = field(default=(), metadata=give(said("a list of wishes")))
    moved: int = field(default=0, metadata=give(said("a whole number")))


def read_draw(source: Path) -> tuple[Group, ...]:
    """Return the groups of a draw that ``marram draw --json`` printed.

    Raises:
        InputError: it cannot be used; every fault is listed.
    """
    faults: list[str] = []
    file = read_into(DrawFile, read_json(source, source.name), source.name, faults)
    if file is not None:
        faults += [
            said(
                "{where}: {time} is no time of day; give one such as 08:11.", where=source.name, time=one.time
            )
            for one in file.groups
            if not _is_time(one.time)
        ]
    if file is None or faults:
        raise InputError(*faults)
    return tuple(Group(one.time, one.tee, tuple(each.name for each in one.players)) for one in file.groups)


def _is_time(given: str) -> bool:
    try:
        datetime.strptime(given, "%H:%M")  # noqa: DTZ007 - a time of day
    except ValueError:
        return False
    return True
