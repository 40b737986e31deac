"""Each Local Rule that can be adopted changes a published case, and only what it is about."""

from collections.abc import Iterator
from functools import cache
from typing import Any

import pytest

import marram
from marram.rules.engine.export import facts_of
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.local_rules.adoption import adopt
from marram.rules.local_rules.register import REGISTER
from marram.rules.ruling import Ruling
from tests.published.cases import PublishedCase, all_cases

CASES = [case for case in all_cases() if case.edition != "2016"]


def ruled(case: PublishedCase, local_rules: list[str]) -> Any:
    """Return the result of a case under these Local Rules, whatever was asked on the way."""
    return marram.rule(
        case.raw["incident"],
        case.raw["facts"],
        played_on=case.day,
        form_of_play=case.form,
        local_rules=local_rules,
    )


def changed_by(code: str) -> Iterator[PublishedCase]:
    """Yield the published cases under this Local Rule that are decided otherwise without it."""
    for case in CASES:
        adopted = case.raw.get("local_rules", [])
        if code in adopted:
            without = [one for one in adopted if one != code]
            if ruled(case, adopted) != ruled(case, without):
                yield case


@pytest.mark.parametrize("code", LOCAL_RULES)
def test_adopting_it_changes_a_published_case(code: str) -> None:
    """Some case with its source under this Local Rule is decided otherwise where it is not in force."""
    assert next(changed_by(code), None) is not None


@pytest.mark.parametrize("code", LOCAL_RULES)
def test_adopting_it_changes_only_what_it_is_about(code: str) -> None:
    """Wherever adopting it besides changes a case, the outcome rests on it or on a Rule that it modifies."""
    about = (code, *REGISTER[code].modifies, *REGISTER[code].beside)
    for case in CASES:
        adopted = case.raw.get("local_rules", [])
        if code in adopted or LOCAL_RULES[code].name not in names_of_facts(case.raw["incident"]):
            continue
        if adopt([*adopted, code], case.day).faults:  # not on that day, or not beside the others
            continue
        before, after = ruled(case, adopted), ruled(case, [*adopted, code])
        if before != after and isinstance(before, Ruling) and isinstance(after, Ruling):
            assert rests_on(about, before) or rests_on(about, after), (case.ident, before, after)


def rests_on(about: tuple[str, ...], ruling: Ruling) -> bool:
    """Tell whether a ruling, a penalty or an option of it cites one of these."""
    cited = {*ruling.citations, *(option.citation for option in ruling.relief)}
    return any(one == wanted or one.startswith(wanted) for one in cited for wanted in about)


@cache
def names_of_facts(incident: str) -> frozenset[str]:
    """Return the names of the facts that can matter for an incident."""
    return frozenset(fact.name for fact in facts_of(incident))
