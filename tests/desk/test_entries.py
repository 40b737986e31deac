"""Entries at the desk: lists as clubs send them, told line by line and taken whole or not at all; lots, withdrawals, reserves."""

import html
import json
import re
from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from hashlib import sha256
from pathlib import Path
from typing import Any

import pytest
from xlsxwriter import Workbook

from marram.competition.entries.entry import Entry
from marram.competition.entries.reading import entries_in
from marram.competition.entries.table import table_of
from marram.competition.entries.writing import write_entries
from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import Entry as LogEntry
from marram.records.entry import new_ident
from marram.records.field import entrants
from marram.records.starting_sheet import groups, rounds
from marram.schema import read_json
from marram.services.results.scored import scored_in
from tests.cli.running import marram
from tests.competition.entries.test_as_clubs_send_them import BAD, WELL
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signature, signed_in
from tests.services.scoring import NOON, scoring

LIST = "Teilnehmerin;Vorgabe;Verein\nAda Quill;12,3;Reedham\nBo Sund;+1,4;Dunewick\nCy Marr;;Reedham\n"


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with scoring(tmp_path) as found:
        yield keep_here(found.records)


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def upload(desk: TestClient, data: str | bytes = LIST, name: str = "list.csv") -> Any:
    """Send a list; the page that says what it is read as."""
    sent = data.encode() if isinstance(data, str) else data
    return desk.post("/entries/read", files={"file": (name, sent)})


def fields(page: str) -> dict[str, str]:
    """The form of the page of a list, as a browser would send it."""
    sent = {
        name: html.unescape(value)
        for name, value in re.findall(r'<input type="hidden" name="([^"]+)" value="([^"]*)"', page)
    }
    for name, options in re.findall(r'<select name="(column-\d+)">(.*?)</select>', page, re.DOTALL):
        chosen = re.search(r'value="([^"]*)" selected', options)
        sent[name] = chosen[1] if chosen else "-"
    return sent


def take(desk: TestClient, page: str, **more: str) -> Any:
    return desk.post("/entries/take", data={**fields(page), **more})


def playing(kept: KeptHere) -> dict[str, str | None]:
    """Everybody who plays, with the Handicap Index."""
    return {one.name: one.handicap_index for one in entrants(kept.records, kept.event_id)}


def test_a_list_is_taken_whole_and_its_headings_are_remembered(kept: KeptHere, desk: TestClient) -> None:
    """A heading that is like none is chosen once; the next list with it is read by itself."""
    read = upload(desk)
    assert read.status_code == 422
    assert "No line names the columns" in html.unescape(read.text)
    place = next(name for name, value in fields(read.text).items() if value == "Teilnehmerin")
    again = desk.post("/entries/read", data={**fields(read.text), place.replace("heading", "column"): "name"})
    assert "3 entries, without fault" in again.text
    assert len(playing(kept)) == 12  # nobody is taken before somebody says so

    assert take(desk, again.text).headers["location"] == "/entries?took=3"

    now = playing(kept)
    assert len(now) == 15
    assert (now["Ada Quill"], now["Bo Sund"], now["Cy Marr"]) == ("12.3", "-1.4", None)
    later = upload(desk, "Teilnehmerin;Vorgabe\nDee Holt;4,0\n")
    assert "1 entry, without fault" in later.text
    (entry,) = kept.log.entries(kept.event_id, kind="entries_taken")
    assert "Quill" not in json.dumps(entry.content)


def test_a_column_that_is_not_read_stays_unread(kept: KeptHere, desk: TestClient) -> None:
    """Whatever a heading is like: what was chosen goes before likeness."""
    page = upload(desk, "Name;Handicap\nAda Quill;99 of course\n")
    assert page.status_code == 422
    column = next(name for name, value in fields(page.text).items() if value == "Handicap")
    good = desk.post("/entries/read", data={**fields(page.text), column.replace("heading", "column"): "-"})
    assert "1 entry, without fault" in good.text
    take(desk, good.text)
    assert playing(kept)["Ada Quill"] is None


def test_every_bad_line_is_told_and_nobody_is_taken(kept: KeptHere, desk: TestClient) -> None:
    """A wrong handicap, a name missing, somebody twice, letters of another encoding: each with its line; half of it is not taken."""
    bad = "Name;Handicap;Club\nAda Quill;eleven;Reedham\n;3,1;Dunewick\nBo Sund;2,0;X\nBo Sund;2,0;X\nJÃ¼rgen Watt;9,9;Y\n"
    page = upload(desk, bad)
    assert page.status_code == 422
    told = re.findall(r'<span class="label">Line (\d+)</span>', page.text)
    assert told == ["2", "3", "5", "6"]
    assert "Take" not in re.sub(r"<nav.*?</nav>", "", page.text, flags=re.DOTALL).partition("<h1")[2]

    assert take(desk, page.text).status_code == 422
    assert len(playing(kept)) == 12
    assert kept.log.head(kept.event_id) == 0


