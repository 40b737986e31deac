"""The club's authority, handed to phones over a connection that cannot be secure yet: a page of its own, on a port of its own.

What comes over such a connection can have been changed on the way. So the page says what trusting means and how it is
ended, and the fingerprint is compared with what the shell and the chief referee's desk show. Nothing else is served here.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives.serialization import Encoding
from cryptography.x509.oid import NameOID
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import RedirectResponse, Response
from starlette.routing import Route

from marram.desk.reaching import reached_at
from marram.desk.secure.authority import Secured
from marram.desk.shell.assets import source
from marram.desk.shell.guard import HEADERS
from marram.desk.shell.templating import templates
from marram.words.language import language

MOST_PORT = 65535
CARRIED = {**HEADERS, "Cache-Control": "no-store"}
"""What every answer carries."""


@dataclass(frozen=True)
class HandedOut:
    """Where phones get the authority.

    Attributes:
        address: the address of its page, without encryption.
        desk: the address of the desk, once it is trusted.
        fingerprint: what is compared.
    """

    address: str
    desk: str
    fingerprint: str


def port_beside(port: int) -> int:
    """Return the port of the page beside that of the desk: the next."""
    return port + 1 if port < MOST_PORT else port - 1


def handed_out(secure: Secured, host: str, port: int, hosts: Iterable[str] = ()) -> HandedOut:
    """Return where phones get the authority of a desk that listens on ``host`` and ``port``, and goes by further names."""
    names = tuple(hosts)
    desk = reached_at(host, port, names, "https") or f"https://{host}:{port}/"
    page = reached_at(host, port_beside(port), names) or f"http://{host}:{port_beside(port)}/"
    return HandedOut(page, desk, secure.fingerprint)


def handing_out(authority: Path, told: HandedOut) -> Starlette:
    """Return the application that hands out a certificate and says what to do with it, to whoever asks: it changes nothing and holds no secret."""
    certificate = x509.load_pem_x509_certificate(authority.read_bytes())

    def page(request: Request) -> Response:
        found = templates().TemplateResponse(
            request,
            "authority.html",
            {
                "told": told,
                "club": certificate.subject.get_attributes_for_oid(NameOID.COMMON_NAME)[0].value,
                "language": language,
            },
        )
        found.headers.update(CARRIED)
        return found

    def file(_: Request) -> Response:
        content = certificate.public_bytes(Encoding.DER)
        return Response(content, media_type="application/x-x509-ca-cert", headers=CARRIED)

    def style(_: Request) -> Response:
        return Response(source("offline/book.css"), media_type="text/css", headers=CARRIED)

    def elsewhere(_: Request) -> Response:
        return RedirectResponse("/", 303, headers=CARRIED)

    return Starlette(
        routes=[
            Route("/", page),
            Route("/authority.crt", file),
            Route("/book.css", style),
            Route("/{anything:path}", elsewhere),
        ]
    )


__all__ = ["HandedOut", "handed_out", "handing_out", "port_beside"]
