"""An examination at the desk: candidates without an account, nothing lost, marked by the key, items judged and retired."""

import json
from collections.abc import Iterator
from dataclasses import replace
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
from marram.teach.examinations.printing import kept_pdf, mark_of
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


def test_a_device_that_sits_a_paper_is_shown_nothing_else(app: FastAPI, kept: KeptHere) -> None:
    """Without the book neither book nor quiz nor ruling nor key, from when its paper opened until it is handed in; others see all."""
    one, (ada, _) = begun(kept)
    phone, other = signed_in(app, kept, "referee"), signed_in(app, kept, "referee")
    assert phone.get("/book").status_code == 200
    assert said("examining.here") in phone.get(f"/examination/{ada.code}").text
    assert phone.get("/book").status_code == 200, "asked first: an examiner's device does not close unawares"
    sits = phone.get(f"/examination/{ada.code}", params={"here": True})
    assert sits.headers["location"] == f"/examination/{ada.code}"
    paper = phone.get(f"/examination/{ada.code}")
    assert 'id="paper"' in paper.text
    assert "/begin" not in paper.text
    examining = f"/examining/{one.id}"
    assert other.get(examining).status_code == 200
    for path in (
        examining,
        f"{examining}/key/A",
        f"{examining}/live",
        "/",
        "/book",
        "/book/rule/16",
        "/quiz",
        "/begin",
        "/walk",
        "/log",
    ):
        found = phone.get(path)
        assert (found.status_code, found.headers["location"]) == (303, f"/examination/{ada.code}"), path
    assert phone.get("/api/offline/book").status_code == 403
    assert other.get("/book").status_code == 200
    stamp = signature(phone, f"/examination/{ada.code}")
    phone.post(f"/examination/{ada.code}", data={"csrf": stamp, "step": "hand_in"})
    assert phone.get("/book").status_code == 200


def test_with_the_book_the_rules_are_read_and_no_ruling(app: FastAPI, kept: KeptHere) -> None:
    """The paper leads to the Rules in another window; situations with their rulings stay closed."""
    given = written(replace(exam(), open_book=True), "Quillsand Links")
    one = keep_examination(kept.records, kept.event_id, given, ["A", "B"], minutes=60, candidates=1, now=NOW)
    begin(kept.records, one, NOW)
    (ada,) = sitters(kept.records, one)
    phone = signed_in(app, kept, PUBLIC)
    assert 'href="/book"' in phone.get(f"/examination/{ada.code}").text
    for path in ("/book", "/book/rule/16", "/book/definitions", "/book/local-rules"):
        assert phone.get(path).status_code == 200, path
    for path in ("/book/incident/ball_lost", "/book/situation/ball_lost"):
        assert phone.get(path).headers["location"] == f"/examination/{ada.code}", path


def test_printed_papers_are_entered_and_marked_with_the_others(app: FastAPI, kept: KeptHere) -> None:
    """A line for each candidate; a line that cannot be read changes nothing, and what was typed stays; a device's answers too."""
    one, (ada, bo) = begun(kept, NOW - timedelta(minutes=75))
    right = ["".join("ABCD"[item.right] for item in items_of(one, each)) for each in (ada, bo)]
    referee, page = signed_in(app, kept, "referee"), f"/examining/{one.id}"

    def entered(lines: str) -> str:
        return referee.post(
            page, data={"csrf": signature(referee, page), "step": "enter", "answers": lines}
        ).text

    told = entered(f"1 {right[0]}\n2 {right[1]}A\n7 {right[0]}\n1 {right[0]}")
    assert "Candidate 2: 6 answers; the form has 5 items." in told
    assert "begin with the number of a candidate" in told
    assert "Candidate 1 is there twice." in told
    assert f"7 {right[0]}" in told
    assert not chosen_by(kept.records, ada)
    assert "Candidate 1, item 1:" in entered(f"1 Z{right[0][1:]}")

    entered(f"1 {right[0].lower()}\n\n2: {' '.join(right[1][:-1])} -")
    referee.post(page, data={"csrf": signature(referee, page), "step": "close"})
    shown = referee.get(page)
    assert [(each["mark"].right, each["late"]) for each in shown.context["candidates"]] == [
        (ITEMS, 0),
        (ITEMS - 1, 0),
    ]
    assert said("examining.arrived.paper", answered=ITEMS) in shown.text
    entered(f"2 {right[1]}")
    assert referee.get(page).context["candidates"][1]["mark"].right == ITEMS


def test_what_was_answered_on_a_device_is_not_entered_over(app: FastAPI, kept: KeptHere) -> None:
    """The examiner is told, and the device's answers stand."""
    one, (ada, _) = begun(kept)
    sent(signed_in(app, kept, PUBLIC), ada, (1, 2, 1))
    referee, page = signed_in(app, kept, "referee"), f"/examining/{one.id}"
    data = {"csrf": signature(referee, page), "step": "enter", "answers": f"1 {'A' * ITEMS}"}
    assert "Candidate 1 answered on a device" in referee.post(page, data=data).text
    assert {item: each.place for item, each in chosen_by(kept.records, ada).items()} == {1: 2}


def test_a_printed_paper_names_its_key_and_not_what_draws_it() -> None:
    """Paper and key bear one mark; the seed, by which anybody draws the key, stands on the key alone."""
    paper, key = (
        PdfReader(BytesIO(kept_pdf(read_papers(papers()), "A", key=one))).pages[0].extract_text()
        for one in (False, True)
    )
    mark = mark_of([one.ident for one in exam().forms[0].items])
    assert mark in paper
    assert mark in key
    assert "seed 3" in key
    assert "seed" not in paper
