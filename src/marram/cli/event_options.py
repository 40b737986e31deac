"""The group ``marram event``, and the options that its commands share."""

from dataclasses import dataclass
from typing import Annotated

import typer

from marram.cli.records_app import OfEvent, RecordsAt

__all__ = ["By", "Note", "OfCourse", "OfEvent", "RecordsAt", "Round", "Where", "Who", "event_app"]

event_app = typer.Typer(
    help="What the desk does with an event that records keep: entries, draw, cards, results, matches, lists.",
    rich_markup_mode=None,
    no_args_is_help=True,
)
OfCourse = Annotated[
    str | None, typer.Option("--course", metavar="NAME", help="The course, where there are several.")
]
By = Annotated[str | None, typer.Option("--by", metavar="NAME", help="The official who enters it.")]
Round = Annotated[int, typer.Option("--round", help="The number of the round.")]
Who = Annotated[
    str, typer.Argument(help="A player or side, by name or a part of it that only one has.", metavar="WHO")
]
Note = Annotated[str, typer.Option("--note", metavar="WORDS", help="A note beside the entry.")]


@dataclass(frozen=True, slots=True)
class Where:
    """Which event of which records, as typed, and who enters something."""

    records: str
    event: str | None = None
    course: str | None = None
    by: str | None = None
