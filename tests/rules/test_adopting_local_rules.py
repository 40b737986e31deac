"""What a Committee may adopt: codes of the list of that day that do not exclude each other."""

from datetime import date

import pytest

from marram.rules.editions import edition_of
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.local_rules.adoption import adopt, entry_named
from marram.rules.local_rules.local_rule import LocalRule
from marram.rules.local_rules.register import REGISTER

EVERY = list(REGISTER.values())
IN_2019, IN_2023 = date(2022, 12, 31), date(2026, 6, 1)
"""The last day of the 2019 edition, and a day on which every addition to the list of 2023 so far stands."""

EXCLUDING = [
    (one.code, other, year) for one in EVERY for other in one.not_with for year in one.not_with_in
    if year in one.editions and year in REGISTER[other].editions
]  # fmt: skip


def day_in(edition: int) -> date:
    return IN_2019 if edition == 2019 else IN_2023


@pytest.mark.parametrize("code", LOCAL_RULES)
def test_each_that_changes_a_ruling_can_be_adopted_in_each_of_its_editions(code: str) -> None:
    """Alone it is accepted, in any case of letters, and reaches the rulings."""
    for edition in REGISTER[code].editions:
        found = adopt([code.lower()], day_in(edition))

        assert not found.faults
        assert found.in_rulings == (code,)


@pytest.mark.parametrize("one", [one for one in EVERY if one.defines], ids=lambda one: one.code)
def test_one_that_only_defines_something_is_accepted_and_changes_no_ruling(one: LocalRule) -> None:
    """A hard card may list it: it is named among those in force, and no ruling asks for it."""
    found = adopt([one.code], day_in(one.editions[-1]))

    assert not found.faults
    assert found.codes == (one.code,)
    assert found.in_rulings == ()


@pytest.mark.parametrize(
    "one", [one for one in EVERY if not one.computed and not one.defines], ids=lambda one: one.code
)
def test_one_that_is_not_worked_out_is_refused_with_the_reason(one: LocalRule) -> None:
    """Nobody relies by mistake on what marram does not work out: the fault says why, and what to do."""
    (fault,) = adopt([one.code], day_in(one.editions[-1])).faults

    assert one.reason in fault
    assert "text the Committee has adopted" in fault


@pytest.mark.parametrize(("one", "other", "edition"), EXCLUDING)
def test_those_that_exclude_each_other_are_refused_together(one: str, other: str, edition: int) -> None:
    """The fault names both, says why, and what to do, whichever is given first."""
    (fault,) = adopt([one, other], day_in(edition)).faults

    assert one in fault
    assert other in fault
    assert "cannot be in force together" in fault
    assert "Leave one of them out" in fault
    assert REGISTER[one].why_not_with in fault


def test_two_policies_for_groups_exclude_each_other_only_in_the_list_that_has_both() -> None:
    """K-3 was a policy for groups in 2019; since 2023 it is a scale, which any policy may use."""
    assert adopt(["K-1", "K-3"], IN_2019).faults
    assert not adopt(["K-1", "K-3"], IN_2023).faults


@pytest.mark.parametrize(
    "one", [one for one in EVERY if one.computed and len(one.editions) == 1], ids=lambda one: one.code
)
def test_one_of_another_edition_is_refused(one: LocalRule) -> None:
    """A code that the list of the day does not hold is no Local Rule for that day's play."""
    other = 2023 if one.editions == (2019,) else 2019
    (fault,) = adopt([one.code], day_in(other)).faults

    assert f"list of {one.editions[0]} only" in fault


def test_one_added_later_is_refused_for_earlier_play() -> None:
    """G-10, the limit of 46 inches, could be adopted from 1 January 2022 on (announced October 2021)."""
    assert not adopt(["G-10"], date(2022, 1, 1)).faults
    (fault,) = adopt(["G-10"], date(2021, 12, 31)).faults
    assert "from 2022-01-01 on" in fault


@pytest.mark.parametrize("one", [one for one in EVERY if one.since], ids=lambda one: one.code)
def test_an_edition_given_without_a_day_is_its_first_day(one: LocalRule) -> None:
    """What began later is refused under `--edition 2019` too, with the day from which it can be adopted."""
    assert one.since is not None
    (fault,) = adopt([one.code], edition_of(one.since)).faults

    assert one.since.isoformat() in fault
    assert not adopt([one.code], one.since).faults


def test_a_misspelt_code_is_answered_with_the_nearest() -> None:
    """As a misspelt fact is."""
    (fault,) = adopt(["E5"], IN_2023).faults

    assert "Did you mean 'E-5'" in fault


def test_without_a_day_every_edition_will_do() -> None:
    """Where the day of play is not known, only the codes themselves are looked at."""
    assert not adopt(["D-7"]).faults
    assert not adopt(["L-2"]).faults
    assert adopt(["H-1.1", "H-1.3"]).faults


def test_a_numbered_form_stands_for_its_entry() -> None:
    """The list numbers forms of a text (B-2.1 and B-2.2); either adopts B-2, once."""
    assert adopt(["B-2.1", "B-2.2", "B-2"], IN_2023).codes == ("B-2",)
    assert entry_named("d-4") is REGISTER["D-4.1"]


def test_forms_belong_to_one_entry_and_are_no_codes() -> None:
    """No form stands for two entries, and none has the code of an entry."""
    forms = [form for one in EVERY for form in one.forms]
    assert len(forms) == len(set(forms))
    assert not set(forms) & REGISTER.keys()


def test_every_fault_is_told_at_once() -> None:
    """Unknown, of another list, and excluding each other: three faults of one notice."""
    faults = adopt(["Q-1", "L-2", "H-1.1", "H-1.2"], IN_2019).faults
    assert len(faults) == 3
    assert "no Local Rule 'Q-1'" in faults[0]
