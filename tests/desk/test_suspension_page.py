"""Play is stopped, balls are noted, play goes on: through the page, each once, in words for every group."""

import re
from collections.abc import Iterator

import pytest

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere
from marram.records.entry import new_ident
from marram.services.day.suspension import on_now
from marram.words.texts import text
from tests.clubs import club
from tests.desk.asking import TestClient


@pytest.fixture
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[KeptHere]:
    folder = tmp_path_factory.mktemp("records")
    with club(folder) as found:
        yield found


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def test_one_tap_stops_play_for_every_group(kept: KeptHere, desk: TestClient) -> None:
    """Two taps make one entry; the page says what each of the groups must do, and defers to those who know the weather."""
    sent = {"tapped": new_ident(), "how": "immediate", "cause": "lightning"}
    assert {desk.post("/suspension", data=sent).status_code for _ in range(2)} == {303}
    page = desk.get("/suspension").text

    assert len(kept.log.entries(kept.event_id, kind="play_suspended")) == 1
    told = page.split("Stop at once. No stroke")[1].split('class="caution"')[0]
    assert told.count("<li>Group") == len(kept.groups_on(kept.event.played_on))  # type: ignore[arg-type]
    for words in ("national weather service", "the Committee decides", "Lightning", "5.7a"):
        assert words in page, words


def test_a_reason_that_nobody_chose_is_not_lightning(desk: TestClient) -> None:
    """The page chooses none by itself: play stopped with one tap, for no danger, is not said to be stopped for lightning."""
    chosen = re.search(r'<select id="cause"[^>]*><option value="([^"]*)"', desk.get("/suspension").text)
    assert chosen is not None
    desk.post("/suspension", data={"tapped": new_ident(), "how": "normal", "cause": chosen[1]})

    lead = desk.get("/suspension").text.split('class="lead"')[1].split("</p>")[0]
    assert "Normal suspension" in lead
    assert "Lightning" not in lead


def test_what_was_done_wrong_leads_into_the_ruling(desk: TestClient) -> None:
    """The incident is chosen and the kind of suspension filled in; the next question is asked."""
    desk.post("/suspension", data={"tapped": new_ident(), "how": "normal", "cause": "darkness"})
    link = re.search(r'href="(/case\?what=played_after_suspension[^"]*)"', desk.get("/suspension").text)
    assert link is not None
    page = desk.get(link[1].replace("&amp;", "&")).text

    assert 'class="answers"' in page
    assert "Normal (darkness, course unplayable)" in page


def test_a_ball_is_noted_and_play_goes_on(kept: KeptHere, desk: TestClient) -> None:
    """The note is sealed beside the entry; the times are those of the club's clock; bad input ends in a sentence."""
    desk.post("/suspension", data={"tapped": new_ident(), "how": "normal", "cause": "water"})
    stopped = on_now(kept.log, kept.event_id)
    assert stopped is not None
    player = kept.groups_on(kept.event.played_on)[0].players[0]  # type: ignore[arg-type]
    note = {"suspension": stopped.entry.id, "player": player.id, "ball": "left", "hole": "3"}
    sent = {**note, "tapped": new_ident(), "note": "by the gorse", "place": "55.001,3.991", "strokes": "2"}
    for wrong in ({"place": "nowhere"}, {"strokes": "x"}, {"hole": ""}, {"player": "x"}):
        refused = desk.post("/suspension/position", data={**sent, **wrong, "tapped": new_ident()})
        assert refused.status_code == 400, wrong
    assert desk.post("/suspension/position", data=sent).status_code == 303
    (entry,) = kept.log.entries(kept.event_id, kind="position_kept")
    assert entry.told["place"] == {"latitude": 55.001, "longitude": 3.991}
    assert "gorse" not in entry.body
    page = desk.get("/suspension").text
    assert "by the gorse" in page
    assert "on hole 3" in page

    goes_on = {"suspension": stopped.entry.id, "tapped": new_ident()}
    assert desk.post("/suspension/resume", data={**goes_on, "at": "noon"}).status_code == 400
    assert desk.post("/suspension/resume", data={**goes_on, "at": "23:59"}).status_code == 303
    assert on_now(kept.log, kept.event_id) is None
    page = desk.get("/suspension").text
    assert "Play goes on at 23:59." in page
    for still in (
        "by the gorse",
        text("log.hole", hole=3),
        f"{text('suspension.strokes')}: 2",
        f"/log/{entry.number}",
    ):
        assert still in page, still  # it is after play has gone on that a ball is put back where it was


def test_the_way_out_stands_beside_each_group(kept: KeptHere, desk: TestClient) -> None:
    """From a hole somebody is known to be on: to the nearest point, with the distance; no small shelter for lightning."""
    group = kept.groups_on(kept.event.played_on)[0]  # type: ignore[arg-type]
    for cause in ("lightning", "water"):
        stop = {
            "tapped": new_ident(),
            "how": "immediate" if cause == "lightning" else "normal",
            "cause": cause,
        }
        desk.post("/suspension", data=stop)
        stopped = on_now(kept.log, kept.event_id)
        assert stopped is not None
        for one in group.players:
            note = {"suspension": stopped.entry.id, "player": one.id, "ball": "left", "hole": "15"}
            desk.post("/suspension/position", data={**note, "tapped": new_ident()})
        page = desk.get("/suspension").text
        ways = re.findall(r'class="way-out">([^<]*)<', page)
        if cause == "lightning":
            assert ways == [
                "From the tee to Club house (building): 404 m",
                "From the green to Mere gate (vehicles): 262 m",
            ]
            assert "not from lightning" in page
        else:
            assert ways == ["To Shelter in the dunes (shelter): 384 m from the tee, 33 m from the green"]
    assert "The map holds no evacuation points" not in page


def test_two_who_say_at_once_when_play_goes_on(kept: KeptHere, desk: TestClient) -> None:
    """Both times stand, every page says so, and either of the two, having seen both, settles it."""
    desk.post("/suspension", data={"tapped": new_ident(), "how": "normal", "cause": "water"})
    stopped = on_now(kept.log, kept.event_id)
    assert stopped is not None
    seen = {"suspension": stopped.entry.id}
    for at in ("23:58", "23:59"):
        assert (
            desk.post("/suspension/resume", data={**seen, "tapped": new_ident(), "at": at}).status_code == 303
        )
    page = desk.get("/suspension").text
    assert text("suspension.resumed.two") in page
    assert text("day.play.resumed.two", time="23:59") in desk.get("/log").text
    settles = re.findall(r'name="settles" value="([^"]+)"', page)
    assert len(settles) == 2

    again = {**seen, "tapped": new_ident(), "at": "23:59", "ready": "23:50", "settles": settles}
    assert desk.post("/suspension/resume", data=again).status_code == 303
    page = desk.get("/suspension").text
    assert text("suspension.resumed.two") not in page
    assert page.count(text("suspension.resumed", time="23:59")) == 1
    told = text("day.play.resumed_in_position", time="23:59", ready="23:50")
    assert f">{told}<" in desk.get("/log").text
    assert text("suspension.resumed.other") in page
    late = desk.post("/suspension/resume", data={**again, "tapped": new_ident()})
    assert late.status_code == 400
    assert "Somebody said another time meanwhile" in late.text
