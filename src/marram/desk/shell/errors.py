"""One error shape: a page for people, and for programs ``{"marram": 1, "error": {code, message, faults}}``."""

import re
from collections.abc import Mapping
from typing import Any
from urllib.parse import urlsplit

from fastapi import FastAPI, Request
from fastapi.exceptions import RequestValidationError
from fastapi.responses import JSONResponse, PlainTextResponse, Response
from starlette.exceptions import HTTPException

from marram.desk.shell.templating import templates
from marram.errors import BookError, InputError, NotKept, UnknownIncident, shown
from marram.words.spoken import spoken
from marram.words.texts import text

NOWHERE = {"name": "", "credit": ""}
"""The course of a page that shows none."""

LAST_RESORT = (
    "marram failed here; please report it with the address of this page. The referee decides without it."
)
"""What is said when not even the page of an error can be made."""


LIMITS = ("gt", "ge", "lt", "le", "expected", "max_length", "min_length")
"""What a fault of pydantic says was allowed."""

WANTED = {
    "int": "integer",
    "float": "number",
    "finite_number": "number",
    "bool": "yes_or_no",
    "date": "day",
    "time": "time",
    "string": "words",
    "list": "list",
    "dict": "object",
    "model": "object",
    "dataclass": "object",
    "extra_forbidden": "nothing",
    "unexpected_keyword": "nothing",
}
"""What is wanted, by how pydantic's name of a fault begins; ``datetime`` counts as a day."""


def register(app: FastAPI) -> None:
    """Make the app answer every error in the one shape."""

    @app.exception_handler(InputError)
    def input_error(request: Request, error: InputError) -> Response:
        status = 404 if isinstance(error, UnknownIncident) else 503 if isinstance(error, NotKept) else 400
        return answer(request, status, _code(error), list(error.faults))

    @app.exception_handler(BookError)
    def book_error(request: Request, error: BookError) -> Response:
        return answer(request, 500, "book_error", [text("shell.error.book", fault=error)])

    @app.exception_handler(RequestValidationError)
    def validation_error(request: Request, error: RequestValidationError) -> Response:
        faults = [_not_valid(one) for one in error.errors()]
        return answer(request, 400, "bad_request", faults)

    @app.exception_handler(HTTPException)
    def http_error(request: Request, error: HTTPException) -> Response:
        if error.status_code == 404:
            fault = text("shell.error.no_address", path=request.url.path[:80])
            return answer(request, 404, "not_found", [fault])
        return answer(
            request,
            error.status_code,
            "refused",
            [f"{request.method} {request.url.path[:80]}: {error.detail}."],
        )


def answer(request: Request, status: int, code: str, faults: list[str]) -> Response:
    """Return an error as a page, or as JSON below ``/api/``; it rests on nothing that can have failed."""
    faults = [spoken(one) for one in faults]
    if request.url.path.startswith("/api/"):
        body: dict[str, Any] = {
            "marram": 1,
            "error": {"code": code, "message": " ".join(faults), "faults": faults},
        }
        return JSONResponse(body, status)
    context = {"case": None, "course": NOWHERE, "map_state": None, "status": status, "code": code}
    context["back"] = _sent_from(request)
    return templates().TemplateResponse(
        request, "error.html", {**context, "faults": faults}, status_code=status
    )


def _sent_from(request: Request) -> str:
    """Return the address of our own page that a form was sent from; empty where no form was sent, or it is not known."""
    page = urlsplit(request.headers.get("referer", ""))
    if request.method != "POST" or page.netloc != request.headers.get("host", "") or page.path[:2] == "//":
        return ""
    return page.path + (f"?{page.query}" if page.query else "")


def failure(request: Request) -> Response:
    """Return the answer to a request that failed here: the page, or as plain text where even that fails."""
    try:
        return answer(request, 500, "failure", [text("shell.error.failure")])
    except Exception:  # noqa: BLE001 - the last resort says something whatever happens
        return PlainTextResponse(LAST_RESORT, 500)


def _not_valid(one: Mapping[str, Any]) -> str:
    """Return what of a request cannot be used, by the kind of fault (pydantic's names of them), as one of our sentences."""
    kind, loc, given = one["type"], [str(part) for part in one["loc"]], one.get("input")
    name = ", ".join(loc[1:]) or text("shell.error.whole")
    if kind == "missing":
        return text("shell.error.missing", name=name)
    if kind in ("json_invalid", "json_type"):
        return text("shell.error.not_json")
    limits = {key: value for key, value in one.get("ctx", {}).items() if key in LIMITS}
    if limits:
        key, value = next(iter(limits.items()))
        return text(f"shell.error.{key}", name=name, given=shown(given), value=value)
    wanted = next((key for start, key in WANTED.items() if kind.startswith(start)), "other")
    return text(f"shell.error.wanted.{wanted}", name=name, given=shown(given))


def _code(error: InputError) -> str:
    return re.sub(r"(?<!^)(?=[A-Z])", "_", type(error).__name__).lower()
