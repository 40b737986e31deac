"""Twenty-odd lists as clubs send them, each through the reader: what it comes to, or every line that is wrong with what to do."""

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest
from xlsxwriter import Workbook

from marram.competition.entries.entry import EntryList
from marram.competition.entries.reading import read_entries
from marram.errors import InputError

Told = list[tuple[str, str | None, str]]
TWO: Told = [("Jörg Möwe", "-1.4", "Dünentief"), ("Änne Groß", "12.3", "Reedham")]


def told(found: EntryList) -> Told:
    """Name, index and club of each entry."""
    return [
        (one.name, None if one.handicap_index is None else str(one.handicap_index), one.club)
        for one in found.entries
    ]


def read(tmp_path: Path, data: str | bytes, encoding: str = "utf-8") -> EntryList:
    path = tmp_path / "list.csv"
    path.write_bytes(data if isinstance(data, bytes) else data.encode(encoding))
    return read_entries(path)


def book(tmp_path: Path, fill: Callable[[Workbook], Any]) -> EntryList:
    path = tmp_path / "list.xlsx"
    with Workbook(str(path)) as made:
        fill(made)
    return read_entries(path)


def notes(found: EntryList) -> str:
    return " ".join(map(str, found.notes))


WELL = {
    "semicolons, comma in the handicap": "Name;Hcp;Club\nJörg Möwe;+1,4;Dünentief\nÄnne Groß;12,3;Reedham\n",
    "tabs, blank columns": "Name\t\tHcp\t\tClub\t\nJörg Möwe\t\t+1,4\t\tDünentief\t\nÄnne Groß\t\t12,3\t\tReedham\t\n",
    "family name, given name in one cell": 'Name,HCP,Home Club\n"Möwe, Jörg",+1.4,Dünentief\n"Groß, Änne",12.3,Reedham\n',
    "club in brackets": "Spieler;HCP\nJörg Möwe (Dünentief);+1,4\nÄnne Groß [Reedham];12,3\n",
    "both at once": "Spieler;HCP\nMöwe, Jörg (Dünentief);+1,4\nGroß, Änne (Reedham);12,3\n",
    "header on the third row": "Meldeliste;;\nStand: 12.06.2025;;\nName;Vorgabe;Verein\nJörg Möwe;+1,4;Dünentief\nÄnne Groß;12,3;Reedham\n",
    "two header rows": "Person;;Golf;\nVorname;Nachname;HCPI;Club\nJörg;Möwe;+1,4;Dünentief\nÄnne;Groß;12,3;Reedham\n",
    "totals at the end": "Name;HCP;Club\nJörg Möwe;+1,4;Dünentief\nÄnne Groß;12,3;Reedham\n;;\nSumme;10,9;\nAnzahl: 2;;\n",
    "totals in a column of numbers": "Nr;Name;HCP;Club\n1;Jörg Möwe;+1,4;Dünentief\n2;Änne Groß;12,3;Reedham\nGesamt;;10,9;\n",
    "a remark below the totals": "Name;HCP;Club\nJörg Möwe;+1,4;Dünentief\nÄnne Groß;12,3;Reedham\nSumme: 2 Spieler;;\n;;\nBankverbindung siehe Ausschreibung;;\n",
    "the sign behind, a mark of text before": "Name;HCP;Club\nJörg Möwe;1,4+;Dünentief\nÄnne Groß;'12,3;Reedham\n",
    "header again on the next page": "Name;HCP;Club\nJörg Möwe;+1,4;Dünentief\nNAME;HCP;Club\nÄnne Groß;12,3;Reedham\n",
    "running numbers without a heading": ";Name;HCP;Club\n1;Jörg Möwe;+1,4;Dünentief\n2;Änne Groß;12,3;Reedham\n",
    "letters and accents apart, odd blanks": "Name;HCP;Club\nJo\u0308rg\u00a0 Mo\u0308we;+1,4;Dünentief\n\u200bÄnne Groß;12,3;Reedham\n",
    "the separator named above": "sep=;\nName;HCP;Club\nJörg Möwe;+1,4;Dünentief\nÄnne Groß;12,3;Reedham\n",
    "a line break in a cell": 'Name;HCP;"Home\nClub"\nJörg Möwe;+1,4;Dünentief\nÄnne Groß;12,3;"Reed\nham"\n'.replace(
        "Reed\nham", "Reedham\n"
    ),
}  # fmt: skip


