"""The weights by which incidents are found, read from the one file that Python and the browser share.

``model.json`` is written by ``training/model_file.py``: for each feature of a sentence, how much it speaks for which
incidents, as small integers; and the tables of words. Numbers stand as one sign each, from ``#`` (0) to ``~`` (91), which
compresses better than anything that packs them closer. A row is told in steps of two numbers: over how many incidents it
leads, and the weight there; a step of weight 0 only leads further on. All that is of one kind stands together.
"""

import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import accumulate

from marram.rules.finding.sentence import Tables

FILE = "model.json"
"""The file, beside this module."""
ZERO = ord("#")
"""The sign of 0."""
MOST = ord("~") - ZERO
"""The largest number of one sign; in :func:`sums` it goes on in the next."""
BELOW = 20
"""How far below 0 a weight can be: so much is added to each in the file."""
NUMBER_OF_SIGN = bytes(max(sign - ZERO, 0) for sign in range(256))


@dataclass(frozen=True, slots=True, eq=False)
class Model:
    """What was fitted.

    Attributes:
        incidents: the names of the incidents, in the order of the weights; after the last stands that it is none of them.
        tables: what is known of words.
        places: the place of each feature.
        starts: where the row of each feature starts, in steps; one more for the end.
        gaps: how many incidents each step leads over, one row after the other.
        weights: the weight of each step, and :data:`BELOW`.
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
            weight = self.weights[step] - BELOW
            if weight:
                yield at, weight
                at += 1


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
    tables, alone, joined = held["tables"], str(held["alone"]).split(" "), held["joined"]
    assert isinstance(tables, dict)
    assert isinstance(joined, dict)
    values = _numbers(held["values"])
    return Model(
        tuple(_listed(held["incidents"])),
        Tables(tables["forms"], tables["compounds"], tables["things"], frozenset(tables["little"])),
        {one: place for place, one in enumerate([*alone, *_joined(joined)])},
        tuple(accumulate(sums(_numbers(held["sizes"])), initial=0)),
        _numbers(held["gaps"]),
        _numbers(held["weights"]),
        values,
        float(str(held["sharpness"])),
        str(held["made_from"]),
        _by_first_letter(alone, values),
    )


def sums(numbers: Iterable[int]) -> Iterator[int]:
    """Yield numbers of any size: :data:`MOST` goes on in the next."""
    begun = 0
    for one in numbers:
        begun += one
        if one < MOST:
            yield begun
            begun = 0


def _numbers(signs: object) -> bytes:
    return str(signs).encode("ascii").translate(NUMBER_OF_SIGN)


def _joined(lines: Mapping[str, str]) -> Iterator[str]:
    """Yield features of two parts: by what joins them, a line for each first part with all its second ones."""
    for joint, told in lines.items():
        for line in told.split("\n"):
            first, *seconds = line.split(" ")
            yield from (f"{first}{joint}{second}" for second in seconds)


def _by_first_letter(alone: Sequence[str], values: bytes) -> dict[str, list[tuple[str, int]]]:
    found: dict[str, list[tuple[str, int]]] = {}
    for one, rarity in zip(alone, values, strict=False):
        if one.isalpha():
            found.setdefault(one[0], []).append((one, rarity))
    return found


def _listed(value: object) -> list[str]:
    assert isinstance(value, list)
    return value
