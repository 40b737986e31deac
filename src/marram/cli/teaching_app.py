"""Commands that teach: ``marram changes``, ``situations`` and ``quiz``."""

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Form, Json, Sides


class First(StrEnum):
    """Which changes are told first."""

    COMMON = "common"
    RARE = "rare"


Seed = Annotated[
    int | None, typer.Option(help="The same number gives the same again; none: drawn, and said.", min=0)
]
Level = Annotated[int | None, typer.Option(help="Only easy (1), medium (2) or hard (3) ones.", min=1, max=3)]
About = Annotated[list[str] | None, typer.Option("--incident", help="Only about this incident. Repeat.")]
RestingOn = Annotated[str, typer.Option(help="Only rulings that cite this provision, e.g. 17.1d.")]


def situations(
    count: Annotated[int, typer.Argument(help="How many.", min=1, max=500)] = 5,
    seed: Seed = None,
    incident: About = None,
    provision: RestingOn = "",
    level: Level = None,
    json: Json = False,
) -> None:
    """Situations for a rules evening, drawn from the book: what happened, and the ruling."""
    from marram.cli.situations import drawn_seed, tell_situations

    tell_situations(
        count,
        seed=drawn_seed() if seed is None else seed,
        incidents=incident or [],
        provision=provision,
        level=level,
        as_json=json,
    )


def quiz(
    count: Annotated[int, typer.Argument(help="How many questions.", min=1, max=200)] = 5,
    seed: Seed = None,
    incident: About = None,
    provision: RestingOn = "",
    level: Level = None,
    json: Json = False,
) -> None:
    """Multiple-choice questions from the book, the answers and why after all of them."""
    from marram.cli.quiz import ask_quiz
    from marram.cli.situations import drawn_seed

    ask_quiz(
        count,
        seed=drawn_seed() if seed is None else seed,
        incidents=incident or [],
        provision=provision,
        level=level,
        as_json=json,
    )


def changes(
    earlier: Annotated[
        str, typer.Option("--from", metavar="YEAR|DAY", help="The earlier edition, or a day of play.")
    ] = "2019",
    later: Annotated[
        str, typer.Option("--to", metavar="YEAR|DAY", help="The later edition, or a day of play.")
    ] = "2023",
    on: Annotated[
        str,
        typer.Option(
            "--on", metavar="DAY", help="What is decided otherwise since this day, such as a clarification's."
        ),
    ] = "",
    local_rule: Annotated[
        str,
        typer.Option(
            "--local-rule", metavar="CODE", help="Instead: what adopting this Local Rule changes, on --to."
        ),
    ] = "",
    first: Annotated[
        First, typer.Option(help="What players meet most often first, or (for those who know) what is rare.")
    ] = First.COMMON,
    drawings: Annotated[
        Path | None,
        typer.Option(help="Write a drawing of each situation that has ground to draw into this folder."),
    ] = None,
    course: Annotated[
        Path | None, typer.Option(help="The course map they are drawn on; default that of the demonstration.")
    ] = None,
    incident: Annotated[list[str] | None, typer.Option(help="Only this incident. Repeat.")] = None,
    form: Form = None,
    sides: Sides = None,
    every: Annotated[
        bool,
        typer.Option(
            "--every",
            help="Every differing situation, fewest facts first; so also with --incident, --form or --sides.",
        ),
    ] = False,
    json: Json = False,
) -> None:
    """Tell what changed between two editions or days, or what a Local Rule changes, what players meet most often first."""
    from marram.cli.changes import Wanted, list_changes, tell_adoption, tell_changes, tell_day

    wanted = Wanted(first is First.RARE, every, json, drawings, course)
    if local_rule:
        tell_adoption(local_rule, later, wanted)
    elif on:
        tell_day(on, wanted)
    elif every or incident or form or sides:
        list_changes(earlier, later, incident or [], form, sides, json)
    else:
        tell_changes(earlier, later, wanted)
