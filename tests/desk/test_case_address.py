"""A case lives in its address: reading and writing are inverse."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from marram.desk.rulings.case_address import CaseAddress, read_address
from marram.errors import InputError
from marram.rules.facts import vocabulary
from marram.rules.incidents import INCIDENTS
from marram.services.cases.address import BETWEEN, OWN_KEYS, Kept
from marram.services.cases.conditions import Conditions
from marram.services.cases.event import Event
from marram.services.cases.places import Places

VOCABULARY = vocabulary()
CHOICES = sorted(name for name, fact in VOCABULARY.items() if fact.answers and name not in OWN_KEYS | BETWEEN)
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


kept = st.builds(
    Kept,
    what=st.sampled_from([one.name for one in INCIDENTS]),
    places=places.map(lambda at: Places({"ball": at}, {"ball": 6.5})),
    facts=answers,
)


@given(others=st.lists(kept, min_size=1, max_size=5), data=st.data(), facts=answers)
def test_a_whole_situation_is_read_back(
    others: list[Kept], data: st.DataObject, facts: dict[str, str]
) -> None:
    """Up to six incidents survive one address, whichever the page is about, each with its own answers and place."""
    number = data.draw(st.integers(1, len(others) + 1))
    free = [place for place in range(1, len(others) + 2) if place != number]
    case = CaseAddress(
        Conditions(date(2024, 5, 1)),
        9,
        {"entry": (55.0, 4.0)},
        "unplayable_ball",
        facts,
        number=number,
        kept=dict(zip(free, others, strict=True)),
        between={"intervening_event_1": "yes"},
    )

    assert read_address(case.pairs(), "", Event()) == case


def test_one_incident_is_written_without_numbers() -> None:
    """An address of a single incident looks as it always did."""
    case = CaseAddress(Conditions(date(2024, 5, 1)), 7, {"ball": (55.0, 4.0)}, "unplayable_ball")

    assert [key for key, _ in case.pairs()][:3] == ["hole", "ball", "what"]
    assert not any(key[0].isdecimal() or key == "number" for key, _ in case.pairs())


@pytest.mark.parametrize(
    ("query", "words"),
    [
        ([("2.what", "unplayable_ball"), ("4.what", "unplayable_ball")], "not numbered one after the other"),
        ([("1.what", "unplayable_ball"), ("number", "3")], "Give number=2"),
        ([(f"{n}.what", "unplayable_ball") for n in range(1, 8)], "one to 6 incidents"),
        ([(f"{n}.what", "unplayable_ball") for n in range(1, 7)] + [("what", "unplayable_ball")], "one to 6"),
        ([("1.cause_known", "yes")], "Incident 1: it is not said what happened"),
        ([("1.what", "unplayable_ball"), ("1.cause_known", "perhaps")], "Incident 1: .*'perhaps'"),
        ([("1.what", "unplayable_ball"), ("1.hole", "7")], "hole is not said of one incident"),
        ([("1.what", "unplayable_ball"), ("1.intervening_event_1", "no")], "give it without a number"),
        ([("ball", "55.0,4.0;u=near")], "does not say how well"),
        ([("ball", "55.0,4.0;6")], "does not say how well"),
        ([("ball", "55.0,4.0;u=-1")], "does not say how well"),
    ],
)
def test_a_bad_situation_is_refused(query: list[tuple[str, str]], words: str) -> None:
    """Gaps, too many incidents, and faults within one are told with its number."""
    with pytest.raises(InputError, match=words):
        read_address(query, "", Event())


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
