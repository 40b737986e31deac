"""Places as typed: ``LON,LAT``, in degrees."""

from collections.abc import Mapping
from math import hypot

from marram.course.lies.areas import FURTHEST
from marram.course.model import Course
from marram.errors import BadPlace, InputError
from marram.said import said
from marram.services.cases.places import Degrees


def places_given(course: Course, written: Mapping[str, str]) -> dict[str, Degrees]:
    """Return places given by options, by name.

    Raises:
        InputError: some cannot be read; every fault is listed.
    """
    places: dict[str, Degrees] = {}
    faults: list[str] = []
    for name, text in written.items():
        try:
            places[name] = place_given(course, name, text)
        except InputError as error:
            faults += error.faults
    if faults:
        raise InputError(*faults)
    return places


def place_given(course: Course, name: str, text: str) -> Degrees:
    """Return the place that an option gives as ``LON,LAT``, as latitude and longitude.

    Raises:
        InputError: it cannot be read, or is nowhere near the course.
    """
    try:
        longitude, latitude = (float(part) for part in text.split(","))
    except ValueError:
        raise InputError(
            said(
                "--{name} {text!r} is not a place; give degrees east, then north, for example -3.0101,56.2503.",
                name=name,
                text=text,
            )
        ) from None
    if not (-180 <= longitude <= 180 and -90 <= latitude <= 90):
        raise InputError(
            said(
                "--{name} {text!r} is not on the globe; give longitude first, then latitude.",
                name=name,
                text=text,
            )
        )
    away = hypot(*course.plane.to_metres(longitude, latitude))
    if away > FURTHEST:
        raise BadPlace(
            said(
                "--{name} {text!r} lies {away:.0f} km from the middle of the course; check the map, and that longitude stands first.",
                name=name,
                text=text,
                away=away / 1000,
            )
        )
    return latitude, longitude
