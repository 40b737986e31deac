"""What stands after some of the incidents of a story: the ruling on the ball, what can be corrected, what relief cost."""

from dataclasses import dataclass, replace
from typing import TypeVar

from marram.rules.engine.case import Case
from marram.rules.engine.fact import Fact
from marram.rules.penalty import Penalty
from marram.rules.ruling import Action, Correction, Ruling, Stroke

T = TypeVar("T")

VOID_UNTIL_CORRECTED = ("6.1b(2)", "6.3c(1)", "14.7b(1)", "22.3")
"""Provisions under which no stroke counts, nor a penalty for playing that ball, until the mistake is corrected."""


@dataclass(frozen=True, slots=True)
class Standing:
    """What stands after some of the incidents.

    Attributes:
        ruling: what happens next with the ball.
        corrections: which mistakes can still be corrected, and until when.
        mistake_open: whether strokes do not count until an earlier mistake is corrected.
        relief_taken: penalty strokes of relief that had to be taken, and that later incidents came after.
    """

    ruling: Ruling
    corrections: tuple[Correction, ...]
    mistake_open: bool
    relief_taken: tuple[Penalty, ...] = ()
    relief_of: tuple[int, ...] = ()
    """The incident, from 0, that each of those strokes is the relief of."""
    place: int = 0
    """The incident, from 0, whose ruling on the ball stands."""
    mistake_of: Ruling | None = None
    """The ruling that left the mistake that is open."""
    before_the_stop: Ruling | None = None
    """While play is stopped: what was still to be done with the ball."""

    @classmethod
    def of(cls, part: Ruling, place: int = 0) -> "Standing":
        """Return what stands after one incident."""
        left = part if leaves_mistake(part) else None
        return cls(part, part.corrections, left is not None, place=place, mistake_of=left)

    def with_words_of(self, part: Ruling) -> "Standing":
        """Add the notes and corrections of a later incident that leaves the ball alone."""
        if not part.notes and not part.corrections:
            return self
        return replace(
            self,
            ruling=self.ruling.note(*part.notes),
            corrections=joined(self.corrections, part.corrections),
        )


def leaves_mistake(part: Ruling) -> bool:
    """Whether an incident leaves a mistake that must be corrected, and voids the strokes made until then."""
    still_open = bool(part.corrections) or part.action is Action.CORRECT_MISTAKE
    return (
        still_open
        and part.stroke is Stroke.DOES_NOT_COUNT
        and any(citation.startswith(VOID_UNTIL_CORRECTED) for citation in part.citations)
    )


def ask(case: Case, citation: str, fact: Fact[T]) -> T:
    """Read a fact under the provision that needs it."""
    case.enter(citation)
    answer = case[fact]
    case.leave()
    return answer


def joined(before: tuple[T, ...], added: tuple[T, ...]) -> tuple[T, ...]:
    """Return both one after the other, nothing twice."""
    return before + tuple(one for one in dict.fromkeys(added) if one not in before)
