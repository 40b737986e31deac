"""Each fault of a map, what is proposed to mend it, and the map afterwards."""

import json
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from shapely.geometry import box

from marram.course.fault import Severity
from marram.course.mending.draft import accept, draft_of, read_draft
from marram.errors import InputError
from tests.course.drawing import to_degrees
from tests.course.mending.broken import BREAKS, around, document, features, second_course
from tests.course.mending.proposing import broken, mended, opened, proposal

BAD = Path(__file__).parents[2] / "bad" / "course"


def test_a_faultless_map_is_left_alone() -> None:
    """Nothing is proposed where nothing is wrong."""
    draft = draft_of(document(features()))
    assert draft.usable
    assert draft.proposals == ()


@pytest.mark.parametrize("name", BREAKS)
def test_each_fault_has_a_proposal_and_is_gone_once_accepted(name, tmp_path) -> None:
    """One kind of fault each: proposed with a reason, mended by its first choice, and the map opens."""
    draft = broken((name, 4))
    check = name.split()[0]
    found = next(one for one in draft.proposals if one.fault.check == check)
    assert found.why.endswith((".", "?"))
    assert found.choices
    whole = mended(draft)
    assert check not in {fault.check for fault in whole.faults}
    assert list(opened(whole, tmp_path).holes) == list(range(1, 10))


def test_all_faults_at_once_are_mended_together(tmp_path) -> None:
    """Many faults on different holes: all are told at once, and all mended."""
    breaks = [
        ("hole_backwards", 1),
        ("open_ring", 2),
        ("invalid_geometry", 3),
        ("bad_position", 4),
        ("no_geometry", 5),
        ("hole_not_a_line", 6),
        ("misplaced", 7),
        ("unknown_tag", 8),
    ]
    draft = broken(*breaks)
    assert {name for name, _ in breaks} <= {fault.check for fault in draft.errors}
    assert list(opened(mended(draft), tmp_path).holes) == list(range(1, 10))


@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    breaks=st.dictionaries(st.integers(1, 9), st.sampled_from(sorted(BREAKS)), min_size=1, max_size=4),
    picks=st.lists(st.integers(0, 5), min_size=0, max_size=12),
)
@example(
    breaks={1: "doubled_position", 5: "invalid_geometry"}, picks=[1]
)  # its middle is where its parts meet
@example(breaks={1: "all_out_of_bounds", 2: "area_outside"}, picks=[])  # outside a boundary not read yet
def test_accepting_never_brings_an_error_of_another_kind(breaks, picks, tmp_path) -> None:
    """Whichever proposals and choices are accepted in whichever order: no error that was not made, and an end.

    An error that another one hid may be seen once that is mended: what lies outside the boundary, once it is one.
    """
    draft = broken(*((name, hole) for hole, name in breaks.items()))
    made = {name.split()[0] for name in breaks.values()}
    for step in range(80):
        if not draft.proposals:
            break
        pick = picks[step] if step < len(picks) else 0
        chosen = draft.proposals[pick % len(draft.proposals)]
        known = {fault.check for fault in draft.errors}
        draft = accept(draft, chosen.choices[pick % len(chosen.choices)])
        new = {fault.check for fault in draft.errors} - known - made
        assert not new, (chosen.mending, new)
    assert not draft.proposals
    if draft.usable:
        opened(draft, tmp_path)
    else:
        assert draft.unmended() == draft.faults


NO_LONGER_FITS = (AttributeError, KeyError, IndexError, TypeError, ValueError)
"""A break may not fit what others left of the map; whatever it did until then stays."""


@settings(max_examples=25, deadline=None)
@given(
    breaks=st.lists(st.tuples(st.sampled_from(sorted(BREAKS)), st.integers(1, 9)), min_size=1, max_size=5),
    picks=st.lists(st.integers(0, 5), min_size=0, max_size=40),
)
@example(breaks=[("bad_position", 4), ("hole_without_number", 1)], picks=[2] * 40)
@example(breaks=[("hole_not_a_line", 1), ("hole_without_number", 1)], picks=[1] * 40)
def test_accepting_any_sequence_of_proposals_ends(breaks, picks) -> None:
    """Features broken in several ways at once, any proposal and any choice each time: the list is empty in the end."""
    found = features()
    for name, hole in breaks:
        with suppress(*NO_LONGER_FITS):
            BREAKS[name](found, hole)
    draft = draft_of(document(found))
    for step in range(80):
        if not draft.proposals:
            return
        pick = picks[step] if step < len(picks) else 0
        chosen = draft.proposals[pick % len(draft.proposals)]
        draft = accept(draft, chosen.choices[pick % len(chosen.choices)])
    raise AssertionError([(one.mending, str(one.fault)) for one in draft.proposals])


