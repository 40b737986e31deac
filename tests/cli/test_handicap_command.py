"""``marram handicap``: the number first, every step with its Rule, faults in a sentence."""

import json

from tests.cli.running import marram

TEE = ("--slope", "129", "--course-rating", "71.1", "--par", "72")


def test_a_course_handicap_says_how_it_came_about() -> None:
    """27.7 on 129, 71.1 and 72 is 31, before rounding 30.722 (a golf association's worked example)."""
    told = marram("handicap", "course", "27.7", *TEE)

    assert told.code == 0
    assert told.out.splitlines()[0] == "Course Handicap 31 (before rounding 30.7221…)"
    assert "27.7 × 129 ÷ 113 = 31.6221… (Rule 6.1a)" in told.out


def test_a_plus_handicap_is_written_with_its_sign() -> None:
    """A plus player's numbers carry a plus, in words; in JSON they are negative."""
    words = marram("handicap", "course", "+1.4", *TEE)
    data = json.loads(marram("handicap", "course", "+1.4", *TEE, "--json").out)

    assert words.out.startswith("Course Handicap +2 ")
    assert data["course_handicap"] == -2


def test_every_fault_is_told_at_once() -> None:
    """Index, Slope Rating and par are refused together; nothing is printed."""
    told = marram("handicap", "course", "27.75", "--slope", "229", "--course-rating", "71.1", "--par", "7")

    assert (told.code, told.out) == (2, "")
    assert len(told.err.splitlines()) == 3


def test_a_match_by_the_method_of_its_terms() -> None:
    """15.353 from a plus 1.133 at 90 %: 15 strokes of the unrounded difference (an analyst's article)."""
    courses = ("15.353", "+1.133", "--course-handicaps", "--format", "four_ball_match_play", "--match")
    data = json.loads(
        marram("handicap", "playing", *courses, "--method", "unrounded_difference", "--json").out
    )

    assert [one["value"] for one in data["strokes_received"]] == [15, 0]


def test_a_format_that_is_not_known_names_the_known_ones() -> None:
    """A slip of the pen is answered with the choices."""
    told = marram("handicap", "playing", "6", "--course-handicaps", "--format", "greensome")

    assert told.code == 2
    assert "greensomes" in told.err


def test_strokes_are_given_back_from_the_highest_index() -> None:
    """A plus 2 gives back on 18 and 17 (Appendix C)."""
    data = json.loads(
        marram(
            "handicap", "strokes", "+2", "--stroke-indexes", ",".join(map(str, range(1, 19))), "--json"
        ).out
    )

    assert data["strokes"] == [0] * 16 + [-1, -1]
