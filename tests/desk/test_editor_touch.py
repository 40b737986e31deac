"""Fingers and keys on the map editor: touch drags, undo and redo, and nothing lost on the way to the desk."""

import pytest
from fastapi import FastAPI
from playwright.sync_api import Page, Route, expect

from marram.words.texts import text as said
from tests.desk.editing import (
    CORNERS,
    choose,
    corners,
    draw,
    finish,
    look_at,
    pixel,
    ready,
    save,
    swipe,
    tap_corners,
)

pytestmark = pytest.mark.browser
METRE = 1 / 111_320
"""A degree of latitude is about 111.32 km (the mean on the WGS 84 ellipsoid lies within 0.6 % of it)."""


def test_a_finger_drags_a_corner_and_a_whole_area(editor: Page) -> None:
    """Touch events move the one corner, then all corners alike; the page does not scroll away meanwhile.

    The expected shift is the finger's way on the map's own scale, at zoom 19 some 0.17 m a pixel here.
    """
    draw(editor)
    before = corners(editor)
    swipe(editor, pixel(editor, *before[1]), 0, 40)
    shaped = corners(editor)
    assert (shaped[0], shaped[2]) == (before[0], before[2])
    assert shaped[1][0] < before[1][0] - 2 * METRE

    middle = tuple((max(axis) + min(axis)) / 2 for axis in zip(*shaped, strict=True))
    start = pixel(editor, middle[0], middle[1])
    swipe(editor, start, 60, -50)
    moved = corners(editor)
    shifts = {
        (round(new[0] - old[0], 7), round(new[1] - old[1], 7)) for new, old in zip(moved, shaped, strict=True)
    }
    assert len(shifts) == 1
    at = pixel(editor, middle[0] + shifts.copy().pop()[0], middle[1] + shifts.copy().pop()[1])
    assert (at["x"] - start["x"], at["y"] - start["y"]) == pytest.approx((60, -50), abs=2)
    assert editor.evaluate("scrollY") == 0
    expect(editor.locator("#edit-list li")).to_have_count(1)


def test_keys_undo_and_redo_every_step(editor: Page) -> None:
    """Ctrl+Z takes back the last tap while drawing, then whole steps; Ctrl+Shift+Z and Ctrl+Y do them again."""
    look_at(editor, 55.0041, 4.00015)
    editor.get_by_role("button", name="Draw", exact=True).tap()
    tap_corners(editor, [*CORNERS, (55.0042, 4.0)])
    editor.keyboard.press("Control+z")
    expect(editor.locator("#editor-words")).to_contain_text("3 corners")
    finish(editor)
    edits = editor.locator("#edit-list li")

    editor.locator("[data-move=north]").evaluate("one => one.click()")
    north = corners(editor)
    editor.keyboard.press("Control+z")
    assert corners(editor)[0][0] == pytest.approx(north[0][0] - METRE, abs=0.02 * METRE)
    editor.keyboard.press("Control+z")
    expect(edits).to_have_count(0)
    editor.keyboard.press("Control+Shift+z")
    expect(edits).to_have_count(1)
    editor.keyboard.press("Control+y")
    choose(editor, said("ground.ground_under_repair"))
    assert corners(editor) == north


def test_keys_in_a_field_undo_the_typing_not_the_map(editor: Page) -> None:
    """Ctrl+Z in the name is the browser's own."""
    draw(editor)
    editor.locator("#chosen-name").press_sequentially("Mire")
    editor.keyboard.press("Control+z")
    expect(editor.locator("#edit-list li")).to_have_count(1)


def test_a_reload_in_the_middle_of_drawing_loses_nothing(editor: Page) -> None:
    """The drawing goes on where it was, with its kind; the last corner finishes it."""
    look_at(editor, 55.0041, 4.00015)
    editor.locator("#draw-kind").select_option("temporary_water")
    editor.get_by_role("button", name="Draw", exact=True).tap()
    tap_corners(editor, CORNERS[:2])
    editor.reload()
    ready(editor)

    expect(editor.locator("#editor-words")).to_contain_text("2 of at least 3")
    look_at(editor, 55.0041, 4.00015)
    tap_corners(editor, CORNERS[2:], before=2)
    finish(editor)
    expect(editor.locator("#edit-list")).to_contain_text("Added temporary water")
    assert len(corners(editor)) == 3
    editor.reload()
    ready(editor)
    expect(editor.get_by_role("button", name="Draw", exact=True)).to_be_visible()


