"""Lists of entries as clubs send them: read whole with what they mean, or refused line by line."""

from datetime import UTC, datetime
from decimal import Decimal
from pathlib import Path

import pytest
from xlsxwriter import Workbook

from marram.competition.entries.cells import born_in
from marram.competition.entries.columns import keep_columns, kept_columns
from marram.competition.entries.entry import Column, Entry
from marram.competition.entries.reading import read_entries
from marram.competition.entries.writing import write_entries
from marram.errors import InputError

GERMAN = "Sommerpokal;;;\n;;;\nNachname;Vorname;Hcp.;Heimatclub\nMöwe;Jörg;+1,4;GC Dünentief\nSchilf;Anke;PR;GC Dünentief\nWatt;Ilse;;\n"


def listed(tmp_path: Path, text: str, encoding: str = "utf-8"):
    path = tmp_path / "list.csv"
    path.write_bytes(text.encode(encoding))
    return read_entries(path)


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"])
@pytest.mark.parametrize("separator", [";", ",", "\t", "|"])
def test_encoding_separator_and_titles_do_not_matter(tmp_path: Path, encoding: str, separator: str) -> None:
    """Title lines above, names in two columns, a plus handicap, PR and none: the same entries every time."""
    text = GERMAN.replace("+1,4", "plus 1.4").replace(";", separator)

    found = listed(tmp_path, text, encoding)

    assert found.faults == ()
    assert [(one.name, one.handicap_index, one.club) for one in found.entries] == [
        ("Jörg Möwe", Decimal("-1.4"), "GC Dünentief"),
        ("Anke Schilf", None, "GC Dünentief"),
        ("Ilse Watt", None, ""),
    ]
    assert any("header in line 3" in note for note in found.notes)


def test_every_bad_line_is_told_and_nothing_is_taken(tmp_path: Path) -> None:
    """A handicap of two readings, one too high, no name, a birth that is none, and a player twice."""
    text = "Player,HCP,Born\nA Tern,-18.4,1990\nB Tern,55,\n,12.0,\nC Tern,10,soon\nD Tern,3,\nd tern,3,\n"

    found = listed(tmp_path, text)

    assert found.entries == ()
    assert [one.line for one in found.faults] == [2, 3, 4, 5, 7]
    assert "two ways" in found.faults[0].fault
    assert "line 6" in found.faults[4].fault


def test_letters_in_the_wrong_encoding_are_told_with_what_was_meant(tmp_path: Path) -> None:
    """UTF-8 once read as something else is no name."""
    found = listed(tmp_path, "Name;Club\nJÃ¶rg MÃ¶we;Dünentief\n")

    assert found.entries == ()
    assert "Jörg Möwe" in found.faults[0].fault


def test_a_separator_inside_a_name_is_told(tmp_path: Path) -> None:
    """A line with more cells than the header is not read shifted by one."""
    found = listed(tmp_path, "Name,HCP\nTern, Ada,12.4\nB Tern,10\nC Tern,11\n")

    assert [one.line for one in found.faults] == [2, 2]


def test_a_spreadsheet_with_merged_cells_and_dates(tmp_path: Path) -> None:
    """A club merged over two rows counts for both; a date as a number is a year of birth; 12.3 is 12.3."""
    path = tmp_path / "list.xlsx"
    with Workbook(str(path)) as book:
        sheet = book.add_worksheet()
        sheet.merge_range(0, 0, 0, 3, "Entries of the season")
        for place, heading in enumerate(("Home Club", "Player name", "Handicap-Index", "Date of birth")):
            sheet.write(2, place, heading)
        sheet.merge_range(3, 0, 4, 0, "Dunlin Bay")
        for row, (name, index, born) in enumerate(
            (("A Tern", 12.3, 32874), ("B Tern", "+0.4", "30.04.1985")), start=3
        ):
            sheet.write_row(row, 1, [name, index, born])

    found = read_entries(path)

    assert found.faults == ()
    assert [(one.club, one.handicap_index, one.born) for one in found.entries] == [
        ("Dunlin Bay", Decimal("12.3"), 1990),
        ("Dunlin Bay", Decimal("-0.4"), 1985),
    ]


@pytest.mark.parametrize("cell", ["1990", "30.04.1990", "born 1990-04-30", "32993"])
def test_a_year_or_date_of_birth_is_read(cell: str) -> None:
    """A year, a date as it is written, or a spreadsheet's number of 30 April 1990."""
    assert born_in(cell) == 1990


@pytest.mark.parametrize("years", [1, 50])
def test_nobody_is_born_after_today(years: int) -> None:
    """A year to come is a slip of the pen, and refused."""
    with pytest.raises(InputError, match="year or date of birth"):
        born_in(str(datetime.now(tz=UTC).year + years))


@pytest.mark.parametrize("ending", ["csv", "xlsx"])
def test_what_is_written_is_read_back(tmp_path: Path, ending: str) -> None:
    """Entries go out and come in again alike."""
    entries = (
        Entry("Jörg Möwe", Decimal("-1.4"), "Dünentief", "male", 1990, "17", 2),
        Entry("Anke Schilf", None, "", "female", None, "", 3),
    )
    path = tmp_path / f"out.{ending}"

    write_entries(entries, path)

    assert read_entries(path).entries == entries


def test_columns_agreed_on_are_remembered(tmp_path: Path) -> None:
    """A heading that is like nothing known is read once it was said what it tells."""
    path, columns = tmp_path / "list.csv", tmp_path / "columns.json"
    path.write_text("Zwitser;Kraft\nA Tern;12,4\n", encoding="utf-8")
    with pytest.raises(InputError, match="columns"):
        read_entries(path)
    keep_columns({"Zwitser": Column.NAME, "Kraft": Column.HANDICAP_INDEX}, columns)

    found = read_entries(path, kept_columns(columns))

    assert [(one.name, one.handicap_index) for one in found.entries] == [("A Tern", Decimal("12.4"))]


@pytest.mark.parametrize("data", [b"", b"PK\x03\x04 no zip", b"\xd0\xcf\x11\xe0", b"one\ntwo\n"])
def test_what_is_no_list_is_refused(tmp_path: Path, data: bytes) -> None:
    """Nothing, a broken spreadsheet, an old Excel file, text without a header: one sentence each."""
    path = tmp_path / "list.csv"
    path.write_bytes(data)

    with pytest.raises(InputError):
        read_entries(path)
