"""The marking page: what the course check finds, numbered, on the map and in a list, for the map of the day."""

import json
from datetime import date
from pathlib import Path

import pytest
from playwright.sync_api import Browser, expect
from shapely.geometry import LineString, Point

from marram.course.versions.map_edits import Edit
from marram.desk.app import create_app
from tests.course.drawing import PLANE, drawn, nine_holes, write
from tests.desk.asking import TestClient
from tests.desk.axe import serious
from tests.desk.serving import served
from tests.desk.test_browser import TOO_SMALL


def staked(folder: Path) -> Path:
    """A faultless course whose south boundary is staked every 20 m, but for one stake; the rest is fenced."""
    corners = [(260, -60), (260, 660), (-60, 660), (-60, -60)]
    fence = drawn(LineString(corners), "fence", marram="marking", marked_by="fence")
    stakes = [
        drawn(Point(x, -60), f"stake {x}", marram="stake", colour="white")
        for x in range(-40, 260, 20)
        if x != 100
    ]
    return write(folder / "links.geojson", [*nine_holes(), fence, *stakes])


@pytest.fixture
def desk(tmp_path: Path) -> TestClient:
    return TestClient(create_app(staked(tmp_path), maps=tmp_path / "maps"), follow_redirects=False)


def test_a_gap_between_stakes_is_told_with_its_place(desk: TestClient) -> None:
    """The pulled stake is missed 40 m wide, at its own place, and the 14 others are on the map too."""
    told = desk.get("/api/marking").json()
    (task,) = [task for sheet in told["sheets"] for task in sheet["tasks"]]
    assert (task["check"], task["number"]) == ("stake_gap", 1)
    assert "between stake 80 and stake 120 are 40.0 m apart" in task["what"]
    (place,) = told["places"]
    assert PLANE.to_metres(*reversed(place["at"])) == pytest.approx((100, -60), abs=0.05)
    assert len(told["stakes"]) == 14
    page = desk.get("/marking").text
    assert "1 thing to look at before play" in page
    looked = {one["subject"]: (one["count"], one["found"]) for one in told["looked_at"]}
    assert (looked["stakes"], looked["holes"]) == ((14, 1), (9, 0))
    assert all(one["words"] in page and one["outcome"] in page for one in told["looked_at"])


def test_the_map_of_the_day_is_looked_at(desk: TestClient) -> None:
    """A stake put in from 21 June closes the gap on that day and not the day before."""
    stake = drawn(Point(100, -60), "drawn/1", marram="stake", colour="white")
    saved = desk.app.state.maps.save(
        [Edit("add", "drawn/1", stake)], base=1, who="Ada", in_force_from=date(2025, 6, 21)
    )
    assert saved.number == 2
    assert desk.get("/api/marking?day=2025-06-21").json()["sheets"] == []
    assert len(desk.get("/api/marking?day=2025-06-20").json()["places"]) == 1
    assert "Nothing to mend was found" in desk.get("/marking?day=2025-06-21").text


def test_the_sheet_is_a_pdf(desk: TestClient) -> None:
    """Named after its day."""
    answer = desk.get("/marking/sheet.pdf?day=2025-06-21")
    assert answer.content.startswith(b"%PDF")
    assert 'filename="marking-2025-06-21.pdf"' in answer.headers["content-disposition"]


def test_a_desk_without_versions_checks_its_file(tmp_path: Path) -> None:
    """Where no versions are kept, the file itself is looked at."""
    desk = TestClient(create_app(staked(tmp_path)))
    assert len(desk.get("/api/marking").json()["places"]) == 1


@pytest.mark.browser
@pytest.mark.parametrize("width", [390, 1280])
def test_a_number_leads_to_its_place_and_back(chromium: Browser, tmp_path: Path, width: int) -> None:
    """The button shows the place on the map, a pin marks its words; nothing is too small, axe finds nothing grave."""
    with served(create_app(staked(tmp_path))) as address:
        context = chromium.new_context(viewport={"width": width, "height": 844}, base_url=address)
        page = context.new_page()
        faults: list[str] = []
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.goto("/marking")
        expect(page.locator("#marking-map[data-ready=yes]")).to_have_count(1)
        expect(page.locator(".stake-mark")).to_have_count(14)
        page.get_by_role("button", name="Show 1 on the map").click()
        expect(page.locator("#marking-words")).to_contain_text("1: between stake 80 and stake 120")
        middle = page.evaluate("(() => { const c = window.marramMap.getCenter(); return [c.lng, c.lat]; })()")
        assert PLANE.to_metres(*middle) == pytest.approx((100, -60), abs=0.5)
        expect(page.locator("#task-1.shown")).to_have_count(1)
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        assert page.evaluate(TOO_SMALL) == []
        assert not serious(page)
        assert faults == []
        context.close()


def test_findings_are_escaped(tmp_path: Path) -> None:
    """A name from a map is text on the page, never markup."""
    path = staked(tmp_path)
    document = json.loads(path.read_text())
    document["features"].append(drawn(Point(100, 100), "<script>alert(1)</script>", marram="stake"))
    path.write_text(json.dumps(document))
    assert "<script>alert" not in TestClient(create_app(path)).get("/marking").text
