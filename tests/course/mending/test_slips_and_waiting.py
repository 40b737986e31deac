"""Slips of the pen in numbers, and what waits: each fault is asked where its cause lies, nowhere else."""

from marram.course.mending.draft import accept, draft_of
from marram.course.mending.hole_writing import read_writing
from tests.course.drawing import drawn, square
from tests.course.mending.broken import BREAKS, document, features
from tests.course.mending.proposing import after, proposal


def test_a_number_as_a_table_writes_it_is_read() -> None:
    """4.0, as spreadsheets write a whole number, is hole 4; 4.5 is none."""
    assert read_writing("4.0").numbers == (4,)
    assert read_writing("4.5").numbers == ()


def test_a_number_given_twice_while_another_hole_has_none_is_offered_that_number() -> None:
    """Hole 5 written 6: first the number that fits the ground; nobody has to lose a line of play."""
    found = features()
    found["line 5"]["properties"]["ref"] = "6"
    asked = proposal(draft_of(document(found)), "repeated_hole")
    first, other, *off = [choice.words for choice in asked.choices]
    assert first == "Take line 5 as hole 5, which has no line of play"
    assert other == "Take line 6 as hole 5, which has no line of play"
    assert len(off) == 2
    draft = accept(draft_of(document(found)), asked.choices[0])
    assert draft.usable
    assert sorted(draft.course.holes) == list(range(1, 10))
    assert after(draft, "line 5")["properties"]["ref"] == "5"


def test_a_forward_tee_waits_for_the_number_of_the_line_it_stands_beside() -> None:
    """A tee well up a line whose number cannot be read is not called out of use: it waits with the back tee."""
    found = features(drawn(square(50, 242, 3), "forward tee", golf="tee"))
    BREAKS["hole_without_number"](found, 4)
    (only,) = draft_of(document(found)).proposals
    assert "forward tee" in {one.feature for one in only.waiting}


def test_tees_between_two_lines_of_one_number_wait_for_the_number() -> None:
    """Two lines of hole 4 from different tees: no tee stands "beside holes 4 and 4"; the line kept decides."""
    found = features()
    found["line 4 again"] = {**found["line 4"], "id": "line 4 again"}
    draft = draft_of(document(found))
    assert {one.fault.check for one in draft.proposals} == {"repeated_hole"}
    assert draft.unmended() == ()


def test_without_a_line_of_play_no_tee_is_called_out_of_use() -> None:
    """Before any hole is drawn nothing is said or proposed of the tees and greens: the lines come first."""
    found = {ident: one for ident, one in features().items() if not ident.startswith("line")}
    draft = draft_of(document(found))
    assert "no_holes" in {one.check for one in draft.faults}
    assert not {one.mending for one in draft.proposals} & {"name_tee", "name_green"}
    assert not {one.check for one in draft.faults} & {"tee_of_no_hole", "green_of_no_hole"}
