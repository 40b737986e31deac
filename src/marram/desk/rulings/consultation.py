"""One case consulted: the map's facts and the official's answers → the Rules → words and drawings."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from marram.course.model import Course, Hole
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.shell.place import chosen_hole, to_plane
from marram.relief.place.place_facts import TAP_ACCURACY, PlaceFacts, place_facts
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import date_of_play, form_of_play
from marram.rules.result import Result
from marram.words.sheet import Sheet, sheet


@dataclass(frozen=True)
class Consultation:
    """What is known of a case and what the Rules say of it.

    Attributes:
        case: the case as its address holds it.
        hole: the hole being played, if known.
        place: what the map knows of the ball's place, if shown.
        known: every fact known, by name.
        from_map: names of the facts that came from the map.
        result: what the Rules say; ``None`` while nobody said what happened.
        sheet: the result in words; ``None`` likewise.
    """

    case: CaseAddress
    hole: Hole | None
    place: PlaceFacts | None
    known: Mapping[str, Any]
    from_map: frozenset[str]
    result: Result | None = None
    sheet: Sheet | None = None

    @property
    def judge(self) -> str:
        """Who decides a matter of judgement, in words; empty for anything else."""
        return self.sheet.decided_by if self.sheet else ""


def consult(course: Course, case: CaseAddress) -> Consultation:
    """Return what the Rules say of a case.

    What an official answers outweighs the map: the marking on the ground decides, not the drawing.

    Raises:
        InputError: something in the case cannot be used.
    """
    hole = chosen_hole(course, case)
    place = None
    if hole is not None and "ball" in case.places:
        accuracy = case.accuracy.get("ball", TAP_ACCURACY)
        place = place_facts(course, hole, to_plane(course, case.places["ball"]), accuracy=accuracy)
    mapped = place.facts if place else {}
    known: dict[str, Any] = {**mapped, **case.conditions.facts(), **case.facts}
    from_map = frozenset(mapped.keys() - case.facts.keys())
    if not case.what:
        return Consultation(case, hole, place, known, from_map)
    result = rule(case.what, known, **case.conditions.request())
    form = (
        form_of_play.parse(case.facts["form_of_play"])
        if "form_of_play" in case.facts
        else case.conditions.form
    )
    given = known | {date_of_play.name: case.conditions.on}
    words = sheet(result, form_of_play=form, given=given, from_map=from_map)
    return Consultation(case, hole, place, known, from_map, result, words)
