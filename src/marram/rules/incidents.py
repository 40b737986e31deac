"""What can have happened: every incident marram can rule on, with the provision it enters the book by.

Only names and titles live here, so that listing them imports no Rule. ``entry`` is
``module:function`` below :mod:`marram.rules.book`.
"""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from typing import Any

from marram.errors import UnknownIncident, did_you_mean


@dataclass(frozen=True, slots=True)
class Incident:
    """One thing that can have happened.

    Attributes:
        name: the key used in Python, on the command line and in JSON.
        title: what happened, in plain words.
        rule: the Rule or sub-rule it starts from.
        theme: the heading it is listed under.
        entry: ``module:function`` below ``marram.rules.book``.
    """

    name: str
    title: str
    rule: str
    theme: str
    entry: str

    def provision(self) -> Callable[..., Any]:
        """Import and return the provision by which this incident enters the book."""
        module, function = self.entry.split(":")
        found: Callable[..., Any] = getattr(import_module(f"marram.rules.book.{module}"), function)
        return found


_TABLE: dict[str, tuple[tuple[str, str, str, str], ...]] = {
    "The ball moved": (
        (
            "ball_moved_by_player",
            "The player or caddie moved, lifted or touched the ball at rest",
            "9.4",
            "rule_09_ball_at_rest_moved:ball_moved_by_player",
        ),
    ),
}
"""By theme: name, title, rule, entry."""

INCIDENTS: tuple[Incident, ...] = tuple(
    Incident(name, title, rule, theme, entry)
    for theme, rows in _TABLE.items()
    for name, title, rule, entry in rows
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