@pytest.mark.parametrize("text", WELL.values(), ids=WELL)
def test_each_is_read_as_it_is_meant(tmp_path: Path, text: str) -> None:
    """The same two players every time, whatever stands around them; and none of the rest becomes a player."""
    found = read(tmp_path, text)

    assert [str(one.fault) for one in found.faults] == []
    assert told(found) == TWO


@pytest.mark.parametrize("encoding", ["cp1252", "mac_roman", "cp850", "utf-16", "utf-8-sig"])
def test_umlauts_of_every_machine(tmp_path: Path, encoding: str) -> None:
    """The old encodings of three systems and both of today: the umlauts are umlauts, and the note says which was read."""
    found = read(tmp_path, WELL["semicolons, comma in the handicap"], encoding)

    assert told(found) == TWO
    assert "Read as" in notes(found)


def test_a_web_page_named_as_a_spreadsheet_is_told_what_it_is(tmp_path: Path) -> None:
    """Many programs write one; what to do with it is said, not what its first line has."""
    with pytest.raises(InputError, match=r"web page under the name of a list.*save it as \.xlsx"):
        read(tmp_path, "<html><table><tr><td>Name</td></tr><tr><td>Bo Sund</td></tr></table></html>")


def test_what_was_turned_or_left_out_is_said(tmp_path: Path) -> None:
    """Nothing is understood in silence: turned names, clubs from brackets, totals, columns without a heading."""
    assert "turned round: lines 2, 3" in notes(read(tmp_path, WELL["both at once"]))
    assert "read as the club: lines 2, 3" in notes(read(tmp_path, WELL["both at once"]))
    assert "as the header again: lines 5, 6" in notes(read(tmp_path, WELL["totals at the end"]))
    assert "Column 1 has no heading" in notes(read(tmp_path, WELL["running numbers without a heading"]))


BAD = {
    "spelled otherwise": ("Name;HCP;Club\nJörg Möwe;3;Dünentief\nJOERG MOEWE;3;\n", {3: "spelled otherwise"}),
    "turned round": ("Name;HCP\nMöwe Jörg;3\nJörg Möwe;3\n", {3: "spelled otherwise"}),
    "a club twice, not alike": ("Name;Club\nIlse Watt (Reedham);Dunewick\n", {2: "Strike one"}),
    "a remark as a name": ("Name;HCP;Club\nIlse Watt;3;\nStand: 12.06.2025;;\n", {3: "no name of a person"}),
    "a name that may be a remark, others below": ("Name;HCP\nIlse Watt;3\nSumme;3\nBo Sund;\nCy Marr;4\n", {4: "stands alone below totals"}),
    "a comma in numbers and between cells": ("Name,HCP,Club\nIlse Watt,12,5,Reedham\nBo Sund,8,1,Dunewick\nCy Marr,PR,Dunewick\n", {1: "'12' and '5' stand in two cells"}),
    "one heading over two handicaps": ("Name;HCP;HCP\nIlse Watt;12,5;14\nBo Sund;3;3\n", {1: "'HCP' stands 2 times"}),
    "a date made of a handicap": ("Name;HCP\nIlse Watt;2025-05-12\nBo Sund;12. Mai\nCy Marr;12.May\n", {2: "made of a Handicap Index", 3: "made of a Handicap Index", 4: "made of a Handicap Index"}),
    "no number": ("Name;HCP\nIlse Watt;twelve\nBo Sund;3,4,5\n", {2: "+1.4 for a plus", 3: "+1.4 for a plus"}),
    "a player called by a number": ("Name;HCP\nGuest 0017;3\nBo Sund;4\n", {2: "as '0017' stands in it"}),
    "per cent": ("Name;HCP\nIlse Watt;12,3 %\nBo Sund;3\n", {2: "12,3 %"}),
    "a date of two digits": ("Name;Geboren\nIlse Watt;30.04.85\n", {2: "1990"}),
    "divers, or Dame": ("Name;Geschlecht\nIlse Watt;w\nAda Quill;d\n", {3: "two ways"}),
    "broken formulas": ("Name;HCP;Club\n#N/A;3;\nBo Sund;#BEZUG!;\nCy Marr;4;#REF!\n", {2: "formula", 3: "formula", 4: "formula"}),
    "given names without a heading": ("Name;;HCP\nMöwe;Jörg;3\nGroß;Änne;4\n", {1: "no heading"}),
    "lost letters": ("Name;HCP\nJ\ufffdrg M\ufffdwe;3\n", {2: "were lost"}),
    "a line of another width": ("Name,HCP,Club\nAda Quill,3,Reedham\nBo Sund,12,3,Reedham\nCy Marr,4,Reedham\nDi Vane,5,Reedham\n", {3: "more cells"}),
}  # fmt: skip


