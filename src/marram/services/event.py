"""The competition the desk serves: its name, day, form of play and the Local Rules in force."""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.local_rules.adoption import adopt


@dataclass(frozen=True, slots=True)
class Event:
    """A competition.

    Attributes:
        name: its name.
        round: the round, e.g. "First round".
        played_on: the day of the round; ``None`` means today.
        form_of_play: the form of play, or ``None`` when the Terms of the Competition are not known here.
        sides: who plays together, or ``None``.
        local_rules: codes of the Model Local Rules in force, or ``None`` when not known here.
        notice: the notice to players, sentence by sentence.
    """

    name: str = ""
    round: str = ""
    played_on: date | None = None
    form_of_play: FormOfPlay | None = None
    sides: Sides | None = None
    local_rules: tuple[str, ...] | None = None
    notice: tuple[str, ...] = ()


def read_event(source: Path | Mapping[str, Any] | Event | None) -> Event:
    """Return the event a JSON file (or what it holds) describes; ``None`` gives an event without a name.

    Raises:
        InputError: it cannot be used; every fault is listed.
    """
    if isinstance(source, Event):
        return source
    if source is None:
        return Event()
    where = "the event"
    if isinstance(source, Path):
        where = source.name
        try:
            source = json.loads(source.read_text(encoding="utf-8"))
        except (OSError, ValueError) as error:
            raise InputError(f"{where} cannot be read: {error}. Give a JSON file of an event.") from None
    if not isinstance(source, Mapping):
        raise InputError(f"{where} is not a JSON object. See demo/event.json for one that is.")
    return _event(source, where)


def _event(given: Mapping[str, Any], where: str) -> Event:
    faults: list[str] = []

    def read(key: str, how: Any, allowed: str) -> Any:
        value = given.get(key)
        if value is None:
            return None
        try:
            return how(value)
        except (ValueError, TypeError):
            faults.append(f"{where}: {key} is {value!r}; give {allowed}.")
            return None

    played_on = read("played_on", date.fromisoformat, "a day as year-month-day, for example 2025-06-21")
    form = read("form_of_play", FormOfPlay, f"one of {', '.join(one.value for one in FormOfPlay)}")
    sides = read("sides", Sides, f"one of {', '.join(one.value for one in Sides)}")
    local_rules = read("local_rules", tuple, 'a list of codes, for example ["E-5"]')
    adopted = adopt([str(code) for code in local_rules or ()], played_on)
    faults += [f"{where}: {fault}" for fault in adopted.faults]
    if faults:
        raise InputError(*faults)
    return Event(
        name=str(given.get("name", "")),
        round=str(given.get("round", "")),
        played_on=played_on,
        form_of_play=form,
        sides=sides,
        local_rules=None if local_rules is None else adopted.in_rulings,
        notice=tuple(str(one) for one in given.get("notice_to_players", ())),
    )
