"""The draw at the desk: wishes line by line, the lines that clash, groups kept, and what changed since they were published."""

import html
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from marram.competition.cards.acts import By
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.records.starting_sheet import GroupOfDay, groups, rounds
from tests.desk.asking import TestClient
from tests.desk.test_entries import fields
from tests.services.scoring import PARS, Scoring, scoring

ASKED = {"round": "2", "seed": "7", "first": "09:00", "minutes": "8", "places": "3", "tees": "1,10"}


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


def drawn(kept: KeptHere, number: int = 2) -> list[GroupOfDay]:
    """The groups of a round as they stand."""
    return groups(kept.records, rounds(kept.records, kept.event_id)[number - 1].id)


def keep(desk: TestClient, **asked: str) -> Any:
    """Draw and keep."""
    page = desk.post("/draw", data={**ASKED, **asked})
    assert page.status_code == 200, page.text
    return desk.post("/draw/keep", data=fields(page.text))


def with_whom(kept: KeptHere, name: str) -> set[str]:
    """Who plays with somebody."""
    group = next(one for one in drawn(kept) if name in {each.name for each in one.players})
    return {one.name for one in group.players} - {name}


def test_a_round_is_drawn_as_wished_once_somebody_says_so(kept: KeptHere, desk: TestClient) -> None:
    """Shown first and not kept; kept, everybody starts once, by two tees at even times, and every wish holds."""
    wishes = "together: Fenwin Dulsey, Corvin Sandeel\napart: Tobiah Ling, Osric Tarnbeck\nnot before 09:08: Linnea Gannetway\nfirst tee: tobiah ling"
    page = desk.post("/draw", data={**ASKED, "wishes": wishes})
    assert page.status_code == 200
    assert drawn(kept) == []
    assert desk.post("/draw/keep", data=fields(page.text)).status_code == 303
    now = drawn(kept)
    assert sorted(one.name for group in now for one in group.players) == sorted(
        one.name for group in drawn(kept, 1) for one in group.players
    )
    assert [(f"{one.starts_at:%H:%M}", one.tee) for one in now] == [
        ("09:00", 1),
        ("09:00", 10),
        ("09:08", 1),
        ("09:08", 10),
    ]
    assert "Corvin Sandeel" in with_whom(kept, "Fenwin Dulsey")
    assert "Osric Tarnbeck" not in with_whom(kept, "Tobiah Ling")
    late = next(one for one in now if "Linnea Gannetway" in {each.name for each in one.players})
    assert f"{late.starts_at:%H:%M}" == "09:08"
    (entry,) = kept.log.entries(kept.event_id, kind="draw_made")
    assert entry.told["round"] == rounds(kept.records, kept.event_id)[1].id


def test_the_same_seed_draws_the_same(kept: KeptHere, desk: TestClient) -> None:
    """And another seed another draw."""
    keep(desk)
    first = [[one.name for one in group.players] for group in drawn(kept)]
    keep(desk)
    assert [[one.name for one in group.players] for group in drawn(kept)] == first
    keep(desk, seed="another")
    assert [[one.name for one in group.players] for group in drawn(kept)] != first


def test_wishes_that_clash_are_named_as_they_were_written(kept: KeptHere, desk: TestClient) -> None:
    """Only those that clash; the form keeps what was typed; nothing is kept."""
    wishes = "early: Osric Tarnbeck\ntogether: Fenwin Dulsey, Corvin Sandeel\nTogether: corvin sandeel, Tobiah Ling\napart: Tobiah Ling, Fenwin Dulsey"
    page = desk.post("/draw", data={**ASKED, "wishes": wishes})
    assert page.status_code == 422
    clash = page.text.partition('class="clash"')[2].partition("</ul>")[0]
    assert "<li>together: Fenwin Dulsey, Corvin Sandeel</li>" in clash
    assert "<li>apart: Tobiah Ling, Fenwin Dulsey</li>" in clash
    assert "Osric" not in clash
    assert "early: Osric Tarnbeck\ntogether" in page.text
    assert drawn(kept) == []


@pytest.mark.parametrize(
    ("wish", "told"),
    [
        ("together: Fenwin Dulsey, Corvin Sandel", "Line 1: 'Corvin Sandel' does not play. Did you mean"),
        ("beside: Fenwin Dulsey, Corvin Sandeel", "is no wish"),
        ("together: Fenwin Dulsey", "is no wish"),
        ("not before noon: Fenwin Dulsey", "is no wish"),
        ("Fenwin Dulsey early", "is no wish"),
    ],
)
def test_a_wish_that_cannot_be_read_is_told_with_its_line(desk: TestClient, wish: str, told: str) -> None:
    """Every one of them, with the nearest name."""
    page = desk.post("/draw", data={**ASKED, "wishes": f"{wish}\nlate: Nobody Atall"})
    assert page.status_code == 422
    words = html.unescape(page.text)
    assert told in words
    assert "Line 2: 'Nobody Atall' does not play." in words


