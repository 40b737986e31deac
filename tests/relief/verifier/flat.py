"""A plane that touches the ellipsoid at a place: degrees to metres and back, by geocentric coordinates.

Two places at most 1 km from the middle are as far apart here as along the ground to within 0.05 mm: a plane
across the vertical shortens a distance ``d`` from the middle by ``d³ / 6 R²`` (4 µm at 1 km), and a segment between two
places by at most their own share of it. WGS 84: semi-major axis 6,378,137 m, flattening 1/298.257223563.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely

_A = 6378137.0
_F = 1 / 298.257223563
_E2 = _F * (2 - _F)


@dataclass(frozen=True)
class Flat:
    """The plane at a place in degrees; x runs east, y north, in metres."""

    longitude: float
    latitude: float

    @cached_property
    def _turn(self):
        lon, lat = np.radians((self.longitude, self.latitude))
        east = (-np.sin(lon), np.cos(lon), 0.0)
        north = (-np.sin(lat) * np.cos(lon), -np.sin(lat) * np.sin(lon), np.cos(lat))
        up = (np.cos(lat) * np.cos(lon), np.cos(lat) * np.sin(lon), np.sin(lat))
        return np.array((east, north, up))

    @cached_property
    def _middle(self):
        return _geocentric(self.longitude, self.latitude)

    def metres(self, degrees):
        """Return places in metres, as rows, of places in degrees, as rows."""
        degrees = np.atleast_2d(np.asarray(degrees, dtype=float))
        return (_geocentric(degrees[:, 0], degrees[:, 1]) - self._middle) @ self._turn.T[:, :2]

    def degrees(self, metres):
        """Return places in degrees, as rows, of places in metres, as rows."""
        metres = np.atleast_2d(np.asarray(metres, dtype=float))
        up = -(metres**2).sum(axis=1) / (2 * _A)
        for _ in range(4):
            at = np.column_stack([metres, up]) @ self._turn + self._middle
            longitude, latitude, height = _geodetic(at)
            up = up - height
        return np.column_stack([longitude, latitude])

    def laid(self, geometry):
        """Return a geometry in degrees as one in metres."""
        return shapely.transform(geometry, self.metres)


def _geocentric(longitude, latitude):
    lon, lat = np.radians(longitude), np.radians(latitude)
    normal = _A / np.sqrt(1 - _E2 * np.sin(lat) ** 2)
    return np.stack(
        [
            normal * np.cos(lat) * np.cos(lon),
            normal * np.cos(lat) * np.sin(lon),
            normal * (1 - _E2) * np.sin(lat),
        ],
        axis=-1,
    )


def _geodetic(at):
    """Return longitude, latitude in degrees and height in metres, by iteration."""
    x, y, z = at.T
    flat = np.hypot(x, y)
    lat = np.arctan2(z, flat * (1 - _E2))
    for _ in range(6):
        normal = _A / np.sqrt(1 - _E2 * np.sin(lat) ** 2)
        height = flat / np.cos(lat) - normal
        lat = np.arctan2(z, flat * (1 - _E2 * normal / (normal + height)))
    return np.degrees(np.arctan2(y, x)), np.degrees(lat), height
