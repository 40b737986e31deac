"""An entry, and what a list of entries was read as."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from enum import Enum

from marram.said import Said


class Column(Enum):
    """What a column of a list can tell of a player."""

    NAME = "name"
    FAMILY_NAME = "family_name"
    GIVEN_NAME = "given_name"
    HANDICAP_INDEX = "handicap_index"
    CLUB = "club"
    SEX = "sex"
    BORN = "born"
    NUMBER = "number"
    SIDE = "side"
    TEAM = "team"
    TEES = "tees"


@dataclass(frozen=True, slots=True)
class Entry:
    """A player who entered.

    Attributes:
        name: as the list has it.
        handicap_index: a plus one negative; ``None`` where the list has none.
        club: empty where it is not told.
        sex: ``male`` or ``female``, empty where it is not told.
        born: year of birth; ``None`` where it is not told.
        number: of the member or licence; empty where it is not told.
        line: of the list.
        side: what the side with partners is called; empty where the player competes alone.
        team: the team; empty where there is none.
        tees: the tees played from; empty where they are those of the competition.
    """

    name: str
    handicap_index: Decimal | None = None
    club: str = ""
    sex: str = ""
    born: int | None = None
    number: str = ""
    line: int = 0
    side: str = ""
    team: str = ""
    tees: str = ""

    @property
    def key(self) -> str:
        """What the entry is known by in a ballot: its number, or else name and club, in small letters."""
        return (self.number or f"{self.name}|{self.club}").casefold()


@dataclass(frozen=True, slots=True)
class LineFault:
    """What is wrong with one line of a list, and what to do about it."""

    line: int
    fault: str


@dataclass(frozen=True, slots=True)
class EntryList:
    """A list of entries as it was read; where there are faults there are no entries.

    Attributes:
        entries: all of them, or none.
        faults: line by line.
        notes: what was taken how: encoding, separator, lines left out above the header.
        columns: which column of the list tells what; kept, it reads the next list of the same kind.
    """

    entries: tuple[Entry, ...]
    faults: tuple[LineFault, ...] = ()
    notes: tuple[Said, ...] = ()
    columns: Mapping[str, Column] = field(default_factory=dict)
