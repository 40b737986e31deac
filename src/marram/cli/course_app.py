"""The commands of ``marram course``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.paper_given import PaperOption
from marram.cli.shared_options import (
    CourseMap,
    Crs,
    Drawing,
    Elevations,
    Hole,
    Json,
    LocalRules,
    Maps,
    PlayedOn,
    Sheet,
)

course_app = typer.Typer(help="Look after course maps.", rich_markup_mode=None, no_args_is_help=True)


@course_app.command("check")
def course_check(
    file: CourseMap,
    local_rule: LocalRules = None,
    json: Json = False,
) -> None:
    """Say every fault of a course map, with its place and what to do about it."""
    from marram.cli.course import check_course

    check_course(file, local_rule, json)


@course_app.command("mend")
def course_mend(
    file: CourseMap,
    accept: Annotated[
        list[str] | None,
        typer.Option(
            metavar="NUMBER|all-of:KIND",
            help="Accept a proposal of the list (3, or 3b), or all of a kind. Repeat.",
        ),
    ] = None,
    course: Annotated[
        str | None, typer.Option(help="The course to use, where the file holds several.")
    ] = None,
    who: Annotated[str, typer.Option(help="Who mends it (name or initials).")] = "",
    why: Annotated[str, typer.Option(help="Why, in your words.")] = "",
    day: Annotated[
        str | None,
        typer.Option("--from", metavar="DATE", help="First day of play it is used for; default today."),
    ] = None,
    maps: Maps = None,
    output: Annotated[
        Path | None, typer.Option(help="Write a mended copy here (GeoJSON) instead of keeping a version.")
    ] = None,
    only_list: Annotated[
        bool, typer.Option("--list", help="Only list the faults and proposals; open nothing.")
    ] = False,
    ask: Annotated[
        bool, typer.Option("--ask", help="Ask for each proposal here at the terminal instead.")
    ] = False,
    port: Annotated[
        int | None,
        typer.Option(min=1, max=65535, help="The port of the editor; default 8123, or one that is free."),
    ] = None,
    json: Json = False,
) -> None:
    """Open a map in the desk's editor to be mended, or list and mend its faults here; the file itself is never written."""
    from marram.cli.mending import Wanted, mend_course
    from marram.services.cases.given import day_of_play

    wanted = Wanted(
        accept or [], course, who, why, day_of_play(day, None), maps, output, json, only_list, ask, port
    )
    mend_course(file, wanted)


@course_app.command("order")
def course_order(
    file: CourseMap,
    hole: Hole,
    ball: Annotated[list[str], typer.Option(metavar="LON,LAT", help="A ball. Repeat.")],
    accuracy: Annotated[float, typer.Option(help="How far off each place may be, in metres.")] = 0.0,
    json: Json = False,
) -> None:
    """Tell which ball is farthest from the hole."""
    from marram.cli.measuring import order_of_play

    order_of_play(file, hole, ball, accuracy, json)


@course_app.command("survey")
def course_survey(
    file: CourseMap,
    points: Annotated[Path, typer.Argument(help="Points measured on the ground: GPX or CSV.")],
    hole: Hole,
    accuracy: Annotated[
        float | None,
        typer.Option(help="Accuracy in metres of points that do not say theirs."),
    ] = None,
    json: Json = False,
) -> None:
    """Tell where measured points lie, and what their accuracy leaves open."""
    from marram.cli.measuring import survey

    survey(file, points, hole, accuracy, json)


@course_app.command("versions")
def course_versions(
    file: Annotated[Path, typer.Argument(help="The course map, as GeoJSON.")],
    maps: Maps = None,
    day: PlayedOn = None,
    json: Json = False,
) -> None:
    """List the versions of a map, and the one in force on a day."""
    from marram.cli.versions import list_versions
    from marram.services.cases.given import day_of_play

    list_versions(file, maps, day_of_play(day, None), json)


@course_app.command("holes")
def course_holes(
    file: CourseMap,
    seed: Annotated[int, typer.Option(help="Another seed proposes other locations, as balanced.")] = 0,
    recent: Annotated[
        list[Path] | None,
        typer.Option(help="Recently used locations to keep away from, as --json printed them. Repeat."),
    ] = None,
    locations: Annotated[
        Path | None,
        typer.Option(help="Print these (edited) locations instead of proposing."),
    ] = None,
    elevations: Elevations = None,
    crs: Crs = None,
    green_speed: Annotated[
        float | None,
        typer.Option(metavar="FEET", help="Stimpmeter reading; without it the fastest greens are assumed."),
    ] = None,
    title: Annotated[str, typer.Option(help="The competition or round, for the sheet.")] = "",
    day: PlayedOn = None,
    for_players: Annotated[
        bool,
        typer.Option("--for-players", help="Leave slopes and what speaks against a place out of the sheet."),
    ] = False,
    paper: PaperOption = "a4",
    pdf: Sheet = None,
    svg: Drawing = None,
    json: Json = False,
) -> None:
    """Propose hole locations and print their sheet."""
    from marram.cli.holes import hole_locations
    from marram.services.cases.given import day_of_play

    hole_locations(
        file,
        seed=seed,
        recent=recent or [],
        chosen=locations,
        title=title,
        day=day_of_play(day, None),
        for_players=for_players,
        paper=paper,
        pdf=pdf,
        svg=svg,
        as_json=json,
        elevations=elevations or [],
        crs=crs,
        green_speed=green_speed,
    )


@course_app.command("marking")
def course_marking(
    file: CourseMap,
    day: PlayedOn = None,
    pdf: Sheet = None,
    paper: PaperOption = "a4",
    json: Json = False,
) -> None:
    """Print what to mend before play, hole by hole."""
    from marram.cli.holes import marking
    from marram.services.cases.given import day_of_play

    marking(file, day=day_of_play(day, None), pdf=pdf, paper=paper, as_json=json)
