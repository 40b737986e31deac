"""An examination at the desk: candidates without an account, nothing lost, marked by the key, items judged and retired."""

import json
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from functools import cache
from io import BytesIO
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from fastapi import FastAPI
from pypdf import PdfReader
from sqlalchemy import update

from marram.desk.log.kept import KeptHere
from marram.desk.people.roles import PUBLIC
from marram.records import tables
from marram.records.examinations import (
    Sat,
    Sitter,
    answer,
    begin,
    chosen_by,
    close,
    examination_of,
    hand_in,
    keep_examination,
    sitters,
)
from marram.records.retired_items import retired
from marram.teach.examinations.kept_paper import KeptItem, KeptPapers, read_papers, sat, to_look_at, written
from marram.teach.examinations.paper import Examination, examination
from marram.words.texts import short_day_words
from marram.words.texts import text as said
from tests.cli.running import marram
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signature, signed_in

NOW = datetime.now(UTC)
ITEMS = 5


@cache
def exam() -> Examination:
    return examination(3, ITEMS, forms=2)


@cache
def papers() -> str:
    return written(exam(), "Quillsand Links")


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


@pytest.fixture
def app(kept: KeptHere) -> FastAPI:
    return guarded(kept)


def made(kept: KeptHere, candidates: int = 2, minutes: int = 60) -> Sat:
    return keep_examination(
        kept.records, kept.event_id, papers(), ["A", "B"], minutes=minutes, candidates=candidates, now=NOW
    )


def begun(kept: KeptHere, at: datetime = NOW) -> tuple[Sat, list[Sitter]]:
    one = made(kept)
    begin(kept.records, one, at)
    found = examination_of(kept.records, kept.event_id, one.id)
    assert found
    return found, sitters(kept.records, found)


def items_of(one: Sat, sitter: Sitter) -> tuple[KeptItem, ...]:
    return read_papers(one.papers).forms[sitter.form]


def sent(phone: TestClient, sitter: Sitter, *choices: tuple[int, int, int]) -> dict[str, object]:
    """What the desk says to choices of a device: item, place and turn."""
    answers = [{"item": item, "place": place, "turn": turn} for item, place, turn in choices]
    headers = {"X-CSRF-Token": signature(phone, f"/examination/{sitter.code}")}
    found = phone.post(f"/api/examination/{sitter.code}", json={"answers": answers}, headers=headers)
    assert found.status_code == 200
    return found.json()  # type: ignore[no-any-return]


def test_what_was_drawn_is_kept_as_it_was() -> None:
    """Read back, a form has the words, the key and the identities of the items that were drawn."""
    kept_ = read_papers(papers())
    assert isinstance(kept_, KeptPapers)
    for form in exam().forms:
        found = kept_.forms[form.letter]
        assert [one.ident for one in found] == [one.ident for one in form.items]
        assert [one.right for one in found] == [one.question.right for one in form.items]
        assert [one.answers for one in found] == [
            tuple(answer.words for answer in one.question.answers) for one in form.items
        ]


def test_an_examiner_draws_one_up_and_a_candidate_finds_it_by_the_code(app: FastAPI, kept: KeptHere) -> None:
    """Neighbours have different forms; the code is found however it is typed, and no item is shown before the beginning."""
    referee = signed_in(app, kept, "referee")
    data = {"csrf": signature(referee, "/examination"), "items": 4, "candidates": 3, "minutes": 20}
    made_ = referee.post("/examination", data=data)
    assert made_.status_code == 303
    page = referee.get(made_.headers["location"])
    found = [each["sitter"] for each in page.context["candidates"]]
    assert [one.form for one in found] == ["A", "B", "A"]
    phone = signed_in(app, kept, PUBLIC)
    typed = f"{found[0].code[:4].lower()} {found[0].code[4:]}"
    assert (
        phone.get("/examination", params={"code": typed}).headers["location"]
        == f"/examination/{found[0].code}"
    )
    before = phone.get(f"/examination/{found[0].code}")
    assert said("examining.wait") in before.text
    assert "items" not in before.context
    assert found[0].code in referee.get(f"{made_.headers['location']}/slips").text.replace(" ", "")
    assert referee.get(f"{made_.headers['location']}/paper/A?key=true").content.startswith(b"%PDF")
    on_letter = referee.get(f"{made_.headers['location']}/paper/A?paper=letter").content
    assert float(PdfReader(BytesIO(on_letter)).pages[0].mediabox.height) == 792


