"""Commands that look into the book: ``marram incidents``, ``facts``, ``local-rules``, ``graph`` and ``pocket``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Edition, Json, PlayedOn, Sides


def incidents(
    words: Annotated[list[str] | None, typer.Argument(help="Show only incidents with these words.")] = None,
    json: Json = False,
) -> None:
    """List what can have happened."""
    from marram.cli.listing import list_incidents

    list_incidents(words or [], json)


def facts(
    incident: Annotated[
        str | None,
        typer.Argument(help="Only the facts that can matter for this incident, or this fact alone."),
    ] = None,
    json: Json = False,
) -> None:
    """List the facts: name, question, answers, and who decides."""
    from marram.cli.listing import list_facts

    list_facts(incident, json)


def local_rules(
    codes: Annotated[list[str] | None, typer.Argument(help="Only these codes, in detail.")] = None,
    json: Json = False,
) -> None:
    """List the Model Local Rules: what each changes, and what to know before adopting it."""
    from marram.cli.listing import list_local_rules

    list_local_rules(codes or [], json)


def graph(
    incident: Annotated[str, typer.Argument(help="What happened; 'marram incidents' lists them.")],
    played_on: PlayedOn = None,
    edition: Edition = None,
    sides: Sides = None,
) -> None:
    """Print the decision graph of an incident as JSON."""
    from marram.cli.listing import print_graph

    print_graph(incident, played_on, edition, sides)


def pocket(
    file: Annotated[Path, typer.Argument(metavar="FILE.html", help="The page to write.")],
    edition: Edition = None,
    played_on: PlayedOn = None,
    event: Annotated[Path | None, typer.Option(help="The competition, as a JSON file.")] = None,
) -> None:
    """Write the whole book of an edition on one page, for a phone without a network."""
    from marram.cli.pocket import write_pocket

    write_pocket(file, edition, played_on, event)
