"""``marram draw``: groups and starting times."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import time
from pathlib import Path

from marram.cli.exits import BAD_INPUT
from marram.cli.show import Line, print_json, show_lines
from marram.competition.draw.order import beside_partners, by_handicap, by_seed
from marram.competition.draw.sizes import groups_needed
from marram.competition.draw.solving import Draw, draw
from marram.competition.draw.wishes import (
    Apart,
    ClubsApart,
    Drawn,
    Part,
    Start,
    Together,
    Wish,
    Within,
    partners_together,
    starts,
)
from marram.competition.entries.reading import read_entries
from marram.errors import InputError
from marram.words.spoken import spoken
from marram.words.texts import clock_words, text


@dataclass(frozen=True, slots=True)
class Asked:
    """What a draw goes by, as typed; wishes are those together, apart, early and late."""

    seed: str
    first: str
    minutes: int
    places: int
    tees: tuple[int, ...]
    by_handicap: bool
    wishes: tuple[Sequence[str], Sequence[str], Sequence[str], Sequence[str]]
    clubs_apart: bool
    second: str = ""


def tell_draw(file: Path, asked: Asked, as_json: bool) -> None:
    """Print the groups with their starts, or the wishes that clash."""
    found = read_entries(file)
    if found.faults:
        raise InputError(
            *(text("entries.line", line=one.line, fault=spoken(one.fault)) for one in found.faults)
        )
    entries = {one.key: one for one in found.entries}
    indexes = {key: one.handicap_index for key, one in entries.items()}
    order = by_handicap(indexes, asked.seed) if asked.by_handicap else by_seed(tuple(entries), asked.seed)
    if asked.places < 1:
        raise InputError(text("draw.places"))
    players = beside_partners([Drawn(key, entries[key].club, entries[key].side) for key in order])
    groups = groups_needed(players, asked.places)
    slots = starts(
        time_of(asked.first),
        groups,
        minutes=asked.minutes,
        places=asked.places,
        tees=asked.tees,
        second=time_of(asked.second) if asked.second else None,
    )
    drawn = draw(players, slots, [*_wishes(asked), *partners_together(players)])
    show_draw(asked.seed, slots, drawn, {key: one.name for key, one in entries.items()}, as_json)


def show_draw(
    seed: str, slots: Sequence[Start], drawn: Draw, names: Mapping[str, str], as_json: bool
) -> None:
    """Print a draw, each player by name; exit with 2 where wishes clash."""
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "draw",
                "seed": seed,
                "groups": [
                    {
                        "time": slot.time.isoformat("minutes"),
                        "tee": slot.tee,
                        "players": [{"key": key, "name": names[key]} for key in group],
                    }
                    for slot, group in zip(slots, drawn.groups, strict=True)
                    if group
                ],
                "clash": [spoken(one.said()) for one in drawn.clash],
                "moved": drawn.moved,
            }
        )
    elif drawn.clash:
        show_lines([("title", text("draw.clash")), *(("item", spoken(one.said())) for one in drawn.clash)])
    else:
        lines: list[Line] = [("title", text("draw.title", seed=seed))]
        for slot, group in zip(slots, drawn.groups, strict=True):
            players = ", ".join(names[key] for key in group)
            at = clock_words(slot.time)
            lines.append(("item", text("draw.group", time=at, tee=slot.tee, players=players)))
        show_lines(lines)
    if drawn.clash:
        raise SystemExit(BAD_INPUT)


def time_of(given: str) -> time:
    """Return a time of day as typed.

    Raises:
        InputError: it is none.
    """
    try:
        return time.fromisoformat(given)
    except ValueError:
        raise InputError(text("draw.time", given=repr(given))) from None


def _wishes(asked: Asked) -> list[Wish]:
    together, apart, early, late = asked.wishes
    found: list[Wish] = [ClubsApart()] if asked.clubs_apart else []
    found += [Together(_keys(one)) for one in together]
    found += [Apart(_keys(one)) for one in apart]
    found += [Within(one.strip().casefold(), Part.EARLY) for one in early]
    found += [Within(one.strip().casefold(), Part.LATE) for one in late]
    return found


def _keys(given: str) -> tuple[str, ...]:
    return tuple(one.strip().casefold() for one in given.split(",") if one.strip())
