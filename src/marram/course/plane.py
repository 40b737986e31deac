"""The local metric plane: WGS 84 longitude and latitude outside, metres inside."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cached_property, partial
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray
from pyproj import Transformer
from shapely import transform
from shapely.geometry.base import BaseGeometry

_Given = TypeVar("_Given", float, NDArray[np.float64])


@dataclass(frozen=True)
class LocalPlane:
    """A plane touching the ellipsoid at the middle of a course.

    The projection is azimuthal equidistant on WGS 84 (Snyder, *Map Projections: A Working Manual*, USGS
    Professional Paper 1395, chapter 25). Distances from the centre are exact; elsewhere the scale error
    at ``r`` metres from the centre is at most about (r / R)² / 6, R being the earth's radius: 4 parts in a
    hundred million at 3 km. Between two places within 2 km of the centre that is at most a millimetre
    (tested against geodesics).

    Attributes:
        longitude: of the centre, degrees east.
        latitude: of the centre, degrees north.
    """

    longitude: float
    latitude: float

    @cached_property
    def _both_ways(self) -> Transformer:
        """Degrees to metres; inverted, metres to degrees. Written out, so that no database of systems is searched."""
        return Transformer.from_pipeline(
            "+proj=pipeline +step +proj=unitconvert +xy_in=deg +xy_out=rad "
            f"+step +proj=aeqd +lat_0={self.latitude!r} +lon_0={self.longitude!r} +ellps=WGS84"
        )

    def _inward(self, x: _Given, y: _Given) -> tuple[_Given, _Given]:
        east, north = self._both_ways.transform(x, y)
        return east, north

    def _outward(self, x: _Given, y: _Given) -> tuple[_Given, _Given]:
        east, north = self._both_ways.transform(x, y, direction="INVERSE")
        return east, north

    def to_metres(self, longitude: float, latitude: float) -> tuple[float, float]:
        """Return (x east, y north) in metres of a place in degrees."""
        x, y = self._inward(longitude, latitude)
        return float(x), float(y)

    def to_degrees(self, x: float, y: float) -> tuple[float, float]:
        """Return (longitude, latitude) in degrees of a place in metres."""
        longitude, latitude = self._outward(x, y)
        return float(longitude), float(latitude)

    def to_metres_all(self, places: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return (x east, y north) in metres of many places in degrees, shape (n, 2)."""
        return np.column_stack(self._inward(places[:, 0], places[:, 1])).reshape(-1, 2)

    def to_degrees_all(self, places: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return (longitude, latitude) in degrees of many places in metres, shape (n, 2)."""
        return np.column_stack(self._outward(places[:, 0], places[:, 1])).reshape(-1, 2)

    def inward(self, geometry: BaseGeometry) -> BaseGeometry:
        """Return a geometry in degrees as one in metres."""
        return transform(geometry, partial(_both, self._inward), interleaved=False)

    def inward_all(self, geometries: Sequence[BaseGeometry]) -> list[BaseGeometry]:
        """Return many geometries in degrees as geometries in metres, at once."""
        array = np.array(geometries, dtype=object)
        return list(transform(array, partial(_both, self._inward), interleaved=False))

    def outward(self, geometry: BaseGeometry) -> BaseGeometry:
        """Return a geometry in metres as one in degrees."""
        return transform(geometry, partial(_both, self._outward), interleaved=False)

    def outward_all(self, geometries: Sequence[BaseGeometry]) -> NDArray[np.object_]:
        """Return many geometries in metres as geometries in degrees, at once."""
        array = np.array(geometries, dtype=object)
        found: NDArray[np.object_] = transform(array, partial(_both, self._outward), interleaved=False)
        return found


def _both(
    by: Callable[[NDArray[np.float64], NDArray[np.float64]], tuple[NDArray[np.float64], NDArray[np.float64]]],
    x: NDArray[np.float64],
    y: NDArray[np.float64],
) -> NDArray[np.float64]:
    return np.asarray(by(x, y))
