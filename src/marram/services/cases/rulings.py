"""Rule a case: the facts of the map and the official's answers → what the Rules say, in data and in words."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from marram.course.model import Course
from marram.relief.geometry.outline import XY
from marram.relief.place.place_facts import PlaceFacts
from marram.rules.engine.request import rule
from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import FormOfPlay, date_of_play, form_of_play
from marram.rules.facts.lost import provisional_state
from marram.rules.facts.unplayable import spot_of_ball_known
from marram.rules.result import Result
from marram.services.cases.conditions import Conditions
from marram.services.cases.places import Degrees, Places
from marram.services.ground.interference import CONDITION, NO_PLAY_ZONE, WALL, WRONG_GREEN, interfering
from marram.services.ground.lies import Lie, in_condition, to_plane, what_lies_here
from marram.words.sheet import Sheet, sheet

PREMISES: dict[str, dict[str, str]] = {
    WRONG_GREEN: {"only_by_unreasonable_choice": "no", "played_despite_wrong_green": "no"},
    NO_PLAY_ZONE: {
        "only_by_unreasonable_choice": "no",
        "stroke_unreasonable_anyway": "no",
        "played_despite_zone": "no",
        "last_stroke_from_penalty_area": "no",
        "nearest_point_exists": "yes",
    },
    "ball_in_penalty_area": {"found_in_penalty_area": "yes", "last_stroke_from_penalty_area": "no"},
    "ball_near_boundary": {"provisional_state": "not_played", "last_stroke_from_penalty_area": "no"},
    "unplayable_ball": {"last_stroke_from_penalty_area": "no"},
    "abnormal_course_condition": {
        "interference": "ball",
        "stroke_unreasonable_anyway": "no",
        "only_by_unreasonable_choice": "no",
        "nearest_point_exists": "yes",
    },
}
"""What is taken for granted, by incident, when only a place is given; each premise is said, and an answer overrides it."""


SHOWN: dict[str, dict[str, str]] = {"unplayable_ball": {spot_of_ball_known.name: "yes"}}
"""What showing a ball's place on the map says by itself, by incident: counted with the facts of the map."""


@dataclass(frozen=True)
class Asked:
    """What the Rules are asked about one incident.

    Attributes:
        conditions: the conditions it is ruled under.
        what: the name of the incident; ``None`` while nobody said what happened.
        hole: the number of the hole being played, if known.
        places: the places shown on the map.
        facts: what the official answered, by fact; it outweighs the map: the marking on the ground decides.
        condition: the identifier of the mapped condition relief is taken from, if chosen.
        premises: what is taken for granted where neither map nor official says otherwise.
        tall: whether the condition stands up, so that the whole swing meets it; ``None``: as the map tells.
        flag: where the hole is cut, as the official said; the course that it is ruled on has it there.
    """

    conditions: Conditions
    what: str | None = None
    hole: int | None = None
    places: Places = field(default_factory=Places)
    facts: Mapping[str, Any] = field(default_factory=dict)
    condition: str | None = None
    premises: Mapping[str, str] = field(default_factory=dict)
    tall: bool | None = None
    flag: Degrees | None = None

    @property
    def form(self) -> FormOfPlay | None:
        """The form of play: as answered, else as the conditions have it."""
        if form_of_play.name in self.facts:
            answered: FormOfPlay = form_of_play.parse(self.facts[form_of_play.name])
            return answered
        return self.conditions.form


@dataclass(frozen=True)
class Ruled:
    """What is known of an incident and what the Rules say of it.

    Attributes:
        asked: what was asked.
        lie: the hole, and what the map knows of the ball's place.
        known: every fact known, by name.
        from_map: names of the facts that came from the map.
        assumed: the premises that hold: nobody said otherwise.
        result: what the Rules say; ``None`` while nobody said what happened.
        sheet: the result in words; ``None`` likewise.
    """

    asked: Asked
    lie: Lie
    known: Mapping[str, Any]
    from_map: frozenset[str]
    assumed: Mapping[str, str] = field(default_factory=dict)
    result: Result | None = None
    sheet: Sheet | None = None


