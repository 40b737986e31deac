"""What a map file holds before anything is made of it: tagged geometry in degrees, and what could not be read."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault, Severity
from marram.course.reading.files import CannotOpen
from marram.said import counted, said

Position = tuple[float, float]
"""Longitude and latitude in degrees."""

TOO_SHORT = (
    "too_short",
    said("its line has fewer than two different positions"),
    said("Draw the whole line."),
)
WITHOUT_RING = ("no_geometry", said("its area has no ring"), said("Draw its edge."))
"""What is wrong with a geometry that is not one, and what to do: in either form of file."""


@dataclass(frozen=True, slots=True)
class SourceFeature:
    """One tagged thing of the source.

    Attributes:
        ident: its identifier, for messages.
        tags: its tags.
        geometry: its geometry, not yet checked for validity: degrees of longitude and latitude as read, metres once
            the plane of the course is laid.
    """

    ident: str
    tags: Mapping[str, str]
    geometry: BaseGeometry


@dataclass(slots=True)
class Source:
    """A map file as read.

    Attributes:
        features: what could be read and means something for the game.
        faults: what could not.
        credit: the credit line of the data, or an empty string.
        bounds: the rectangle the file was cut to, in degrees, or ``None`` when it does not say.
        readable: whether the file could be read at all.
        partial: what was refused, with what is known of its geometry, and how many of its parts the file lacks.
    """

    features: list[SourceFeature] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    credit: str = ""
    bounds: BaseGeometry | None = None
    readable: bool = True
    partial: list[tuple[SourceFeature, int]] = field(default_factory=list)

    def give_up(self, check: str, what: str, remedy: str) -> "Source":
        """Note that the file as a whole cannot be read, and return the source."""
        self.readable = False
        self.refuse(check, what, remedy)
        return self

    def refuse(
        self, check: str, what: str, remedy: str, ident: str = "", place: Position | None = None
    ) -> None:
        """Note an error at a place in degrees."""
        longitude, latitude = place or (None, None)
        self.faults.append(
            Fault(Severity.ERROR, check, what, remedy, feature=ident, longitude=longitude, latitude=latitude)
        )


def incomplete(ident: str, lost: int, place: Position | None, *, about_golf: bool) -> Fault:
    """Return the fault of a way or relation that the file does not hold whole.

    Args:
        ident: its identifier.
        lost: how many of its parts the file lacks.
        place: a position of it that is known, in degrees; ``None`` where the file holds none at all.
        about_golf: whether it speaks of golf; scenery is only left out.
    """
    return Fault(
        Severity.ERROR if about_golf else Severity.NOTE,
        "incomplete",
        counted("{count} of its parts is not in the file", "{count} of its parts are not in the file", lost)
        + ("" if about_golf else said(": it was left out")),
        said("Export a larger rectangle, or with complete ways and relations.")
        if place
        else said(
            "The file holds no position of it: export it again with the nodes of its ways, which hold the positions."
        ),
        ident,
        None,
        *(place or (None, None)),
    )


def unreadable(error: CannotOpen) -> Source:
    """Return the source of a file that cannot be opened at all."""
    return Source().give_up("unreadable", error.what, error.remedy)


def out_of_range(positions: Sequence[Position]) -> str:
    """Say why positions cannot be WGS 84 longitude and latitude, or return an empty string."""
    for longitude, latitude in positions:
        if abs(longitude) <= 180 and abs(latitude) <= 90:
            continue
        if abs(longitude) <= 90 and abs(latitude) <= 180:
            return said(
                "({longitude:g}, {latitude:g}) has a latitude beyond 90°: longitude and latitude look swapped",
                longitude=longitude,
                latitude=latitude,
            )
        return said(
            "({longitude:g}, {latitude:g}) is not in degrees: these look like metres of some other projection",
            longitude=longitude,
            latitude=latitude,
        )
    return ""
