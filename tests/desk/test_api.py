"""The JSON endpoints: versioned, the same Rules and the same map as the pages."""

import pytest

from marram.rules.facts import vocabulary
from marram.rules.incidents import INCIDENTS
from tests.desk.asking import TestClient
from tests.desk.places import Ground


@pytest.mark.parametrize(
    "path", ["/api/incidents", "/api/facts", "/api/rule?what=unplayable_ball", "/api/relief", "/api/course"]
)
def test_every_answer_has_the_version_key(client: TestClient, path: str) -> None:
    """The version stands at the top of each document."""
    assert client.get(path).json()["marram"] == 1


def test_every_incident_and_every_fact_is_listed(client: TestClient) -> None:
    """The lists are those of the Rules as encoded, in number and by name."""
    incidents = client.get("/api/incidents").json()["incidents"]
    facts = client.get("/api/facts").json()["facts"]

    assert [one["name"] for one in incidents] == [one.name for one in INCIDENTS]
    assert {one["name"] for one in facts} == vocabulary().keys()


def test_the_area_of_a_place(client: TestClient, ground: Ground) -> None:
    """A place in the burn is in a red penalty area; the facts are ready to be sent back."""
    answer = client.get(f"/api/area?hole=9&ball={ground.in_the_burn()}").json()

    assert answer["area"] == "penalty_area"
    assert answer["facts"]["penalty_area_colour"] == "red"


def test_a_place_on_an_edge_is_in_doubt_and_its_area_no_fact(client: TestClient, ground: Ground) -> None:
    """Within the accuracy of a tap the map hands over no area: the official is asked. Every penalty area near it is red."""
    answer = client.get(f"/api/area?hole=9&ball={ground.in_the_burn(0)}").json()

    assert answer["facts"] == {"penalty_area_colour": "red"}
    assert "measure on the ground" in " ".join(answer["doubts"])


def test_out_of_bounds_inside_the_course(client: TestClient, ground: Ground) -> None:
    """The practice ground is out of bounds although it lies inside the outline."""
    answer = client.get(f"/api/area?hole=1&ball={ground.in_feature('Practice ground')}").json()

    assert answer["area"] == "out_of_bounds"
    assert answer["facts"] == {"all_of_ball_out_of_bounds": "yes"}


def test_a_ruling_tells_what_it_rests_on(client: TestClient, ground: Ground) -> None:
    """The answer holds the conditions, the facts known, which of them came from the map, and the ruling."""
    answer = client.get(
        f"/api/rule?hole=9&ball={ground.in_the_burn()}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    ).json()

    assert answer["conditions"]["edition"] == 2023
    assert answer["known"]["found_in_penalty_area"] == "yes"
    assert "penalty_area_colour" in answer["from_map"]
    assert answer["result"]["kind"] == "ruling"
    assert [one["kind"] for one in answer["result"]["options"]] == [
        "stroke_and_distance",
        "back_on_the_line",
        "lateral",
    ]


def test_the_course_is_drawn_ground_first(client: TestClient) -> None:
    """The boundary comes first, marked ground after what it lies on, so that nothing hides it."""
    kinds = [one["properties"]["kind"] for one in client.get("/api/course").json()["features"]]

    assert kinds[0] == "boundary"
    assert kinds.index("fairway") < kinds.index("putting_green") < kinds.index("ground_under_repair")
    assert kinds.count("line_of_play") == 18


def test_the_course_is_sent_once(client: TestClient) -> None:
    """A phone that has the drawing gets no second copy (RFC 9110, section 13.1.2)."""
    first = client.get("/api/course")
    second = client.get("/api/course", headers={"if-none-match": first.headers["etag"]})

    assert first.headers["content-type"] == "application/geo+json"
    assert second.status_code == 304
    assert second.content == b""
