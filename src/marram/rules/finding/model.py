"""The weights by which incidents are found, read from the one file that Python and the browser share.

``model.json`` is written by ``training/fit_finding.py``: for each feature of a sentence, how much it speaks for which
incidents, as small integers; and the tables of words. A row is told in steps of two bytes: how many incidents further on,
and the weight; a step of weight 0 only leads further on. The first bytes of all steps stand together, and the second, which
compresses better.
"""

import json
from base64 import b64decode
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import accumulate

from marram.rules.finding.sentence import Tables

FILE = "model.json"
"""The file, beside this module."""


@dataclass(frozen=True, slots=True, eq=False)
class Model:
    """What was fitted.

    Attributes:
        incidents: the names of the incidents, in the order of the weights; after the last stands that it is none of them.
        tables: what is known of words.
        places: the place of each feature.
        starts: where the row of each feature starts, in steps; one more for the end.
        gaps: how many incidents further on each step leads, one row after the other.
        weights: the weight of each step, as a signed byte.
        values: how much each feature adds to the length of a sentence (its value in fitting, squared and scaled).
        sharpness: by how much a score must be multiplied to be a logarithm of odds.
        made_from: a digest of the sentences and tables that it was fitted to.
        stems: the stems among the features by their first letter, each with how rare it is.
    """

    incidents: tuple[str, ...]
    tables: Tables
    places: Mapping[str, int]
    starts: tuple[int, ...]
    gaps: bytes
    weights: bytes
    values: bytes
    sharpness: float
    made_from: str
    stems: Mapping[str, Sequence[tuple[str, int]]]

    def known(self, features: Iterable[str]) -> list[int]:
        """Return the places of the features that are known."""
        return [self.places[one] for one in features if one in self.places]

    def row(self, place: int) -> Iterator[tuple[int, int]]:
        """Yield the incidents a feature speaks for or against, by their place, and its weight."""
        at = 0
        for step in range(self.starts[place], self.starts[place + 1]):
            at += self.gaps[step]
            weight = self.weights[step]
            if weight:
                yield at, weight - 256 if weight > 127 else weight


@cache
def model() -> Model:
    """Return the model that ships with marram."""
    return read(json.loads(text_of_file()))


def text_of_file() -> str:
    """Return the file that ships with marram, as it stands."""
    return files(__package__).joinpath(FILE).read_text(encoding="utf-8")


def read(plain: Mapping[str, object]) -> Model:
    """Return the model of a file that was read."""
    held: Mapping[str, object] = plain
    tables, sizes = held["tables"], held["sizes"]
    assert isinstance(tables, dict)
    assert isinstance(sizes, list)
    features = str(held["features"]).split("\n")
    values = b64decode(str(held["values"]))
    return Model(
        tuple(_listed(held["incidents"])),
        Tables(tables["forms"], tables["compounds"], tables["things"], frozenset(tables["little"])),
        {one: place for place, one in enumerate(features)},
        tuple(accumulate(sizes, initial=0)),
        b64decode(str(held["gaps"])),
        b64decode(str(held["weights"])),
        values,
        float(str(held["sharpness"])),
        str(held["made_from"]),
        _by_first_letter(features, values),
    )


def _by_first_letter(features: Sequence[str], values: bytes) -> dict[str, list[tuple[str, int]]]:
    found: dict[str, list[tuple[str, int]]] = {}
    for one, rarity in zip(features, values, strict=True):
        if one.isalpha():
            found.setdefault(one[0], []).append((one, rarity))
    return found


def _listed(value: object) -> list[str]:
    assert isinstance(value, list)
    return value
