"""Officials placed at the desk: proposed with a seed, changed by hand, told when changed, on the sheets and in readiness."""

import html
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.schema import read_json
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signed_in
from tests.services.scoring import scoring

NAMED = [
    {"name": "Ruth Ahl", "role": "chief referee"},
    {"name": "Tom Bek", "role": "referee, radio Dune 2"},
    {"name": "Una Cor", "role": "referee"},
    {"name": "Vic Dell", "role": "starter"},
    {"name": "Wyn Ebb", "role": "scorer, telephone"},
]


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with scoring(tmp_path, {**read_json(EVENT, "event"), "officials": NAMED}) as found:
        yield keep_here(found.records)


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def form(page: str) -> dict[str, str]:
    """The form of places, as a browser would send it."""
    part = page.partition('action="/officials" ')[2].partition("</form>")[0]
    return {
        name: html.unescape(value)
        for name, value in re.findall(r'name="([^"]+)"[^>]*? value="([^"]*)"', part)
    }


def at(page: str, name: str) -> str:
    """Where somebody is by the form."""
    found = re.search(rf"{name} <span.*?</span></span><input [^>]*value=\"([^\"]*)\"", page)
    assert found
    return html.unescape(found[1])


def test_places_are_proposed_changed_by_hand_and_kept(kept: KeptHere, desk: TestClient) -> None:
    """A proposal keeps nothing; kept it stands on page, officials' and referees' sheet, with radio and telephone; readiness is content."""
    assert "Officials without a place" in desk.get("/ready?round=1").text
    page = desk.post("/officials/propose", data={"round": "1", "seed": "gull"}).text
    assert {at(page, "Tom Bek").split(",")[0], at(page, "Una Cor").split(",")[0]} == {
        "holes 1 to 9",
        "holes 10 to 18",
    }
    assert at(page, "Vic Dell").startswith("tee 1, 08:00")
    assert not kept.log.entries(kept.event_id, kind="officials_placed")
    sent = form(page)
    assert desk.post("/officials", data=sent).status_code == 303
    assert desk.post("/officials", data=sent).status_code == 303  # tapped twice
    assert len(kept.log.entries(kept.event_id, kind="officials_placed")) == 1
    assert "Officials without a place" not in desk.get("/ready?round=1").text
    for sheet in ("officials-sheet", "referees-sheet"):
        told = desk.get(f"/papers/1/{sheet}.html").text
        assert "roving" in told.casefold()
        assert "holes 10–18" in told.casefold()
    assert "Dune 2" in desk.get("/papers/1/officials-sheet.html").text


@pytest.mark.parametrize(
    ("language", "unit"),
    [("en-GB,en;q=0.9", " yd"), ("en-US", " yd"), ("de-DE,en-US;q=0.5", " m"), ("en", " m"), ("", " m")],
)
def test_lengths_of_holes_follow_the_place_of_whoever_prints(
    desk: TestClient, language: str, unit: str
) -> None:
    """The region of the first language of the browser tells: yards in Great Britain and the United States, else metres."""
    told = desk.get("/papers/1/referees-sheet.html", headers={"accept-language": language}).text
    lengths = re.findall(r">\d{2,3}( yd| m)<", told)

    assert len(lengths) == 18
    assert set(lengths) == {unit}


def test_two_who_place_at_once_lose_nothing_of_each_other(kept: KeptHere, desk: TestClient) -> None:
    """Each changed another official: both changes stand. Both changed one, differently: nothing is kept until somebody says which."""
    mine, theirs = (form(desk.get("/officials").text) for _ in range(2))
    who = {
        html.unescape(one): at
        for at, one in enumerate(
            re.findall(r'class="field"><span>(.*?) <span', desk.get("/officials").text), 1
        )
    }
    tom, una = f"at-{who['Tom Bek']}", f"at-{who['Una Cor']}"
    assert desk.post("/officials", data={**theirs, tom: "hole 4"}).status_code == 303
    assert desk.post("/officials", data={**mine, una: "hole 16"}).status_code == 303
    page = desk.get("/officials").text
    assert (at(page, "Tom Bek"), at(page, "Una Cor")) == ("hole 4", "hole 16")

    late = desk.post("/officials", data={**mine, tom: "hole 11", una: ""})
    assert late.status_code == 422
    assert "Tom Bek: somebody else said hole 4 meanwhile, here it is hole 11" in late.text
    assert "Una Cor: somebody else" not in late.text  # it was left as the page showed it
    assert (at(late.text, "Tom Bek"), at(late.text, "Una Cor")) == ("hole 11", "hole 16")
    assert len(kept.log.entries(kept.event_id, kind="officials_placed")) == 2
    assert desk.post("/officials", data=form(late.text)).status_code == 303
    page = desk.get("/officials").text
    assert (at(page, "Tom Bek"), at(page, "Una Cor")) == ("hole 11", "hole 16")


def test_a_change_is_told_to_every_official(kept: KeptHere, desk: TestClient) -> None:
    """Who is elsewhere than before stands above, with both places; the other round is as it was."""
    sent = form(desk.post("/officials/propose", data={"round": "1", "seed": "gull"}).text)
    desk.post("/officials", data=sent)
    page = desk.get("/officials").text
    changed = {
        key: "group 2" if key.startswith("at-") and value == at(page, "Una Cor") else value
        for key, value in form(page).items()
    }
    desk.post("/officials", data={**changed, "tapped": new_ident()})
    app = guarded(kept)
    told = html.unescape(signed_in(app, kept, "scorer").get("/officials").text)
    assert re.search(r"Una Cor: holes \d+ to \d+, [^<]* → group 2", told)
    assert told.count("→") == 1
    assert "→" not in desk.get("/officials?round=2").text or len(kept.log.entries(kept.event_id)) == 2
    assert signed_in(app, kept, "public").get("/officials").status_code == 303


def test_no_seed_no_round_and_no_start_are_told(desk: TestClient) -> None:
    """In words; nothing is proposed."""
    assert "Give a seed" in desk.post("/officials/propose", data={"round": "1", "seed": " "}).text
    assert desk.post("/officials/propose", data={"round": "9", "seed": "x"}).status_code == 404
    assert desk.get("/officials?round=9").status_code == 404
