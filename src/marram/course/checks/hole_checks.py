"""Checks of the holes of a map: which there are, their lines of play, pars and stroke indexes."""

from collections import defaultdict
from collections.abc import Iterable

from shapely.geometry import Point

from marram.course.checks.par_by_length import recommended_pars
from marram.course.checks.refusing import line_backwards
from marram.course.fault import FaultList
from marram.course.model import Course, Hole
from marram.said import one_of, said


def check_holes(course: Course, faults: FaultList) -> None:
    """Note what is wrong with the holes of a map."""
    _missing_holes(course, faults)
    for hole in course.holes.values():
        _check_line(course, hole, faults)
        _check_par(hole, faults)
    _stroke_indexes(course, faults)


def missing_numbers(holes: Iterable[int]) -> list[int]:
    """Return the numbers of the holes that a map lacks: up to the next 9, 18, 27 or 36; of a map without any, of 18."""
    numbers = set(holes)
    last = max(numbers, default=18)
    expected = next((n for n in (9, 18, 27, 36) if n >= last), last)
    return sorted(set(range(1, expected + 1)) - numbers)


def _missing_holes(course: Course, faults: FaultList) -> None:
    missing = missing_numbers(course.holes)
    if course.holes and missing:
        numbers, expected = set(course.holes), len(course.holes) + len(missing)
        faults.warn(
            "holes_missing",
            said(
                "{count} of {expected} holes are in the map; missing: {missing}",
                count=len(numbers),
                expected=expected,
                missing=", ".join(map(str, missing)),
            ),
            said(
                "Add their lines of play, or export a larger rectangle. Until then nothing can be answered on them."
            ),
        )


def _check_line(course: Course, hole: Hole, faults: FaultList) -> None:
    start = Point(hole.line.coords[0])
    line_backwards(course, hole, faults)
    if not hole.tees:
        faults.warn(
            "hole_without_tee",
            said("it has no teeing area"),
            said("Draw the tees as areas with golf=tee beside the line of play, or with ref."),
            hole=hole.number,
            at=start,
        )
    if hole.green is not None and hole.green.geometry.distance(hole.location) > 0:
        faults.warn(
            "hole_off_green",
            said(
                "the hole is mapped {distance:.1f} m outside its green",
                distance=hole.green.geometry.distance(hole.location),
            ),
            said("Draw the pin on the green, or end the line of play there."),
            hole=hole.number,
            at=hole.location,
        )


def _check_par(hole: Hole, faults: FaultList) -> None:
    length = hole.line.length
    if hole.par is None:
        faults.warn(
            "no_par", said("it has no par"), said("Add par=<par> to its line of play."), hole=hole.number
        )
    elif hole.par not in (pars := recommended_pars(length)):
        faults.warn(
            "unusual_par",
            said(
                "par {par} is unusual for {length:.1f} m of line of play (recommended: {pars})",
                par=hole.par,
                length=length,
                pars=one_of(pars),
            ),
            said("Check the par and that the line runs from the back tee to the hole."),
            hole=hole.number,
            at=Point(hole.line.coords[0]),
        )


def _stroke_indexes(course: Course, faults: FaultList) -> None:
    by_index: dict[int, list[int]] = defaultdict(list)
    for hole in course.holes.values():
        if hole.stroke_index is None:
            faults.warn(
                "no_stroke_index",
                said("it has no stroke index"),
                said("Add handicap=<stroke index> to its line of play."),
                hole=hole.number,
            )
        else:
            by_index[hole.stroke_index].append(hole.number)
            if hole.stroke_index > max(18, len(course.holes)):
                faults.warn(
                    "bad_stroke_index",
                    said(
                        "stroke index {stroke_index} is more than the number of holes",
                        stroke_index=hole.stroke_index,
                    ),
                    said("Check the card."),
                    hole=hole.number,
                )
    for index, holes in sorted(by_index.items()):
        for number in holes[1:]:
            faults.warn(
                "repeated_stroke_index",
                said("stroke index {index} is also that of hole {holes}", index=index, holes=holes[0]),
                said("Check the card: each stroke index is given once."),
                hole=number,
            )
