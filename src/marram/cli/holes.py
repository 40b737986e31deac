"""``marram course holes`` and ``marram course marking``: the Committee's papers."""

import json
from collections.abc import Iterator, Mapping
from datetime import date
from pathlib import Path
from typing import Any

from shapely.geometry import Point

from marram.cli.show import Line, print_json, show_lines
from marram.course import check, load
from marram.course.green_frame import GreenFrame
from marram.course.hole_locations import FROM_EDGE, propose
from marram.course.marking import marking_sheet
from marram.course.model import Course
from marram.errors import InputError
from marram.rules.plain import as_plain


def hole_locations(
    path: Path,
    *,
    seed: int,
    recent: list[Path],
    chosen: Path | None,
    title: str,
    day: date,
    pdf: Path | None,
    svg: Path | None,
    as_json: bool,
) -> None:
    """Propose hole locations, or take those of a file, and print their sheet."""
    course = load(path)
    without: Mapping[int, str] = {}
    if chosen is not None:
        places = read_places(course, chosen)
    else:
        used: dict[int, list[Point]] = {}
        for one in recent:
            for number, place in read_places(course, one).items():
                used.setdefault(number, []).append(place)
        proposal = propose(course, recent=used, seed=seed)
        places = {number: location.place for number, location in proposal.locations.items()}
        without = proposal.without
    numbers = {number: GreenFrame.of(course.holes[number]).numbers(place) for number, place in places.items()}
    if pdf is not None:
        from marram.paper.hole_location_sheet import sheet_pdf

        pdf.write_bytes(sheet_pdf(course, places, title=title or course.name, day=day))
    if svg is not None:
        from marram.paper.hole_location_sheet import sheet_svg

        svg.write_text(sheet_svg(course, places), encoding="utf-8")
    if as_json:
        rows = [
            {
                "hole": number,
                "longitude": round(course.plane.to_degrees(place.x, place.y)[0], 8),
                "latitude": round(course.plane.to_degrees(place.x, place.y)[1], 8),
                **as_plain(numbers[number]),
            }
            for number, place in places.items()
        ]
        print_json({"marram": 1, "kind": "hole_locations", "locations": rows, "without": as_plain(without)})
        return

    def lines() -> Iterator[Line]:
        yield "title", f"Hole locations of {course.name}"
        for number, one in sorted(numbers.items()):
            depth, across = one.in_paces()
            close = " (less than 4 paces from an edge)" if one.from_edge < FROM_EDGE else ""
            yield (
                "item",
                f"hole {number}: {depth} paces from the front, {across} from the {one.side.value}{close}",
            )
        for number, why in without.items():
            yield "item", f"hole {number}: none, because {why}"
        yield "quiet", "A proposal: look at the slope on the green; the Committee decides."

    show_lines(lines())


def read_places(course: Course, path: Path) -> dict[int, Point]:
    """Return the hole locations of a file, as ``marram course holes --json`` prints them.

    Raises:
        InputError: it cannot be read; all faults are listed.
    """
    try:
        document: Any = json.loads(path.read_text(encoding="utf-8"))
        rows = document["locations"]
        found = [(int(row["hole"]), float(row["longitude"]), float(row["latitude"])) for row in rows]
    except (ValueError, KeyError, TypeError) as error:
        raise InputError(
            f"{path} holds no hole locations ({type(error).__name__}: {error}). "
            "Start from what 'marram course holes FILE --json' prints."
        ) from None
    unknown = [
        f"{path}: the course has no hole {number}." for number, _, _ in found if number not in course.holes
    ]
    if unknown:
        raise InputError(*unknown)
    return {number: Point(course.plane.to_metres(lon, lat)) for number, lon, lat in found}


def marking(path: Path, *, day: date, pdf: Path | None, as_json: bool) -> None:
    """Print what to mend before play, hole by hole."""
    course, faults = load(path), check(path)
    sheets = marking_sheet(course, faults)
    if pdf is not None:
        from marram.paper.marking_sheet import marking_pdf

        pdf.write_bytes(marking_pdf(course, faults, day=day))
    if as_json:
        print_json({"marram": 1, "kind": "marking_sheet", "sheets": as_plain(sheets)})
        return

    def lines() -> Iterator[Line]:
        yield "title", f"Marking sheet of {course.name}"
        for sheet in sheets:
            yield "head", "The course" if sheet.hole is None else f"Hole {sheet.hole}"
            for one in sheet.tasks:
                yield "item", str(one)
        if not sheets:
            yield "text", "Nothing to mend was found on the map. Walk the course all the same."

    show_lines(lines())
