"""An incident that was another one is handed over at the desk: one tap, with the answers carried along."""

from urllib.parse import parse_qs, urlsplit

from tests.desk.asking import TestClient

PLACED = "what=ball_placed_after_two_drops&stays_where_first_touched=moved_later"


def test_a_ruling_page_offers_the_other_incident(client: TestClient) -> None:
    """The page says which incident it rather is, and its one link goes on there with what is known."""
    page = client.get(f"/case?{PLACED}&area_of_ball=general_area&on=2024-05-01")

    assert page.context["sheet"].headline == "This is rather: Wind, water or gravity moved the ball at rest."
    query = parse_qs(urlsplit(page.context["rather_url"]).query)
    assert query["what"] == ["ball_moved_by_natural_forces"]
    assert query["put_in_play_by_hand"] == ["yes"]
    assert query["area_of_ball"] == ["general_area"]
    assert query["on"] == ["2024-05-01"]
    assert page.context["rather_url"].replace("&", "&amp;") in page.text
    assert client.get(page.context["rather_url"]).context["question"].fact == "new_place"


def test_a_story_offers_it_too(client: TestClient) -> None:
    """Nothing is added up while one act is rather another incident; its link keeps the other acts."""
    lifted = (
        "1.what=ball_lifted_by_player&1.area_of_ball=general_area&1.handled_as=lifted&1.handling_allowed=no"
    )
    page = client.get(f"/together?{lifted}&number=2&{PLACED}")
    (part,) = page.context["view"].unruled_parts

    assert page.context["view"].sheet is None
    assert part.rather_url.replace("&", "&amp;") in page.text
    query = parse_qs(urlsplit(part.rather_url).query)
    assert query["what"] == ["ball_moved_by_natural_forces"]
    assert query["1.what"] == ["ball_lifted_by_player"]


def test_the_answer_as_json_names_the_other_incident(client: TestClient) -> None:
    """Programs get its name and the facts to add there."""
    told = client.get(f"/api/rule?{PLACED}").json()["result"]

    assert told["kind"] == "hand_over"
    assert told["rather"]["incident"] == "ball_moved_by_natural_forces"
    assert told["rather"]["facts"] == {"put_in_play_by_hand": "yes"}
