"""What can have happened: every incident marram can rule on, with the provision it enters the book by.

One file per theme, holding only names and titles, so that listing incidents imports no Rule.
"""

from functools import lru_cache
from importlib import import_module

from marram.errors import UnknownIncident, did_you_mean, shown
from marram.rules.incidents.incident import Incident
from marram.said import said, sentences

THEMES: tuple[str, ...] = (
    "round",
    "order_of_holes",
    "equipment",
    "teeing",
    "stroke",
    "ball_moved",
    "search",
    "deflection",
    "improving_conditions",
    "bunker",
    "green",
    "lifting",
    "dropping",
    "loose_things",
    "wrong_ball",
    "relief",
    "penalty_areas",
    "lost_or_out",
    "unplayable",
    "local_rules_relief",
    "mats",
    "committee",
    "forms",
    "local_rules_conduct",
    "disability",
    "teaching",
)
"""The themes in the order they are listed; each is a module of this package with a tuple ``INCIDENTS``."""

INCIDENTS: tuple[Incident, ...]
"""Every incident, in the order of the themes; put together when it is first asked for."""


def __getattr__(name: str) -> tuple[Incident, ...]:
    if name != "INCIDENTS":
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    every = tuple(one for theme in THEMES for one in _of_theme(theme))
    globals()["INCIDENTS"] = every
    return every


def incident(name: str) -> Incident:
    """Return the incident called ``name``.

    Raises:
        UnknownIncident: there is none; the message suggests the nearest.
    """
    found = _named(name) if isinstance(name, str) else None
    if found is None:
        names = [one.name for theme in THEMES for one in _of_theme(theme)]
        raise UnknownIncident(
            sentences(
                said("There is no incident {name}.", name=shown(name)),
                did_you_mean(name, names),
                said("'marram incidents' lists them all."),
            )
        )
    return found


@lru_cache(maxsize=512)
def _named(name: str) -> Incident | None:
    for theme in THEMES:  # one theme after the other, so that a ruling reads no more of them than it needs
        for one in _of_theme(theme):
            if one.name == name:
                return one
    return None


def _of_theme(theme: str) -> tuple[Incident, ...]:
    found: tuple[Incident, ...] = import_module(f"{__name__}.{theme}").INCIDENTS
    return found
