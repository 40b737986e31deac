"""``marram event conditions``: the conditions of an event that records keep, shown and changed."""

import json
from pathlib import Path

from marram.cli.event_here import event_here
from marram.cli.event_options import Where
from marram.cli.show import Line, print_json, show_lines
from marram.errors import InputError, shown
from marram.records.starting_sheet import conditions
from marram.said import said
from marram.services.day.conditions_changing import conditions_changing
from marram.words.texts import text


def tell_conditions(where: Where, change: Path | None, as_json: bool) -> None:
    """Print the conditions by their keys in event.json; change those of a file instead, where one is named."""
    with event_here(where) as here:
        if change is not None:
            here.scored.add(conditions_changing(here.scored, _given(change), here.tap))
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
