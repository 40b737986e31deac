"""Lists made public at the desk: whoever has a file can check it by its address, and what was erased is gone, not another."""

import csv
import io
import json
import re
from collections.abc import Iterator
from datetime import UTC, datetime
from hashlib import sha256
from pathlib import Path

import pytest
from python_calamine import CalamineWorkbook
from sqlalchemy import update

from marram.desk.log.kept import KeptHere
from marram.desk.people.roles import PUBLIC
from marram.records import tables
from marram.records.entry import Entry, new_ident
from marram.records.people import erase
from marram.records.starting_sheet import conditions
from marram.services.publishing.workbook import sheet_names
from tests.cli.running import marram
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signature, signed_in


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        with found.records.writing() as connection:
            connection.execute(update(tables.Club).values(time_zone="Europe/Amsterdam"))
        yield found


def publish(kept: KeptHere, what: str = "starting_times", **more: str) -> tuple[TestClient, TestClient, str]:
    """The Committee publishes; return its device, one that is not signed in, and the digest of what is published."""
    app = guarded(kept)
    committee = signed_in(app, kept, "committee")
    signed = {"csrf": signature(committee, "/published"), "tapped": new_ident(), "what": what, **more}
    answer = committee.post("/published", data=signed)
    assert answer.status_code == 303, answer.text
    everybody = signed_in(app, kept, PUBLIC)
    digests = re.findall(r"/published/(\w{64})\.json", everybody.get("/published").text)
    return committee, everybody, digests[0] if digests else ""


def test_the_address_is_the_digest_of_the_file(kept: KeptHere) -> None:
    """Anybody gets the JSON without signing in, and its SHA-256 is its address; it holds every player once, and no handicap."""
    _, everybody, digest = publish(kept)
    answer = everybody.get(f"/published/{digest}.json")
    assert sha256(answer.content).hexdigest() == digest
    document = json.loads(answer.content)
    names = [one["name"] for group in document["groups"] for one in group["players"]]
    assert len(names) == len(set(names)) == 12
    assert "handicap" not in answer.text


def test_every_format_says_the_same(kept: KeptHere) -> None:
    """Each player with the time of the JSON file stands in CSV, in the calendar by the clock of UTC, and on the page."""
    _, everybody, digest = publish(kept)
    document = json.loads(everybody.get(f"/published/{digest}.json").content)
    starts = [(one["name"], group["time"]) for group in document["groups"] for one in group["players"]]
    rows = list(csv.DictReader(io.StringIO(everybody.get(f"/published/{digest}.csv").text)))
    assert [(one["name"], one["time"]) for one in rows] == starts
    page = everybody.get(f"/published/{digest}.html").text
    assert all(name in page for name, _ in starts)
    assert digest in page
    calendar = everybody.get(f"/published/{digest}.ics")
    assert calendar.headers["content-type"].startswith("text/calendar")
    assert calendar.text.count("BEGIN:VEVENT") == 12
    assert "DTSTART:20250621T060000Z" in calendar.text  # 08:00 in June in Amsterdam


