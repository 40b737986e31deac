"""A ruling explained at the desk: the way as a picture, the principle behind it, what players believe."""

from marram.words.texts import text as said
from tests.desk.asking import TestClient

SAND = {
    "what": "sand_touched",
    "form": "stroke_play",
    "sides": "individual",
    "local": "none",
    "ball_and_bunker": "lies_in_it",
}


def test_a_ruling_leads_to_its_explanation_and_back(client: TestClient) -> None:
    """The way has a picture for each width; its last line is the ruling of the case."""
    ruled = client.get("/case", params={**SAND, "sand_touch": "practice_swing"}).text
    assert 'href="/explained?' in ruled
    told = client.get("/explained", params={**SAND, "sand_touch": "practice_swing"}).text
    assert told.count('<figure class="way') == 2
    assert "Two penalty strokes" in told
    assert said("principles.title") in told
    assert 'href="/case?' in told


def test_what_is_not_ruled_yet_goes_back_to_its_question(client: TestClient) -> None:
    """There is nothing to explain while a question is open, or before it is said what happened."""
    for known in (SAND, {}):
        answer = client.get("/explained", params=known, follow_redirects=False)
        assert answer.status_code == 303
        assert answer.headers["location"].startswith("/case")