def rule_on(course: Course, asked: Asked, lie: Lie | None = None) -> Ruled:
    """Return what the Rules say of one incident.

    Args:
        course: the map.
        asked: what is asked.
        lie: where the ball lies, if it was looked up already.

    Raises:
        InputError: something in it cannot be used; every fault is listed.
    """
    lie = lie or what_lies_here(course, asked.hole, asked.places)
    mapped = {**SHOWN.get(asked.what or "", {}), **lie.place.facts} if lie.place else {}
    said = {**mapped, **asked.conditions.facts(), **asked.facts}
    assumed = {name: answer for name, answer in asked.premises.items() if name not in said}
    known = {**said, **assumed}
    from_map = frozenset(mapped.keys() - asked.facts.keys())
    if not asked.what:
        return Ruled(asked, lie, known, from_map, assumed)
    result = rule(asked.what, known, **asked.conditions.request())
    given = known | {date_of_play.name: asked.conditions.on}
    words = sheet(result, form_of_play=asked.form, given=given, from_map=from_map)
    return Ruled(asked, lie, known, from_map, assumed, result, words)


def rule_at_place(course: Course, asked: Asked) -> Ruled:
    """Return what the Rules say of a ball at a place of which little else is said.

    Where nobody said what happened, the incident is taken from the place, and what usually holds with it is taken
    for granted (:data:`PREMISES`); so is what the map as a whole lacks, and how a condition interferes as the map sees
    it. Each premise stands in the answer.

    Raises:
        InputError: something in it cannot be used; every fault is listed.
    """
    lie = what_lies_here(course, asked.hole, asked.places)
    premises = dict(lie.premises)
    what = asked.what
    if what is None and lie.hole is not None and lie.place is not None:
        ball = to_plane(course, asked.places.at["ball"])
        what, met = _what_interferes(course, asked, lie, ball)
        what = what or incident_here(lie.place, in_condition=in_condition(course, lie.hole, ball))
        premises |= {**PREMISES.get(what, {}), **met}
        if "provisional" in asked.places.at:
            premises.pop(provisional_state.name, None)
    elif what in SEEN and lie.hole is not None and lie.place is not None and lie.place.area is not None:
        premises |= _seen(course, asked, lie.hole.number)
    return rule_on(course, replace(asked, what=what, premises=premises), lie)


SEEN = (WRONG_GREEN, NO_PLAY_ZONE, CONDITION)
"""Incidents of which the map sees how something interferes with a ball."""


def _seen(course: Course, asked: Asked, hole: int) -> Mapping[str, str]:
    """Return how the condition chosen, else the nearest one, interferes as the map sees it; nothing where it does not."""
    ball = to_plane(course, asked.places.at["ball"])
    found = interfering(course, hole, ball, asked.what, conditions=asked.conditions, tall=asked.tall)
    chosen = [one for one in found if one.feature.ident == asked.condition]
    return next((one.facts for one in (*chosen, *found)), {})


def _what_interferes(
    course: Course, asked: Asked, lie: Lie, ball: XY
) -> tuple[str | None, Mapping[str, str]]:
    """Return the incident and the facts of what interferes with a ball on the course; where relief must be taken goes first.

    Relief from a wrong green and a no play zone must be taken; from an abnormal course condition it may be. In a penalty
    area only a no play zone counts (Rule 17.1e); out of bounds the place itself says what happened.
    """
    assert lie.place is not None
    assert lie.hole is not None
    if lie.place.area is None:
        return None, {}
    in_penalty_area = lie.place.area is Area.PENALTY_AREA
    for what in (NO_PLAY_ZONE,) if in_penalty_area else (WRONG_GREEN, NO_PLAY_ZONE, CONDITION):
        found = interfering(course, lie.hole.number, ball, what, conditions=asked.conditions, tall=asked.tall)
        if found:
            return what, found[0].facts
    walls = (
        ()
        if in_penalty_area
        else interfering(course, lie.hole.number, ball, WALL, conditions=asked.conditions, tall=asked.tall)
    )
    # What such a wall is for the Rules is left open, so that it is asked.
    return (CONDITION, walls[0].facts) if walls else (None, {})


def incident_here(place: PlaceFacts, *, in_condition: bool) -> str:
    """Return the incident that a place by itself points at: what an official asks first who gives nothing else.

    Args:
        place: what the map knows of the place.
        in_condition: whether the ball lies in an abnormal course condition.
    """
    if place.area is None:
        return "ball_near_boundary"
    if place.area is Area.PENALTY_AREA:
        return "ball_in_penalty_area"
    return "abnormal_course_condition" if in_condition else "unplayable_ball"
