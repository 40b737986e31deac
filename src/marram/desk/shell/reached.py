"""The address that other devices reach the desk by, for links that are handed on, and its QR code."""

import segno
from fastapi import Request

from marram.desk.reaching import LOOPBACK


def reached_by(request: Request) -> str:
    """Return the address, ending in a slash: as this device reaches the desk, or as the desk was told where that is this machine."""
    told: str | None = request.app.state.reached_at
    if request.url.hostname in LOOPBACK and told:
        return told
    return str(request.base_url)


def only_here(request: Request) -> bool:
    """Whether no other device can reach the address."""
    return request.url.hostname in LOOPBACK and any(
        f"//{name}" in reached_by(request) or f"//[{name}]" in reached_by(request) for name in LOOPBACK
    )


def qr_code(link: str, scale: int = 8) -> str:
    """Return a link as a QR code (ISO/IEC 18004), black on white whatever the theme, as the address of a picture."""
    return str(segno.make(link, error="m").svg_data_uri(scale=scale, border=4, dark="#000", light="#fff"))
