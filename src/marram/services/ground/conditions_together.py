"""Conditions near each other: relief is taken from one after the other, or from all at once where one leads back to another.

Interference by a second condition after complete relief from the first is a new situation. Decision 1-4/8 of the Rules
until 2018 (read in the published text) allowed one procedure for both only where the player would be back where he was;
that ground under repair and the obstruction it adjoins are one only under Model Local Rule F-3 implies it still. The
present Clarification is known second-hand only, so what is taken together is said with what it rests on.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from marram.course.model import Course, Feature
from marram.relief import Answer, Drawn, Situation, relief_areas
from marram.relief.areas.complete_relief import CompleteRelief
from marram.relief.constructions.free import interferences
from marram.relief.geometry.outline import XY
from marram.relief.interference.interference import FootprintOn
from marram.relief.interference.tallness import stands_up
from marram.relief.place.abnormal_course_conditions import joined_across_kinds
from marram.relief.place.ground import ground_of
from marram.rules.relief_option import ReliefKind, ReliefOption
from marram.services.cases.rulings import Ruled
from marram.services.ground.interference import interfering

ROOM = 0.01
"""Square metres: a smaller part of a relief area is no place to drop a ball in (own choice)."""


@dataclass(frozen=True)
class Together:
    """Relief from conditions near each other.

    Attributes:
        answer: what was drawn.
        taken: what relief is taken from besides the condition asked about: relief from each leads back to another.
        then: the conditions that interfere in their turn at the reference point.
        blocked: whether one leads back to another, and no place is clear of all.
    """

    answer: Answer
    taken: tuple[Feature, ...] = ()
    then: tuple[Feature, ...] = ()
    blocked: bool = False


def left_at_once(course: Course, ruled: Ruled, condition: Feature | None) -> tuple[Feature, ...]:
    """Return what a Committee has made one: the condition, and where F-3 is in force what adjoins it."""
    if condition is None:
        return ()
    if "F-3" not in (ruled.asked.conditions.local or ()):
        return (condition,)
    return joined_across_kinds(course, _hole(ruled), condition)


def relief_in_turn(
    course: Course, ruled: Ruled, situation: Situation, option: ReliefOption, conditions: Sequence[Feature]
) -> Together:
    """Draw an option from conditions, and see what interferes at its reference points in its turn.

    Args:
        course: the map.
        ruled: the case.
        situation: what is given on the ground; its condition is replaced.
        option: the option to draw.
        conditions: what relief is taken from at once.
    """
    case = _Case(course, ruled, situation, option)
    taken = tuple(conditions)
    answer = case.drawn(taken)
    while isinstance(answer, Drawn) and conditions:
        then = case.others(answer, taken)
        back = tuple(
            one for one in then if case.same_swing(one, taken) and case.leads_back(one, answer, taken)
        )
        both = case.drawn((*taken, *back)) if back else None
        if not isinstance(both, Drawn):
            return Together(answer, taken[len(conditions) :], then, blocked=both is not None)
        taken, answer = (*taken, *back), both
    return Together(answer, taken[len(conditions) :])


@dataclass(frozen=True)
class _Case:
    """One option of a case, drawn from whatever conditions."""

    course: Course
    ruled: Ruled
    situation: Situation
    option: ReliefOption

    def drawn(self, conditions: tuple[Feature, ...], ball: XY | None = None) -> Answer:
        """Return the option drawn from conditions, of the ball or of one at another place."""
        given = replace(self.situation, condition=conditions, ball=ball or self.situation.ball)
        (answer,) = relief_areas(given, (self.option,))
        return answer

    def others(self, answer: Drawn, taken: Sequence[Feature]) -> tuple[Feature, ...]:
        """Return what interferes at the reference points and is not left yet."""
        pieces = self._pieces(taken)
        met = (one for area in answer.areas for one in self._met_at(area.reference))
        return tuple({id(one): one for one in met if not _is_one_of(one, pieces)}.values())

    def same_swing(self, other: Feature, taken: Sequence[Feature]) -> bool:
        """Whether one swing is measured against all: a low one, or the whole where a wall or a building stands up.

        Of several conditions with different swings none is drawn at once: the picture shows one footprint.
        """
        if self.situation.stroke.tall is not None:
            return True
        return len({bool(stands_up(one)) for one in (*taken, other)}) == 1

    def leads_back(self, other: Feature, answer: Drawn, taken: Sequence[Feature]) -> bool:
        """Whether relief one after the other never ends: no place of either relief area is clear of both."""
        if self.option.kind is not ReliefKind.FREE or self._has_room_clear_of((other,), answer):
            return False
        seconds = (self.drawn((other,), area.reference) for area in answer.areas)
        return any(isinstance(one, Drawn) and not self._has_room_clear_of(taken, one) for one in seconds)

    def _has_room_clear_of(self, conditions: Sequence[Feature], answer: Drawn) -> bool:
        given = replace(self.situation, condition=tuple(conditions)).with_usual_footprint()
        kept = [area.polygon for area in answer.areas]
        for one in interferences(given):
            if isinstance(one, FootprintOn):
                kept = [CompleteRelief(one).cut(polygon) for polygon in kept]
        return any(polygon.area > ROOM for polygon in kept)

    def _met_at(self, place: XY) -> tuple[Feature, ...]:
        asked = self.ruled.asked
        found = interfering(self.course, _hole(self.ruled), place, asked.what, conditions=asked.conditions)
        return tuple(one.feature for one in found)

    def _pieces(self, conditions: Sequence[Feature]) -> tuple[Feature, ...]:
        lies = ground_of(self.course, _hole(self.ruled)).lies
        return tuple(piece for one in conditions for piece in lies.joined_with(one))


def _is_one_of(feature: Feature, pieces: Sequence[Feature]) -> bool:
    return any(feature is piece for piece in pieces)


def _hole(ruled: Ruled) -> int:
    assert ruled.lie.hole is not None
    return ruled.lie.hole.number
