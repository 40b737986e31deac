"""A ruling is recorded with one tap, once, and found again on the pages of the log."""

import re
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image
from sqlalchemy import text

from marram.cli.serving import _demo_in
from marram.course import load
from marram.demo import COURSE, EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.errors import InputError
from marram.records.database import Records, opened
from marram.records.entry import new_ident
from marram.records.making import made
from marram.records.people import erase
from marram.records.photographs import LONGEST
from marram.records.verifying import verified
from marram.services.keeping import start
from marram.services.log.log import again
from tests.cli.running import marram
from tests.clubs import club, club_records
from tests.desk.asking import TestClient
from tests.desk.places import Ground

FACTS = "found_in_penalty_area=yes&last_stroke_from_penalty_area=no&penalty_area_colour=red"
RULING = f"/case?on=2025-06-21&form=stroke_play&local=none&hole=9&what=ball_in_penalty_area&{FACTS}"
HIDDEN = re.compile(r'<input type="hidden" name="(ident|given_at|case)" value="([^"]*)">')


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[KeptHere]:
    folder = tmp_path_factory.mktemp("records")
    with club(folder) as found:
        yield found


@pytest.fixture(scope="module")
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def form(desk: TestClient, address: str = RULING) -> dict[str, str]:
    """What the form on the page of a ruling sends."""
    section = desk.get(address).text.split('<section class="record', 1)[1].split("</section>")[0]
    return {name: value.replace("&amp;", "&") for name, value in HIDDEN.findall(section)}


def test_one_tap_records_the_ruling_with_all_it_rests_on(desk: TestClient, kept: KeptHere) -> None:
    """The entry has the case with every fact, also those of the map, the round of the day, and is ruled alike without a map."""
    at = Ground(load(COURSE)).in_the_burn()
    page = f"/case?on=2025-06-21&form=stroke_play&local=none&hole=9&ball={at}&what=ball_in_penalty_area"
    page += "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    answer = desk.post("/record", data=form(desk, page))
    (entry,) = kept.log.entries(kept.event_id)[-1:]

    assert (answer.status_code, answer.headers["location"]) == (303, f"/log/{entry.number}")
    facts = entry.content["case"]["incidents"][0]["facts"]
    assert facts["penalty_area_colour"] == "red"
    assert entry.told["round"] == kept.round_on(kept.event.played_on).id  # type: ignore[arg-type, union-attr]
    assert entry.told["hole"] == 9
    assert set(entry.told["place"]) >= {"latitude", "longitude"}
    assert entry.content["case"]["made_with"]["map_version"] == 1
    assert again(entry).differs == ()
    assert verified(kept.records)[0].broken is None


def test_a_clock_that_cannot_be_right_is_said(desk: TestClient) -> None:
    """A device a day ahead: the entry says when it arrived by the desk's clock; one that waited says so, one in time nothing."""
    said = []
    for hours in (24, 0, -3):
        given = (datetime.now(UTC) + timedelta(hours=hours)).isoformat()
        where = desk.post("/record", data={**form(desk), "given_at": given}).headers["location"]
        said.append(desk.get(where).text)

    assert ["clock of the device is wrong" in one for one in said] == [True, False, False]
    assert ["its clock is behind" in one for one in said] == [False, False, True]


def test_a_full_disk_is_told_and_what_waits_on_a_phone_goes_on_waiting(
    tmp_path_factory: pytest.TempPathFactory,
) -> None:
    """Nothing is acknowledged that is not kept, status 503 lets the phone try again, and with room again it arrives once."""
    folder = tmp_path_factory.mktemp("full")
    with club_records(folder) as records:
        kept = keep_here(records)
        desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
        sent, later = ({**form(desk), "note": "x" * 2000} for _ in range(2))
        limit(records)
        number = 0
        while desk.post("/record", data={**sent, "ident": new_ident()}).status_code == 303:
            number += 1
        page, waits = desk.post("/record", data=sent), desk.post("/api/offline/entry", json=later)
        acknowledged = kept.log.head(kept.event_id)
        limit(records, 1_000_000)
        arrived = [desk.post("/api/offline/entry", json=later).json()["number"] for _ in range(2)]

    assert (page.status_code, waits.status_code, acknowledged) == (503, 503, number)
    assert "The disk of" in page.text
    assert waits.json()["error"]["code"] == "not_kept"
    assert arrived == [number + 1] * 2


def limit(records: Records, pages: int = 0) -> None:
    """Let the file of records grow to no more than so many pages; 0: no further than it is."""
    with records.writer.connect() as connection:
        most = pages or connection.scalar(text("PRAGMA page_count"))
        connection.execute(text(f"PRAGMA max_page_count = {most}"))
        connection.rollback()