def test_somebody_who_is_entered_already_is_told_and_nobody_is_taken(
    kept: KeptHere, desk: TestClient
) -> None:
    """All names at once; what was new in the list is not taken either."""
    page = upload(desk, "Name\nAda Quill\nFenwin Dulsey\nTobiah Ling\n")
    answer = take(desk, page.text)
    assert answer.status_code == 422
    assert "Fenwin Dulsey is entered already" in answer.text
    assert "Tobiah Ling is entered already" in answer.text
    assert "Ada Quill" not in playing(kept)
    assert "Ada Quill" not in kept.names().values()


def test_a_spreadsheet_is_read_as_a_list(kept: KeptHere, desk: TestClient, tmp_path: Path) -> None:
    """XLSX by what is in it, whatever its name; and what is no list at all is told."""
    write_entries([Entry("Ada Quill", None, "Reedham")], tmp_path / "list.xlsx")
    page = upload(desk, (tmp_path / "list.xlsx").read_bytes(), "entries.dat")
    assert "1 entry, without fault" in page.text
    assert upload(desk, b"PK\x03\x04nonsense", "broken.xlsx").status_code == 422
    assert upload(desk, b"", "empty.csv").status_code == 422
    lost = desk.post("/entries/take", data={"rows": "[[", "tapped": new_ident()})
    assert lost.status_code == 422
    assert "Choose the file again" in lost.text
    assert len(playing(kept)) == 12


def test_the_same_tap_takes_a_list_once(kept: KeptHere, desk: TestClient) -> None:
    """A button pressed twice is one entry of the log."""
    page = upload(desk, "Name\nAda Quill\n").text
    first, second = take(desk, page), take(desk, page)
    assert (first.status_code, second.status_code) == (303, 303)
    assert kept.log.head(kept.event_id) == 1


def _without_groups(kept: KeptHere) -> None:
    from marram.records import tables

    with kept.records.changing() as session:
        for one in (tables.GroupMember, tables.Group):
            session.query(one).delete()


def test_lots_can_be_repeated_from_the_file_alone(kept: KeptHere, desk: TestClient) -> None:
    """The order is that of SHA-256 digests of seed and key, worked out here without the program; the first have places."""
    _without_groups(kept)
    names = sorted(playing(kept))
    answer = desk.post("/entries/ballot", data={"seed": "7 11 23", "places": "9", "tapped": new_ident()})
    assert answer.status_code == 303, answer.text
    file = desk.get("/entries/ballot.json").json()
    order = sorted(file["entries"], key=lambda key: sha256(f"7 11 23\n{key}".encode()).hexdigest())
    assert [one["key"] for one in file["order"]] == order
    assert len(order) == 12
    chosen = {key.partition("|")[0] for key in order[:9]}
    assert chosen == {name.casefold() for name in playing(kept)}
    assert len(names) == 12

    again = desk.post("/entries/ballot", data={"seed": "8", "places": "9", "tapped": new_ident()})
    assert again.status_code == 422
    assert len(playing(kept)) == 9


def test_a_reserve_moves_up_into_the_very_place(kept: KeptHere, desk: TestClient) -> None:
    """The first reserve, also where a later list made others wait; in the group that is drawn, at the place of who withdrew."""
    _without_groups(kept)
    desk.post("/entries/ballot", data={"seed": "s", "places": "10", "tapped": new_ident()})
    order = [one["key"].partition("|")[0] for one in desk.get("/entries/ballot.json").json()["order"]]
    take(desk, upload(desk, "Name\nAda Quill\n").text)
    assert "Ada Quill" not in playing(kept)  # lots were cast: she waits, behind the two
    asked = {"round": "1", "seed": "d", "first": "09:00", "minutes": "8", "places": "4", "tees": "1, 10"}
    page = desk.post("/draw", data=asked).text
    desk.post("/draw/keep", data=fields(page))
    (first, *_) = rounds(kept.records, kept.event_id)
    before = [[one.name for one in group.players] for group in groups(kept.records, first.id)]
    gone = before[1][1]
    people = {name: who for who, name in kept.names().items()}

    for name in (gone, before[0][0]):
        told = {"person": people[name], "tapped": new_ident(), "note": "ill"}
        assert desk.post("/entries/withdraw", data=told).status_code == 303

    after = [[one.name for one in group.players] for group in groups(kept.records, first.id)]
    assert after[1][1].casefold() == order[10]
    assert after[0][0].casefold() == order[11]
    assert [len(one) for one in after] == [len(one) for one in before]
    listed = desk.get("/entries").text
    waits, withdrew = listed.index('id="reserves"'), listed.index('id="withdrawn"')
    assert waits < listed.index("Ada Quill", waits) < withdrew < listed.index(gone, withdrew)
    again = {"person": people[gone], "tapped": new_ident()}
    assert desk.post("/entries/withdraw", data=again).status_code == 422


