"""The result of a competition: how a tie was decided on the course, the close, and reopening as Rule 20.2 allows."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import ClassVar

from marram.competition.conditions.choices import TieMethod
from marram.competition.results.closing import Change
from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import Kind, is_ident

_PEOPLE = said("a list of identifiers of players, the winner first")


@dataclass(frozen=True)
class TieDecided:
    """How a play-off, or a lot, put those in order who were tied; the last such entry of a method counts.

    Attributes:
        method: ``play_off`` or ``lot``.
        order: the players, the winner first.
    """

    __pydantic_config__: ClassVar = STRICT

    method: TieMethod = field(metadata=give(said("play_off or lot")))
    order: tuple[str, ...] = field(metadata=give(_PEOPLE))


@dataclass(frozen=True)
class CompetitionReopened:
    """A closed result is opened again, to put a mistake right; the entry corrects that of the close.

    Attributes:
        change: what for.
        facts: what the Rules asked, as on the command line.
    """

    __pydantic_config__: ClassVar = STRICT

    change: Change = field(
        metadata=give(said("one of {known}", known=", ".join(one.value for one in Change)))
    )
    facts: Mapping[str, str] = field(
        default_factory=dict, metadata=give(said("an object of facts and answers"))
    )


def _tie(found: TieDecided) -> Iterator[str]:
    if found.method not in (TieMethod.PLAY_OFF, TieMethod.LOT):
        yield said("tie_decided: method is {given}; give play_off or lot.", given=found.method.value)
    if len(set(found.order)) < 2 or len(set(found.order)) < len(found.order):
        yield said("tie_decided: order must name two or more players, each once.")
    if not all(map(is_ident, found.order)):
        yield said("tie_decided: order names what is no UUID.")


KINDS = (
    Kind("tie_decided", TieDecided, parts=("note",), faults=_tie),
    Kind("competition_closed", parts=("note",)),
    Kind("competition_reopened", CompetitionReopened, needs=("corrects",), parts=("note", "reason")),
)
