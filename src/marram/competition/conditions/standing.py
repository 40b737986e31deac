"""Something that stands between now and the first start, and what exists beside the conditions that it is told by."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from enum import Enum

from marram.said import Said, said


class About(Enum):
    """Which part of the work it is."""

    CONDITIONS = "conditions"
    COURSE = "course"
    HOLES = "holes"
    LOCAL_RULES = "local_rules"
    PLAYERS = "players"
    STARTING_TIMES = "starting_times"
    OFFICIALS = "officials"


@dataclass(frozen=True, slots=True)
class Standing:
    """Something that stands between now and the first start.

    Attributes:
        about: which part of the work it is.
        what: what is missing or wrong.
        remedy: what to do about it.
        stops: whether play could not start, or scores could not become results, with it as it is.
    """

    about: About
    what: Said
    remedy: Said
    stops: bool = True


@dataclass(frozen=True)
class Exists:
    """What exists beside the conditions; ``None`` is not known, and told as such where it matters.

    Attributes:
        map_faults: why the course map cannot be used, in words.
        holes_on_map: the numbers of the holes of the map; ``None`` without a map.
        pars: the par of each hole of the map, where it is known.
        holes_set: for each day the numbers of the holes whose location is set.
        unmarked: codes of Local Rules in force whose marking is not on the map, each with what is missing.
        last_home: for each day, when the last group is expected home.
        sunset: for each day, when the sun sets at the course.
        dark: the days on which it does not rise there.
        places_of_officials: for each official the places given; empty for one without a place.
        map_warnings: what is wrong with the map, so that it cannot be used for everything, in words.
        no_zone: whether the records do not say by which zone the club's clocks go, so that nothing is told of the sunset.
        minutes_taken: what a round is taken to last, where nobody said it; told with what rests on it.
    """

    map_faults: Sequence[str] = ()
    holes_on_map: Collection[int] | None = None
    holes_set: Mapping[date, Collection[int]] = field(default_factory=dict)
    unmarked: Mapping[str, str] = field(default_factory=dict)
    last_home: Mapping[date, datetime] = field(default_factory=dict)
    sunset: Mapping[date, datetime] = field(default_factory=dict)
    dark: frozenset[date] = frozenset()
    places_of_officials: Mapping[str, str] | None = None
    map_warnings: Sequence[str] = ()
    no_zone: bool = False
    minutes_taken: int | None = None
    pars: Mapping[int, int] = field(default_factory=dict)


def listed(some: Sequence[object], most: int = 6) -> str:
    """Return some things in one line; of many the first ones and how many more."""
    shown = ", ".join(map(str, some[:most]))
    return shown if len(some) <= most else said("{shown} and {more} more", shown=shown, more=len(some) - most)
