"""The desk: the web application for an official on the course, on a phone or at a table.

Every page is made on the server and works without JavaScript; the map needs it. A case lives in the
address of the page and nowhere else, so that a reload loses nothing and a bookmark holds everything.
"""

import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from pathlib import Path
from threading import Thread, Timer, current_thread, main_thread
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from logging import LogRecord

    from uvicorn import Server

    from marram.course.mending.keeping import ToMend
    from marram.desk.secure.authority import Secured
    from marram.desk.secure.handing_out import HandedOut
    from marram.services.cases.event import Event


NOT_STARTED = 3
"""The exit code where the server could not start: that of uvicorn's own command."""
LAST_ANSWERS = 5
"""How many seconds a desk that is stopped waits for answers on their way; a page left open must not keep it from ending."""


def serve(
    host: str = "127.0.0.1",
    port: int = 8400,
    course: str | Path | None = None,
    *,
    open_browser: bool = False,
    event: "Path | str | Mapping[str, Any] | Event | None" = None,
    maps: Path | None = None,
    elevations: Sequence[Path] = (),
    elevations_crs: str | None = None,
    hosts: Sequence[str] = (),
    records: str | Path | None = None,
    secure: "Secured | None" = None,
    hour: str | None = None,
    first_page: str = "/",
    ready: "Callable[[ToMend, str | None], None] | None" = None,
) -> None:
    """Serve the desk until it is stopped.

    Args:
        host: the address to listen on; only this machine by default.
        port: the port to listen on.
        course: the course map; ``None`` takes the demonstration course.
        open_browser: open the first page in the browser of this machine.
        event: the competition, as a JSON file, what it holds, or an :class:`~marram.services.cases.event.Event`.
        maps: the folder that keeps versions of the map; ``None`` takes one below the user's own data.
        elevations: files with elevations of the greens, for hole locations.
        elevations_crs: their coordinate system, where they are not in degrees.
        hosts: further names the desk is reached by, such as that of the machine in a network.
        records: the records to work with, in place of course map and folder; ``event`` is then the name of an event
            in them.
        secure: the files of a secure connection, whose authority phones get from a page on the next port; ``None``: the
            connection is not secure.
        hour: the hour of the event that the desk shows whatever the clock says, as a demonstration does: one of
            :data:`marram.desk.people.hours.HOURS`; ``None``: by the clock.
        first_page: the page that is opened in the browser, from its first stroke.
        ready: called once map and event have been read, just before the desk answers, with what must be
            mended at the desk before the map can be used, and the one-time link for the chief referee,
            where the desk serves more than this machine and no chief referee is signed in.

    Raises:
        InputError: the map cannot be read at all, or the event cannot be used.
    """
    from logging import getLogger  # noqa: PLC0415 - the command line loads this module before it knows it must serve

    import uvicorn  # noqa: PLC0415 - the command line loads this module before it knows it must serve

    from marram.course.mending.keeping import to_mend  # noqa: PLC0415 - the same
    from marram.desk.app import create_app  # noqa: PLC0415 - the same
    from marram.desk.readying import readied  # noqa: PLC0415 - the same

    link: str | None = None
    told = None
    if secure is not None:
        from marram.desk.secure.handing_out import handed_out  # noqa: PLC0415 - the same

        told = handed_out(secure, host, port, hosts)
    if records is None:
        assert not isinstance(event, str)
        app = create_app(
            course, event, maps or _maps_of(course), elevations, elevations_crs, hosts=(host, *hosts)
        )
    else:
        from marram.desk.log.kept import keep_here  # noqa: PLC0415 - the same
        from marram.desk.people.door import Door  # noqa: PLC0415 - the same
        from marram.desk.reaching import reached_at, this_machine_alone  # noqa: PLC0415 - the same
        from marram.records.database import opened  # noqa: PLC0415 - the same

        kept = keep_here(opened(records), event if isinstance(event, str) else None)
        door = None if this_machine_alone(host, hosts) else Door(kept.records, kept.event_id)
        app = create_app(
            elevations=elevations,
            elevations_crs=elevations_crs,
            hosts=(host, *hosts),
            kept_here=kept,
            door=door,
            reached_at=reached_at(host, port, hosts, "https" if secure else "http"),
            handed_out=told,
        )
        first = door.first_link() if door else None
        link = f"{app.state.reached_at}join/{first}" if first else None
    app.state.hour = hour
    if ready is not None:
        ready(to_mend(app.state.maps), link)
    if open_browser:
        import webbrowser  # noqa: PLC0415 - the same

        scheme, shown = "https" if secure else "http", "127.0.0.1" if host == "0.0.0.0" else host  # noqa: S104 - compared, not bound
        Timer(
            0.8,
            webbrowser.open,
            [f"{scheme}://{shown}:{port}{first_page}"],
        ).start()
    certificate: dict[str, Any] = (
        {"ssl_certfile": secure.certificate, "ssl_keyfile": secure.key} if secure else {}
    )
    server = uvicorn.Server(
        uvicorn.Config(
            app,
            host=host,
            port=port,
            log_level="warning",
            timeout_graceful_shutdown=LAST_ANSWERS,
            **certificate,
        )
    )
    getLogger("uvicorn.error").addFilter(lambda told: not (server.should_exit and _cut_off(told)))
    if app.state.live is not None:
        app.state.live.leaving = lambda: server.should_exit  # streams end with the desk, which waits for them
    try:
        with _ended_by_itself(server), _handing_out(secure, told, host, port), readied(app):
            server.run()
    except KeyboardInterrupt:
        return
    if not server.started:
        sys.exit(NOT_STARTED)


def _cut_off(told: "LogRecord") -> bool:
    """Whether a line of the server's own says that an answer was cut off; of a desk that was stopped nobody need hear it."""
    error = told.exc_info[1] if told.exc_info else None
    return type(error).__name__ == "CancelledError" or "timeout graceful shutdown" in told.getMessage()


__all__ = ["serve"]


@contextmanager
def _ended_by_itself(server: "Server") -> Iterator[None]:
    """Let a desk that the machine stops (SIGTERM) end as one that is stopped by hand: whole, and with exit code 0.

    The server answers the signal first, and gives it on when it has ended; what it then met would kill the process.
    """
    from signal import SIGTERM, signal  # noqa: PLC0415 - the command line loads this module before it knows it must serve

    if current_thread() is not main_thread():  # only there can it be heard
        yield
        return
    before = signal(SIGTERM, lambda *_: setattr(server, "should_exit", True))
    try:
        yield
    finally:
        signal(SIGTERM, before)


@contextmanager
def _handing_out(secure: "Secured | None", told: "HandedOut | None", host: str, port: int) -> Iterator[None]:
    """Hand out the authority of a secure connection beside the desk, for as long as it serves."""
    if secure is None or told is None:
        yield
        return
    import uvicorn  # noqa: PLC0415 - the command line loads this first

    from marram.desk.secure.handing_out import handing_out, port_beside  # noqa: PLC0415 - the same

    page = handing_out(secure.authority, told)
    beside = uvicorn.Server(uvicorn.Config(page, host=host, port=port_beside(port), log_level="warning"))
    thread = Thread(target=beside.run, daemon=True)
    thread.start()
    try:
        yield
    finally:
        beside.should_exit = True
        thread.join(timeout=5)


def _maps_of(course: str | Path | None) -> Path:
    """Return where versions of a map are kept."""
    from marram.course.versions.map_versions import default_folder  # noqa: PLC0415 - the command line loads this first
    from marram.demo import COURSE  # noqa: PLC0415 - the same

    path = COURSE if course is None else Path(course)
    return default_folder(path)
