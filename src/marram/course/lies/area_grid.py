"""Which area of the course many balls lie in: a grid of cells answers all that lie clear of every edge.

A cell is *clear* when no edge comes within the ball's radius of any place in it, so that every ball in it lies
in the same area. Between two edges, clear cells of a row follow one another without a break; one exact
answer settles the whole run. Balls in other cells are decided one by one, by distance.
"""

import math
from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray

from marram.course.lies.areas import FURTHEST
from marram.course.lies.coast import is_coastline
from marram.course.lies.decision import Decider, Grounds, decider, points_at
from marram.course.lies.regions import Ground, Region, ground_of
from marram.course.lies.tolerance import EDGE_TOLERANCE, TOUCH
from marram.course.model import Course
from marram.errors import BadPlace
from marram.said import said

CELL = 0.5
"""The side of a cell, metres: small enough that few balls lie in a cell with an edge (measured)."""

MOST_CELLS = 16_000_000
"""On a very large course cells grow so that there are no more than this many (16 MB)."""

AROUND = 600.0
"""Metres beyond the lines of play that are laid out in cells (own choice); a ball farther out is decided by distance."""

AT_ONCE = 1_000_000
"""Cells, or steps along edges, that are worked on at a time: how large the map is does not tell in the memory."""

MOST_GRIDS = 4
"""No more grids than this are kept for a course; the oldest gives way."""

SAMPLES = 4
"""Edges are followed in steps of a cell's side divided by this."""

UNCLEAR = -1


def areas_of(course: Course, places: NDArray[np.float64], hole: int) -> Grounds:
    """Return what each of many balls lies in, as members of :class:`Ground`.

    The answers are those of :func:`~marram.course.lies.areas.area_at`. The first call for a hole lays the grid.

    Args:
        course: the map.
        places: the centres of the balls in local metres, of shape (n, 2).
        hole: the hole being played.

    Raises:
        BadPlace: the map has no such hole, or a place is not on or near the course.
    """
    places = np.asarray(places, dtype=np.float64)
    if places.ndim != 2 or places.shape[1] != 2:
        raise BadPlace(said("Places have the shape (n, 2), not {shape}.", shape=places.shape))
    if len(places) and not np.abs(places).max() <= FURTHEST:
        raise BadPlace(
            said(
                "A place is not within {furthest:.0f} km of the middle of the course.",
                furthest=FURTHEST / 1000,
            )
        )
    grid = _grid_of(course, hole)
    return grid.look_up(places)


@dataclass(frozen=True, eq=False)
class _Grid:
    """The cells of a hole's ground.

    Attributes:
        cells: what a ball in each clear cell lies in, else ``UNCLEAR``; a border of one cell stands for all beyond.
        west: the west edge of the first column.
        south: the south edge of the first row.
        side: the side of a cell.
        exact: decides the other balls by distance.
    """

    cells: NDArray[np.int8]
    west: float
    south: float
    side: float
    exact: Decider

    def look_up(self, places: NDArray[np.float64]) -> Grounds:
        rows, columns = self.cells.shape
        column = ((places[:, 0] - self.west) * (1 / self.side)).clip(0, columns - 1).astype(np.intp)
        row = ((places[:, 1] - self.south) * (1 / self.side)).clip(0, rows - 1).astype(np.intp)
        row *= columns
        row += column
        answers = self.cells.ravel().take(row)
        unclear = np.flatnonzero(answers == UNCLEAR)
        if len(unclear):
            answers[unclear] = self.exact.decide(points_at(places[unclear]))
        return answers


def _grid_of(course: Course, hole: int) -> _Grid:
    kept: dict[int, _Grid] = course.kept.setdefault(_grid_of, {})
    if hole not in kept:
        grid = _lay(course, hole)
        while len(kept) >= MOST_GRIDS:
            kept.pop(next(iter(kept)))
        kept[hole] = grid
    return kept[hole]


