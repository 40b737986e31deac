"""``marram relief``: the options at a place on a course, drawn to scale."""

import json
import sys
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from marram.cli import long_work
from marram.cli.exits import DECIDED, MORE_FACTS_NEEDED
from marram.cli.facts import facts_given
from marram.cli.places import place_given, places_given
from marram.cli.relief_report import FlagGiven, Report
from marram.cli.ruling import exit_code
from marram.cli.show import print_json, show_lines
from marram.cli.writing import different, write_files
from marram.course import load
from marram.course.model import Course
from marram.course.versions.folder import default_folder
from marram.errors import BadCourse, InputError, did_you_mean, shown
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.pictures.sheet import sheet_svg
from marram.relief.place.player import USUAL_CLUB_LENGTH, Player
from marram.rules.former_names import incident_now
from marram.rules.ruling import Ruling
from marram.said import said, sentences
from marram.services.cases.conditions import Conditions
from marram.services.cases.given import form_given, local_rules_in_force, sides_given
from marram.services.cases.places import Degrees, Places
from marram.services.cases.rulings import Asked, rule_at_place
from marram.services.ground.drops import check_drops
from marram.services.ground.lies import to_plane
from marram.services.ground.marked import zones_not_offered
from marram.services.ground.relief import draw_options
from marram.words.texts import text

if TYPE_CHECKING:
    from marram.course.versions.hole_days import HoleVersion
    from marram.course.versions.map_versions import Version

DROP = ("dropped", "at-rest")
"""Places of a ball that was dropped; the others are those of the case."""


@dataclass(frozen=True)
class Request:
    """What the command line gave."""

    course: Path
    hole: int
    places: Mapping[str, str | None]
    day: date
    club_length: float | None
    hand: str | None
    incident: str | None
    facts: Sequence[str]
    form: str | None = None
    sides: str | None = None
    local_rules: Sequence[str] | None = None
    drop: int = 1
    maps: Path | None = None
    condition: str | None = None
    tall: bool | None = None
    flag: str | None = None

    @property
    def written(self) -> dict[str, str]:
        """The places given, as they were written."""
        return {name: text for name, text in self.places.items() if text is not None}

    def asked(self, places: Mapping[str, Degrees], flag: Degrees | None) -> Asked:
        """Return what the Rules are asked; with no incident given no Local Rule is in force unless one is named."""
        adopted = local_rules_in_force(self.local_rules, self.day)
        in_force = adopted.in_rulings if adopted else None if self.incident else ()
        length = USUAL_CLUB_LENGTH if self.club_length is None else self.club_length
        conditions = Conditions(
            self.day,
            form_given(self.form),
            sides_given(self.sides),
            in_force,
            self.hand,
            Player(length).club_length,
        )
        return Asked(
            conditions,
            incident_now(self.incident) if self.incident else None,
            self.hole,
            Places({role: at for role, at in places.items() if role not in DROP}),
            facts_given(self.facts),
            self.condition,
            tall=self.tall,
            flag=flag,
        )


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
            from marram.relief.pictures.geojson import feature_collection

            document = feature_collection([area for areas in drawn for area in areas], course.plane)
            contents[self.geojson] = json.dumps(document).encode()
        write_files(contents)

    def check(self, course: Path) -> None:
        """Check that each file has a name of its own, and none is the map.

        Raises:
            InputError: one has not.
        """
        different(self.svg, self.png, self.geojson, read=(course,))

    @property
    def named(self) -> str:
        """The files asked for, as a sentence names them; empty when there is none."""
        return text("cli.and").join(
            str(path) for path in (self.svg, self.png, self.geojson) if path is not None
        )


