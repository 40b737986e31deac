"""Relief options on the screen: drawn to scale, or what is still needed; never a crash."""

import html
import re
from concurrent.futures import ThreadPoolExecutor
from threading import Barrier, BrokenBarrierError

import pytest
from shapely.geometry import Point, shape

from marram.course.model import Course
from marram.desk.rulings import drawings, relief_view
from marram.relief import Place, Why
from marram.relief.place.place_words import MISSING, PICKED, missing_words, no_relief_words
from marram.services.ground import relief as relief_service
from marram.words.texts import text as said
from tests.desk.asking import TestClient
from tests.desk.places import Ground

PENALTY_AREA = "what=ball_in_penalty_area&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"


def relief(client: TestClient, query: str) -> dict[str, dict]:
    return {one["kind"]: one for one in client.get(f"/api/relief?{query}").json()["options"]}


def test_without_a_place_the_options_stand_in_words_only(client: TestClient) -> None:
    """The ruling is complete without a map; nothing is drawn."""
    options = relief(client, PENALTY_AREA + "&penalty_area_colour=red")

    assert set(options) == {"stroke_and_distance", "back_on_the_line", "lateral"}
    assert not any(one["drawn"] for one in options.values())


def test_what_is_missing_is_asked_on_the_map(client: TestClient, ground: Ground) -> None:
    """Without a crossing point and the previous spot each option says which place it needs."""
    options = relief(client, f"hole=9&ball={ground.in_the_burn()}&{PENALTY_AREA}")

    assert options["stroke_and_distance"]["needs"] == ["previous"]
    assert options["back_on_the_line"]["needs"] == ["entry"]
    assert options["lateral"]["needs"] == ["entry"]


def test_lateral_relief_is_drawn_to_scale(client: TestClient, course: Course, ground: Ground) -> None:
    """Lateral relief reaches two club-lengths from the crossing point, and no farther (Rule 17.1d(3))."""
    query = f"hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&club=1.1&{PENALTY_AREA}"
    option = relief(client, query)["lateral"]
    area = next(one for one in option["features"] if one["properties"]["role"] == "area")
    latitude, longitude = (float(part) for part in ground.in_the_burn(0).split(","))
    crossing = Point(course.plane.to_metres(longitude, latitude))
    drawn = course.plane.inward(shape(area["geometry"]))

    assert option["drawn"]
    assert drawn.hausdorff_distance(crossing) == pytest.approx(2.2, abs=0.02)
    hole = course.hole(9).location
    assert min(Point(one).distance(hole) for one in drawn.exterior.coords) >= crossing.distance(hole) - 0.02


def test_a_crossing_point_off_the_edge_is_moved_onto_it(client: TestClient, ground: Ground) -> None:
    """A tap is never exact: the place moves to the nearest edge, and the card says how far."""
    query = f"hole=9&ball={ground.in_the_burn()}&entry={ground.fairway(along=290)}&{PENALTY_AREA}"
    option = relief(client, query)["lateral"]

    assert option["drawn"]
    assert any("onto the nearest edge" in message for message in option["messages"])


def test_free_relief_asks_for_the_side_the_player_swings_from(client: TestClient, ground: Ground) -> None:
    """The nearest point of complete relief needs the stance, so handedness is asked; then it is drawn."""
    query = (
        f"hole=10&ball={ground.in_feature('Reseeded fairway')}&what=abnormal_course_condition"
        "&interference=ball&stroke_unreasonable_anyway=no&nearest_point_exists=yes&only_by_unreasonable_choice=no"
    )

    assert relief(client, query)["free"]["needs"] == ["handed"]
    drawn = relief(client, query + "&handed=left")["free"]
    assert drawn["drawn"]
    assert any("usual stance" in message for message in drawn["messages"])


@pytest.mark.parametrize(
    ("known", "every"),
    [
        (PICKED.keys() | {one for one in MISSING if missing_words(one)}, set(Place)),
        ({one for one in Why if no_relief_words(one)}, set(Why)),
    ],
)
def test_every_answer_of_the_relief_layer_has_words(known: set, every: set) -> None:
    """Nothing the layer can say reaches the screen as a bare key."""
    assert every <= set(known)


def test_a_drawing_with_measures_stands_in_the_page(client: TestClient, ground: Ground) -> None:
    """Without JavaScript, and on paper, each drawn option has its own figure and the distances to check."""
    query = f"hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&{PENALTY_AREA}"
    page = client.get(f"/case?{query}").text

    assert page.count("<figure><svg") == 2
    assert "crossed the edge to hole: 253.1 m" in page


