"""The sheet for officials: who is where, the names on the radio, who answers the telephone, and who has which hole."""

from collections.abc import Iterable, Sequence

from marram.competition.conditions.duties import REFEREES, Duty, duty_of, ranges, uncovered
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Part, Sheet, Side, Table, Words
from marram.words.texts import capital, clock_words, text

ROLES = frozenset({"chief_referee", "referee", "committee", "scorer", "starter"})


def officials_sheet(event: OnPaper) -> Sheet:
    """Return the sheet for officials of a round."""
    duties = tuple(duty_of(one) for one in event.found.officials)
    holes = [one.number for one in event.holes] or sorted({hole for one in duties for hole in one.holes})
    parts: list[Part] = [_people(duties)]
    parts += (
        [Words(text("paper.officials.open"), tuple(open_), listed=True)]
        if (open_ := _open(duties, holes))
        else []
    )
    if any(one.holes for one in duties):
        parts.append(_by_hole(duties, holes))
    if any(one.groups for one in duties):
        parts.append(_by_group(event, duties))
    return Sheet(
        text("paper.title.officials_sheet"),
        event.name,
        event.about,
        event.day_words,
        tuple(parts),
        text("paper.foot.committee"),
    )


def role_words(role: str) -> str:
    """Return what a role is called."""
    return text(f"people.role.{role}") if role in ROLES else capital(role.replace("_", " "))


def place_words(duty: Duty) -> str:
    """Return where an official is, in words that go on a sentence; empty where it is not said."""
    return ", ".join(
        filter(
            None,
            (
                text("paper.officials.holes", holes=ranges(duty.holes)) if duty.holes else "",
                text("paper.officials.groups", groups=ranges(duty.groups)) if duty.groups else "",
                text("paper.officials.roving") if duty.roving else "",
                duty.elsewhere,
            ),
        )
    )


def _people(duties: Sequence[Duty]) -> Table:
    columns = (
        Column(text("paper.column.name"), 2, names_row=True),
        Column(text("paper.column.role"), 1),
        Column(text("paper.column.where"), 2),
        Column(text("paper.column.radio"), 1),
        Column(text("paper.column.telephone"), 0, Side.CENTER),
    )
    rows = tuple(
        (
            Cell(one.name, strong=True),
            Cell(role_words(one.role)),
            Cell(capital(place_words(one)) or text("paper.officials.no_place")),
            Cell(one.radio),
            Cell(text("paper.officials.answers") if one.telephone else ""),
        )
        for one in duties
    )
    return Table("", columns, rows, text("paper.officials.none"))


def _open(duties: Sequence[Duty], holes: Sequence[int]) -> list[str]:
    """Return what is still to be settled, as sentences."""
    if not duties:
        return []
    found = []
    if without := uncovered(duties, holes):
        found.append(text("paper.officials.uncovered", holes=ranges(without)))
    found += [
        text(f"paper.officials.none.{role}")
        for role in ("starter", "scorer")
        if not any(one.role == role for one in duties)
    ]
    radios = [one.radio.casefold() for one in duties if one.radio]
    if twice := sorted({one.radio for one in duties if radios.count(one.radio.casefold()) > 1}):
        found.append(text("paper.officials.radio_twice", names=", ".join(twice)))
    if radios and (mute := [one.name for one in duties if not one.radio and one.role in REFEREES]):
        found.append(text("paper.officials.no_radio", names=", ".join(mute)))
    if not any(one.telephone for one in duties):
        found.append(text("paper.officials.no_telephone"))
    return found


def _by_hole(duties: Sequence[Duty], holes: Iterable[int]) -> Table:
    columns = (
        Column(text("paper.column.hole"), 0, Side.RIGHT, names_row=True),
        Column(text("paper.column.name"), 1),
    )
    rows = tuple(
        (Cell(str(hole), strong=True), _who(one for one in duties if hole in one.holes)) for hole in holes
    )
    return Table(text("paper.officials.by_hole"), columns, rows, across=2)


def _by_group(event: OnPaper, duties: Sequence[Duty]) -> Table:
    columns = (
        Column(text("paper.column.group"), 0, Side.RIGHT, names_row=True),
        Column(text("paper.column.time"), 0),
        Column(text("paper.column.player"), 2),
        Column(text("paper.column.name"), 1),
    )
    rows = tuple(
        (
            Cell(str(number), strong=True),
            Cell(clock_words(group.time)),
            Cell(", ".join(group.players)),
            _who(one for one in duties if number in one.groups),
        )
        for number, group in enumerate(event.groups, start=1)
        if any(number in one.groups for one in duties)
    )
    return Table(text("paper.officials.by_group"), columns, rows, text("paper.groups.none"))


def _who(duties: Iterable[Duty]) -> Cell:
    return Cell(
        ", ".join(
            text("paper.officials.on_radio", name=one.name, radio=one.radio) if one.radio else one.name
            for one in duties
        )
    )
