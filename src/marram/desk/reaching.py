"""How others reach a desk: whether anybody but this machine can, and by which address."""

import socket
from collections.abc import Iterable

LOOPBACK = frozenset({"localhost", "127.0.0.1", "::1"})
"""The names of this machine."""

EVERY_ADDRESS = frozenset({"0.0.0.0", "::"})  # noqa: S104 - compared, not bound
"""Told to serve on these, the desk is reached by whatever address the machine has."""

ELSEWHERE = ("192.0.2.1", 9)
"""An address that is nobody's (RFC 5737): asked which of its own it would send from, a machine sends nothing."""


def this_machine_alone(host: str, hosts: Iterable[str] = ()) -> bool:
    """Whether a desk that listens on ``host``, and goes by further names, serves this machine alone."""
    return {host, *hosts} <= LOOPBACK


def reached_at(host: str, port: int, hosts: Iterable[str] = (), scheme: str = "http") -> str | None:
    """Return the address others reach the desk by, ending in a slash; ``None`` where nobody else does.

    The first name given is taken; without one, the address it listens on, or that by which the machine is in its network.
    """
    names = [one for one in (*hosts, host) if one not in LOOPBACK | EVERY_ADDRESS]
    name = names[0] if names else _own_address() if host in EVERY_ADDRESS else None
    if name is None:
        return None
    return f"{scheme}://{f'[{name}]' if ':' in name else name}:{port}/"


def _own_address() -> str | None:
    try:
        with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asking:
            asking.connect(ELSEWHERE)
            return str(asking.getsockname()[0])
    except OSError:
        return None
