"""Each fault of a map, what is proposed to mend it, and the map afterwards."""

import json
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from shapely.geometry import box, shape

from marram.course import load
from marram.course.fault import Severity
from marram.course.mending.draft import accept, draft_of, read_draft
from marram.demo import COURSE
from marram.errors import InputError
from tests.course.drawing import drawn, square, to_degrees
from tests.course.mending.broken import BREAKS, around, document, features, second_course

BAD = Path(__file__).parents[2] / "bad" / "course"


def broken(*breaks):
    """Return the draft of nine holes broken in some ways: pairs of a break's name and a hole."""
    found = features()
    for name, hole in breaks:
        BREAKS[name](found, hole)
    return draft_of(document(found))


def proposal(draft, check):
    """Return the only proposal for a check."""
    (found,) = [one for one in draft.proposals if one.fault.check == check]
    return found


def mended(draft, most=60):
    """Return a draft with the first choice of the first proposal accepted, again and again."""
    for _ in range(most):
        if not draft.proposals:
            return draft
        draft = accept(draft, draft.proposals[0].choices[0])
    raise AssertionError([(one.mending, str(one.fault)) for one in draft.proposals])


def opened(draft, folder):
    """Return the map of a draft as ``load`` opens it."""
    path = folder / "mended.geojson"
    path.write_text(json.dumps(draft.document))
    return load(path)


def after(draft, ident):
    return next(one for one in draft.document["features"] if one["id"] == ident)


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
def test_accepting_never_brings_an_error_of_another_kind(breaks, picks, tmp_path) -> None:
    """Whichever proposals and choices are accepted in whichever order: no new kind of error, and an end."""
    draft = broken(*((name, hole) for hole, name in breaks.items()))
    for step in range(80):
        if not draft.proposals:
            break
        pick = picks[step] if step < len(picks) else 0
        chosen = draft.proposals[pick % len(draft.proposals)]
        known = {fault.check for fault in draft.errors}
        draft = accept(draft, chosen.choices[pick % len(chosen.choices)])
        new = {fault.check for fault in draft.errors} - known
        assert not new, (chosen.mending, new)
    assert not draft.proposals
    if draft.usable:
        opened(draft, tmp_path)
    else:
        assert draft.unmended() == draft.faults


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
        # A break may not fit what others left; whatever it did until then stays.
        with suppress(KeyError, IndexError, TypeError, ValueError):
            BREAKS[name](found, hole)
    draft = draft_of(document(found))
    for step in range(80):
        if not draft.proposals:
            return
        pick = picks[step] if step < len(picks) else 0
        chosen = draft.proposals[pick % len(draft.proposals)]
        draft = accept(draft, chosen.choices[pick % len(chosen.choices)])
    raise AssertionError([(one.mending, str(one.fault)) for one in draft.proposals])


def test_tee_and_green_wait_for_the_number_of_their_line() -> None:
    """While nothing tells the number of a line of play, its tee is offered to no hole and its green is no practice green."""
    draft = broken(("hole_without_number", 1))
    (only,) = draft.proposals
    assert only.mending == "number_hole"
    assert {(one.check, one.feature) for one in only.also} == {
        ("tee_of_no_hole", "tee 1"),
        ("green_of_no_hole", "green 1"),
    }
    whole = accept(draft, only.choices[0])
    assert whole.faults == ()
    assert whole.course.hole(1).green.ident == "green 1"
    assert [tee.ident for tee in whole.course.hole(1).tees] == ["tee 1"]


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


# Hole numbers


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


# Lines of play


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


# Shapes


def test_a_bow_tie_is_to_be_chosen_and_what_is_dropped_is_said() -> None:
    """Both parts, or one of them: three choices with their sizes, the part dropped named."""
    found = proposal(broken(("invalid_geometry", 4)), "invalid_geometry")
    assert [choice.words for choice in found.choices] == [
        "Keep both parts",
        "Keep only the part of 100 m²",
        "Keep only the part of 100 m²",
    ]
    assert found.choices[1].said == ("100 m² are dropped",)


def test_a_spike_is_dropped_and_said() -> None:
    """An edge that runs out and back encloses nothing there: one choice, the length of the spike said."""
    draft = broken(("invalid_geometry spike", 4))
    (choice,) = proposal(draft, "invalid_geometry").choices
    assert choice.said[0].endswith("m of edge that encloses nothing are dropped")
    green = accept(draft, choice).course.hole(4).green
    assert green.geometry.area == pytest.approx(400, rel=0.001)


