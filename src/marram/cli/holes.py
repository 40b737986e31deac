"""``marram course holes`` and ``marram course marking``: the Committee's papers."""

import json
from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import Any

from shapely.geometry import Point

from marram.cli.show import Line, print_json, show_lines
from marram.cli.writing import write_files
from marram.course import check, load
from marram.course.checks.marking import marking_sheet
from marram.course.greens.elevation import read_elevations
from marram.course.greens.green_frame import GreenFrame
from marram.course.greens.hole_locations import propose
from marram.course.greens.hole_warnings import hole_warnings
from marram.course.greens.slope import GreenSlopes, Slope, in_percent, slope_limits
from marram.course.model import Course
from marram.errors import InputError
from marram.rules.plain import as_plain
from marram.said import said
from marram.words.faults import fault_words
from marram.words.spoken import spoken
from marram.words.texts import count_text, text


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
    elevations: Sequence[Path] = (),
    crs: str | None = None,
    green_speed: float | None = None,
) -> None:
    """Propose hole locations, or take those of a file, and print their sheet."""
    course = load(path)
    slopes = green_slopes(course, elevations, crs, green_speed)
    without: Mapping[int, str] = {}
    if chosen is not None:
        places = read_places(course, chosen)
    else:
        used: dict[int, list[Point]] = {}
        for one in recent:
            for number, place in read_places(course, one).items():
                used.setdefault(number, []).append(place)
        proposal = propose(course, recent=used, seed=seed, slopes=slopes)
        places = {number: location.place for number, location in proposal.locations.items()}
        without = proposal.without
    numbers = {number: GreenFrame.of(course.holes[number]).numbers(place) for number, place in places.items()}
    contents: dict[Path, bytes] = {}
    if pdf is not None:
        from marram.paper.hole_location_sheet import sheet_pdf

        contents[pdf] = sheet_pdf(course, places, title=title or course.name, day=day, slopes=slopes)
    if svg is not None:
        from marram.paper.hole_location_sheet import sheet_svg

        contents[svg] = sheet_svg(course, places, slopes).encode()
    write_files(contents)
    ground = (
        {number: slopes.surfaces[number] for number in places if number in slopes.surfaces} if slopes else {}
    )
    slope = {
        number: ground[number].at(place) if number in ground else None for number, place in places.items()
    }
    against = {
        number: hole_warnings(course.holes[number], place, slopes=slopes) for number, place in places.items()
    }
    if as_json:
        rows = [
            {
                "hole": number,
                "longitude": round(course.plane.to_degrees(place.x, place.y)[0], 8),
                "latitude": round(course.plane.to_degrees(place.x, place.y)[1], 8),
                **as_plain(numbers[number]),
                "slope": as_plain(slope[number]),
                "warnings": as_plain(against[number]),
            }
            for number, place in places.items()
        ]
        document = {"marram": 1, "kind": "hole_locations", "locations": rows, "without": as_plain(without)}
        print_json({**document, "slope_considered": slopes is not None})
        return

    def lines() -> Iterator[Line]:
        yield "title", text("cli.holes.title", course=course.name)
        for number, one in sorted(numbers.items()):
            depth, across = one.in_paces()
            falls = _falls(course, number, slope[number])
            yield (
                "item",
                text(
                    "cli.holes.place_slope" if falls else "cli.holes.place",
                    hole=number,
                    front=depth,
                    side=across,
                    which=text(f"holes.side.{one.side.value}"),
                    slope=falls,
                ),
            )
            for warning in against[number]:
                yield "item", text("cli.holes.warning", hole=number, warning=spoken(warning.words))
        for number, why in without.items():
            yield "item", text("cli.holes.none", hole=number, why=spoken(why))
        yield "quiet", _about_slope(slopes, [number for number, one in slope.items() if one is None])

    show_lines(lines())


def green_slopes(
    course: Course, paths: Sequence[Path], crs: str | None, green_speed: float | None
) -> GreenSlopes | None:
    """Return the ground of the greens, or ``None`` where no elevations are given.

    Raises:
        InputError: a file, the coordinate system or the green speed cannot be used.
    """
    if not paths:
        if crs is not None or green_speed is not None:
            raise InputError(
                said("A green speed or a coordinate system needs elevations: give --elevations FILE.")
            )
        return None
    limits = slope_limits(green_speed)
    return GreenSlopes(course, read_elevations(course, paths, crs), limits)


def _falls(course: Course, hole: int, slope: Slope | None) -> str:
    if slope is None:
        return ""
    if slope.percent < 0.05:
        return text("cli.holes.level")
    way = GreenFrame.of(course.holes[hole]).way(slope.fall)
    return text("cli.holes.falls", percent=slope.percent, way=spoken(way))


def _about_slope(slopes: GreenSlopes | None, unknown: Sequence[int]) -> str:
    """Return what was done about slope, and who decides."""
    if slopes is None:
        return text("cli.holes.no_slope")
    limits = slopes.limits
    speed = (
        text("cli.holes.speed", feet=limits.green_speed) if limits.green_speed else text("cli.holes.no_speed")
    )
    told = {
        "recommended": in_percent(limits.recommended),
        "critical": in_percent(limits.critical),
        "speed": speed,
    }
    if not unknown:
        return text("cli.holes.slope", **told)
    return count_text("cli.holes.slope_gaps", len(unknown), holes=", ".join(map(str, unknown)), **told)


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
            said(
                "{path} holds no hole locations ({name__}: {error}). Start from what 'marram course holes FILE --json' prints.",
                path=path,
                name__=type(error).__name__,
                error=error,
            )
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

        write_files({pdf: marking_pdf(course, faults, day=day)})
    if as_json:
        print_json({"marram": 1, "kind": "marking_sheet", "sheets": as_plain(sheets)})
        return

    def lines() -> Iterator[Line]:
        yield "title", text("cli.marking.title", course=course.name)
        for sheet in sheets:
            yield (
                "head",
                text("marking.the_course") if sheet.hole is None else text("marking.hole", hole=sheet.hole),
            )
            for one in sheet.tasks:
                yield "item", fault_words(one)
        if not sheets:
            yield "text", text("marking.nothing")

    show_lines(lines())
