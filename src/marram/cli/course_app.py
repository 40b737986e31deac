"""The commands of ``marram course``."""

from pathlib import Path
from typing import Annotated, Optional

import typer

from marram.cli.options import Json, PlayedOn

course_app = typer.Typer(help="Look after course maps.", rich_markup_mode=None, no_args_is_help=True)


@course_app.command("check")
def course_check(
    file: Annotated[Path, typer.Argument(help="The course map: GeoJSON or OpenStreetMap XML.")],
    json: Json = False,
) -> None:
    """Say every fault of a course map, with its place and what to do about it."""
    from marram.cli.course import check_course

    check_course(file, json)


@course_app.command("order")
def course_order(
    file: Annotated[Path, typer.Argument(help="The course map.")],
    hole: Annotated[int, typer.Option(help="The hole being played.")],
    ball: Annotated[list[str], typer.Option(metavar="LON,LAT", help="A ball. Repeat.")],
    accuracy: Annotated[float, typer.Option(help="How far off each place may be, in metres.")] = 0.0,
    json: Json = False,
) -> None:
    """Tell which ball is farthest from the hole."""
    from marram.cli.measuring import order_of_play

    order_of_play(file, hole, ball, accuracy, json)


@course_app.command("survey")
def course_survey(
    file: Annotated[Path, typer.Argument(help="The course map.")],
    points: Annotated[Path, typer.Argument(help="Points measured on the ground: GPX or CSV.")],
    hole: Annotated[int, typer.Option(help="The hole being played.")],
    accuracy: Annotated[
        Optional[float],  # noqa: UP045
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
    maps: Annotated[Optional[Path], typer.Option(help="Folder that keeps versions of the map.")] = None,  # noqa: UP045
    day: PlayedOn = None,
    json: Json = False,
) -> None:
    """List the versions of a map, and the one in force on a day."""
    from marram.cli.conditions import day_of_play
    from marram.cli.versions import list_versions

    list_versions(file, maps, day_of_play(day, None), json)


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
    elevations: Annotated[
        Optional[list[Path]],  # noqa: UP045
        typer.Option(help="Elevations of the greens: CSV, GeoJSON or Esri ASCII grid. Repeat."),
    ] = None,
    crs: Annotated[
        Optional[str],  # noqa: UP045
        typer.Option(metavar="EPSG:CODE", help="Coordinate system of elevations that are not in degrees."),
    ] = None,
    green_speed: Annotated[
        Optional[float],  # noqa: UP045
        typer.Option(metavar="FEET", help="Stimpmeter reading; without it the fastest greens are assumed."),
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
        elevations=elevations or [],
        crs=crs,
        green_speed=green_speed,
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
