"""The command ``marram serve``."""

from pathlib import Path
from typing import Annotated

import typer

from marram.cli.shared_options import Crs, Elevations, Maps


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
