"""The commands and their options."""

from typing import Annotated, Optional

import typer

from marram.cli.exits import faults_as_exit_codes

app = typer.Typer(
    name="marram",
    help="The workbench of a golf rules official: facts of a situation to a ruling, with the relief drawn to scale. "
    "Advice only: the referee and the Committee decide.",
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
    add_completion=False,
    no_args_is_help=True,
)
course_app = typer.Typer(help="Look after course maps.", rich_markup_mode=None, no_args_is_help=True)
app.add_typer(course_app, name="course")

Json = Annotated[bool, typer.Option("--json", help="Print JSON instead of text.")]
PlayedOn = Annotated[
    str | None, typer.Option("--played-on", metavar="DATE", help="Day of the round; default today.")
]
Edition = Annotated[
    str | None, typer.Option("--edition", metavar="YEAR", help="2019 or 2023, instead of a day.")
]
Form = Annotated[Optional[str], typer.Option("--form", help="Form of play, e.g. stroke_play or match_play.")]  # noqa: UP045
LocalRules = Annotated[
    Optional[list[str]],  # noqa: UP045
    typer.Option(
        "--local-rule", metavar="CODE", help="A Model Local Rule in force, e.g. E-5; 'none' for none. Repeat."
    ),
]
Facts = Annotated[
    Optional[list[str]],  # noqa: UP045
    typer.Option("--fact", metavar="NAME=VALUE", help="A fact that is known. Repeat."),
]


@app.command()
def incidents(
    words: Annotated[list[str] | None, typer.Argument(help="Show only incidents with these words.")] = None,
    json: Json = False,
) -> None:
    """List what can have happened."""
    from marram.cli.listing import list_incidents

    list_incidents(words or [], json)


@app.command()
def facts(
    incident: Annotated[
        str | None, typer.Argument(help="Only the facts that can matter for this incident.")
    ] = None,
    json: Json = False,
) -> None:
    """List the facts: name, question, answers, and who decides."""
    from marram.cli.listing import list_facts

    list_facts(incident, json)


@app.command()
def rule(
    incident: Annotated[
        str | None, typer.Argument(help="What happened; 'marram incidents' lists them.")
    ] = None,
    fact: Facts = None,
    played_on: PlayedOn = None,
    edition: Edition = None,
    form: Form = None,
    local_rule: LocalRules = None,
    json: Json = False,
) -> None:
    """Give the ruling, or ask the next question."""
    from marram.cli.ruling import give_ruling

    give_ruling(
        incident,
        pairs=fact or [],
        played_on=played_on,
        edition=edition,
        form=form,
        local_rules=local_rule,
        as_json=json,
    )


@app.command()
def changes(
    earlier: Annotated[str, typer.Option("--from", metavar="YEAR", help="The earlier edition.")] = "2019",
    later: Annotated[str, typer.Option("--to", metavar="YEAR", help="The later edition.")] = "2023",
    incident: Annotated[Optional[list[str]], typer.Option(help="Only this incident. Repeat.")] = None,  # noqa: UP045
    form: Form = None,
    json: Json = False,
) -> None:
    """List what changed between two editions, fewest facts first."""
    from marram.cli.changes import list_changes

    list_changes(earlier, later, incident or [], form, json)


@app.command()
def graph(
    incident: Annotated[str, typer.Argument(help="What happened; 'marram incidents' lists them.")],
    played_on: PlayedOn = None,
    edition: Edition = None,
) -> None:
    """Print the decision graph of an incident as JSON."""
    from marram.cli.listing import print_graph

    print_graph(incident, played_on, edition)


def run() -> None:
    """Run the application; marram's own errors become messages and exit codes."""
    with faults_as_exit_codes():
        app()
