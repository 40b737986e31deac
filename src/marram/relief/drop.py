"""A dropped ball, checked on the map: did it land inside, does it rest inside, what comes next (Rule 14.3)."""

from dataclasses import dataclass, replace

from marram.errors import BadPlace
from marram.relief.areas.relief_area import Failure, ReliefArea, Verdict
from marram.relief.constructions.back_on_the_line import ON_THE_LINE
from marram.relief.geometry.limits import Bound, WithinDistance
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import BALL_RADIUS, TOLERANCE
from marram.rules.facts.ball import Area
from marram.rules.ruling import Action
from marram.said import said


@dataclass(frozen=True, slots=True)
class DropCheck:
    """What a drop led to.

    Attributes:
        landed: whether the ball first touched the ground where it must.
        rests: whether it rests in the relief area; ``None`` when it landed in a wrong place.
        nearer_hole: whether it rests nearer the hole than the area allows.
        area_touched: the area of the course it first touched.
        area_rests: the area of the course it rests in.
        next: what comes next.
        counts: whether this drop counts as one of the two.
        place_at: where to place the ball, when that comes next.
        citation: the provision that says so.
    """

    landed: Verdict
    rests: Verdict | None
    nearer_hole: bool
    area_touched: Area | None
    area_rests: Area | None
    next: Action
    counts: bool
    citation: str
    place_at: XY | None = None


def check_drop(area: ReliefArea, first_touched: XY, came_to_rest: XY | None, drop: int = 1) -> DropCheck:
    """Check a ball dropped in the right way otherwise (by the player, from knee height, straight down).

    Args:
        area: the relief area. Back on the line since 2023 it moves with the spot first touched.
        first_touched: where the ball first touched the ground.
        came_to_rest: where it rests; ``None`` when it landed in a wrong place or has left the map.
        drop: 1 for the first drop that counts, 2 for the second.

    Raises:
        BadPlace: if the option places a ball on a spot, or ``drop`` is not 1 or 2, or it landed inside and
            no resting place is given.
    """
    if area.is_spot:
        raise BadPlace(said("This option puts a ball on a spot; nothing is dropped."))
    if drop not in (1, 2):
        raise BadPlace(
            said(
                "Drop number {drop}: only a first and a second drop count; after them a ball is placed.",
                drop=drop,
            )
        )
    landed = _landed(area, first_touched)
    touched = area.area_of(first_touched) if area.area_of else None
    if not landed.inside:
        # A ball that first touches outside was dropped in a wrong way: again, and it does not count.
        return DropCheck(landed, None, False, touched, None, Action.DROP_AGAIN, False, "14.3b(3)")
    if came_to_rest is None:
        raise BadPlace(said("The ball landed in the relief area; give the place where it came to rest."))
    here = at_spot(area, first_touched) if area.drop_line else area
    rests = here.contains_ball(*came_to_rest)
    resting = area.area_of(came_to_rest, BALL_RADIUS) if area.area_of else None
    if area.same_area and touched is not resting:
        rests = Verdict(False, (*rests.failures, Failure(Bound.SAME_AREA, None, 0.0)), min(rests.margin, 0.0))
    nearer = any(one.bound is Bound.NOT_NEARER for one in rests.failures)
    if rests.inside:
        return DropCheck(landed, rests, nearer, touched, resting, Action.PLAY_AS_IT_LIES, True, "14.3c(1)")
    if drop == 1:
        return DropCheck(landed, rests, nearer, touched, resting, Action.DROP_AGAIN, True, "14.3c(2)")
    return DropCheck(landed, rests, nearer, touched, resting, Action.PLACE, True, "14.3c(2)", first_touched)


def at_spot(area: ReliefArea, spot: XY) -> ReliefArea:
    """Return a relief area moved to the spot that a ball dropped on the line first touched (since 2023)."""
    limits = tuple(
        replace(one, centre=spot) if isinstance(one, WithinDistance) else one for one in area.limits
    )
    return replace(area, reference=spot, limits=limits)


def _landed(area: ReliefArea, spot: XY) -> Verdict:
    """Return whether a ball first touched the ground where it must: in the area, or on the line."""
    line = area.drop_line
    if line is None:
        return area.contains(*spot)
    behind, off = line.measured(spot)
    margin = min(ON_THE_LINE - off, line.inside_by(behind))
    failures = (Failure(Bound.ON_LINE, None, -margin),) if margin < -TOLERANCE else ()
    return Verdict(not failures, failures, margin)
