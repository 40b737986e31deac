"""Every published case is decided as published."""

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
