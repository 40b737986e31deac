"""A corner dragged with a finger or a mouse leaves no spike, however its area was drawn."""

import math
from datetime import date
from typing import Any

import pytest
from fastapi import FastAPI
from playwright.sync_api import Page, expect
from shapely.geometry import Polygon

from marram.course.versions.map_edits import Edit
from marram.words.texts import text as said
from tests.desk.editing import corners, expect_corners, look_at, pixel, ready, swipe
from tests.desk.test_map_editor import area

pytestmark = pytest.mark.browser

SOUTH, WEST = 55.004, 4.0
NORTH, EAST = 55.0044, 4.0007
"""A square of some 45 m."""
SQUARE = [[WEST, SOUTH], [EAST, SOUTH], [EAST, NORTH], [WEST, NORTH]]
SHARPEST = 20.0
"""Degrees: an angle below this is a spike; the drags below leave none sharper than 40."""


def rounded_square(steps: int) -> list[list[float]]:
    """Return a ring round the middle of the square with so many corners."""
    middle_x, middle_y = (WEST + EAST) / 2, (SOUTH + NORTH) / 2
    turns = [2 * math.pi * step / steps for step in range(steps)]
    return [
        [middle_x + (EAST - WEST) / 2 * math.cos(turn), middle_y + (NORTH - SOUTH) / 2 * math.sin(turn)]
        for turn in turns
    ]


def halved(ring: list[list[float]]) -> list[list[float]]:
    """Return a ring with a corner in the middle of each edge, and another a centimetre beside it."""
    return [
        [a + (b - a) * share for a, b in zip(one, other, strict=True)]
        for one, other in zip(ring, [*ring[1:], ring[0]], strict=True)
        for share in (0, 0.5, 0.5002)
    ]


RINGS = {
    "a doubled corner": [*SQUARE[:3], SQUARE[2], SQUARE[3]],
    "the first corner drawn again at the end": [*SQUARE[2:], *SQUARE[:2], SQUARE[2]],
    "three at one place": [*SQUARE[:3], SQUARE[2], SQUARE[2], SQUARE[3]],
    "corners beside each other on straight edges": halved(SQUARE),
    "a ring of very many corners": rounded_square(180),
}


def sharpest(places: list[tuple[float, float]]) -> float:
    """Return the sharpest angle of a ring given as latitude and longitude, degrees."""
    flat = [(x * math.cos(math.radians(SOUTH)), y) for y, x in places]
    found = []
    for before, at, after in zip([flat[-1], *flat[:-1]], flat, [*flat[1:], flat[0]], strict=True):
        one, other = (math.atan2(end[1] - at[1], end[0] - at[0]) for end in (before, after))
        turn = abs(math.degrees(one - other)) % 360
        found.append(min(turn, 360 - turn))
    return min(found)


def opened(page: Page, editing: FastAPI, ring: list[list[float]], more: list[Edit] | None = None) -> None:
    """Put an area with a ring on the map, choose it, and look at it."""
    feature: dict[str, Any] = area("new/1", name="Tried")
    feature["geometry"] = {"type": "Polygon", "coordinates": [[*ring, ring[0]]]}
    maps = editing.state.maps
    edits = [Edit("add", "new/1", feature), *(more or [])]
    maps.save(edits, base=1, who="Ada", in_force_from=date.min)
    page.reload()
    ready(page)
    page.locator("summary", has_text="Choose an area by name").click()
    page.get_by_label("Area on the map").select_option(value="new/1")
    page.get_by_role("button", name="Choose it").click()
    look_at(page, (SOUTH + NORTH) / 2, (WEST + EAST) / 2, 18.6)


def in_the_north_east(page: Page) -> dict[str, float]:
    """Return where the knob nearest to the north-eastern corner is drawn."""
    aim = pixel(page, NORTH, EAST)
    box = page.locator("#editor-map").bounding_box()
    knobs = [knob.bounding_box() for knob in page.locator(".handle.corner").all()]
    middles = [
        {"x": one["x"] + one["width"] / 2 - box["x"], "y": one["y"] + one["height"] / 2 - box["y"]}
        for one in knobs
    ]
    return min(middles, key=lambda one: math.hypot(one["x"] - aim["x"], one["y"] - aim["y"]))


