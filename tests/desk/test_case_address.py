"""A case lives in its address: reading and writing are inverse."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from marram.desk.case_address import OWN_KEYS, CaseAddress, read_address
from marram.desk.conditions import Conditions
from marram.desk.event import Event
from marram.errors import InputError
from marram.rules.facts import vocabulary
from marram.rules.incidents import INCIDENTS

VOCABULARY = vocabulary()
CHOICES = sorted(name for name, fact in VOCABULARY.items() if fact.answers and name not in OWN_KEYS)
places = st.tuples(
    st.floats(-90, 90).map(lambda degrees: round(degrees, 7)),
    st.floats(-180, 180).map(lambda degrees: round(degrees, 7)),
)
answers = st.lists(st.sampled_from(CHOICES), unique=True, max_size=6).flatmap(
    lambda names: st.tuples(*(st.sampled_from(VOCABULARY[name].tokens()) for name in names)).map(
        lambda tokens: dict(zip(names, tokens, strict=True))
    )
)


@given(
    hole=st.none() | st.integers(0, 99),
    ball=places,
    what=st.none() | st.sampled_from([one.name for one in INCIDENTS]),
    facts=answers,
)
def test_what_is_written_is_read_back(
    hole: int | None, ball: tuple[float, float], what: str | None, facts: dict[str, str]
) -> None:
    """Any case survives its address, to a centimetre, with its answers in order."""
    case = CaseAddress(Conditions(date(2024, 5, 1)), hole, {"ball": ball}, what, facts)

    again = read_address(case.pairs(), "", Event())

    assert again == case
    assert list(again.facts) == list(facts)


def test_no_fact_is_hidden_by_a_key_of_our_own() -> None:
    """A key of an address that is not a fact must never have a fact's name, or the answer would be lost.

    ``sides`` is both on purpose: it is a condition and read as one.
    """
    assert vocabulary().keys() & OWN_KEYS <= {"sides"}


def test_a_key_given_twice_with_two_answers_is_refused() -> None:
    """Which of the two was meant is never guessed."""
    with pytest.raises(InputError, match="twice"):
        read_address([("cause_known", "yes"), ("cause_known", "no")], "", Event())


def test_picking_a_place_keeps_the_rest() -> None:
    """The address a tap leads to holds everything else, and the new place instead of the old."""
    case = CaseAddress(
        Conditions(date(2024, 5, 1)), 7, {"ball": (55.0, 4.0)}, "unplayable_ball", {"cause_known": "yes"}
    )

    url = case.pick_url("/case", "ball")

    assert url.startswith("/case?ball={at}&hole=7&what=unplayable_ball&cause_known=yes&on=2024-05-01")
    assert url.count("ball=") == 1
