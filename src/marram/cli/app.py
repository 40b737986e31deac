"""The commands and their options."""

import os
import sys
from copy import copy
from pathlib import Path
from typing import Annotated

import typer

from marram.cli.competition_app import card_app, competition_app, results_app
from marram.cli.course_app import course_app
from marram.cli.draw_app import draw
from marram.cli.entries_app import entries_app
from marram.cli.exits import faults_as_exit_codes
from marram.cli.handicap_app import handicap_app
from marram.cli.paper_app import paper
from marram.cli.records_app import records_app
from marram.cli.relief_command import relief
from marram.cli.rounds_app import calendar, matches_app, next_round, sunset
from marram.cli.shared_options import (
    Crs,
    Edition,
    Elevations,
    Facts,
    Form,
    Json,
    LocalRules,
    Maps,
    PlayedOn,
    Sides,
)

app = typer.Typer(
    name="marram",
    help="The workbench of a golf rules official: facts of a situation to a ruling, with the relief drawn to scale. "
    "Advice only: the referee and the Committee decide.",
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
    add_completion=False,
    no_args_is_help=True,
)
app.add_typer(course_app, name="course")
app.add_typer(entries_app, name="entries")
app.add_typer(handicap_app, name="handicap")
app.add_typer(records_app, name="records")
app.add_typer(competition_app, name="competition")
app.add_typer(card_app, name="card")
app.add_typer(results_app, name="results")
app.add_typer(matches_app, name="matches")


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
        str | None,
        typer.Argument(help="Only the facts that can matter for this incident, or this fact alone."),
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
    sides: Sides = None,
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
        sides=sides,
        local_rules=local_rule,
        as_json=json,
    )


@app.command()
def why(
    incident: Annotated[str, typer.Argument(help="What happened; 'marram incidents' lists them.")],
    fact: Facts = None,
    played_on: PlayedOn = None,
    edition: Edition = None,
    form: Form = None,
    sides: Sides = None,
    local_rule: LocalRules = None,
    json: Json = False,
) -> None:
    """Explain a ruling: the facts that decided it, and what each other answer would have led to."""
    from marram.cli.why import tell_why

    tell_why(
        incident,
        pairs=fact or [],
        played_on=played_on,
        edition=edition,
        form=form,
        sides=sides,
        local_rules=local_rule,
        as_json=json,
    )


Seed = Annotated[
    int | None, typer.Option(help="The same number gives the same again; none: drawn, and said.", min=0)
]
Level = Annotated[int | None, typer.Option(help="Only easy (1), medium (2) or hard (3) ones.", min=1, max=3)]
About = Annotated[list[str] | None, typer.Option("--incident", help="Only about this incident. Repeat.")]
RestingOn = Annotated[str, typer.Option(help="Only rulings that cite this provision, e.g. 17.1d.")]


@app.command("situations")
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


@app.command("quiz")
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


@app.command("may")
def may(
    area: Annotated[str, typer.Argument(help="Where the ball lies, e.g. general_area or bunker.")],
    fact: Facts = None,
    played_on: PlayedOn = None,
    edition: Edition = None,
    form: Form = None,
    sides: Sides = None,
    local_rule: LocalRules = None,
    json: Json = False,
) -> None:
    """Tell what the player may do there, may not do, and at what cost."""
    from marram.cli.may import tell_what_may_be_done

    tell_what_may_be_done(
        area,
        pairs=fact or [],
        played_on=played_on,
        edition=edition,
        form=form,
        local_rules=local_rule,
        as_json=json,
        sides=sides,
    )


@app.command("local-rules")
def local_rules(
    codes: Annotated[list[str] | None, typer.Argument(help="Only these codes, in detail.")] = None,
    json: Json = False,
) -> None:
    """List the Model Local Rules: what each changes, and what to know before adopting it."""
    from marram.cli.listing import list_local_rules

    list_local_rules(codes or [], json)


