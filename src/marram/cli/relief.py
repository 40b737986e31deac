"""``marram relief``: the options at a place on a course, drawn to scale."""

import json
import sys
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from math import hypot
from pathlib import Path
from typing import Any

import marram
from marram.cli.conditions import facts_given, form_given, local_rules_in_force
from marram.cli.drop import drop_checks, drop_lines
from marram.cli.exits import DECIDED
from marram.cli.show import Line, print_json, show_lines
from marram.cli.writing import write_files
from marram.course import load
from marram.course.lies.areas import FURTHEST
from marram.course.model import Course, Feature
from marram.course.versions.map_versions import MapVersions, Version, default_folder
from marram.errors import BadPlace, InputError
from marram.relief import Answer, Drawn, NeedsPlace, NoRelief, Player, Situation, relief_areas
from marram.relief.drop import DropCheck
from marram.relief.geometry.area import ReliefArea
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.pictures.geojson import feature_collection
from marram.relief.pictures.picture_words import assumed_words, measure_words
from marram.relief.pictures.sheet import sheet_svg
from marram.relief.place.dropping_zones import zones_serving
from marram.relief.place.place_facts import CONDITIONS, PlaceFacts, place_facts
from marram.relief.place.place_words import PICKED, missing_words, no_relief_words
from marram.relief.place.player import USUAL_CLUB_LENGTH
from marram.rules.facts.ball import Area
from marram.rules.result import NeedFacts, Result
from marram.rules.ruling import Ruling
from marram.words.relief_options import option_words
from marram.words.sheet import sheet

XY = tuple[float, float]

PREMISES: dict[str, dict[str, str]] = {
    "ball_in_penalty_area": {"found_in_penalty_area": "yes", "last_stroke_from_penalty_area": "no"},
    "unplayable_ball": {"spot_of_ball_known": "yes", "last_stroke_from_penalty_area": "no"},
    "abnormal_course_condition": {
        "interference": "ball",
        "stroke_unreasonable_anyway": "no",
        "only_by_unreasonable_choice": "no",
        "nearest_point_exists": "yes",
    },
}
"""What is taken for granted when only a place is given; each premise is said, and --fact overrides it."""


@dataclass(frozen=True)
class Request:
    """What the command line gave."""

    course: Path
    hole: int
    places: dict[str, str | None]
    day: date
    club_length: float | None
    hand: str | None
    incident: str | None
    facts: Sequence[str]
    form: str | None = None
    local_rules: Sequence[str] | None = None
    drop: int = 1
    maps: Path | None = None


@dataclass(frozen=True)
class Files:
    """Where to write drawings."""

    svg: Path | None = None
    png: Path | None = None
    geojson: Path | None = None

    def write(self, drawn: Sequence[Sequence[ReliefArea]], course: Course) -> None:
        """Write every file asked for."""
        contents: dict[Path, bytes] = {}
        if self.svg is not None:
            contents[self.svg] = sheet_svg(drawn, course).encode()
        if self.png is not None:
            from marram.paper.picture import png

            contents[self.png] = png(sheet_svg(drawn, course))
        if self.geojson is not None:
            document = feature_collection([area for areas in drawn for area in areas], course.plane)
            contents[self.geojson] = json.dumps(document).encode()
        write_files(contents)

    @property
    def named(self) -> str:
        """The files asked for, as a sentence names them; empty when there is none."""
        return " and ".join(str(path) for path in (self.svg, self.png, self.geojson) if path is not None)


