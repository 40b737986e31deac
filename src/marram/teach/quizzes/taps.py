"""Questions answered on a drawing: where would you drop, which is the reference point, draw the relief area; judged by geometry."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import Enum
from itertools import count
from random import Random

import shapely

from marram.course.model import Course
from marram.errors import InputError
from marram.relief.areas.construction import distance
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.limits import Bound
from marram.relief.geometry.outline import XY
from marram.relief.pictures.view import View
from marram.said import said
from marram.services.ground.relief import OptionDrawn
from marram.teach.drawings.placing import Placed, placed
from marram.teach.situations.sampling import situations

INCIDENTS = (
    "abnormal_course_condition",
    "ball_in_penalty_area",
    "embedded_ball",
    "no_play_zone",
    "unplayable_ball",
    "wrong_green",
)
"""Incidents whose relief is measured about a reference point that the ground gives."""
FEWEST_CORNERS, MOST_CORNERS = 3, 24
_TAP = 0.03
"""A tap is as exact as this part of the frame's side: about a fingertip on a phone (own choice)."""
_BALL_NEAR = 12.0
"""Metres: a ball farther from the reference point is not shown."""
_SHIFT = 0.35
"""How much larger than it must be the frame is, so that the answer does not lie in its middle."""
_NEAREST = 0.25
"""Metres: a reference point is found that is tapped no farther from it, on however small a frame (own choice)."""
_ALIKE = 0.6
"""How much of what is drawn or asked for must be both, so that an area counts as drawn (own choice)."""


class Kind(Enum):
    """What is asked for on the drawing; the values stand in addresses."""

    DROP = "drop"
    REFERENCE = "reference"
    AREA = "area"


@dataclass(frozen=True)
class TapQuestion:
    """A question about one relief option of a placed situation."""

    kind: Kind
    placed: Placed
    option: OptionDrawn

    @property
    def area(self) -> ReliefArea:
        """The relief area asked about."""
        return self.option.areas[0]

    def view(self, pixels: float) -> View:
        """Return the frame of its drawing: the reference point with its club-lengths, off the middle, and the ball if near."""
        x, y = self.area.reference
        reach = 1.6 * (self.area.radius or 0.0)
        held = [(x - reach, y - reach), (x + reach, y + reach)]
        if distance(self.placed.ball, (x, y)) <= _BALL_NEAR:
            held += [(self.placed.ball[0] + by, self.placed.ball[1] + by) for by in (-1.5, 1.5)]
        across, up = ([place[axis] for place in held] for axis in (0, 1))
        size = max(max(across) - min(across), max(up) - min(up)) * (1 + _SHIFT)
        lot = Random(f"{x:.2f} {y:.2f}")  # noqa: S311 - so that the middle of the drawing gives nothing away
        left = max(across) - size + lot.random() * (size - max(across) + min(across))
        bottom = max(up) - size + lot.random() * (size - max(up) + min(up))
        return View(left, bottom, size, pixels)


@dataclass(frozen=True, slots=True)
class Judged:
    """What became of an answer.

    Attributes:
        right: whether it is right.
        away: metres from where it should have been; 0 where it is right.
        outside: the limits that a tapped place is outside of.
        shared: of an area that was drawn, how much of it and of the right one is both, 0 to 1.
    """

    right: bool
    away: float = 0.0
    outside: tuple[Bound, ...] = ()
    shared: float = 0.0


def tap_questions(seed: int, course: Course, kind: Kind | None = None) -> Iterator[TapQuestion]:
    """Yield questions without end, the same for the same seed; of one kind, or of each in turn.

    Raises:
        InputError: the course has no place for any of them.
    """
    kinds = list(Kind) if kind is None else [kind]
    missed = 0
    turn = count(seed)
    for one in situations(seed, incidents=INCIDENTS):
        there = placed(one, course, seed)
        options = [each for each in there.options if _can_be_asked(each)] if isinstance(there, Placed) else []
        missed = 0 if options else missed + 1
        if missed == _MOST_MISSED:
            raise InputError(
                said("This course has no place for a question on a drawing: its map holds too little.")
            )
        if options and isinstance(there, Placed):
            number = next(turn)
            yield TapQuestion(kinds[number % len(kinds)], there, options[number % len(options)])


_MOST_MISSED = 60


def _can_be_asked(option: OptionDrawn) -> bool:
    """Whether one area is measured in club-lengths about a point that the ground gives, not one that the player chooses."""
    if len(option.areas) != 1 or option.areas[0].drop_line is not None:
        return False
    area = option.areas[0]
    given = "relief.example_spot" not in area.assumed and "previous" not in option.option.reference.value
    return bool(area.radius) and area.area_m2 > _ROOM and given


_ROOM = 0.3
"""Square metres: a smaller area cannot be tapped."""


def judge(question: TapQuestion, places: Sequence[XY]) -> Judged:
    """Return whether an answer is right.

    Args:
        question: the question.
        places: where was tapped, in local metres: one place, or of an area its corners in order.

    Raises:
        InputError: there are too few corners, or too many, or more than one place where one is asked for.
    """
    if question.kind is Kind.AREA:
        return _drawn(question.area, places)
    if len(places) != 1:
        raise InputError(said("Tap one place on the drawing; {count} were given.", count=len(places)))
    if question.kind is Kind.REFERENCE:
        away = distance(places[0], question.area.reference)
        near = max(_NEAREST, _TAP * question.view(1.0).size)
        return Judged(away <= near, 0.0 if away <= near else away)
    verdict = question.area.contains(*places[0])
    outside = tuple(dict.fromkeys(one.bound for one in verdict.failures))
    return Judged(verdict.inside, 0.0 if verdict.inside else max(0.0, -verdict.margin), outside)


def _drawn(area: ReliefArea, places: Sequence[XY]) -> Judged:
    if not FEWEST_CORNERS <= len(places) <= MOST_CORNERS:
        raise InputError(
            said(
                "Tap {fewest} to {most} corners of the area; {count} were given.",
                fewest=FEWEST_CORNERS,
                most=MOST_CORNERS,
                count=len(places),
            )
        )
    shape = shapely.make_valid(shapely.Polygon(places))
    either = float(shape.union(area.polygon).area)
    shared = float(shape.intersection(area.polygon).area) / either if either else 0.0
    return Judged(shared >= _ALIKE, shared=shared)
