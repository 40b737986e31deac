"""The local plane of a map as two polynomials, so that a phone turns degrees into metres and back without a projection.

Fitted to the projection itself by least squares; over the ground of a course they are off by far less than a ball (tested).
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from marram.course.plane import LocalPlane

ORDER = 5
"""The highest power: at 5 km the next one is worth less than a hundredth of a millimetre."""
REACH = 5_000.0
"""Metres from the middle over which the polynomials are fitted (own choice; courses reach 3 km at most)."""
SAMPLES = 41
"""Places on each side of the square that they are fitted to."""

Numbers = NDArray[np.float64]


@dataclass(frozen=True)
class PlaneFit:
    """Polynomials between degrees from the middle and metres, both in units of their reach.

    Attributes:
        middle: longitude and latitude of the middle, degrees.
        degrees: the unit of longitude and of latitude, degrees.
        metres: the unit of x and y, metres.
        inward: coefficients of x and of y by powers of longitude and latitude, in the order of :func:`powers`.
        outward: coefficients of longitude and of latitude by powers of x and y.
    """

    middle: tuple[float, float]
    degrees: tuple[float, float]
    metres: float
    inward: tuple[list[float], list[float]]
    outward: tuple[list[float], list[float]]


def powers() -> list[tuple[int, int]]:
    """Return the powers of both variables, in the order of the coefficients."""
    return [(i, total - i) for total in range(ORDER + 1) for i in range(total + 1)]


def fit(plane: LocalPlane) -> PlaneFit:
    """Return the polynomials of a plane."""
    side = np.linspace(-REACH, REACH, SAMPLES)
    metres = np.stack(np.meshgrid(side, side), axis=-1).reshape(-1, 2)
    middle = np.array([plane.longitude, plane.latitude])
    away = plane.to_degrees_all(metres) - middle
    away[:, 0] = (away[:, 0] + 180.0) % 360.0 - 180.0
    unit = np.abs(away).max(axis=0)
    return PlaneFit(
        (plane.longitude, plane.latitude),
        (float(unit[0]), float(unit[1])),
        REACH,
        _fitted(away / unit, metres / REACH),
        _fitted(metres / REACH, away / unit),
    )


def _fitted(given: Numbers, wanted: Numbers) -> tuple[list[float], list[float]]:
    columns = np.column_stack([given[:, 0] ** i * given[:, 1] ** j for i, j in powers()])
    first, second = np.linalg.lstsq(columns, wanted, rcond=None)[0].T
    return first.tolist(), second.tolist()


__all__ = ["ORDER", "PlaneFit", "fit", "powers"]