def test_lots_are_not_cast_once_groups_are_drawn(kept: KeptHere, desk: TestClient) -> None:
    """The field stays as it was, and the log says nothing."""
    answer = desk.post("/entries/ballot", data={"seed": "s", "places": "9", "tapped": new_ident()})
    assert answer.status_code == 422
    assert "Groups are drawn already" in answer.text
    assert len(playing(kept)) == 12
    assert kept.log.head(kept.event_id) == 0


def test_a_file_is_signed_as_every_other_form(kept: KeptHere) -> None:
    """A list without the signature of the device is not even read; with it, it is."""
    app = guarded(kept)
    chief = signed_in(app, kept, "chief_referee")
    assert upload(chief).status_code == 403
    signed = {"csrf": signature(chief, "/entries")}
    answer = chief.post("/entries/read", files={"file": ("l.csv", b"Name\nAda Quill\n")}, data=signed)
    assert answer.status_code == 200, answer.text[:300]


@pytest.mark.parametrize("name", WELL)
def test_lists_as_clubs_send_them_are_taken_through_the_page(
    kept: KeptHere, desk: TestClient, name: str
) -> None:
    """What the reader makes of a list is what the page takes, and what it understood how stands on the page."""
    before = playing(kept)
    page = upload(desk, WELL[name])
    assert page.status_code == 200
    assert take(desk, page.text).status_code == 303
    after = playing(kept)
    assert {who: after[who] for who in after if who not in before} == {
        "Jörg Möwe": "-1.4",
        "Änne Groß": "12.3",
    }


@pytest.mark.parametrize("name", BAD)
def test_nobody_of_a_bad_list_is_taken_through_page_or_shell(
    kept: KeptHere, desk: TestClient, tmp_path: Path, name: str
) -> None:
    """Every bad line is told by its number at the desk and in the shell, and taking it all the same takes nobody."""
    before = playing(kept)
    text, faults = BAD[name]
    page = upload(desk, text).text
    take(desk, page)
    path = tmp_path / "list.csv"
    path.write_text(text, encoding="utf-8")
    told = marram("entries", "read", str(path))

    assert playing(kept) == before
    assert told.code == 2
    for line, words in faults.items():
        assert f"Line {line}" in page
        assert words in html.unescape(page)
        assert f"line {line}:" in told.out + told.err


def test_two_lists_in_one_spreadsheet_are_refused_at_the_desk(
    kept: KeptHere, desk: TestClient, tmp_path: Path
) -> None:
    """The page names both sheets, and nobody is taken."""
    path = tmp_path / "list.xlsx"
    with Workbook(str(path)) as book:
        for sheet in ("Damen", "Herren"):
            made = book.add_worksheet(sheet)
            made.write_row(0, 0, ["Name", "HCP"])
            made.write_row(1, 0, [f"Ada {sheet}", 3])
    before = playing(kept)
    answer = upload(desk, path.read_bytes(), "list.xlsx")
    assert answer.status_code in {400, 422}
    assert "Damen, Herren" in answer.text
    assert playing(kept) == before


def test_somebody_entered_already_under_another_spelling_is_told(kept: KeptHere, desk: TestClient) -> None:
    """A second list with the same person spelled otherwise takes nobody; with another club it is another person."""
    take(desk, upload(desk, "Name;Club\nJörg Möwe;Reedham\n").text)
    before = playing(kept)
    answer = take(desk, upload(desk, "Name;Club\nMOEWE Joerg;Reedham\nBo Sund;Reedham\n").text)
    assert "spelled otherwise" in answer.text
    assert playing(kept) == before
    assert take(desk, upload(desk, "Name;Club\nMOEWE Joerg;Dunewick\n").text).status_code == 303


