"""What stands below the map of a drawing: the key, the distances to check, what was taken for granted."""

from collections.abc import Sequence

from marram.course.model import Course
from marram.relief.areas.construction import PointMark
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.pictures.ground_shown import GroundShown
from marram.relief.pictures.lettering import MARGIN, ROW, SMALL, WIDTH, wrapped, write
from marram.relief.pictures.markup import Attributes, Ids, Node, add
from marram.relief.pictures.picture_words import (
    area_words,
    assumed_words,
    ground_words,
    kind_words,
    mark_words,
    measures_told,
)
from marram.relief.pictures.styles import AREA, EDGES, INK, LINES, OWN_EDGE, fill_of, stroke
from marram.relief.pictures.type_width import text_width
from marram.relief.pictures.wanted import area_names
from marram.relief.pictures.where_not import not_nearer_arcs, where_not
from marram.words.texts import text

Entry = tuple[Attributes, str, bool]
"""One line of a key: how it looks, what it means, and whether it is an area (else a line)."""


def add_key(  # noqa: PLR0917 - what is drawn, and where
    parent: Node,
    features: Sequence[GroundShown],
    areas: Sequence[ReliefArea],
    top: float,
    ids: Ids,
    beside: float = 0.0,
) -> float:
    """Draw the key, what each pattern and line means, in two columns; return where it ends.

    Args:
        parent: what it is added to.
        features: the features of the map that the drawing shows.
        areas: the relief areas.
        top: where the key begins.
        ids: the ids of the drawing.
        beside: the side of the overview that stands at the left: beside it there is one column.
    """
    return add_entries(parent, _entries(features, areas, ids), top, beside)


def add_entries(parent: Node, entries: Sequence[Entry], top: float, beside: float = 0.0) -> float:
    """Draw a key of such entries in two columns, one where an overview stands beside it; return where it ends."""
    x, y, foot = MARGIN, top + 8, top + 8 + beside
    for style, words, is_area in entries:
        narrow = beside > 0 and y + ROW <= foot
        if beside and not narrow and y < foot:
            x, y = MARGIN, foot + 6
        left = 2 * MARGIN + beside if narrow else MARGIN
        x = max(x, left)
        wide = narrow or 36 + text_width(words, SMALL, bold=False) > WIDTH / 2 - MARGIN
        if wide and x > left:
            x, y = left, y + ROW
        swatch = f"M{x:g} {y + 2:g}h24v13h-24z" if is_area else f"M{x:g} {y + 9:g}h24"
        add(parent, "path", style, d=swatch)
        for row in wrapped(words, SMALL, width=WIDTH - x - 32 - MARGIN):
            write(parent, row, (x + 32, y + 14), SMALL)
            y += ROW
        y -= ROW
        if x > left or wide:
            x, y = MARGIN, y + ROW
        else:
            x += WIDTH / 2
    end = y if x == MARGIN else y + ROW
    return max(end, foot if beside else 0.0) + 4


def _entries(features: Sequence[GroundShown], areas: Sequence[ReliefArea], ids: Ids) -> list[Entry]:
    entries: list[Entry] = []
    if not areas[0].is_spot:
        entries.append(({**stroke(AREA, 2), "fill": ids.url("area")}, kind_words(areas[0].kind), True))
    if any(not where_not(area).is_empty for area in areas):
        entries.append(({**stroke(INK, 1), "fill": ids.url("not")}, text("relief.mark.where_not"), True))
    entries += ground_entries(features, ids)
    roles = dict.fromkeys(
        mark.role
        for area in areas
        for mark in (*area.construction, *not_nearer_arcs(area))
        if not isinstance(mark, PointMark)
    )
    return [*entries, *((LINES[role], mark_words(role), False) for role in roles if role in LINES)]


def ground_entries(features: Sequence[GroundShown], ids: Ids) -> list[Entry]:
    """Return the entries of a key for what the map shows."""
    styles = {kind: fill_of(kind, ids) for kind in dict.fromkeys(one.kind for one in features)}
    return [
        (style if kind in EDGES else {**style, **OWN_EDGE}, ground_words(kind), True)
        for kind, style in styles.items()
    ]


def add_notes(
    parent: Node, areas: Sequence[ReliefArea], course: Course | None, top: float, more: Sequence[str] = ()
) -> float:
    """Write the distances to check, what was taken for granted, and the map's credit line; return where they end."""
    lines = []
    for number, (area, name) in enumerate(zip(areas, area_names(areas), strict=True), 1):
        which = text("relief.measure.which", number=number, name=name) if name else ""
        lines += [which + one for one in measures_told(area)]
    if not areas[0].is_spot:
        lines.append(area_words(sum(area.area_m2 for area in areas)))
    lines += [assumed_words(one) for one in dict.fromkeys(key for area in areas for key in area.remarks)]
    lines += more
    if course is not None and course.credit:
        lines.append(course.credit)
    rows = [row for line in dict.fromkeys(lines) for row in wrapped(line, SMALL)]
    for number, row in enumerate(rows):
        write(parent, row, (MARGIN, top + 14 + number * ROW), SMALL)
    return top + len(rows) * ROW + 8
