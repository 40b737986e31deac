"""Teaching: the same incident under the former Rules and under each edition since."""

from dataclasses import dataclass, replace

from marram.desk.rulings.case_address import CaseAddress
from marram.rules.editions import EDITIONS, FIRST_DAY, FORMER_RULES, as_clarified, edition_of
from marram.rules.incidents.incident import Incident


@dataclass(frozen=True, slots=True)
class Taught:
    """The case under the Rules of another time: their name, the address, and whether it is the case shown."""

    name: str
    url: str
    here: bool


def is_taught(incident: Incident | None) -> bool:
    """Whether an incident is for teaching, so that it reaches back before the editions covered otherwise."""
    return incident is not None and incident.covered_from < FIRST_DAY


def taught(case: CaseAddress) -> list[Taught]:
    """Return a teaching case under the former Rules and each edition; empty for any other case."""
    if not is_taught(case.incident):
        return []
    now = edition_of(case.conditions.on)
    found = []
    for day in map(as_clarified, (FORMER_RULES, *EDITIONS)):
        conditions = replace(case.conditions, on=day)
        found.append(
            Taught(
                conditions.rules_words,
                case.url("/case", conditions=conditions, ask=None),
                edition_of(day) == now,
            )
        )
    return found
