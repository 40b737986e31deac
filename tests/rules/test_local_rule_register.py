"""The register of Model Local Rules agrees with what marram computes."""

import pytest

from marram.rules.contents import outside_contents
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.local_rules.local_rule import LocalRule
from marram.rules.local_rules.register import AREAS, REGISTER
from marram.words.english import catalogue

EVERY = list(REGISTER.values())


@pytest.mark.parametrize("one", EVERY, ids=lambda one: one.code)
def test_each_is_computed_or_says_why_not(one: LocalRule) -> None:
    """An entry names the provision that works it out, or one plain reason why none does, never both."""
    assert bool(one.citation) != bool(one.reason)
    assert one.modifies or one.definitions or one.subject
    assert one.editions
    assert set(one.editions) <= {2019, 2023}


def test_every_local_rule_that_can_be_adopted_stands_in_the_register() -> None:
    """What a competition can adopt is in the register as computed."""
    assert not LOCAL_RULES.keys() - REGISTER.keys()
    assert all(REGISTER[code].computed for code in LOCAL_RULES)


def test_computed_entries_are_adopted_or_worked_out_by_a_rule() -> None:
    """A computed entry can be adopted by its code, or its provision is a Rule that asks for it itself."""
    by_rule = {one.code for one in EVERY if one.computed and one.citation[0].isdigit()}
    computed = {one.code for one in EVERY if one.computed}
    assert computed - by_rule <= LOCAL_RULES.keys()


def test_what_each_modifies_exists() -> None:
    """The Rules and other Local Rules that an entry changes are those of the book; Definitions are no Rules."""
    for one in EVERY:
        assert all(number[0].isdigit() for number in one.modifies), one.code
        assert not outside_contents(one.modifies), one.code
        assert set(one.beside) <= REGISTER.keys(), one.code
        assert not any(character.isdigit() for term in one.definitions for character in term), one.code


def test_every_provision_named_has_words() -> None:
    """The provision an entry names has a statement in the catalogue."""
    said = catalogue("PROVISIONS")
    assert not {one.citation for one in EVERY if one.computed} - said.keys()


def test_conflicts_are_mutual() -> None:
    """What cannot go with another cannot the other way round either."""
    for one in EVERY:
        for other in one.not_with:
            assert one.code in REGISTER[other].not_with, (one.code, other)


def test_areas_are_those_of_the_list_in_order() -> None:
    """Every area has entries, and the codes begin with the letter of their area."""
    assert [*dict.fromkeys(code[0].lower() for code in REGISTER)] == list(AREAS)
