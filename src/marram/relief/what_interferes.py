"""What a condition on the map interferes with, as facts for the Rules: the ball, stance or swing, the line of play.

The Rules ask it (16.1a, 13.1f, 16.1f and 17.1e) and the map can answer it, once the player's stance and swing are
known. Touching is interference for the ball (it touches the condition, or lies in or on it), not for the feet and
the club. Both editions say so; before 2019 stance and swing did not count at a wrong green.
"""

from dataclasses import dataclass

import shapely

from marram.course.model import Feature, Kind
from marram.relief.constructions.free import complete_relief, missing_places
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.interference.line_of_play import LineOfPlayOn
from marram.relief.place.place_facts import in_the_way_facts
from marram.relief.place.situation import Situation
from marram.rules.facts.ball import Area
from marram.rules.facts.green import WrongGreenInterference, wrong_green_interference
from marram.rules.facts.relief import (
    Interference,
    ZoneInterference,
    interference,
    nearest_point_exists,
    no_play_zone_interference,
    point_in_penalty_area_exists,
)
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption

_LEAST = 1e-8
"""Square metres: an overlap smaller than this is touching."""

_STAYS_IN = {
    Area.BUNKER: Limit.IN_BUNKER,
    Area.PUTTING_GREEN: Limit.ON_GREEN_OR_GENERAL_AREA,
    Area.PENALTY_AREA: Limit.IN_PENALTY_AREA,
}
"""Where complete relief must be found without penalty, for the areas in which the Rules ask whether there is any."""


@dataclass(frozen=True, slots=True)
class Met:
    """What the conditions of a situation interfere with, from where the ball lies.

    Attributes:
        ball: the ball touches a condition, or lies in or on it.
        stance: the intended stance is on one.
        swing: the intended swing meets one.
        line_of_play: one lies on the line of play; asked only of a ball on the putting green.
    """

    ball: bool
    stance: bool
    swing: bool
    line_of_play: bool

    @property
    def anything(self) -> bool:
        """Whether there is interference at all."""
        return self.ball or self.stance or self.swing or self.line_of_play


def what_is_met(situation: Situation) -> Met | None:
    """Return what the conditions interfere with; ``None`` while ball, condition or handedness is not known.

    A ball that touches a condition is known to be interfered with whatever the player's hand.
    """
    ball = situation.ball
    if ball is None or not situation.conditions:
        return None
    touched = any(one.depth(*ball) >= -BALL_RADIUS for one in situation.conditions)
    situation = situation.with_usual_footprint()
    if situation.footprint is None:
        return Met(True, stance=False, swing=False, line_of_play=False) if touched else None
    met = _parts_met(situation, ball)
    on_line = situation.line_of_play and _on_line(situation, ball)
    # A footprint that was measured as a whole has no parts: it counts as stance and swing together.
    return Met(touched, "stance" in met, bool(met & {"swing", "all"}), on_line)


def interference_facts(situation: Situation) -> dict[str, str]:
    """Return what the map can answer about interference, as facts by name; empty while something is not known.

    The answer is under the fact that the kind of condition is asked by: a wrong green, a no play zone, or an
    abnormal course condition. In a bunker and on the putting green it also tells whether complete relief exists.
    """
    met = what_is_met(situation)
    if met is None:
        return {}
    every = situation.condition
    first = every if not isinstance(every, list | tuple) else every[0]
    kind = first.kind if isinstance(first, Feature) else None
    if kind is Kind.PUTTING_GREEN:
        return {wrong_green_interference.name: _at_wrong_green(met).value}
    if kind is Kind.NO_PLAY_ZONE:
        return {no_play_zone_interference.name: _at_zone(met).value, **_beside_zone(situation, met)}
    facts = {interference.name: _at_condition(met).value, **in_the_way_facts([kind] if kind else [])}
    asked = met.anything and situation.ball_area is not Area.PENALTY_AREA  # Rule 16.1a(2): no relief there
    exists = _complete_relief_exists(situation) if asked else None
    if exists is not None:
        facts[nearest_point_exists.name] = "yes" if exists else "no"
    return facts


def _beside_zone(situation: Situation, met: Met) -> dict[str, str]:
    """Return whether there is complete relief from a no play zone, where the Rules ask for it (16.1f, 17.1e(2))."""
    if not (met.ball or met.stance or met.swing):
        return {}
    in_water = situation.ball_area is Area.PENALTY_AREA
    exists = None if in_water and met.ball else _complete_relief_exists(situation)
    if exists is None:
        return {}
    fact = point_in_penalty_area_exists if in_water else nearest_point_exists
    return {fact.name: "yes" if exists else "no"}


def _at_wrong_green(met: Met) -> WrongGreenInterference:
    if met.ball:
        return WrongGreenInterference.BALL_ON_IT
    if met.swing:
        return WrongGreenInterference.SWING
    return WrongGreenInterference.STANCE_ONLY if met.stance else WrongGreenInterference.NONE


def _at_zone(met: Met) -> ZoneInterference:
    if met.ball:
        return ZoneInterference.BALL_INSIDE
    return ZoneInterference.STANCE_OR_SWING if met.stance or met.swing else ZoneInterference.NONE


def _at_condition(met: Met) -> Interference:
    if met.ball:
        return Interference.BALL
    if met.stance or met.swing:
        return Interference.STANCE_OR_SWING
    return Interference.LINE_OF_PLAY if met.line_of_play else Interference.NONE


def _complete_relief_exists(situation: Situation) -> bool | None:
    """Return whether complete relief exists where it must be found; ``None`` where that is not asked or not known."""
    situation = situation.with_usual_footprint()
    limit = _STAYS_IN.get(situation.ball_area) if situation.ball_area else None
    if limit is None or missing_places(situation):
        return None
    wanted = ReliefOption(
        ReliefKind.FREE, "16.1", Reference.NEAREST_POINT, 1, (Limit.NOT_NEARER, limit, Limit.COMPLETE_RELIEF)
    )
    return complete_relief(situation, wanted) is not None


def _parts_met(situation: Situation, ball: XY) -> set[str]:
    met = set()
    for made, conditions in situation.footprints:
        for name, drawn in made.parts or (("all", made.shape.area),):
            placed = shapely.transform(made.turned(drawn), lambda points: points + ball)
            if any(shapely.intersection(placed, one.geometry).area > _LEAST for one in conditions):
                met.add(name)
    return met


def _on_line(situation: Situation, ball: XY) -> bool:
    prepared = LineOfPlayOn(situation.conditions, situation.hole).prepare(ball, 1.0)
    here = shapely.get_coordinates(shapely.Point(0.0, 0.0))
    return not (bool(prepared.clear(here)[0]) and prepared.outside((0.0, 0.0)))
