"""The map editor in a real browser, on a phone: draw with taps, reload, save; conflicts; the keyboard alone."""

from datetime import date

import pytest
from fastapi import FastAPI
from playwright.sync_api import Page, expect

from marram.course.versions.map_edits import Edit
from marram.words.texts import text as said
from tests.desk.axe import serious
from tests.desk.editing import (
    CORNERS,
    choose,
    corners,
    draw,
    expect_corners,
    finish,
    look_at,
    pixel,
    ready,
    save,
    tap_corners,
)
from tests.desk.test_browser import TOO_SMALL
from tests.desk.test_map_editor import area

pytestmark = pytest.mark.browser


def test_drawn_with_three_taps_kept_over_a_reload_and_saved(editor: Page, editing: FastAPI) -> None:
    """Three taps make an area; after a reload it is offered again; saved, the list of versions shows it."""
    draw(editor)
    expect(editor.locator("#edit-list")).to_contain_text("Added ground under repair")
    editor.reload()
    ready(editor)
    expect(editor.locator("#draft-words")).to_contain_text("1 unsaved edit of version 1")
    editor.get_by_role("button", name=said("editor.take_up")).click()
    save(editor)

    expect(editor.locator("[data-version='2']")).to_contain_text("Added ground under repair")
    expect(editor.locator("[data-version='2']")).to_contain_text("Ada")
    expect(editor.locator("#draft-offer")).to_be_hidden()
    (edit,) = editing.state.maps.latest().edits
    ring = edit.feature["geometry"]["coordinates"][0]
    for (latitude, longitude), place in zip(CORNERS, ring[:3], strict=True):
        # A pixel at zoom 19 is 0.17 m here, 0.0000027 degrees of longitude.
        assert place == pytest.approx([longitude, latitude], abs=0.000004)


def test_edits_offered_again_are_not_lost_to_new_ones(editor: Page) -> None:
    """Whoever draws on before deciding about the kept edits has both after one more reload."""
    add_by_coordinates(editor, "55.004,4.0\n55.0041,4.0\n55.0041,4.0001")
    editor.reload()
    ready(editor)
    add_by_coordinates(editor, "55.005,4.0\n55.0051,4.0\n55.0051,4.0001")
    editor.reload()
    ready(editor)
    editor.get_by_role("button", name=said("editor.take_up")).click()

    expect(editor.locator("#edit-list li")).to_have_count(2)


def test_the_last_tap_and_every_step_can_be_undone(editor: Page) -> None:
    """A corner is taken back while drawing; a finished area is undone, and done again."""
    look_at(editor, 55.0041, 4.00015)
    editor.get_by_role("button", name="Draw", exact=True).tap()
    tap_corners(editor, CORNERS)
    editor.get_by_role("button", name=said("editor.take_back")).tap()
    expect(editor.locator("#editor-words")).to_contain_text("2 of at least 3")
    expect(editor.get_by_role("button", name="Finish")).to_be_disabled()
    tap_corners(editor, CORNERS[2:], before=2)
    finish(editor)

    editor.get_by_role("button", name="Undo").tap()
    expect(editor.locator("#edit-count")).to_have_text(said("editor.no_edits"))
    editor.get_by_role("button", name="Redo").tap()
    expect(editor.locator("#edit-list li")).to_have_count(1)


def drag(editor: Page, start: dict[str, float], right: float, down: float) -> None:
    before = editor.locator("#chosen-corners").input_value()
    box = editor.locator("#editor-map").bounding_box()
    assert box is not None
    editor.mouse.move(box["x"] + start["x"], box["y"] + start["y"])
    editor.mouse.down()
    editor.mouse.move(box["x"] + start["x"] + right / 2, box["y"] + start["y"] + down / 2)
    editor.mouse.move(box["x"] + start["x"] + right, box["y"] + start["y"] + down)
    editor.mouse.up()
    expect(editor.locator("#chosen-corners")).not_to_have_value(before)


