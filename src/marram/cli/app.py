"""The commands and their options."""

from pathlib import Path
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
    str | None, typer.Option("--edition", metavar="YEAR", help="2019 or 2023 (teaching: 2016), not a day.")
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


@app.command("local-rules")
def local_rules(
    codes: Annotated[Optional[list[str]], typer.Argument(help="Only these codes, in detail.")] = None,  # noqa: UP045
    json: Json = False,
) -> None:
    """List the Model Local Rules: what each changes, and what to know before adopting it."""
    from marram.cli.listing import list_local_rules

    list_local_rules(codes or [], json)


@app.command()
def situation(
    file: Annotated[Path, typer.Argument(help="The situation: a JSON file with its incidents in order.")],
    json: Json = False,
) -> None:
    """Rule on several incidents of one situation and combine their penalties.

    The file holds "incidents" (a list of objects with "incident" and "facts", in the order of what
    happened), "between" (what is known between them), "played_on" or "edition", "form_of_play" and
    "local_rules".
    """
    from marram.cli.situation import rule_on_situation

    rule_on_situation(file, json)


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
def relief(
    course: Annotated[Path, typer.Argument(help="The course map: GeoJSON or OpenStreetMap XML.")],
    hole: Annotated[int, typer.Option(help="The hole being played.")],
    ball: Annotated[str, typer.Option(metavar="LON,LAT", help="Where the ball lies.")],
    entry: Annotated[
        Optional[str],  # noqa: UP045
        typer.Option(metavar="LON,LAT", help="Where it last crossed the edge of the penalty area."),
    ] = None,
    previous: Annotated[
        Optional[str],  # noqa: UP045
        typer.Option(metavar="LON,LAT", help="Where the previous stroke was made."),
    ] = None,
    incident: Annotated[Optional[str], typer.Option(help="What happened; else taken from the place.")] = None,  # noqa: UP045
    fact: Facts = None,
    played_on: PlayedOn = None,
    edition: Edition = None,
    club_length: Annotated[
        Optional[float],  # noqa: UP045
        typer.Option(metavar="M", help="Longest club other than the putter, in metres."),
    ] = None,
    hand: Annotated[Optional[str], typer.Option(help="right or left.")] = None,  # noqa: UP045
    svg: Annotated[Optional[Path], typer.Option(help="Write the drawing here.")] = None,  # noqa: UP045
    geojson: Annotated[Optional[Path], typer.Option(help="Write the areas here.")] = None,  # noqa: UP045
    json: Json = False,
) -> None:
    """Draw the relief options at a place on a course."""
    from marram.cli.conditions import day_of_play
    from marram.cli.relief import Request, draw_relief

    places = {"ball": ball, "entry": entry, "previous": previous}
    day = day_of_play(played_on, edition)
    request = Request(course, hole, places, day, club_length, hand, incident, fact or [])
    draw_relief(request, svg, geojson, json)


@course_app.command("check")
def course_check(
    file: Annotated[Path, typer.Argument(help="The course map: GeoJSON or OpenStreetMap XML.")],
    json: Json = False,
) -> None:
    """Say every fault of a course map, with its place and what to do about it."""
    from marram.cli.course import check_course

    check_course(file, json)


@course_app.command("holes")
def course_holes(
    file: Annotated[Path, typer.Argument(help="The course map.")],
    seed: Annotated[int, typer.Option(help="Another seed proposes other locations, as balanced.")] = 0,
    recent: Annotated[
        Optional[list[Path]],  # noqa: UP045
        typer.Option(help="Recently used locations to keep away from, as --json printed them. Repeat."),
    ] = None,
    locations: Annotated[
        Optional[Path],  # noqa: UP045
        typer.Option(help="Print these (edited) locations instead of proposing."),
    ] = None,
    title: Annotated[str, typer.Option(help="The competition or round, for the sheet.")] = "",
    day: PlayedOn = None,
    pdf: Annotated[Optional[Path], typer.Option(help="Write the sheet here.")] = None,  # noqa: UP045
    svg: Annotated[Optional[Path], typer.Option(help="Write the drawing here.")] = None,  # noqa: UP045
    json: Json = False,
) -> None:
    """Propose hole locations and print their sheet."""
    from marram.cli.conditions import day_of_play
    from marram.cli.holes import hole_locations

    hole_locations(
        file,
        seed=seed,
        recent=recent or [],
        chosen=locations,
        title=title,
        day=day_of_play(day, None),
        pdf=pdf,
        svg=svg,
        as_json=json,
    )


@course_app.command("marking")
def course_marking(
    file: Annotated[Path, typer.Argument(help="The course map.")],
    day: PlayedOn = None,
    pdf: Annotated[Optional[Path], typer.Option(help="Write the sheet here.")] = None,  # noqa: UP045
    json: Json = False,
) -> None:
    """Print what to mend before play, hole by hole."""
    from marram.cli.conditions import day_of_play
    from marram.cli.holes import marking

    marking(file, day=day_of_play(day, None), pdf=pdf, as_json=json)


@app.command()
def serve(
    course: Annotated[Optional[Path], typer.Argument(help="The course map; default the demo course.")] = None,  # noqa: UP045
    demo: Annotated[bool, typer.Option("--demo", help="Serve the invented event.")] = False,
    event: Annotated[Optional[Path], typer.Option(help="The competition, as a JSON file.")] = None,  # noqa: UP045
    host: Annotated[
        str, typer.Option(help="The address to listen on; this machine only by default.")
    ] = "127.0.0.1",
    port: Annotated[int, typer.Option(help="The port to listen on.")] = 8123,
    open_browser: Annotated[bool, typer.Option("--open", help="Open it in this machine's browser.")] = False,
) -> None:
    """Serve the desk: the course map, the questions, the ruling, the relief."""
    from marram.cli.serving import serve_desk

    serve_desk(course, event, host, port, demo=demo, open_browser=open_browser)


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
