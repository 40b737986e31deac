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

OF_COMPETITION = {"four-ball-11", "four-ball-12", "four-ball-13", "foursomes-05"}
"""Which partner's score counts, what stands on the card, whose turn it is: Rules 22 and 23, checked with the competition."""

VALUES = {
    ident: one for ident, one in published().items() if one["topic"] in TOPICS and ident not in OF_COMPETITION
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
