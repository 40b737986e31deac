"""The JSON of the desk under requests nobody thought of: whatever is sent, an answer in the one shape, and never a failure of ours.

Bodies and paths are drawn by Schemathesis from the desk's own description (OpenAPI 3.1, ``/api/openapi.json``); the
queries, which the description does not list because they are read as a case's address, from the names that pages use.
``make fuzz`` draws more.
"""

import os
import warnings
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from marram.desk.app import create_app
from marram.rules.facts import vocabulary
from marram.rules.incidents import INCIDENTS
from tests.clubs import club
from tests.desk.asking import TestClient

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # what it uses warns of its own next versions
    import schemathesis

EXAMPLES = int(os.environ.get("MARRAM_FUZZED", "8"))
"""Requests for each operation."""

SETTLED = settings(
    max_examples=EXAMPLES,
    deadline=None,
    database=None,
    suppress_health_check=list(HealthCheck),
    derandomize=EXAMPLES < 50,
)
DEAR = {"/api/course", "/api/map/draft", "/api/course/{tag}/{part}", "/api/holes/{day}", "/api/marking"}
"""Operations that draw or look through the whole course, tried with fewer requests."""

OPERATIONS = [
    one.ok()
    for one in schemathesis.openapi.from_dict(create_app().openapi()).get_all_operations()
    if one.ok().path.startswith("/api/") and one.ok().path != "/api/live"  # a stream never ends
]
NAMES = ["on", "form", "sides", "local", "hole", "ball", "what", "q", "upto", "speed", "seed", "option", "back", "place", "act", "then", *sorted(vocabulary())]  # fmt: skip
VALUES = st.one_of(
    st.sampled_from(
        [
            "",
            "yes",
            "no",
            "1",
            "9",
            "-1",
            "0",
            "99999999999999999999",
            "nan",
            "55.0041,4.00015",
            "55.0041,4.00015,6",
            "2025-06-21",
            "0000-00-00",
            "stroke_play",
            "none",
            "E-5",
            "%00",
            "~",
            "1e400",
        ]
    ),
    st.sampled_from([one.name for one in INCIDENTS]),
    st.text(max_size=12),
)
QUERIES = st.lists(st.tuples(st.sampled_from(NAMES), VALUES), max_size=6)


@pytest.fixture(scope="module")
def desk(tmp_path_factory: pytest.TempPathFactory) -> Iterator[TestClient]:
    """A desk with records, so that what saves has where to save."""
    with club(tmp_path_factory.mktemp("fuzzed")) as kept:
        yield TestClient(create_app(kept_here=kept), raise_server_exceptions=False, follow_redirects=False)


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda one: f"{one.method} {one.path}")
def test_whatever_is_sent_is_answered_in_the_one_shape(desk: TestClient, operation: Any) -> None:
    """Data, or an error with code, message and faults; a body that fits its description or not."""
    how = settings(SETTLED, max_examples=max(1, EXAMPLES // 4)) if operation.path in DEAR else SETTLED

    @how
    @given(case=operation.as_strategy(), query=QUERIES)
    def tried(case: Any, query: list[tuple[str, str]]) -> None:
        sent = case.as_transport_kwargs(base_url="http://localhost")
        headers = {
            name: value
            for name, value in sent["headers"].items()
            if name.lower() not in {"host", "user-agent"}
        }
        answer = desk.request(
            sent["method"],
            sent["url"],
            params=[*(sent.get("params") or {}).items(), *query],
            json=sent.get("json"),
            headers={
                name: value for name, value in headers.items() if value.isascii() and value.isprintable()
            },
        )
        assert answer.status_code < 500, answer.text
        if answer.status_code >= 400:
            error = answer.json()["error"]
            assert set(error) == {"code", "message", "faults"}
            assert error["faults"]

    tried()


def test_there_is_much_to_try() -> None:
    """The description lists the addresses that take a body, too."""
    assert len(OPERATIONS) >= 18
    assert sum(one.method == "post" for one in OPERATIONS) >= 4
