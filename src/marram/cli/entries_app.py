"""The commands of ``marram entries``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Json

entries_app = typer.Typer(
    help="Read lists of entries, and draw lots for places.", rich_markup_mode=None, no_args_is_help=True
)

List = Annotated[Path, typer.Argument(help="The list: CSV or XLSX.", metavar="FILE")]
Columns = Annotated[
    Path | None,
    typer.Option(help="Which headings tell what (JSON); read where it is there, else written."),
]


@entries_app.command("read")
def entries_read(
    file: List,
    columns: Columns = None,
    output: Annotated[Path | None, typer.Option(help="Write the entries here, as CSV or XLSX.")] = None,
    json: Json = False,
) -> None:
    """Read a list of entries; every bad line is told, and all entries are taken or none."""
    from marram.cli.entries import tell_entries

    tell_entries(file, columns, output, json)


@entries_app.command("ballot")
def entries_ballot(
    file: List,
    seed: Annotated[str, typer.Option(help="The published seed.")],
    places: Annotated[int, typer.Option(help="How many can play.")],
    handicap_limit: Annotated[
        str | None, typer.Option(help="The highest Handicap Index that may play.")
    ] = None,
    lowest_handicaps: Annotated[
        bool, typer.Option("--lowest-handicaps", help="Lowest handicaps first; equal ones by ballot.")
    ] = False,
    withdrawn: Annotated[
        list[str] | None, typer.Option(help="The key of an entry withdrawn since. Repeat.")
    ] = None,
    publish: Annotated[
        Path | None,
        typer.Option(help="Write the ballot here, as JSON from which alone anybody can draw it again."),
    ] = None,
    columns: Columns = None,
    json: Json = False,
) -> None:
    """Tell who plays, and the reserves in their order, by a ballot that anybody can repeat."""
    from marram.cli.entries import Ballot, tell_ballot

    ballot = Ballot(seed, places, handicap_limit, lowest_handicaps, withdrawn or [], publish)
    tell_ballot(file, columns, ballot, json)
