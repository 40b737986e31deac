"""What a map cannot know is said: the reasons to look on the ground."""

import pytest
from shapely.geometry import LineString, Point, box

from marram.course.lies.areas import Area, PenaltyColour, area_at
from marram.course.lies.doubts import DoubtKind
from marram.course.model import Kind
from tests.course.drawing import BOUNDARY, RADIUS, course, feature, hole, square
from tests.course.small_links import (
    BUNKER,
    GREEN,
    HOLES,
    LINKS,
    OTHER_GREEN,
    TEE,
    kinds,
)


def test_unmarked_water_is_a_red_penalty_area_of_unknown_edge() -> None:
    """Definition of penalty area: water on the course, marked or not; red where no colour is shown."""
    pond = feature(Kind.WATER, square(80, 0, 5), "pond")
    ditch = feature(Kind.WATER, LineString([(100, -50), (100, 50)]), "ditch")
    links = course(BOUNDARY, pond, ditch)
    wet = area_at(links, 80, 0, 1)
    assert (wet.area, wet.colour, wet.feature) == (Area.PENALTY_AREA, PenaltyColour.RED, pond)
    assert DoubtKind.UNMARKED_WATER in kinds(wet)
    for x in (86, 98):
        beside = area_at(links, x, 0, 1)
        assert beside.area is Area.GENERAL_AREA
        assert DoubtKind.UNMARKED_WATER in kinds(beside)
    assert DoubtKind.UNMARKED_WATER not in kinds(area_at(links, 92.5, 0, 1))


def test_the_nearest_water_is_named_and_a_mapped_stream_is_no_unmarked_water() -> None:
    """Of two waters the nearer is named; a stream tagged as a penalty area is one, though its edge is not mapped."""
    far = feature(Kind.WATER, LineString([(104, -50), (104, 50)]), "far")
    stream = feature(Kind.WATER, LineString([(97, -50), (97, 50)]), "stream", tags={"golf": "water_hazard"})
    (doubt,) = area_at(course(BOUNDARY, GREEN, far, stream), 100, 0, 1).doubts
    assert doubt.feature is stream
    assert doubt.words == "a penalty area of which the map knows only the middle is 3.0 m away"
    (doubt,) = area_at(course(BOUNDARY, GREEN, far, stream), 102, 0, 1).doubts
    assert doubt.words == "unmarked water is 2.0 m away: a red penalty area, whose edge the map does not know"


def test_a_mown_tee_is_not_the_teeing_area_for_certain() -> None:
    """Definition of teeing area: it depends on the tee-markers; a mapped teeing area of the day decides alone."""
    assert kinds(area_at(LINKS, 0, 0, 1)) == {DoubtKind.TEE_MARKERS}
    today = feature(Kind.TEEING_AREA, box(-2, -3, 0, 3), "today", holes=(1,), tags={"marram": "teeing_area"})
    links = course(BOUNDARY, TEE, today, GREEN, holes=[hole(green=GREEN, tees=[TEE, today])])
    assert area_at(links, -1, 0, 1).certain
    assert area_at(links, -1, 0, 1).area is Area.TEEING_AREA
    assert area_at(links, 3, 0, 1).area is Area.GENERAL_AREA


def test_a_tee_of_no_hole_and_a_green_not_mapped_are_doubts() -> None:
    """Where the map is known to lack something that could decide, the answer says so."""
    idle = feature(Kind.TEEING_AREA, square(60, 0, 3), "idle")
    links = course(BOUNDARY, idle, holes=[hole()])
    assert kinds(area_at(links, 60, 0, 1)) == {DoubtKind.IDLE_TEE, DoubtKind.NO_GREEN}


def test_far_from_the_hole_no_ball_is_on_a_green_that_is_not_mapped() -> None:
    """Within 100 m of where the hole is cut, a green that the map lacks could decide; beyond, the map alone does."""
    links = course(BOUNDARY, holes=[hole()])
    assert kinds(area_at(links, 51, 0, 1)) == {DoubtKind.NO_GREEN}
    assert area_at(links, 49, 0, 1).certain


def test_an_outline_serving_as_boundary_is_a_doubt_near_it() -> None:
    """Out of bounds, or within 10 m of an outline that is no mapped boundary, the boundary is to be looked for."""
    outline = feature(Kind.BOUNDARY, box(-100, -100, 300, 100), tags={"leisure": "golf_course"})
    links = course(outline, GREEN)
    assert DoubtKind.OUTLINE_AS_BOUNDARY in kinds(area_at(links, 310, 0, 1))
    assert DoubtKind.OUTLINE_AS_BOUNDARY in kinds(area_at(links, 291, 0, 1))
    assert area_at(links, 280, 0, 1).certain