def _lay(course: Course, hole: int) -> _Grid:
    ground = ground_of(course, hole)
    bounds = ground.in_bounds or ground.fences
    regions = [*ground.specific, *(() if bounds is None else (bounds,))]
    exact = decider(ground)
    if not regions:
        return _Grid(np.full((1, 1), Ground.GENERAL_AREA, dtype=np.int8), 0.0, 0.0, 1.0, exact)
    frame = _frame(course, regions)
    west, south, east, north = frame.bounds
    side = max(CELL, math.sqrt((east - west) * (north - south) / MOST_CELLS))
    # A border of two cells: the outermost stands for everything beyond.
    west, south = west - 2 * side, south - 2 * side
    cells = np.zeros((int((north - south) / side) + 3, int((east - west) / side) + 3), dtype=np.int8)
    grid = _Grid(cells, west, south, side, exact)
    shapes = [region.shape for region in regions]
    for starts, ends in _edges(shapes, shapely.buffer(frame, 3 * side, join_style="mitre")):
        _mark(grid, starts, ends)
    if not frame.covers(shapely.box(*shapely.total_bounds(shapes))):
        # Edges run on beyond the cells: nothing stands for what lies there.
        cells[[0, -1], :] = UNCLEAR
        cells[:, [0, -1]] = UNCLEAR
    rows = max(1, AT_ONCE // cells.shape[1])
    for first in range(0, cells.shape[0], rows):
        _fill(grid, first, cells[first : first + rows])
    return grid


def _frame(course: Course, regions: list[Region]) -> shapely.Polygon:
    """Return what is laid out in cells: all that is mapped as an area about the lines of play, and not the open sea."""
    west, south, east, north = shapely.total_bounds(
        [shape for one in course.holes.values() for shape in (one.line, one.location)]
    )
    played = shapely.box(west - AROUND, south - AROUND, east + AROUND, north + AROUND)
    mapped = [
        piece.shape
        for region in regions
        for area in region.areas
        for piece in area.pieces
        if not is_coastline(piece.feature)
    ]
    both = shapely.intersection(played, shapely.box(*shapely.total_bounds(mapped))) if mapped else played
    return both if isinstance(both, shapely.Polygon) and not both.is_empty else played


def _edges(
    shapes: list[shapely.Geometry], frame: shapely.Polygon
) -> Iterator[tuple[NDArray[np.float64], NDArray[np.float64]]]:
    """Yield the ends of the edges of the shapes, as far as they run within a frame, some at a time."""
    lines = shapely.get_parts(shapely.boundary(np.array(shapes, dtype=object)))
    shapely.prepare(frame)
    cut = shapely.intersects(frame, lines) & ~shapely.covers(frame, lines)
    within = [lines[shapely.covers(frame, lines)], shapely.get_parts(shapely.intersection(lines[cut], frame))]
    places, of = shapely.get_coordinates(np.concatenate(within), return_index=True)
    same = of[1:] == of[:-1]
    starts, ends = places[:-1][same], places[1:][same]
    steps = np.cumsum(np.hypot(*(ends - starts).T) / CELL * SAMPLES + 2)
    blocks = np.flatnonzero(np.diff(steps // AT_ONCE)) + 1
    yield from zip(np.split(starts, blocks), np.split(ends, blocks), strict=True)


def _mark(grid: _Grid, starts: NDArray[np.float64], ends: NDArray[np.float64]) -> None:
    """Mark every cell that has a place within the ball's radius of an edge."""
    step = grid.side / SAMPLES
    count = np.ceil(np.hypot(*(ends - starts).T) / step).astype(np.intp) + 1
    which = np.repeat(np.arange(len(count)), count)
    along = (np.arange(len(which)) - np.repeat(np.cumsum(count) - count, count)) / np.repeat(
        np.maximum(count - 1, 1), count
    )
    samples = starts[which] + along[:, None] * (ends - starts)[which]
    # A place within the radius of the edge is within half a step more of a sample, in x and in y; that square
    # is smaller than a cell, so its corners meet every cell it meets.
    reach = TOUCH + EDGE_TOLERANCE + step / 2
    rows, columns = grid.cells.shape
    for east in (-reach, reach):
        column = np.floor((samples[:, 0] + east - grid.west) / grid.side).astype(np.intp)
        for north in (-reach, reach):
            row = np.floor((samples[:, 1] + north - grid.south) / grid.side).astype(np.intp)
            within = (column >= 0) & (column < columns) & (row >= 0) & (row < rows)
            grid.cells[row[within], column[within]] = UNCLEAR


def _fill(grid: _Grid, first: int, some: NDArray[np.int8]) -> None:
    """Settle each run of clear cells of a row by one exact answer, in some rows from the first on."""
    columns = some.shape[1]
    cells = some.ravel()
    clear = cells != UNCLEAR
    begins = clear.copy()
    begins[1:] &= ~clear[:-1]
    begins[::columns] = clear[::columns]
    row, column = np.divmod(np.flatnonzero(begins), columns)
    middles = np.column_stack(
        [grid.west + (column + 0.5) * grid.side, grid.south + (first + row + 0.5) * grid.side]
    )
    run = np.cumsum(begins) - 1
    cells[clear] = grid.exact.decide(points_at(middles))[run[clear]]
