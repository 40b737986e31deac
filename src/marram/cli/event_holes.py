"""``marram event holes``: hole locations of a day, kept in records, proposed or of a file; their sheet."""

from dataclasses import dataclass
from pathlib import Path

from shapely.geometry import Point

from marram.cli import long_work
from marram.cli.event_here import day_of
from marram.cli.holes import read_places
from marram.cli.paper_given import paper_given
from marram.cli.show import Line, show_lines
from marram.cli.writing import write_files
from marram.course.greens.hole_warnings import RecentHole
from marram.errors import InputError
from marram.records.database import opened
from marram.services.course_kept import course_kept
from marram.services.ground.holes import look_at_hole, propose_holes
from marram.words.spoken import spoken
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class HolesAsked:
    """What holes of a day are wanted, as typed: those of a file, those kept, or with a seed others proposed."""

    day: str
    chosen: Path | None
    seed: int | None
    who: str
    keep: bool
    pdf: Path | None
    paper: str
    for_players: bool


def set_holes(records: str, course: str | None, asked: HolesAsked) -> None:
    """Print where holes are cut on a day, with what speaks against a place; keep them and write their sheet where asked.

    Raises:
        InputError: a place is off its green, nobody says who sets them, or the sheet cannot be written.
    """
    day = day_of(asked.day)
    with opened(records) as there:
        map_on, days = course_kept(there, course)
        with long_work.shown():
            map_ = map_on(day)
        used: dict[int, list[RecentHole]] = {}
        for version in days.recent(day):
            for number, (longitude, latitude) in version.places.items():
                place = Point(map_.plane.to_metres(longitude, latitude))
                used.setdefault(number, []).append(RecentHole(place, version.day))
        kept = days.latest(day)
        if asked.chosen is not None:
            places = read_places(map_, asked.chosen)
        elif kept is not None and asked.seed is None:
            places = {number: Point(map_.plane.to_metres(*at)) for number, at in kept.places.items()}
        else:
            found = propose_holes(map_, used, asked.seed or 0, None)
            places = {number: one.place for number, one in found.locations.items()}
        looks = {
            number: look_at_hole(map_, number, place, recent=used.get(number, ()), slopes=None)
            for number, place in sorted(places.items())
        }
        if off := [number for number, one in looks.items() if one.numbers is None]:
            raise InputError(*(text("holes.fault.off_green", hole=number) for number in off))
        base = len(days.versions(day))
        lines: list[Line] = [("title", day.isoformat())]
        for number, one in looks.items():
            assert one.numbers is not None
            depth, across = one.numbers.in_paces()
            which = text(f"holes.side.{one.numbers.side.value}")
            lines.append(
                ("item", text("cli.holes.place", hole=number, front=depth, side=across, which=which))
            )
            lines += [
                ("item", text("cli.holes.warning", hole=number, warning=spoken(each.words)))
                for each in one.warnings
            ]
        if asked.keep:
            moved = {number: (one.longitude, one.latitude) for number, one in looks.items()}
            version = days.save(day, moved, base=base, who=asked.who)
            lines.append(("quiet", text("event_kept.holes_kept", number=version.number)))
        if asked.pdf is not None:
            from marram.paper.hole_location_sheet import sheet_pdf

            sheet = sheet_pdf(
                map_,
                places,
                title=map_.name or "",
                day=day,
                slopes=None,
                for_players=asked.for_players,
                paper=paper_given(asked.paper),
            )
            write_files({asked.pdf: sheet})
            lines.append(("quiet", text("paper.written", path=asked.pdf)))
        show_lines(lines)