def test_results_as_a_workbook_hold_numbers_and_every_letter(kept: KeptHere, tmp_path: Path) -> None:
    """Opened by another reader than the writer: each score a sheet, places and scores numbers, the names those of the JSON; the
    shell writes the same from the same records, and the page says in words what the file says in its own."""
    for name, scores in zip(sorted(kept.names().values())[-3:], ("4 3 5", "4 3 4", "5 3 4"), strict=True):
        entered = ["--given-by", "scorer", "--scores", scores]
        done = marram("event", "enter", str(tmp_path / "club.db"), name, *entered)
        assert done.code == 0, done.err
    _, everybody, digest = publish(kept, "results")
    document = json.loads(everybody.get(f"/published/{digest}.json").content)
    answer = everybody.get(f"/published/{digest}.xlsx")
    assert answer.headers["content-type"].startswith("application/vnd.openxmlformats")
    book = CalamineWorkbook.from_filelike(io.BytesIO(answer.content))
    assert len(book.sheet_names) == len(document["results"])
    assert any(each["total"] for one in document["results"] for each in one["places"])
    for name, one in zip(book.sheet_names, document["results"], strict=True):
        head, *rows = book.get_sheet_by_name(name).to_python()
        assert head[2] == "Name"
        assert [row[2] for row in rows] == [each["name"] for each in one["places"]]
        for row, each in zip(rows, one["places"], strict=True):
            total, against = row[head.index("Total")], row[head.index("±")]
            assert [row[0], total, against] == [
                "" if value is None else float(value)
                for value in (each["place"], each["total"], each["against_level"])
            ]
    done = marram("event", "board", str(tmp_path / "club.db"), "--output", str(tmp_path / "now.xlsx"))
    assert done.code == 0, done.err
    now = CalamineWorkbook.from_path(str(tmp_path / "now.xlsx"))
    assert [now.get_sheet_by_name(one).to_python() for one in now.sheet_names] == [
        book.get_sheet_by_name(one).to_python() for one in book.sheet_names
    ]
    page = everybody.get(f"/published/{digest}.html").text
    assert "not_started" not in page
    other = marram("event", "board", str(tmp_path / "club.db"), "--output", str(tmp_path / "now.odt"))
    assert other.code == 2
    assert "json, csv, xlsx, html" in other.err


def test_everybody_is_told_that_play_is_stopped(kept: KeptHere) -> None:
    """On the lists and the board, by the clocks of the club, without what it was for; and no more once play goes on."""
    _, everybody, _ = publish(kept)
    pages = ("/published", "/board")
    with kept.records.writing() as connection:
        told = conditions(kept.records, kept.event_id)
        connection.execute(
            update(tables.Event).values(conditions=json.dumps({**told, "results_public": True}))
        )
    assert not any("Play is stopped" in everybody.get(one).text for one in pages)
    at = datetime(2025, 6, 21, 12, 20, tzinfo=UTC)
    stopped = kept.add(
        Entry("play_suspended", at, new_ident(), content={"how": "immediate", "cause": "lightning"})
    )
    for one in pages:
        page = everybody.get(one).text
        assert "Play is stopped since 14:20." in page
        assert "ightning" not in page
    goes_on = {"suspension": stopped.id, "at": at.isoformat()}
    kept.add(Entry("play_resumed", at, new_ident(), content=goes_on))
    assert not any("Play is stopped" in everybody.get(one).text for one in pages)


def test_names_of_sheets_are_as_spreadsheets_take_them() -> None:
    """No sign that is not allowed, 31 letters at most, no two alike whatever their capitals."""
    long = "Net · Damen und Herren ab fünfzig: /alle/"
    assert sheet_names([long, long, "GROSS", "Gross", "[]"]) == [
        "Net · Damen und Herren ab fünfz",
        "Net · Damen und Herren ab fün 2",
        "GROSS",
        "Gross 2",
        "–",
    ]


def test_a_list_stays_at_its_address_when_a_later_one_comes(kept: KeptHere) -> None:
    """The same list again is the same address; the one of another round is another, and the first is still there."""
    _, everybody, first = publish(kept)
    _, _, again = publish(kept)
    assert again == first
    other = publish(kept, "results")[2]
    assert other != first
    assert everybody.get(f"/published/{first}.json").status_code == 200
    assert everybody.get(f"/published/{other}.ics").status_code == 404
    assert everybody.get(f"/published/{'0' * 64}.json").status_code == 404


def test_the_log_holds_no_name_and_an_erased_one_takes_the_list_away(kept: KeptHere) -> None:
    """What is personal stands apart from the log; once it is erased the list answers that it is gone."""
    _, everybody, digest = publish(kept)
    (entry,) = kept.log.entries(kept.event_id, kind="list_published")
    assert not [name for name in kept.names().values() if name in json.dumps(entry.content)]
    player = entry.content["document"]["groups"][0]["players"][0]["who"]
    erase(kept.records, player)
    assert everybody.get(f"/published/{digest}.json").status_code == 410
    assert "erased or changed" in everybody.get("/published").text


