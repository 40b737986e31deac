"""A walking scorer: scores of a group hole by hole, told once, put right, and of no weight for the card."""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, expect

from marram.competition.cards.acts import By
from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.schema import read_json
from tests.desk.asking import TestClient
from tests.desk.serving import served
from tests.desk.settled import PATIENCE
from tests.desk.test_live_browser import access
from tests.services.partners import with_partners
from tests.services.scoring import Scoring, scoring

SHOWN = {"results_public": True, "scores": ["gross"]}


@pytest.fixture
def found(tmp_path: Path) -> Iterator[Scoring]:
    with scoring(tmp_path, {**read_json(EVENT, "event"), **SHOWN}) as it:
        yield it


@pytest.fixture
def kept(found: Scoring) -> KeptHere:
    return keep_here(found.records)


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def tell(desk: TestClient, hole: int, *scores: str, **more: str) -> Any:
    """Tell the scores of the first group on a hole, as the page as it stands would."""
    page = desk.get(f"/walk/1/1?hole={hole}").text
    seen = re.search(r'name="seen" value="(\d+)"', page)
    assert seen
    balls = {f"ball-{at}": score for at, score in enumerate(scores, start=1) if score}
    sent = {"hole": str(hole), "seen": seen[1], "tapped": new_ident(), **balls, **more}
    return desk.post("/walk/1/1", data=sent)


def score(found: Scoring, kept: KeptHere, hole: int, by: By = By.SCORER, name: str = "Fenwin Dulsey") -> Any:
    """What stands on the card of a player."""
    player = next(who for who, known in kept.names().items() if known == name)
    return found.card((player, found.competition.rounds[0].id)).kept.score(by, hole)


def test_a_hole_is_told_and_the_next_one_comes(found: Scoring, kept: KeptHere, desk: TestClient) -> None:
    """It stands on the board at once, and on no card; the page then shows the first hole that is not told of everybody."""
    answer = tell(desk, 1, "3", "5", "-")
    assert answer.headers["location"] == "/walk/1/1?hole=2"
    assert score(found, kept, 1) == 3
    assert score(found, kept, 1, By.MARKER) is None
    assert "Fenwin Dulsey" in desk.get("/board").text.partition("<tbody>")[2].partition("</tr>")[0]
    tell(desk, 2, "3", "", "4")
    assert 'data-hole="2" aria-current="true"' in desk.get("/walk/1/1").text


def test_a_hole_told_again_corrects_what_was_seen(found: Scoring, kept: KeptHere, desk: TestClient) -> None:
    """The entry before stays in the log; a tap sent twice, as by a phone that got no answer, is one."""
    tell(desk, 7, "4", "4", "4")
    tapped = new_ident()
    tell(desk, 7, "5", "4", "4", tapped=tapped)
    first, _, _, last = kept.log.entries(kept.event_id, kind="card_figures")
    assert last.corrects == first.id
    assert score(found, kept, 7) == 5
    head = kept.log.head(kept.event_id)
    sent = {"hole": "7", "seen": "3", "tapped": tapped, "ball-1": "5", "ball-2": "4", "ball-3": "4"}
    answer = desk.post("/walk/1/1", data=sent, headers={"Accept": "application/json"})
    assert answer.json() == {"marram": 1, "upto": head}


def test_what_cannot_be_told_is_refused(kept: KeptHere, desk: TestClient) -> None:
    """A score that is none, with whose it is; a hole, a group, a round that is not there: nothing is entered."""
    wrong = tell(desk, 1, "4", "x", "0")
    assert wrong.status_code == 400
    assert "Maris Quillan-Roe:" in wrong.text
    assert "Tobiah Ling:" in wrong.text
    assert desk.post("/walk/1/1", data={"hole": "19", "seen": "0", "tapped": new_ident()}).status_code == 422
    assert desk.get("/walk/1/99").status_code == 404
    assert desk.get("/walk/9/1").status_code == 404
    assert tell(desk, 1, **{"more-ball-1": "11"}).status_code == 303
    assert kept.log.head(kept.event_id) == 1


def test_partners_have_a_ball_each_or_one_together(tmp_path: Path) -> None:
    """Four-Ball: a score of each partner; Foursomes: one of the side."""
    for sides, balls in (("four_ball", 4), ("foursomes", 2)):
        folder = tmp_path / sides
        folder.mkdir()
        with scoring(folder, with_partners(sides=sides, scores=["gross"])) as found:
            desk = TestClient(create_app(kept_here=keep_here(found.records)), follow_redirects=False)
            hole = desk.get("/walk/1/1?hole=1").text.partition("</form>")[0]
            assert hole.count("<fieldset>") == balls, sides


