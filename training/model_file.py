"""The file that ships, written so that it compresses well: one sign for a number, equal kinds side by side.

Incidents stand in the order of how many features speak of them, so that steps between them are short; a feature of two
parts is told by its second part, under its first.
"""

import json
import re
from collections.abc import Iterable, Iterator, Mapping

import numpy as np

from marram.rules.finding.model import BELOW, MOST, ZERO
from marram.rules.finding.sentence import Tables
from marram.rules.incidents import INCIDENTS
from training.fitting import Rounded, kind
from training.material import NOTHING, digest

JOINTS: Mapping[str, str] = {"pair": " ", "near": "~", "beside": ""}
"""By the kind of a feature of two parts: what stands between them."""
PARTS = re.compile(r"(<[^>]+>|[^<>]+)(<[^>]+>|[^<>]+)")
"""A kind of thing beside a stem, or a stem beside it."""


def document(found: Rounded, held: Tables, sharpness: float) -> str:
    """Return the file of weights.

    Args:
        found: the weights, rounded.
        held: the tables of words.
        sharpness: by how much a score must be multiplied to be a logarithm of odds.
    """
    columns = _columns(found)
    alone = [one for one in found.features if kind(one) not in JOINTS]
    joined = {joint: _by_first_part(found.features, named) for named, joint in JOINTS.items()}
    order = [
        *alone,
        *(
            f"{one}{joint}{two}"
            for joint, lines in joined.items()
            for one, seconds in lines.items()
            for two in seconds
        ),
    ]
    places = {one: place for place, one in enumerate(found.features)}
    rows = [list(_steps(found.weights[places[one], columns])) for one in order]
    plain = {
        "marram": 2,
        "kind": "finding_model",
        "made_from": digest(),
        "incidents": [found.incidents[at] for at in columns[:-1]],
        "sharpness": round(sharpness, 6),
        "tables": {
            "forms": dict(sorted(held.forms.items())),
            "compounds": dict(sorted(held.compounds.items())),
            "things": dict(held.things),
            "little": sorted(held.little),
        },
        "alone": " ".join(alone),
        "joined": {
            joint: "\n".join(" ".join((one, *seconds)) for one, seconds in lines.items())
            for joint, lines in joined.items()
        },
        "values": _signs(int(found.values[places[one]]) for one in order),
        "sizes": _signs(part for row in rows for part in _parts(len(row))),
        "gaps": _signs(gap for row in rows for gap, _ in row),
        "weights": _signs(weight + BELOW for row in rows for _, weight in row),
    }
    return json.dumps(plain, ensure_ascii=True, separators=(",", ":")) + "\n"


def _columns(found: Rounded) -> list[int]:
    """Return the places of the incidents, what most features speak of first; last, that it is none of them."""
    spoken = np.count_nonzero(found.weights, axis=0)
    place = {one: at for at, one in enumerate(found.incidents)}
    ordered = sorted(
        (place[one.name] for one in INCIDENTS), key=lambda at: (-spoken[at], found.incidents[at])
    )
    return [*ordered, place[NOTHING]]


def _by_first_part(features: Iterable[str], named: str) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for one in features:
        if kind(one) == named:
            first, second = one.split(JOINTS[named]) if JOINTS[named] else _beside(one)
            found.setdefault(first, []).append(second)
    return dict(sorted(found.items()))


def _beside(feature: str) -> tuple[str, str]:
    parts = PARTS.fullmatch(feature)
    assert parts is not None
    return parts[1], parts[2]


def _steps(weights: np.ndarray) -> Iterator[tuple[int, int]]:
    """Yield the steps of a row: over how many incidents each leads, and the weight there."""
    at = 0
    for place in np.flatnonzero(weights):
        while place - at > MOST:
            yield MOST, 0
            at += MOST
        yield int(place) - at, int(weights[place])
        at = int(place) + 1


def _parts(number: int) -> Iterator[int]:
    """Yield a number of any size as :func:`marram.rules.finding.model.sums` reads it."""
    while number >= MOST:
        yield MOST
        number -= MOST
    yield number


def _signs(numbers: Iterable[int]) -> str:
    return "".join(chr(ZERO + one) for one in numbers)
