"""One error shape: a page for people, and for programs ``{"marram": 1, "error": {code, message, faults}}``."""

import re
from typing import Any

from fastapi import FastAPI, Request
from fastapi.exceptions import RequestValidationError
from fastapi.responses import JSONResponse, Response
from starlette.exceptions import HTTPException

from marram.desk.shell.workplace import show
from marram.errors import BookError, InputError, UnknownIncident
from marram.words.texts import text


def register(app: FastAPI) -> None:
    """Make the app answer every error in the one shape."""

    @app.exception_handler(InputError)
    def input_error(request: Request, error: InputError) -> Response:
        status = 404 if isinstance(error, UnknownIncident) else 400
        return answer(request, status, _code(error), list(error.faults))

    @app.exception_handler(BookError)
    def book_error(request: Request, error: BookError) -> Response:
        return answer(request, 500, "book_error", [text("shell.error.book", fault=error)])

    @app.exception_handler(Exception)
    def other_error(request: Request, _error: Exception) -> Response:
        return answer(request, 500, "failure", [text("shell.error.failure")])

    @app.exception_handler(RequestValidationError)
    def validation_error(request: Request, error: RequestValidationError) -> Response:
        faults = [f"{'.'.join(str(part) for part in one['loc'])}: {one['msg']}." for one in error.errors()]
        return answer(request, 400, "bad_request", faults)

    @app.exception_handler(HTTPException)
    def http_error(request: Request, error: HTTPException) -> Response:
        if error.status_code == 404:
            fault = text("shell.error.no_address", path=request.url.path)
            return answer(request, 404, "not_found", [fault])
        return answer(
            request, error.status_code, "refused", [f"{request.method} {request.url.path}: {error.detail}."]
        )


def answer(request: Request, status: int, code: str, faults: list[str]) -> Response:
    """Return an error as a page, or as JSON below ``/api/``."""
    if request.url.path.startswith("/api/"):
        body: dict[str, Any] = {
            "marram": 1,
            "error": {"code": code, "message": " ".join(faults), "faults": faults},
        }
        return JSONResponse(body, status)
    return show(request, "error.html", None, status=status, code=status, faults=faults)


def _code(error: InputError) -> str:
    return re.sub(r"(?<!^)(?=[A-Z])", "_", type(error).__name__).lower()
