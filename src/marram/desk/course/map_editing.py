"""Edits of the map as people give them: kinds to draw, coordinates as typed, and what an edit did in words."""

import re
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any
from uuid import uuid4

from marram.course.evacuation import Offers
from marram.course.model import Course, Kind
from marram.course.model import Feature as OnCourse
from marram.course.scheme import meaning
from marram.course.versions.map_edits import Edit, Feature, by_ident
from marram.course.versions.map_versions import MapVersions, Version
from marram.errors import InputError
from marram.relief.place.dropping_zones import SERVABLE
from marram.words.ground import ground_words
from marram.words.texts import capital, text


@dataclass(frozen=True, slots=True)
class Drawable:
    """A kind of area that can be drawn, and the tags that say so (``docs/course-map.md``)."""

    kind: Kind
    tags: tuple[str, str]

    @property
    def title(self) -> str:
        """What it is called in a list."""
        return capital(ground_words(self.kind, "drawn"))

    @property
    def servable(self) -> bool:
        """Whether a dropping zone can serve it."""
        return self.kind in SERVABLE


DRAWABLE: tuple[Drawable, ...] = (
    Drawable(Kind.GROUND_UNDER_REPAIR, ("marram", "ground_under_repair")),
    Drawable(Kind.TEMPORARY_WATER, ("marram", "temporary_water")),
    Drawable(Kind.NO_PLAY_ZONE, ("marram", "no_play_zone")),
    Drawable(Kind.DROPPING_ZONE, ("marram", "dropping_zone")),
    Drawable(Kind.RED_PENALTY_AREA, ("golf", "lateral_water_hazard")),
    Drawable(Kind.YELLOW_PENALTY_AREA, ("golf", "water_hazard")),
    Drawable(Kind.OUT_OF_BOUNDS, ("marram", "out_of_bounds")),
    Drawable(Kind.BOUNDARY, ("marram", "boundary")),
    Drawable(Kind.OBSTRUCTION, ("marram", "obstruction")),
    Drawable(Kind.INTEGRAL_OBJECT, ("marram", "integral_object")),
    Drawable(Kind.BUNKER, ("golf", "bunker")),
    Drawable(Kind.PATH, ("golf", "cartpath")),
    Drawable(Kind.FAIRWAY, ("golf", "fairway")),
    Drawable(Kind.PUTTING_GREEN, ("golf", "green")),
    Drawable(Kind.TEEING_AREA, ("golf", "tee")),
    Drawable(Kind.EVACUATION_POINT, ("marram", "evacuation_point")),
)
"""Kinds offered, what changes from day to day first."""

NEAR_HOLE = 60.0
"""Metres: what is as near a line of play is offered as a thing of that hole (a choice of ours)."""

_LONGEST_TALE = 6


def kind_of(feature: dict[str, Any]) -> Kind | None:
    """Return the kind of a GeoJSON feature, or ``None`` when it is no ground a ball can lie on."""
    found = meaning({str(key): str(value) for key, value in (feature.get("properties") or {}).items()})
    return found if isinstance(found, Kind) else None


@dataclass(frozen=True, slots=True)
class Servable:
    """Something that a dropping zone can serve: its identifier, how ``serves`` names it, and the holes it is near."""

    ident: str
    value: str
    words: str
    holes: tuple[int, ...]


def servable(course: Course) -> list[Servable]:
    """Return what dropping zones can serve, those with names first."""
    refs = Counter(feature.ref for feature in course.features if feature.ref)
    found = []
    for feature in course.of(*SERVABLE):
        value = feature.ref if refs[feature.ref] == 1 else feature.ident
        near = (hole for hole in course.holes.values() if hole.line.distance(feature.geometry) <= NEAR_HOLE)
        holes = feature.holes or tuple(hole.number for hole in near)
        words = _called(feature.kind, feature.name) if feature.name else _of_ident(feature)
        found.append((bool(feature.name), Servable(feature.ident, value, words, holes)))
    return [one for _, one in sorted(found, key=lambda named: (not named[0], named[1].words))]


