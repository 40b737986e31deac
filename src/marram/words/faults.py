"""A fault of a map in words: where it lies, what is wrong, what to do."""

from typing import Protocol

from marram.words.spoken import spoken
from marram.words.texts import text


class SaidFault(Protocol):
    """What is said of a fault (:class:`marram.course.fault.Fault`)."""

    @property
    def where(self) -> str:
        """Where it lies; empty if nowhere."""

    @property
    def what(self) -> str:
        """What is wrong."""

    @property
    def remedy(self) -> str:
        """What to do about it."""


def fault_words(fault: SaidFault) -> str:
    """Return a fault as one line: place, what is wrong, what to do."""
    what, remedy = spoken(fault.what), spoken(fault.remedy)
    if not fault.where:
        return text("faults.fault", what=what, remedy=remedy)
    return text("faults.fault_at", where=spoken(fault.where), what=what, remedy=remedy)