def of_a_phone(megabytes: float) -> bytes:
    """A photograph as a phone takes it: 4,000 by 3,000 pixels, with a place in it; as large as wanted by what follows its end."""
    picture = Image.effect_noise((400, 300), 60).resize((4000, 3000)).convert("RGB")
    hidden = Image.Exif()
    hidden.get_ifd(0x8825)[1] = "N"
    file = BytesIO()
    picture.save(file, "JPEG", quality=95, exif=hidden)
    return file.getvalue().ljust(int(megabytes * 1_000_000), b"\0")


def test_a_photograph_of_a_phone_is_reduced_on_arrival(desk: TestClient, kept: KeptHere) -> None:
    """12 MB arrive; what is kept is small enough to be sent on, without the place that the camera wrote into it."""
    where = desk.post(
        "/record", data=form(desk), files={"photographs": ("a.jpg", of_a_phone(12), "image/jpeg")}
    )
    entry = kept.log.entries(kept.event_id)[-1]
    (part,) = [one for one in kept.log.parts(entry.id) if one and one.what == "photograph"]

    assert where.status_code == 303
    with Image.open(BytesIO(part.content)) as found:
        assert max(found.size) == LONGEST
        assert not found.getexif()
    assert len(part.content) < 4_000_000


def test_photographs_too_large_together_are_refused_and_nothing_is_recorded(
    desk: TestClient, kept: KeptHere
) -> None:
    """Above 25 MB it is said what to do; other addresses still take no more than they need."""
    before = kept.log.head(kept.event_id)
    large = [("photographs", ("a.jpg", of_a_phone(13), "image/jpeg"))] * 2
    refused = desk.post("/record", data=form(desk), files=large)
    other = desk.post("/settings", data={"x": "y" * 5_000_000})

    assert refused.status_code == other.status_code == 413
    assert "larger than 25 MB together" in refused.text
    assert "More was sent at once" in other.text
    assert kept.log.head(kept.event_id) == before


def test_two_taps_make_one_entry(desk: TestClient, kept: KeptHere) -> None:
    """The same form sent twice, with a note, leads to the same entry."""
    before = len(kept.log.entries(kept.event_id))
    sent = {**form(desk), "note": "beside the third stake"}
    places = {desk.post("/record", data=sent).headers["location"] for _ in range(2)}

    assert len(places) == 1
    assert len(kept.log.entries(kept.event_id)) == before + 1


def test_the_page_of_an_entry_says_all_of_it(desk: TestClient, kept: KeptHere) -> None:
    """What, who, where, the note, the receipt, earlier rulings of the same situation, and the way back to the case."""
    group = kept.groups_on(kept.event.played_on)[0]  # type: ignore[arg-type]
    official = kept.officials()[0]
    sent = {
        **form(desk),
        "player": group.players[0].id,
        "by": official.id,
        "note": "beside <the> third stake",
    }
    first = desk.post("/record", data=form(desk)).headers["location"]
    answer = desk.post("/record", data=sent)
    page = desk.get(answer.headers["location"]).text

    for words in (
        group.players[0].name,
        official.name,
        "beside &lt;the&gt; third stake",
        "hole 9",
        "ruled alike",
    ):
        assert words in page, words
    assert f'href="{first}"' in page
    assert kept.log.entries(kept.event_id)[-1].receipt in page
    link = re.search(r'href="(/case\?[^"]*)"', page)
    assert link is not None
    assert 'class="ruling ruling"' in desk.get(link[1].replace("&amp;", "&")).text
    assert f'value="{official.id}" selected' in desk.get(RULING).text


def test_a_correction_shows_on_both_pages(desk: TestClient) -> None:
    """The corrected entry stays and names the one that corrects it; a number that is none is told."""
    first = int(desk.post("/record", data=form(desk)).headers["location"].rpartition("/")[2])
    second = desk.post("/record", data={**form(desk), "corrects": str(first)}).headers["location"]

    assert f'href="{second}"' in desk.get(f"/log/{first}").text
    assert f'href="/log/{first}"' in desk.get(second).text
    assert "corrected" in desk.get("/log").text
    for number in ("999999", "x", "9" * 400):
        refused = desk.post("/record", data={**form(desk), "corrects": number})
        assert refused.status_code == 400
        assert "There is no entry" in refused.text


