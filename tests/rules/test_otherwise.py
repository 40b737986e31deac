"""An answer that no provision of a file names goes the other way there; which do is pinned, so that none slips in."""

from enum import Enum
from pathlib import Path

import pytest

from marram.rules.engine.fact import FACTS, Fact
from marram.rules.engine.otherwise import otherwise_text, unnamed_in

PINNED = Path(__file__).parent / "otherwise.txt"


class Way(Enum):
    UP = 1
    DOWN = 2
    BESIDE = 3


TOY = Fact("toy_way", "?", "", "", answers=dict.fromkeys(Way, ""))
del FACTS[TOY.name]  # no question of the book


def test_no_answer_falls_through_that_did_not_before() -> None:
    """Name a new answer where the Rules treat it apart; else give it a published case, and pin it."""
    pinned, now = (text.splitlines() for text in (PINNED.read_text(encoding="utf-8"), otherwise_text()))

    if fallen := [line for line in now if line not in pinned]:
        pytest.fail(
            "answers that no provision of a file names go the other way there; name each, or give it a published case "
            "and run `make pin`:\n" + "\n".join(fallen),
            pytrace=False,
        )
    if gone := [line for line in pinned if line not in now]:
        pytest.fail("pinned, but no longer so; run `make pin`:\n" + "\n".join(gone), pytrace=False)


@pytest.mark.parametrize(
    ("source", "unnamed"),
    [
        ("case.is_one_of(way, *ABOVE)", ("2", "3")),
        ("case[way] is Way.DOWN or Way.UP", ("3",)),
        ("case[way]", ("1", "2", "3")),
    ],
)
def test_an_answer_that_nothing_names_is_told(source: str, unnamed: tuple[str, ...]) -> None:
    """Code that names one of three answers, or a constant that holds it, leaves the others to its other way."""
    names = {"Way": Way, "way": TOY, "ABOVE": (Way.UP,)}

    assert unnamed_in(source, names) == {TOY: unnamed}


def test_code_that_names_every_answer_is_not_told() -> None:
    """Nor is code that does not read the fact."""
    names = {"Way": Way, "way": TOY, "ENDS": {Way.UP: Way.DOWN}}

    assert unnamed_in("ENDS.get(case[way], Way.BESIDE)", names) == {}
    assert unnamed_in("Way.UP", names) == {}
