"""The commands ``marram examination …``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.paper_given import PaperOption
from marram.cli.shared_options import Json

examination_app = typer.Typer(
    help="Referee examinations: papers drawn to cover the book, in parallel forms, marked, their items judged.",
    rich_markup_mode=None,
    no_args_is_help=True,
)
Seed = Annotated[int, typer.Option(help="The same number gives the same papers.", min=0)]
Count = Annotated[int, typer.Option(help="Items of a form, 1 to 120.")]
Level = Annotated[int, typer.Option(help="The level of the paper, 1 to 3.")]
Forms = Annotated[int, typer.Option(help="Parallel forms, 1 to 4.")]
Retired = Annotated[
    Path | None, typer.Option(help="Items that are not used any more: what 'mark --retire' wrote.")
]

Records = Annotated[
    str | None, typer.Option(help="Records; items retired on screen, which they keep, are not used either.")
]


@examination_app.command("draw")
def draw(
    seed: Seed = 1,
    count: Count = 60,
    level: Level = 2,
    forms: Forms = 2,
    open_book: Annotated[bool, typer.Option("--open-book", help="The book may be used.")] = False,
    retired: Retired = None,
    records: Records = None,
    folder: Annotated[
        Path | None,
        typer.Option(
            help="Write papers and keys into this folder, as PDF, and papers.json, from which they are marked."
        ),
    ] = None,
    paper: PaperOption = "a4",
    json: Json = False,
) -> None:
    """Draw an examination: its forms, their key, what they cover and how equal they are."""
    from marram.cli.examination import draw as work

    work(
        seed=seed,
        count=count,
        level=level,
        forms=forms,
        open_book=open_book,
        retired=retired,
        records=records,
        folder=folder,
        paper=paper,
        as_json=json,
    )


@examination_app.command("mark")
def mark(
    answers: Annotated[
        Path, typer.Argument(help="CSV: a candidate a row, the name, then a letter for each item.")
    ],
    papers: Annotated[
        Path | None,
        typer.Option(help="The papers as they were drawn: the papers.json beside them. Mark from it."),
    ] = None,
    form: Annotated[str, typer.Option(help="The form that was sat.")] = "A",
    paper_mark: Annotated[
        str | None,
        typer.Option(
            help="The four characters after 'paper' under the title; needed where papers were not kept."
        ),
    ] = None,
    seed: Seed = 1,
    count: Count = 60,
    level: Level = 2,
    forms: Forms = 2,
    retired: Retired = None,
    records: Records = None,
    retire: Annotated[
        Path | None, typer.Option(help="Add items that turn out bad to this file, with the reason.")
    ] = None,
    json: Json = False,
) -> None:
    """Mark a sitting: marks, what the answers say of each item, reliability, and which items are retired."""
    from marram.cli.examination import mark as work

    work(
        answers,
        papers=papers,
        paper_mark=paper_mark,
        seed=seed,
        count=count,
        level=level,
        forms=forms,
        form=form,
        retired=retired,
        records=records,
        retire=retire,
        as_json=json,
    )


@examination_app.command("results")
def results(
    records: Annotated[str, typer.Argument(help="The records: a file, or the address of a database.")],
    event: Annotated[str | None, typer.Option(help="The event, by its name there.")] = None,
    number: Annotated[
        int | None,
        typer.Option(help="Which examination, the latest being 1; without it they are listed.", min=1),
    ] = None,
    json: Json = False,
) -> None:
    """List the examinations that were sat on screen; of one, the marks by candidate's number and what the answers say of items."""
    from marram.cli.examination_kept import tell_results

    tell_results(records, event=event, number=number, as_json=json)
