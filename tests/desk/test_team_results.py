"""Teams whose best scores count, at the desk: the board as cards come in, why a team has its place, and what is published.

Two teams of four, the best three of each round count; par is 71 (4 3 5 4 3 4 4 3 5, 4 4 4 3 5 4 4 3 5). Every sum is worked
out by hand beside it.
"""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.records.field import entrants
from marram.schema import read_json
from tests.desk.asking import TestClient
from tests.desk.test_cards import bring_in
from tests.desk.test_cards_of_partners import fill
from tests.services.scoring import PARS, scoring

NAMES = (
    "Ada Brill",
    "Ben Coyle",
    "Cleo Dunn",
    "Dov Ester",
    "Elke Frey",
    "Finn Gad",
    "Gus Holm",
    "Hedda Iversen",
)


def event() -> dict[str, Any]:
    told = {
        "form_of_play": "stroke_play",
        "sides": "individual",
        "scores": ["gross"],
        "results_public": True,
        "local_rules": [],
        "rounds": [],
        "starting_times": [],
        "teams": {"size": 4, "counting": 3},
        "players": [{"name": name, "team": "Dunes" if at < 4 else "Marsh"} for at, name in enumerate(NAMES)],
    }
    return {**read_json(EVENT, "event"), **told}


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with scoring(tmp_path, event()) as found:
        yield keep_here(found.records)


def teams_of(page: str) -> list[tuple[str, str, str]]:
    """Place, team and total of every team of a page, with why it has no place in the last where it has none."""
    table = page[page.index('id="teams"') :]
    rows = re.findall(
        r"<tr><td class=\"place\">(.*?)</td><th scope=\"row\">(.*?)</th><td class=\"number\">(.*?)</td>",
        table,
    )
    plain = [tuple(re.sub(r"<[^>]+>", " ", cell).split()) for row in rows for cell in row]
    return [
        (" ".join(plain[at]), plain[at + 1][0], " ".join(plain[at + 2]) or " ".join(plain[at + 1][1:]))
        for at in range(0, len(plain), 3)
    ]


def test_teams_from_the_first_card_to_the_published_result(kept: KeptHere) -> None:
    desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
    person = {one.name: one.person for one in entrants(kept.records, kept.event_id)}
    par = sum(PARS)
    assert par == 71

    def card(name: str, *over: int) -> None:
        """Bring in a card of par, with a stroke over it on the holes given."""
        url = f"/cards/1/{person[name]}"
        fill(desk, url, {hole: PARS[hole - 1] + 1 for hole in over})
        assert bring_in(desk, url).status_code == 303

    # Dunes: par, 1, 2 and 5 over; Marsh: 3, 1, 1 over, and Hedda is still out.
    for name, over in zip(NAMES[:7], ([], [1], [1, 2], [1, 2, 3, 4, 5], [1, 2, 3], [1], [2]), strict=True):
        card(name, *over)
    waiting = "Teams stand once every card of a round is in."
    assert teams_of(desk.get("/results").text) == [("", "Dunes", waiting), ("", "Marsh", waiting)]

    # Hedda comes in level: Marsh has 71 + 72 + 72 = 215, Dunes 71 + 72 + 73 = 216.
    card(NAMES[7])
    assert teams_of(desk.get("/results").text) == [("1", "Marsh", "215"), ("2", "Dunes", "216")]
    assert teams_of(desk.get("/board").text) == [("1", "Marsh", "215"), ("2", "Dunes", "216")]
    why = desk.get("/results/why?team=Dunes").text
    assert "Dunes comes after Marsh: the total: 216 against 215." in why
    assert [
        [" ".join(re.sub(r"<[^>]+>", " ", one).split()) for one in re.findall(r"<t[hd].*?</t[hd]>", row)]
        for row in re.findall(r"<tr.*?</tr>", why[why.index("<tbody>") :])
    ] == [
        ["Ada Brill", "71", "counts"],
        ["Ben Coyle", "72", "counts"],
        ["Cleo Dunn", "73", "counts"],
        ["Dov Ester", "76", "does not count"],
    ]
    assert desk.get("/results/why?team=Nobody").status_code == 404

    # Two of Marsh are disqualified (Rule 1.2b): two scores are left, and three count.
    for name in (NAMES[4], NAMES[5]):
        told = {"how": "disqualified", "citation": "1.2b", "tapped": new_ident()}
        desk.post(f"/cards/1/{person[name]}/end", data=told)
    assert teams_of(desk.get("/results").text) == [
        ("1", "Dunes", "216"),
        ("", "Marsh", "round 1: 2 of 3 scores"),
    ]

    desk.post("/published", data={"what": "results", "tapped": new_ident()})
    digest = re.search(r"/published/([0-9a-f]{64})\.json", desk.get("/published").text)
    assert digest
    (told,) = desk.get(f"/published/{digest[1]}.json").json()["results"]
    assert [(one["team"], one["place"], one["total"]) for one in told["teams"]] == [
        ("Dunes", 1, 216),
        ("Marsh", None, None),
    ]
    assert "gross teams,1,Dunes,,216,216" in desk.get(f"/published/{digest[1]}.csv").text


def test_a_score_put_right_moves_the_teams(kept: KeptHere) -> None:
    """A card taken back and entered anew changes the teams with the board: 71 + 71 + 72 = 214 becomes 71 + 71 + 71 = 213."""
    desk = TestClient(create_app(kept_here=kept), follow_redirects=False)
    person = {one.name: one.person for one in entrants(kept.records, kept.event_id)}
    for at, name in enumerate(NAMES):
        url = f"/cards/1/{person[name]}"
        fill(desk, url, {1: 5} if at in (0, 4, 5) else {})
        bring_in(desk, url)
    assert teams_of(desk.get("/results").text) == [("1", "Dunes", "213"), ("2", "Marsh", "214")]
    url = f"/cards/1/{person[NAMES[4]]}"
    entry = re.search(r'name="entry" value="([^"]+)"', desk.get(url).text)
    assert entry
    desk.post(f"{url}/take-back", data={"entry": entry[1], "note": "slip", "tapped": new_ident()})
    fill(desk, url, {})
    assert bring_in(desk, url).status_code == 303
    assert teams_of(desk.get("/results").text) == [("T1", "Dunes", "213"), ("T1", "Marsh", "213")]
