"""How citations are read by people: numbers as they stand, a Definition by its name, in every language."""

from pathlib import Path

import pytest

from marram.words.citations import named, named_all
from marram.words.english import catalogue
from tests.words.made_up import speaking
from tests.words.unmarked import unmarked

DEFINITIONS = sorted(one for one in catalogue("PROVISIONS") if "Definitions: " in one)


@pytest.mark.parametrize("citation", DEFINITIONS)
def test_every_definition_is_cited_by_its_name_in_every_language(citation: str, locales: Path) -> None:
    """ "Definition: stroke", not the heading of the chapter; in another language nothing of it stays English."""
    assert named(citation) == citation.replace("Definitions", "Definition")

    with speaking(locales):
        assert unmarked([named(citation)], set()) == set()


def test_numbers_stand_as_they_are() -> None:
    """Rules, codes of Local Rules and Clarifications are named as the book does."""
    assert named_all(["17.1d(3)", "E-5", "Clarification 9.2a/1"]) == "17.1d(3), E-5, Clarification 9.2a/1"
