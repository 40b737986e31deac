"""Events for the tests of paper, invented."""

from collections.abc import Sequence
from typing import Any

from marram.competition.conditions.reading import read_event_file
from marram.competition.results.card import Hole
from marram.paper.event.on_paper import OnPaper

PARS = (4, 3, 5, 4, 3, 4, 4, 3, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5)
INDEXES = (9, 17, 5, 3, 15, 11, 1, 13, 7, 6, 14, 8, 18, 2, 10, 12, 16, 4)
EIGHTEEN = tuple(Hole(at + 1, PARS[at], INDEXES[at]) for at in range(18))
NINE = tuple(Hole(at + 1, PARS[at], INDEXES[at]) for at in range(9))


def event(
    handicaps: Sequence[int | None] = (), *, in_groups: int | None = None, size: int = 3, **more: Any
) -> dict[str, Any]:
    """Return an event of players P0, P1 … with these Playing Handicaps, the first so many of them in groups."""
    names = [f"P{number} Ölander-{number}" for number in range(len(handicaps))]
    grouped = names if in_groups is None else names[:in_groups]
    return {
        "name": "Quillsand Trophy",
        "played_on": "2025-06-21",
        "round": "First round",
        "form_of_play": "stroke_play",
        "sides": "individual",
        "scores": ["gross", "net"],
        "local_rules": [],
        "players": [
            {"name": name, "club": "Quillsand Links", **({} if had is None else {"playing_handicap": had})}
            for name, had in zip(names, handicaps, strict=True)
        ],
        "starting_times": [
            {
                "time": f"{8 + at // 6:02d}:{at % 6 * 10:02d}",
                "tee": 1,
                "players": grouped[at * size : at * size + size],
            }
            for at in range(-(-len(grouped) // size))
        ],
        **more,
    }


def on_paper(document: dict[str, Any], holes: tuple[Hole, ...] = EIGHTEEN) -> OnPaper:
    """Return the first round of an event."""
    return OnPaper(read_event_file(document), 1, holes, "Quillsand Links")
