"""The list of what can have happened: by theme, the likely ones first; by words, the likeliest first."""

from dataclasses import dataclass
from functools import cache
from importlib import import_module

from marram.rules.facts.ball import Area
from marram.rules.incidents import INCIDENTS, THEMES
from marram.rules.incidents.incident import Incident
from marram.services.cases.told import Told
from marram.words.language import translate
from marram.words.texts import text

LIKELY: dict[Area | None, tuple[str, ...]] = {
    None: ("lost_or_out",),
    Area.PENALTY_AREA: ("penalty_areas",),
    Area.BUNKER: ("bunker", "unplayable"),
    Area.PUTTING_GREEN: ("green",),
    Area.TEEING_AREA: ("teeing",),
    Area.GENERAL_AREA: ("relief", "unplayable", "lost_or_out"),
}
"""Themes shown open for a ball in an area of the course (a choice of ours, no Rule)."""


@dataclass(frozen=True, slots=True)
class Theme:
    """One heading of the list: ``open`` when its incidents are shown at once."""

    title: str
    incidents: tuple[Incident, ...]
    open: bool


@cache
def headings() -> dict[str, str]:
    """Return the heading of each theme by its key."""
    return {key: import_module(f"marram.rules.incidents.{key}").THEME for key in THEMES}


def listing_of(told: Told) -> tuple[Theme, ...]:
    """Return what words point to, under one heading that says how sure it is, the likeliest first."""
    heading = text("rulings.what.likeliest" if told.sure else "rulings.what.near")
    return (Theme(heading, tuple(one.incident for one in told.offered), open=True),) if told.offered else ()


def listing(
    area: Area | None = None, placed: bool = False, likely: tuple[Incident, ...] = ()
) -> tuple[Theme, ...]:
    """Return the incidents by theme.

    Args:
        area: the area of the course the ball lies in.
        placed: whether the ball has been placed on the map at all.
        likely: the incidents that are likely where it lies, which come first.
    """
    first = LIKELY[area] if placed else ()
    keys = sorted(THEMES, key=lambda key: first.index(key) if key in first else len(first))
    themes = [Theme(text("rulings.what.likely_here"), likely, open=True)] if likely else []
    for key in keys:
        title = headings()[key]
        listed = tuple(one for one in INCIDENTS if one.theme == title and one not in likely)
        if listed:
            themes.append(Theme(translate()(title), listed, open=key in first))
    return tuple(themes)
