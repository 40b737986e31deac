"""The commands of ``marram records``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Json

records_app = typer.Typer(
    help="Look after what a club keeps: courses, events, the log.",
    rich_markup_mode=None,
    no_args_is_help=True,
)

RecordsAt = Annotated[
    str, typer.Argument(help="The records: a file, or postgresql://USER@HOST/DATABASE.", metavar="RECORDS")
]
OfEvent = Annotated[
    str | None, typer.Option("--event", metavar="NAME", help="The event, where there are several.")
]


@records_app.command("init")
def records_init(
    records: RecordsAt,
    club: Annotated[str | None, typer.Option(help="The name of the club.")] = None,
    time_zone: Annotated[
        str | None, typer.Option(metavar="ZONE", help="The zone of its clocks, e.g. Europe/London.")
    ] = None,
    course: Annotated[Path | None, typer.Option(help="Its course map, as GeoJSON.")] = None,
    maps: Annotated[
        Path | None, typer.Option(help="The folder with versions of the map; all are taken over.")
    ] = None,
    event: Annotated[Path | None, typer.Option(help="An event, as a JSON file.")] = None,
) -> None:
    """Make records, or bring them up to date; add a course with all its versions, or an event."""
    from marram.cli.records import init

    init(records, club, time_zone, course, maps, event)


@records_app.command("verify")
def records_verify(
    records: RecordsAt,
    receipt: Annotated[
        list[str] | None,
        typer.Option(metavar="NUMBER:DIGITS", help="A receipt written down before. Repeat."),
    ] = None,
    event: OfEvent = None,
    json: Json = False,
) -> None:
    """Look whether all is as it was; name the first entry that is not, and print a receipt of each log."""
    from marram.cli.records import verify

    verify(records, receipt or [], event, json)


@records_app.command("backup")
def records_backup(
    records: RecordsAt, to: Annotated[Path, typer.Argument(help="The file to make.", metavar="FILE")]
) -> None:
    """Copy the records while they are in use."""
    from marram.cli.records import backup

    backup(records, to)


@records_app.command("restore")
def records_restore(
    file: Annotated[Path, typer.Argument(help="The backup.", metavar="FILE")],
    to: Annotated[Path, typer.Argument(help="Where the records are to be.", metavar="RECORDS")],
) -> None:
    """Put a backup in the place of records that are gone."""
    from marram.cli.records import restore

    restore(file, to)


@records_app.command("export")
def records_export(
    records: RecordsAt, to: Annotated[Path, typer.Argument(help="The folder to make.", metavar="FOLDER")]
) -> None:
    """Write everything in open formats: JSON lines, GeoJSON, CSV."""
    from marram.cli.records import export

    export(records, to)


@records_app.command("import")
def records_import(
    folder: Annotated[Path, typer.Argument(help="The export.", metavar="FOLDER")],
    to: RecordsAt,
) -> None:
    """Read an export back into new records."""
    from marram.cli.records import import_

    import_(folder, to)


@records_app.command("log")
def records_log(
    records: RecordsAt,
    event: OfEvent = None,
    hole: Annotated[int | None, typer.Option(help="Only this hole.")] = None,
    search: Annotated[
        str, typer.Option(metavar="WORDS", help="Only what holds these words, Rules or names.")
    ] = "",
    outcome: Annotated[
        str,
        typer.Option(metavar="OUTCOME", help="Only free, penalty, general, disqualified or otherwise."),
    ] = "",
    kind: Annotated[str, typer.Option(metavar="KIND", help="Only entries of this kind.")] = "",
    again: Annotated[
        bool, typer.Option("--again", help="Rule each again with this marram, and tell what differs.")
    ] = False,
    json: Json = False,
) -> None:
    """List the entries of an event's log."""
    from marram.cli.records import list_log

    list_log(records, event, again, json, hole=hole, search=search, outcome=outcome, kind=kind)


@records_app.command("opinions")
def records_opinions(records: RecordsAt, event: OfEvent = None) -> None:
    """List second opinions, the open ones first, and rulings that differ from earlier ones."""
    from marram.cli.records_day import list_opinions

    list_opinions(records, event)


@records_app.command("published")
def records_published(
    records: RecordsAt,
    folder: Annotated[Path, typer.Argument(help="The folder to write to.", metavar="FOLDER")],
    event: OfEvent = None,
    course: Annotated[
        str | None, typer.Option(help="The name of the course, where there are several.")
    ] = None,
) -> None:
    """Write every published list as files: JSON, CSV, iCalendar and HTML, named by the digest of the JSON file."""
    from marram.cli.published import write_published

    write_published(records, folder, event, course)


@records_app.command("suspend")
def records_suspend(
    records: RecordsAt,
    how: Annotated[str, typer.Argument(help="immediate (danger) or normal.", metavar="HOW")],
    cause: Annotated[
        str, typer.Option(help="lightning, other_danger, water, darkness, visibility, wind or other.")
    ] = "other",
    event: OfEvent = None,
) -> None:
    """Stop play now, and say what each group must do. The Committee decides."""
    from marram.cli.records_day import suspend

    suspend(records, how, cause, event)


@records_app.command("resume")
def records_resume(
    records: RecordsAt,
    at: Annotated[
        str, typer.Option(metavar="TIME", help="When play goes on, with the zone: 2025-06-21T15:30+01:00.")
    ],
    ready: Annotated[
        str | None, typer.Option(metavar="TIME", help="By when players are to be in position.")
    ] = None,
    event: OfEvent = None,
) -> None:
    """Say when play that is stopped goes on."""
    from marram.cli.records_day import resume

    resume(records, at, ready, event)


@records_app.command("erase")
def records_erase(
    records: RecordsAt,
    name: Annotated[str, typer.Argument(help="The name of the person.")],
    sure: Annotated[bool, typer.Option("--yes", help="Do it; it cannot be undone.")] = False,
) -> None:
    """Erase what is personal about somebody; the log stays whole."""
    from marram.cli.records import erase_person

    erase_person(records, name, sure)
