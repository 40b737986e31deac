"""Checks of relief: dropping zones that cannot serve, and ground under repair from which there is no relief."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from marram.course.fault import FaultList
from marram.course.feature_index import FeatureIndex, as_array, index_of
from marram.course.lies.extents import extents
from marram.course.lies.regions import ground_of
from marram.course.lies.united import UnitedArea, unite
from marram.course.model import Course, Feature, Kind
from marram.course.near_parts import near_parts, parts_near
from marram.said import Said, said

SLIVER = 1.0
"""Overlaps up to this many square metres are taken for loose drawing (own choice)."""

AROUND = 1.0
"""How far around ground under repair there must be ground to take relief on, metres (own choice)."""

CUT = 2.0
"""Metres: of an area with very many corners, this much around the ground is looked at (own choice; more than AROUND)."""

FOR_A_TIME = (Kind.GROUND_UNDER_REPAIR, Kind.TEMPORARY_WATER)
"""Conditions that a Committee marks for a time."""
PENALTY_AREAS = (Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)

NO_PLACE_TO_DROP = (
    *PENALTY_AREAS,
    Kind.BUNKER,
    Kind.PUTTING_GREEN,
    Kind.OUT_OF_BOUNDS,
    Kind.NO_PLAY_ZONE,
    *FOR_A_TIME,
)
"""What a dropping zone must not lie in: play from there would meet another Rule at once."""


def check_relief(course: Course, faults: FaultList) -> None:
    """Note dropping zones and ground under repair that do not give the relief they are for."""
    _dropping_zones(course, faults)
    _zone_overlaps(course, faults)
    _without_relief(course, faults)


def _dropping_zones(course: Course, faults: FaultList) -> None:
    by_name: dict[str, list[int]] = defaultdict(list)
    for number, feature in enumerate(course.features):
        for name in {feature.ref, feature.ident}:
            by_name[name].append(number)
    for zone in course.of(Kind.DROPPING_ZONE):
        named = sorted({number for name in zone.serves for number in by_name.get(name, ())})
        served = [course.features[number] for number in named if course.features[number] is not zone]
        if not served:
            what = (
                said(
                    "this dropping zone serves {serves}, which is not in the map",
                    serves=";".join(zone.serves),
                )
                if zone.serves
                else said("this dropping zone does not say what it serves")
            )
            faults.warn(
                "dropping_zone_for_nothing",
                what,
                said("Add serves=<ref or identifier of the penalty area or other feature>."),
                feature=zone.ident,
                at=zone.geometry,
            )
        holes = [course.holes[number] for number in zone.holes if number in course.holes]
        if not holes:
            faults.warn(
                "dropping_zone_of_no_hole",
                said("this dropping zone does not say on which hole it may be used"),
                said("Add holes=<hole number>."),
                feature=zone.ident,
                at=zone.geometry,
            )
        for hole in holes:
            for area in served:
                gain = area.geometry.distance(hole.location) - zone.geometry.distance(hole.location)
                if gain > 0:
                    faults.warn(
                        "dropping_zone_nearer",
                        said(
                            "this dropping zone begins {gain:.1f} m nearer the hole than {area}, which it serves",
                            gain=gain,
                            area=area.ident,
                        ),
                        said("Move it back unless that is meant."),
                        feature=zone.ident,
                        hole=hole.number,
                        at=zone.geometry,
                    )


def _zone_overlaps(course: Course, faults: FaultList) -> None:
    zones = index_of(course, Kind.DROPPING_ZONE)
    for number, areas in _beside(course, zones, 0.0, [[zone] for zone in zones.features]).items():
        for area in areas:
            common = shapely.intersection(area.part, area.ground)
            if common.area > SLIVER:
                faults.warn(
                    "dropping_zone_overlap",
                    said(
                        "{area:.0f} m² of this dropping zone lie in {called}",
                        area=common.area,
                        called=_called(area.feature),
                    ),
                    said("Move it to ground where the next stroke can be made."),
                    feature=zones.features[number].ident,
                    at=common,
                )


@dataclass(frozen=True, slots=True)
class _Beside:
    """Something near a ground where no ball can be dropped.

    Attributes:
        feature: what it is.
        part: of its shape, what lies near the ground.
        ground: of the ground, what lies near the feature.
    """

    feature: Feature
    part: BaseGeometry
    ground: BaseGeometry


def _beside(
    course: Course, grounds: FeatureIndex, distance: float, pieces: Sequence[Sequence[Feature]]
) -> dict[int, list[_Beside]]:
    """Return by the number of a ground everything no further from it, its own pieces aside, where no ball can be dropped."""
    its = [set(map(id, some)) for some in pieces]
    near = index_of(course, *NO_PLACE_TO_DROP).groups(grounds.shapes, distance)
    pairs = [
        (number, feature)
        for number, features in near
        for feature in features
        if id(feature) not in its[number]
    ]
    first = grounds.shapes[[number for number, _ in pairs]] if pairs else as_array(())
    parts = near_parts(first, as_array(feature.geometry for _, feature in pairs), CUT)
    beside: dict[int, list[_Beside]] = defaultdict(list)
    for (number, feature), ground, part in zip(pairs, *parts, strict=True):
        beside[number].append(_Beside(feature, part, ground))
    return beside


def _for_a_time(course: Course) -> Sequence[UnitedArea]:
    """Return the ground that is marked for a time; patches that are joined are one."""
    if course.holes:
        every = ground_of(course, min(course.holes)).conditions
        return [area for area in every if area.kind in FOR_A_TIME]
    return [area for kind in FOR_A_TIME for area in unite(extents(course.of(kind)))]


def _without_relief(course: Course, faults: FaultList) -> None:
    areas = _for_a_time(course)
    grounds = FeatureIndex([replace(area.features[0], geometry=area.geometry) for area in areas])
    # Ground with nothing near it, and all around it in bounds, has room for relief: the strip around any area is
    # more than a square metre.
    near = _beside(course, grounds, AROUND, [area.features for area in areas])
    bounds = shapely.union_all(index_of(course, Kind.BOUNDARY).shapes)
    shapely.prepare(bounds)
    within = None if bounds.is_empty else shapely.contains(bounds, shapely.buffer(grounds.shapes, AROUND))
    parts = parts_near(np.full(len(grounds.features), bounds, dtype=object), grounds.shapes, CUT)
    for number, ground in enumerate(grounds.features):
        clear = within is None or within[number]
        if clear and number not in near:
            continue
        for why, at in _no_relief(ground, near.get(number, []), None if clear else parts[number]):
            faults.warn(
                "repair_without_relief",
                said("this {name} {why}", name=ground.kind, why=why),
                said(
                    "Mark it where relief can be taken, or decide what players are to do and say so in a Local Rule."
                ),
                feature=ground.ident,
                at=at,
            )


def _no_relief(
    ground: Feature, near: Sequence[_Beside], bounds: BaseGeometry | None
) -> Sequence[tuple[str, BaseGeometry]]:
    """Return why there is no relief from ground under repair, and where.

    Args:
        ground: the ground.
        near: everything else near it where no ball can be dropped.
        bounds: what is in bounds near it; ``None`` where all of that is.
    """
    shape = ground.geometry
    if shape.difference(_union(near, *PENALTY_AREAS)).area <= SLIVER:
        return [(said("lies in a penalty area, where Rule 16.1a(2) gives no relief"), shape)]
    out = _union(near, Kind.OUT_OF_BOUNDS)
    if shape.difference(out).area <= SLIVER or (bounds is not None and (shape & bounds).area <= SLIVER):
        return [(said("lies out of bounds, where Rule 16.1a(2) gives no relief"), shape)]
    touching = [one for one in near if one.part.intersects(one.ground)]
    greens = [one for one in touching if one.feature.kind is Kind.PUTTING_GREEN]
    found = [
        (
            said(
                "covers all of {called}, which leaves no complete relief in it (Rule 16.1c)",
                called=_called(bunker.feature),
            ),
            bunker.feature.geometry,
        )
        for bunker in touching
        if bunker.feature.kind is Kind.BUNKER and _covered(bunker)
    ]
    found += [
        (
            said(
                "covers all of {called}, which leaves no complete relief on it (Rule 16.1d)",
                called=_called(green.feature),
            ),
            green.feature.geometry,
        )
        for green in greens
        if _covered(green)
    ]
    if found or any((green.part & green.ground).area > SLIVER for green in greens):
        return found
    around = shape.buffer(AROUND).difference(shape).difference(_union(near, *NO_PLACE_TO_DROP))
    if bounds is not None:
        around = around & bounds
    if around.area <= SLIVER:
        return [(said("has no ground of the general area around it on which relief could be taken"), shape)]
    return []


def _covered(beside: _Beside) -> bool:
    return bool(beside.feature.geometry.difference(beside.ground).area <= SLIVER)


def _union(beside: Sequence[_Beside], *kinds: Kind) -> BaseGeometry:
    return shapely.union_all([one.part for one in beside if one.feature.kind in kinds])


def _called(feature: Feature) -> Said:
    return said("{kind} {name}", kind=feature.kind, name=feature.name or feature.ident)
