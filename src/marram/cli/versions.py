"""``marram course versions``: the versions of a map, and which is in force on a day."""

from collections.abc import Iterator
from datetime import date
from pathlib import Path

from marram.cli.show import Line, print_json, show_lines
from marram.course.versions.map_versions import MapVersions
from marram.rules.plain import as_plain


def list_versions(path: Path, folder: Path | None, day: date, as_json: bool) -> None:
    """Print every version of a map and the one in force on ``day``."""
    maps = MapVersions(path, folder)
    versions, in_force, news = maps.versions(), maps.version_on(day), maps.file_news()
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "map_versions",
                "in_force": in_force.number,
                "versions": as_plain(versions),
                "course_file_changes": as_plain(news) if news else None,
            }
        )
        return

    def lines() -> Iterator[Line]:
        yield "title", f"Version {in_force.number} is in force on {day.isoformat()}."
        for one in versions:
            since = (
                "the map as its file holds it"
                if one.number == 1
                else f"from {one.in_force_from}, by {one.who}"
            )
            note = f": {one.note}" if one.note and one.number > 1 else ""
            yield "item", f"version {one.number}, {since}{note}"
            for edit in one.edits:
                yield "quiet", f"      {edit.action} {edit.ident}"
            for later in one.later:
                yield "quiet", f"      carried over into what was prepared from {later.since}"
        if news is not None:
            changed = ", ".join([*(f"{edit.action} {edit.ident}" for edit in news.edits), *news.beside])
            yield (
                "caution",
                news.fault or f"The course file has changed since, and no version holds it: {changed}.",
            )
            yield "text", "Take the changes over, or leave them out, on the desk's page 'Edit the map'."

    show_lines(lines())
