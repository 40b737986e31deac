"""Hole numbers as people write them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from marram.course.mending.hole_writing import MOST, HoleWriting, read_writing

ONE = {
    "7": "",
    "07": "",
    "7.": "",
    "\uff17": "",
    "⑦": "",
    "#7": "",
    "No. 7": "",
    "Nr 7": "",
    "Hole 7": "",
    "hole #7": "",
    "H7": "",
    "7th": "",
    "7th hole": "",
    "Hole 7, par 4": "",
    "7 of 18": "",
    "Trou 7": "",
    "7 - #2": "#2",
    "7 \N{EN DASH} #2": "#2",
    "7W": "W",
    "7A": "A",
    "W7": "W",
    "7 (East)": "East",
    "East 7": "East",
    "Old Course 7": "Old Course",
}


@pytest.mark.parametrize(("text", "course"), ONE.items())
def test_one_hole_is_read_with_the_course_written_beside_it(text, course) -> None:
    """Hole 7, however it is written; what else stands there names the course, or nothing."""
    assert read_writing(text) == HoleWriting((7,), course)


@pytest.mark.parametrize("text", ["", "  ", "0", "00", "101", "99", "abc", "-3", "3-", "1.5", "1 - 2 - 3"])
def test_what_is_no_hole_stays_unread(text) -> None:
    """Nothing is made of a text that names no hole."""
    assert read_writing(text) == HoleWriting()


@pytest.mark.parametrize("text", ["1;10", "1, 10", "1/10", "1 & 10", "1+10"])
def test_two_holes_are_two(text) -> None:
    """One line played twice names both holes."""
    assert read_writing(text) == HoleWriting((1, 10))


def test_a_range_may_be_a_span_or_two_holes() -> None:
    """1-9 may mean all nine, or the first and the ninth: both are kept open."""
    assert read_writing("1-9") == HoleWriting((1, 9), span=True)


@given(
    number=st.integers(1, MOST),
    before=st.sampled_from(["", "Hole ", "h", "0", "No.", "# "]),
    after=st.sampled_from(["", " ", ".", " - #3"]),
)
def test_any_number_is_read_whatever_stands_around_it(number, before, after) -> None:
    """The number read is the number written."""
    assert read_writing(f"{before}{number}{after}").numbers == (number,)


@given(st.text(max_size=12))
def test_any_text_gives_holes_that_exist_or_none(text) -> None:
    """Whatever is written, what is read are hole numbers, each once."""
    numbers = read_writing(text).numbers
    assert all(1 <= number <= MOST for number in numbers)
    assert len(set(numbers)) == len(numbers)