def draw_relief(request: Request, files: Files, as_json: bool) -> None:
    """Print the options at a place and write their drawing; check a dropped ball, if one is given."""
    course, version = _course(request)
    hole = course.hole(request.hole)
    at = {name: place(course, name, text) for name, text in request.places.items() if text is not None}
    spot = place_facts(course, hole, at["ball"])
    condition = _condition(course, at["ball"])
    incident = request.incident or _incident(spot, condition)
    premises = {} if request.incident else PREMISES.get(incident, {})
    given = {**spot.facts, **premises, **facts_given(request.facts)}
    adopted = local_rules_in_force(request.local_rules, request.day)
    in_force = adopted.in_rulings if adopted else None if request.incident else ()
    form = form_given(request.form)
    result = marram.rule(incident, given, played_on=request.day, form_of_play=form, local_rules=in_force)
    answers: list[Answer] = []
    zones = zones_serving(course, hole.number, at["ball"], condition)
    if isinstance(result, Ruling):
        situation = Situation(
            course,
            hole.number,
            played_on=request.day,
            player=_player(request),
            ball=at["ball"],
            boundary_point=at.get("boundary"),
            entry=at.get("entry"),
            previous=at.get("previous"),
            last_outside=at.get("outside"),
            estimated=at.get("estimated"),
            provisional=at.get("provisional"),
            condition=condition,
            zone=zones[0] if len(zones) == 1 else None,
        )
        answers = relief_areas(situation, result.relief)
    drawn = [one.areas for one in answers if isinstance(one, Drawn)]
    drops = drop_checks(answers, at.get("dropped"), at.get("at-rest"), request.drop)
    if drawn:
        files.write(drawn, course)
    report = Report(incident, result, answers, spot, given, premises, request, drops, version)
    if as_json:
        print_json(report.document())
    else:
        show_lines(report.lines(files.svg if drawn else None))
    if files.named and not drawn:
        print(f"Nothing could be drawn: {files.named} not written.", file=sys.stderr)
    from marram.cli.ruling import exit_code

    code = exit_code(result)
    raise SystemExit(code if code != DECIDED or drawn or not answers else 3)


def _course(request: Request) -> tuple[Course, Version | None]:
    """Return the map in force on the day, and its version where versions are kept.

    The desk keeps them in the default folder, so that both rule on the same map.
    """
    folder = request.maps or default_folder(request.course)
    if request.maps is None and not folder.is_dir():
        return load(request.course), None
    maps = MapVersions(request.course, folder)
    if maps.file_news() is not None:
        print(
            f"{request.course} has changed since its versions were saved; 'marram course versions' says what.",
            file=sys.stderr,
        )
    version = maps.version_on(request.day)
    return maps.course(version.number, request.day), version


def place(course: Course, name: str, text: str) -> XY:
    """Return a place given as ``LON,LAT`` in the course's local metres.

    Raises:
        InputError: it cannot be read.
    """
    try:
        longitude, latitude = (float(part) for part in text.split(","))
    except ValueError:
        raise InputError(
            f"--{name} {text!r} is not a place; give degrees east, then north, for example -3.0101,56.2503."
        ) from None
    if not (-180 <= longitude <= 180 and -90 <= latitude <= 90):
        raise InputError(f"--{name} {text!r} is not on the globe; give longitude first, then latitude.")
    x, y = course.plane.to_metres(longitude, latitude)
    away = hypot(x, y)
    if away > FURTHEST:
        raise BadPlace(
            f"--{name} {text!r} lies {away / 1000:.0f} km from the middle of the course; "
            "check the map, and that longitude stands first."
        )
    return x, y


def _player(request: Request) -> Player:
    if request.hand not in (None, "right", "left"):
        raise InputError(f"--hand {request.hand!r}: give right or left.")
    hand = None if request.hand is None else request.hand == "right"
    return Player(USUAL_CLUB_LENGTH if request.club_length is None else request.club_length, hand)


def _condition(course: Course, ball: XY) -> Feature | None:
    from shapely import Point

    kinds = CONDITIONS
    near = [one for one in course.of(*kinds) if one.geometry.distance(Point(ball)) <= BALL_RADIUS]
    return near[0] if near else None


def _incident(spot: PlaceFacts, condition: Feature | None) -> str:
    if spot.area is None:
        raise BadPlace(
            "The ball lies out of bounds there: only stroke and distance is left. "
            "Use 'marram rule ball_near_boundary', or give --incident."
        )
    if spot.area is Area.PENALTY_AREA:
        return "ball_in_penalty_area"
    return "abnormal_course_condition" if condition else "unplayable_ball"


