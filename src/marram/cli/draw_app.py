"""The command ``marram draw``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Json


def draw(
    file: Annotated[Path, typer.Argument(help="The entries: CSV or XLSX.", metavar="FILE")],
    seed: Annotated[str, typer.Option(help="The published seed of the draw.")],
    first: Annotated[str, typer.Option(metavar="HH:MM", help="The first starting time.")] = "08:00",
    second: Annotated[
        str, typer.Option(metavar="HH:MM", help="A second start, for the second half of the groups.")
    ] = "",
    minutes: Annotated[int, typer.Option(help="Between two groups of a tee; 0 for a shotgun start.")] = 10,
    places: Annotated[int, typer.Option(help="Players of a group, 2 to 4.")] = 3,
    tee: Annotated[list[int] | None, typer.Option(help="A hole that groups start at. Repeat.")] = None,
    by_handicap: Annotated[
        bool, typer.Option("--by-handicap", help="Lowest handicaps first instead of a random order.")
    ] = False,
    together: Annotated[
        list[str] | None, typer.Option(metavar="KEY,KEY", help="Players of one group. Repeat.")
    ] = None,
    apart: Annotated[
        list[str] | None, typer.Option(metavar="KEY,KEY", help="Players of different groups. Repeat.")
    ] = None,
    early: Annotated[list[str] | None, typer.Option(metavar="KEY", help="Starts early. Repeat.")] = None,
    late: Annotated[list[str] | None, typer.Option(metavar="KEY", help="Starts late. Repeat.")] = None,
    clubs_apart: Annotated[
        bool, typer.Option("--clubs-apart", help="No two of one club in a group.")
    ] = False,
    json: Json = False,
) -> None:
    """Draw groups and starting times by wishes, or name the wishes that clash (exit code 2)."""
    from marram.cli.drawing import Asked, tell_draw

    wishes = (together or [], apart or [], early or [], late or [])
    tell_draw(
        file,
        Asked(seed, first, minutes, places, tuple(tee or [1]), by_handicap, wishes, clubs_apart, second),
        json,
    )