@settings(max_examples=60, deadline=None)
@given(
    breaks=st.lists(st.tuples(st.sampled_from(sorted(BREAKS)), st.integers(1, 9)), min_size=1, max_size=4),
)
@example(breaks=[("hole_backwards", 4)])
@example(breaks=[("hole_backwards", 6), ("invalid_geometry", 6)])
@example(breaks=[("hole_not_a_line", 4)])
@example(breaks=[("repeated_hole", 1), ("two_pins", 1)])
@example(breaks=[("open_ring line", 1), ("open_ring line", 1), ("bad_position", 1)])
@example(breaks=[("holes_missing", 1), ("open_ring", 1)])
@example(breaks=[("misplaced", 1), ("open_ring", 1)])
def test_nothing_is_proposed_only_where_nothing_will_be(breaks) -> None:
    """What is said to have no proposal is still there, and without one, when all proposals were accepted."""
    found = features()
    for name, hole in breaks:
        with suppress(*NO_LONGER_FITS):
            BREAKS[name](found, hole)
    draft = draft_of(document(found))
    said = {(fault.check, fault.feature, fault.hole) for fault in draft.unmended()}
    left = {(fault.check, fault.feature, fault.hole) for fault in mended(draft).faults}
    assert said <= left


def test_tee_and_green_wait_for_the_number_of_their_line() -> None:
    """While nothing tells the number of a line of play, its tee is offered to no hole and its green is no practice green."""
    draft = broken(("hole_without_number", 1))
    (only,) = draft.proposals
    assert only.mending == "number_hole"
    assert {(one.check, one.feature) for one in only.waiting} == {
        ("tee_of_no_hole", "tee 1"),
        ("green_of_no_hole", "green 1"),
        ("holes_missing", ""),
    }
    whole = accept(draft, only.choices[0])
    assert whole.faults == ()
    assert whole.course.hole(1).green.ident == "green 1"
    assert [tee.ident for tee in whole.course.hole(1).tees] == ["tee 1"]


def test_a_missing_line_waits_for_the_green_at_its_end() -> None:
    """Its green cannot be read yet: its tee is offered to no other hole, and then the line is drawn between both."""
    draft = broken(("holes_missing", 1), ("open_ring", 1))
    (only,) = draft.proposals
    assert only.mending == "close_ring"
    assert {one.check for one in only.waiting} == {"holes_missing", "tee_of_no_hole"}
    closed = accept(draft, only.choices[0])
    assert [one.mending for one in closed.proposals] == ["draw_line"]
    assert mended(closed).faults == ()


def test_what_follows_from_a_line_that_runs_backwards_waits_for_it() -> None:
    """Tee and green named by number, the line turned: the tee is offered to no other hole, the green loses nothing."""
    found = features()
    BREAKS["hole_backwards"](found, 4)
    for kind in ("tee", "green"):
        found[f"{kind} 4"]["properties"]["ref"] = "4"
    draft = draft_of(document(found))
    (only,) = draft.proposals
    assert only.mending == "turn_line"
    assert accept(draft, only.choices[0]).faults == ()


def test_tee_and_green_of_a_line_that_runs_backwards_wait_for_it() -> None:
    """Neither names its hole: no other hole is offered the tee, and nobody is asked whether the green is for practice."""
    draft = broken(("hole_backwards", 4))
    (only,) = draft.proposals
    assert only.mending == "turn_line"
    assert {one.check for one in only.waiting} == {"tee_of_no_hole", "green_of_no_hole", "hole_without_tee"}
    assert draft.unmended() == ()
    assert accept(draft, only.choices[0]).faults == ()


def test_what_is_said_of_holes_waits_while_the_course_is_not_chosen() -> None:
    """Two courses of like numbers, a line of each turned: only the course is asked for, as grave as what waits for it."""
    found = features(*second_course(label="{} - #2"))
    found["boundary"] = around()
    for line in ("line 4", "line 6 east"):
        found[line]["geometry"]["coordinates"].reverse()
    draft = draft_of(document(found))
    (only,) = draft.proposals
    assert (only.mending, only.severity) == ("choose_course", Severity.ERROR)
    assert draft.unmended() == ()
    assert "hole_backwards" in {one.check for one in only.waiting}
    chosen = accept(draft, only.choices[0])
    graver = [one for one in chosen.proposals if one.severity is Severity.ERROR]
    assert [(one.mending, one.fault.hole) for one in graver] == [("turn_line", 4)]


