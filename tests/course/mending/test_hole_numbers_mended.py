"""Numbers of holes, courses told apart and lines of play: what is proposed for them, and the map afterwards."""

import json
from pathlib import Path

import pytest

from marram.course.mending.draft import accept, draft_of, read_draft
from tests.course.mending.broken import around, document, features, second_course
from tests.course.mending.proposing import after, broken, mended, opened, proposal

BAD = Path(__file__).parents[2] / "bad" / "course"


def test_a_number_with_its_course_is_taken_as_that_hole_of_that_course() -> None:
    """ "4 - #2" is offered as hole 4 of course #2, and the course's name is kept."""
    draft = broken(("hole_without_number", 4))
    found = proposal(draft, "hole_without_number")
    assert found.choices[0].words == "Take '4 - #2' as hole 4 of course #2"
    tags = after(accept(draft, found.choices[0]), "line 4")["properties"]
    assert (tags["ref"], tags["golf:course:name"]) == ("4", "#2")


def test_two_courses_of_like_numbers_are_asked_for() -> None:
    """Holes 1 to 9 twice, the second with "#2": which course is a question, never the first of like numbers."""
    found = features(*second_course(label="{} - #2"))
    found["boundary"] = around()
    draft = draft_of(document(found))
    asked = proposal(draft, "hole_without_number")
    assert asked.mending == "choose_course"
    assert [one.feature for one in asked.also if one.check == "hole_without_number"] == [
        f"line {number} east" for number in range(2, 10)
    ]
    assert {one.fault.check for one in draft.proposals} == {"hole_without_number"}
    first, second, *nines = [choice.words for choice in asked.choices]
    assert first.startswith("Use 9 holes, 1 to 9")
    assert second.startswith("Use “#2”: 9 holes, 1 to 9")
    assert len(nines) == 2
    other = accept(draft, asked.choices[1])
    assert {hole.line.coords[0][0] > 300 for hole in other.course.holes.values()} == {True}
    both = accept(draft, asked.choices[2])
    assert list(both.course.holes) == list(range(1, 19))


def test_courses_without_names_are_told_apart_by_which_hole_follows_which() -> None:
    """Holes 1 to 9 twice with the same numbers: two chains by nearness, both offered."""
    found = features(*second_course())
    found["boundary"] = around()
    draft = draft_of(document(found))
    asked = proposal(draft, "repeated_hole")
    for choice, east in zip(asked.choices[:2], (False, True), strict=True):
        course = accept(draft, choice).course
        assert list(course.holes) == list(range(1, 10))
        assert {hole.line.coords[0][0] > 300 for hole in course.holes.values()} == {east}


def test_tees_that_name_a_hole_follow_the_line_they_stand_at() -> None:
    """A tee of the other course with ref=4 does not become a tee of this course's hole 4."""
    found = features(*second_course())
    found["boundary"] = around()
    for ident in ("tee 4", "tee 4 east"):
        found[ident]["properties"]["ref"] = "4"
    draft = draft_of(document(found))
    course = accept(draft, proposal(draft, "repeated_hole").choices[1]).course
    assert [tee.ident for tee in course.holes[4].tees] == ["tee 4 east"]


def test_a_par_3_course_beside_says_that_it_is_one() -> None:
    """A course of par-3 holes is offered as such, so that nobody takes it for the main course."""
    found = features(*second_course(par="3"))
    for number in range(1, 10):
        found[f"line {number}"]["properties"]["par"] = "4"
    found["boundary"] = around()
    words = [choice.words for choice in proposal(draft_of(document(found)), "repeated_hole").choices]
    assert ["a par-3 course" in one for one in words[:2]] == [False, True]


def test_outlined_courses_are_chosen_by_name() -> None:
    """Two outlines: each is offered by its name with its holes; the other's golf goes off the map."""
    draft = read_draft(BAD / "two_courses.geojson")
    asked = proposal(draft, "which_course")
    assert [choice.words.split(" (")[0] for choice in asked.choices] == ["Use Upper Links", "Use Lower Links"]
    assert accept(draft, asked.choices[1]).course.name == "Lower Links"


def test_a_hole_played_twice_can_be_both() -> None:
    """ref=4;13 is offered as both holes, as one of them, never silently dropped."""
    found = features()
    found["line 4"]["properties"]["ref"] = "4;13"
    draft = draft_of(document(found))
    words = [choice.words for choice in proposal(draft, "hole_without_number").choices]
    assert words == ["Use it for both holes, 4 and 13", "Take it as hole 4", "Take it as hole 13"]
    both = accept(draft, proposal(draft, "hole_without_number").choices[0])
    assert {4, 13} <= set(both.course.holes)


def test_a_line_without_number_is_offered_what_its_tee_says_else_every_free_number() -> None:
    """The tee with ref=4 tells it; without it the free numbers are offered, those between neighbours first."""
    found = features()
    found["line 4"]["properties"].pop("ref")
    free = [one.words for one in proposal(draft_of(document(found)), "hole_without_number").choices]
    assert free == ["Take it as hole 4", "It is no hole of this course: take it off the map"]
    found["tee 4"]["properties"]["ref"] = "4"
    told = proposal(draft_of(document(found)), "hole_without_number")
    assert [one.words for one in told.choices] == ["Take it as hole 4"]
    assert told.why.startswith("The tee")


def test_two_lines_to_one_green_are_alternatives() -> None:
    """The same hole drawn from two tees: the longer is offered first, the other goes."""
    found = features()
    other = json.loads(json.dumps(found["line 4"]))
    other["id"] = "line 4 ladies"
    other["geometry"]["coordinates"][0][0] += 0.0003
    found[other["id"]] = other
    asked = proposal(draft_of(document(found)), "repeated_hole")
    assert asked.mending == "keep_line"
    assert asked.choices[0].words.startswith("Keep line 4, 150 m")


def test_pieces_are_joined_in_order_and_towards_the_green(tmp_path) -> None:
    """A line of play in two pieces, drawn in the wrong order: one line of the whole length, ending on the green."""
    course = opened(mended(broken(("hole_not_a_line", 4))), tmp_path)
    hole = course.hole(4)
    assert hole.line.length == pytest.approx(150, abs=0.1)
    assert hole.green is not None
    assert hole.green.ident == "green 4"


def test_a_missing_line_is_drawn_from_tee_to_hole() -> None:
    """Tee and green known by their number: the straight line from the tee to the pin is offered."""
    draft = broken(("holes_missing", 4))
    found = proposal(draft, "holes_missing")
    assert found.choices[0].words == "Draw hole 4 from its tee to its green"
    line = accept(draft, found.choices[0]).course.hole(4).line
    assert line.length == pytest.approx(152, abs=0.2)
