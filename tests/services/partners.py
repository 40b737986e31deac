"""The invented event played by partners: the field of twelve in sides of two, or four, beside each other on the starting sheet."""

from collections.abc import Mapping, Sequence
from typing import Any

from marram.demo import EVENT
from marram.schema import read_json


def with_partners(size: int = 2, **more: Any) -> Mapping[str, Any]:
    """Return the invented event with sides of so many players in the order of the entries, their groups of two sides."""
    event = {**read_json(EVENT, "event"), "results_public": True, **more}
    sides = [
        [{**one, "side": f"Pair {number}"} for one in some]
        for number, some in enumerate(_parts(event["players"], size), start=1)
    ]
    names = [one["name"] for some in sides for one in some]
    times = [
        {"time": f"08:{11 * number:02}", "tee": 1, "players": list(some)}
        for number, some in enumerate(_parts(names, 4))
    ]
    return {**event, "players": [one for some in sides for one in some], "starting_times": times}


def _parts(some: Sequence[Any], size: int) -> list[Sequence[Any]]:
    return [some[at : at + size] for at in range(0, len(some), size)]