def test_a_round_from_another_tee_begins_there(tmp_path: Path) -> None:
    """The holes stand in the order in which the group plays them."""
    event = {**read_json(EVENT, "event"), **SHOWN}
    event["starting_times"] = [{**event["starting_times"][0], "tee": 10}]
    (tmp_path / "ten").mkdir()
    with scoring(tmp_path / "ten", event) as ten:
        desk = TestClient(create_app(kept_here=keep_here(ten.records)), follow_redirects=False)
        page = desk.get("/walk/1/1").text
        assert re.findall(r'<form[^>]*data-hole="(\d+)"', page)[:2] == ["10", "11"]
        assert tell(desk, 18, "4", "4", "4").headers["location"] == "/walk/1/1?hole=1"


@pytest.mark.browser
def test_scores_told_out_of_reach_arrive_once_and_everybody_sees_them(
    chromium: Browser, kept: KeptHere
) -> None:
    """Three holes while the desk is out of reach, one of them twice; back in reach they stand on the public board without a reload."""
    with served(create_app(kept_here=kept)) as address:
        phone = {"width": 390, "height": 844}
        walker = chromium.new_context(base_url=address, viewport=phone)
        everybody = chromium.new_context(base_url=address, viewport=phone)
        page, board = walker.new_page(), everybody.new_page()
        board.goto("/board")
        expect(board.locator("#live[data-open=yes]")).to_be_attached()
        page.goto("/walk/1/1")
        faults = access(page)
        walker.set_offline(True)
        for hole in (1, 2, 3):
            form = page.locator(f"#hole-{hole}")
            expect(form).to_be_visible()
            for ball in (1, 2, 3):
                form.locator(f'[name="ball-{ball}"][value="{3 + (ball > 1)}"]').check()
            form.get_by_role("button", name="Next hole").click()
        expect(page.locator("#waits")).to_contain_text("3 waiting", timeout=PATIENCE)
        page.locator('.walk-holes [data-hole="1"]').click()
        expect(page.locator(".taken")).to_have_count(0)  # a hole that is opened again can be told again
        page.locator('#hole-1 [name="ball-1"][value="2"]').check()
        page.locator("#hole-1").get_by_role("button", name="Next hole").click()
        assert kept.log.head(kept.event_id) == 0
        walker.set_offline(False)
        expect(page.locator("#waits")).to_be_empty(timeout=PATIENCE)
        expect(board.locator("#board tbody tr").first).to_contain_text("Fenwin Dulsey", timeout=PATIENCE)
        expect(board.locator("#board tbody tr").first).to_contain_text("8", timeout=PATIENCE)
        assert kept.log.head(kept.event_id) == 9
        assert faults == []
        walker.close()
        everybody.close()


@pytest.mark.browser
def test_the_page_opens_again_out_of_reach_and_what_waits_arrives_once(
    chromium: Browser, found: Scoring, kept: KeptHere
) -> None:
    """Opened once with a network: a hole told with it; then without one the page is closed and opened anew, shows what was told,
    takes three holes, is opened anew again, and sends each once when the desk is back. A hole told again corrects the first."""
    with served(create_app(kept_here=kept)) as address:
        walker = chromium.new_context(
            base_url=address, viewport={"width": 390, "height": 844}, service_workers="allow"
        )
        page = walker.new_page()
        page.goto("/walk/1/1")
        expect(page.locator("html[data-kept=yes]")).to_be_attached(timeout=PATIENCE)

        def tell_here(hole: int, strokes: int) -> None:
            page.locator(f'.walk-holes [data-hole="{hole}"]').click()
            for ball in (1, 2, 3):
                page.locator(f'#hole-{hole} [name="ball-{ball}"][value="{strokes}"]').check()
            page.locator(f"#hole-{hole}").get_by_role("button", name="Next hole").click()

        tell_here(1, 4)
        expect(page.locator("#waits")).to_be_empty(timeout=PATIENCE)
        walker.set_offline(True)
        page.close()
        page = walker.new_page()
        page.goto("/walk/1/1?hole=2")
        expect(page.get_by_role("heading", level=1)).to_contain_text("1")
        expect(page.locator('#hole-1 [name="ball-2"][value="4"]')).to_be_checked()
        for hole in (2, 3):
            tell_here(hole, 5)
        page.reload()
        expect(page.locator("#waits")).to_contain_text("2 waiting", timeout=PATIENCE)
        tell_here(1, 3)
        page.goto("/walk")
        expect(page.get_by_role("link").filter(has_text="Fenwin Dulsey")).to_be_visible()
        page.goto("/walk/1/1")
        walker.set_offline(False)
        page.reload()
        expect(page.locator("#waits")).to_be_empty(timeout=PATIENCE)
        walker.close()
    assert [score(found, kept, hole) for hole in (1, 2, 3)] == [3, 5, 5]
    figures = kept.log.entries(kept.event_id, kind="card_figures")
    assert len(figures) == 12  # three balls: holes 1, 2 and 3, and hole 1 again
    assert sum(one.corrects is not None for one in figures) == 3