def test_a_paper_tells_nothing_of_the_key(app: FastAPI, kept: KeptHere) -> None:
    """What a candidate's page holds of an item is its telling and its answers in their order."""
    one, (sitter, _) = begun(kept)
    page = signed_in(app, kept, PUBLIC).get(f"/examination/{sitter.code}")
    for item, shown in zip(items_of(one, sitter), page.context["items"], strict=True):
        assert set(shown) == {"number", "told", "turn", "answers"}
        assert all(set(each) == {"place", "letter", "words", "chosen"} for each in shown["answers"])
        assert not any(why in page.text for why in item.whys if len(why) > 20)


def test_answers_arrive_and_stand_on_another_device(app: FastAPI, kept: KeptHere) -> None:
    """The latest choice counts, an older one that comes late does not, and a new device shows what the desk has."""
    _, (sitter, _) = begun(kept)
    phone = signed_in(app, kept, PUBLIC)
    assert sent(phone, sitter, (1, 0, 1), (2, 1, 2))["held"] == {"1": [0, 1], "2": [1, 2]}
    assert sent(phone, sitter, (1, 2, 4))["held"] == {"1": [2, 4], "2": [1, 2]}
    assert sent(phone, sitter, (1, 1, 3))["held"]["1"] == [2, 4]  # type: ignore[index]
    other = signed_in(app, kept, PUBLIC).get(f"/examination/{sitter.code}")
    chosen = [[each["place"] for each in one["answers"] if each["chosen"]] for one in other.context["items"]]
    assert chosen == [[2], [1], [], [], []]


def test_an_item_or_answer_that_is_not_there_is_not_kept(app: FastAPI, kept: KeptHere) -> None:
    """Beyond the form, and beyond the answers of an item."""
    _, (sitter, _) = begun(kept)
    assert sent(signed_in(app, kept, PUBLIC), sitter, (ITEMS + 1, 0, 1), (1, 7, 2))["held"] == {}


def test_a_paper_is_answered_and_handed_in_without_a_script(app: FastAPI, kept: KeptHere) -> None:
    """The form keeps what was chosen, asks before it hands in, says what is open, and takes nothing after that."""
    _, (sitter, _) = begun(kept)
    phone, address = signed_in(app, kept, PUBLIC), f"/examination/{sitter.code}"
    data = {"csrf": signature(phone, address), "item-1": "1", "item-3": "0"}
    asked = phone.post(address, data={**data, "step": "ask"})
    handing = phone.get(asked.headers["location"])
    assert handing.context["open"] == [2, 4, 5]
    phone.post(address, data={"csrf": data["csrf"], "step": "hand_in"})
    assert said("examining.handed_in") in phone.get(address).text
    assert not sent(phone, sitter, (2, 0, 90))["taken"]
    assert {item: each.place for item, each in chosen_by(kept.records, sitter).items()} == {1: 1, 3: 0}


def test_nothing_is_taken_before_it_begins_or_after_it_is_collected_but_again_when_reopened(
    app: FastAPI, kept: KeptHere
) -> None:
    """A device that comes late is told so, and keeps what it has until the examiner takes papers again."""
    one = made(kept)
    sitter = sitters(kept.records, one)[0]
    phone, referee = signed_in(app, kept, PUBLIC), signed_in(app, kept, "referee")
    page = f"/examining/{one.id}"
    stamp = signature(referee, page)
    assert not sent(phone, sitter, (1, 0, 1))["taken"]
    for step, taken in (("begin", True), ("close", False), ("reopen", True)):
        referee.post(page, data={"csrf": stamp, "step": step})
        assert sent(phone, sitter, (1, 0, 1))["taken"] is taken


def test_marks_are_those_of_the_key_and_the_examiner_sees_what_came_late(
    app: FastAPI, kept: KeptHere
) -> None:
    """All right is full marks; extra minutes move the end of one candidate alone."""
    began = NOW - timedelta(minutes=75)
    one, (ada, bo) = begun(kept, began)
    referee, page = signed_in(app, kept, "referee"), f"/examining/{one.id}"
    stamp = signature(referee, page)
    referee.post(page, data={"csrf": stamp, "step": "extra", "candidate": 2, "extra": 30})
    for sitter in (ada, bo):
        answer(
            kept.records,
            sitter,
            [(at, item.right, at) for at, item in enumerate(items_of(one, sitter), start=1)],
            NOW,
        )
    referee.post(page, data={"csrf": stamp, "step": "close"})
    shown = referee.get(page).context["candidates"]
    assert [(each["mark"].right, each["mark"].percent, each["late"]) for each in shown] == [
        (ITEMS, 100, ITEMS),
        (ITEMS, 100, 0),
    ]
    result = signed_in(app, kept, PUBLIC).get(f"/examination/{ada.code}")
    assert result.context["mark"].percent == 100
    assert not result.context["look_at"]


