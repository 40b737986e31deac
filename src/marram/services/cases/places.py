"""Places as an official gives them: in degrees, each by its role.

An address writes ``ball=55.0012345,3.9912345``, and ``;u=6`` behind where the place is known to 6 m only.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from math import isfinite

from marram.errors import BadPlace
from marram.said import said
from marram.words.texts import text

Degrees = tuple[float, float]
"""Latitude, longitude in degrees."""

ROLES = (
    "ball",
    "entry",
    "boundary",
    "previous",
    "outside",
    "estimated",
    "provisional",
    "left_marker",
    "right_marker",
)
"""The places an official can show on the map, by role."""

FLAG = "flag"
"""The key of the place of the flagstick: it is said of the hole, not of one incident."""

WORST_ACCURACY = 10_000.0
"""Metres: a position known worse than this is none (a choice of ours)."""


@dataclass(frozen=True)
class Places:
    """The places an address holds.

    Attributes:
        at: the places, by role.
        accuracy: how well a place is known, in metres, by role, where the phone said so. It is written as the
            uncertainty of RFC 5870 is, ``;u=``, and goes when the place is shown anew.
    """

    at: dict[str, Degrees] = field(default_factory=dict)
    accuracy: dict[str, float] = field(default_factory=dict)

    def pairs(self) -> list[tuple[str, str]]:
        """Return the places as they stand in an address."""
        return [(role, f"{written(at)}{self._uncertainty(role)}") for role, at in self.at.items()]

    def _uncertainty(self, role: str) -> str:
        return f";u={self.accuracy[role]:g}" if role in self.accuracy else ""


def place_words(role: str) -> str:
    """Return what a place is, in words: ``where the ball lies``."""
    return text(f"rulings.place.{role}")


def read_places(given: Mapping[str, str], faults: list[str]) -> Places:
    """Read the places among the pairs of an address; what is wrong with one is added to ``faults``."""
    places = Places()
    for role in ROLES:
        if given.get(role):
            try:
                at, accuracy = _place(role, given[role])
            except BadPlace as error:
                faults.extend(error.faults)
                continue
            places.at[role] = at
            if accuracy is not None:
                places.accuracy[role] = accuracy
    return places


def read_flag(given: Mapping[str, str], faults: list[str]) -> Degrees | None:
    """Read where the flagstick stands among the pairs of an address; what is wrong with it is added to ``faults``."""
    if not given.get(FLAG):
        return None
    try:
        return _place(FLAG, given[FLAG])[0]
    except BadPlace as error:
        faults.extend(error.faults)
        return None


def written(at: Degrees) -> str:
    """Return a place as it stands in an address."""
    return f"{at[0]:.7f},{at[1]:.7f}"


def _place(role: str, text: str) -> tuple[Degrees, float | None]:
    place, _, uncertainty = text.partition(";")
    try:
        latitude, longitude = (float(part) for part in place.split(","))
    except ValueError:
        latitude = longitude = float("nan")
    if not (-90 <= latitude <= 90 and -180 <= longitude <= 180):
        raise BadPlace(
            said(
                "{role}: {text!r} is not a place. Write latitude,longitude in degrees, e.g. 55.0012345,3.9912345.",
                role=role,
                text=text,
            )
        )
    if not uncertainty:
        return (latitude, longitude), None
    try:
        accuracy = float(uncertainty.removeprefix("u="))
    except ValueError:
        accuracy = float("nan")
    if not (uncertainty.startswith("u=") and isfinite(accuracy) and 0 <= accuracy <= WORST_ACCURACY):
        raise BadPlace(
            said(
                "{role}: {uncertainty!r} does not say how well the place is known. Write metres, 0 to "
                "{worst_accuracy:g}, as in 55.0012345,3.9912345;u=6.",
                role=role,
                uncertainty=uncertainty,
                worst_accuracy=WORST_ACCURACY,
            )
        )
    return (latitude, longitude), accuracy
