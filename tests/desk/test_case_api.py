"""The desk's JSON gives a case, and takes one: what was asked once can be asked again, anywhere."""

import pytest

from tests.desk.asking import TestClient
from tests.desk.places import Ground

IN_BURN = "what=ball_in_penalty_area&found_in_penalty_area=yes&last_stroke_from_penalty_area=no&handed=left"


def test_a_case_taken_back_is_ruled_alike(client: TestClient, ground: Ground) -> None:
    """The answer to a case sent as JSON is the answer to the address it came from."""
    asked = client.get(f"/api/rule?hole=9&ball={ground.in_the_burn()}&{IN_BURN}").json()

    again = client.post("/api/rule", json=asked["case"])

    assert again.status_code == 200
    assert again.json() == asked
    assert asked["case"]["player"]["handed"] == "left"
    assert asked["case"]["incidents"][0]["places"].keys() == {"ball"}
    assert len(asked["case"]["made_with"]["book"]) == 16


def test_a_story_taken_back_is_ruled_alike(client: TestClient) -> None:
    """Several incidents with what lies between them, and what the player took."""
    query = (
        "1.what=ball_moved_by_player&1.area_of_ball=general_area&2.what=unplayable_ball&2.spot_of_ball_known=yes"
        "&intervening_event_1=yes&option_taken_2=lateral"
    )
    asked = client.get(f"/api/situation?{query}").json()

    again = client.post("/api/situation", json={"case": asked["case"]})

    assert again.json() == asked
    assert [one["incident"] for one in asked["case"]["incidents"]] == [
        "ball_moved_by_player",
        "unplayable_ball",
    ]
    assert asked["case"]["incidents"][1]["option"] == "lateral"


@pytest.mark.parametrize(
    ("path", "document", "words"),
    [
        ("/api/rule", {"incidents": [{"incident": "unplayable_ball"}], "holl": 7}, "Did you mean 'hole'"),
        ("/api/rule?number=2", {"incidents": [{"incident": "unplayable_ball"}]}, "no incident 2; it has 1"),
        ("/api/situation", {"incidents": []}, "at least one incident"),
    ],
)
def test_a_bad_case_is_refused_in_the_one_shape(
    client: TestClient, path: str, document: dict, words: str
) -> None:
    """Status 400 and every fault, as everywhere."""
    answer = client.post(path, json=document)

    assert answer.status_code == 400
    assert any(words in fault for fault in answer.json()["error"]["faults"])
