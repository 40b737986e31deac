"""No sub-rule is silently missing: each is computed, judgement, not covered, or has no outcome for a reason."""

import pytest

from marram.rules.contents import (
    Coverage,
    SubRule,
    citations_reached,
    clarifications,
    contents,
    coverage,
    outside_contents,
)
from marram.words.english import catalogue
from tests.published.cases import all_cases


@pytest.fixture(scope="module")
def reached() -> dict[str, set[type]]:
    return citations_reached()


def test_no_sub_rule_is_missing(reached: dict[str, set[type]]) -> None:
    """Every sub-rule without a stated reason is reached by some path."""
    missing = [one.number for one in contents() if coverage(one, reached) is Coverage.MISSING]
    assert not missing, missing


def test_every_citation_stands_in_the_table_of_contents(reached: dict[str, set[type]]) -> None:
    """No ruling cites a sub-rule that the book does not have."""
    assert not outside_contents(reached)


def test_a_made_up_citation_is_found() -> None:
    """A sub-rule or Clarification that the tables do not hold is told, whatever else is cited beside it."""
    cited = ["9.6", "Clarification 9.6/99", "9.9z", "Clarification 18.1/2", "E-5", "Definitions: stroke"]

    assert outside_contents(cited) == ["Clarification 9.6/99", "9.9z"]


def test_words_and_published_cases_cite_what_exists() -> None:
    """What is said of a Clarification, and what a published case expects to be cited, stands in the tables too."""
    expected = {one for case in all_cases() for one in case.raw["expect"].get("cites", ())}

    assert not outside_contents(catalogue("PROVISIONS").keys() | expected)


def test_each_clarification_belongs_to_a_sub_rule_or_a_definition() -> None:
    """Each entry names its sub-rule, or a Definition by a capital, and says on what it rests."""
    for number, basis in clarifications().items():
        of, _, running = number.rpartition("/")
        assert running.isdecimal(), number
        assert of[0].isupper() or any(one.holds(of) or one.number.startswith(of) for one in contents()), (
            number
        )
        assert basis in {"read", "compared", "second-hand", "memory"}, number


def test_numbers_are_unique_and_rules_complete() -> None:
    """Rules 1 to 25 all stand in the table, each sub-rule once."""
    numbers = [one.number for one in contents()]
    assert len(numbers) == len(set(numbers))
    assert [*dict.fromkeys(int(number.split(".")[0]) for number in numbers)] == list(range(1, 26))


@pytest.mark.parametrize(
    ("citation", "inside"),
    [
        ("9.4b", True),
        ("9.4b Exception 1", True),
        ("9.4b(1)", True),
        ("9.4", False),
        ("19.4b", False),
        ("9.4bc", False),
    ],
)
def test_a_citation_belongs_to_its_sub_rule(citation: str, inside: bool) -> None:
    """Exceptions and numbered paragraphs belong to the sub-rule; its parent and namesakes do not."""
    assert SubRule("9.4b", "", "").holds(citation) is inside