@dataclass(frozen=True)
class Report:
    """What the command says."""

    incident: str
    result: Result
    answers: Sequence[Answer]
    spot: PlaceFacts
    given: dict[str, Any]
    premises: dict[str, str]
    request: Request
    drops: Mapping[int, DropCheck]
    version: Version | None = None

    @property
    def in_force_from(self) -> str | None:
        """The day from which the version of the map is in force, but for the map as its file holds it."""
        version = self.version
        return version.since(self.request.day).isoformat() if version and version.saved_at else None

    def lines(self, svg: Path | None) -> Iterator[Line]:
        """Yield the lines of the text report."""
        yield "title", f"The ball lies {self.spot.sentence}, {self.spot.metres:.1f} m from the hole."
        for doubt in self.spot.doubts:
            yield "caution", doubt
        words = sheet(
            self.result,
            form_of_play=form_given(self.request.form),
            given=self.given,
            from_map=tuple(self.spot.facts),
        )
        if isinstance(self.result, NeedFacts):
            yield "text", f"To decide '{self.incident}' this is still needed: {words.headline}"
            yield "text", f"Answer with --fact {self.result.fact}=…"
            return
        yield "text", words.headline
        for name, premise in self.premises.items():
            if self.given[name] == premise:
                yield "quiet", f"Taken for granted: {name}={premise} (change it with --fact)"
        if not self.request.incident and self.request.local_rules is None:
            yield "quiet", "Taken for granted: no Local Rule in force (change it with --local-rule CODE)"
        for number, answer in enumerate(self.answers, start=1):
            option = option_words(answer.option)
            yield "head", f"{number}. {option.title}: {option.cost} ({option.citation})"
            yield from _answer_lines(answer)
            if number in self.drops:
                yield from drop_lines(self.drops[number])
        if svg is not None:
            yield "text", ""
            yield "text", f"Drawn to scale in {svg}."
        if self.version is not None:
            since = f", in force from {self.in_force_from}" if self.in_force_from else ""
            yield "quiet", f"Map version {self.version.number}{since}."
        yield "quiet", words.reminder

    def document(self) -> dict[str, Any]:
        """Return the report as data."""
        from marram.rules.plain import as_plain

        return {
            "marram": 1,
            "kind": "relief",
            "incident": self.incident,
            "played_on": self.request.day.isoformat(),
            "hole": self.request.hole,
            "map_version": self.version.number if self.version else None,
            "map_in_force_from": self.in_force_from,
            "area": self.spot.area.value if self.spot.area else "out_of_bounds",
            "metres_to_hole": round(self.spot.metres, 3),
            "facts": self.given,
            "result": as_plain(self.result),
            "options": [
                {
                    "option": as_plain(answer.option),
                    "state": type(answer).__name__,
                    "lines": [text for _, text in _answer_lines(answer)],
                    "area_m2": [round(area.area_m2, 3) for area in _areas(answer)],
                    "drop": as_plain(self.drops.get(number)),
                }
                for number, answer in enumerate(self.answers, start=1)
            ],
        }


def _areas(answer: Answer) -> tuple[ReliefArea, ...]:
    return answer.areas if isinstance(answer, Drawn) else ()


def _answer_lines(answer: Answer) -> Iterator[Line]:
    if isinstance(answer, NeedsPlace):
        for missing in answer.needs:
            option = PICKED.get(missing)
            flag = "--hand right or --hand left" if missing.value == "handedness" else f"--{option} LON,LAT"
            yield (
                "item",
                f"Not drawn: give {flag}."
                if option or missing.value == "handedness"
                else missing_words(missing),
            )
    elif isinstance(answer, NoRelief):
        yield "item", no_relief_words(answer.why)
    else:
        for area in answer.areas:
            yield "item", f"Relief area of {area.area_m2:.1f} m², club-length {area.club_length:.2f} m."
            for measure in area.measures:
                yield "item", measure_words(measure)
            for key in area.remarks:
                yield "quiet", f"    {assumed_words(key)}"
