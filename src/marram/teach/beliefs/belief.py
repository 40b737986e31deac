"""A belief of players, as data."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True, slots=True)
class Belief:
    """Something players believe.

    Attributes:
        key: its name in the catalogue.
        rule: the provision it is about.
        about: the incidents whose rulings it belongs to.
        when: facts, as tokens, that the situation must have.
        otherwise: the answer with which it would be right, first, and what else is then so, for example; empty where it
            was right until 2018.
        former: the incident of teaching and its facts by which it was right until 2018.
    """

    key: str
    rule: str
    about: tuple[str, ...]
    when: Mapping[str, Any]
    otherwise: Mapping[str, Any]
    former: tuple[str, Mapping[str, Any]] | None = None
