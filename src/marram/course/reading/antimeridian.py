"""A course across the antimeridian: its longitudes jump from 180 to -180 where the ground goes on.

West of the jump longitudes are counted on beyond 180, so that shapes are whole while the course is chosen and its
plane laid; in the plane nothing is left of the jump.
"""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from marram.course.reading.source import SourceFeature
from marram.course.scheme import is_about_golf

NEAR = 10.0
"""Degrees: a map whose golf features all lie this near the antimeridian, on both its sides, is taken across it."""


def counted_on(features: Sequence[SourceFeature]) -> list[SourceFeature]:
    """Return features with longitudes counted on beyond 180 where the course lies across the antimeridian."""
    golf = [feature.geometry for feature in features if is_about_golf(feature.tags)]
    longitudes = shapely.get_coordinates(golf)[:, 0] if golf else np.empty(0)
    if not len(longitudes) or not (
        longitudes.min() < 0 < longitudes.max() and np.abs(longitudes).min() > 180 - NEAR
    ):
        return list(features)
    return [replace(feature, geometry=on_beyond(feature.geometry)) for feature in features]


def on_beyond(geometry: BaseGeometry) -> BaseGeometry:
    """Return a geometry in degrees with its western longitudes counted on beyond 180."""

    def on(places: NDArray[np.float64]) -> NDArray[np.float64]:
        return np.column_stack([np.where(places[:, 0] < 0, places[:, 0] + 360, places[:, 0]), places[:, 1]])

    return shapely.transform(geometry, on)


def from_greenwich(longitude: float) -> float:
    """Return a longitude between -180 and 180 degrees."""
    return longitude if abs(longitude) <= 180 else (longitude + 180) % 360 - 180
