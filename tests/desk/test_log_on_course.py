"""A ruling begun for a player, interrupted, found again, handed over, asked about, shown and recorded: all through the pages."""

import re
from collections.abc import Iterator
from io import BytesIO
from urllib.parse import urlencode

import pytest
from PIL import Image

from marram.course import load
from marram.demo import COURSE
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere
from marram.records.open_cases import open_cases
from marram.records.starting_sheet import Known
from marram.services.log.opinions import opinions
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.places import Ground
from tests.desk.test_log import form

IN_THE_BURN = (
    "on=2025-06-21&hole=9&what=ball_in_penalty_area&found_in_penalty_area=yes&penalty_area_colour=red"
)
NOT_FROM_INSIDE = "&last_stroke_from_penalty_area=no"


@pytest.fixture
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[KeptHere]:
    folder = tmp_path_factory.mktemp("records")
    with club(folder) as found:
        yield found


def device(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def player(kept: KeptHere, group: int = 1) -> tuple[str, Known]:
    """A player of a group as the page gives one, and who it is."""
    found = kept.groups_on(kept.event.played_on)[group - 1]  # type: ignore[arg-type]
    return f"{found.id}.{found.players[0].id}", found.players[0]


def begun_by(desk: TestClient, kept: KeptHere, official: int = 1, group: int = 1) -> str:
    """Begin a ruling with one tap; return ``begun=…`` of its address."""
    page = desk.get("/begin").text
    tapped = re.search(r'name="tapped" value="([^"]*)"', page)
    assert tapped is not None
    sent = {"tapped": tapped[1], "player": player(kept, group)[0], "by": kept.officials()[official].id}
    first, second = (desk.post("/begin", data=sent).headers["location"] for _ in range(2))
    assert first == second
    found = re.search(r"begun=[0-9a-f-]+", first)
    assert found is not None
    return found[0]


def test_one_tap_begins_a_ruling_and_the_last_group_comes_first(kept: KeptHere) -> None:
    """The player stands over every page of the case; two taps begin one; the group is remembered."""
    desk = device(kept)
    begun = begun_by(desk, kept, group=3)
    who = player(kept, 3)[1]

    for page in ("/", f"/ball?hole=9&ball={Ground(load(COURSE)).in_the_burn()}&", f"/case?{IN_THE_BURN}&"):
        assert who.name in desk.get(f"{page}{'' if '?' in page else '?'}{begun}").text.split("so-far")[0], (
            page
        )
    assert len(open_cases(kept.records, kept.event_id)) == 1
    assert desk.get("/begin").text.index("Group 3") < desk.get("/begin").text.index("Group 1")


def test_an_interrupted_ruling_is_found_again_on_another_device(kept: KeptHere) -> None:
    """The page it stood at is listed with the player; what the other device goes on with stands beside it."""
    phone, tablet = device(kept), device(kept)
    begun = begun_by(phone, kept)
    phone.get(f"/case?{IN_THE_BURN}&{begun}")
    listed = tablet.get("/open-cases").text
    link = re.search(r'class="big-button" href="(/case[^"]*)"', listed)

    assert player(kept)[1].name in listed
    assert link is not None
    assert begun in link[1]
    tablet.get(link[1].replace("&amp;", "&") + NOT_FROM_INSIDE)
    assert "Two devices went on" in phone.get("/open-cases").text
    assert "Another device has this case at" in phone.get(f"/case?{IN_THE_BURN}&{begun}").text


def test_recording_ends_the_open_case(kept: KeptHere) -> None:
    """The form knows the player and the official; the entry has the identifier of the case, and nothing stays open."""
    desk = device(kept)
    begun = begun_by(desk, kept)
    address = f"/case?{IN_THE_BURN}{NOT_FROM_INSIDE}&{begun}"
    page = desk.get(address).text
    assert f'value="{player(kept)[1].id}" selected' in page
    sent = {**form(desk, address), "player": player(kept)[1].id, "option": "lateral"}
    where = desk.post("/record", data=sent).headers["location"]
    (entry,) = kept.log.entries(kept.event_id)

    assert entry.id == begun.removeprefix("begun=")
    assert entry.content["case"]["incidents"][0]["option"] == "lateral"
    assert open_cases(kept.records, kept.event_id) == []
    assert where in desk.get(address).text
    assert form(desk, address)["ident"] != entry.id


def picture() -> bytes:
    """A photograph with a place and a device in it."""
    file = BytesIO()
    exif = Image.Exif()
    exif[0x010F], exif[0x8825] = "Camera of somebody", {1: "N", 2: (55.0, 0.0, 0.0)}
    Image.new("RGB", (60, 40), "green").save(file, "JPEG", exif=exif)
    return file.getvalue()


@pytest.mark.parametrize("as_given", [False, True])
def test_a_photograph_loses_its_hidden_data_unless_kept_on_purpose(kept: KeptHere, as_given: bool) -> None:
    """What the desk gives back is the picture, without the camera's notes where nobody asked for them."""
    desk = device(kept)
    sent = {
        **form(desk, f"/case?{IN_THE_BURN}{NOT_FROM_INSIDE}"),
        **({"as_given": "true"} if as_given else {}),
    }
    where = desk.post(
        "/record", data=sent, files={"photographs": ("ball.jpg", picture(), "image/jpeg")}
    ).headers["location"]
    source = re.search(r'<img src="([^"]*photograph[^"]*)"', desk.get(where).text)
    assert source is not None
    answer = desk.get(source[1])

    assert answer.headers["content-type"] == "image/jpeg"
    with Image.open(BytesIO(answer.content)) as found:
        assert found.size == (60, 40)
        assert bool(found.getexif()) is as_given


def test_what_was_given_instead_needs_a_reason(kept: KeptHere) -> None:
    """Another penalty than computed is refused without words, and recorded with them, the reason apart from the entry."""
    desk = device(kept)
    sent = {**form(desk, f"/case?{IN_THE_BURN}{NOT_FROM_INSIDE}"), "instead": "2"}
    assert desk.post("/record", data=sent).status_code == 400
    assert desk.post("/record", data={**sent, "instead": "9", "otherwise": "so"}).status_code == 400
    where = desk.post("/record", data={**sent, "otherwise": "a serious breach"}).headers["location"]
    (entry,) = kept.log.entries(kept.event_id)

    assert entry.content["instead"]["penalty_strokes"] == 2
    assert "a serious breach" not in entry.body
    assert "Two penalty strokes" in desk.get(where).text


def test_the_player_sees_what_to_do_and_the_picture(kept: KeptHere) -> None:
    """The page holds the ruling, the steps and the drawing, and no form; an open question leads back to it."""
    desk = device(kept)
    ground = Ground(load(COURSE))
    case = f"{IN_THE_BURN}&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}"
    page = desk.get(f"/player?{case}{NOT_FROM_INSIDE}").text

    assert "<svg" in page.partition("for-player")[2]
    assert "<form" not in page
    assert desk.get(f"/player?{case}").headers["location"].startswith("/case?")


def ask(desk: TestClient, begun: str, thinks: str) -> str:
    page = desk.get(f"/opinions/ask?{IN_THE_BURN}{NOT_FROM_INSIDE}&{begun}").text
    hidden = dict(re.findall(r'name="(case|tapped)" value="([^"]*)"', page))
    sent = {"case": hidden["case"].replace("&amp;", "&"), "tapped": hidden["tapped"], "note": thinks}
    first, second = (str(desk.post("/opinions/ask", data=sent).headers["location"]) for _ in range(2))
    assert first == second
    return first


def test_a_second_opinion_reaches_the_chief_and_comes_back(kept: KeptHere) -> None:
    """The chief sees case, place, map and words; the answer, with another ruling, stands over the asker's case."""
    phone, laptop = device(kept), device(kept)
    begun = begun_by(phone, kept)
    back = ask(phone, begun, "just inside")
    listed = laptop.get("/opinions").text
    for words in ("just inside", "map version 1", "hole 9", player(kept)[1].name):
        assert words in listed, words
    assert "Second opinion asked" in phone.get(back).text
    link = re.search(r'href="(/case[^"]*)"', listed)
    assert link is not None
    yellow = link[1].replace("&amp;", "&").replace("colour=red", "colour=yellow")
    answering = laptop.get(yellow).text.split('action="/opinions/answer"')[1]
    hidden = {
        name: value.replace("&amp;", "&")
        for name, value in re.findall(r'name="(\w+)" value="([^"]*)"', answering)
    }
    sent = {name: hidden[name] for name in ("asked", "tapped", "agrees", "case")}
    assert laptop.post("/opinions/answer", data={**sent, "note": "it is yellow"}).status_code == 303
    (found,) = opinions(kept.log, kept.event_id)

    assert not found.is_open
    assert found.answers[0].content["case"]["incidents"][0]["facts"]["penalty_area_colour"] == "yellow"
    assert "Second opinion given" in phone.get(back).text
    assert "it is yellow" in phone.get("/opinions").text
    assert "it is yellow" not in found.answers[0].body


def test_the_chief_who_looks_takes_the_case_no_second_way(kept: KeptHere) -> None:
    """A look by whoever decides leaves the case where its official has it; another official who goes on with it does not."""
    phone, laptop, other = device(kept), device(kept), device(kept)
    laptop.cookies.set("official", kept.chiefs()[0].id)
    chiefs = {one.id for one in kept.chiefs()}
    another = next(one.id for one in kept.officials()[2:] if one.id not in chiefs)
    other.cookies.set("official", another)
    back = ask(phone, begun_by(phone, kept, official=1), "so?")
    laptop.get(back)
    looked = [len(one.pages) for one in open_cases(kept.records, kept.event_id)]
    other.get(back.replace("found_in_penalty_area=yes", "found_in_penalty_area=no"))

    assert looked == [1]
    assert [len(one.pages) for one in open_cases(kept.records, kept.event_id)] == [2]


def test_only_the_chief_answers(kept: KeptHere) -> None:
    """A referee is offered no answer and refused one; the chief referee is not; an answer needs words or a ruling."""
    phone = device(kept)
    ask(phone, begun_by(phone, kept, official=1), "so?")
    (found,) = opinions(kept.log, kept.event_id)
    sent = {"asked": found.asked.id, "tapped": found.asked.id[:-4] + "0000", "agrees": "true"}

    assert "/opinions/answer" not in phone.get("/opinions").text
    assert phone.post("/opinions/answer", data=sent).status_code == 403
    chief = device(kept)
    chief.cookies.set("official", kept.chiefs()[0].id)
    assert chief.post("/opinions/answer", data={**sent, "agrees": "false"}).status_code == 400
    assert chief.post("/opinions/answer", data=sent).status_code == 303


def test_a_case_handed_over_is_an_entry_and_in_other_hands(kept: KeptHere) -> None:
    """The log says who gave it to whom; a case that is open no longer cannot be handed over."""
    desk = device(kept)
    case = begun_by(desk, kept).removeprefix("begun=")
    to = kept.officials()[2]
    sent = {"case": case, "to": to.id, "tapped": case[:-4] + "0000", "note": "I must go to the tenth"}
    assert desk.post("/open-cases/hand-over", data=sent).status_code == 303
    (entry,) = kept.log.entries(kept.event_id, kind="handed_over")

    assert entry.content["to"] == to.id
    assert open_cases(kept.records, kept.event_id)[0].by == to.id
    assert desk.post("/open-cases/aside", data={"case": case}).status_code == 303
    refused = desk.post("/open-cases/hand-over", data={**sent, "tapped": case})
    assert refused.status_code == 400
    assert "open no longer" in refused.text
    assert urlencode({"case": case}) not in desk.get("/open-cases").text
