"""A situation put on a course: a place where the map, asked as for any case, says what is told of the ground."""

from dataclasses import dataclass, replace
from itertools import islice
from random import Random

from marram.course.model import Course, Feature, Hole
from marram.errors import MarramError
from marram.relief.geometry.outline import XY
from marram.relief.place.abnormal_course_conditions import conditions_near
from marram.relief.place.ground import Ground, ground_of
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.relief_option import ReliefKind
from marram.services.cases.conditions import Conditions
from marram.services.cases.places import Places
from marram.services.cases.rulings import Asked, Ruled, rule_on
from marram.services.ground.interference import Interfering
from marram.services.ground.lies import what_lies_here
from marram.services.ground.relief import NEAR, OptionDrawn, draw_options
from marram.teach.drawings.agreeing import agrees, may_be, met_at
from marram.teach.drawings.candidates import candidates
from marram.teach.drawings.coming_there import places_of
from marram.teach.drawings.grounds import KINDS_IN_THE_WAY, Grounds, WhyNone, grounds_of
from marram.teach.drawings.set_down import INVENTED, can_be_set_down, elsewhere, with_condition
from marram.teach.situations.situation import Situation

MOST_TRIED = 600
"""Places tried for one situation, before it is said that the course has none."""
MOST_COMPLETED = 8
"""Of these, places at which the ruling's relief is drawn."""
MOST_SET_DOWN = 12
"""Places beside which a condition is set down and tried."""
_MEASURED_FROM_CONDITION = frozenset(
    {ReliefKind.FREE, ReliefKind.MAXIMUM_AVAILABLE, ReliefKind.COMPLETE_RELIEF_OUTSIDE}
)


@dataclass(frozen=True)
class Placed:
    """A situation on a course.

    Attributes:
        situation: the situation, told of the hole it was placed on.
        course: the course.
        ruled: the case at that place, with its ruling, as any official would enter it.
        ball: where the ball lies, or is taken to, in local metres.
        seen: whether anybody has seen it there.
        condition: the mapped condition, wrong green or no play zone that it is about.
        places: the other places by role: where the previous stroke was made (``previous``), where the ball crossed an
            edge (``entry``, ``boundary``) and so on, in local metres.
        options: the relief that the ruling offers, drawn as far as its places are known.
        at_the_hole: whether the ball lies at the edge of the hole.
    """

    situation: Situation
    course: Course
    ruled: Ruled
    ball: XY
    seen: bool
    condition: Feature | None
    places: dict[str, XY]
    options: tuple[OptionDrawn, ...]
    at_the_hole: bool = False

    @property
    def ground(self) -> Ground:
        """The ground of the hole being played."""
        return ground_of(self.course, self.hole.number)

    @property
    def hole(self) -> Hole:
        """The hole being played."""
        assert self.ruled.lie.hole is not None
        return self.ruled.lie.hole

    @property
    def set_down(self) -> bool:
        """Whether the condition is invented, set down on the map for this drawing."""
        return self.condition is not None and self.condition.ident == INVENTED

    @property
    def right_handed(self) -> bool:
        """Whether the player plays right-handed."""
        return self.ruled.asked.conditions.handed == "right"


def placed(one: Situation, course: Course, seed: int = 0) -> Placed | WhyNone:
    """Put a situation on a course, the same for the same seed; or say why it cannot be drawn.

    Args:
        one: the situation.
        course: the map.
        seed: for the lot that draws the places.
    """
    grounds = grounds_of(one.incident, one.facts, relief=bool(one.ruling.relief))
    if isinstance(grounds, WhyNone):
        return grounds
    lot = Random(f"{seed} {one.incident} {sorted(one.facts.items())}")  # noqa: S311 - a seed, no secret
    handed = "right" if lot.random() < 0.85 else "left"
    conditions = Conditions(one.played_on, one.form, local=_adopted(one), handed=handed)
    found = _search(one, course, grounds, conditions, lot)
    if found is None and can_be_set_down(grounds):
        found = _search(one, course, grounds, conditions, lot, set_down=True)
    return found or WhyNone.NO_SUCH_PLACE


def _search(
    one: Situation,
    course: Course,
    grounds: Grounds,
    conditions: Conditions,
    lot: Random,
    *,
    set_down: bool = False,
) -> Placed | None:
    """Return the situation at the first place that agrees; with a condition set down beside each place that is tried."""
    left = MOST_COMPLETED
    looked_for = elsewhere(grounds) if set_down else grounds
    most = MOST_SET_DOWN if set_down else MOST_TRIED
    for hole, ball in islice(candidates(course, looked_for, one.hole, lot), MOST_TRIED):
        if not left or not most:
            break
        if not may_be(ground_of(course, hole.number).area_at(ball), grounds):
            continue
        most -= 1
        here = course
        if set_down:
            right = conditions.handed == "right"
            here = with_condition(course, hole, ball, grounds, lot, right_handed=right)
        asked = Asked(conditions, one.incident, hole.number, _shown(course, {"ball": ball}), dict(one.facts))
        try:
            lie = what_lies_here(here, hole.number, asked.places)
            met = met_at(here, hole, ball, conditions, grounds)
        except MarramError:
            continue
        if not agrees(here, hole, ball, grounds, lie, met):
            continue
        found = _completed(one, here, asked, grounds, hole, ball, met, lot)
        if found is not None:
            return found
        left -= 1
    return None


def _adopted(one: Situation) -> tuple[str, ...] | None:
    codes = tuple(code for code, fact in LOCAL_RULES.items() if one.facts.get(fact.name) == "yes")
    return codes or None


def _shown(course: Course, places: dict[str, XY]) -> Places:
    degrees = {role: course.plane.to_degrees(*at) for role, at in places.items()}
    return Places({role: (latitude, longitude) for role, (longitude, latitude) in degrees.items()})


def _completed(  # noqa: PLR0917 - the parts of one case
    one: Situation,
    course: Course,
    asked: Asked,
    grounds: Grounds,
    hole: Hole,
    ball: XY,
    met: tuple[Interfering, ...],
    lot: Random,
) -> Placed | None:
    needs_provisional = any(option.kind is ReliefKind.PROVISIONAL for option in one.ruling.relief)
    needs_previous = any(option.kind is ReliefKind.STROKE_AND_DISTANCE for option in one.ruling.relief)
    places = places_of(
        course,
        hole,
        ball,
        grounds,
        lot,
        needs_provisional=needs_provisional,
        needs_previous=needs_previous,
    )
    if places is None:
        return None
    condition = met[0].feature if met else None
    if condition is None and "in_the_way" in grounds.facts:
        near = conditions_near(course, hole.number, ball, NEAR, KINDS_IN_THE_WAY[grounds.facts["in_the_way"]])
        condition = near[0] if near else None
    full = replace(
        asked,
        places=_shown(course, {"ball": ball, **places}),
        condition=condition.ident if condition else None,
    )
    ruled = rule_on(course, full)
    options = tuple(draw_options(course, ruled, one.ruling.relief)) if one.ruling.relief else ()
    if any(option.fault for option in options):
        return None
    if grounds.facts.get("nearest_point_exists") == "yes" and any(
        option.option.kind in _MEASURED_FROM_CONDITION and not option.areas for option in options
    ):
        return None
    told = one if one.hole is None else replace(one, hole=hole.number)
    at_the_hole = grounds.at_the_hole
    return Placed(told, course, ruled, ball, grounds.seen, condition, places, options, at_the_hole)
