"""Conditions that are changed while a desk runs: what begins goes by them at once, what was ruled keeps what it was ruled under."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.services.day.conditions_changing import conditions_changing
from marram.services.log.tap import Tap
from marram.services.results.scored import scored_in
from tests.desk.asking import TestClient
from tests.services.scoring import NOON, Scoring, scoring


@pytest.fixture
def found(tmp_path: Path) -> Iterator[Scoring]:
    with scoring(tmp_path) as it:
        yield it


@pytest.fixture
def kept(found: Scoring) -> KeptHere:
    return keep_here(found.records)


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def adopt(found: Scoring, codes: list[str]) -> None:
    """Adopt Local Rules, as the shell does beside a desk that runs."""
    here = scored_in(found.records)
    here.add(conditions_changing(here, {"local_rules": codes}, Tap(new_ident(), NOON, None, 0)))


def local(desk: TestClient) -> str:
    return str(desk.get("/api/offline/event").json()["conditions"]["local"])


def test_a_running_desk_goes_by_changed_local_rules(found: Scoring, desk: TestClient) -> None:
    """The next case begins under them, on paper, on phones and on the page; nothing was started again."""
    before = local(desk)
    assert "D-4.1" not in before
    adopt(found, ["D-4.1"])
    assert local(desk) == "D-4.1"
    assert "local=D-4.1" in desk.get("/").text


def test_what_a_device_keeps_of_its_own_does_not_hold_back_the_rest(found: Scoring, desk: TestClient) -> None:
    """Somebody set the sides on a phone; the Local Rules there still follow the Committee."""
    own = desk.get("/api/offline/event").json()["conditions"]
    form = {"on": own["on"], "form": own["form"], "sides": "foursomes", "local": own["local"].split(",")}
    assert desk.post("/settings", data=form).status_code == 303
    adopt(found, ["D-4.1"])
    page = desk.get("/").text
    assert "local=D-4.1" in page
    assert "sides=foursomes" in page
