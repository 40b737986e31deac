"""The drawing of a question answered by a tap: the map alone; with an answer also what was tapped, and what is right."""

from collections.abc import Sequence

from marram.relief.areas.construction import PointMark, Role
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.outline import XY
from marram.relief.pictures.lettering import WIDTH
from marram.relief.pictures.marks import add_area, add_line, add_point
from marram.relief.pictures.markup import Ids, Node, add, root, say, written
from marram.relief.pictures.sheet import TYPE
from marram.relief.pictures.styles import INK, PAPER, add_patterns, stroke
from marram.relief.pictures.view import View
from marram.teach.drawings.placing import Placed
from marram.teach.drawings.scene import add_map
from marram.teach.drawings.told import shown
from marram.words.texts import text


def tapped_svg(
    one: Placed, view: View, taps: Sequence[XY] = (), right: ReliefArea | None = None, *, prefix: str = "tap"
) -> str:
    """Return the drawing as a square SVG.

    Args:
        one: the situation.
        view: the frame.
        taps: the places tapped so far, in local metres; three and more are joined as the corners of an area.
        right: the relief area that was asked about, once the answer is judged.
        prefix: starts every id.
    """
    ids = Ids(prefix)
    names = {"role": "img", "aria-labelledby": f"{ids('title')} {ids('desc')}"}
    page = root(WIDTH, WIDTH, {**TYPE, **names})
    say(page, "title", text("drawings.title", hole=one.hole.number), id=ids("title"))
    say(page, "desc", " ".join(shown(one)), id=ids("desc"))
    defs = add(page, "defs")
    add_patterns(defs, ids)
    add(add(defs, "clipPath", id=ids("frame")), "rect", width=WIDTH, height=WIDTH)
    add(page, "rect", width=WIDTH, height=WIDTH, fill=PAPER)
    if right is None:
        add_map(page, one, view, ids)
    else:
        add_map(page, one, view, ids, labels=False)
        _add_right(page, right, view, ids)
    _add_taps(page, [view.at(place) for place in taps])
    return written(page)


def _add_right(page: Node, area: ReliefArea, view: View, ids: Ids) -> None:
    clipped = add(page, "g", clip_path=ids.url("frame"))
    add_area(clipped, area, view, ids)
    for mark in area.construction:
        add_line(clipped, mark, view)
    add_point(clipped, PointMark(Role.REFERENCE, area.reference), view)


def _add_taps(page: Node, taps: Sequence[XY]) -> None:
    if len(taps) > 2:
        path = "M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in taps) + "Z"
        add(page, "path", {**stroke(PAPER, 5), "fill": "none"}, d=path)
        add(page, "path", {**stroke(INK, 2, "6 4"), "fill": "none"}, d=path)
    for x, y in taps:
        add(page, "circle", stroke(PAPER, 6), cx=x, cy=y, r=9)
        add(page, "circle", stroke(INK, 3), cx=x, cy=y, r=9)
        add(page, "circle", cx=x, cy=y, r=2, fill=INK)