@pytest.mark.parametrize(("text", "faults"), BAD.values(), ids=BAD)
def test_every_bad_line_is_told_with_the_remedy_and_nobody_is_taken(
    tmp_path: Path, text: str, faults: dict[int, str]
) -> None:
    """The line, what is wrong, what to do; no entry of the others either."""
    found = read(tmp_path, text)

    assert found.entries == ()
    assert {one.line for one in found.faults} == set(faults)
    for one in found.faults:
        assert faults[one.line] in str(one.fault)


@pytest.mark.parametrize(
    "text",
    [
        "Name;Club\nJörg Möwe;Dünentief\nJoerg Moewe;Reedham\n",
        "Name;Born\nIlse Watt;1990\nIlse Wátt;1960\n",
        "Name;Number\nIlse Watt;17\nWatt Ilse;18\n",
    ],
)
def test_two_of_like_names_told_apart_are_two(tmp_path: Path, text: str) -> None:
    """By club, year of birth or number."""
    assert len(read(tmp_path, text).entries) == 2


@pytest.mark.parametrize(
    ("words", "sex"),
    [("Damen/Herren", "female male"), ("D/H", "female male"), ("Femme/Homme", "female male")],
)
def test_sexes_as_lists_write_them(tmp_path: Path, words: str, sex: str) -> None:
    """D and H together are Damen and Herren."""
    first, second = words.split("/")
    found = read(tmp_path, f"Name;Geschlecht\nAda Quill;{first}\nBo Sund;{second}\n")

    assert " ".join(one.sex for one in found.entries) == sex


def rows(made: Workbook, name: str, some: list[list[Any]]) -> Any:
    sheet = made.add_worksheet(name)
    for at, row in enumerate(some):
        sheet.write_row(at, 0, row)
    return sheet


HEAD = ["Name", "HCP", "Club"]
LINES = [HEAD, ["Jörg Möwe", "+1,4", "Dünentief"], ["Änne Groß", 12.3, "Reedham"]]


def test_the_list_on_the_second_sheet_is_found(tmp_path: Path) -> None:
    """A first sheet of remarks is passed over, and it is said."""

    def fill(made: Workbook) -> None:
        rows(made, "Hinweise", [["Bitte bis Freitag melden"]])
        rows(made, "Meldungen", LINES)

    found = book(tmp_path, fill)
    assert told(found) == TWO
    assert "Read the sheet Meldungen" in notes(found)
    assert "not read: Hinweise" in notes(found)


