"""One thing that can have happened."""

import re
from collections.abc import Callable, Sequence
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

    def provision(self) -> Callable[..., Any]:
        """Import and return the provision by which this incident enters the book."""
        module, function = self.entry.split(":")
        found: Callable[..., Any] = getattr(import_module(f"marram.rules.{module}"), function)
        return found

    def matches(self, words: Sequence[str]) -> bool:
        """Tell whether every word looked for begins a word of the name, title, Rule, theme or keywords.

        Case, the ending of the word looked for, and little words do not count: "raked the sand" finds
        "rake sand". A word is not found inside another: "pin" does not find "dropping".
        """
        known = _words(f"{self.name} {self.title} {self.rule} {self.theme} {self.keywords}")
        known += self.name.split("_")
        wanted = [_ENDING.sub("", word) for word in _words(" ".join(words)) if word not in _LITTLE_WORDS]
        return all(any(_begins(word, stem) for word in known) for stem in wanted)


def _begins(word: str, stem: str) -> bool:
    """Tell whether a known word begins with the stem; one as short as "OB" has to be the word itself."""
    return word.startswith(stem) if len(stem) > 2 else word == stem


_ENDING = re.compile(r"(?<=[a-z]{3})(ing|ed|s)$")
_LITTLE_WORDS = frozenset(
    (
        "a",
        "an",
        "and",
        "at",
        "by",
        "for",
        "from",
        "had",
        "has",
        "her",
        "his",
        "in",
        "is",
        "my",
        "of",
        "on",
        "or",
        "rule",
        "rules",
        "the",
        "to",
        "was",
        "with",
    )
)


def _words(text: str) -> list[str]:
    return re.findall(r"[a-z0-9][a-z0-9_.()]*", text.lower())
