"""A fact: one question whose answer can change a ruling."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from enum import Enum
from math import isfinite
from typing import Any, Generic, TypeVar

from marram.errors import BadAnswer, BookError, did_you_mean, shown
from marram.said import joined, said, sentences

UNITS = {
    "holes": said("holes"),
    "strokes": said("strokes"),
    "minutes": said("minutes"),
    "seconds": said("seconds"),
    "club-lengths": said("club-lengths"),
}
"""The words for units, by the name a fact gives them."""

T = TypeVar("T")
E = TypeVar("E", bound=Enum)


class DecidedBy(Enum):
    """Who establishes a fact."""

    PLAYER = "player"
    """The player's reasonable judgement, which is accepted even if later shown wrong (Rule 1.3b(2))."""
    REFEREE = "referee"
    """The referee, from all evidence reasonably available (Rule 20.2)."""
    COMMITTEE = "committee"
    """The Committee, as a matter it alone decides."""
    MAP = "map"
    """The course map, where one is loaded; otherwise the referee."""


@dataclass(frozen=True, slots=True, eq=False)
class Fact(Generic[T]):
    """One question whose answer can change a ruling; declared once, compared by identity.

    Attributes:
        name: the key used in Python, on the command line and in JSON.
        question: the question in plain words.
        help: one line on how an official establishes it on the ground.
        source: the Rule or Definition the question comes from.
        decided_by: who establishes it.
        answers: every allowed answer with its words; empty for numbers and dates.
        unit: the unit of a number, else an empty string.
        minimum: the least number allowed, inclusive.
        maximum: the greatest number allowed, inclusive.
        whole: whether a number must be a whole one.
        is_date: whether the answer is a date.
        usual: the answer of nearly every case, where there is one: offered for confirmation, never taken for granted.
    """

    name: str
    question: str
    help: str
    source: str
    decided_by: DecidedBy = DecidedBy.REFEREE
    answers: Mapping[T, str] = field(default_factory=dict)
    unit: str = ""
    minimum: float = 0
    maximum: float = float("inf")
    whole: bool = True
    is_date: bool = False
    usual: T | None = None

    def __post_init__(self) -> None:
        if self.usual is not None and self.usual not in self.answers:
            raise BookError(f"The usual answer of {self.name!r} is none of its answers; give one of them.")
        if self.name in FACTS:
            raise BookError(f"The fact {self.name!r} is declared twice; give one of them another name.")
        FACTS[self.name] = self

    def __repr__(self) -> str:
        return f"<Fact {self.name}>"

    def token(self, answer: Any) -> str:
        """Return the answer as it is written on the command line and in JSON."""
        if isinstance(answer, bool):
            return "yes" if answer else "no"
        return str(answer.value if isinstance(answer, Enum) else answer)

    def tokens(self) -> tuple[str, ...]:
        """Return every allowed answer as written on the command line."""
        return tuple(self.token(answer) for answer in self.answers)

    def parse(self, given: Any, called: str = "") -> T:
        """Return the answer that ``given`` stands for.

        Args:
            given: the answer as given.
            called: what the fact is called where it was given, for its faults; its name if that is not said.

        Raises:
            BadAnswer: the fact does not allow it; the message lists what it allows.
        """
        if self.is_date:
            return self._parse_date(given, called or self.name)  # type: ignore[return-value]
        if not self.answers:
            return self._parse_number(given, called or self.name)  # type: ignore[return-value]
        for answer in self.answers:
            if given is answer:
                return answer
        words = self.tokens()
        if isinstance(given, str):
            word = given.strip().lower().replace("-", "_").replace(" ", "_")
            word = _YES_NO.get(word, word) if "yes" in words else word
        else:  # true and false are yes and no, also where there is more to say than these two
            word = self.token(given) if isinstance(given, bool) else ""
        if word in words:
            return tuple(self.answers)[words.index(word)]
        meant = word if isinstance(given, str) else given
        raise BadAnswer(
            sentences(
                said("{called}: {given} is not an answer.", called=called or self.name, given=shown(given)),
                did_you_mean(meant, words),
                said("It allows: {words}.", words=", ".join(words)),
            )
        )

    def _parse_number(self, given: Any, called: str) -> float:
        try:
            if isinstance(given, bool | Enum):
                raise TypeError
            number = float(given)
            if not isfinite(number) or (self.whole and not number.is_integer()):
                raise ValueError
        except (TypeError, ValueError, OverflowError):
            raise BadAnswer(
                said(
                    "{called}: {given} is not {kind}{of}. Give {kind}, for example 3.",
                    called=called,
                    given=shown(given),
                    **self._kind(),
                )
            ) from None
        if not self.minimum <= number <= self.maximum:
            most = said("to {most:g}", most=self.maximum) if self.maximum < float("inf") else said("up")
            raise BadAnswer(
                said(
                    "{called}: {given} is out of range; give {kind}{of} from {minimum:g} {most}.",
                    called=called,
                    given=shown(given),
                    **self._kind(),
                    minimum=self.minimum,
                    most=most,
                )
            )
        return int(number) if self.whole else number

    def _kind(self) -> dict[str, str]:
        """Return what kind of number is asked for, and of what, as a fault says it: built only for a fault."""
        return {
            "kind": said("a whole number") if self.whole else said("a number"),
            "of": joined("", " (", UNITS.get(self.unit, self.unit), ")") if self.unit else "",
        }

    def _parse_date(self, given: Any, called: str) -> date:
        if isinstance(given, date):  # of a moment, its day
            return given.date() if isinstance(given, datetime) else given
        try:
            if not isinstance(given, str):
                raise TypeError
            return date.fromisoformat(given.strip())
        except (TypeError, ValueError):
            raise BadAnswer(
                said(
                    "{called}: {given} is not a date; write it as year-month-day, for example 2023-07-01.",
                    called=called,
                    given=shown(given),
                )
            ) from None


FACTS: dict[str, Fact[Any]] = {}
"""Every fact declared so far, by name; importing a vocabulary module adds to it."""

_YES_NO = {"true": "yes", "y": "yes", "1": "yes", "false": "no", "n": "no", "0": "no"}


def yes_no(
    name: str,
    question: str,
    *,
    help: str,
    source: str,
    decided_by: DecidedBy = DecidedBy.REFEREE,
    usual: bool | None = None,
) -> Fact[bool]:
    """Declare a fact answered by yes or no."""
    return Fact(name, question, help, source, decided_by, {True: "yes", False: "no"}, usual=usual)


def choice(
    name: str,
    question: str,
    answers: Mapping[E, str],
    *,
    help: str,
    source: str,
    decided_by: DecidedBy = DecidedBy.REFEREE,
    usual: E | None = None,
) -> Fact[E]:
    """Declare a fact answered by one member of an enum; ``answers`` gives each member its words."""
    return Fact(name, question, help, source, decided_by, answers, usual=usual)


def number(
    name: str,
    question: str,
    *,
    help: str,
    source: str,
    unit: str,
    decided_by: DecidedBy = DecidedBy.REFEREE,
    minimum: float = 0,
    maximum: float = float("inf"),
    whole: bool = True,
) -> Fact[float]:
    """Declare a fact answered by a number; provisions read it through thresholds only."""
    return Fact(name, question, help, source, decided_by, {}, unit, minimum, maximum, whole)
