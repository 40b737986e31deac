"""The page "May I?": what may be done where the ball lies, without JavaScript."""

from marram.words.texts import text as said
from tests.desk.asking import TestClient

ASKED = {"on": "2024-06-01", "form": "stroke_play", "local": "none"}


def test_the_area_is_asked_first(client: TestClient) -> None:
    """Where no ball was shown and no area chosen, each area is one tap and nothing is answered yet."""
    page = client.get("/may", params=ASKED)
    assert page.status_code == 200
    assert page.text.count('name="area_of_ball"') == 5
    assert said("may.act.loose") not in page.text


def test_a_bunker_shows_what_may_be_done_there(client: TestClient) -> None:
    """Rule 12.2: a stone may go, the club must not be grounded; the no says what is allowed instead."""
    page = client.get("/may", params={**ASKED, "area_of_ball": "bunker"})
    assert page.status_code == 200
    lines = {one.act: one for _, own in page.context["groups"] for one in own}
    assert lines["loose"].verdict == "yes"
    assert lines["ground_club"].verdict == "no"
    assert lines["ground_club"].instead
    assert said("may.act.ground_club") in page.text
    assert 'aria-current="true"' in page.text


def test_each_group_is_one_tap_away(client: TestClient) -> None:
    """The page is long on a phone: a link leads to each heading, in order."""
    page = client.get("/may", params={**ASKED, "area_of_ball": "bunker"})
    groups = page.context["groups"]
    assert groups
    places = [
        (page.text.index(f'href="#may-{one}"'), page.text.index(f'id="may-{one}"'))
        for one in range(1, len(groups) + 1)
    ]
    assert sorted(places) == places
    assert all(link < heading for link, heading in places)