def draw_relief(request: Request, files: Files, as_json: bool) -> None:
    """Print the options at a place and write their drawing; check a dropped ball, if one is given."""
    if request.hand not in (None, "right", "left"):
        raise InputError(said("--hand {hand!r}: give right or left.", hand=request.hand))
    files.check(request.course)
    with long_work.shown():
        course, version, holes = _course(request)
    course, flag = (course, None) if request.flag is None else _with_flag(course, request.hole, request.flag)
    _check_condition(course, request.condition)
    at = places_given(course, request.written)
    ruled = rule_at_place(course, request.asked(at, flag.place if flag else None))
    options = ruled.result.relief if isinstance(ruled.result, Ruling) else ()
    drawn = draw_options(
        course, ruled, options, {role: f"--{role} {text}" for role, text in request.written.items()}
    )
    dropped, at_rest = (to_plane(course, at[role]) if role in at else None for role in DROP)
    drops = check_drops(drawn, dropped, at_rest, request.drop)
    areas = [one.areas for one in drawn if one.areas]
    if areas:
        files.write(areas, course)
    report = Report(
        request.incident is None and request.local_rules is None,
        ruled,
        drawn,
        drops,
        version,
        holes,
        zones_not_offered(course, ruled),
        flag,
    )
    if as_json:
        print_json(report.document())
    else:
        show_lines(report.lines(files.svg if areas else None))
    if files.named and not areas:
        print(text("cli.relief.not_written", files=files.named), file=sys.stderr)
    assert ruled.result is not None
    code = exit_code(ruled.result)
    raise SystemExit(code if code != DECIDED or areas or not drawn else MORE_FACTS_NEEDED)


def _check_condition(course: Course, ident: str | None) -> None:
    """Check that a condition named is on the map, whether or not the ruling comes to it.

    Raises:
        InputError: nothing on the map has that identifier.
    """
    known = [feature.ident for feature in course.features]
    if ident is not None and ident not in known:
        raise InputError(
            sentences(
                said("--condition {ident}: nothing on the map has this identifier.", ident=shown(ident)),
                did_you_mean(ident, known),
                said("Leave it out to be told what is near."),
            )
        )


def _with_flag(course: Course, number: int, flag: str) -> tuple[Course, FlagGiven]:
    from marram.course.greens.cut_holes import with_hole_at

    if number < 1:
        raise InputError(said("--hole {number}: holes are numbered from 1.", number=number))
    at = place_given(course, "flag", flag)
    return with_hole_at(course, number, at[::-1]), FlagGiven(at, number in course.holes)


def _loaded(request: Request) -> Course:
    """Return the map; where the flag is given no line of play is needed, and where it would help that is said."""
    try:
        return load(request.course, lines_needed=request.flag is None)
    except BadCourse as error:
        if request.flag is not None or not _serves_without_lines(request.course):
            raise
        raise BadCourse(
            *error.faults,
            said("Or say with --flag LON,LAT where the hole is cut: relief needs no line of play."),
            mendable=error.mendable,
        ) from None


def _serves_without_lines(path: Path) -> bool:
    try:
        load(path, lines_needed=False)
    except BadCourse:
        return False
    return True


def _course(request: Request) -> tuple[Course, "Version | None", "HoleVersion | None"]:
    """Return the map in force on the day with its holes as cut then, and the versions of both where they are kept.

    The desk keeps them in the default folder, so that both rule on the same map and the same holes.
    """
    folder = request.maps or default_folder(request.course)
    if request.maps is None and not folder.is_dir():
        return _loaded(request), None, None
    from marram.course.greens.cut_holes import with_holes_cut
    from marram.course.versions.hole_days import HoleDays
    from marram.course.versions.map_versions import MapVersions

    maps = MapVersions(request.course, folder)
    if maps.file_news() is not None:
        print(
            text("cli.relief.map_changed", file=request.course),
            file=sys.stderr,
        )
    version = maps.version_on(request.day)
    holes = HoleDays(folder / "hole-locations").latest(request.day)
    course = maps.course(version.number, request.day)
    return with_holes_cut(course, holes.places) if holes else course, version, holes
