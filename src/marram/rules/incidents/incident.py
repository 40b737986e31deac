"""One thing that can have happened."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from importlib import import_module
from typing import Any

from marram.rules.editions import FIRST_DAY


@dataclass(frozen=True, slots=True)
class Incident:
    """One thing that can have happened.

    Attributes:
        name: the key used in Python, on the command line and in JSON.
        title: what happened, in plain words.
        rule: the Rule or sub-rule it starts from.
        theme: the heading it is listed under.
        entry: ``module:function`` below ``marram.rules``, e.g. ``book.rule_09_ball_at_rest_moved:moved``.
        keywords: further words an official may look for.
        covered_from: the first day of play it is ruled on; earlier than the editions only for teaching.
    """

    name: str
    title: str
    rule: str
    theme: str
    entry: str
    keywords: str = ""
    covered_from: date = FIRST_DAY

    @property
    def for_teaching(self) -> bool:
        """Whether it tells of the former Rules only."""
        return self.covered_from < FIRST_DAY

    def provision(self) -> Callable[..., Any]:
        """Import and return the provision by which this incident enters the book."""
        module, function = self.entry.split(":")
        found: Callable[..., Any] = getattr(import_module(f"marram.rules.{module}"), function)
        return found
