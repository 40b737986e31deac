"""``marram event conditions``: the conditions of an event that records keep, shown and changed."""

import json
import re
from collections.abc import Sequence
from datetime import date
from pathlib import Path

from marram.cli.event_here import event_here
from marram.cli.event_options import Where
from marram.cli.show import Line, print_json, show_lines
from marram.errors import InputError, shown
from marram.records.starting_sheet import Known, conditions
from marram.said import Said, said
from marram.services.day.conditions_changing import conditions_changing
from marram.words.texts import text


def tell_conditions(where: Where, change: Path | None, days: Sequence[str], as_json: bool) -> None:
    """Print the conditions by their keys in event.json; change those of a file and the days of rounds instead, where they are named."""
    with event_here(where) as here:
        if change is not None or days:
            given = {} if change is None else _given(change)
            moved = _days(days, here.scored.competition.rounds)
            here.scored.add(conditions_changing(here.scored, given, here.tap, moved))
            print(text("event_kept.conditions.desk"))
            return
        found = conditions(here.scored.records, here.scored.event)
    if as_json:
        print_json({"marram": 1, "kind": "event conditions", "conditions": found})
        return
    lines: list[Line] = [
        ("item", f"{key}: {json.dumps(value, ensure_ascii=False)}") for key, value in sorted(found.items())
    ]
    show_lines([("title", text("conditions.title")), *lines])


def _given(path: Path) -> dict[str, object]:
    """Return the conditions of a file: an object of them, or a document of this command.

    Raises:
        InputError: it holds none.
    """
    try:
        read = json.loads(path.read_text(encoding="utf-8"))
    except (ValueError, UnicodeDecodeError):
        read = None
    if isinstance(read, dict) and read.get("kind") == "event conditions":
        read = read.get("conditions")
    if not isinstance(read, dict):
        wanted = said('Give a JSON object such as {{"scores": ["gross", "net"]}}.')
        raise InputError(said("{file} holds no conditions. {wanted}", file=shown(path.name), wanted=wanted))
    return read


def _days(given: Sequence[str], rounds: Sequence[Known]) -> dict[str, date]:
    """Return the days that rounds are moved to, by the identifier of the round.

    Raises:
        InputError: one is no number of a round with a day, or names a round that is not there.
    """
    found: dict[str, date] = {}
    faults: list[Said] = []
    for one in given:
        read = re.fullmatch(r"(\d{1,2})=(\d{4}-\d\d-\d\d)", one.strip())
        number = int(read[1]) if read else 0
        try:
            day = date.fromisoformat(read[2]) if read else None
        except ValueError:
            day = None
        if day is None:
            faults.append(said("{given} is no round and day; write them as 2=2026-06-21.", given=shown(one)))
        elif not 1 <= number <= len(rounds):
            faults.append(
                said("There is no round {number}; there are {count}.", number=number, count=len(rounds))
            )
        else:
            found[rounds[number - 1].id] = day
    if faults:
        raise InputError(*faults)
    return found