def test_an_area_is_moved_shaped_and_deleted(editor: Page) -> None:
    """The arrows move every corner alike, a corner goes by itself, one is added between two, one taken away."""
    draw(editor)
    editor.evaluate("scrollTo(0, 0)")
    before = corners(editor)
    drag(editor, pixel(editor, *before[1]), 0, 40)
    shaped = corners(editor)
    assert shaped[0] == before[0]
    assert shaped[1][0] < before[1][0]

    middle = [(max(axis) + min(axis)) / 2 for axis in zip(*shaped, strict=True)]
    drag(editor, pixel(editor, *middle), -30, -30)
    moved = corners(editor)
    shifts = {
        (round(new[0] - old[0], 7), round(new[1] - old[1], 7)) for new, old in zip(moved, shaped, strict=True)
    }
    assert len(shifts) == 1
    assert shifts.pop()[0] > 0

    editor.locator(".handle.between").first.click()
    expect_corners(editor, 4)
    editor.locator(".handle.corner").first.click()
    editor.get_by_role("button", name=said("editor.delete_corner")).click()
    expect_corners(editor, 3)
    editor.get_by_role("button", name=said("editor.delete_area")).click()
    expect(editor.locator("#edit-count")).to_have_text(said("editor.no_edits"))


def test_a_conflict_shows_the_other_side_and_mine_can_go_on_top(editor: Page, editing: FastAPI) -> None:
    """What somebody else saved meanwhile is told by name; applied on the newest version, mine is saved."""
    maps = editing.state.maps
    maps.save([Edit("add", "drawn/1", area("drawn/1"))], base=1, who="Ada", in_force_from=date(2025, 6, 21))
    editor.reload()
    ready(editor)
    choose(editor, "ground under repair “Flooded”")
    editor.locator("#chosen-name").fill("Mire")
    editor.locator("#chosen-name").blur()
    theirs = Edit("change", "drawn/1", area("drawn/1", name="Pond"))
    maps.save([theirs], base=2, who="Bo", in_force_from=date(2025, 6, 21))
    save(editor)

    expect(editor.locator("#editor-faults")).to_contain_text(
        "Version 3, Bo: Changed ground under repair “Pond”"
    )
    expect(editor.locator("#editor-faults")).to_contain_text("Yours: Changed ground under repair “Mire”")
    editor.get_by_role("button", name=said("editor_script.put_mine", version="3")).click()
    save(editor)
    expect(editor.locator("[data-version='4']")).to_contain_text("Mire")


def test_a_crossing_edge_is_refused_and_the_edit_stays(editor: Page, editing: FastAPI) -> None:
    """The desk's faults are shown, and what was drawn is still there to be mended."""
    add_by_coordinates(editor, "55.004,4.0\n55.0041,4.0001\n55.004,4.0001\n55.0041,4.0")
    save(editor)

    expect(editor.locator("#editor-faults")).to_contain_text(said("editor.not_saved"))
    expect(editor.locator("#editor-faults")).to_contain_text("at 55.00")
    expect(editor.locator("#edit-list li")).to_have_count(1)
    assert editing.state.maps.latest().number == 1


def add_by_coordinates(editor: Page, places: str) -> None:
    editor.locator("summary", has_text=said("editor.coordinates")).press("Enter")
    editor.get_by_label("Corners in order").fill(places)
    editor.get_by_role("button", name=said("editor.coordinates.add")).press("Enter")


def test_the_keyboard_alone_draws_and_saves(editor: Page) -> None:
    """Coordinates stand in for taps, and the focus goes to the new area."""
    add_by_coordinates(editor, "55.004,4.0\n55.0041,4.0\n55.0041,4.0001")
    expect(editor.locator("#chosen-title")).to_be_focused()
    save(editor)
    expect(editor.locator("[data-version='2']")).to_contain_text("Added ground under repair")


@pytest.mark.parametrize("width", [390, 1280])
def test_the_editor_is_clean_by_axe_and_large_enough(editor: Page, width: int) -> None:
    """Nothing serious or critical, nothing smaller than 44 px (WCAG 2.2, 2.5.5), nothing off the side."""
    editor.set_viewport_size({"width": width, "height": 850})
    draw(editor)
    assert not serious(editor, unfolded=True)
    assert editor.evaluate(TOO_SMALL) == []
    assert editor.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
