"""Checks of a whole map: what an official would find walking it with the card and the Rules in hand."""

from collections.abc import Iterator, Sequence
from itertools import groupby

import numpy as np
import shapely
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

from marram.course.checks.almost_joined import check_almost_joined
from marram.course.checks.evacuation_checks import check_evacuation
from marram.course.checks.hole_checks import check_holes
from marram.course.checks.latitude_first import check_latitude_first
from marram.course.checks.refusing import OVERLAP, SPECIFIC, all_out_of_bounds, areas_outside
from marram.course.checks.relief_checks import check_relief
from marram.course.checks.stake_checks import check_stakes
from marram.course.checks.unsettled_checks import check_unsettled
from marram.course.checks.water_checks import check_water
from marram.course.fault import Fault, FaultList
from marram.course.feature_index import as_array
from marram.course.model import Course, Feature, Kind
from marram.course.near_pairs import near_pairs
from marram.course.near_parts import near_parts
from marram.course.progress import CHECKING, Progress, no_progress, part_of
from marram.course.scheme import PENALTY_AREA
from marram.said import Said, all_of, counted, joined, said

RED, YELLOW = said("red"), said("yellow")
"""Colours of penalty areas: the words for them are the values of the tag."""

MOST = 10
"""So many overlaps of one area with others are told one by one; more of them in one sentence (own choice)."""

AROUND = 1.0
"""Metres: of an area with very many corners, this much around another is looked at to see what they share (own choice)."""


def check_course(course: Course, progress: Progress = no_progress) -> list[Fault]:
    """Return what is wrong with a map that could be put together; ``progress`` is told before each check, and within long ones."""
    faults = FaultList(course.plane)
    checks = (
        check_latitude_first,
        check_holes,
        _greens,
        check_water,
        check_unsettled,
        _colours,
        _overlaps,
        check_almost_joined,
        all_out_of_bounds,
        areas_outside,
        check_relief,
        check_evacuation,
        check_stakes,
        _holes_named,
        _paths,
        _cut,
    )
    for place, one in enumerate(checks):
        begun = part_of(progress, place / len(checks), (place + 1) / len(checks))
        begun(CHECKING, 0.0)
        if one is check_stakes:  # the one that takes seconds where there are very many
            check_stakes(course, faults, begun)
        else:
            one(course, faults)
    return faults.found


def _cut(course: Course, faults: FaultList) -> None:
    if course.covered is None:
        return
    for boundary in course.of(Kind.BOUNDARY):
        beyond = boundary.geometry.difference(course.covered)
        if beyond.area > OVERLAP:
            faults.warn(
                "cut",
                said(
                    "the file was cut to a rectangle, and {area:.1f} ha of the course lie beyond it: what is "
                    "there may be missing",
                    area=beyond.area / 1e4,
                ),
                said("Export a rectangle that holds the whole course."),
                feature=boundary.ident,
                at=beyond,
            )


def _greens(course: Course, faults: FaultList) -> None:
    for green in course.of(Kind.PUTTING_GREEN):
        if not green.holes and green.tags.get("practice") != "yes":
            faults.note(
                "green_of_no_hole",
                said("no hole ends on this green: on every hole it is read as a wrong green"),
                said("Add ref=<hole number> if it is in use, or practice=yes."),
                feature=green.ident,
                at=green.geometry,
            )
        elif len(green.holes) > 1:
            faults.note(
                "double_green",
                said("holes {holes} share this green", holes=all_of(green.holes)),
                said("Nothing, if it is a double green; else end each line of play on its own green."),
                feature=green.ident,
                at=green.geometry,
            )


def _colours(course: Course, faults: FaultList) -> None:
    for area in course.of(Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA):
        read = RED if area.kind is Kind.RED_PENALTY_AREA else YELLOW
        colour = area.tags.get("colour")
        if colour == read or (colour is None and area.tags.get("marram") != PENALTY_AREA):
            continue
        faults.warn(
            "penalty_area_colour",
            said(
                "the colour of this penalty area is {colour}: it was read as {read}{why}",
                colour=said("not mapped") if colour is None else repr(colour),
                read=read,
                why=said(" (Definition of penalty area)")
                if area.tags.get("marram") == PENALTY_AREA
                else said(", as its other tags say"),
            ),
            said("Look at its stakes or lines, and write colour=red or colour=yellow."),
            feature=area.ident,
            at=area.geometry,
        )