def test_only_those_responsible_publish(kept: KeptHere) -> None:
    """A referee sees what is published and publishes nothing; a round without a start is refused in words."""
    app = guarded(kept)
    referee = signed_in(app, kept, "referee")
    assert referee.get("/published").status_code == 200
    signed = {"csrf": signature(referee, "/published"), "tapped": new_ident(), "what": "results"}
    assert referee.post("/published", data=signed).status_code == 403
    committee = signed_in(app, kept, "committee")
    signed = {
        "csrf": signature(committee, "/published"),
        "tapped": new_ident(),
        "what": "starting_times",
        "round": "2",
    }
    answer = committee.post("/published", data=signed)
    assert answer.status_code == 400
    assert "No group has a starting time" in answer.text


def test_the_shell_writes_the_same_bytes(kept: KeptHere, tmp_path: Path) -> None:
    """Every published list in each format, named by its digest; publishing it again makes no second one."""
    _, everybody, digest = publish(kept)
    publish(kept)
    assert everybody.get("/published").text.count(f"{digest}.json") == 1
    done = marram("records", "published", str(tmp_path / "club.db"), str(tmp_path / "out"))
    assert done.code == 0, done.err
    assert sorted(one.suffix for one in (tmp_path / "out").iterdir()) == [
        ".csv",
        ".html",
        ".ics",
        ".json",
        ".xlsx",
    ]
    for form in ("json", "csv", "html", "xlsx"):
        there = (tmp_path / "out" / f"starting_times-{digest}.{form}").read_bytes()
        here = everybody.get(f"/published/{digest}.{form}").content
        assert there == re.sub(
            rb'<link rel="stylesheet" [^>]*>\n', b"", here
        )  # the desk's page names its style too


def test_every_sheet_that_is_offered_can_be_had(kept: KeptHere) -> None:
    """Each link of the page of sheets answers, as a page or as PDF on the paper asked for; what there is not enough for is no link."""
    committee = signed_in(guarded(kept), kept, "committee")
    links = re.findall(r'href="(/papers/[^"]+)"', committee.get("/papers").text)
    assert "/papers/1/report.pdf?paper=letter" in links
    for link in links:
        answer = committee.get(link)
        assert answer.status_code == 200, link
        assert answer.content.startswith(b"%PDF" if ".pdf" in link else b"<!doctype html>"), link
    assert committee.get("/papers/1/menu.pdf").status_code == 404
    assert committee.get("/papers/9/notice.pdf").status_code in {400, 404}


def test_the_style_of_a_list_is_had_beside_it(kept: KeptHere) -> None:
    """The guard lets no style inside a page apply, so the page names an address; there everybody finds the style that is inside."""
    _, everybody, digest = publish(kept)
    page = everybody.get(f"/published/{digest}.html").text
    address = re.search(r'<link rel="stylesheet" href="([^"]+)">', page)
    assert address
    style = everybody.get(address[1])
    assert style.headers["content-type"].startswith("text/css")
    inside = re.search(r"<style>\n(.*?)</style>", page, re.DOTALL)
    assert inside
    assert inside[1].strip() == style.text.strip()


def test_the_calendar_lasts_as_long_as_the_conditions_give(kept: KeptHere) -> None:
    """Four hours and ten minutes where they say 250; five hours where nothing is said."""
    told = conditions(kept.records, kept.event_id)
    for minutes, ends in ((250, "DTEND:20250621T101000Z"), (None, "DTEND:20250621T110000Z")):
        now = {**told, "minutes_of_play": minutes} if minutes else {**told}
        if not minutes:
            now.pop("minutes_of_play", None)
        with kept.records.writing() as connection:
            connection.execute(update(tables.Event).values(conditions=json.dumps(now)))
        _, everybody, digest = publish(kept)
        calendar = everybody.get(f"/published/{digest}.ics").text
        assert "DTSTART:20250621T060000Z" in calendar
        assert ends in calendar