def test_two_lists_on_two_sheets_are_not_half_imported(tmp_path: Path) -> None:
    """Damen on one sheet and Herren on the other: refused by their names, with what to do."""

    def fill(made: Workbook) -> None:
        rows(made, "Damen", LINES)
        rows(made, "Herren", [HEAD, ["Bo Sund", 4, "Reedham"]])

    with pytest.raises(InputError, match=r"Damen, Herren.*one sheet"):
        book(tmp_path, fill)


def test_hidden_rows_are_told_and_hidden_sheets_passed_over(tmp_path: Path) -> None:
    """What nobody sees on the screen is not taken in silence."""

    def fill(made: Workbook) -> None:
        sheet = rows(made, "Meldungen", [*LINES, ["Ilse Watt", 3, "Dunewick"]])
        sheet.set_row(3, None, None, {"hidden": True})
        rows(made, "Alt", LINES).hide()

    found = book(tmp_path, fill)
    assert [one.name for one in found.entries] == ["Jörg Möwe", "Änne Groß", "Ilse Watt"]
    assert "Hidden rows are read too: 4." in notes(found)


def test_formulas_dates_and_numbers_of_a_spreadsheet(tmp_path: Path) -> None:
    """What a formula came to; a date as a day, as text and as a number; a handicap with one digit and as text; a percentage, which is
    no handicap as people write it and is told."""

    def fill(made: Workbook) -> None:
        sheet = rows(made, "Liste", [["Vorname", "Nachname", "HCP", "Geburtsdatum"]])
        sheet.write_formula(1, 0, '="Jö"&"rg"', None, "Jörg")
        sheet.write_row(1, 1, ["Möwe", "+1,4", "30.04.1985"])
        sheet.write_row(2, 0, ["Änne", "Groß", 12.3])
        sheet.write_datetime(2, 3, date(1990, 1, 2), made.add_format({"num_format": "dd.mm.yy"}))
        sheet.write_row(3, 0, ["Ilse", "Watt", 7, 32874])

    found = book(tmp_path, fill)
    assert [(one.name, one.handicap_index, one.born) for one in found.entries] == [
        ("Jörg Möwe", Decimal("-1.4"), 1985),
        ("Änne Groß", Decimal("12.3"), 1990),
        ("Ilse Watt", Decimal(7), 1990),
    ]


def test_a_heading_merged_over_both_names_is_told(tmp_path: Path) -> None:
    """Name over two columns: the given names stand under no heading, and are not lost in silence."""

    def fill(made: Workbook) -> None:
        sheet = made.add_worksheet()
        sheet.merge_range(0, 0, 0, 1, "Name")
        sheet.write(0, 2, "HCP")
        for at, row in enumerate((["Möwe", "Jörg", 3], ["Groß", "Änne", 4]), start=1):
            sheet.write_row(at, 0, row)

    found = book(tmp_path, fill)
    assert [one.line for one in found.faults] == [1]
    assert "Given name" in str(found.faults[0].fault)


def test_a_german_list_with_both_names_in_one_column_and_tees(tmp_path: Path) -> None:
    """'Name, Vorname' is the name turned round, 'HI (Stand Mai)' the index, 'Jg.' the year, 'Abschlag' the tees."""
    path = tmp_path / "liste.csv"
    path.write_text(
        "Nr.;Name, Vorname;Heimatclub;HI (Stand Mai);Jg.;m/w;Abschlag\n"
        "1;Überfluß, Øystein;Wattenmoor GK;+1,4;1972;m;blau\n2;O'Dwyer, Siân;;21;1995;w;rot\n3;Żółć, Łukasz;;k.A.;;;\n;Summe: 3 Spieler;;;;;\n",
        encoding="utf-8",
    )
    found = read_entries(path)

    assert found.faults == ()
    assert [(one.name, one.born, one.sex, one.tees) for one in found.entries] == [
        ("Øystein Überfluß", 1972, "male", "blau"),
        ("Siân O'Dwyer", 1995, "female", "rot"),
        ("Łukasz Żółć", None, "", ""),
    ]
    assert [str(one.handicap_index) for one in found.entries] == ["-1.4", "21", "None"]
