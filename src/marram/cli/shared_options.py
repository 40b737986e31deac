"""Options that several commands share."""

from pathlib import Path
from typing import Annotated

import typer

Json = Annotated[bool, typer.Option("--json", help="Print JSON instead of text.")]
PlayedOn = Annotated[
    str | None, typer.Option("--played-on", metavar="DATE", help="Day of the round; default today.")
]
Edition = Annotated[
    str | None,
    typer.Option(
        "--edition", metavar="YEAR", help="2019 or 2023 (teaching: 2016), as clarified up to its last day."
    ),
]
Form = Annotated[str | None, typer.Option("--form", help="Form of play, e.g. stroke_play or match_play.")]
Sides = Annotated[
    str | None,
    typer.Option("--sides", help="Who plays together, e.g. foursomes, four_ball or three_ball."),
]
LocalRules = Annotated[
    list[str] | None,
    typer.Option(
        "--local-rule", metavar="CODE", help="A Model Local Rule in force, e.g. E-5; 'none' for none. Repeat."
    ),
]
Facts = Annotated[
    list[str] | None,
    typer.Option("--fact", metavar="NAME=VALUE", help="A fact that is known. Repeat."),
]
CourseMap = Annotated[Path, typer.Argument(help="The course map: GeoJSON or OpenStreetMap XML.")]
Hole = Annotated[int, typer.Option(help="The hole being played.")]
Maps = Annotated[Path | None, typer.Option(help="Folder that keeps versions of the map.")]
Elevations = Annotated[
    list[Path] | None,
    typer.Option(help="Elevations of the greens: CSV, GeoJSON or Esri ASCII grid. Repeat."),
]
Crs = Annotated[
    str | None,
    typer.Option(metavar="EPSG:CODE", help="Coordinate system of elevations that are not in degrees."),
]
Sheet = Annotated[Path | None, typer.Option(help="Write the sheet here, as PDF.")]
Drawing = Annotated[Path | None, typer.Option(help="Write the drawing here, as SVG.")]
