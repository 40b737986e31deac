"""No sub-rule is silently missing: each is computed, judgement, not covered, or has no outcome for a reason."""

import pytest

from marram.rules.contents import (
    Coverage,
    SubRule,
    citations,
    citations_reached,
    clarifications,
    contents,
    coverage,
    exceptions,
    exceptions_named,
    outside_contents,
)
from marram.rules.engine.fact import FACTS
from marram.rules.result import NeedFacts
from marram.words.english import catalogue
from tests.published.cases import all_cases


@pytest.fixture(scope="module")
def reached() -> dict[str, set[type]]:
    return citations_reached()


def test_no_sub_rule_is_missing(reached: dict[str, set[type]]) -> None:
    """Every sub-rule without a stated reason is reached by some path."""
    missing = [one.number for one in contents() if coverage(one, reached) is Coverage.MISSING]
    assert not missing, f"no path reaches, and rules/contents.txt gives no reason: {missing}"


def test_every_citation_stands_in_the_table_of_contents(reached: dict[str, set[type]]) -> None:
    """No ruling cites a sub-rule that the book does not have."""
    cited = outside_contents(reached)
    assert not cited, f"enter in rules/contents.txt, clarifications.txt or exceptions.txt: {cited}"


def test_a_made_up_citation_is_found() -> None:
    """A sub-rule, Clarification or Exception that the tables do not hold is told, whatever is cited beside it."""
    cited = ["9.6", "Clarification 9.6/99", "9.9z", "Clarification 18.1/2", "E-5", "Definitions: stroke"]
    cited += ["15.2a(1) Exception 2", "15.2a(1) Exception 3", "14.1b Exception 1", "9.4b Exceptions"]

    assert outside_contents(cited) == [
        "Clarification 9.6/99",
        "9.9z",
        "15.2a(1) Exception 3",
        "14.1b Exception 1",
        "9.4b Exceptions",
    ]


def test_words_and_published_cases_cite_what_exists() -> None:
    """What is said of a Clarification, and what a published case expects to be cited, stands in the tables too."""
    expected = {one for case in all_cases() for one in case.raw["expect"].get("cites", ())}

    assert not outside_contents(catalogue("PROVISIONS").keys() | expected)


def test_sources_name_exceptions_that_exist() -> None:
    """So do the sources of facts and of published cases, as far as they name an Exception by its number."""
    sources = [fact.source for fact in FACTS.values()] + [case.raw["source"] for case in all_cases()]

    assert not {one for text in sources for one in exceptions_named(text)} - exceptions().keys()


def test_a_ruling_cites_exceptions_of_its_own_edition() -> None:
    """Where the book was renumbered (11.1b Exception 2 is a paragraph since 2023) each edition's ruling says its own."""
    table = exceptions()
    for case in all_cases():
        result = case.run()
        if case.edition != "2016" and not isinstance(result, NeedFacts):
            for one in citations(result):
                assert one not in table or int(case.edition) in table[one].editions, (one, case.ident)


def test_each_exception_belongs_to_a_sub_rule() -> None:
    """Each entry names its sub-rule, the editions and on what it rests; numbers run on from 1."""
    for number, one in exceptions().items():
        of, _, running = number.partition(" Exception")
        assert any(row.holds(of) or row.number.startswith(of) for row in contents()), number
        assert one.editions, number
        assert one.editions <= {2019, 2023}, number
        assert one.basis in {"read", "compared", "second-hand", "memory"}, number
        assert (
            not running.strip().isdecimal()
            or int(running) == 1
            or f"{of} Exception {int(running) - 1}" in exceptions()
        )


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