def test_a_retired_item_counts_no_more_and_is_in_no_later_paper(app: FastAPI, kept: KeptHere) -> None:
    """The examiner retires one and takes it back; marks follow both times."""
    one, (ada, _) = begun(kept)
    items = items_of(one, ada)
    answer(kept.records, ada, [(1, (items[0].right + 1) % 3, 1)], NOW)
    close(kept.records, one, NOW)
    referee, page = signed_in(app, kept, "referee"), f"/examining/{one.id}"
    stamp = signature(referee, page)

    def of() -> int:
        return int(referee.get(page).context["candidates"][0]["mark"].of)

    assert of() == ITEMS
    referee.post(page, data={"csrf": stamp, "step": "retire", "item": items[0].ident})
    assert of() == ITEMS - 1
    assert list(retired(kept.records)) == [items[0].ident]
    again = examination(3, ITEMS, forms=2, retired=frozenset(retired(kept.records)))
    assert items[0].ident not in {each.ident for form in again.forms for each in form.items}
    referee.post(page, data={"csrf": stamp, "step": "restore", "item": items[0].ident})
    assert (of(), retired(kept.records)) == (ITEMS, {})


def test_rules_to_look_at_are_those_answered_wrongly() -> None:
    """Of a form, Rules of items that were wrong or left open; not those of retired ones."""
    items = read_papers(papers()).forms["A"]
    chosen = {number: one.right for number, one in enumerate(items, start=1)}
    del chosen[2]
    assert to_look_at(items, chosen, ()) == [items[1].rule]
    assert to_look_at(items, chosen, {items[1].ident}) == []
    assert sat(items, {}, ()) is None


def test_a_code_that_is_none_is_said_and_too_many_are_stopped(app: FastAPI, kept: KeptHere) -> None:
    """Codes are not found by trying: after some that are none an address waits."""
    phone = signed_in(app, kept, PUBLIC)
    assert said("examining.none") in phone.get("/examination", params={"code": "NOSUCH"}).text
    assert phone.get("/examination/NOSUCH").status_code == 404
    answers = {phone.get("/examination/NOSUCH").status_code for _ in range(40)}
    assert 429 in answers


def test_a_candidate_may_not_examine(app: FastAPI, kept: KeptHere) -> None:
    """The examiner's pages ask a phone to sign in."""
    one = made(kept)
    phone = signed_in(app, kept, PUBLIC)
    for path in ("", "/slips", "/paper/A"):
        assert phone.get(f"/examining/{one.id}{path}").headers["location"].startswith("/sign-in")


def test_the_shell_tells_the_marks_of_an_examination_that_records_keep(kept: KeptHere) -> None:
    """Listed by number; of one, each candidate's mark by number, and nothing that names anybody."""
    one, (ada, _) = begun(kept)
    items = items_of(one, ada)
    answer(kept.records, ada, [(at, item.right, at) for at, item in enumerate(items, start=1)], NOW)
    file = kept.records.engine.url.database
    assert file
    listed = json.loads(marram("examination", "results", file, "--json").out)
    assert [each["state"] for each in listed["examinations"]] == ["running"]
    told = json.loads(marram("examination", "results", file, "--number", "1", "--json").out)
    (form,) = told["forms"]
    assert form["marks"] == {"1": {"right": ITEMS, "of": ITEMS, "percent": 100, "grade": "distinction"}}
    assert "100 per cent" in marram("examination", "results", file, "--number", "1").out
    assert marram("examination", "results", file, "--number", "2").code != 0


def test_times_are_those_of_the_clubs_clocks(app: FastAPI, kept: KeptHere) -> None:
    """When papers end and were handed in, were drawn up, and who was seen: on the clocks of the club, wherever the machine is."""
    with kept.records.writing() as connection:
        connection.execute(
            update(tables.Club).values(time_zone="Pacific/Kiritimati")
        )  # UTC+14: of no machine here
    one, (sitter, _) = begun(kept)
    hand_in(kept.records, sitter, NOW)
    club_time = ZoneInfo("Pacific/Kiritimati")
    referee = signed_in(app, kept, "chief_referee")
    page = referee.get(f"/examining/{one.id}").text
    handed = NOW.astimezone(club_time)
    assert f"<td>{handed:%H:%M}</td>" in page
    ends = (NOW + timedelta(minutes=60)).astimezone(club_time)
    assert said("examining.ends", time=f"{ends:%H:%M}") in page
    day = said("days.moment", day=short_day_words(handed.date()), time=f"{handed:%H:%M}")
    assert day in referee.get("/examination").text
    for address in ("/people", "/me"):
        assert referee.get(address).context["moment"](NOW.isoformat()) == day, address
