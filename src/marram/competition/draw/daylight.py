"""When the sun sets, and when the last group must have started.

The formulas are those of the solar calculator of NOAA (after J. Meeus, Astronomical Algorithms), with the sun's upper
edge on the horizon at 90.833 degrees; they are good to about a minute at latitudes of up to 72 degrees.
"""

from datetime import UTC, date, datetime, timedelta
from math import acos, asin, cos, degrees, radians, sin, tan

from marram.errors import InputError
from marram.said import said

_HORIZON = 90.833


def sunset(day: date, latitude: float, longitude: float) -> datetime | None:
    """Return the moment of sunset in UTC; ``None`` where the sun does not set or rise that day.

    Args:
        day: as clocks at the place have it.
        latitude: in degrees, north positive.
        longitude: in degrees, east positive.

    Raises:
        InputError: no such place.
    """
    if not (-90 <= latitude <= 90 and -180 <= longitude <= 180):
        raise InputError(
            said("A place has a latitude from -90 to 90 and a longitude from -180 to 180 degrees.")
        )
    noon = datetime(day.year, day.month, day.day, 12, tzinfo=UTC) - timedelta(minutes=4 * longitude)
    moment = noon
    for _ in range(2):  # once for noon, once more for the evening found
        across, equation = _crossing(moment, latitude)
        if not -1 <= across <= 1:
            return None
        moment = noon + timedelta(minutes=4 * degrees(acos(across)) - equation)
    return moment


def polar_night(day: date, latitude: float, longitude: float) -> bool:
    """Tell whether the sun does not rise on a day at a place."""
    noon = datetime(day.year, day.month, day.day, 12, tzinfo=UTC) - timedelta(minutes=4 * longitude)
    return _crossing(noon, latitude)[0] > 1


def _crossing(moment: datetime, latitude: float) -> tuple[float, float]:
    """Return the cosine of the hour angle at which the sun crosses the horizon, above 1 where it stays below, and the equation of time."""
    declination, equation = _sun(moment)
    north = radians(latitude)
    return cos(radians(_HORIZON)) / (cos(north) * cos(declination)) - tan(north) * tan(declination), equation


def last_start(day: date, latitude: float, longitude: float, minutes_of_play: int) -> datetime | None:
    """Return the moment, in UTC, by which the last group must have started to be home before sunset."""
    evening = sunset(day, latitude, longitude)
    return None if evening is None else evening - timedelta(minutes=minutes_of_play)


def _sun(moment: datetime) -> tuple[float, float]:
    """Return the declination of the sun in radians, and the equation of time in minutes."""
    century = (moment - datetime(2000, 1, 1, 12, tzinfo=UTC)) / timedelta(days=36525)
    longitude = radians((280.46646 + century * (36000.76983 + century * 0.0003032)) % 360)
    anomaly = radians(357.52911 + century * (35999.05029 - 0.0001537 * century))
    eccentricity = 0.016708634 - century * (0.000042037 + 0.0000001267 * century)
    centre = (
        sin(anomaly) * (1.914602 - century * (0.004817 + 0.000014 * century))
        + sin(2 * anomaly) * (0.019993 - 0.000101 * century)
        + sin(3 * anomaly) * 0.000289
    )
    node = radians(125.04 - 1934.136 * century)
    apparent = radians(degrees(longitude) + centre - 0.00569 - 0.00478 * sin(node))
    mean = 23 + (26 + (21.448 - century * (46.815 + century * (0.00059 - century * 0.001813))) / 60) / 60
    obliquity = radians(mean + 0.00256 * cos(node))
    declination = asin(sin(obliquity) * sin(apparent))
    half = tan(obliquity / 2) ** 2
    equation = 4 * degrees(
        half * sin(2 * longitude)
        - 2 * eccentricity * sin(anomaly)
        + 4 * eccentricity * half * sin(anomaly) * cos(2 * longitude)
        - half * half * sin(4 * longitude) / 2
        - 1.25 * eccentricity * eccentricity * sin(2 * anomaly)
    )
    return declination, equation
