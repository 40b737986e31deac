"""Times and days on the desk as they are written where the one who reads is: on pages, on paper, and as they are told live."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from fastapi import FastAPI

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.schema import read_json
from marram.services.day.suspension import suspending
from marram.services.kinds.suspension import Cause, Suspension
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.serving import served
from tests.desk.signing_in import guarded, signed_in
from tests.desk.test_live import NOON, listening, until
from tests.services.scoring import scoring

TWELVE, ALL_DAY = re.compile(r"\b\d{1,2}:\d\d\s[ap]m\b"), re.compile(r"\b\d\d:\d\d\b(?!\s[ap]m)")
AMERICAN, BRITISH = {"accept-language": "en-US,en;q=0.9"}, {"accept-language": "en-GB,en-US;q=0.5"}


@pytest.fixture
def desk(tmp_path: Path) -> Iterator[TestClient]:
    with scoring(tmp_path, read_json(EVENT, "event")) as found:
        yield TestClient(create_app(kept_here=keep_here(found.records)), follow_redirects=False)


@pytest.mark.parametrize("page", ["/papers/1/starting-sheet.html", "/papers/1/scorecards.html", "/cards?round=1", "/walk?round=1"])  # fmt: skip
def test_starting_times_are_those_of_the_reader_s_clock(desk: TestClient, page: str) -> None:
    """The same times, on a clock of twelve hours for who asks in American English and of twenty-four for everybody else."""
    american, british, nowhere = (
        re.sub(r"<(style|script|input)\b.*?(</\1>|>)", "", desk.get(page, headers=headers).text, flags=re.DOTALL)
        for headers in (AMERICAN, BRITISH, {"accept-language": "en"})
    )  # fmt: skip
    assert british == nowhere
    assert not TWELVE.search(british)
    times = ALL_DAY.findall(british)
    assert times
    assert [_of_all_day(one) for one in TWELVE.findall(american)] == times
    assert not ALL_DAY.search(TWELVE.sub("", american))


def test_days_are_written_as_where_the_reader_is(desk: TestClient) -> None:
    page = "/papers/1/starting-sheet.html"
    assert "21 June 2025" in desk.get(page, headers=BRITISH).text
    told = desk.get(page, headers=AMERICAN).text
    assert "June 21, 2025" in told
    assert "21 June" not in told


def test_what_is_told_live_is_written_for_each_who_listens(tmp_path: Path) -> None:
    """Two referees listen at once, in two places; the page that one asks for afterwards says what was told."""
    with club(tmp_path) as kept, served(app := guarded(kept)) as address:
        try:
            _stop_before_two(address, app, kept)
        finally:
            app.state.live.leaving = lambda: True


def _stop_before_two(address: str, app: FastAPI, kept: KeptHere) -> None:
    one, other = (signed_in(app, kept, "referee") for _ in range(2))
    with listening(address, one, **AMERICAN) as there, listening(address, other, **BRITISH) as here:
        for following in (there, here):
            assert until(following, "play")[2] == {"words": "", "until": ""}
        kept.add(suspending(new_ident(), NOON, Suspension.IMMEDIATE, Cause.LIGHTNING))
        american, british = (until(following, "play")[2]["words"] for following in (there, here))  # type: ignore[index]
    assert TWELVE.search(american)
    assert not TWELVE.search(british)
    assert _of_all_day(TWELVE.findall(american)[0]) == ALL_DAY.findall(british)[0]
    assert TWELVE.search(one.get("/now", headers=AMERICAN).text)


def _of_all_day(said: str) -> str:
    """Return a time of twelve hours on a clock of twenty-four."""
    hour, minute, half = int(said.split(":", maxsplit=1)[0]), said[-5:-3], said[-2:]
    return f"{hour % 12 + (12 if half == 'pm' else 0):02d}:{minute}"
