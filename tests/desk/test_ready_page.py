"""What still stands before the first start, at the desk: the Committee sees it first, and each item leads where it is mended."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from marram.desk.log.kept import KeptHere
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signed_in


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


@pytest.fixture
def committee(kept: KeptHere) -> TestClient:
    return signed_in(guarded(kept), kept, "committee")


def test_each_item_leads_to_where_it_is_mended(committee: TestClient) -> None:
    """Holes that are not set lead to the holes of that very day; that page answers."""
    page = committee.get("/ready?round=2").text
    (link,) = set(re.findall(r'href="(/holes/[^"]+)"', page))
    assert link == "/holes/2025-06-22"
    assert committee.get(link).status_code == 200
    assert "12 players have no starting time" in page


def test_the_first_screen_of_the_committee_shows_it_before_play(
    kept: KeptHere, committee: TestClient
) -> None:
    """Before play and on the course, until the event is over; nobody else is shown it."""
    for hour, shown in (("before", True), ("play", True), ("after", False)):
        committee.get(f"/now?hour={hour}")
        committee.cookies.set("marram_hour", hour)
        assert ('id="ready"' in committee.get("/now").text) is shown
    referee = signed_in(guarded(kept), kept, "referee")
    referee.cookies.set("marram_hour", "before")
    assert 'id="ready"' not in referee.get("/now").text
    assert referee.get("/ready").status_code == 403


def test_a_round_that_is_not_there_is_refused_in_words(committee: TestClient) -> None:
    """The page says which rounds there are."""
    answer = committee.get("/ready?round=9")
    assert answer.status_code == 400
    assert "from 1 to 2" in answer.text


def test_the_groups_of_the_first_screen_say_of_which_round_they_are(committee: TestClient) -> None:
    """Where none plays today, they are those of the event's own day, and named so."""
    page = committee.get("/now").text
    part = page[page.index('id="groups"') :]
    assert "First round, 21 June 2025" in re.sub(r"\s+", " ", part[: part.index("<ul")])