def test_a_line_that_ends_on_a_green_at_fault_waits_for_the_green() -> None:
    """The edge of the green crosses itself: the line is not led anywhere before that is mended."""
    draft = broken(("invalid_geometry", 4))
    assert {one.mending for one in draft.proposals} == {"untangle"}


def test_where_one_of_two_courses_ends_the_rest_may_be_eithers() -> None:
    """Six par-3 holes beside nine: the nine are offered whole, though the seventh tee is nearer to the sixth short hole."""
    short = [one for one in second_course(shift=-400.0) if int(one["id"].split()[1]) <= 6]
    found = features(*short)
    found["boundary"] = {**around(), "geometry": to_degrees(box(-600, -60, 400, 660))}
    draft = draft_of(document(found))
    choices = proposal(draft, "repeated_hole").choices
    kept = [
        {
            ident
            for ident in (f"line {n}" for n in range(1, 10))
            if ident not in {e.ident for e in choice.edits if e.action == "remove"}
        }
        for choice in choices
    ]
    assert {f"line {n}" for n in range(1, 10)} in kept


def test_a_choice_that_changes_nothing_is_not_offered() -> None:
    """A tee far from the hole it names is not offered that hole once more."""
    found = features()
    found["tee 9"]["properties"]["ref"] = "1"
    words = [choice.words for choice in proposal(draft_of(document(found)), "tee_far_off").choices]
    assert words
    assert not any(one.startswith("It is a tee of hole 1,") for one in words)


@pytest.mark.parametrize("path", sorted(BAD.glob("*")), ids=lambda path: path.name)
def test_every_bad_map_is_mended_or_says_what_is_left(path, tmp_path) -> None:
    """Of each broken map of the collection: it opens in the end, or its errors have no proposal."""
    draft = read_draft(path)
    whole = mended(draft)
    if whole.usable:
        opened(whole, tmp_path)
    else:
        assert whole.errors
        assert not whole.proposals


def test_a_file_that_is_no_map_gives_a_draft_with_its_fault() -> None:
    """Reading a draft raises nothing, not even for a file that is none."""
    draft = read_draft(BAD / "not_json.geojson")
    assert [fault.check for fault in draft.errors] == ["not_json"]
    assert draft.proposals == ()
    assert [fault.check for fault in read_draft(BAD / "missing.geojson").errors] == ["unreadable"]


def test_nothing_is_changed_by_reading(tmp_path) -> None:
    """The file stays as it is, to the byte."""
    path = tmp_path / "map.geojson"
    found = features()
    BREAKS["open_ring"](found, 3)
    path.write_text(json.dumps(document(found)))
    before = path.read_bytes()
    draft = read_draft(path)
    accept(draft, draft.proposals[0].choices[0])
    assert path.read_bytes() == before


def test_a_choice_is_found_by_its_mark_and_only_as_it_was_shown() -> None:
    """The mark of a choice names just its edits; on a changed map it is refused."""
    draft = broken(("open_ring", 4))
    found, choice = draft.choice(draft.proposals[0].choices[0].mark)
    assert found == draft.proposals[0]
    with pytest.raises(InputError, match="no longer fits"):
        accept(draft, choice).choice(choice.mark)


def test_proposals_have_names_of_their_own() -> None:
    """No two proposals share their key, so that leaving one leaves no other."""
    draft = broken(
        ("open_ring", 2),
        ("open_ring", 3),
        ("holes_missing", 4),
        ("holes_missing", 5),
        ("no_par", 6),
        ("no_par", 7),
    )
    keys = [one.key for one in draft.proposals]
    assert len(set(keys)) == len(keys)


def test_two_choices_for_one_feature_are_refused() -> None:
    """What changes the same feature twice is accepted one by one."""
    draft = broken(("invalid_geometry", 4))
    first, second, *_ = proposal(draft, "invalid_geometry").choices
    with pytest.raises(InputError, match="green 4"):
        accept(draft, first, second)


def test_errors_come_before_what_can_wait() -> None:
    """The list begins with what keeps the map from being used."""
    draft = broken(("no_par", 2), ("open_ring", 4))
    assert [one.fault.severity for one in draft.proposals] == sorted(
        (one.fault.severity for one in draft.proposals), key=list(Severity).index
    )
