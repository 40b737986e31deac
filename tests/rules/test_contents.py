"""No sub-rule is silently missing: each is computed, judgement, not covered, or has no outcome for a reason."""

import pytest

from marram.rules.contents import Coverage, SubRule, citations_reached, contents, coverage, outside_contents


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
