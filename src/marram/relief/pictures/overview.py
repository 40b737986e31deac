"""The small overview beside a drawing's key: the whole way to the hole, with the frame of the drawing in it."""

from collections.abc import Callable, Sequence

from marram.relief.areas.construction import LineMark, PointMark, Role
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.outline import XY
from marram.relief.pictures.ground_shown import GroundShown
from marram.relief.pictures.labels import SIZE, Box
from marram.relief.pictures.lettering import SMALL, write
from marram.relief.pictures.marks import add_area, add_features, add_line, add_point
from marram.relief.pictures.markup import Ids, Node, add
from marram.relief.pictures.north_and_scale import freest
from marram.relief.pictures.styles import GROUND, INK, PAPER, stroke
from marram.relief.pictures.type_width import text_width
from marram.relief.pictures.view import View, overview_of
from marram.words.lengths import bar_words

SIDE = 132.0
"""Picture units: the side of the overview."""
PLATE = 26.0
"""Picture units: the height of the plate under its scale."""
_LEAST_FRAME = 7.0
"""Picture units: the frame of the drawing is marked no smaller than this."""
_SHOWN = frozenset({Role.LINE_TO_HOLE, Role.DROP_LINE, Role.REFERENCE_LINE, Role.CORRIDOR_EDGE})


def needs_overview(areas: Sequence[ReliefArea], view: View) -> bool:
    """Return whether anything that matters lies outside the frame: the hole as a rule."""
    points = [mark.at for area in areas for mark in area.construction if isinstance(mark, PointMark)]
    return not all(view.shows(at) for at in (*points, *(area.hole for area in areas)))


def add_overview(  # noqa: PLR0917 - what is drawn, and where
    parent: Node,
    areas: Sequence[ReliefArea],
    features: Callable[[View], Sequence[GroundShown]],
    view: View,
    corner: tuple[float, float],
    ids: Ids,
) -> None:
    """Draw the overview with its upper left corner at a place of the drawing.

    Args:
        parent: what it is added to.
        areas: the relief areas of the drawing.
        features: the features of the map that a frame shows.
        view: the frame of the drawing, which is marked.
        corner: where the overview stands.
        ids: the ids of the drawing.
    """
    over = overview_of(areas, SIDE, view)
    page = add(parent, "g", transform=f"translate({corner[0]:g} {corner[1]:g})")
    clipped = add(page, "g", clip_path=ids.url("over"))
    add(clipped, "rect", width=SIDE, height=SIDE, fill=GROUND)
    add_features(clipped, features(over), over, ids)
    for area in areas:
        if not area.is_spot:
            add_area(clipped, area, over, ids)
    marks = [mark for area in areas for mark in area.construction]
    for mark in marks:
        if isinstance(mark, LineMark) and mark.role in _SHOWN:
            add_line(clipped, mark, over)
    for mark in marks:
        if isinstance(mark, PointMark) and mark.role in {Role.HOLE, Role.BALL}:
            add_point(clipped, mark, over)
    _add_frame(clipped, view, over)
    points = [over.at(mark.at) for mark in marks if isinstance(mark, PointMark)]
    middle = over.at((view.left + view.size / 2, view.bottom + view.size / 2))
    _add_scale(page, over, [*points, *(_flag(over.at(area.hole)) for area in areas), middle])
    edge = {"fill": "none", **stroke(INK, 1)}
    add(page, "rect", edge, x=0.5, y=0.5, width=SIDE - 1, height=SIDE - 1)


def _flag(hole: XY) -> XY:
    """Return where the flag of a hole is in the picture."""
    return hole[0] + 8, hole[1] - 22


def _add_scale(parent: Node, over: View, points: Sequence[XY]) -> None:
    """Draw the scale bar on a plate of its own, in the corner where it covers no mark: stripes would run through it."""
    length = over.scale_bar()
    words, size = bar_words(length), min(SMALL, SIZE)
    wide = max(length * over.scale, text_width(words, size, bold=True)) + 12
    corners = [(x, y) for y in (SIDE - PLATE - 2, 2.0) for x in (2.0, SIDE - wide - 2)]
    reach = [Box(x - 6, y - 6, x + wide + 6, y + PLATE + 6) for x, y in corners]
    x, top = corners[reach.index(freest(reach, points, ()))]
    add(parent, "rect", x=x, y=top, width=wide, height=PLATE, rx=3, fill=PAPER, fill_opacity=0.9)
    y = top + PLATE - 4
    bar = f"M{x + 6:.1f} {y - 4:g}V{y:g}H{x + 6 + length * over.scale:.1f}V{y - 4:g}"
    add(parent, "path", stroke(INK, 1.8), d=bar)
    write(parent, words, (x + 6, y - 7), size, bold=True)


def _add_frame(parent: Node, view: View, over: View) -> None:
    x, y = over.at((view.left + view.size / 2, view.bottom + view.size / 2))
    side = max(view.size * over.scale, _LEAST_FRAME)
    place = {"x": x - side / 2, "y": y - side / 2, "width": side, "height": side}
    for style in (stroke(PAPER, 4.5), stroke(INK, 2)):
        add(parent, "rect", {"fill": "none", **style}, **place)
