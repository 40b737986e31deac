"""The pages of the log: searched, turned, withdrawn, the day by hour and place, and what differs before the chief."""

import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime
from html import unescape

import pytest
from sqlalchemy import select

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere
from marram.records.entry import new_ident
from marram.records.tables import Club
from marram.services.log.log import ruling_entry
from marram.services.log.searching import AT_A_TIME
from marram.words.texts import text
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.test_log import RULING, form
from tests.services.test_log import CASE, NOW


@pytest.fixture
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[KeptHere]:
    folder = tmp_path_factory.mktemp("records")
    with club(folder) as found:
        yield found


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def test_the_log_is_turned_page_by_page(kept: KeptHere, desk: TestClient) -> None:
    """The first page holds the latest, the next what was before, and nothing is left out or shown twice."""
    kept.shared.log.append_all([(kept.event_id, ruling_entry(CASE, NOW)) for _ in range(AT_A_TIME + 3)])
    first = desk.get("/log").text
    following = re.search(r'rel="next" href="([^"]*)"', first)
    assert following is not None
    second = desk.get(following[1].replace("&amp;", "&")).text
    shown = [int(one) for page in (first, second) for one in re.findall(r'href="/log/(\d+)"', page)]

    assert shown == list(range(AT_A_TIME + 3, 0, -1))
    assert 'rel="next"' not in second


def test_what_was_not_recorded_today_says_its_day(kept: KeptHere, desk: TestClient) -> None:
    """A time alone reads as one of today: in the log, and among what was recorded last, another day stands beside it."""
    kept.shared.log.append(kept.event_id, ruling_entry(CASE, datetime(2025, 6, 21, 12, 0, tzinfo=UTC)))
    today = datetime.now(UTC)
    kept.shared.log.append(kept.event_id, ruling_entry(CASE, today))
    listed = re.findall(r"<span>(\d)\. ([^·]*) ·", desk.get("/log").text)
    last = re.findall(r'data-number="(\d)">.*?<span class="at">([^<]*)<', desk.get("/now").text)

    for told in (listed, last):
        assert [number for number, _ in told] == ["2", "1"]
        assert re.fullmatch(r"2[012] Jun 2025, \d\d:\d\d", told[1][1])
        assert told[0][1] == f"{today.astimezone():%H:%M}"


def test_times_are_those_of_the_club_s_clocks(kept: KeptHere, desk: TestClient) -> None:
    """Where the machine stands in another zone (a hired one keeps UTC), the log, the day and the first screen say the club's time."""
    with kept.records.changing() as session:
        session.scalars(
            select(Club)
        ).one().time_zone = "Pacific/Kiritimati"  # 14 hours before UTC: of no machine here
    kept.shared.log.append(kept.event_id, ruling_entry(CASE, datetime(2025, 6, 21, 20, 17, tzinfo=UTC)))

    assert "22 June 2025, 10:17" in desk.get("/log/1").text
    for page in ("/log", "/now"):
        assert re.search(r"22 Jun 2025, 10:17", desk.get(page).text), page
    assert "10:00" in desk.get("/day?on=2025-06-21").text.split("By the hour")[1]


def test_the_log_is_searched_from_its_page(desk: TestClient) -> None:
    """What is found is shown with how many; what is not found is said; the words stay in the field."""
    where = desk.post("/record", data={**form(desk), "note": "beside the third stake"}).headers["location"]
    desk.post("/record", data=form(desk))

    assert f'href="{where}"' in desk.get("/log?q=staked+17.1").text
    assert "1 entry found" in desk.get("/log?q=stakes").text
    assert 'value="zebra"' in desk.get("/log?q=zebra&hole=9&outcome=free").text
    assert "0 entries found" in desk.get("/log?q=zebra").text
    assert desk.get("/log?q=%22+OR+%2A&hole=x&outcome=y&kind=z").status_code == 200


