"""The ballot: fair to the order of entries, repeated by anybody, and reserves that move up."""

from decimal import Decimal
from hashlib import sha256

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.competition.entries.ballot import Choosing, after_withdrawals, chosen_field, moved_up
from marram.competition.entries.entry import Entry
from marram.errors import InputError

ENTRIES = tuple(Entry(f"Player {number}", Decimal(number), number=str(number)) for number in range(12))


def test_the_ballot_is_what_is_published() -> None:
    """Ascending SHA-256 of seed, line feed and key, worked out here once more."""
    expected = sorted(map(str, range(12)), key=lambda key: sha256(f"a seed\n{key}".encode()).hexdigest())

    found = chosen_field(ENTRIES, seed="a seed", places=5)

    assert [one.key for one in (*found.playing, *found.reserves)] == expected


@settings(deadline=None)
@given(st.permutations(ENTRIES), st.integers(1, 15))
def test_the_order_of_entries_does_not_matter(order: list[Entry], places: int) -> None:
    """Whoever entered first gains nothing; everybody stands once."""
    found = chosen_field(order, seed="x", places=places)

    assert found == chosen_field(ENTRIES, seed="x", places=places)
    assert sorted((*found.playing, *found.reserves), key=lambda one: int(one.key)) == list(ENTRIES)


def test_limits_of_handicap_and_lowest_first() -> None:
    """Over the limit and without a handicap are refused; lowest handicaps come first."""
    entries = (*ENTRIES, Entry("Without", number="99"))

    found = chosen_field(
        entries, seed="x", places=3, handicap_limit=Decimal(9), choosing=Choosing.LOWEST_HANDICAPS
    )

    assert [one.handicap_index for one in found.playing] == [0, 1, 2]
    assert {one.key for one in found.refused} == {"10", "11", "99"}


def test_a_reserve_takes_the_place_of_who_withdrew() -> None:
    """All others keep their places; a reserve who withdrew is passed over."""
    before = chosen_field(ENTRIES, seed="x", places=5)
    gone = [before.reserves[0].key, before.playing[2].key]

    after = after_withdrawals(before, gone)

    assert after.playing[2] == before.reserves[1]
    assert [*after.playing[:2], *after.playing[3:]] == [*before.playing[:2], *before.playing[3:]]
    assert moved_up(before, after) == (before.reserves[1],)
    assert [one.key for one in after.withdrawn] == gone


def test_every_fault_of_a_ballot_is_told() -> None:
    """No seed, no place, and a key twice; somebody unknown who withdraws."""
    with pytest.raises(InputError) as refused:
        chosen_field((*ENTRIES, ENTRIES[0]), seed=" ", places=0)

    assert len(refused.value.faults) == 3
    with pytest.raises(InputError, match="neither"):
        after_withdrawals(chosen_field(ENTRIES, seed="x", places=5), ["nobody"])
