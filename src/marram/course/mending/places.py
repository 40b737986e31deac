"""Places that cannot be right: longitude and latitude swapped, other coordinate systems, beyond the antimeridian."""

from collections.abc import Callable, Sequence
from copy import deepcopy
from typing import Any

import numpy as np
from pyproj import CRS, Transformer
from pyproj.exceptions import CRSError, ProjError

from marram.course.fault import Fault
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import Setting
from marram.course.reading.assembly import AS_WRITTEN
from marram.course.reading.geojson import WGS84, crs_of
from marram.course.reading.geojson_geometry import Unreadable, geometry_of
from marram.course.reading.selection import FURTHEST_DEGREES
from marram.course.versions.map_edits import Edit
from marram.said import said

Place = Callable[[float, float], tuple[float, float]]
"""How a position is moved: from two numbers to longitude and latitude."""


def swap(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to swap longitude and latitude of one feature, or of all where none is right as it stands."""
    feature = setting.features.get(fault.feature)
    if feature is None:
        return None
    wrong = [ident for ident, readable in setting.used.items() if not readable]
    right = len(wrong) < len(setting.used)
    choices = []
    if wrong and not right and (edits := _moved(setting, wrong, _swapped)):
        adds = (said("{count} features are changed", count=len(edits)),)
        choices.append(Choice(said("Swap longitude and latitude of the whole map"), edits, adds))
        why = said(
            "No position of the map is right as it stands, and every one would be with its two numbers swapped."
        )
        return offer(
            "swap",
            fault,
            why,
            choices,
            also=[one for one in setting.faults if one.check == fault.check and one != fault],
        )
    if edits := _moved(setting, [fault.feature], _swapped):
        if not _near_others(setting, edits[0]):
            return None
        choices.append(Choice(said("Swap its longitude and latitude"), edits))
    return offer("swap", fault, said("Swapped, it lies where the rest of the course is."), choices)


def turn_back(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to write longitudes beyond 180 degrees as what they are on the other side of the antimeridian."""
    if fault.feature not in setting.features:
        return None
    edits = _moved(
        setting, [fault.feature], lambda x, y: (x - 360 if x > 180 else x + 360 if x < -180 else x, y)
    )
    why = said("A longitude beyond 180° is the same place as one on the other side of the antimeridian.")
    return offer("turn_back", fault, why, [Choice(said("Write its longitudes within 180°"), edits)])


def transform(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to compute WGS 84 from the coordinate system the file names, or to take its positions for WGS 84."""
    crs = crs_of(setting.document)
    every = list(setting.used)
    choices = []
    degrees = _moved(setting, every, lambda x, y: (x, y))
    if crs.name and not (len(degrees) == len(every) and _in_metres(crs.name)):
        edits = _moved(setting, every, _from(crs.name))
        choices.append(
            Choice(
                said("Compute WGS 84 from {system}", system=crs.name),
                _own_crs(setting, edits) if edits else (),
            )
        )
    if len(degrees) == len(every):
        adds = (said("only right if the positions are longitude and latitude already"),)
        choices.append(Choice(said("Take its positions as WGS 84 degrees"), _own_crs(setting, degrees), adds))
    why = said("All of marram's positions are WGS 84 longitude and latitude in degrees.")
    return offer("transform", fault, why, choices)


def swap_all(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to swap longitude and latitude of every feature of a map that looks swapped, or to say that they are right."""
    every = list(setting.used)
    edits = _moved(setting, every, _swapped)
    adds = (said("{count} features are changed", count=len(edits)),)
    key, value = AS_WRITTEN
    first = next(iter([*setting.golf, *every]), None)
    choices = [
        Choice(said("Swap longitude and latitude of the whole map"), edits, adds),
        Choice(
            said("The course does lie there: its positions are right"),
            (setting.retag(first, **{key: value}),) if first else (),
        ),
    ]
    return offer("swap", fault, said("Read the other way round, it looks like a course."), choices)


def _swapped(x: float, y: float) -> tuple[float, float]:
    return y, x


def _from(name: str) -> Place | None:
    try:
        transformer = Transformer.from_crs(CRS.from_user_input(name), "EPSG:4326", always_xy=True)
    except CRSError:
        return None

    def place(x: float, y: float) -> tuple[float, float]:
        longitude, latitude = transformer.transform(x, y, errcheck=True)
        return round(float(longitude), 8), round(float(latitude), 8)

    return place


def _in_metres(name: str) -> bool:
    """Whether a coordinate system is no degrees, so that positions within 180 and 90 cannot be meant in it."""
    try:
        return bool(CRS.from_user_input(name).is_projected)
    except CRSError:
        return False


def _moved(setting: Setting, idents: Sequence[str], place: Place | None) -> tuple[Edit, ...]:
    """Return the edits that move every position of features; those that could not be read then are left out."""
    edits: list[Edit] = []
    if place is None:
        return ()
    for ident in idents:
        geometry: Any = setting.features[ident].get("geometry")
        try:
            made = {**deepcopy(geometry), "coordinates": _each(geometry["coordinates"], place)}
            geometry_of(made)
        except (Unreadable, TypeError, KeyError, ValueError, ProjError):
            continue
        edits.append(setting.redraw(ident, made))
    return tuple(edits)


def _each(value: Any, place: Place) -> Any:
    if value and all(isinstance(number, int | float) for number in value):
        return [*place(value[0], value[1]), *value[2:]]
    return [_each(part, place) for part in value]


def _own_crs(setting: Setting, edits: Sequence[Edit]) -> tuple[Edit, ...]:
    """Return the edits with WGS 84 named at each feature of the map, which goes before what the file names."""
    crs = {"type": "name", "properties": {"name": WGS84}}
    given = {edit.ident: edit.feature or {} for edit in edits}
    features = ((ident, given.get(ident, feature)) for ident, feature in setting.features.items())
    return tuple(Edit("change", ident, {**deepcopy(feature), "crs": crs}) for ident, feature in features)


def _near_others(setting: Setting, edit: Edit) -> bool:
    """Whether an edited feature lies where most others do; where no other can be read, nothing speaks against it."""
    middle = geometry_of((edit.feature or {}).get("geometry")).centroid
    others = setting.golf_middles[[ident != edit.ident for ident in setting.golf]]
    near = np.abs(others - (middle.x, middle.y)).max(axis=1, initial=0.0) <= FURTHEST_DEGREES
    return int(near.sum()) * 2 >= len(others)
