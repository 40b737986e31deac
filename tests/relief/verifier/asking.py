"""The one place that knows marram: a question is put to it, and its answers come back as they are exported."""

from datetime import date
from functools import lru_cache

import numpy as np

import marram
from marram.course.loading import load
from marram.course.model import Kind
from marram.errors import MarramError
from marram.relief import Drawn, NeedsPlace, NoRelief, Player, Situation, relief_areas
from marram.relief.pictures.geojson import feature_collection
from marram.relief.place.place_facts import CONDITIONS, place_facts
from marram.relief.place.dropping_zones import zones_serving
from marram.rules.plain import as_plain
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from tests.relief.verifier.question import Answer

DAYS = {2019: date(2020, 6, 1), 2023: date(2024, 6, 1)}
USUAL = {
    "found_in_penalty_area": "yes",
    "last_stroke_from_penalty_area": "no",
    "spot_of_ball_known": "yes",
    "interference": "ball",
    "wrong_green_interference": "ball_on_it",
    "stroke_unreasonable_anyway": "no",
    "only_by_unreasonable_choice": "no",
    "nearest_point_exists": "yes",
    "in_own_pitch_mark": "yes",
    "below_ground_level": "yes",
    "in_sand_not_fairway": "no",
    "spot_behind_in_general_area": "yes",
    "general_area_within_club_length": "yes",
    "found_in_obstruction": "yes",
    "obstruction_on_green": "no",
    "whereabouts": "not_known",
    "provisional_state": "not_played",
    "second_ball": "nothing_yet",
    "all_of_ball_out_of_bounds": "yes",
    "dropping_zone_provided": "no",
    "dropping_zone_is_only_option": "no",
    "played_despite_wrong_green": "no",
    "penalty_area_colour": "red",
}
"""What the official would answer, where a question does not say it."""


@lru_cache(maxsize=8)
def course_of(path, name=None):
    """Return a map, opened once."""
    return load(path, name)


def options(question):
    """Return the options that the Rules give, the facts that are asked for being answered as usual."""
    given = dict(question.facts)
    for _ in range(40):
        result = marram.rule(
            question.incident, given, played_on=DAYS[question.edition], local_rules=question.local_rules
        )
        if isinstance(result, Ruling):
            return result.relief
        if not isinstance(result, NeedFacts):
            return ()
        name = result.fact if isinstance(result.fact, str) else result.fact.name
        if name not in USUAL:
            raise LookupError(f"{question.incident} asks for {name}")
        given[name] = USUAL[name]
    raise LookupError(f"{question.incident} never ends")


def area_read(question):
    """Return the area of the course that marram reads at the ball, or ``None`` out of bounds."""
    course = course_of(question.file, question.course)
    spot = place_facts(course, course.hole(question.hole), course.plane.to_metres(*question.ball))
    return spot.area.value if spot.area else None


def ask(question):
    """Return marram's answers to a question, one for each option."""
    course = course_of(question.file, question.course)

    def metres(place):
        return None if place is None else course.plane.to_metres(*place)

    ball = metres(question.ball)
    listed = options(question)
    condition = _condition(course, question, ball)
    zones = zones_serving(course, question.hole, ball, condition)
    found = []
    for option in listed:
        plain = as_plain(option)
        try:
            situation = Situation(
                course,
                question.hole,
                played_on=DAYS[question.edition],
                player=Player(question.club_length, question.right_handed),
                ball=ball,
                entry=metres(question.crossing),
                previous=metres(question.previous),
                opposite=metres(question.opposite),
                condition=condition,
                zone=zones[0] if len(zones) == 1 else None,
            )
            (answer,) = relief_areas(situation, [option])
            found.append(_exported(answer, plain, course))
        except MarramError as error:
            found.append(Answer(plain, "Refused", " ".join(str(error).split())))
        except Exception as error:  # noqa: BLE001  (what is no MarramError is a fault of the program)
            found.append(Answer(plain, "Crash", f"{type(error).__name__}: {error}"))
    return found


def _condition(course, question, ball):
    from shapely import Point

    if question.incident == "wrong_green":
        near = sorted(course.of(Kind.PUTTING_GREEN), key=lambda one: one.geometry.distance(Point(ball)))
        own = course.hole(question.hole).green
        return next((one for one in near if one is not own), None)
    near = [one for one in course.of(*CONDITIONS) if one.geometry.distance(Point(ball)) <= 0.0214]
    if not near and question.facts.get("interference") == "stance_or_swing":
        near = sorted(course.of(*CONDITIONS), key=lambda one: one.geometry.distance(Point(ball)))
    return near[0] if near else None


def _exported(answer, plain, course):
    if isinstance(answer, NeedsPlace):
        return Answer(plain, "NeedsPlace", ",".join(one.value for one in answer.needs))
    if isinstance(answer, NoRelief):
        return Answer(plain, "NoRelief", answer.why.value)
    assert isinstance(answer, Drawn)
    features = feature_collection(answer.areas, course.plane)["features"]
    grouped = [[one for one in features if one["properties"]["area"] == n] for n in range(len(answer.areas))]
    return Answer(
        plain,
        "Drawn",
        features=tuple(grouped),
        accepts=tuple(_verdicts(area, course.plane) for area in answer.areas),
        measures=tuple(
            tuple((one.start.value, one.end.value, one.metres) for one in area.measures) for area in answer.areas
        ),
        said=tuple(key for area in answer.areas for key in area.assumed),
    )


def _verdicts(area, plane):
    def accepts(degrees):
        places = [plane.to_metres(float(x), float(y)) for x, y in degrees]
        return np.array([area.contains(*one).inside for one in places], dtype=bool)

    return accepts