@pytest.mark.parametrize("name", RINGS)
@pytest.mark.parametrize("how", ["finger", "mouse"])
def test_a_dragged_corner_leaves_no_spike(editor: Page, editing: FastAPI, name: str, how: str) -> None:
    """The corner is where it was dropped, no angle is a spike, nothing crosses, and no place stands twice."""
    opened(editor, editing, RINGS[name])
    start = in_the_north_east(editor)
    right, down = 26, -34
    if how == "finger":
        swipe(editor, start, right, down)
    else:
        editor.evaluate("scrollTo(0, 0)")
        box = editor.locator("#editor-map").bounding_box()
        editor.mouse.move(box["x"] + start["x"], box["y"] + start["y"])
        editor.mouse.down()
        editor.mouse.move(box["x"] + start["x"] + right, box["y"] + start["y"] + down, steps=5)
        editor.mouse.up()
    expect(editor.locator("#edit-list")).to_contain_text("Tried")
    found = corners(editor)
    shape = Polygon([(x, y) for y, x in found])
    assert shape.is_valid
    assert sharpest(found) > SHARPEST
    assert len(set(found)) == len(found)
    before = Polygon(RINGS[name]).buffer(0)
    assert shape.area > before.area
    dropped = {"x": start["x"] + right, "y": start["y"] + down}
    nearest = min(
        math.hypot(at["x"] - dropped["x"], at["y"] - dropped["y"])
        for at in (pixel(editor, *one) for one in found)
    )
    assert nearest < 3


def test_a_corner_shared_with_a_neighbour_moves_alone(editor: Page, editing: FastAPI) -> None:
    """The neighbour keeps its corner; the area dragged has no spike towards it."""
    neighbour: dict[str, Any] = area("new/2", name="Beside")
    beside = [[EAST, SOUTH], [2 * EAST - WEST, SOUTH], [2 * EAST - WEST, NORTH], [EAST, NORTH]]
    neighbour["geometry"] = {"type": "Polygon", "coordinates": [[*beside, beside[0]]]}
    opened(editor, editing, [*SQUARE[:3], SQUARE[2], SQUARE[3]], [Edit("add", "new/2", neighbour)])
    swipe(editor, in_the_north_east(editor), -26, 20)
    expect(editor.locator("#edit-list li")).to_have_count(1)
    assert sharpest(corners(editor)) > SHARPEST
    assert len(corners(editor)) == 4


def test_a_doubled_corner_is_deleted_at_once(editor: Page, editing: FastAPI) -> None:
    """Deleting a corner that was drawn twice takes both away."""
    opened(editor, editing, RINGS["a doubled corner"])
    start = in_the_north_east(editor)
    editor.locator("#editor-map").tap(position=start)
    editor.get_by_role("button", name="Delete corner").tap()
    expect_corners(editor, 3)


def test_an_edge_dragged_across_itself_is_said_at_once(editor: Page, editing: FastAPI) -> None:
    """A corner dragged over the edge across: said beside the map and in the panel, ringed; typed too; undo ends it."""
    opened(editor, editing, SQUARE)
    start, across = in_the_north_east(editor), pixel(editor, NORTH, WEST)
    swipe(editor, start, across["x"] - start["x"] - 40, 50)
    told, ring = editor.locator("#editor-words"), editor.locator("path.crossing")
    expect(told).to_have_text(said("editor_script.crosses"))
    expect(editor.get_by_text(said("editor.crosses"))).to_be_visible()
    expect(ring).to_have_count(1)
    editor.get_by_role("button", name=said("editor.undo"), exact=True).tap()
    expect(told).to_have_text(said("editor_script.crosses_no_more"))
    expect(ring).to_have_count(0)
    editor.locator("summary", has_text=said("editor.corners")).first.click()
    bow_tie = [SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3]]
    editor.locator("#chosen-corners").fill("\n".join(f"{north},{east}" for east, north in bow_tie))
    editor.get_by_role("button", name=said("editor.corners.use")).tap()
    expect(told).to_have_text(said("editor_script.crosses"))
