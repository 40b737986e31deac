"""Marking ground where one stands, on a phone; and the ruling that follows from it."""

import re
from math import pi

import pytest
from fastapi import FastAPI
from playwright.sync_api import Page, expect

from marram.course.model import Kind
from marram.words.texts import text as said
from tests.desk.answers import answer
from tests.desk.axe import serious
from tests.desk.editing import choose, corners, look_at, ready, save
from tests.desk.settled import drawn, settled
from tests.desk.test_browser import TOO_SMALL
from tests.desk.test_map_editor import DAY

pytestmark = pytest.mark.browser
PHONE = (55.0041, 4.00015)
"""Where the phone of the ``editor`` fixture is, known to 6.2 m."""
METRE = 1 / 111_320


def mark(page: Page) -> None:
    page.get_by_role("button", name=said("editor.mark")).tap()
    expect(page.locator("#editor-words")).to_contain_text("to about 6.2 m")


def marked(editing: FastAPI) -> object:
    """Return the ground under repair that was marked last, in metres on its course."""
    maps = editing.state.maps
    latest = maps.latest()
    (ident,) = [edit.ident for edit in latest.edits]
    return next(one for one in maps.course(latest.number).features if one.ident == ident)


def test_a_circle_around_the_phone(editor: Page, editing: FastAPI) -> None:
    """Radius and place are right on the ground, the phone's accuracy is kept, the cautions are shown.

    The area of a circle of 4 m is π·4² m², here as a polygon of 36 corners on it (0.5 % less).
    """
    mark(editor)
    expect(editor.locator("#mark-rough")).to_be_visible()
    expect(editor.locator("#tools-mark")).to_contain_text("balls are in flight")
    editor.get_by_role("button", name="Radius: more").tap()
    editor.get_by_role("button", name=said("editor.use")).tap()
    save(editor)
    expect(editor.locator("[data-version='2']")).to_contain_text("Added ground under repair")

    area = marked(editing)
    assert area.kind is Kind.GROUND_UNDER_REPAIR
    assert area.geometry.area == pytest.approx(pi * 16, rel=0.007)
    middle = editing.state.maps.course(2).plane.to_metres(PHONE[1], PHONE[0])
    assert (area.geometry.centroid.x, area.geometry.centroid.y) == pytest.approx(middle, abs=0.02)
    assert area.tags["accuracy"] == "6.2"


def test_a_rectangle_where_the_map_was_moved_to(editor: Page, editing: FastAPI) -> None:
    """Turned and sized by its buttons; placed by the cross it has no accuracy of the phone."""
    mark(editor)
    editor.get_by_label("Rectangle").check()
    for name, times in (("Length: more", 4), ("Width: less", 2), ("Turned: more", 6)):
        for _ in range(times):
            editor.get_by_role("button", name=name).tap()
    look_at(editor, PHONE[0] + 20 * METRE, PHONE[1], 20)
    expect(editor.locator("#editor-words")).to_contain_text("The cross marks the middle")
    editor.get_by_role("button", name=said("editor.use")).tap()
    save(editor)
    expect(editor.locator("[data-version='2']")).to_be_visible()

    area = marked(editing)
    west, south, east, north = area.geometry.bounds
    assert (east - west, north - south) == pytest.approx((10, 2), abs=0.02)
    assert "accuracy" not in area.tags


def test_a_walk_round_the_area(editor: Page, editing: FastAPI) -> None:
    """A corner at each place the phone comes to, the last one taken back; kept over a reload on the way."""
    mark(editor)
    editor.get_by_label(said("editor.shape.walk")).check()
    walk = [(0, 0), (8, 0), (8, 6), (30, 30), (0, 6)]
    for number, (east, north) in enumerate(walk):
        place = {"latitude": PHONE[0] + north * METRE, "longitude": PHONE[1] + east * METRE / 0.5735}
        editor.context.set_geolocation({**place, "accuracy": 2 + number / 10})
        expect(editor.locator("#editor-words")).to_contain_text(f"to about {2 + number / 10:g} m")
        editor.get_by_role("button", name=said("editor.corner_here")).tap()
        expect(editor.locator(".sketch-point")).to_have_count(min(number + 1, 4))
        if number == 3:
            editor.get_by_role("button", name=said("editor.take_back")).tap()
            expect(editor.locator(".sketch-point")).to_have_count(3)
        if number == 1:
            editor.reload()
            ready(editor)
            expect(editor.locator("#editor-words")).to_contain_text("2 corners")
            editor.get_by_role("button", name=said("shell.at_phone")).tap()
    editor.get_by_role("button", name=said("editor.use")).tap()
    save(editor)
    expect(editor.locator("[data-version='2']")).to_be_visible()

    area = marked(editing)
    # 8 m by 6 m; 0.5735 is the cosine of 55.004°, and a degree of longitude is 0.3 % longer than on a sphere.
    assert area.geometry.area == pytest.approx(48, rel=0.01)
    assert area.tags["accuracy"] == "2.4"


