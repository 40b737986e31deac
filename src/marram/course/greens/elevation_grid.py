"""Elevations from an Esri ASCII grid: a few lines of header, then rows from north to south.

The format is Esri's, described on its page *Esri ASCII raster format*: ``ncols``, ``nrows``, ``xllcorner`` or
``xllcenter``, ``yllcorner`` or ``yllcenter``, ``cellsize``, and ``nodata_value`` (-9999 where it is not said).
"""

from dataclasses import dataclass
from pathlib import Path

import numpy as np
import shapely
from numpy.typing import NDArray
from pyproj import Transformer

from marram.course.model import Course
from marram.errors import InputError
from marram.said import said

KEYS = ("ncols", "nrows", "xllcorner", "xllcenter", "yllcorner", "yllcenter", "cellsize", "nodata_value")
NO_DATA = -9999.0
COARSEST_DEGREES = 1e-3
"""A grid whose cells are smaller than this, and which lies within ±180 and ±90, is in degrees (own choice)."""


@dataclass(frozen=True, slots=True)
class Grid:
    """A grid of elevations.

    Attributes:
        x: of the middle of the first column.
        y: of the middle of the last row.
        cell: the side of a cell.
        heights: elevations, north row first; not-a-number where there is none.
    """

    x: float
    y: float
    cell: float
    heights: NDArray[np.float64]

    @property
    def in_degrees(self) -> bool:
        """Whether its coordinates can only be degrees."""
        rows, columns = self.heights.shape
        east, north = self.x + columns * self.cell, self.y + rows * self.cell
        return (
            self.cell < COARSEST_DEGREES
            and max(abs(self.x), abs(east)) <= 180
            and max(abs(self.y), abs(north)) <= 90
        )


def read_grid(path: Path, text: str) -> Grid:
    """Return the grid in the text of a file.

    Raises:
        InputError: it is incomplete; what is missing is named.
    """
    words = text.split()
    header: dict[str, float] = {}
    at = 0
    try:
        while at + 1 < len(words) and words[at].casefold() in KEYS:
            header[words[at].casefold()] = float(words[at + 1])
            at += 2
    except ValueError:
        raise InputError(
            said(
                "{path}: {key} is {value!r}, which is no number.",
                path=path,
                key=words[at],
                value=words[at + 1],
            )
        ) from None
    missing = [
        " or ".join(names)
        for names in (
            ("ncols",),
            ("nrows",),
            ("xllcorner", "xllcenter"),
            ("yllcorner", "yllcenter"),
            ("cellsize",),
        )
        if not any(name in header for name in names)
    ]
    if missing:
        raise InputError(said("{path}: its header lacks {missing}.", path=path, missing=", ".join(missing)))
    rows, columns, cell = int(header["nrows"]), int(header["ncols"]), header["cellsize"]
    if rows < 1 or columns < 1 or not cell > 0:
        raise InputError(
            said(
                "{path}: {rows} rows of {columns} columns of size {cell} are no grid.",
                path=path,
                rows=rows,
                columns=columns,
                cell=cell,
            )
        )
    try:
        heights = np.array(words[at:], dtype=np.float64)
    except ValueError as error:
        raise InputError(
            said("{path}: an elevation is no number ({error}).", path=path, error=error)
        ) from None
    if heights.size != rows * columns:
        raise InputError(
            said(
                "{path}: {rows} rows of {columns} columns need {needed} elevations; it has {size}.",
                path=path,
                rows=rows,
                columns=columns,
                needed=rows * columns,
                size=heights.size,
            )
        )
    heights = heights.reshape(rows, columns)
    heights[heights == header.get("nodata_value", NO_DATA)] = np.nan
    half = cell / 2
    return Grid(
        header["xllcenter"] if "xllcenter" in header else header["xllcorner"] + half,
        header["yllcenter"] if "yllcenter" in header else header["yllcorner"] + half,
        cell,
        heights,
    )


def grid_places(
    course: Course, grid: Grid, to_degrees: Transformer, margin: float
) -> tuple[NDArray[np.float64], NDArray[np.intp]]:
    """Return (longitude, latitude, elevation) of the middles of the cells near the greens, and a zero for each."""
    rows, columns = grid.heights.shape
    wanted = np.zeros((rows, columns), dtype=bool)
    for hole in course.holes.values():
        if hole.green is None:
            continue
        around = course.plane.outward(hole.green.geometry.buffer(margin))
        corners = shapely.get_coordinates(shapely.box(*around.bounds))
        x, y = to_degrees.transform(corners[:, 0], corners[:, 1], direction="INVERSE")
        left, right = (np.array([min(x), max(x)]) - grid.x) / grid.cell
        bottom, top = (np.array([min(y), max(y)]) - grid.y) / grid.cell
        rows_from, rows_to = rows - 1 - int(np.ceil(top)), rows - 1 - int(np.floor(bottom))
        wanted[
            max(rows_from, 0) : max(rows_to + 1, 0), max(int(left), 0) : max(int(np.ceil(right)) + 1, 0)
        ] = True
    row, column = np.nonzero(wanted & np.isfinite(grid.heights))
    east, north = grid.x + column * grid.cell, grid.y + (rows - 1 - row) * grid.cell
    longitude, latitude = to_degrees.transform(east, north)
    return np.column_stack([longitude, latitude, grid.heights[row, column]]), np.zeros(
        len(row), dtype=np.intp
    )
