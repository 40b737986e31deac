"""``marram course versions``: the versions of a map, and which is in force on a day."""

from collections.abc import Iterator
from datetime import date
from pathlib import Path

from marram.cli.show import Line, print_json, show_lines
from marram.course.versions.map_versions import MapVersions
from marram.rules.plain import as_plain
from marram.words.spoken import spoken
from marram.words.texts import text


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
        yield "title", text("cli.versions.in_force", version=in_force.number, day=day.isoformat())
        for one in versions:
            key = "file" if one.number == 1 else "kept_noted" if one.note else "kept"
            told = {"since": one.in_force_from, "who": one.who, "note": one.note}
            yield "item", text(f"cli.versions.{key}", version=one.number, **told)
            for edit in one.edits:
                yield "quiet", "      " + text(f"cli.versions.{edit.action}", ident=edit.ident)
            for later in one.later:
                yield "quiet", "      " + text("cli.versions.carried", since=later.since)
        if news is not None:
            changed = ", ".join(
                [
                    *(text(f"cli.versions.{edit.action}", ident=edit.ident) for edit in news.edits),
                    *news.beside,
                ]
            )
            yield (
                "caution",
                spoken(news.fault) or text("cli.versions.file_changed", changes=changed),
            )
            yield "text", text("cli.versions.settle")

    show_lines(lines())
