"""Every published case is decided as published."""

import json
from typing import Any

import pytest

from tests.published.cases import PublishedCase, all_cases, assert_as_expected

CASES = list(all_cases())


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.ident)
def test_decided_as_published(case: PublishedCase) -> None:
    """The ruling is the one the source gives."""
    assert_as_expected(case.run(), case.raw["expect"])


def test_every_case_has_a_name_of_its_own() -> None:
    """Two cases of one file never share a name, so that a failure names its case."""
    idents = [case.ident for case in CASES]
    assert len(idents) == len(set(idents))


def test_sixty_situations_are_published_with_different_answers_in_the_two_editions() -> None:
    """The same facts, another ruling: what changed in 2023 is checked on both sides of the change."""
    answers: dict[str, dict[str, dict[str | None, Any]]] = {}
    for case in CASES:
        situation = json.dumps(
            [case.raw[key] for key in ("incident", "facts")] + case.raw.get("local_rules", []), sort_keys=True
        )
        expect = {key: value for key, value in case.raw["expect"].items() if key not in ("cites", "notes")}
        answers.setdefault(situation, {}).setdefault(case.edition, {})[case.form] = expect
    changed = [
        situation
        for situation, one in answers.items()
        if any(
            one["2023"].get(form, expect) != expect
            for form, expect in one.get("2019", {}).items()
            if "2023" in one
        )
    ]
    assert len(changed) >= 60, len(changed)