def test_what_is_proposed_holds_the_positions_that_were_drawn() -> None:
    """Closing a ring moves no position: the drawn ones stay as they are, to the last decimal."""
    draft = broken(("open_ring", 4))
    before = next(one for one in draft.document["features"] if one["id"] == "green 4")["geometry"][
        "coordinates"
    ][0]
    (choice,) = proposal(draft, "open_ring").choices
    assert after(accept(draft, choice), "green 4")["geometry"]["coordinates"][0] == [*before, before[0]]


def test_an_edge_closed_into_a_crossing_is_untangled_at_once() -> None:
    """A ring that crosses itself once it is closed is proposed closed and untangled."""
    found = features()
    BREAKS["invalid_geometry"](found, 4)
    BREAKS["open_ring"](found, 4)
    draft = draft_of(document(found))
    choice = proposal(draft, "open_ring").choices[0]
    assert choice.words == "Close it, then keep both parts"
    assert accept(draft, choice).usable


# Whole maps


def test_a_map_written_latitude_first_is_proposed_to_be_swapped() -> None:
    """Longitude and latitude swapped throughout: told, and swapped back by one proposal."""
    found = features()
    for number in range(1, 10):
        # 300 m to the east: a par 4; read as latitude it would be 477 m and no par 3 or 4.
        found[f"line {number}"]["geometry"]["coordinates"][1][0] = 3.0 + 300 / 70_197
        found[f"line {number}"]["properties"]["par"] = "4"
        del found[f"green {number}"], found[f"pin {number}"]
    right = draft_of(document(found))
    assert not [fault for fault in right.faults if fault.check == "perhaps_swapped"]

    def swapped(value):
        return value[::-1] if isinstance(value[0], float) else [swapped(one) for one in value]

    for one in found.values():
        one["geometry"]["coordinates"] = swapped(one["geometry"]["coordinates"])
    draft = draft_of(document(found))
    found_again = accept(draft, proposal(draft, "perhaps_swapped").choices[0])
    assert found_again.course.plane.latitude == pytest.approx(51, abs=0.01)


def test_the_demo_course_written_latitude_first_is_told_and_swapped_back() -> None:
    """Four holes of eighteen have no longer the length of their par, and every green is longer from north to south."""
    found = json.loads(COURSE.read_text(encoding="utf-8"))
    assert "perhaps_swapped" not in {fault.check for fault in draft_of(found).faults}

    def swapped(value):
        return value[::-1] if isinstance(value[0], float) else [swapped(one) for one in value]

    for one in found["features"]:
        one["geometry"]["coordinates"] = swapped(one["geometry"]["coordinates"])
        one["properties"].pop("par", None)
    draft = draft_of(found)
    right = accept(draft, proposal(draft, "perhaps_swapped").choices[0])
    assert right.course.plane.latitude == pytest.approx(55, abs=0.1)
    assert "perhaps_swapped" not in {fault.check for fault in right.faults}


@pytest.mark.parametrize(
    "crs", ["EPSG:25831", {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25831"}}]
)
def test_another_coordinate_system_is_computed(crs, tmp_path) -> None:
    """UTM zone 31 named as text or as an object: computed to WGS 84, within 2 cm of the map it was made from."""
    from pyproj import Transformer

    to_utm = Transformer.from_crs("EPSG:4326", "EPSG:25831", always_xy=True)

    def each(value):
        return list(to_utm.transform(*value)) if isinstance(value[0], float) else [each(one) for one in value]

    found = features()
    places = {ident: shape(one["geometry"]) for ident, one in found.items()}
    for one in found.values():
        one["geometry"]["coordinates"] = each(one["geometry"]["coordinates"])
    draft = draft_of(document(found, crs=crs))
    assert [fault.check for fault in draft.errors] == ["not_wgs84"]
    mended_map = accept(draft, proposal(draft, "not_wgs84").choices[0])
    opened(mended_map, tmp_path)
    for one in mended_map.document["features"]:
        assert shape(one["geometry"]).equals_exact(places[one["id"]], 2e-7)


def test_a_crs_that_is_a_link_is_refused_with_its_reason() -> None:
    """A link is not followed; positions that are degrees already can be taken as such, when asked."""
    draft = draft_of(
        document(features(), crs={"type": "link", "properties": {"href": "https://example.org/crs"}})
    )
    assert "is a link (https://example.org/crs), which is not followed" in str(draft.errors[0])
    found = proposal(draft, "not_wgs84")
    assert [choice.words for choice in found.choices] == ["Take its positions as WGS 84 degrees"]
    assert accept(draft, found.choices[0]).usable


def test_a_practice_green_stays_one() -> None:
    """A green of no hole is asked for; told to be a practice green, it is not asked for again."""
    found = features(drawn(square(200, 300, 8), "spare", golf="green"))
    draft = draft_of(document(found))
    choice = next(one for one in proposal(draft, "green_of_no_hole").choices if "practice" in one.words)
    assert accept(draft, choice).faults == ()


# Accepting


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
