"""Slides of a briefing: the audience sees the ruling when asked for, the presenter at once, with what comes next."""

from marram.rules.incidents import incident
from marram.words.texts import text as said
from tests.desk.asking import TestClient

ASKED = {"kind": "topics", "topic": "sand_touched", "count": 2}


def test_the_audience_sees_the_ruling_only_when_it_is_asked_for(client: TestClient) -> None:
    """The first look asks the question; the link below it tells the ruling and why."""
    page = client.get("/briefing", params=ASKED)
    assert page.status_code == 200
    ruling = page.context["page"]["ruling"][0]
    assert ruling not in page.text
    told = client.get(page.context["show_url"])
    assert ruling in told.text
    assert said("briefings.why") in told.text


def test_the_presenter_sees_ruling_time_and_what_comes_next(client: TestClient) -> None:
    """The presenter's view of the same page has all three, and keeps them from page to page."""
    page = client.get("/briefing", params={**ASKED, "presenter": 1, "begun": 0})
    assert page.context["page"]["ruling"][0] in page.text
    assert page.context["next_title"] in page.text
    assert page.context["minutes"] > 0
    following = client.get(page.context["next_url"])
    assert following.context["presenter"]
    assert following.context["next_url"] == ""


def test_an_unknown_topic_is_refused(client: TestClient) -> None:
    """What is no topic is told, not a traceback."""
    assert client.get("/briefing", params={"kind": "topics", "topic": "no_such_thing"}).status_code == 400


def test_keys_of_a_remote_control_have_their_links(client: TestClient) -> None:
    """First the ruling, then the next page, and back: each is a link that the script follows."""
    asked = client.get("/briefing", params=ASKED).text
    assert 'data-key="show"' in asked
    assert 'data-key="next"' in asked
    assert "teaching/slides.js" in asked


def test_no_slide_tells_the_room_its_answer_before_it_is_shown(client: TestClient) -> None:
    """ "The ball is lost" stands above the ruling and not above the question; the presenter sees it, and the other titles stay."""
    title = incident("ball_not_found").title
    page = "/briefing?kind=topics&topic=ball_not_found&seed=2&count=8"
    slides = [client.get(f"{page}&number={number}") for number in range(1, 9)]
    hidden = [
        one
        for one in slides
        if one.context["heading"] == said("briefings.situation", number=one.context["number"])
    ]
    assert hidden
    assert all(title not in one.text for one in hidden)
    assert any(
        one.context["heading"] != said("briefings.situation", number=one.context["number"]) for one in slides
    )
    number = hidden[0].context["number"]
    for more in ("&shown=1", "&presenter=1"):
        assert client.get(f"{page}&number={number}{more}").context["heading"] == title
