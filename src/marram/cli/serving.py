"""``marram serve``: the desk on a loopback address."""

import os
import signal
import socket
import sys
import webbrowser
from collections.abc import Sequence
from contextlib import ExitStack
from pathlib import Path
from typing import TYPE_CHECKING

from marram.cli.exits import BAD_INPUT, stop
from marram.cli.long_work import shown
from marram.desk import serve
from marram.desk.people.hours import PLAY
from marram.desk.reaching import LOOPBACK
from marram.said import said
from marram.services.cases.event import read_event
from marram.words.spoken import spoken
from marram.words.texts import count_text, text

if TYPE_CHECKING:
    from marram.course.mending.keeping import ToMend
    from marram.desk.secure.authority import Secured

USUAL_PORT = 8123
"""Where a desk is served unless another port is given."""

CLUB = "Quillsand Links"
"""The invented club."""

ZONE = "Europe/London"
"""The zone of its clocks."""


def serve_desk(
    course: Path | None,
    event: Path | None,
    host: str,
    port: int,
    *,
    demo: bool,
    open_browser: bool,
    maps: Path | None,
    records: str | None = None,
    elevations: Sequence[Path] = (),
    elevations_crs: str | None = None,
    hosts: Sequence[str] = (),
    secure: Path | None = None,
    first_page: str = "/",
) -> None:
    """Say the address and serve until stopped."""
    if demo and course is not None:
        stop(BAD_INPUT, said("--demo serves the invented course; leave out the course map, or --demo."))
    if records is not None and (course is not None or maps is not None):
        stop(
            BAD_INPUT,
            said("Records hold the course and its versions; leave out the course map and --maps."),
        )
    if records is not None and demo:
        elevations = elevations or _demo_in(records)
    found = read_event(None if records else event)
    for remark in found.remarks:
        print(spoken(remark), file=sys.stderr)
    if records is None and event is None and (demo or course is None):
        from marram.demo import EVENT

        found = read_event(EVENT)
    _must_be_free(host, port)
    held = None if secure is None else _secured(secure, host, hosts, club_in(records))
    if held is not None:
        from marram.desk.secure.handing_out import handed_out, port_beside

        _must_be_free(host, port_beside(port))

    bar = ExitStack()

    def say_where(to_mend: "ToMend", link: str | None) -> None:
        bar.close()
        signal.signal(signal.SIGINT, signal.default_int_handler)  # the server ends in its own order
        scheme = "http" if held is None else "https"
        print(text("cli.serve.at", address=f"{scheme}://{host}:{port}{first_page}"), flush=True)
        if held is not None:
            page = handed_out(held, host, port, hosts).address
            told = text("cli.serve.secure", file=held.authority, address=page, fingerprint=held.fingerprint)
            print(told, flush=True)
            _print_code(page)
        if to_mend.errors:
            key = "cli.serve.serves" if to_mend.serves else "cli.serve.to_mend"
            print(count_text(key, to_mend.errors), flush=True)
        if link:
            print(text("cli.serve.first_link", link=link), flush=True)
        elif records is None and host not in LOOPBACK:
            print(text("cli.serve.open_door"), file=sys.stderr, flush=True)

    with bar:
        bar.enter_context(shown())
        if course is not None and sys.stderr.isatty():
            print(text("cli.serve.reads", file=course.name), file=sys.stderr, flush=True)
        serve(
            host,
            port,
            course,
            open_browser=open_browser,
            event=found if records is None else None if event is None else str(event),
            maps=maps,
            records=records,
            elevations=elevations,
            elevations_crs=elevations_crs,
            hosts=hosts,
            secure=held,
            hour=PLAY if demo else None,
            first_page=first_page,
            ready=say_where,
        )


def free_port(host: str) -> int:
    """Return the usual port of the desk, or where that is taken another that is free now."""
    return USUAL_PORT if _unlistenable(host, USUAL_PORT) is None else _any_free(host)


def browser_here() -> bool:
    """Whether this machine has a browser with a window, so that none is opened inside the terminal."""
    if sys.platform not in {"win32", "darwin"} and not {"DISPLAY", "WAYLAND_DISPLAY"} & os.environ.keys():
        return False
    try:
        webbrowser.get()
    except webbrowser.Error:
        return False
    return True


def _any_free(host: str) -> int:
    with _probe(host) as probe:
        probe.bind((host, 0))
        return int(probe.getsockname()[1])


def _probe(host: str) -> socket.socket:
    probe = socket.socket(socket.AF_INET6 if ":" in host else socket.AF_INET)
    probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    return probe


def _unlistenable(host: str, port: int) -> str | None:
    """Return why a port cannot be listened on, or ``None``."""
    with _probe(host) as probe:
        try:
            probe.bind((host, port))
        except OSError as error:
            return str(error.strerror)
    return None


def _must_be_free(host: str, port: int) -> None:
    """Stop unless a port can be listened on."""
    if (strerror := _unlistenable(host, port)) is not None:
        stop(
            BAD_INPUT,
            said(
                "Port {port} on {host} cannot be used: {strerror}. Give another with --port.",
                port=port,
                host=host,
                strerror=strerror,
            ),
        )


def _print_code(address: str) -> None:
    """Print an address as a code to be scanned, where the terminal has the blocks it is made of."""
    if (sys.stdout.encoding or "").lower().replace("-", "") == "utf8":
        import segno

        segno.make(address, error="m").terminal(compact=True)
        sys.stdout.flush()


def _secured(folder: Path, host: str, hosts: Sequence[str], club: str) -> "Secured":
    """Return the certificate of this machine for every name it is reached by."""
    from marram.desk.reaching import EVERY_ADDRESS
    from marram.desk.secure.authority import secured

    names = [one for one in (host, *hosts) if one not in EVERY_ADDRESS]
    if not names:
        stop(
            BAD_INPUT,
            said(
                "A certificate names what it is for. Say with --allow-host by which addresses the desk is reached."
            ),
        )
    return secured(folder, names, club)


def club_in(records: str | None) -> str:
    """Return the name of the club whose records are served; where there is none, or several, a general one."""
    if records is None:
        return CLUB_UNKNOWN
    from marram.records.database import opened
    from marram.records.starting_sheet import clubs

    with opened(records) as there:
        known = clubs(there)
    return known[0].name if len(known) == 1 else CLUB_UNKNOWN


CLUB_UNKNOWN = "The club"
"""How an authority is called where no club is known, or several."""


def _demo_in(records: str) -> Sequence[Path]:
    """Put the invented club into records that are not there yet; return the elevations of its greens."""
    from marram.demo import GREENS
    from marram.records.making import brought_up_to_date, made
    from marram.records.starting_sheet import events
    from marram.services.demonstrating.championship import championship

    if "://" in records or Path(records).exists():
        brought_up_to_date(records)
    with made(records) as there:
        if not events(there):
            championship(there, CLUB, ZONE)
    return (GREENS,)
