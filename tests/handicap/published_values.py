"""The published values on handicaps, the check that each has, and what several checks need."""

from collections.abc import Callable
from typing import Any

from marram.handicap.course_handicaps import CourseHandicap, course_handicap
from marram.handicap.rated_tee import RatedTee
from tests.handicap.reference import published

TOPICS = {
    *(
        "course-handicap",
        "playing-handicap",
        "allowances",
        "four-ball",
        "scramble",
        "foursomes",
        "greensomes",
    ),
    *("stroke-allocation", "differential", "nine-hole", "adjusted-score", "net-double-bogey", "caps", "pcc"),
    *("index-calculation", "exceptional-score", "tees", "conventions"),
}

VALUES = {ident: one for ident, one in published().items() if one["topic"] in TOPICS}

NOT_HERE = {
    "four-ball-11": "which partner's score counts is Rule 23 of the Rules of Golf: the results of a competition",
    "four-ball-12": "what stands on the card is Rule 23 of the Rules of Golf: the cards of a competition",
    "four-ball-13": "the same",
    "foursomes-05": "the order of play is Rule 22.3 of the Rules of Golf: rulings",
    "nine-hole-03": "that no formula is published is no number; the expected differential is taken as given",
}

CHECKS: dict[str, Callable[[dict[str, Any], Any], None]] = {}

ORDER = tuple(range(1, 19))
"""Stroke indexes as if the holes were played in their order."""

Check = Callable[[dict[str, Any], Any], None]


def value(*idents: str) -> Callable[[Check], Check]:
    def keep(check: Check) -> Check:
        for ident in idents:
            assert ident not in CHECKS, ident
            CHECKS[ident] = check
        return check

    return keep


def tee(rating: object = "72.0", slope: object = 113, par: object = 72, holes: int = 18) -> RatedTee:
    return RatedTee.read(rating, slope, par, holes)


def of_tee(given: dict[str, Any]) -> CourseHandicap:
    rated = tee(given["course_rating"], given["slope"], given["par"])
    return course_handicap(given["handicap_index"], rated)


def given(*values: object) -> list[CourseHandicap]:
    return [CourseHandicap.given(one) for one in values]
