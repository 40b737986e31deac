"""A list that names the partners of a side on one line: made into one line for each of them, with their side.

Which names stand together is told by headings with a number or a letter (``Player 1``, ``HCP 2``, ``Spieler B``) or by the
word partner. The same heading twice tells nothing: it is refused, for half of the players would be passed over.
"""

import re
from collections.abc import Iterator, Mapping, Sequence

from marram.competition.entries.columns import names_players, plain, proposed
from marram.competition.entries.entry import Column
from marram.competition.entries.names import is_total
from marram.errors import InputError
from marram.said import Said, said

Rows = Sequence[tuple[int, tuple[str, ...]]]

_WITHIN = 30
_NUMBERED = re.compile(r"^(?P<before>.*?)[\s.#(]*(?P<which>[1-4])[\s.):]*(?P<behind>\D*)$")
_LETTERED = re.compile(r"^(?P<before>.+)[\s(]+(?P<which>[AB])\)?$")
_PARTNER = re.compile(r"^(?P<before>.*?)\W*\bpartner(?:in|s|'s)?\b\W*(?P<behind>.*)$", re.IGNORECASE)
_NAMES = (Column.GIVEN_NAME, Column.NAME, Column.FAMILY_NAME)


def one_player_a_line(rows: Rows) -> tuple[Rows, Said | None]:
    """Return the rows of a list with one player on each, and a note where that is another list than was given.

    Raises:
        InputError: the header has a heading for names twice.
    """
    for at, (_line, row) in enumerate(rows[:_WITHIN]):
        groups = _groups(row)
        if len(groups) > 1:
            note = said(
                "Each line names up to {count} players, who were read as partners of one side.",
                count=len(groups),
            )
            return (*rows[:at], *_unfolded(rows[at:], groups)), note
        _refuse_twice(row)
    return rows, None


def _groups(header: Sequence[str]) -> Mapping[int, Mapping[str, int]]:
    """Return where each player's cells stand: what is told of the player, and its place; none where one is named at most."""
    found: dict[int, dict[str, int]] = {}
    for place, heading in enumerate(header):
        base, which = _told(heading)
        if which:
            found.setdefault(which, {}).setdefault(_plainly(base), place)
    if 1 not in found and 2 in found:
        rest = ["" if place in found[2].values() else heading for place, heading in enumerate(header)]
        found[1] = {
            column.value: place for place, column in proposed(rest).items() if column.value in found[2]
        }
    named = {
        which: told for which, told in sorted(found.items()) if names_players(proposed(list(told)).values())
    }
    return named if {1, 2} <= named.keys() else {}


def _plainly(base: str) -> str:
    """Return what is told as a column is called, whatever the heading has for it."""
    known = proposed([base])
    return known[0].value if known else plain(base)


def _told(heading: str) -> tuple[str, int]:
    """Return what a heading tells, and of which player of the line; 0 where it does not say."""
    if found := _PARTNER.match(heading):
        return found["behind"] or found["before"] or "name", 2
    for pattern in (_NUMBERED, _LETTERED):
        if found := pattern.match(heading):
            base = found.groupdict().get("behind") or found["before"]
            return base, {"A": 1, "B": 2}.get(found["which"]) or int(found["which"])
    return heading, 0


def _unfolded(rows: Rows, groups: Mapping[int, Mapping[str, int]]) -> Iterator[tuple[int, tuple[str, ...]]]:
    line, header = rows[0]
    own = list(dict.fromkeys(base for told in groups.values() for base in told))
    taken = {place for told in groups.values() for place in told.values()}
    shared = [place for place in range(len(header)) if place not in taken]
    made = (*(header[place] for place in shared), *own, "Side")
    columns = proposed(made)
    sided = Column.SIDE in {columns.get(place) for place in range(len(made) - 1)}
    heading = made[:-1] if sided else made
    yield line, heading
    names = [place for column in _NAMES for place, told in columns.items() if told is column]
    for line, row in rows[1:]:
        if row == header:
            yield line, heading
            continue
        common = [_cell(row, place) for place in shared]
        players = [
            [*common, *(_cell(row, told[base]) if base in told else "" for base in own)]
            for told in groups.values()
            if any(_cell(row, place) for place in told.values())
        ] or [[*common, *[""] * len(own)]]
        called = [" ".join(filter(None, (one[place] for place in names))) for one in players]
        if is_total(called[0]):
            players = players[:1]
        side = [" / ".join(called) if len(players) > 1 else ""]
        for one in players:
            yield line, (*one, *([] if sided or not any(one) else side))


def _cell(row: Sequence[str], place: int) -> str:
    return row[place] if place < len(row) else ""


def _refuse_twice(header: Sequence[str]) -> None:
    columns = proposed(header)
    if not names_players(columns.values()):
        return
    for place, column in columns.items():
        again = [other for other in header if other and plain(other) == plain(header[place])]
        if column in _NAMES and len(again) > 1:
            raise InputError(
                said(
                    "The list has the heading {heading} {count} times. Number them where partners stand on one line "
                    "({heading} 1, {heading} 2); else put each player on a line of their own.",
                    heading=header[place],
                    count=len(again),
                )
            )
