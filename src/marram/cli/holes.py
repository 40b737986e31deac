"""``marram course holes`` and ``marram course marking``: the Committee's papers."""

import json
from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import Any

from shapely.geometry import Point

from marram.cli import long_work
from marram.cli.paper_given import paper_given
from marram.cli.show import Line, print_json, show_lines
from marram.cli.writing import different, write_files
from marram.course import load
from marram.course.greens.green_frame import GreenFrame, SheetNumbers
from marram.course.greens.hole_warnings import RecentHole
from marram.course.greens.slope import GreenSlopes, Slope, in_percent
from marram.course.model import Course
from marram.course.reading.files import bytes_of, text_of
from marram.errors import BadPlace, InputError
from marram.rules.plain import as_plain
from marram.said import said
from marram.services.ground.holes import HoleLook, green_slopes, look_at_hole, propose_holes
from marram.services.ground.marking import check_marking
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
    for_players: bool = False,
    paper: str = "a4",
    elevations: Sequence[Path] = (),
    crs: str | None = None,
    green_speed: float | None = None,
) -> None:
    """Propose hole locations, or take those of a file, and print their sheet."""
    different(pdf, svg, read=(path, chosen, *recent, *elevations))
    with long_work.shown():
        course = load(path)
    slopes = _slopes(course, elevations, crs, green_speed)
    without: Mapping[int, str] = {}
    used: dict[int, list[RecentHole]] = {}
    if chosen is not None:
        places = read_places(course, chosen)
    else:
        for one in recent:
            for number, place in read_places(course, one).items():
                used.setdefault(number, []).append(RecentHole(place))
        proposal = propose_holes(course, used, seed, slopes)
        places = {number: location.place for number, location in proposal.locations.items()}
        without = proposal.without
    looks = {
        number: look_at_hole(course, number, place, recent=used.get(number, ()), slopes=slopes)
        for number, place in places.items()
    }
    numbers = {number: _on_green(one) for number, one in looks.items()}
    contents: dict[Path, bytes] = {}
    if pdf is not None:
        from marram.paper.hole_location_sheet import sheet_pdf

        contents[pdf] = sheet_pdf(
            course,
            places,
            title=title or course.name or path.name,
            day=day,
            slopes=slopes,
            for_players=for_players,
            paper=paper_given(paper),
        )
    if svg is not None:
        from marram.paper.hole_location_sheet import sheet_svg

        contents[svg] = sheet_svg(course, places, slopes, for_players=for_players).encode()
    write_files(contents)
    if as_json:
        rows = [
            {
                "hole": number,
                "longitude": one.longitude,
                "latitude": one.latitude,
                **as_plain(one.numbers),
                "slope": as_plain(one.slope),
                "warnings": as_plain(one.warnings),
            }
            for number, one in looks.items()
        ]
        document = {"marram": 1, "kind": "hole_locations", "locations": rows, "without": as_plain(without)}
        print_json({**document, "slope_considered": slopes is not None})
        return

    def lines() -> Iterator[Line]:
        yield "title", text("cli.holes.title", course=course.name or path.name)
        for number, one in sorted(numbers.items()):
            depth, across = one.in_paces()
            falls = _falls(course, number, looks[number].slope)
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
            for warning in looks[number].warnings:
                yield "item", text("cli.holes.warning", hole=number, warning=spoken(warning.words))
        for number, why in without.items():
            yield "item", text("cli.holes.none", hole=number, why=spoken(why))
        yield "quiet", _about_slope(slopes, [number for number, one in looks.items() if one.slope is None])

    show_lines(lines())


def _slopes(
    course: Course, paths: Sequence[Path], crs: str | None, green_speed: float | None
) -> GreenSlopes | None:
    """Return the ground of the greens; what says something of elevations needs some."""
    if not paths and (crs is not None or green_speed is not None):
        raise InputError(
            said("A green speed or a coordinate system needs elevations: give --elevations FILE.")
        )
    return green_slopes(course, paths, crs, green_speed)


def _on_green(look: HoleLook) -> SheetNumbers:
    if look.numbers is None:
        raise BadPlace(
            said(
                "Hole {hole}: {longitude},{latitude} is not on its green; give a place on it.",
                hole=look.hole,
                longitude=look.longitude,
                latitude=look.latitude,
            )
        )
    return look.numbers


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
        rows = json.loads(text_of(str(path), bytes_of(path)))["locations"]
        listed = [(row.get("hole"), row.get("longitude"), row.get("latitude")) for row in rows]
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        listed = []
    if not listed:
        raise InputError(
            said(
                "{path} holds no hole locations. Start from what 'marram course holes FILE --json' prints.",
                path=path,
            )
        )
    odd = [place for place, row in enumerate(listed, 1) if not _is_place(*row)]
    if odd:
        raise InputError(
            *(
                said(
                    "{path}, location {place}: give a hole's number, and longitude and latitude in degrees.",
                    path=path,
                    place=place,
                )
                for place in odd
            )
        )
    found = [(int(hole), float(longitude), float(latitude)) for hole, longitude, latitude in listed]
    unknown = [
        said("{path}: the course has no hole {number}.", path=path, number=number)
        for number, _, _ in found
        if number not in course.holes
    ]
    if unknown:
        raise InputError(*unknown)
    return {number: Point(course.plane.to_metres(lon, lat)) for number, lon, lat in found}


def _is_place(hole: Any, longitude: Any, latitude: Any) -> bool:
    """Whether a hole's number and two finite degrees were given."""
    numbers = all(
        isinstance(one, int | float) and not isinstance(one, bool) for one in (hole, longitude, latitude)
    )
    return (
        numbers and hole == hole // 1 and abs(longitude) <= 180 and abs(latitude) <= 90 and abs(hole) < 1000
    )


def marking(path: Path, *, day: date, pdf: Path | None, paper: str, as_json: bool) -> None:
    """Print what to mend before play, hole by hole."""
    different(pdf, read=(path,))
    found = check_marking(path)
    sheets = found.sheets()
    if pdf is not None:
        write_files({pdf: found.pdf(day, paper_given(paper))})
    if as_json:
        print_json({"marram": 1, "kind": "marking_sheet", "sheets": as_plain(sheets)})
        return

    def lines() -> Iterator[Line]:
        yield "title", text("cli.marking.title", course=found.course.name or path.name)
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
