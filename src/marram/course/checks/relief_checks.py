"""Checks of relief: dropping zones that cannot serve, and ground under repair from which there is no relief."""

import shapely
from shapely.geometry.base import BaseGeometry

from marram.course.fault import FaultList
from marram.course.model import Course, Feature, Kind

SLIVER = 1.0
"""Overlaps up to this many square metres are taken for loose drawing (own choice)."""

AROUND = 1.0
"""How far around ground under repair there must be ground to take relief on, metres (own choice)."""

CONDITIONS = (Kind.GROUND_UNDER_REPAIR, Kind.TEMPORARY_WATER)
PENALTY_AREAS = (Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)

NO_PLACE_TO_DROP = (
    *PENALTY_AREAS,
    Kind.BUNKER,
    Kind.PUTTING_GREEN,
    Kind.OUT_OF_BOUNDS,
    Kind.NO_PLAY_ZONE,
    *CONDITIONS,
)
"""What a dropping zone must not lie in: play from there would meet another Rule at once."""


def check_relief(course: Course, faults: FaultList) -> None:
    """Note dropping zones and ground under repair that do not give the relief they are for."""
    _dropping_zones(course, faults)
    for zone in course.of(Kind.DROPPING_ZONE):
        _zone_overlaps(course, zone, faults)
    for ground in course.of(*CONDITIONS):
        _without_relief(course, ground, faults)


def _dropping_zones(course: Course, faults: FaultList) -> None:
    for zone in course.of(Kind.DROPPING_ZONE):
        served = [f for f in course.features if {f.ref, f.ident} & set(zone.serves) and f is not zone]
        if not served:
            said = (
                f"serves {';'.join(zone.serves)}, which is not in the map"
                if zone.serves
                else "does not say what it serves"
            )
            faults.warn(
                "dropping_zone_for_nothing",
                f"this dropping zone {said}",
                "Add serves=<ref or identifier of the penalty area or other feature>.",
                feature=zone.ident,
                at=zone.geometry,
            )
        holes = [course.holes[number] for number in zone.holes if number in course.holes]
        if not holes:
            faults.warn(
                "dropping_zone_of_no_hole",
                "this dropping zone does not say on which hole it may be used",
                "Add holes=<hole number>.",
                feature=zone.ident,
                at=zone.geometry,
            )
        for hole in holes:
            for area in served:
                gain = area.geometry.distance(hole.location) - zone.geometry.distance(hole.location)
                if gain > 0:
                    faults.warn(
                        "dropping_zone_nearer",
                        f"this dropping zone begins {gain:.1f} m nearer the hole than {area.ident}, which it serves",
                        "Move it back unless that is meant.",
                        feature=zone.ident,
                        hole=hole.number,
                        at=zone.geometry,
                    )


def _zone_overlaps(course: Course, zone: Feature, faults: FaultList) -> None:
    for area in course.of(*NO_PLACE_TO_DROP):
        common = area.geometry.intersection(zone.geometry)
        if common.area > SLIVER:
            faults.warn(
                "dropping_zone_overlap",
                f"{common.area:.0f} m² of this dropping zone lie in {_called(area)}",
                "Move it to ground where the next stroke can be made.",
                feature=zone.ident,
                at=common,
            )


def _without_relief(course: Course, ground: Feature, faults: FaultList) -> None:
    for why, at in _no_relief(course, ground):
        faults.warn(
            "repair_without_relief",
            f"this {_name(ground)} {why}",
            "Mark it where relief can be taken, or decide what players are to do and say so in a Local Rule.",
            feature=ground.ident,
            at=at,
        )


def _no_relief(course: Course, ground: Feature) -> list[tuple[str, BaseGeometry]]:
    """Return why there is no relief from ground under repair, and where."""
    shape = ground.geometry
    penalty = shapely.union_all([area.geometry for area in course.of(*PENALTY_AREAS)])
    inside = shapely.union_all([area.geometry for area in course.of(Kind.BOUNDARY)])
    out = shapely.union_all([area.geometry for area in course.of(Kind.OUT_OF_BOUNDS)])
    if shape.difference(penalty).area <= SLIVER:
        return [("lies in a penalty area, where Rule 16.1a(2) gives no relief", shape)]
    if shape.difference(out).area <= SLIVER or (not inside.is_empty and (shape & inside).area <= SLIVER):
        return [("lies out of bounds, where Rule 16.1a(2) gives no relief", shape)]
    found = [
        (
            f"covers all of {_called(bunker)}, which leaves no complete relief in it (Rule 16.1c)",
            bunker.geometry,
        )
        for bunker in course.of(Kind.BUNKER)
        if bunker.geometry.difference(shape).area <= SLIVER
    ]
    greens = course.of(Kind.PUTTING_GREEN)
    found += [
        (
            f"covers all of {_called(green)}, which leaves no complete relief on it (Rule 16.1d)",
            green.geometry,
        )
        for green in greens
        if green.geometry.difference(shape).area <= SLIVER
    ]
    if found or any((green.geometry & shape).area > SLIVER for green in greens):
        return found
    others = [one.geometry for one in course.of(*NO_PLACE_TO_DROP) if one is not ground]
    around = shape.buffer(AROUND).difference(shape).difference(shapely.union_all(others))
    if not inside.is_empty:
        around = around & inside
    if around.area <= SLIVER:
        return [("has no ground of the general area around it on which relief could be taken", shape)]
    return []


def _called(feature: Feature) -> str:
    return f"{_name(feature)} {feature.name or feature.ident}"


def _name(feature: Feature) -> str:
    return feature.kind.value.replace("_", " ")
