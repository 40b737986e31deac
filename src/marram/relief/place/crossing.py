"""Where a ball last crossed the edge of a penalty area, proposed from where it was played and where it went in."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from shapely import Point

from marram.course.model import Course, Feature
from marram.errors import BadPlace
from marram.relief.geometry.outline import XY
from marram.relief.place.ground import feature_at, ground_of
from marram.said import said


@dataclass(frozen=True, slots=True)
class Crossing:
    """A proposed crossing point; the player's reasonable judgement stands (Rule 1.3b(2)).

    Attributes:
        place: the point on the edge.
        feature: the penalty area, or of several that are one on the ground the one whose edge that is.
        others: earlier points where the way met the edge, in order: the ball may have gone in and come out.
    """

    place: XY
    feature: Feature
    others: tuple[XY, ...]


def last_crossing(course: Course, hole_number: int, way: Sequence[XY]) -> Crossing:
    """Return where a way into a penalty area last crosses its edge.

    Args:
        course: the course.
        hole_number: the hole being played.
        way: the way of the ball as seen from above: from where it was played, over any points where it
            bounced or turned, to a place in the penalty area.

    Raises:
        BadPlace: if the way does not end in a penalty area or lies wholly inside it.
    """
    if len(way) < 2:
        raise BadPlace(said("Give at least where the ball was played from and a place in the penalty area."))
    found = feature_at(ground_of(course, hole_number).penalty_areas, way[-1])
    if found is None:
        raise BadPlace(
            said(
                "The way of the ball ends at ({x:.2f}, {y:.2f}), which is in no mapped penalty "
                "area. End it at a place in the penalty area.",
                x=way[-1][0],
                y=way[-1][1],
            )
        )
    area, outline = found
    met = [point for start, end in pairwise(way) for _, point in outline.crossings(start, end)]
    if not met:
        raise BadPlace(
            said("The whole way lies in {area}: start it where the ball was outside.", area=area.ident)
        )
    return Crossing(met[-1], area.edge_near(Point(met[-1])), tuple(met[:-1]))