def test_what_cannot_be_a_start_is_told(desk: TestClient) -> None:
    """A time and tees that are none, at once; no seed; more players than the day has starts."""
    page = desk.post("/draw", data={**ASKED, "first": "25:10", "tees": "one"})
    assert page.status_code == 422
    assert "is written as 08:00" in page.text
    assert "are no tees" in page.text
    assert desk.post("/draw", data={**ASKED, "seed": " "}).status_code == 422
    assert "after midnight" in desk.post("/draw", data={**ASKED, "first": "23:50", "tees": "1"}).text
    assert desk.get("/draw?round=9").status_code == 404


def test_nobody_meets_again_and_the_leaders_start_last(
    found: Scoring, kept: KeptHere, desk: TestClient
) -> None:
    """A second round by the scores of the first."""
    first = found.competition.rounds[0].id
    people = {name: who for who, name in kept.names().items()}
    for at, one in enumerate(found.competition.entries):
        found.whole((one.person, first), (PARS[0] + at, *PARS[1:]))
    before = {
        each.name
        for one in drawn(kept, 1)
        for each in one.players
        if "Fenwin Dulsey" in {x.name for x in one.players}
    }
    assert keep(desk, order="score").status_code == 303
    best = sorted(found.competition.entries, key=lambda one: one.name)[:3]
    assert {one.name for one in drawn(kept)[-1].players} == {one.name for one in best}
    assert keep(desk, order="score", not_again="true").status_code == 303
    assert not with_whom(kept, "Fenwin Dulsey") & before
    assert people


def test_a_round_that_is_being_scored_is_not_drawn_anew(
    found: Scoring, kept: KeptHere, desk: TestClient
) -> None:
    """The groups stay as they are."""
    before = drawn(kept, 1)
    found.enter((before[0].players[0].id, found.competition.rounds[0].id), By.PLAYER, {1: 4})
    page = desk.post("/draw", data={**ASKED, "round": "1"})
    answer = desk.post("/draw/keep", data=fields(page.text))
    assert answer.status_code == 422
    assert "entered already" in answer.text
    assert drawn(kept, 1) == before


def test_groups_that_are_not_of_the_field_are_refused(kept: KeptHere, desk: TestClient) -> None:
    """Whatever a form carries: somebody twice, somebody who does not play, nobody, no groups at all."""
    one = drawn(kept, 1)[0].players[0].id
    for groups_ in ("[]", "{", f'[["09:00", 1, ["{one}", "{one}"]]]', f'[["09:00", 1, ["{new_ident()}"]]]'):
        told = {"round": "2", "seed": "7", "groups": groups_, "tapped": new_ident()}
        assert desk.post("/draw/keep", data=told).status_code == 422, groups_
    assert drawn(kept) == []
    assert kept.log.head(kept.event_id) == 0


def test_what_changed_since_the_times_were_published_is_told(kept: KeptHere, desk: TestClient) -> None:
    """Who starts otherwise and who starts no more, on the page of the draw; and for everybody beside the later list."""
    keep(desk)
    desk.post("/published", data={"what": "starting_times", "round": "2", "tapped": new_ident()})
    assert "are published as they stand" in desk.get("/draw?round=2").text
    gone = drawn(kept)[0].players[0]
    desk.post("/entries/withdraw", data={"person": gone.id, "tapped": new_ident()})
    page = desk.get("/draw?round=2").text
    assert f"{gone.name}: starts no more (was 09:00, hole 1)" in page
    assert page.count("starts no more") == 1
    assert "→" not in page

    desk.post("/published", data={"what": "starting_times", "round": "2", "tapped": new_ident()})

    assert "are published as they stand" in desk.get("/draw?round=2").text
    assert f"{gone.name}: starts no more (was 09:00, hole 1)" in desk.get("/published").text


def test_half_of_the_groups_plays_in_the_afternoon(kept: KeptHere, desk: TestClient) -> None:
    """With a second start four groups of three leave at 8:00 and 8:10, and at 13:00 and 13:10; one too early is refused."""
    asked = {"first": "08:00", "second": "13:00", "tees": "1", "minutes": "10", "places": "3"}
    assert keep(desk, **asked).status_code == 303

    times = [one.starts_at.strftime("%H:%M") for one in drawn(kept) if one.starts_at]
    assert times == ["08:00", "08:10", "13:00", "13:10"]
    early = desk.post("/draw", data={**ASKED, **asked, "second": "08:05"})
    assert early.status_code == 422
    assert "The second start, 08:05" in early.text
