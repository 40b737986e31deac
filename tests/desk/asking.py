"""Asking a desk within the process, under a name of this machine, as a browser on it does."""

import warnings
from typing import Any

from starlette.types import ASGIApp

from marram.rules.facts import vocabulary

with warnings.catch_warnings():
    # Newer Starlette asks for httpx2; httpx, which this project names, still works.
    warnings.simplefilter("ignore")
    from fastapi import testclient


class TestClient(testclient.TestClient):
    """Asks under ``localhost``: the desk knows no other name unless it is told."""

    __test__ = False

    def __init__(self, app: ASGIApp, **more: Any) -> None:
        super().__init__(app, **{"base_url": "http://localhost", **more})


def question(fact: str) -> str:
    """Return the question of a fact as the desk puts it, so that a test follows its words."""
    return vocabulary()[fact].question
