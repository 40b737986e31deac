"""The lines of a list taken one after the other: what each says of a player, what is wrong with it, what was understood how."""

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from typing import TypeVar

from marram.competition.entries.cells import (
    born_in,
    broken,
    handicap_in,
    sex_in,
    wrong_encoding,
    wrong_letters,
)
from marram.competition.entries.entry import Column, Entry, LineFault
from marram.competition.entries.names import bare_letters, behind, is_total, spelled_alike, turned
from marram.errors import InputError
from marram.said import Said, said

T = TypeVar("T")
_NOBODY = re.compile(r"^\W*\d|\d\s*[.:/-]\s*\d|\d{4}|[:;=@]|^\W*$")
"""What no name of a person has: a number before it, a date, a year, a colon as behind a remark, an address; no letter at all."""


@dataclass
class Taking:
    """Takes lines one after the other, and keeps what is wrong with them.

    Attributes:
        columns: which column tells what, by its place.
        width: how many columns the header has.
        entries: what was taken.
        faults: what is wrong.
    """

    columns: Mapping[int, Column]
    width: int
    entries: list[Entry] = field(default_factory=list)
    faults: list[LineFault] = field(default_factory=list)
    _seen: dict[str, int] = field(default_factory=dict)
    _alike: dict[str, list[Entry]] = field(default_factory=dict)
    _left_out: list[int] = field(default_factory=list)
    _turned: list[int] = field(default_factory=list)
    _clubs: list[int] = field(default_factory=list)
    _sexes: dict[int, str] = field(default_factory=dict)
    _ended: bool = False
    _alone: list[tuple[int, str]] = field(default_factory=list)

    def take(self, line: int, row: Sequence[str], *, again: bool = False) -> None:
        """Take one line.

        Args:
            line: its number.
            row: its cells.
            again: whether it is the header once more, as lists of several pages have it.
        """
        cells = {column: row[place] if place < len(row) else "" for place, column in self.columns.items()}
        if again or self._is_total(cells, row):
            self._left_out.append(line)
            self._ended = self._ended or not again
            return
        if self._ended and len(self.columns) > 1 and sum(map(bool, row)) == 1:
            self._alone.append((line, next(filter(None, row))))
            return
        self._go_on()
        if any(row[self.width :]):
            self.fault(
                line, said("The line has more cells than the header. Look for a separator inside a cell.")
            )
        for cell in cells.values():
            wrong = wrong_encoding(cell) or broken(cell)
            if wrong is not None:
                self.fault(line, wrong)
        name, club = self._name(line, cells)
        index: Decimal | None = self._read(line, cells.get(Column.HANDICAP_INDEX, ""), handicap_in, None)
        born: int | None = self._read(line, cells.get(Column.BORN, ""), born_in, None)
        sex: str = self._read(line, cells.get(Column.SEX, ""), sex_in, "")
        self._sexes[line] = cells.get(Column.SEX, "").strip().casefold().rstrip(".")
        number, side, team, tees = (
            cells.get(one, "") for one in (Column.NUMBER, Column.SIDE, Column.TEAM, Column.TEES)
        )
        self.entries.append(Entry(name, index, club, sex, born, number, line, side, team, tees))

    def _go_on(self) -> None:
        """Have lines told that stand alone below totals: others follow, so that they may be players as well as remarks."""
        for line, words in self._alone:
            self.fault(
                line,
                said(
                    "{words} stands alone below totals, as a remark does. Strike the line, or write what else is known of the player.",
                    words=repr(words),
                ),
            )
        self._alone.clear()

    def _is_total(self, cells: Mapping[Column, str], row: Sequence[str]) -> bool:
        name = cells.get(Column.NAME, "") or cells.get(Column.FAMILY_NAME, "")
        if is_total(name):
            return True
        return not name and not cells.get(Column.GIVEN_NAME) and any(map(is_total, filter(None, row)))

    def _name(self, line: int, cells: Mapping[Column, str]) -> tuple[str, str]:
        """Return the name and the club of a line."""
        name, club = self._joined(cells), cells.get(Column.CLUB, "")
        if (found := behind(name)) and not re.search(r"\d", found[1]):
            if club and found[1].casefold() != club.casefold():
                self.fault(
                    line,
                    said(
                        "{brackets} stands in brackets behind the name, and the club is {club}. Strike one of the two.",
                        brackets=repr(found[1]),
                        club=repr(club),
                    ),
                )
            name, club = found[0], club or found[1]
            self._clubs.append(line)
        if (other_way := turned(name)) is not None:
            name = other_way
            self._turned.append(line)
        if not name:
            self.fault(line, said("The line has no name. Write it, or strike the line."))
        elif odd := _NOBODY.search(name):
            self.fault(
                line,
                said(
                    "{name} is no name of a person, as {sign} stands in it. Write the name, or strike the line.",
                    name=repr(name),
                    sign=repr(odd[0]),
                ),
            )
        elif wrong_encoding(name) is None and (wrong := wrong_letters(name)) is not None:
            self.fault(line, wrong)
        return name, club

    @staticmethod
    def _joined(cells: Mapping[Column, str]) -> str:
        """Return a name out of its parts; what is called the name is the family name where it lacks the given one."""
        given, family = cells.get(Column.GIVEN_NAME, ""), cells.get(Column.FAMILY_NAME, "")
        whole = cells.get(Column.NAME, "")
        if whole and given and f" {given} ".casefold() in f" {whole} ".replace(",", " ").casefold():
            return whole
        return " ".join(filter(None, (given, whole or family)))

    def _read(self, line: int, cell: str, read: Callable[[str], T], otherwise: T) -> T:
        if broken(cell):
            return otherwise
        try:
            return read(cell)
        except InputError as error:
            for fault in error.faults:
                self.fault(line, fault)
            return otherwise

    def look_over(self) -> None:
        """Tell what only the whole list shows: who stands in it twice, and a letter for a sex that can mean two things."""
        for entry in self.entries:
            if entry.name:
                self._twice(entry)
        teams: dict[str, Entry] = {}
        for entry in self.entries:
            first = teams.setdefault(entry.side, entry) if entry.side else entry
            if first.team != entry.team:
                self.fault(
                    entry.line,
                    said(
                        "The partners of side {side} are in several teams; line {first} has another. Give them one.",
                        side=repr(entry.side),
                        first=first.line,
                    ),
                )
        told = set(self._sexes.values())
        if "d" in told and told & {"m", "w", "f"}:
            for line, sex in self._sexes.items():
                if sex == "d":
                    self.fault(
                        line,
                        said("'d' beside m and w can be read in two ways. Write m or f, or leave it empty."),
                    )

    def _twice(self, entry: Entry) -> None:
        exactly = {entry.key, f"{entry.name}|{entry.club}".casefold()}
        for key in sorted(exactly):
            if key in self._seen:
                self.fault(
                    entry.line,
                    said(
                        "{name} stands in line {first} already. Strike one of the two, or tell them apart by number or club.",
                        name=entry.name,
                        first=self._seen[key],
                    ),
                )
                return
        before = self._alike.setdefault(spelled_alike(entry.name), [])
        for other in before:
            if _told_apart(entry, other):
                continue
            self.fault(
                entry.line,
                said(
                    "{name} is probably {other} of line {first}, spelled otherwise. Strike one of the two, or tell them apart by number or club.",
                    name=entry.name,
                    other=other.name,
                    first=other.line,
                ),
            )
            return
        before.append(entry)
        self._seen |= dict.fromkeys(exactly, entry.line)

    def notes(self) -> Iterator[Said]:
        """Yield what was understood how."""
        for lines, note in (
            (self._left_out, said("Left out as totals, or as the header again: lines {lines}.", lines=_lines(self._left_out))),
            (self._turned, said("Names written family name first were turned round: lines {lines}.", lines=_lines(self._turned))),
            (self._clubs, said("What stands in brackets behind a name was read as the club: lines {lines}.", lines=_lines(self._clubs))),
            (self._alone, said("Left out as remarks below the totals: {words}.", words=" · ".join(words for _line, words in self._alone))),
        ):  # fmt: skip
            if lines:
                yield note

    def fault(self, line: int, fault: str) -> None:
        """Keep what is wrong with a line."""
        self.faults.append(LineFault(line, fault))


def _told_apart(one: Entry, other: Entry) -> bool:
    """Tell whether two of a name are told apart by number, club or year of birth."""
    clubs = spelled_alike(one.club), spelled_alike(other.club)
    bare = bare_letters(one.club), bare_letters(other.club)
    same_club = clubs[0] == clubs[1] or bare[0] == bare[1]
    pairs = ((one.number, other.number), ("", "") if same_club else clubs, (one.born, other.born))
    return any(mine and its and mine != its for mine, its in pairs)


def _lines(numbers: Sequence[int]) -> str:
    shown = ", ".join(map(str, numbers[:8]))
    return f"{shown} …" if len(numbers) > 8 else shown
