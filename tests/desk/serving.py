"""A desk running on a free port for as long as a test needs it."""

import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager

import uvicorn
from starlette.types import ASGIApp

from marram.desk.secure.authority import Secured


@contextmanager
def served(
    app: ASGIApp, secure: Secured | None = None, listening: socket.socket | None = None
) -> Iterator[str]:
    """Yield the address of a running desk. The socket listens before the server starts, so nothing has to wait."""
    listening = listening or socket.create_server(("127.0.0.1", 0))
    files = {} if secure is None else {"ssl_certfile": secure.certificate, "ssl_keyfile": secure.key}
    server = uvicorn.Server(uvicorn.Config(app, log_level="error", lifespan="off", ws="none", **files))  # type: ignore[arg-type]
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]}, daemon=True)
    thread.start()
    try:
        yield f"{'https' if secure else 'http'}://127.0.0.1:{listening.getsockname()[1]}"
    finally:
        server.should_exit = True
        thread.join(timeout=20)
