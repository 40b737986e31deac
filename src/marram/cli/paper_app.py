"""The command ``marram paper``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Json


def paper(
    sheet: Annotated[
        str,
        typer.Argument(
            metavar="SHEET",
            help="notice, starting-sheet, scorecards, starters-sheet, referees-sheet, officials-sheet, results, report, bracket, or all there is enough for.",
        ),
    ],
    event: Annotated[
        str | None,
        typer.Argument(
            metavar="[EVENT]",
            help="The event, as a JSON file; with --records its name, where there are several.",
        ),
    ] = None,
    records: Annotated[
        str | None, typer.Option(help="Records that keep the event, with its cards and its log.")
    ] = None,
    course: Annotated[
        Path | None,
        typer.Option(
            help="The course map: GeoJSON or OpenStreetMap XML; default with --records the one kept."
        ),
    ] = None,
    round_: Annotated[int, typer.Option("--round", help="The number of the round.")] = 1,
    draw: Annotated[
        Path | None,
        typer.Option(
            help="The groups of the round, as 'marram draw --json' prints them; default those of EVENT."
        ),
    ] = None,
    cards: Annotated[
        Path | None, typer.Option(help="Conditions, holes and cards, as 'marram results' takes them.")
    ] = None,
    paper_: Annotated[
        str, typer.Option("--paper", metavar="a4|letter", help="The paper of the sheet.")
    ] = "a4",
    yards: Annotated[bool, typer.Option("--yards", help="Lengths of holes in yards.")] = False,
    pdf: Annotated[Path | None, typer.Option(help="Write the sheet here, as PDF.")] = None,
    html: Annotated[Path | None, typer.Option(help="Write the sheet here, as HTML.")] = None,
    json: Json = False,
) -> None:
    """Print a sheet of the event: for paper, for a page, or here."""
    from marram.cli.papers import Source, print_sheets

    print_sheets(
        sheet,
        Source(event, records, course, round_, draw, cards),
        paper=paper_,
        yards=yards,
        pdf=pdf,
        html=html,
        as_json=json,
    )
