"""The map editor in a real browser, on a phone: draw with taps, reload, save; conflicts; the keyboard alone."""

import socket
import threading
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
import uvicorn
from axe_playwright_python.sync_playwright import Axe
from fastapi import FastAPI
from playwright.sync_api import Browser, Page, expect

from marram.course.map_edits import Edit
from marram.desk.app import create_app
from tests.desk.test_browser import TOO_SMALL
from tests.desk.test_map_editor import DAY, area

pytestmark = pytest.mark.browser
CORNERS = [(55.004, 4.0), (55.004, 4.0003), (55.0042, 4.0003)]
GRAVE = {"serious", "critical"}


@pytest.fixture
def desk(tmp_path: Path) -> FastAPI:
    return create_app(maps=tmp_path / "maps")


@pytest.fixture
def page(desk: FastAPI, chromium: Browser) -> Iterator[Page]:
    """A phone at a desk of its own, whose map can be edited. Any error of a script fails the test."""
    listening = socket.create_server(("127.0.0.1", 0))
    server = uvicorn.Server(uvicorn.Config(desk, log_level="error", lifespan="off", ws="none"))
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]}, daemon=True)
    thread.start()
    context = chromium.new_context(
        viewport={"width": 390, "height": 844},
        has_touch=True,
        base_url=f"http://127.0.0.1:{listening.getsockname()[1]}",
    )
    context.set_default_timeout(8000)
    found = context.new_page()
    faults: list[str] = []
    found.on("pageerror", lambda error: faults.append(str(error)))
    found.goto("/map")
    ready(found)
    yield found
    context.close()
    server.should_exit = True
    thread.join(timeout=20)
    assert not faults


def ready(page: Page) -> None:
    expect(page.locator("#editor-map[data-ready=yes]")).to_have_count(1)


def look_at(page: Page, latitude: float, longitude: float, zoom: float = 19) -> None:
    page.evaluate(f"window.marramMap.setView([{latitude}, {longitude}], {zoom}, {{ animate: false }})")


def pixel(page: Page, latitude: float, longitude: float) -> dict[str, float]:
    found: dict[str, float] = page.evaluate(
        f"() => {{ const p = window.marramMap.latLngToContainerPoint([{latitude}, {longitude}]);"
        " return {x: p.x, y: p.y}; }"
    )
    return found


def draw(page: Page) -> None:
    """Draw ground under repair with three taps."""
    look_at(page, 55.0041, 4.00015)
    page.get_by_role("button", name="Draw", exact=True).tap()
    for corner in CORNERS:
        page.locator("#editor-map").tap(position=pixel(page, *corner))
    page.get_by_role("button", name="Finish").tap()


def save(page: Page, who: str = "Ada") -> None:
    page.get_by_label("Who (name or initials)").fill(who)
    page.get_by_label("In force from", exact=True).fill(DAY)
    page.get_by_role("button", name="Save a new version").click()


def test_drawn_with_three_taps_kept_over_a_reload_and_saved(page: Page, desk: FastAPI) -> None:
    """Three taps make an area; after a reload it is offered again; saved, the list of versions shows it."""
    draw(page)
    expect(page.locator("#edit-list")).to_contain_text("Added ground under repair")
    page.reload()
    ready(page)
    expect(page.locator("#draft-words")).to_contain_text("1 unsaved edit of version 1")
    page.get_by_role("button", name="Take them up").click()
    save(page)

    expect(page.locator("[data-version='2']")).to_contain_text("Added ground under repair")
    expect(page.locator("[data-version='2']")).to_contain_text("Ada")
    expect(page.locator("#draft-offer")).to_be_hidden()
    (edit,) = desk.state.maps.latest().edits
    ring = edit.feature["geometry"]["coordinates"][0]
    for (latitude, longitude), place in zip(CORNERS, ring[:3], strict=True):
        # A pixel at zoom 19 is 0.17 m here, 0.0000027 degrees of longitude.
        assert place == pytest.approx([longitude, latitude], abs=0.000004)


def test_edits_offered_again_are_not_lost_to_new_ones(page: Page) -> None:
    """Whoever draws on before deciding about the kept edits has both after one more reload."""
    add_by_coordinates(page, "55.004,4.0\n55.0041,4.0\n55.0041,4.0001")
    page.reload()
    ready(page)
    add_by_coordinates(page, "55.005,4.0\n55.0051,4.0\n55.0051,4.0001")
    page.reload()
    ready(page)
    page.get_by_role("button", name="Take them up").click()

    expect(page.locator("#edit-list li")).to_have_count(2)


def test_the_last_tap_and_every_step_can_be_undone(page: Page) -> None:
    """A corner is taken back while drawing; a finished area is undone, and done again."""
    look_at(page, 55.0041, 4.00015)
    page.get_by_role("button", name="Draw", exact=True).tap()
    for corner in CORNERS:
        page.locator("#editor-map").tap(position=pixel(page, *corner))
    page.get_by_role("button", name="Take back last").tap()
    expect(page.locator("#editor-words")).to_contain_text("2 of at least 3")
    expect(page.get_by_role("button", name="Finish")).to_be_disabled()
    page.locator("#editor-map").tap(position=pixel(page, *CORNERS[2]))
    page.get_by_role("button", name="Finish").tap()

    page.get_by_role("button", name="Undo").tap()
    expect(page.locator("#edit-count")).to_have_text("No edits yet.")
    page.get_by_role("button", name="Redo").tap()
    expect(page.locator("#edit-list li")).to_have_count(1)