def test_sides_and_teams_of_a_list_are_kept_and_a_new_partner_joins_the_side(
    kept: KeptHere, desk: TestClient
) -> None:
    """Partners by the name of their side; one withdraws, and who is entered for the side stands in it; teams likewise."""
    sheet = "Name;Pair;Team\nAda Quill;Terns;Reedham\nBo Sund;Terns;Reedham\nCy Marr;Gulls;Reedham\nDi Vane;Gulls;Reedham\n"
    take(desk, upload(desk, sheet).text)
    known = {one.name: one for one in entrants(kept.records, kept.event_id)}
    assert known["Ada Quill"].side == known["Bo Sund"].side != known["Cy Marr"].side
    assert {known[name].team for name in ("Ada Quill", "Di Vane")} == {"Reedham"}
    desk.post("/entries/withdraw", data={"person": known["Bo Sund"].person, "tapped": new_ident()})
    assert take(desk, upload(desk, "Name;Pair;Team\nEd Wray;Terns;Reedham\n").text).status_code == 303
    after = {one.name: one for one in entrants(kept.records, kept.event_id)}
    assert after["Ed Wray"].side == known["Ada Quill"].side
    assert "Bo Sund" not in after
    told = upload(desk, "Name;Pair;Team\nFi Ash;Plovers;Reedham\nGo Bee;Plovers;Dunewick\n").text
    assert "several teams" in told
    answer = take(desk, upload(desk, "Name;Pair;Team\nFi Ash;Terns;Dunewick\n").text)
    assert "several teams" in answer.text
    assert "Fi Ash" not in playing(kept)


def test_names_stand_in_the_order_a_person_looks_for_them_and_forms_before_them(desk: TestClient) -> None:
    """Accents, umlauts and strokes through letters are passed over; what is done with a list stands before it, however long it is."""
    rows = "".join(f"{name},9.1\n" for name in ("Zoë Ems", "Łucja Ost", "Çelik Ali", "Øyvind Aas", "Ülo Õun"))
    take(desk, upload(desk, f"Name,HCP\n{rows}").text)
    page = desk.get("/entries").text
    places = [
        page.index(f'#entry">{name}')
        for name in ("Çelik Ali", "Łucja Ost", "Øyvind Aas", "Ülo Õun", "Zoë Ems")
    ]

    assert places == sorted(places)
    assert page.index('action="/entries/read"') < page.index('action="/entries/withdraw"') < places[0]


def test_the_tees_of_a_list_are_kept(kept: KeptHere, desk: TestClient) -> None:
    """A column of tees goes with each player into the records; an empty cell leaves those of the competition."""
    take(desk, upload(desk, "Name;HCP;Abschlag\nZoë Ems;9,1;rot\nBo Aas;4,0;\n").text)
    tees = {one.name: one.tees for one in entrants(kept.records, kept.event_id)}

    assert (tees["Zoë Ems"], tees["Bo Aas"]) == ("rot", None)


def test_a_list_of_thousands_is_taken_whole(kept: KeptHere, desk: TestClient) -> None:
    """More lines than any field has; each is a player afterwards, with club and handicap of its own line."""
    letters = "abcdefghijklm"
    called = [f"Ada {a.upper()}{b}{c}quill" for a in letters for b in letters for c in letters]
    lines = (f"{one};{at % 36},{at % 9 + 1};Reedham {at % 7}" for at, one in enumerate(called))
    page = upload(desk, "Name;HCP;Club\n" + "\n".join(lines) + "\n")

    assert take(desk, page.text).headers["location"] == f"/entries?took={len(called)}"
    found = {one.name: (one.handicap_index, one.club) for one in entrants(kept.records, kept.event_id)}
    assert {one: found[one] for one in called} == {
        one: (f"{at % 36}.{at % 9 + 1}", f"Reedham {at % 7}") for at, one in enumerate(called)
    }


def test_forms_of_long_work_say_so_while_it_lasts(desk: TestClient) -> None:
    """Each has its words, a place for them inside the form that a screen reader follows, and the script that puts them there."""
    take(desk, upload(desk).text)
    for page in (desk.get("/entries").text, upload(desk, "Name\nDi Vane\n").text, desk.get("/draw").text):
        forms = re.findall(r"<form[^>]*data-busy=\"[^\"]+\".*?</form>", page, re.DOTALL)
        assert forms
        assert all('role="status"' in one for one in forms)
        assert "field/at_work" in page


def entry_form(desk: TestClient, person: str) -> dict[str, str]:
    """The form of an entry as the page fills it in."""
    page = desk.get(f"/entries?who={person}").text
    form = re.search(r'<form[^>]*action="/entries/put-right".*?</form>', page, re.DOTALL)
    assert form
    sent = {
        name: html.unescape(value)
        for name, value in re.findall(r'<input [^>]*?name="([^"]+)"[^>]*? value="([^"]*)"', form[0])
    }
    chosen = re.search(r'<option value="([^"]*)" selected', form[0])
    return {**sent, "sex": chosen[1] if chosen else ""}