def test_a_path_of_unknown_width_is_a_doubt_beside_it() -> None:
    """Near the middle line of a path whose width is not mapped, the eye decides."""
    path = feature(Kind.PATH, LineString([(30, -50), (30, 50)]), "path")
    links = course(BOUNDARY, GREEN, path)
    assert kinds(area_at(links, 32, 0, 1)) == {DoubtKind.PATH_WITHOUT_WIDTH}
    assert area_at(links, 34, 0, 1).certain


@pytest.mark.parametrize(
    ("geometry", "half"),
    [(Point(30, 0), 0.25), (LineString([(30, -50), (30, 50)]), 0.15)],
    ids=["post", "wall"],
)
def test_an_obstruction_of_unknown_size_is_taken_as_usual_and_told(geometry, half) -> None:
    """A post half a metre across, a wall of 30 cm: a ball just touching it is on it, one just beyond is not; both are told."""
    links = course(BOUNDARY, GREEN, feature(Kind.OBSTRUCTION, geometry, "thing"))
    touching, beyond = (area_at(links, 30 + half + RADIUS + more, 0, 1) for more in (-0.001, 0.001))
    assert [one.ident for one in touching.conditions] == ["thing"]
    assert beyond.conditions == ()
    assert DoubtKind.OBSTRUCTION_WITHOUT_SIZE in kinds(touching) & kinds(beyond)
    sized = feature(Kind.OBSTRUCTION, Point(30, 0), "thing", tags={"width": "2"})
    reading = area_at(course(BOUNDARY, GREEN, sized), 30.9, 0, 1)
    assert [one.ident for one in reading.conditions] == ["thing"]
    assert DoubtKind.OBSTRUCTION_WITHOUT_SIZE not in kinds(reading)


def test_a_building_mapped_as_a_point_covers_no_ground() -> None:
    """How large a building is nobody can tell from a point."""
    house = feature(Kind.OBSTRUCTION, Point(30, 0), "house", tags={"building": "yes"})
    assert area_at(course(BOUNDARY, GREEN, house), 30, 0, 1).conditions == ()


def test_a_path_of_unknown_surface_is_a_doubt_on_it() -> None:
    """Definition of obstruction: an artificially surfaced path; on one of unknown surface the eye decides."""
    bare = feature(Kind.PATH, square(30, 0, 2), "bare")
    links = course(BOUNDARY, GREEN, bare)
    assert kinds(area_at(links, 30, 0, 1)) == {DoubtKind.PATH_WITHOUT_SURFACE}
    assert area_at(links, 33, 0, 1).certain


def test_a_place_beyond_the_rectangle_the_map_was_cut_to_is_a_doubt() -> None:
    """Where the file was cut, things may be missing."""
    from dataclasses import replace

    links = replace(LINKS, covered=box(-100, -100, 200, 100))
    assert DoubtKind.NOT_COVERED in kinds(area_at(links, 250, 0, 1))
    assert area_at(links, 190, 0, 1).certain


def test_accuracy_that_could_flip_the_answer_says_so() -> None:
    """An answer that could change within the stated accuracy says how near the edge is; otherwise it is certain."""
    reading = area_at(LINKS, 65 + RADIUS + 0.4, 0, 1, accuracy=0.5)
    assert kinds(reading) == {DoubtKind.WITHIN_ACCURACY}
    assert reading.doubts[0].words == "within 0.40 m of the edge of the bunker: measure on the ground"
    assert reading.edge is BUNKER
    assert area_at(LINKS, 65 + RADIUS + 0.4, 0, 1, accuracy=0.3).certain


def test_accuracy_counts_for_conditions_and_wrong_greens_too() -> None:
    """Whether the ball touches a condition or a wrong green can flip as well."""
    repair = feature(Kind.GROUND_UNDER_REPAIR, square(30, 0, 2), "repair")
    links = course(BOUNDARY, GREEN, OTHER_GREEN, repair, holes=HOLES)
    for x, y, near in ((32.4, 0, repair), (31.7, 0, repair), (139.7, 60, OTHER_GREEN)):
        found = [
            d.feature
            for d in area_at(links, x, y, 1, accuracy=0.5).doubts
            if d.kind is DoubtKind.WITHIN_ACCURACY
        ]
        assert found == [near]
    assert area_at(links, 30, 0, 1, accuracy=0.5).certain


def test_how_far_off_a_line_was_drawn_counts_all_along_it() -> None:
    """What a phone said of the accuracy of a line counts beside its middle as at its ends."""
    fence = feature(Kind.OBSTRUCTION, LineString([(30, -40), (30, 40)]), "fence", tags={"accuracy": "3"})
    links = course(BOUNDARY, GREEN, fence)
    for y in (0, 39):
        assert DoubtKind.WITHIN_ACCURACY in kinds(area_at(links, 32, y, 1))
    assert DoubtKind.WITHIN_ACCURACY not in kinds(area_at(links, 36, 0, 1))
