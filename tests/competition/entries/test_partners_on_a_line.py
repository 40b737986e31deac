"""Lists that name partners on one line, a given name beside the name, and handicaps as people write them."""

from decimal import Decimal
from pathlib import Path

import pytest

from marram.competition.entries.cells import handicap_in
from marram.competition.entries.entry import EntryList
from marram.competition.entries.reading import read_entries
from marram.errors import InputError

PAIR = "Jörg Möwe / Änne Groß"


def read(tmp_path: Path, text: str) -> EntryList:
    path = tmp_path / "list.csv"
    path.write_text(text, encoding="utf-8")
    return read_entries(path)


@pytest.mark.parametrize(
    "text",
    [
        "Player 1;HI 1;Player 2;HI 2;Club\nJörg Möwe;12,3;Änne Groß;+1,4;Dünentief\n",
        "Club;Name (1);Name (2);HCP 1;HCP 2\nDünentief;Jörg Möwe;Änne Groß;12,3;+1,4\n",
        "Spieler A;HCP A;Spieler B;HCP B;Verein\nJörg Möwe;12,3;Änne Groß;+1,4;Dünentief\n",
        "Player;HCP;Partner;Partner HCP;Club\nJörg Möwe;12,3;Änne Groß;+1,4;Dünentief\n",
        "1. Spieler;1. HCP;2. Spieler;2. HCP;Verein\nJörg Möwe;12,3;Änne Groß;+1,4;Dünentief\n",
        (
            "Spieler 1 Name;Spieler 1 Vorname;HCP 1;Spieler 2 Name;Spieler 2 Vorname;HCP 2;Club\n"
            "Möwe;Jörg;12,3;Groß;Änne;+1,4;Dünentief\n"
        ),
    ],
)
def test_partners_on_one_line_are_a_side(tmp_path: Path, text: str) -> None:
    """Both are entered, each with their own handicap, as partners; and the note says how the list was read."""
    found = read(tmp_path, text)
    assert [(one.name, one.handicap_index, one.club, one.side, one.line) for one in found.entries] == [
        ("Jörg Möwe", Decimal("12.3"), "Dünentief", PAIR, 2),
        ("Änne Groß", Decimal("-1.4"), "Dünentief", PAIR, 2),
    ]
    assert any("partners of one side" in note for note in found.notes)


def test_who_has_no_partner_yet_is_entered_alone(tmp_path: Path) -> None:
    """An empty second half is nobody; a total below is no side."""
    found = read(tmp_path, "Player 1;Player 2;Team\nAda Wren;;Marsh\nBo Rook;Cy Tern;Dune\nTotal;3;\n")
    assert [(one.name, one.side, one.team) for one in found.entries] == [
        ("Ada Wren", "", "Marsh"),
        ("Bo Rook", "Bo Rook / Cy Tern", "Dune"),
        ("Cy Tern", "Bo Rook / Cy Tern", "Dune"),
    ]


def test_a_column_for_the_side_is_kept(tmp_path: Path) -> None:
    """Where the list names its sides, they are called that."""
    found = read(tmp_path, "Pair;Player 1;Player 2\nThe Dunes;Ada Wren;Bo Rook\n")
    assert {one.side for one in found.entries} == {"The Dunes"}


def test_four_on_a_line_are_one_side(tmp_path: Path) -> None:
    """As a scramble has it."""
    found = read(tmp_path, "Player 1,Player 2,Player 3,Player 4\nAda A,Bo B,Cy C,Di D\n")
    assert [one.name for one in found.entries] == ["Ada A", "Bo B", "Cy C", "Di D"]
    assert len({one.side for one in found.entries}) == 1


def test_the_same_heading_twice_is_refused(tmp_path: Path) -> None:
    """Half of the players would be left out, and whether they are partners is not told."""
    with pytest.raises(InputError, match=r"heading Name 2 times.*Name 1, Name 2"):
        read(tmp_path, "Name;HCP;Name;HCP\nAda Wren;14,2;Bo Rook;12,5\n")


def test_numbered_columns_that_name_nobody_are_no_partners(tmp_path: Path) -> None:
    """Two telephones or days do not make two players."""
    found = read(tmp_path, "Name;Round 1;Round 2;HCP\nAda Wren;yes;no;14,2\n")
    assert [(one.name, one.side) for one in found.entries] == [("Ada Wren", "")]


@pytest.mark.parametrize(
    ("name", "given", "whole"),
    [
        ("Möwe", "Jörg", "Jörg Möwe"),
        ("Jörg Möwe", "Jörg", "Jörg Möwe"),
        ("Möwe, Jörg", "Jörg", "Jörg Möwe"),
        ("von der Möwe", "Eva Maria", "Eva Maria von der Möwe"),
        ("Jörgensen", "Jörg", "Jörg Jörgensen"),
        ("Möwe", "", "Möwe"),
    ],
)
def test_a_given_name_beside_the_name(tmp_path: Path, name: str, given: str, whole: str) -> None:
    """'Name' and 'Vorname' are the two parts of a name, unless the first has both."""
    (only,) = read(tmp_path, f"Name;Vorname;HCP\n{name};{given};12,3\n").entries
    assert only.name == whole


def test_a_header_of_two_rows(tmp_path: Path) -> None:
    """What goes on with the header below it is no player without a name."""
    text = "Surname;First name;Handicap;Home club\n;;Index;\nWren;Ada;14,2;Marsh\n"
    assert [one.name for one in read(tmp_path, text).entries] == ["Ada Wren"]
    faulty = read(tmp_path, "Surname;First name;Handicap\n;;14,2\nWren;Ada;14,2\n")
    assert [one.line for one in faulty.faults] == [2]


@pytest.mark.parametrize(
    ("cell", "index"),
    [
        ("HCP +1,4", "-1.4"),
        ("Hcp: 12.3", "12.3"),
        ("HI 7", "7"),
        ("Handicap Index +0.3", "-0.3"),
        ("plus 2", "-2"),
        ("scr", "0"),
        ("Scr.", "0"),
        ("scratch", "0"),
    ],
)
def test_a_handicap_as_people_write_it(cell: str, index: str) -> None:
    """With its heading before it, and scratch as a word."""
    assert handicap_in(cell) == Decimal(index)


def test_a_handicap_with_two_decimals_is_shown_as_it_stands() -> None:
    """Not as a fraction of whole numbers."""
    with pytest.raises(InputError, match=r"17\.35 has more"):
        handicap_in("17.35")
