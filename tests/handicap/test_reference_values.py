"""Every published value on handicaps is reproduced."""

import pytest

from tests.handicap import (
    published_allowances,
    published_course_handicaps,
    published_differentials,
    published_index,
    published_strokes,
)
from tests.handicap.published_values import CHECKS, VALUES

TOPICS = (
    published_course_handicaps,
    published_allowances,
    published_strokes,
    published_differentials,
    published_index,
)
"""Where the checks stand, one file for each topic; importing them enters each check under its values."""


@pytest.mark.parametrize("ident", VALUES)
def test_a_published_value_is_reproduced(ident: str) -> None:
    """What the named source prints comes out."""
    CHECKS[ident](VALUES[ident]["inputs"], VALUES[ident]["expected"])


def test_every_value_has_its_check() -> None:
    """No published value on handicaps is passed over in silence."""
    assert set(VALUES) == set(CHECKS)


def test_every_topic_has_checks() -> None:
    """A file that is forgotten above would leave its values without a check; one that checks nothing is no topic."""
    by_file = {check.__module__ for check in CHECKS.values()}
    assert by_file == {one.__name__ for one in TOPICS}