def test_a_page_that_a_script_asked_for_brings_the_words_and_asks_for_the_drawings(
    client: TestClient, ground: Ground, monkeypatch: pytest.MonkeyPatch
) -> None:
    """No drawing is made for the words; at the address that the page names stand the very drawings, by their letters."""
    made = []
    monkeypatch.setattr(
        relief_view, "svg", lambda *_, prefix: made.append(prefix) or f"<svg id={prefix}></svg>"
    )
    query = f"hole=9&ball={ground.in_the_burn(0.31)}&entry={ground.in_the_burn(0)}&{PENALTY_AREA}"
    page = client.get(f"/case?{query}", headers={"HX-Request": "true"}).text

    assert "crossed the edge to hole: 253.1 m" in page
    assert made == []
    places = re.findall(r'<figure data-drawing="(.)">', page)
    drawn = client.get(html.unescape(page.partition('data-drawings="')[2].partition('"')[0])).text
    assert re.findall(r'<figure data-drawing="(.)"><svg id=option-(.)>', drawn) == [
        (one, one) for one in places
    ]
    assert len(places) == 2
    assert client.get(f"/case?{query}").text.count("<figure><svg") == 2


def test_drawings_of_a_case_that_still_asks_lead_to_its_question(client: TestClient) -> None:
    """Nothing is ruled yet, so nothing is drawn."""
    for query in ("", "hole=9", "what=ball_in_penalty_area"):
        answer = client.get(f"/drawings?{query}")
        assert (answer.status_code, answer.headers["location"].partition("?")[0]) == (303, "/case")


def test_drawings_are_made_for_one_after_the_other(
    client: TestClient, ground: Ground, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Of two who ask at once the second never comes in while the first is drawn for; both get theirs."""
    both_inside = Barrier(2)
    met = []

    def drawn(*_: object) -> list[object]:
        try:
            met.append(both_inside.wait(0.3))
        except BrokenBarrierError:
            both_inside.reset()
        return []

    monkeypatch.setattr(drawings, "relief_views", drawn)
    address = f"/drawings?hole=9&ball={ground.in_the_burn(0.31)}&entry={ground.in_the_burn(0)}&{PENALTY_AREA}"
    with client, ThreadPoolExecutor(2) as two:  # one event loop for both, as in a desk that is served
        answers = list(two.map(client.get, [address, address]))

    assert [one.status_code for one in answers] == [200, 200]
    assert met == []


def test_a_fault_of_the_drawing_does_not_keep_the_ruling_away(
    client: TestClient, ground: Ground, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whatever goes wrong in drawing, the ruling is shown, and the card says that it was not drawn."""

    def fails(*_: object, **__: object) -> None:
        raise ZeroDivisionError

    monkeypatch.setattr(relief_service, "relief_in_turn", fails)
    page = client.get(
        f"/case?hole=9&ball={ground.in_the_burn(0.47)}&{PENALTY_AREA}"
    )  # drawn by no other test

    assert page.status_code == 200
    assert page.context["sheet"].kind == "ruling"
    assert all("could not draw" in one.messages[0] for one in page.context["options"])


def test_a_ball_out_of_bounds_is_measured_from_where_it_crossed_the_boundary(
    client: TestClient, course: Course, ground: Ground
) -> None:
    """E-5: for a ball out of bounds the reference is where it last crossed the boundary, never its spot beyond."""
    query = (
        f"hole=1&ball={ground.in_feature('Practice ground')}&what=alternative_to_stroke_and_distance"
        "&certain_in_penalty_area=no&provisional_state=not_played&alternative_ball_dropped=no"
    )
    assert relief(client, query)["extended"]["needs"] == ["boundary"]

    practice = next(one for one in course.features if one.name == "Practice ground").geometry
    x, y = practice.boundary.interpolate(0.7, normalized=True).coords[0]
    option = relief(client, f"{query}&boundary={ground.at((x, y))}")["extended"]
    crossed = next(one for one in option["features"] if one["properties"]["role"] == "boundary_point")

    assert option["drawn"]
    assert course.plane.inward(shape(crossed["geometry"])).distance(Point(x, y)) < 0.05


def test_the_condition_relief_is_taken_from_is_said(client: TestClient, ground: Ground) -> None:
    """The card names the condition the drawing clears."""
    query = (
        f"hole=10&ball={ground.in_feature('Reseeded fairway')}&what=abnormal_course_condition&handed=right"
    )
    answers = "&stroke_unreasonable_anyway=no&nearest_point_exists=yes&only_by_unreasonable_choice=no"
    messages = relief(client, query + answers)["free"]["messages"]

    assert messages[0] == said("rulings.note.relief_from", condition="Reseeded fairway (ground under repair)")


def test_the_mark_of_a_moved_place_stands_where_it_is_taken_to_be(
    client: TestClient, course: Course, ground: Ground
) -> None:
    """The X of a crossing point tapped beside the edge stands on the edge; the page keeps where it was tapped, and how far off."""
    tapped = ground.fairway(along=290)
    page = client.get(f"/case?hole=9&ball={ground.in_the_burn()}&entry={tapped}&{PENALTY_AREA}")
    (mark,) = [one for one in page.context["map_state"]["marks"] if one["role"] == "entry"]
    burn = next(one for one in course.features if one.name == "The Burn").geometry
    there, shown = (
        Point(course.plane.to_metres(longitude, latitude))
        for latitude, longitude in (mark["at"], mark["shown"])
    )

    assert burn.boundary.distance(there) < 0.01
    assert f"{there.distance(shown):.1f} m" in mark["moved"]
    assert shown.distance(burn.boundary) == pytest.approx(there.distance(shown), abs=0.02)
