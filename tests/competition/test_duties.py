"""Where an official is, read from the words after the role; what nobody said stays unsaid."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from marram.competition.conditions.duties import Duty, duty_of, uncovered
from marram.competition.conditions.event_file import Official


@pytest.mark.parametrize(
    ("role", "duty"),
    [
        ("chief referee", Duty("Ina", "chief_referee")),
        ("referee, holes 1 to 3", Duty("Ina", "referee", (1, 2, 3))),
        ("Referee, holes 1, 3 and 5–6", Duty("Ina", "referee", (1, 3, 5, 6))),
        ("referee, hole 17; radio Dune 2", Duty("Ina", "referee", (17,), radio="Dune 2")),
        ("referee, groups 4-5, telephone", Duty("Ina", "referee", groups=(4, 5), telephone=True)),
        ("referee, roving, phone", Duty("Ina", "referee", roving=True, telephone=True)),
        ("referee, roving the dunes", Duty("Ina", "referee", roving=True, elsewhere="the dunes")),
        ("starter, first tee, radio Start", Duty("Ina", "starter", radio="Start", elsewhere="first tee")),
        ("scorer", Duty("Ina", "scorer")),
        ("Committee, telephone at the clubhouse", Duty("Ina", "committee", telephone=True, elsewhere="at the clubhouse")),
        ("referee, holes by the sea", Duty("Ina", "referee", elsewhere="holes by the sea")),
        ("referee, 12", Duty("Ina", "referee", elsewhere="12")),
    ],
)  # fmt: skip
def test_words_of_a_duty_are_read(role: str, duty: Duty) -> None:
    """Holes, groups, roving, radio and telephone in any order; every other word is kept as it stands."""
    assert duty_of(Official("Ina", role)) == duty


@given(st.lists(st.integers(1, 18), unique=True, max_size=18))
def test_holes_that_no_referee_has_are_the_others(holes: list[int]) -> None:
    """Given and not given make up the course; where nobody has holes, nothing is claimed."""
    words = ", ".join(map(str, holes))
    one = duty_of(Official("Ina", f"referee, holes {words}" if holes else "referee"))
    assert set(one.holes) == set(holes)
    assert set(uncovered([one], range(1, 19))) == (set(range(1, 19)) - set(holes) if holes else set())


def test_a_roving_referee_covers_every_hole_and_a_scorer_none() -> None:
    """Who roves, or walks with groups, reaches every hole; holes of somebody who does not rule count for nothing."""
    some = duty_of(Official("Ina", "referee, holes 1 to 17"))
    assert uncovered([some], range(1, 19)) == (18,)
    assert uncovered([some, duty_of(Official("Ole", "scorer, hole 18"))], range(1, 19)) == (18,)
    assert uncovered([some, duty_of(Official("Ole", "referee, roving"))], range(1, 19)) == ()


def test_a_slip_in_a_range_is_no_endless_list() -> None:
    """A range of more than any event has is cut, and one written backwards is read the other way round."""
    assert len(duty_of(Official("Ina", "referee, groups 1 to 99999999")).groups) < 1000
    assert duty_of(Official("Ina", "referee, holes 9 to 7")).holes == (7, 8, 9)


@pytest.mark.parametrize(
    ("words", "holes", "groups"),
    [
        ("referee, Bahnen 1 bis 9, Funk Düne 2", tuple(range(1, 10)), ()),
        ("referee, Bahn 4, 5 und 7, radio Düne 2", (4, 5, 7), ()),
        ("referee, Löcher 10–18, funk Düne 2", tuple(range(10, 19)), ()),
        ("referee, trous 1 à 3, radio Düne 2", (1, 2, 3), ()),
        ("referee, hoyos 2 y 4, radio Düne 2", (2, 4), ()),
        ("referee, buche 2 e 4, radio Düne 2", (2, 4), ()),
        ("referee, hål 1 till 3 och 9, radio Düne 2", (1, 2, 3, 9), ()),
        ("referee, Flights 3 bis 5, Funk Düne 2", (), (3, 4, 5)),
        ("referee, groupes 3, 4 et 6, radio Düne 2", (), (3, 4, 6)),
    ],
)
def test_where_officials_are_in_other_languages(
    words: str, holes: tuple[int, ...], groups: tuple[int, ...]
) -> None:
    """The words of the ground and the radio are typed by people who do not write English."""
    found = duty_of(Official("Ada Wren", words))
    assert (found.holes, found.groups, found.radio, found.elsewhere) == (holes, groups, "Düne 2", "")


@pytest.mark.parametrize(
    "word", ["unterwegs", "mobil", "itinérant", "móvil", "itinerante", "rörlig", "roving"]
)
def test_roving_and_by_telephone_in_other_languages(word: str) -> None:
    """What is said behind the word stays as words."""
    found = duty_of(Official("Ada Wren", f"referee, {word} am Meer, Telefon"))
    assert (found.roving, found.telephone, found.elsewhere) == (True, True, "am Meer")


def test_a_place_that_only_begins_like_a_word_stays_a_place() -> None:
    """A terminal, a telescope and a lochan are no telephone and no holes."""
    found = duty_of(Official("Ada Wren", "referee, Telescope hill, Lochan 3"))
    assert (found.telephone, found.holes, found.elsewhere) == (False, (), "Telescope hill, Lochan 3")
