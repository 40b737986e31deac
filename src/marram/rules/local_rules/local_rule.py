"""A Model Local Rule as an entry of the register."""

from dataclasses import dataclass, field
from datetime import date
from enum import Enum

EDITIONS_OF_2019_AND_2023: tuple[int, ...] = (2019, 2023)


class Basis(Enum):
    """What an entry rests on."""

    PUBLISHED = "its published text"
    SECOND_HAND = "second-hand accounts of its text; the text the Committee has adopted decides"
    MEMORY = "memory, not its text; the text the Committee has adopted decides"


@dataclass(frozen=True, slots=True)
class LocalRule:
    """One Model Local Rule of the Committee Procedures (Section 8), by its published code.

    Attributes:
        code: the published code, e.g. ``"E-5"``; a part of a Local Rule has a code of its own ("F-5.2")
            only where the list numbers it.
        title: what it is about, in our own words.
        modifies: the Rules it changes or adds to, as the book numbers them.
        definitions: the Definitions it changes or adds to, by the term that is defined.
        beside: the codes of the Local Rules whose relief it changes or adds to.
        subject: what it is about, where its text could not be found and no Rule can be named.
        editions: the editions whose list holds it.
        not_with: codes it cannot be adopted together with; the register keeps this symmetric.
        discouraged: when the Committee is advised against it, in one sentence; empty if never.
        citation: the provision that computes its outcome; empty if none is computed.
        reason: why no outcome is computed; empty where one is.
        why_not_with: why it cannot be adopted together with those, a clause that follows the two codes.
        not_with_in: the editions in which it cannot.
        forms: the numbered forms of its text ("B-2.1"); adopting one adopts the entry.
        defines: whether it only says what or where something is: it may be adopted, and the questions about
            the course and the competition already ask for what it says.
        since: the first day it could be adopted, where that is later than the edition.
        basis: what the entry rests on, where that was noted.
        remark: what else to know, in a sentence or two.
    """

    code: str
    title: str
    modifies: tuple[str, ...] = ()
    definitions: tuple[str, ...] = field(default=(), kw_only=True)
    beside: tuple[str, ...] = field(default=(), kw_only=True)
    subject: str = field(default="", kw_only=True)
    editions: tuple[int, ...] = EDITIONS_OF_2019_AND_2023
    not_with: tuple[str, ...] = field(default=(), kw_only=True)
    discouraged: str = field(default="", kw_only=True)
    citation: str = field(default="", kw_only=True)
    reason: str = field(default="", kw_only=True)
    why_not_with: str = field(default="", kw_only=True)
    not_with_in: tuple[int, ...] = field(default=EDITIONS_OF_2019_AND_2023, kw_only=True)
    forms: tuple[str, ...] = field(default=(), kw_only=True)
    defines: bool = field(default=False, kw_only=True)
    since: date | None = field(default=None, kw_only=True)
    basis: Basis | None = field(default=None, kw_only=True)
    remark: str = field(default="", kw_only=True)

    @property
    def computed(self) -> bool:
        """Whether marram works out what follows from it."""
        return bool(self.citation)