def test_two_who_correct_one_entry_at_once_are_both_told(desk: TestClient) -> None:
    """Both corrections stand, each names the other until one of them is withdrawn."""
    wrong = desk.post("/record", data=form(desk)).headers["location"]
    number = wrong.rpartition("/")[2]
    first, second = (
        desk.post("/record", data={**form(desk), "corrects": number}).headers["location"] for _ in range(2)
    )

    for one, other in ((first, second), (second, first)):
        assert f'href="{other}"' in desk.get(one).text.partition("corrects the same")[0].rpartition("<p ")[2]
    assert "corrects the same" not in desk.get(wrong).text
    desk.post(f"{second}/withdraw", data={"tapped": new_ident(), "why": "the other holds"})
    assert "corrects the same" not in desk.get(first).text
    assert "corrects the same" not in desk.get(second).text


def test_words_where_a_photograph_goes_are_passed_over(desk: TestClient) -> None:
    """A field of that name that holds words, as a script may send it, is no photograph and no failure of ours."""
    assert desk.post("/record", data={**form(desk), "photographs": "none"}).status_code == 303


def test_an_open_question_cannot_be_recorded(desk: TestClient, kept: KeptHere) -> None:
    """There is no form while the Rules still ask, and a form made up for it is refused."""
    page = RULING.replace("&penalty_area_colour=red", "")
    before = len(kept.log.entries(kept.event_id))

    assert "/record" not in desk.get(page).text
    refused = desk.post("/record", data={**form(desk), "case": page.partition("?")[2]})
    assert refused.status_code == 400
    assert "is still to be answered" in refused.text
    assert len(kept.log.entries(kept.event_id)) == before


def test_what_was_erased_is_not_shown(desk: TestClient, kept: KeptHere) -> None:
    """After erasing a player neither name nor note stands on the page, which says that something was erased."""
    player = kept.groups_on(kept.event.played_on)[-1].players[-1]  # type: ignore[arg-type]
    sent = {**form(desk), "player": player.id, "note": "very private"}
    where = desk.post("/record", data=sent).headers["location"]
    assert player.name in desk.get(where).text
    erase(kept.records, player.id)
    page = desk.get(where).text

    assert player.name not in page
    assert "very private" not in page
    assert "was erased" in page


def test_a_desk_without_records_has_no_log() -> None:
    """Nothing offers what is not there."""
    desk = TestClient(create_app(), follow_redirects=False)

    assert "/record" not in desk.get(RULING).text
    assert desk.get("/log").status_code == 400
    assert "Serve it with --records" in desk.get("/log").text


def test_map_and_holes_are_edited_in_the_records(desk: TestClient, kept: KeptHere) -> None:
    """What is saved at the desk is a version in the records, and no folder is made."""
    feature = {
        "type": "Feature",
        "properties": {"natural": "tree"},
        "geometry": {"type": "Point", "coordinates": [3.99, 55.0]},
    }
    edit = {"action": "add", "ident": "tree/new", "feature": feature}
    saved = desk.post(
        "/api/map", json={"base": 1, "who": "Ada", "in_force_from": "2025-06-21", "edits": [edit]}
    )

    assert saved.status_code < 300, saved.text
    assert [one.number for one in kept.maps().versions()] == [1, 2]
    assert desk.get("/map").status_code == 200
    assert desk.get("/marking").status_code == 200


def test_the_invented_club_is_put_into_records_once(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The first start makes its records, a later one finds what was recorded meanwhile."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    file = tmp_path / "demo.db"
    assert [path.name for path in _demo_in(str(file))] == ["greens.csv"]
    with opened(file) as records:
        kept = keep_here(records)
        desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
        before = len(kept.log.entries(kept.event_id))
        desk.post("/record", data=form(desk))
    _demo_in(str(file))
    with opened(file) as records:
        again = keep_here(records)

        assert len(again.log.entries(again.event_id)) == before + 1
        assert [len(group.players) for group in again.groups_on(again.event.played_on)] == [3] * 52  # type: ignore[arg-type]


def test_what_to_serve_must_be_plain(tmp_path: Path) -> None:
    """Records beside a map, or an event that is not in them, end in a sentence before anything is served."""
    with made(tmp_path / "club.db") as records:
        start(records, "Quillsand Links", event=EVENT)
        with pytest.raises(InputError, match="holds no such course"):
            keep_here(records)
        with pytest.raises(InputError, match="holds no event of that name"):
            keep_here(records, "Other")
    both = marram("serve", str(COURSE), "--records", str(tmp_path / "club.db"))
    none = marram("serve", "--records", str(tmp_path / "none.db"))

    assert (both.code, none.code) == (2, 2)
    assert "leave out the course map" in both.err
    assert "There are no records at" in none.err
