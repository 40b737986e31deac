"""The previous stroke is offered from the tee: one tap, then the option is drawn there."""

import re

from shapely import Point

from marram.course.model import Course, Kind
from marram.services.cases.from_tee import tee_of
from tests.desk.asking import TestClient

LOST = "/case?what=unplayable_ball&hole=7&ball=55.0078000,3.9961000&spot_of_ball_known=yes&last_stroke_from_penalty_area=no"


def test_every_hole_is_played_from_a_teeing_area_of_its_own(course: Course) -> None:
    """The place offered lies on a teeing area at the start of the line of play."""
    for hole in course.holes.values():
        found = tee_of(course, hole)
        assert found is not None
        place = Point(course.plane.to_metres(found[1], found[0]))
        assert place.distance(hole.line.interpolate(0)) < 60
        assert any(one.geometry.buffer(0.1).covers(place) for one in course.of(Kind.TEEING_AREA))


def test_one_tap_draws_stroke_and_distance_from_the_tee(client: TestClient) -> None:
    """The link stands beside the button that asks for the place; it gives the place, and the option needs none any more."""
    page = client.get(LOST)
    link = re.search(r'href="([^"]*previous=[^"]*)">It was made from the tee<', page.text)
    assert link is not None
    then = client.get(link[1].replace("&amp;", "&"))
    assert 'data-pick="previous"' not in then.text.partition('class="shown-places')[0]
    assert then.context["options"][0].drawn
