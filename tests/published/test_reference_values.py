"""Every one of the published values beside the repository has its check, or there is a named reason why not."""

import pytest

from tests.competition import reference as of_competition
from tests.competition import test_published_penalties as competition
from tests.handicap import published_values as handicap
from tests.published import reference_ground, reference_play
from tests.published.reference_table import CHECKS, NOT_HERE

TOPICS = (reference_ground, reference_play)
"""Where the checks stand; importing them enters each check under its value."""

EVERY = of_competition.reference()


@pytest.mark.parametrize("ident", sorted(CHECKS))
def test_a_published_value_is_reproduced(ident: str) -> None:
    """What the named source prints is what is ruled, or stands in the code that is used."""
    CHECKS[ident](EVERY[ident]["inputs"], EVERY[ident]["expected"])


def test_none_is_passed_over() -> None:
    """Handicaps and results keep their own tables; what neither holds stands in the table of rulings."""
    kept = {ident for ident, one in EVERY.items() if one["topic"] in competition.TOPICS} | competition.ONES
    assert set(EVERY) == set(handicap.VALUES) | kept | set(CHECKS) | set(NOT_HERE)


def test_none_is_both_checked_and_excused() -> None:
    """A value with a check needs no reason, and none of these is counted a second time elsewhere."""
    assert not set(CHECKS) & set(NOT_HERE)
    assert not (set(CHECKS) | set(NOT_HERE)) & set(handicap.VALUES)


@pytest.mark.parametrize("ident", sorted(NOT_HERE))
def test_a_reason_is_of_a_value_that_is_there(ident: str) -> None:
    """A reason does not outlive its value, and says something."""
    assert ident in EVERY
    assert len(NOT_HERE[ident].split()) > 5


def test_every_topic_has_checks() -> None:
    """A file that is forgotten above would leave its values without a check."""
    assert {check.__module__ for check in CHECKS.values()} == {one.__name__ for one in TOPICS}
