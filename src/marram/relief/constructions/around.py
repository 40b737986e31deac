"""The usual relief area: so many club-lengths around a point, with limits."""

from math import atan2, hypot, pi

from marram.course.lies.united import UnitedArea
from marram.errors import BadPlace, BookError
from marram.relief.areas.construction import (
    ArcMark,
    LineMark,
    Mark,
    Measure,
    PointMark,
    Role,
    distance,
    measure,
)
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.limits import Bounding, Inside, NotNearer, Outside, WithinDistance
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.outlines import Outlines
from marram.relief.place.situation import Situation
from marram.rules.facts.ball import Area
from marram.rules.relief_option import Limit, ReliefOption
from marram.said import said


def around(
    situation: Situation,
    option: ReliefOption,
    reference: XY,
    role: Role = Role.REFERENCE,
    *,
    more_limits: tuple[Bounding, ...] = (),
    marks: tuple[Mark, ...] = (),
    measures: tuple[Measure, ...] = (),
    reference_area: Area | None = None,
) -> ReliefArea:
    """Return the relief area around a reference point.

    Args:
        situation: the situation.
        option: the relief option; its size and limits are used.
        reference: the point the club-lengths are measured from.
        role: what that point is.
        more_limits: limits beyond those that the option names.
        marks: marks of the construction beyond the usual ones.
        measures: distances beyond the usual ones.
        reference_area: the area of the course of the reference point, where it is known better than the map.
    """
    radius = (option.club_lengths or 0) * situation.player.club_length
    limits = (
        WithinDistance(reference, radius),
        *limits_of(situation, option, reference, reference_area),
        *situation.ground.on_course,
        *more_limits,
    )
    hole = situation.hole
    drawn: list[Mark] = [PointMark(Role.HOLE, hole), LineMark(Role.LINE_TO_HOLE, reference, hole)]
    checked: list[Measure] = [measure(role, reference, Role.HOLE, hole)]
    if radius > 0:
        drawn.append(ArcMark(Role.CLUB_LENGTHS, reference, radius, 0.0, 2 * pi))
        checked.append(Measure(role, Role.CLUB_LENGTHS, radius))
        drawn.extend(nearer_arc(one, reference, radius) for one in limits if isinstance(one, NotNearer))
    drawn.append(PointMark(role, reference))
    return ReliefArea(
        option=option,
        reference=reference,
        radius=radius,
        club_length=situation.player.club_length,
        limits=limits,
        construction=(*drawn, *marks),
        measures=(*checked, *measures),
        hole=hole,
        same_area=Limit.SAME_AREA_AS_FIRST_TOUCHED in option.limits,
        area_of=situation.ground.area_at,
        assumed=situation.assumed,
    )


def limits_of(
    situation: Situation, option: ReliefOption, reference: XY, reference_area: Area | None = None
) -> tuple[Bounding, ...]:
    """Return the limits that a relief option names, as limits on the ground.

    ``SAME_AREA_AS_FIRST_TOUCHED`` and ``COMPLETE_RELIEF`` are not among them: the first depends on the
    drop, the second on the condition.
    """
    limits: list[Bounding] = []
    for limit in option.limits:
        limits.extend(_limit(situation, limit, reference, reference_area))
    return tuple(limits)


def _limit(
    situation: Situation, limit: Limit, reference: XY, reference_area: Area | None
) -> tuple[Bounding, ...]:
    ground, hole = situation.ground, situation.hole
    match limit:
        case Limit.NOT_NEARER:
            return (NotNearer(hole, distance(reference, hole), limit),)
        case Limit.NOT_NEARER_THAN_BALL:
            return (NotNearer(hole, distance(_given(situation.ball, said("ball")), hole), limit),)
        case Limit.NOT_NEARER_THAN_CROSSING_POINT:
            return (NotNearer(hole, distance(_given(situation.entry, said("crossing point")), hole), limit),)
        case Limit.SAME_AREA_AS_REFERENCE:
            area = reference_area or ground.area_at(reference)
            if area is None:
                raise BadPlace(
                    said(
                        "The reference point ({x:.2f}, {y:.2f}) is out of bounds.",
                        x=reference[0],
                        y=reference[1],
                    )
                )
            return ground.in_area(area, limit)
        case Limit.GENERAL_AREA:
            return ground.in_area(Area.GENERAL_AREA, limit)
        case Limit.IN_BUNKER:
            return (Inside(_bunker(situation), limit=limit), _outside(situation, limit))
        case Limit.OUTSIDE_BUNKER:
            (bunker,) = _bunker(situation)
            return ground.outside_bunker(bunker, limit)
        case Limit.IN_PENALTY_AREA:
            return (Inside(_penalty_area(situation), limit=limit),)
        case Limit.OUTSIDE_PENALTY_AREA:
            return (Outside(_penalty_area(situation), limit=limit),)
        case Limit.ON_GREEN_OR_GENERAL_AREA:
            return (_outside(situation, limit, bunkers=True, tees=True),)
        case Limit.GENERAL_AREA_OR_TEE:
            return (_outside(situation, limit, bunkers=True, green=True),)
        case Limit.TEEING_AREA:
            return ground.in_area(Area.TEEING_AREA, limit)
        case Limit.WITHIN_DROPPING_ZONE:
            if situation.dropping_zone is None:
                raise BadPlace(said("A dropping zone is needed: give its outline."))
            return (Inside(Outlines((situation.dropping_zone,)), limit=limit),)
        case Limit.SAME_AREA_AS_FIRST_TOUCHED | Limit.COMPLETE_RELIEF:
            return ()
    raise BookError(f"The limit {limit.value} has no meaning on the ground yet; please report it.")


def _given(place: XY | None, name: str) -> XY:
    if place is None:
        raise BadPlace(said("The {name} is needed for this relief area; mark it on the map.", name=name))
    return place


def _bunker(situation: Situation) -> Outlines:
    return _mapped(situation.bunker, said("bunker"))


def _penalty_area(situation: Situation) -> Outlines:
    return _mapped(situation.penalty_area(), said("penalty area"))


def _mapped(found: tuple[UnitedArea, Outline] | None, what: str) -> Outlines:
    if found is None:
        raise BadPlace(
            said(
                "The map has no {what} where the ball lies. Move the ball's spot or add the {what} to the map.",
                what=what,
            )
        )
    return Outlines((found[1],))


def _outside(
    situation: Situation, limit: Limit, *, bunkers: bool = False, green: bool = False, tees: bool = False
) -> Outside:
    ground = situation.ground
    return Outside(ground.outlines_of(bunkers=bunkers, green=green, tees=tees), limit=limit)


def nearer_arc(limit: NotNearer, reference: XY, radius: float) -> ArcMark:
    """Draw the arc about the hole as far as the club-lengths reach, and a little on."""
    hole = limit.hole
    apart = hypot(reference[0] - hole[0], reference[1] - hole[1])
    towards = atan2(reference[1] - hole[1], reference[0] - hole[0])
    spread = min(pi, 1.25 * radius / max(apart, radius / pi))
    return ArcMark(Role.NOT_NEARER, hole, limit.radius, towards - spread, towards + spread)
