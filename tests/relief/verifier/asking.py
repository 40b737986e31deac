"""The one place that knows marram: a question is put as an official puts it, and the answers come back as exported."""

from dataclasses import dataclass
from datetime import date
from functools import lru_cache

import numpy as np

from marram.course.loading import load
from marram.errors import MarramError
from marram.relief import Drawn, NeedsPlace, NoRelief
from marram.relief.pictures.geojson import feature_collection
from marram.relief.place.place_facts import place_facts
from marram.rules.plain import as_plain
from marram.rules.result import NeedFacts
from marram.rules.ruling import HandOver, Ruling
from marram.services.cases.conditions import Conditions
from marram.services.cases.places import Places
from marram.services.cases.rulings import Asked, rule_at_place
from marram.services.ground.relief import draw_options
from tests.relief.verifier.question import Answer

DAYS = {2019: date(2020, 6, 1), 2023: date(2024, 6, 1)}
USUAL = {
    "found_in_penalty_area": "yes",
    "last_stroke_from_penalty_area": "no",
    "spot_of_ball_known": "yes",
    "interference": "ball",
    "wrong_green_interference": "ball_on_it",
    "in_the_way": "ground_under_repair",
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
    "played_despite_zone": "no",
    "penalty_area_colour": "red",
    "crossed_where_opposite_allowed": "yes",
}
"""What the official would answer, where a question does not say it."""


@dataclass(frozen=True)
class Asking:
    """One question on its way: the map, what is asked, and what the Rules say."""

    course: object
    ruled: object

    @property
    def options(self):
        """The options to draw."""
        return self.ruled.result.relief if isinstance(self.ruled.result, Ruling) else ()


@lru_cache(maxsize=8)
def course_of(path, name=None):
    """Return a map, opened once."""
    return load(path, name)


def asked(question, condition=None):
    """Return a question as marram takes it, every fact that is asked for answered as usual.

    Raises:
        LookupError: a fact is asked for that no answer is at hand for.
    """
    course = course_of(question.file, question.course)
    at = {
        "ball": question.ball,
        "entry": question.crossing,
        "previous": question.previous,
        "boundary": question.boundary,
    }
    places = Places({role: (place[1], place[0]) for role, place in at.items() if place is not None})
    conditions = Conditions(
        DAYS[question.edition],
        local=question.local_rules,
        handed="right" if question.right_handed else "left",
        club=question.club_length,
    )
    given = dict(question.facts)
    incident = question.incident
    for _ in range(40):
        ruled = rule_at_place(course, Asked(conditions, incident, question.hole, places, given, condition))
        if isinstance(ruled.result, HandOver):
            incident, given = ruled.result.incident, ruled.result.carry(given)
            continue
        if not isinstance(ruled.result, NeedFacts):
            return Asking(course, ruled)
        name = ruled.result.fact if isinstance(ruled.result.fact, str) else ruled.result.fact.name
        if name not in USUAL or name in given:
            raise LookupError(f"{incident} asks for {name}")
        given[name] = USUAL[name]
    raise LookupError(f"{incident} never ends")


def area_read(question):
    """Return the area of the course that marram reads at the ball, or ``None`` out of bounds."""
    course = course_of(question.file, question.course)
    spot = place_facts(course, course.hole(question.hole), course.plane.to_metres(*question.ball))
    return spot.area.value if spot.area else None


def ask(question):
    """Return marram's answers to a question, one for each option."""
    asking = asked(question)
    found = []
    for option in asking.options:
        plain = as_plain(option)
        try:
            (drawn,) = draw_options(asking.course, asking.ruled, [option])
            if isinstance(drawn.answer, NeedsPlace) and drawn.choices:  # the official taps the nearest
                chosen = asked(question, drawn.choices[0].ident)
                (drawn,) = draw_options(asking.course, chosen.ruled, [option])
        except MarramError as error:
            found.append(Answer(plain, "Refused", " ".join(str(error).split())))
        except Exception as error:  # noqa: BLE001  (what is no MarramError is a fault of the program)
            found.append(Answer(plain, "Crash", f"{type(error).__name__}: {error}"))
        else:
            answer = drawn.answer
            found.append(
                Answer(plain, "Refused", drawn.fault)
                if answer is None
                else exported(answer, plain, asking.course)
            )
    return found


def exported(answer, plain, course):
    """Return one answer as it is exported."""
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
            tuple((one.start.value, one.end.value, one.metres) for one in area.measures)
            for area in answer.areas
        ),
        said=tuple(key for area in answer.areas for key in area.assumed),
    )


def _verdicts(area, plane):
    def accepts(degrees, ball=0.0):
        places = [plane.to_metres(float(x), float(y)) for x, y in degrees]
        verdicts = [area.contains_ball(*one, ball) if ball else area.contains(*one) for one in places]
        return np.array([one.inside for one in verdicts], dtype=bool)

    return accepts
