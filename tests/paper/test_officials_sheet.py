"""The sheet for officials: everybody once with place, radio and telephone; each hole with who has it; what is still open."""

from marram.paper.event.officials_sheet import officials_sheet
from marram.paper.sheet import Sheet, Table, Words
from tests.paper.events import event, on_paper

OFFICIALS = [
    {"name": "Ottiline Brackmere", "role": "chief referee, radio Marram 1, telephone"},
    {"name": "Jorund Saltwick", "role": "referee, holes 1 to 9, radio Marram 2"},
    {"name": "Perpetua Dunsey", "role": "referee, holes 9 to 17, radio Marram 2"},
    {"name": "Ambrose Whinfell", "role": "starter, first tee"},
]


def sheet_of(officials: list[dict[str, str]], handicaps: tuple[int, ...] = ()) -> Sheet:
    return officials_sheet(on_paper(event(handicaps, officials=officials)))


def rows(sheet: Sheet, heading: str) -> list[tuple[str, ...]]:
    (found,) = [one for one in sheet.parts if isinstance(one, Table) and one.heading == heading]
    return [tuple(cell.words for cell in row) for row in found.rows]


def open_points(sheet: Sheet) -> tuple[str, ...]:
    return next((one.sentences for one in sheet.parts if isinstance(one, Words)), ())


def test_everybody_stands_once_with_place_radio_and_telephone() -> None:
    """Name, role in words, where, the name on the radio, and who answers the telephone."""
    assert rows(sheet_of(OFFICIALS), "") == [
        ("Ottiline Brackmere", "chief referee", "no place yet", "Marram 1", "answers"),
        ("Jorund Saltwick", "referee", "Holes 1–9", "Marram 2", ""),
        ("Perpetua Dunsey", "referee", "Holes 9–17", "Marram 2", ""),
        ("Ambrose Whinfell", "starter", "First tee", "", ""),
    ]


def test_each_hole_names_who_has_it() -> None:
    """One hole of two referees names both, one of none is empty, and no hole is missing."""
    by_hole = dict(rows(sheet_of(OFFICIALS), "Referees by hole"))
    assert list(by_hole) == [str(one) for one in range(1, 19)]
    assert by_hole["9"] == "Jorund Saltwick (Marram 2), Perpetua Dunsey (Marram 2)"
    assert by_hole["18"] == ""


def test_what_is_still_open_is_said() -> None:
    """A hole without a referee, a radio name given twice, nobody to score."""
    assert open_points(sheet_of(OFFICIALS)) == (
        "No referee has holes 18.",
        "No scorer is named.",
        "A name on the radio is given to several: Marram 2.",
    )


def test_groups_are_named_with_their_time() -> None:
    """A referee who walks with a group stands beside it; groups without one are left out."""
    officials = [{"name": "Ina Quell", "role": "referee, group 2"}]
    sheet = sheet_of(officials, (1, 2, 3, 4))
    ((number, time, players, who),) = rows(sheet, "Referees by group")
    assert (number, time, who) == ("2", "08:10", "Ina Quell")
    assert players.startswith("P3")


def test_without_officials_the_sheet_says_so() -> None:
    """Nothing is claimed of people nobody named."""
    sheet = sheet_of([])
    assert open_points(sheet) == ()
    assert "No official is named." in [words for _, words in sheet.lines()]