def test_without_a_position_the_cross_marks(editor: Page) -> None:
    """A phone that gives no position, or is elsewhere, says what to do; the shape stays under the cross."""
    editor.context.set_geolocation({"latitude": 0, "longitude": 0, "accuracy": 5})
    editor.get_by_role("button", name=said("editor.mark")).tap()
    expect(editor.locator("#editor-words")).to_contain_text("The phone is not on this course")
    look_at(editor, *PHONE, 20)
    editor.get_by_role("button", name=said("editor.use")).tap()
    expect(editor.locator("#edit-list li")).to_have_count(1)


def test_ground_marked_on_the_spot_is_ruled_on(editor: Page) -> None:
    """From the first page: mark, save, tap a ball in it, answer; free relief is drawn from just this ground.

    Free relief from ground under repair in the general area: one club-length from the nearest point of
    complete relief, not nearer the hole (Rule 16.1b).
    """
    editor.goto("/")
    editor.get_by_role("link", name=said("rulings.start.mark_ground")).click()
    expect(editor.locator("#editor-words")).to_contain_text("to about 6.2 m")
    editor.get_by_role("button", name=said("editor.use")).tap()
    editor.locator("#chosen-name").fill("Sprung leak")
    editor.locator("#chosen-name").blur()
    save(editor, who="AB")
    expect(editor.locator("#panel")).to_contain_text("Version 2 is saved")

    editor.goto(f"/ball?hole=1&on={DAY}&handed=right&form=stroke_play&local=none")
    expect(editor.locator("#map[data-ready=yes]")).to_have_count(1)
    look_at(editor, *PHONE, 20)
    drawn(editor)
    box = editor.locator("#map").bounding_box()
    editor.locator("#map").tap(position={"x": box["width"] / 2, "y": box["height"] / 2})
    expect(editor.locator("#panel")).to_contain_text("ground under repair: Sprung leak")
    expect(editor.locator("#panel")).to_contain_text("measure on the ground")
    editor.get_by_role("link", name=said("rulings.what.title")).click()
    editor.get_by_role("searchbox").fill(said("ground.ground_under_repair"))
    condition = editor.get_by_role("link", name="ground under repair, animal hole or temporary water").first
    expect(editor).to_have_url(re.compile("q=ground"))  # the list has followed the typing
    settled(editor)
    condition.press("Enter")
    for question, given in (
        ("What does the abnormal course condition interfere with?", "the ball: it touches"),
        ("What is it that interferes?", ".*declared under repair"),
        ("clearly unreasonable because of something that gives no free relief?", "No"),
        ("only because of a clearly unreasonable club", "No"),
    ):
        expect(editor.locator("h1")).to_contain_text(question)
        answer(editor, given)

    expect(editor.locator("#option-A")).to_contain_text(said("relief.kind.free"))
    expect(editor.locator("#panel")).to_contain_text("Relief from: Sprung leak (ground under repair)")
    expect(editor.locator("#panel")).to_contain_text("only to about 6.2 m, from a phone")
    expect(editor.locator(".relief.r-area.o-A")).to_be_visible()
    expect(editor.locator(".map-version")).to_have_text(
        "Map version 2, in force from 21 June 2025, saved by AB."
    )


def test_an_area_corrected_by_hand_can_forget_the_phone(editor: Page) -> None:
    """Moved until it fits, its edge is as good as a drawn one when the official says so."""
    mark(editor)
    editor.get_by_role("button", name=said("editor.use")).tap()
    expect(editor.locator("#chosen-accuracy")).to_contain_text("to about 6.2 m")
    editor.get_by_role("button", name="It fits now").tap()
    expect(editor.locator("#chosen-accuracy")).to_be_hidden()
    expect(editor.locator("#edit-list li")).to_have_count(1)


def test_who_saved_last_is_offered_again(editor: Page) -> None:
    """The initials stand in the field of the next save."""
    mark(editor)
    editor.get_by_role("button", name=said("editor.use")).tap()
    save(editor, who="AB")
    expect(editor.locator("#panel")).to_contain_text("Version 2 is saved")
    expect(editor.get_by_label(said("editor.who"))).to_have_value("AB")


