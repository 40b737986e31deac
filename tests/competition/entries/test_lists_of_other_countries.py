"""Lists as clubs of other countries send them: their encodings, their words for a sex, names and clubs spelled otherwise."""

from pathlib import Path

import pytest

from marram.competition.entries.entry import EntryList
from marram.competition.entries.reading import read_entries


def _read(folder: Path, text: str, encoding: str = "utf-8") -> EntryList:
    file = folder / "list.csv"
    file.write_bytes(text.encode(encoding))
    return read_entries(file)


def test_a_list_of_central_europe_is_read_in_its_encoding(tmp_path: Path) -> None:
    """Letters that are none in Windows-1252 tell that it is Windows-1250; a list of Western Europe stays as it was."""
    found = _read(tmp_path, "Name;HCP\nŁukasz Źdźbło;4,1\nŽofie Dvořáková;9\n", "cp1250")
    assert [one.name for one in found.entries] == ["Łukasz Źdźbło", "Žofie Dvořáková"]

    found = _read(tmp_path, "Name;HCP\nSøren Größer;4,1\nÉloïse Nuñez;9\n", "cp1252")
    assert [one.name for one in found.entries] == ["Søren Größer", "Éloïse Nuñez"]


def test_a_name_with_signs_that_no_name_has_is_told(tmp_path: Path) -> None:
    """What an unknown encoding leaves in a name keeps the list out, with its line; apostrophes and dashes of names do not."""
    found = _read(tmp_path, "Name;HCP\nJ÷rgen ▒ster;4,1\nSeán O\u2019Brien\u2013Ní;9\n")

    assert [one.line for one in found.faults] == [2]
    assert "÷ ▒" in str(found.faults[0].fault)


@pytest.mark.parametrize(
    ("written", "sex"),
    [("♀", "female"), ("♂", "male"), ("kobieta", "female"), ("mężczyzna", "male"), ("nainen", "female")],
)
def test_a_sex_is_read_in_the_words_of_other_languages(tmp_path: Path, written: str, sex: str) -> None:
    """Signs and words beside those of English and German."""
    (entry,) = _read(tmp_path, f"Name;Geschl.\nAda Moor;{written}\n").entries
    assert entry.sex == sex


def test_one_club_spelled_in_two_ways_tells_nobody_apart(tmp_path: Path) -> None:
    """José Núñez of Düne is Jose Nunez of Dune or Duene; of another club he is somebody else."""
    rows = ["José Núñez;Düne", "Jose Nunez;Dune", "JOSE NUÑEZ;Duene", "Jose Nunez;Moor"]
    found = _read(tmp_path, "Name;Club\n" + "\n".join(rows) + "\n")

    assert [one.line for one in found.faults] == [3, 4]
