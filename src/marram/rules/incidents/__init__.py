"""What can have happened: every incident marram can rule on, with the provision it enters the book by.

One file per theme, holding only names and titles, so that listing incidents imports no Rule.
"""

from functools import cache
from importlib import import_module

from marram.errors import UnknownIncident, did_you_mean
from marram.rules.incidents.incident import Incident

THEMES: tuple[str, ...] = (
    "round",
    "equipment",
    "teeing",
    "stroke",
    "ball_moved",
    "search",
    "deflection",
    "conditions",
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
    "committee",
    "forms",
    "disability",
)
"""The themes in the order they are listed; each is a module of this package with a tuple ``INCIDENTS``."""

INCIDENTS: tuple[Incident, ...] = tuple(
    one for theme in THEMES for one in import_module(f"{__name__}.{theme}").INCIDENTS
)


@cache
def incident(name: str) -> Incident:
    """Return the incident called ``name``.

    Raises:
        UnknownIncident: there is none; the message suggests the nearest.
    """
    for one in INCIDENTS:
        if one.name == name:
            return one
    raise UnknownIncident(
        f"There is no incident {name!r}.{did_you_mean(name, [one.name for one in INCIDENTS])} "
        "'marram incidents' lists them all."
    )