def test_a_missing_handicap_is_seen_put_right_and_seen_no_more(tmp_path: Path) -> None:
    """The page of what still stands names the player; the entry is put right where it links to; the result counts from then on."""
    ratings = [
        {"tees": "white", "course_rating": 71.4, "slope": 128, "par": 71, "sex": sex}
        for sex in ("male", "female")
    ]
    players = [
        {"name": "Ada Quill", "handicap_index": 12.3, "sex": "female"},
        {"name": "Bo Sund", "sex": "male"},
        {"name": "Cy Marr", "handicap_index": 4},
    ]
    event = {**read_json(EVENT, "event"), "players": players, "starting_times": [], "officials": []}
    event |= {"ratings": ratings, "tees": "white", "allowance": 95, "scores": ["gross", "net"], "rounds": []}
    with scoring(tmp_path, event) as found:
        kept = keep_here(found.records)
        desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
        who = {one.name: one.person for one in entrants(kept.records, kept.event_id)}
        assert "One player has no handicap: Bo Sund" in desk.get("/ready").text
        assert "ratings hold for: Cy Marr" in html.unescape(desk.get("/ready").text)

        form = entry_form(desk, who["Bo Sund"])
        assert (form["index"], form["sex"], form["playing"]) == ("", "male", "")
        bad = desk.post("/entries/put-right", data={**form, "index": "twelve", "tees": "wite"})
        assert bad.status_code == 422
        assert "is no Handicap Index" in bad.text
        assert "Did you mean" in bad.text
        assert 'value="twelve"' in bad.text
        moved = desk.post("/entries/put-right", data={**form, "index": "+1,4"})
        assert moved.headers["location"] == f"/entries?righted={who['Bo Sund']}"
        assert "The entry of Bo Sund is put right" in desk.get(moved.headers["location"]).text
        done = marram("event", "put-right", str(tmp_path / "club.db"), "Cy Marr", "--sex", "m")
        assert done.code == 0, done.err

        ready = desk.get("/ready").text
        assert "Bo Sund" not in re.sub(r".*?starting time.*", "", ready)
        assert "ratings hold for" not in html.unescape(ready)
        # +1.4 x 128 / 113 + (71.4 - 71) = -1.19; 95 % of it, -1.13, is -1: a plus handicap of 1 (Rules of Handicapping 6.1a, 6.2a)
        here = scored_in(kept.records)
        assert here.competition.handicaps[who["Bo Sund"]].playing == -1
        first, second = kept.log.entries(kept.event_id, kind="entry_put_right")
        assert first.content["was"]["handicap_index"] is None
        assert first.content["now"]["handicap_index"] == "-1.4"
        assert second.told["player"] == who["Cy Marr"]
        assert "Ada" not in json.dumps([first.content, second.content])


def test_an_entry_is_not_put_right_once_the_competition_is_closed(kept: KeptHere, desk: TestClient) -> None:
    """Refused with the reason, nothing changed; who does not play has no form."""
    one = entrants(kept.records, kept.event_id)[0]
    form = entry_form(desk, one.person)
    assert "put-right" not in desk.get(f"/entries?who={new_ident()}").text
    kept.add_tapped(LogEntry("competition_closed", NOON, new_ident()))
    refused = desk.post("/entries/put-right", data={**form, "index": "3"})
    assert refused.status_code == 422
    assert entrants(kept.records, kept.event_id)[0] == one


@pytest.mark.parametrize("form", ["csv", "xlsx"])
def test_the_list_given_out_reads_back_as_the_same(desk: TestClient, form: str) -> None:
    """Sides by their names, plus handicaps, umlauts: what the desk gives out is what was taken in."""
    text = "Name;HCP;Club;Sex;Born;Side;Team\nÅse Müller;+1,4;Œuvre & Söhne;f;1980;Möwen;Düne\nBo Sund;12,3;Reedham;m;1990;Möwen;Düne\n"
    take(desk, upload(desk, text).text)
    given = desk.get(f"/entries/list.{form}")
    again = [
        one for one in entries_in(table_of(given.content, f"entries.{form}")).entries if one.side or one.team
    ]
    assert [replace(one, line=0) for one in again] == [
        Entry("Åse Müller", Decimal("-1.4"), "Œuvre & Söhne", "female", 1980, side="Möwen", team="Düne"),
        Entry("Bo Sund", Decimal("12.3"), "Reedham", "male", 1990, side="Möwen", team="Düne"),
    ]
