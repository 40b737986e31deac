"""Facts read answers strictly and say what they allow."""

from datetime import date

import pytest

from marram.errors import BadAnswer, BookError
from marram.rules.engine.fact import number, yes_no
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conditions import date_of_play
from marram.rules.facts.several import acts_related

minutes = number(
    "minutes_in_this_test", "How many?", help="Count.", source="none", unit="minutes", maximum=60
)


@pytest.mark.parametrize("given", ["bunker", "Bunker", "  BUNKER ", Area.BUNKER])
def test_an_answer_is_read_from_its_word_or_member(given: object) -> None:
    """A choice is read from its token, whatever the case, or from the enum member."""
    assert area_of_ball.parse(given) is Area.BUNKER


def test_hyphens_and_blanks_stand_for_underscores() -> None:
    """An official may write putting-green or putting green."""
    assert area_of_ball.parse("putting-green") is area_of_ball.parse("putting green") is Area.PUTTING_GREEN


@pytest.mark.parametrize(
    ("given", "answer"), [("yes", True), ("no", False), ("true", True), ("0", False), (True, True)]
)
def test_yes_and_no_are_read(given: object, answer: bool) -> None:
    """Yes/no facts take the usual words and booleans."""
    assert acts_related[0].parse(given) is answer


def test_a_misspelt_answer_suggests_the_right_one() -> None:
    """The message names the fact, the answer given, the nearest answer and all that are allowed."""
    with pytest.raises(BadAnswer, match=r"area_of_ball: 'bunkr' .*Did you mean 'bunker'.*putting_green"):
        area_of_ball.parse("bunkr")


@pytest.mark.parametrize("given", ["soon", "", "2.5", None, True, "nan"])
def test_a_number_must_be_a_number(given: object) -> None:
    """A whole number is asked for when something else is given."""
    with pytest.raises(BadAnswer, match="minutes_in_this_test"):
        minutes.parse(given)


@pytest.mark.parametrize("given", [-1, 61, "1e9"])
def test_a_number_must_be_in_range(given: object) -> None:
    """The message gives the range."""
    with pytest.raises(BadAnswer, match="from 0 to 60"):
        minutes.parse(given)


def test_a_number_is_read_from_text() -> None:
    """Numbers come as text from the command line and the desk."""
    assert minutes.parse("7") == minutes.parse(7) == 7


def test_a_date_is_read_and_refused_clearly() -> None:
    """Dates are ISO 8601; anything else is refused with an example."""
    assert date_of_play.parse("2024-05-01") == date(2024, 5, 1)
    with pytest.raises(BadAnswer, match="2023-07-01"):
        date_of_play.parse("1 May 2024")


def test_a_fact_is_declared_once() -> None:
    """Declaring a name again is a fault in the book."""
    with pytest.raises(BookError, match="declared twice"):
        yes_no("area_of_ball", "Again?", help="No.", source="none")
