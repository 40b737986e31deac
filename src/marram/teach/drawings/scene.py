"""The drawing of a situation before its ruling: ground, ball, player, what it is about. It shows no relief."""

from collections.abc import Sequence
from itertools import pairwise

from marram.relief.areas.construction import distance
from marram.relief.geometry.outline import XY
from marram.relief.pictures.drawing import svg
from marram.relief.pictures.ground_shown import ground_shown
from marram.relief.pictures.labels import SIZE, Box, place_labels
from marram.relief.pictures.legend import Entry, add_entries, ground_entries
from marram.relief.pictures.lettering import MARGIN, ROW, SMALL, WIDTH, wrapped, write
from marram.relief.pictures.marks import add_arrow_head, add_features
from marram.relief.pictures.markup import Ids, Node, add, root, say, written
from marram.relief.pictures.north_and_scale import add_north, add_scale
from marram.relief.pictures.picture_words import away_words
from marram.relief.pictures.styles import GROUND, INK, PAPER, add_patterns, stroke
from marram.relief.pictures.view import View, edge_towards
from marram.services.ground.relief import condition_words
from marram.teach.drawings.frames import frame_of, whole_hole
from marram.teach.drawings.placing import Placed
from marram.teach.drawings.symbols import add_about, add_ball, add_cross, add_player, stance
from marram.teach.drawings.told import place_label, player_shown, shown
from marram.words.texts import text

OVERVIEW = 120.0
"""Picture units: the side of the small drawing of the whole hole."""
_ARROW = 8.0
"""Picture units: how far the head of an arrow reaches about its tip."""


def scene_svg(one: Placed, *, prefix: str = "scene") -> str:
    """Return the drawing of a situation as an SVG, ids starting with a prefix so that several can stand in one page."""
    ids = Ids(prefix)
    names = {"role": "img", "aria-labelledby": f"{ids('title')} {ids('desc')}", "fill": "none"}
    view = frame_of(one, WIDTH)
    content = root(WIDTH, 0)
    ground = ground_shown(one.course, view.frame)
    add_map(content, one, view, ids)
    _add_overview(content, one, view, ids)
    entries: list[Entry] = ground_entries(ground, ids)
    entries += [(stroke(INK, 1.6, "2 5"), text("drawings.key.to_hole"), False)]
    if one.condition is not None:
        entries.append((stroke(INK, 3, "2 4"), text("drawings.key.about"), False))
    bottom = add_entries(content, entries, WIDTH, OVERVIEW)
    height = _add_words(content, one, bottom)
    page = root(WIDTH, height, names)
    say(page, "title", text("drawings.title", hole=one.hole.number), id=ids("title"))
    say(page, "desc", " ".join(shown(one)), id=ids("desc"))
    defs = add(page, "defs")
    add_patterns(defs, ids)
    for name, side in (("frame", WIDTH), ("over", OVERVIEW)):
        add(add(defs, "clipPath", id=ids(name)), "rect", width=side, height=side)
    add(page, "rect", width=WIDTH, height=height, fill=PAPER)
    page.extend(list(content))
    return written(page)


def relief_svgs(one: Placed, *, prefix: str = "relief") -> tuple[str, ...]:
    """Return a drawing of each relief option of the ruling that could be drawn, as on the desk."""
    return tuple(
        svg(option.areas, one.course, prefix=f"{prefix}-{number}")
        for number, option in enumerate(one.options)
        if option.areas
    )


def add_map(parent: Node, one: Placed, view: View, ids: Ids, *, labels: bool = True) -> None:
    """Draw the square of ground with ball, player, other places and what it is about; ``ids`` hold its clip path."""
    hole = (one.hole.location.x, one.hole.location.y)
    clipped = add(parent, "g", clip_path=ids.url("frame"))
    add(clipped, "rect", width=WIDTH, height=WIDTH, fill=GROUND)
    add_features(clipped, ground_shown(one.course, view.frame), view, ids)
    if one.condition is not None:
        add_about(clipped, one.condition.geometry, view)
    ball = view.at(one.ball)
    (x1, y1), (x2, y2) = ball, view.at(hole)
    add(clipped, "path", stroke(INK, 1.6, "2 5"), d=f"M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}")
    wanted = [(place_label("ball" if one.seen else "ball_not_seen"), ball)]
    if player_shown(one):
        add_player(clipped, one.ball, hole, view, right_handed=one.right_handed)
        feet = stance(one.ball, hole, right_handed=one.right_handed).centroid
        wanted.append((place_label("player"), view.at((feet.x, feet.y))))
    for role, at in one.places.items():
        if view.shows(at):
            (
                add_ball(clipped, view.at(at), seen=True)
                if role == "provisional"
                else add_cross(clipped, view.at(at))
            )
            wanted.append((place_label(role), view.at(at)))
    if view.shows(hole):
        _add_flag(clipped, view.at(hole))
    add_ball(clipped, ball, seen=one.seen)
    if one.condition is not None and not (part := view.clip(one.condition.geometry)).is_empty:
        inside = part.representative_point()
        if view.shows((inside.x, inside.y)):
            wanted.append((condition_words(one.condition), view.at((inside.x, inside.y))))
    for start, tip, words in _away(one, view):
        add_arrow_head(clipped, start, tip)
        wanted.append((words, tip))
    if labels:
        _add_labels(parent, wanted, view)
    add_north(parent)
    add_scale(parent, view)
    add(parent, "rect", {"fill": "none", **stroke(INK, 1)}, x=0.5, y=0.5, width=WIDTH - 1, height=WIDTH - 1)