def _overlaps(course: Course, faults: FaultList) -> None:
    for _, found in groupby(_overlapping(course), key=lambda overlap: id(overlap[0])):
        overlaps = list(found)
        first = overlaps[0][0]
        told = [(second, common) for _, second, common in overlaps if common is not None][:MOST]
        for second, common in told:
            _overlap(first, second, common, faults)
        more = [second for _, second, _ in overlaps[len(told) :]]
        if more:
            faults.warn(
                "overlap",
                counted(
                    "{kind} {ident} touches or overlaps one area more ({others})",
                    "{kind} {ident} touches or overlaps {count} areas more ({others})",
                    len(more),
                    kind=first.kind,
                    ident=first.ident,
                    others=_first(more),
                ),
                said("Draw each edge as it is marked on the ground."),
                feature=first.ident,
                at=first.geometry,
            )


def _overlap(first: Feature, second: Feature, common: BaseGeometry, faults: FaultList) -> None:
    colours = {first.kind, second.kind} == {Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA}
    lies = said(": a ball there lies in the one Rule 2.2c puts first")
    if Kind.OUT_OF_BOUNDS in {first.kind, second.kind}:
        lies = said(": a ball there is out of bounds")
    faults.warn(
        "two_colours" if colours else "overlap",
        said(
            "{kind} {ident} and {other_kind} {other_ident} overlap on {area:.0f} m²{lies}",
            kind=first.kind,
            ident=first.ident,
            other_kind=second.kind,
            other_ident=second.ident,
            area=common.area,
            lies="" if colours else lies,
        ),
        said("Draw each edge as it is marked on the ground."),
        feature=first.ident,
        at=common,
    )


def _overlapping(course: Course) -> Iterator[tuple[Feature, Feature, BaseGeometry | None]]:
    """Yield areas of different kinds, and greens, that overlap, each pair once, in the order of the map.

    Of an area that touches very many others, what it shares with the last of them is not worked out: ``None``.
    """
    kinds = (*SPECIFIC, Kind.OUT_OF_BOUNDS)
    areas = course.of(*kinds)
    shapes = as_array(area.geometry for area in areas)
    kind = np.array([kinds.index(area.kind) for area in areas], dtype=int)
    found = [np.empty((0, 2), dtype=int)]
    for number, one in enumerate(kinds):
        own = np.flatnonzero(kind == number)
        others = np.flatnonzero(kind > number - (one is Kind.PUTTING_GREEN))
        which, near = near_pairs(STRtree(shapes[others]), shapes[own])
        found.append(np.sort(np.column_stack([own[which], others[near]])))
    pairs = np.unique(np.vstack(found), axis=0)
    first, second = pairs[pairs[:, 0] < pairs[:, 1]].T
    if not len(first):
        return
    looked_at = np.arange(len(first)) - np.searchsorted(first, first) < 2 * MOST
    commons = np.full(len(first), None, dtype=object)
    commons[looked_at] = shapely.intersection(
        *near_parts(shapes[first[looked_at]], shapes[second[looked_at]], AROUND)
    )
    for pair in np.flatnonzero(~looked_at | (shapely.area(commons) > OVERLAP)).tolist():
        yield areas[first[pair]], areas[second[pair]], commons[pair]


def _holes_named(course: Course, faults: FaultList) -> None:
    for feature in course.features:
        unknown = [number for number in feature.holes if number not in course.holes]
        if unknown:
            faults.warn(
                "hole_unknown",
                said(
                    "it says it belongs to hole {unknown}, which the map does not have",
                    unknown=all_of(unknown),
                ),
                said("Correct its holes or ref, or draw the hole."),
                feature=feature.ident,
                at=feature.geometry,
            )


def _paths(course: Course, faults: FaultList) -> None:
    unknown = [path for path in course.of(Kind.PATH) if "surface" not in path.tags]
    if unknown:
        faults.note(
            "path_without_surface",
            counted(
                "of {count} path ({idents}) the surface is not mapped: only an artificially surfaced path is an obstruction",
                "of {count} paths ({idents}) the surface is not mapped: only an artificially surfaced path is an obstruction",
                len(unknown),
                idents=_first(unknown),
            ),
            said("Add surface=<surface>, such as asphalt, gravel or grass."),
        )
    thin = [path for path in course.of(Kind.PATH) if path.geometry.area == 0]
    if thin:
        faults.note(
            "path_without_width",
            counted(
                "{count} path is a line without a width ({idents}): whether a ball or a stance is on one is decided on "
                "the ground",
                "{count} paths are lines without a width ({idents}): whether a ball or a stance is on one is decided on "
                "the ground",
                len(thin),
                idents=_first(thin),
            ),
            said("Add width=<metres> to the paths that are artificially surfaced."),
        )


def _first(features: Sequence[Feature], most: int = 3) -> Said:
    """Return the identifiers of the first features, with a sign where there are more."""
    return joined(", ", *(one.ident for one in features[:most])) + (" …" if features[most:] else "")