def drawn_area(
    kind: str, name: str, hole: str, places: str, serves: str = "", *, evacuation: str = ""
) -> Edit:
    """Return the edit that adds an area.

    Args:
        kind: one of :data:`DRAWABLE`, by its kind's value.
        name: its name, or nothing.
        hole: the hole or holes it belongs to, such as ``2;16``, or nothing.
        places: its corners in order, one "latitude,longitude" a line.
        serves: what a dropping zone serves, by ``ref`` or identifier, or nothing.
        evacuation: what waits at an evacuation point, by the value of :class:`~marram.course.evacuation.Offers`, or nothing.

    Raises:
        InputError: it cannot be read; every line at fault is named.
    """
    faults: list[str] = []
    chosen = next((one for one in DRAWABLE if one.kind.value == kind), None)
    if chosen is None:
        faults.append(text("editor.fault.kind", kind=kind))
    hole = re.sub(r"[\s,;]+", ";", hole.strip())
    if hole and not re.fullmatch(r"\d+(;\d+)*", hole):
        faults.append(text("editor.fault.hole", hole=hole))
    if serves and kind != Kind.DROPPING_ZONE.value:
        faults.append(text("editor.fault.serves"))
    if evacuation and (
        kind != Kind.EVACUATION_POINT.value or evacuation not in {one.value for one in Offers}
    ):
        faults.append(text("editor.fault.evacuation"))
    corners = _corners(places, faults)
    if faults or chosen is None:
        raise InputError(*faults)
    tags = dict([chosen.tags])
    if name.strip():
        tags["name"] = name.strip()
    if hole:
        tags["ref" if chosen.kind is Kind.TEEING_AREA else "holes"] = hole
    if serves:
        tags["serves"] = serves
    if evacuation:
        tags["evacuation"] = evacuation
    ident = f"drawn/{uuid4().hex[:12]}"
    ring = [*corners, corners[0]]
    return Edit(
        "add",
        ident,
        {
            "type": "Feature",
            "id": ident,
            "properties": tags,
            "geometry": {"type": "Polygon", "coordinates": [ring]},
        },
    )


def _corners(places: str, faults: list[str]) -> list[list[float]]:
    corners: list[list[float]] = []
    for number, line in enumerate(places.splitlines(), 1):
        if not line.strip():
            continue
        parts = re.split(r"[,;\s]+", line.strip())
        try:
            latitude, longitude = map(float, parts)
            if not (abs(latitude) <= 90 and abs(longitude) <= 180):
                raise ValueError
        except ValueError:
            faults.append(text("editor.fault.corner", line=number, given=line.strip()))
            continue
        corners.append([longitude, latitude])
    if len(corners) > 1 and corners[0] == corners[-1]:
        corners.pop()
    if not faults and len(corners) < 3:
        faults.append(text("editor.fault.corners", count=len(corners)))
    return corners


def read_day(given: str) -> date:
    """Return the day a version is in force from.

    Raises:
        InputError: it is no day.
    """
    try:
        return date.fromisoformat(given.strip())
    except ValueError:
        raise InputError(text("editor.fault.day", given=given)) from None


def feature_words(feature: dict[str, Any] | None) -> str:
    """Return what a feature is, and its name."""
    if feature is None:
        return text("editor.an_area")
    return _called(kind_of(feature), (feature.get("properties") or {}).get("name"))


def _called(kind: Kind | None, name: str | None) -> str:
    title = ground_words(kind) if kind else text("editor.a_thing")
    return text("editor.named", kind=title, name=name) if name else title


def _of_ident(feature: OnCourse) -> str:
    return f"{ground_words(feature.kind)} {feature.ident}"


def tale(maps: MapVersions, version: Version, edits: Iterable[Edit] | None = None) -> list[str]:
    """Return what a version changed, one phrase each; of very many only the first are told."""
    chosen = list(version.edits if edits is None else edits)
    before: dict[str, Feature] = {}
    if any(edit.action == "remove" for edit in chosen):
        before = by_ident(maps.document_on(version.in_force_from, version.number - 1))
    return changes_in_words(chosen, before)


def changes_in_words(edits: Sequence[Edit], before: Mapping[str, Feature]) -> list[str]:
    """Return what edits changed on the map ``before`` them, one phrase each; of very many only the first."""
    told = [
        text(f"editor.edit.{edit.action}", area=feature_words(edit.feature or before.get(edit.ident)))
        for edit in edits[:_LONGEST_TALE]
    ]
    if len(edits) > _LONGEST_TALE:
        told.append(text("editor.more_edits", count=len(edits) - _LONGEST_TALE))
    return told