def _add_flag(parent: Node, at: XY) -> None:
    x, y = at
    add(parent, "path", stroke(INK, 2), d=f"M{x:.1f} {y:.1f}V{y - 24:.1f}l14 5l-14 5", fill=INK)
    add(parent, "circle", cx=x, cy=y, r=3, fill=INK)


def _away(one: Placed, view: View) -> list[tuple[XY, XY, str]]:
    """Return the arrows to the hole and to the last stroke where they lie outside the frame."""
    hole = (one.hole.location.x, one.hole.location.y)
    far = [(text("relief.mark.hole"), hole), *((place_label(role), at) for role, at in one.places.items())]
    found = []
    for words, place in far:
        tip = edge_towards(view, one.ball, place, 10.0)
        if tip is not None:
            tip = _beside(_furniture(view), tip, view.at(one.ball))
            label = away_words(words, distance(one.ball, place))
            found.append((view.at(one.ball), tip, label))
    return found


def _furniture(view: View) -> list[Box]:
    """Return where the arrow north and the scale stand."""
    return [
        Box(WIDTH - 44, 0, WIDTH, 62),
        Box(0, WIDTH - 34, 12 + view.scale_bar() * view.scale + 12, WIDTH),
    ]


def _beside(taken: Sequence[Box], tip: XY, start: XY) -> XY:
    """Return the tip of an arrow drawn back towards its start until it stands clear of what is drawn over it."""
    x, y = tip
    for part in (0.96**number for number in range(80)):
        x, y = start[0] + part * (tip[0] - start[0]), start[1] + part * (tip[1] - start[1])
        here = Box(x - _ARROW, y - _ARROW, x + _ARROW, y + _ARROW)
        if not any(here.overlaps(one) for one in taken):
            break
    return x, y


def _add_labels(parent: Node, wanted: Sequence[tuple[str, XY]], view: View) -> None:
    for label in place_labels(wanted, view.pixels, _furniture(view), [], []):
        if label.leader:
            (x1, y1), (x2, y2) = label.anchor, label.box.nearest(label.anchor)
            add(parent, "path", stroke(INK, 0.8), d=f"M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}")
        middle = ((label.box.left + label.box.right) / 2, (label.box.top + label.box.bottom) / 2)
        write(parent, label.text, (middle[0], middle[1] + SIZE * 0.34), SIZE, anchor="middle", bold=True)


def _add_overview(parent: Node, one: Placed, view: View, ids: Ids) -> None:
    """Draw the whole hole small, below the map on the left: the line of play, the hole, the ball, the frame."""
    over = whole_hole(one, OVERVIEW)
    page = add(parent, "g", transform=f"translate(10 {WIDTH + 10:g})")
    clipped = add(page, "g", clip_path=ids.url("over"))
    add(clipped, "rect", width=OVERVIEW, height=OVERVIEW, fill=GROUND)
    add_features(clipped, ground_shown(one.course, over.frame), over, ids)
    line = [over.at((x, y)) for x, y in one.hole.line.coords]
    for (x1, y1), (x2, y2) in pairwise(line):
        add(clipped, "path", stroke(INK, 1, "2 3"), d=f"M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}")
    _add_flag(clipped, over.at((one.hole.location.x, one.hole.location.y)))
    x, y = over.at((view.left + view.size / 2, view.bottom + view.size / 2))
    side = max(view.size * over.scale, 9.0)
    for style in (stroke(PAPER, 4.5), stroke(INK, 2)):
        place = {"x": x - side / 2, "y": y - side / 2, "width": side, "height": side}
        add(clipped, "rect", {"fill": "none", **style}, **place)
    edge = {"fill": "none", **stroke(INK, 1)}
    add(page, "rect", edge, x=0.5, y=0.5, width=OVERVIEW - 1, height=OVERVIEW - 1)


def _add_words(parent: Node, one: Placed, top: float) -> float:
    """Write what the drawing shows and the map's credit below it; return where it ends."""
    lines = [*shown(one), text("drawings.invented"), *([one.course.credit] if one.course.credit else [])]
    rows = [row for line in lines for row in wrapped(line, SMALL)]
    for number, row in enumerate(rows):
        write(parent, row, (MARGIN, top + 14 + number * ROW), SMALL)
    return top + len(rows) * ROW + 8
