"""A place from the phone is known only as well as the phone says: what could change within that is asked."""

import pytest
from shapely.geometry import Point

from marram.course.model import Course
from marram.errors import BadPlace
from marram.relief.place.place_facts import TAP_ACCURACY, place_facts
from tests.desk.asking import TestClient
from tests.desk.places import Ground


def beside_the_burn(course: Course, metres: float) -> tuple[float, float]:
    """A place on the line of the ninth, this far short of the burn's edge (straight out, not along the line)."""
    burn = next(one for one in course.features if one.name == "The Burn").geometry
    line = course.hole(9).line
    along = line.project(Point(line.intersection(burn).coords[0]))
    low, high = along - 4 * metres, along
    for _ in range(60):
        middle = (low + high) / 2
        if burn.distance(line.interpolate(middle)) > metres:
            low = middle
        else:
            high = middle
    place = line.interpolate(low)
    return place.x, place.y


@pytest.mark.parametrize(("metres", "sure"), [(5.0, False), (7.0, True)])
def test_a_fact_that_could_flip_within_the_accuracy_is_not_handed_over(
    client: TestClient, course: Course, ground: Ground, metres: float, sure: bool
) -> None:
    """Known to 6 m and 5 m from the penalty area the map hands over no area; 7 m away it does."""
    place = ground.at(beside_the_burn(course, metres))
    answer = client.get("/api/area", params={"hole": "9", "ball": f"{place};u=6"}).json()

    assert answer["area"] == "general_area"
    assert ("area_of_ball" in answer["facts"]) is sure
    measure = "Within 4.98 m of the edge of the red penalty area: measure on the ground."
    assert (measure in answer["doubts"]) is not sure


def test_a_tap_at_the_same_place_is_sure(client: TestClient, course: Course, ground: Ground) -> None:
    """Without a stated accuracy the place is as good as a tap, and 5 m from an edge leaves no doubt."""
    answer = client.get(
        "/api/area", params={"hole": "9", "ball": ground.at(beside_the_burn(course, 5))}
    ).json()

    assert answer["facts"]["area_of_ball"] == "general_area"
    assert answer["doubts"] == []


def test_the_page_asks_and_says_how_well_the_place_is_known(
    client: TestClient, course: Course, ground: Ground
) -> None:
    """The accuracy stands on the page and stays in the address; the area is asked, not taken from the map."""
    ball = f"{ground.at(beside_the_burn(course, 5))};u=6"
    page = client.get("/ball", params={"hole": "9", "ball": ball})

    assert "From the phone, to about 6 m" in page.text
    assert "measure on the ground" in page.text
    assert ";u=6" in page.context["case"].url("/what")
    asked = client.get(
        "/case", params={"hole": "9", "ball": ball, "what": "ball_moved_by_player", "cause_known": "yes"}
    )
    assert asked.context["question"].fact == "area_of_ball"


def test_showing_the_place_anew_forgets_the_accuracy(client: TestClient, ground: Ground) -> None:
    """A tap after the phone's position is a tap: the address it leads to says nothing of the phone."""
    page = client.get("/ball", params={"hole": "9", "ball": f"{ground.fairway()};u=6"})

    assert ";u=" not in page.context["map_state"]["picks"]["ball"]["url"]


def test_without_an_accuracy_a_place_is_as_good_as_a_tap(course: Course) -> None:
    """``place_facts`` takes the tap's accuracy when none is given, and refuses one that is none."""
    hole, place = course.hole(9), beside_the_burn(course, 0.2)

    assert place_facts(course, hole, place) == place_facts(course, hole, place, accuracy=TAP_ACCURACY)
    assert "area_of_ball" not in place_facts(course, hole, place).facts
    with pytest.raises(BadPlace, match="accuracy"):
        place_facts(course, hole, place, accuracy=-1)