@app.command("situation", hidden=True)
@app.command("story")
def story(
    file: Annotated[Path, typer.Argument(help="The story: a JSON file with its incidents in order.")],
    json: Json = False,
) -> None:
    """Rule on several incidents of one story and combine their penalties.

    The file holds "incidents" (in the order of what happened, a list of objects with "incident" and "facts"), "between"
    (what is known between them), "played_on" or "edition", "form_of_play", "sides", "local_rules" and
    "strokes_before" (strokes on the hole before the first incident, penalty strokes included: then the next stroke
    is said).

    An incident may also hold "option" (what the player then took of the relief offered, "as_it_lies" or
    "nothing_yet"), "ball" (which ball it was about: "in_play", "provisional", "second_provisional" or
    "other_players"), "by" ("another_player" where it was that player's act) and "strokes" (strokes that count, from
    then until the next incident, where they are not those the incident itself shows).
    """
    from marram.cli.story import rule_on_story

    rule_on_story(file, json)


@app.command()
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


app.command()(relief)
app.command()(draw)
app.command()(paper)
app.command("next-round")(next_round)
app.command()(calendar)
app.command()(sunset)


@app.command()
def serve(
    course: Annotated[Path | None, typer.Argument(help="The course map; default the demo course.")] = None,
    demo: Annotated[bool, typer.Option("--demo", help="Serve the invented event.")] = False,
    event: Annotated[Path | None, typer.Option(help="The competition, as a JSON file.")] = None,
    host: Annotated[
        str, typer.Option(help="The address to listen on; this machine only by default.")
    ] = "127.0.0.1",
    port: Annotated[int, typer.Option(min=1, max=65535, help="The port to listen on.")] = 8123,
    allow_host: Annotated[
        list[str] | None,
        typer.Option(metavar="NAME", help="Another name or address it is reached by. Repeat."),
    ] = None,
    open_browser: Annotated[bool, typer.Option("--open", help="Open it in this machine's browser.")] = False,
    maps: Maps = None,
    records: Annotated[
        str | None,
        typer.Option(
            help="Records to work with and to keep the log in; --event then names an event in them. With --demo they are made."
        ),
    ] = None,
    elevations: Elevations = None,
    crs: Crs = None,
    secure: Annotated[
        Path | None,
        typer.Option(
            metavar="FOLDER",
            help="Serve over HTTPS with the club's own certificate authority, kept in this folder and made there once.",
        ),
    ] = None,
) -> None:
    """Serve the desk: the course map, the questions, the ruling, the relief."""
    from marram.cli.serving import serve_desk

    serve_desk(
        course,
        event,
        host,
        port,
        demo=demo,
        open_browser=open_browser,
        maps=maps,
        records=records,
        elevations=elevations or [],
        elevations_crs=crs,
        hosts=allow_host or [],
        secure=secure,
    )


@app.command()
def pocket(
    file: Annotated[Path, typer.Argument(metavar="FILE.html", help="The page to write.")],
    edition: Edition = None,
    played_on: PlayedOn = None,
    event: Annotated[Path | None, typer.Option(help="The competition, as a JSON file.")] = None,
) -> None:
    """Write the whole book of an edition on one page, for a phone without a network."""
    from marram.cli.pocket import write_pocket

    write_pocket(file, edition, played_on, event)


@app.command()
def graph(
    incident: Annotated[str, typer.Argument(help="What happened; 'marram incidents' lists them.")],
    played_on: PlayedOn = None,
    edition: Edition = None,
    sides: Sides = None,
) -> None:
    """Print the decision graph of an incident as JSON."""
    from marram.cli.listing import print_graph

    print_graph(incident, played_on, edition, sides)


@app.callback()
def _always_a_group() -> None:
    """Keep the name of the command a part of the command line when only one is built."""


def run() -> None:
    """Run the application; marram's own errors become messages and exit codes."""
    with faults_as_exit_codes():
        narrow = _with_only(sys.argv[1] if len(sys.argv) > 1 else "")
        if not os.environ.get("MARRAM_LANGUAGE"):
            narrow()
            return
        from typer.main import get_command

        from marram.cli.help import put_help_into_language

        command = get_command(narrow)
        put_help_into_language(command)
        command()


def _with_only(name: str) -> typer.Typer:
    """Return the application with no command but this one, or the whole of it where there is no such command.

    Typer reads the type hints of every command it holds, which takes longer than most rulings.
    """
    narrow = copy(app)
    narrow.registered_commands = [
        one
        for one in app.registered_commands
        if name == (one.name or (one.callback and one.callback.__name__))
    ]
    narrow.registered_groups = [one for one in app.registered_groups if name == one.name]
    return narrow if narrow.registered_commands or narrow.registered_groups else app