def corners(page: Page) -> list[tuple[float, float]]:
    lines = page.locator("#chosen-corners").input_value().split("\n")
    return [tuple(map(float, line.split(","))) for line in lines]


def drag(page: Page, start: dict[str, float], right: float, down: float) -> None:
    box = page.locator("#editor-map").bounding_box()
    assert box is not None
    page.mouse.move(box["x"] + start["x"], box["y"] + start["y"])
    page.mouse.down()
    page.mouse.move(box["x"] + start["x"] + right / 2, box["y"] + start["y"] + down / 2)
    page.mouse.move(box["x"] + start["x"] + right, box["y"] + start["y"] + down)
    page.mouse.up()


def test_an_area_is_moved_shaped_and_deleted(page: Page) -> None:
    """The arrows move every corner alike, a corner goes by itself, one is added between two, one taken away."""
    draw(page)
    page.evaluate("scrollTo(0, 0)")
    before = corners(page)
    drag(page, pixel(page, *before[1]), 0, 40)
    shaped = corners(page)
    assert shaped[0] == before[0]
    assert shaped[1][0] < before[1][0]

    middle = [(max(axis) + min(axis)) / 2 for axis in zip(*shaped, strict=True)]
    drag(page, pixel(page, *middle), -30, -30)
    moved = corners(page)
    shifts = {
        (round(new[0] - old[0], 7), round(new[1] - old[1], 7)) for new, old in zip(moved, shaped, strict=True)
    }
    assert len(shifts) == 1
    assert shifts.pop()[0] > 0

    page.locator(".handle.between").first.click()
    assert len(corners(page)) == 4
    page.locator(".handle.corner").first.click()
    page.get_by_role("button", name="Delete corner").click()
    assert len(corners(page)) == 3
    page.get_by_role("button", name="Delete area").click()
    expect(page.locator("#edit-count")).to_have_text("No edits yet.")


def test_a_conflict_shows_the_other_side_and_mine_can_go_on_top(page: Page, desk: FastAPI) -> None:
    """What somebody else saved meanwhile is told by name; applied on the newest version, mine is saved."""
    maps = desk.state.maps
    maps.save([Edit("add", "drawn/1", area("drawn/1"))], base=1, who="Ada", in_force_from=date(2025, 6, 21))
    page.reload()
    ready(page)
    choose(page, "ground under repair “Flooded”")
    page.locator("#chosen-name").fill("Mire")
    page.locator("#chosen-name").blur()
    theirs = Edit("change", "drawn/1", area("drawn/1", name="Pond"))
    maps.save([theirs], base=2, who="Bo", in_force_from=date(2025, 6, 21))
    save(page)

    expect(page.locator("#editor-faults")).to_contain_text(
        "Version 3, Bo: Changed ground under repair “Pond”"
    )
    expect(page.locator("#editor-faults")).to_contain_text("Yours: Changed ground under repair “Mire”")
    page.get_by_role("button", name="Put mine on version 3").click()
    save(page)
    expect(page.locator("[data-version='4']")).to_contain_text("Mire")


def choose(page: Page, words: str) -> None:
    page.locator("summary", has_text="Choose an area by name").click()
    page.get_by_label("Area on the map").select_option(words)
    page.get_by_role("button", name="Choose it").click()


def test_a_crossing_edge_is_refused_and_the_edit_stays(page: Page, desk: FastAPI) -> None:
    """The desk's faults are shown, and what was drawn is still there to be mended."""
    add_by_coordinates(page, "55.004,4.0\n55.0041,4.0001\n55.004,4.0001\n55.0041,4.0")
    save(page)

    expect(page.locator("#editor-faults")).to_contain_text("Nothing was saved")
    expect(page.locator("#editor-faults")).to_contain_text("at 55.00")
    expect(page.locator("#edit-list li")).to_have_count(1)
    assert desk.state.maps.latest().number == 1


def add_by_coordinates(page: Page, places: str) -> None:
    page.locator("summary", has_text="Draw by coordinates").press("Enter")
    page.get_by_label("Corners in order").fill(places)
    page.get_by_role("button", name="Add this area").press("Enter")


def test_the_keyboard_alone_draws_and_saves(page: Page) -> None:
    """Coordinates stand in for taps, and the focus goes to the new area."""
    add_by_coordinates(page, "55.004,4.0\n55.0041,4.0\n55.0041,4.0001")
    expect(page.locator("#chosen-title")).to_be_focused()
    save(page)
    expect(page.locator("[data-version='2']")).to_contain_text("Added ground under repair")


@pytest.mark.parametrize("width", [390, 1280])
def test_the_editor_is_clean_by_axe_and_large_enough(page: Page, width: int) -> None:
    """Nothing serious or critical, nothing smaller than 44 px (WCAG 2.2, 2.5.5), nothing off the side."""
    page.set_viewport_size({"width": width, "height": 850})
    draw(page)
    page.evaluate("document.querySelectorAll('details').forEach(one => one.open = true)")
    found = [one for one in Axe().run(page).response["violations"] if one["impact"] in GRAVE]
    assert not [(one["id"], one["nodes"][0]["html"][:160]) for one in found]
    assert page.evaluate(TOO_SMALL) == []
    assert page.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