def test_what_today_s_book_rules_otherwise_stands_on_the_page_of_the_entry(
    kept: KeptHere, desk: TestClient
) -> None:
    """A penalty recorded as an earlier book had it is said with today's ruling; a ruling that holds today says nothing of it."""
    entry = ruling_entry(CASE, NOW)
    outcome = {**entry.content["outcome"], "count": None}
    earlier = replace(
        entry, id=new_ident(), content={**entry.content, "outcome": outcome, "headline": "As it was"}
    )
    for one in (entry, earlier):
        kept.shared.log.append(kept.event_id, one)
    holds, differs = (desk.get(f"/log/{number}").text for number in (1, 2))
    told = text("log.differs_today", today=entry.content["headline"])

    assert told in unescape(differs)
    assert "ruled otherwise:" not in holds


def test_a_ruling_is_withdrawn_by_an_entry(kept: KeptHere, desk: TestClient) -> None:
    """The ruling stays, says that it was withdrawn, and is no earlier ruling for the next one."""
    where = desk.post("/record", data=form(desk)).headers["location"]
    sent = {"tapped": new_ident(), "reason": "another ball"}
    assert {desk.post(f"{where}/withdraw", data=sent).status_code for _ in range(2)} == {303}

    assert [one.kind for one in kept.log.entries(kept.event_id)] == ["ruling", "withdrawn"]
    assert "withdrawn" in desk.get(where).text
    assert "earlier ruling" not in desk.get(RULING).text
    assert desk.post("/log/2/withdraw", data={"tapped": new_ident()}).status_code == 404


def test_earlier_rulings_are_said_before_recording_and_differing_ones_reach_the_chief(
    desk: TestClient,
) -> None:
    """The page of a ruling says how many went the same way; one recorded otherwise is listed until the chief looked at it."""
    desk.post("/record", data=form(desk))
    said = desk.get(RULING).text
    assert "1 earlier ruling" in said
    assert "went the same way" in said
    desk.post("/record", data={**form(desk), "otherwise": "so", "instead": "2"})
    assert "1 went otherwise" in desk.get(RULING).text
    listed = desk.get("/opinions").text.split('action="/opinions/difference"')
    hidden = dict(re.findall(r'name="(about|tapped)" value="([^"]*)"', listed[1]))

    assert "To be looked at" in listed[0]
    assert desk.post("/opinions/difference", data={**hidden, "stands": "true"}).status_code == 303
    assert "It stands" in desk.get("/opinions").text
    assert 'action="/opinions/difference"' not in desk.get("/opinions").text


def test_what_differs_is_put_before_the_chief_once_and_each_that_was_ruled_otherwise(
    desk: TestClient,
) -> None:
    """Given as computed and as one before, a ruling is not put there because of the one that differs from both."""
    put = []
    for way in ("computed", "otherwise", "computed", "otherwise", "computed"):
        said = {"otherwise": "so", "instead": "2"} if way == "otherwise" else {}
        desk.post("/record", data={**form(desk), **said})
        put.append(desk.get("/opinions").text.count('action="/opinions/difference"'))

    assert put == [0, 1, 1, 2, 2]


def test_the_day_shows_each_ruling_by_hour_and_place(kept: KeptHere, desk: TestClient) -> None:
    """A ruling with a place has a pin, one without is named; both stand at their hour and lead to their entry."""
    placed = kept.add(ruling_entry(CASE, NOW))
    desk.post("/record", data=form(desk))
    page = desk.get("/day").text
    hours, figure = page.split("day-figure")

    assert re.findall(r'href="/log/(\d+)"', hours.split('class="hours"')[1]) in (["1", "2"], ["2", "1"])
    assert re.findall(r'<a href="/log/(\d+)"><title>', figure) == [str(placed.number)]
    assert 'href="/log/2"' in figure.split("</svg>")[1]
    assert "No ruling" in desk.get("/day?on=2025-06-22").text
