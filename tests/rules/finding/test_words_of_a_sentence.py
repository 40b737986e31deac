"""A sentence is taken apart so that what people say alike is alike, and what only looks alike is not."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from marram.rules.finding.citations import citations, closeness, without
from marram.rules.finding.misspelt import distance, meant
from marram.rules.finding.model import model
from marram.rules.finding.sentence import words
from marram.rules.incidents import incident


def stems(sentence: str) -> list[str]:
    return [one.stem for one in words(sentence, model().tables)]


def denied(sentence: str) -> list[str]:
    return [one.written for one in words(sentence, model().tables) if one.denied]


@pytest.mark.parametrize(
    ("sentence", "said_not_to_be"),
    [
        ("he lost his ball and did not play a provisional", ["play", "provisional"]),
        ("she didn't lift it", ["lift", "it"]),
        ("didnt lift it", ["lift", "it"]),
        ("without marking, he lifted it", ["marking"]),
        ("they never searched but found it", ["searched"]),
        ("no provisional ball was played by the lady", ["provisional", "ball", "was", "played"]),
        ("it was not out he found it in bounds", ["out"]),
        ("the ball moved and he replaced it", []),
    ],
)
def test_what_is_denied_reaches_to_the_next_clause_or_four_words(
    sentence: str, said_not_to_be: list[str]
) -> None:
    """What stands after "not", "never", "no" or "without" is denied, until another clause begins."""
    assert denied(sentence) == said_not_to_be


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("stood behind", "stands behind"),
        ("the wind blew it", "wind blows it"),
        ("trod on it", "treading on it"),
        ("it didn't move", "it did not move"),
        ("three minutes", "3 minutes"),
        ("a four-ball card", "fourball card"),
        ("the score card", "scorecards"),
        ("OB", "out of bounds"),
        ("the caddy", "a caddie"),
        ("behind the colour", "behind the color"),
    ],
)
def test_what_is_said_alike_is_alike(one: str, other: str) -> None:
    """Tenses, endings, contractions, numbers, spellings and words run together do not count."""
    assert stems(one) == stems(other)


@pytest.mark.parametrize(
    ("one", "other"), [("unattended", "attended"), ("strikes", "strokes"), ("seven", "seen")]
)
def test_what_only_looks_alike_stays_apart(one: str, other: str) -> None:
    """A known word is never read as another one."""
    assert stems(one) != stems(other)


@pytest.mark.parametrize(
    ("said", "thing"),
    [
        ("an acorn", "loose"),
        ("hoofprints", "repair"),
        ("a hut", "immovable"),
        ("two benches", "immovable"),
        ("a cactus", "growing"),
        ("powder", "substance"),
        ("some walker", "outsider"),
        ("a leaf", "loose"),
        ("my trolley", "equipment"),
        ("rabbit hole", "burrow"),
    ],
)
def test_an_everyday_name_names_a_kind_of_thing(said: str, thing: str) -> None:
    """What people call things on a course is known as the kind of thing the Rules speak of."""
    assert thing in {one for word in words(said, model().tables) for one in word.things}


@pytest.mark.parametrize(
    ("sentence", "cited"),
    [
        ("13.2", ("13.2",)),
        ("what about Rule 16.1b here", ("16.1b",)),
        ("18.3c(2)", ("18.3c(2)",)),
        ("E-5", ("e-5",)),
        ("rule 9", ("9",)),
        ("14", ("14",)),
        ("it was 2.5 metres from the hole", ()),
        ("he had 14 clubs", ()),
    ],
)
def test_a_rule_number_is_exact_and_an_amount_is_none(sentence: str, cited: tuple[str, ...]) -> None:
    """Numbers of Rules are read as such, numbers with a unit are not."""
    assert citations(sentence) == cited
    assert not any(one in without(sentence, cited).lower() for one in cited)


def test_a_part_of_a_rule_is_near_it_and_another_rule_is_not() -> None:
    """13.2a is a part of 13.2, and that of 13; 1 is no part of 13, nor 13.2 of 3.2."""
    hit = incident("ball_hit_flagstick")
    assert [closeness(hit, number) for number in ("13.2", "13.2a", "13", "1", "13.1", "3.2")] == [
        3,
        1,
        2,
        0,
        0,
        0,
    ]


word = st.text(alphabet="abcdefg", min_size=5, max_size=9)


@given(word, st.data())
def test_one_slip_is_one_slip_whichever_it_is(written: str, data: st.DataObject) -> None:
    """A letter left out, doubled, or exchanged with the next is one slip, or none where that changes nothing."""
    at = data.draw(st.integers(0, len(written) - 2))
    slips = [
        written[:at] + written[at + 1 :],
        written[:at] + written[at] + written[at:],
        written[:at] + written[at + 1] + written[at] + written[at + 2 :],
    ]
    for slip in slips:
        assert distance(written, slip, 2) == distance(slip, written, 2) == (slip != written)


def test_of_equally_near_words_the_commonest_is_meant_and_a_short_word_is_never_guessed() -> None:
    """A slip is read as the word people use most; four letters are too few to guess from."""
    known = {"b": (("bunker", 9), ("banker", 40)), "r": (("rake", 3),)}
    assert meant("bnnker", known) == "bunker"
    assert meant("rkae", known) is None
    assert meant("zunker", known) is None
