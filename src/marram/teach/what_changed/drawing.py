"""The drawing of the situation that shows a change: where there is ground to draw, with the relief of both rulings."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date
from random import Random
from typing import Any

from marram.course.model import Course
from marram.relief.pictures.drawing import svg
from marram.rules.engine.request import fact_named, rule
from marram.rules.facts.conditions import FormOfPlay, date_of_play
from marram.rules.facts.conditions import form_of_play as the_form
from marram.rules.ruling import Ruling
from marram.services.ground.relief import draw_options
from marram.teach.drawings.placing import Placed, placed
from marram.teach.drawings.scene import scene_svg
from marram.teach.situations.sampling import HOLES, NAMES
from marram.teach.situations.situation import Situation
from marram.teach.what_changed.telling import Shown


@dataclass(frozen=True, slots=True)
class ShownOnGround:
    """The drawings of a change: the situation, and the relief that one of the two rulings offers and the other does not."""

    scene: str
    before: tuple[str, ...] = ()
    after: tuple[str, ...] = ()

    def named(self) -> Iterator[tuple[str, str]]:
        """Yield each drawing with what a file's name ends in: nothing for the situation itself."""
        yield "", self.scene
        yield from ((f"-before-{number}", one) for number, one in enumerate(self.before, start=1))
        yield from ((f"-after-{number}", one) for number, one in enumerate(self.after, start=1))


def on_ground(
    one: Shown,
    days: tuple[date, date],
    course: Course,
    told: tuple[Mapping[str, Any], Mapping[str, Any]] = ({}, {}),
    prefix: str = "change",
) -> ShownOnGround | None:
    """Return the drawings of a change; ``None`` where its situation has no ground to draw.

    Args:
        one: the situation.
        days: the days of the two rulings; of a Local Rule twice the same.
        course: the course it is drawn on.
        told: what is known for each of the two rulings besides.
        prefix: starts the ids, so that several drawings can stand in one page.
    """
    if not one.incident:
        return None
    later = _situation(one, days[1], told[1])
    there = None if later is None else placed(later, course)
    if later is None or not isinstance(there, Placed):
        return None
    earlier = _situation(one, days[0], told[0])
    scene = scene_svg(there, prefix=prefix)
    if earlier is None or earlier.ruling.relief == later.ruling.relief:
        return ShownOnGround(scene)
    return ShownOnGround(
        scene,
        _relief(there, earlier, later, f"{prefix}-before"),
        _relief(there, later, earlier, f"{prefix}-after"),
    )


def _relief(there: Placed, one: Situation, other: Situation, prefix: str) -> tuple[str, ...]:
    """Return a drawing of each option that the other ruling does not offer alike."""
    known = [replace(option, citation="") for option in other.ruling.relief]
    own = [option for option in one.ruling.relief if replace(option, citation="") not in known]
    return tuple(
        svg(option.areas, there.course, prefix=f"{prefix}-{number}")
        for number, option in enumerate(draw_options(there.course, there.ruled, own))
        if option.areas
    )


def _situation(one: Shown, day: date, told: Mapping[str, Any]) -> Situation | None:
    facts = {**one.given, **told}
    form = FormOfPlay(facts.pop(the_form.name, FormOfPlay.STROKE_PLAY.value))
    facts.pop(date_of_play.name, None)
    result = rule(one.incident, facts, played_on=day, form_of_play=form)
    if not isinstance(result, Ruling):
        return None
    tokens = {name: _token(name, answer) for name, answer in facts.items()}
    lot = Random(f"{one.incident} {sorted(tokens.items())}")  # noqa: S311 - the same player for the same situation
    hole = lot.randint(1, HOLES)
    return Situation(one.incident, tokens, form, day, lot.choice(NAMES), hole, replace(result, reasons=()))


def _token(name: str, answer: Any) -> str:
    fact = fact_named(name)
    return str(fact.token(fact.parse(answer)) if fact.answers else answer)
