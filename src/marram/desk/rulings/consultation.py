"""One case consulted at the desk: what its address holds, asked of the services."""

from dataclasses import dataclass, field

from marram.course.model import Course, Hole
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.recently import recently
from marram.relief.place.place_facts import PlaceFacts
from marram.services.cases.rulings import Ruled, rule_on


@dataclass(frozen=True)
class Consultation(Ruled):
    """What is known of a case and what the Rules say of it.

    Attributes:
        case: the case as its address holds it.
    """

    case: CaseAddress = field(kw_only=True)

    @property
    def hole(self) -> Hole | None:
        """The hole being played, if known."""
        return self.lie.hole

    @property
    def place(self) -> PlaceFacts | None:
        """What the map knows of the ball's place, if shown."""
        return self.lie.place

    @property
    def judge(self) -> str:
        """Who decides a matter of judgement, in words; empty for anything else."""
        return self.sheet.decided_by if self.sheet else ""


def consult(course: Course, case: CaseAddress) -> Consultation:
    """Return what the Rules say of a case.

    Raises:
        InputError: something in the case cannot be used.
    """
    return recently(
        course, case, lambda: Consultation(**vars(rule_on(course, case.asked())), case=case), "ruled"
    )
