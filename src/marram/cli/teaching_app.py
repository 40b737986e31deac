"""Commands that teach: ``marram changes``, ``situations`` and ``quiz``."""

from typing import Annotated

import typer

from marram.cli.shared_options import Form, Json, Sides

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
    earlier: Annotated[str, typer.Option("--from", metavar="YEAR", help="The earlier edition.")] = "2019",
    later: Annotated[str, typer.Option("--to", metavar="YEAR", help="The later edition.")] = "2023",
    incident: Annotated[list[str] | None, typer.Option(help="Only this incident. Repeat.")] = None,
    form: Form = None,
    sides: Sides = None,
    every: Annotated[
        bool,
        typer.Option(
            "--every",
            help="Every differing situation, fewest facts first; so also where one of the options above is given.",
        ),
    ] = False,
    json: Json = False,
) -> None:
    """Tell what changed between two editions, what players meet most often first."""
    from marram.cli.changes import list_changes, tell_changes

    if every or incident or form or sides:
        list_changes(earlier, later, incident or [], form, sides, json)
    else:
        tell_changes(earlier, later, json)