def test_new_doubts_are_shown_after_the_save(editor: Page) -> None:
    """A dropping zone that serves nothing is saved and told of; choosing what it serves ends the doubt."""
    editor.locator("#draw-kind").select_option("dropping_zone")
    mark(editor)
    editor.get_by_role("button", name=said("editor.use")).tap()
    save(editor)
    expect(editor.locator("#new-faults")).to_contain_text("does not say what it serves")
    expect(editor.locator("#new-faults")).to_contain_text("does not say on which hole")

    choose(editor, said("ground.dropping_zone"))
    editor.locator("#chosen-hole").fill("1")
    editor.locator("#chosen-hole").blur()
    expect(editor.locator("#chosen-serves optgroup").first).to_have_attribute("label", "Hole 1")
    editor.locator("#chosen-serves").select_option(label="yellow penalty area “The Burn at the first”")
    save(editor)
    expect(editor.locator("[data-version='3']")).to_be_visible()
    expect(editor.locator("#panel")).not_to_contain_text("does not say what it serves")


def test_the_keyboard_alone_marks_shapes_and_deletes(editor: Page) -> None:
    """Arrow keys aim the cross, buttons do the rest: marked, moved by metres, another kind, gone, back again."""
    editor.get_by_role("button", name=said("editor.mark")).press("Enter")
    expect(editor.get_by_role("button", name=said("editor.use"))).to_be_focused()
    editor.locator("#editor-map").focus()
    editor.keyboard.press("ArrowLeft")
    expect(editor.locator("#editor-words")).to_contain_text("The cross marks the middle")
    editor.get_by_role("button", name=said("editor.use")).press("Enter")
    expect(editor.locator("#save-title")).to_be_focused()

    before = corners(editor)
    editor.locator("summary", has_text=said("editor.move")).press("Enter")
    editor.get_by_label("Step").select_option("5")
    editor.get_by_role("button", name=said("editor.move.east")).press("Enter")
    east = (corners(editor)[0][1] - before[0][1]) / METRE * 0.5735
    assert east == pytest.approx(5, rel=0.01)
    editor.locator("#chosen-kind").select_option("no_play_zone")
    expect(editor.locator("#edit-list")).to_have_text("Added no play zone")
    editor.get_by_role("button", name=said("editor.delete_area")).press("Enter")
    expect(editor.locator("#edit-list li")).to_have_count(0)
    expect(editor.get_by_role("button", name="Undo")).to_be_focused()
    editor.keyboard.press("Enter")
    expect(editor.locator("#edit-list")).to_have_text("Added no play zone")


def test_corners_at_the_cross_need_no_tap(editor: Page) -> None:
    """Drawing by keyboard: move the map, set a corner, three times, finish."""
    look_at(editor, *PHONE, 19)
    editor.get_by_role("button", name="Draw", exact=True).press("Enter")
    for key in ("ArrowRight", "ArrowDown", "ArrowLeft"):
        editor.get_by_role("button", name=said("editor.corner_at_cross")).press("Enter")
        editor.locator("#editor-map").press(key)
        editor.wait_for_function("() => !document.querySelector('.leaflet-pan-anim')")
    editor.get_by_role("button", name="Finish").press("Enter")
    assert len(set(corners(editor))) == 3


@pytest.mark.parametrize("width", [390, 1280])
@pytest.mark.parametrize("shape", ["Circle", "Rectangle", said("editor.shape.walk")])
def test_marking_is_clean_by_axe_and_large_enough(editor: Page, width: int, shape: str) -> None:
    """Nothing serious or critical, nothing smaller than 44 px (WCAG 2.2, 2.5.5), nothing off the side.

    On a phone the buttons that mark lie in the lower half of the screen, where a thumb is.
    """
    editor.set_viewport_size({"width": width, "height": 844})
    mark(editor)
    editor.get_by_label(shape).check()
    drawn(editor)
    assert not serious(editor)
    assert editor.evaluate(TOO_SMALL) == []
    assert editor.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
    if width == 390:
        for name in (
            said("shell.at_phone"),
            said("editor.corner_here") if shape == said("editor.shape.walk") else said("editor.use"),
        ):
            box = editor.get_by_role("button", name=name).bounding_box()
            assert 422 < box["y"] < box["y"] + box["height"] <= 844