def test_without_the_desk_nothing_is_lost(editor: Page, editing: FastAPI) -> None:
    """Out of reach, the page says so and keeps edits, name and reason, also over a reload; then one tap takes them up, though the
    network changes under what it asks, and they are saved."""
    draw(editor)
    editor.get_by_label(said("editor.why")).fill("after rain")
    editor.context.set_offline(True)
    save(editor, who="Bo")

    expect(editor.locator("#editor-faults")).to_contain_text("The desk cannot be reached")
    expect(editor.locator("#editor-faults")).to_contain_text("stay on this device")
    expect(editor.locator("#edit-list li")).to_have_count(1)
    assert editing.state.maps.latest().number == 1
    editor.context.set_offline(False)
    editor.reload()
    ready(editor)
    editor.route("**/api/map?**", lambda route: route.abort("connectionreset"), times=1)
    editor.get_by_role("button", name=said("editor.take_up")).click()
    expect(editor.get_by_label(said("editor.who"))).to_have_value("Bo")
    editor.get_by_role("button", name=said("editor.save_version")).click()
    expect(editor.locator("[data-version='2']")).to_contain_text("after rain")
    expect(editor.locator("[data-version='2']")).to_contain_text("Bo")


def test_a_desk_that_fails_keeps_the_edits(editor: Page) -> None:
    """An answer that is not the desk's own is told by its number, and saving again works."""
    draw(editor)
    editor.route("**/api/map", lambda route: route.fulfill(status=502, body="no gateway"), times=1)
    save(editor)
    expect(editor.locator("#editor-faults")).to_contain_text("The desk failed (502)")
    editor.get_by_role("button", name=said("editor.save_version")).click()
    expect(editor.locator("[data-version='2']")).to_contain_text("Added ground under repair")


def test_an_answer_lost_on_the_way_does_not_save_twice(editor: Page, editing: FastAPI) -> None:
    """The desk saved, the phone did not hear of it: saving again finds the version that is there."""

    def swallow(route: Route) -> None:
        route.fetch()
        route.abort()

    draw(editor)
    editor.route("**/api/map", swallow, times=1)
    save(editor)
    expect(editor.locator("#editor-faults")).to_contain_text("cannot be reached")
    editor.get_by_role("button", name=said("editor.save_version")).click()
    expect(editor.locator("#panel")).to_contain_text("Version 2 is saved")
    assert editing.state.maps.latest().number == 2


def test_the_day_chooses_the_map_and_takes_the_edits_along(editor: Page, editing: FastAPI) -> None:
    """Drawn on one day's map and saved for the next, the area is on the next day's map only."""
    draw(editor)
    editor.get_by_label(said("editor.from"), exact=True).fill("2025-06-22")
    expect(editor.locator("#map-day")).to_contain_text("Map of 22 June 2025")
    expect(editor.locator("#edit-list li")).to_have_count(1)
    save(editor, day="2025-06-22")

    expect(editor.locator("[data-version='2']")).to_contain_text("From 22 June 2025")
    maps = editing.state.maps
    assert [len(maps.prepared(day)) for day in (maps.latest().in_force_from,)] == [0]
    editor.goto("/map?on=2025-06-21")
    ready(editor)
    expect(editor.locator("#map-prepared")).to_contain_text(
        said("editor.prepared.map", since="22 June 2025", version="2", who="Ada")
    )


def test_what_is_prepared_otherwise_is_asked_about_on_the_page(editor: Page) -> None:
    """Both sides are named, and the answer chosen is saved with one tap."""
    draw(editor)
    save(editor)
    expect(editor.locator("[data-version='2']")).to_be_visible()
    for day, name in (("2025-06-22", "Pond"), ("2025-06-21", "Mire")):
        editor.goto(f"/map?on={day}")
        ready(editor)
        choose(editor, said("ground.ground_under_repair"))
        editor.locator("#chosen-name").fill(name)
        editor.locator("#chosen-name").blur()
        save(editor, day=day)
        if name == "Pond":
            expect(editor.locator("[data-version='3']")).to_contain_text("Pond")

    faults = editor.locator("#editor-faults")
    expect(faults).to_contain_text("Version 3, Ada: Changed ground under repair “Pond”")
    expect(faults).to_contain_text("Yours: Changed ground under repair “Mire”")
    faults.get_by_role("button", name=said("editor_script.mine_until", day="22 June 2025")).click()
    expect(editor.locator("[data-version='4']")).to_contain_text("Mire")
    expect(editor.locator("#panel")).to_contain_text("carried over into the map prepared from 22 June 2025")
