"""What the browser finds incidents with: the weights, as they ship, and what each incident is called."""

import gzip
from functools import cache
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import Response

from marram.rules.finding.model import model, text_of_file
from marram.rules.incidents import INCIDENTS
from marram.words.language import translate

router = APIRouter(prefix="/api/finding")
VERSION = 1
"""The version of the JSON; it rises when a key changes its meaning or goes."""


@router.get("/model")
def weights(request: Request) -> Response:
    """The weights; fetched again only when they have changed."""
    tag = f'"{model().made_from[:32]}"'
    headers = {"ETag": tag, "Cache-Control": "no-cache", "Vary": "Accept-Encoding"}
    if request.headers.get("if-none-match") == tag:
        return Response(status_code=304, headers=headers)
    if "gzip" in request.headers.get("accept-encoding", ""):
        return Response(
            _compressed(), media_type="application/json", headers={**headers, "Content-Encoding": "gzip"}
        )
    return Response(text_of_file(), media_type="application/json", headers=headers)


@router.get("/incidents")
def incidents() -> dict[str, Any]:
    """The incidents: what each is called, the Rule it begins from, whether it is of the former Rules only."""
    return {
        "marram": VERSION,
        "incidents": [
            {"name": one.name, "title": translate()(one.title), "rule": one.rule, "former": one.for_teaching}
            for one in INCIDENTS
        ],
    }


@cache
def _compressed() -> bytes:
    return gzip.compress(text_of_file().encode(), 9, mtime=0)
