"""A Model Local Rule as an entry of the register."""

from dataclasses import dataclass, field

EDITIONS_OF_2019_AND_2023: tuple[int, ...] = (2019, 2023)


@dataclass(frozen=True, slots=True)
class LocalRule:
    """One Model Local Rule of the Committee Procedures (Section 8), by its published code.

    Attributes:
        code: the published code, e.g. ``"E-5"``; a part of a Local Rule has a code of its own ("F-5.2")
            only where the list numbers it.
        title: what it is about, in our own words.
        modifies: the Rules it changes or adds to, as the book numbers them.
        editions: the editions whose list holds it.
        not_with: codes it cannot be adopted together with; the register keeps this symmetric.
        discouraged: when the Committee is advised against it, in one sentence; empty if never.
        citation: the provision that computes its outcome; empty if none is computed.
        reason: why no outcome is computed; empty where one is.
    """

    code: str
    title: str
    modifies: tuple[str, ...]
    editions: tuple[int, ...] = EDITIONS_OF_2019_AND_2023
    not_with: tuple[str, ...] = field(default=(), kw_only=True)
    discouraged: str = field(default="", kw_only=True)
    citation: str = field(default="", kw_only=True)
    reason: str = field(default="", kw_only=True)

    @property
    def computed(self) -> bool:
        """Whether marram works out what follows from it."""
        return bool(self.citation)
