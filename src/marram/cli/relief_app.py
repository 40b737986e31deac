"""``marram relief``: its options, and what they ask for."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import (
    CourseMap,
    Drawing,
    Edition,
    Facts,
    Form,
    Hole,
    Json,
    LocalRules,
    Maps,
    PlayedOn,
    Sides,
)


def relief(
    course: CourseMap,
    hole: Hole,
    ball: Annotated[str, typer.Option(metavar="LON,LAT", help="Where the ball lies.")],
    flag: Annotated[
        str | None,
        typer.Option(
            metavar="LON,LAT",
            help="Where the hole is cut, if the map has no line of play for it or it is elsewhere today.",
        ),
    ] = None,
    entry: Annotated[
        str | None,
        typer.Option(metavar="LON,LAT", help="Where it last crossed the edge of the penalty area."),
    ] = None,
    boundary: Annotated[
        str | None,
        typer.Option(metavar="LON,LAT", help="Where a ball out of bounds last crossed the boundary."),
    ] = None,
    previous: Annotated[
        str | None,
        typer.Option(metavar="LON,LAT", help="Where the previous stroke was made."),
    ] = None,
    outside: Annotated[
        str | None,
        typer.Option(metavar="LON,LAT", help="Where the last stroke from outside the penalty area was made."),
    ] = None,
    estimated: Annotated[
        str | None,
        typer.Option(
            metavar="LON,LAT", help="Where a ball deliberately stopped would have come to rest, estimated."
        ),
    ] = None,
    provisional: Annotated[
        str | None,
        typer.Option(metavar="LON,LAT", help="Where the provisional ball lies."),
    ] = None,
    condition: Annotated[
        str | None,
        typer.Option(metavar="ID", help="The mapped condition to take relief from, where several are near."),
    ] = None,
    incident: Annotated[str | None, typer.Option(help="What happened; else taken from the place.")] = None,
    fact: Facts = None,
    played_on: PlayedOn = None,
    edition: Edition = None,
    form: Form = None,
    sides: Sides = None,
    local_rule: LocalRules = None,
    club_length: Annotated[
        float | None,
        typer.Option(metavar="M", help="Longest club other than the putter, in metres."),
    ] = None,
    hand: Annotated[str | None, typer.Option(help="The player's hand: right or left.")] = None,
    tall: Annotated[
        bool | None,
        typer.Option("--tall/--low", help="Whether the condition stands up; else as the map tells."),
    ] = None,
    dropped: Annotated[
        str | None,
        typer.Option(metavar="LON,LAT", help="Check a drop: where the ball first touched the ground."),
    ] = None,
    at_rest: Annotated[
        str | None,
        typer.Option(metavar="LON,LAT", help="Check a drop: where the ball came to rest."),
    ] = None,
    drop: Annotated[
        int, typer.Option(help="Check a drop: 1 for the first that counts, 2 for the second.")
    ] = 1,
    maps: Maps = None,
    svg: Drawing = None,
    png: Annotated[Path | None, typer.Option(help="Write the drawing as a picture here.")] = None,
    geojson: Annotated[Path | None, typer.Option(help="Write the areas here.")] = None,
    json: Json = False,
) -> None:
    """Draw the relief options at a place on a course."""
    from marram.cli.relief import Files, Request, draw_relief
    from marram.services.cases.given import day_of_play

    places = {
        "ball": ball,
        "entry": entry,
        "boundary": boundary,
        "previous": previous,
        "outside": outside,
        "estimated": estimated,
        "provisional": provisional,
        "dropped": dropped,
        "at-rest": at_rest,
    }
    day = day_of_play(played_on, edition)
    request = Request(
        course,
        hole,
        places,
        day,
        club_length,
        hand,
        incident,
        fact or [],
        form,
        sides,
        local_rule,
        drop,
        maps,
        condition,
        tall,
        flag,
    )
    draw_relief(request, Files(svg, png, geojson), json)
