"""What a proposal to mend a map is: the fault, why, and one choice or several, each with its edits."""

import json
from collections.abc import Iterable
from dataclasses import dataclass
from hashlib import sha256

from marram.course.fault import Fault, Severity
from marram.course.versions.map_edits import Edit

_MARK = 10
"""Characters of the digests that name proposals and choices: enough for one map."""


@dataclass(frozen=True, slots=True)
class Choice:
    """One definite way to mend a fault.

    Attributes:
        words: what it does, as an order: "Turn the line round".
        edits: the edits of the map that do it.
        said: what else it brings and must be known before, such as parts that are dropped.
        course: where a course is chosen, what it is called or identified by.
    """

    words: str
    edits: tuple[Edit, ...]
    said: tuple[str, ...] = ()
    course: str = ""

    @property
    def mark(self) -> str:
        """A digest of what it changes: who accepts it accepts just this."""
        plain = [(edit.action, edit.ident, edit.feature) for edit in self.edits]
        return _digest(json.dumps(plain, sort_keys=True, ensure_ascii=False))


@dataclass(frozen=True, slots=True)
class Proposal:
    """How a fault of a map can be mended.

    Attributes:
        mending: the kind of mending, such as ``turn_line``.
        fault: the fault.
        why: one sentence: what the proposal rests on.
        choices: one definite change, or several of which one is to be chosen.
        also: other faults that the same change mends.
        waiting: faults that follow from this one, and are looked at again once it is mended.
        about: what sets it apart from other proposals for the same fault, such as the number of a hole.
    """

    mending: str
    fault: Fault
    why: str
    choices: tuple[Choice, ...]
    also: tuple[Fault, ...] = ()
    about: str = ""
    waiting: tuple[Fault, ...] = ()

    @property
    def key(self) -> str:
        """A name that stays the same while the fault does, for remembering that it is left."""
        fault = self.fault
        return _digest("|".join((self.mending, fault.check, fault.feature, str(fault.hole), self.about)))

    @property
    def severity(self) -> Severity:
        """How grave the gravest fault is that it answers or that waits for it."""
        order = list(Severity)
        return min((one.severity for one in (self.fault, *self.also, *self.waiting)), key=order.index)

    @property
    def idents(self) -> tuple[str, ...]:
        """The features that it changes in any of its choices."""
        return tuple(dict.fromkeys(edit.ident for choice in self.choices for edit in choice.edits))


def offer(
    mending: str,
    fault: Fault,
    why: str,
    choices: Iterable[Choice],
    *,
    also: Iterable[Fault] = (),
    about: str = "",
) -> Proposal | None:
    """Return a proposal with the choices that change anything, each once; ``None`` where none does."""
    found = {choice.mark: choice for choice in reversed(tuple(choices)) if choice.edits}
    kept = tuple(reversed(found.values()))
    return Proposal(mending, fault, why, kept, tuple(also), about) if kept else None


def _digest(text: str) -> str:
    return sha256(text.encode()).hexdigest()[:_MARK]
