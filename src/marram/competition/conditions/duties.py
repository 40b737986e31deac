"""Where an official is on the day, read from the words after the role: "referee, holes 1 to 9, radio Dune 2, telephone"."""

import re
from collections.abc import Iterable
from dataclasses import dataclass

from marram.competition.conditions.event_file import Official

REFEREES = frozenset({"chief_referee", "referee"})
"""Roles that rule on the course."""

_TO, _AND = r"-|–|to|bis|à|al?|till", r"and|und|et|y|e|och|&|\+"
"""Between numbers, in English, German, French, Spanish, Italian and Swedish, as the words below."""
_HOLES = r"holes?|bahn(?:en)?|l(?:o|ö|oe)ch(?:er)?|trous?|hoyos?|buc(?:a|he)|hål(?:en)?"
_GROUPS = r"groups?|gruppen?|flights?|groupes?|partien?|parties?|grupos?|partidos?|gruppi|gruppo|boll(?:ar)?"
_NUMBERS = re.compile(rf"\d+(?:\s*(?:{_TO})\s*\d+)?", re.IGNORECASE)
_AREAS = re.compile(rf"^(?:(?P<hole>{_HOLES})|(?P<group>{_GROUPS}))\b(?P<which>.*)$", re.IGNORECASE)
_MORE_NUMBERS = re.compile(rf"^(?:(?:{_AND})\s+)?\d[\d\s–-]*(?:(?:{_TO}|{_AND})[\d\s–-]+)*$", re.IGNORECASE)
_ROVING = re.compile(r"^(?P<word>roving|unterwegs|mobil|itinérant|móvil|itinerante|rörlig)\b", re.IGNORECASE)
_RADIO = re.compile(r"^(?:radio|funk|funkgerät)\s+(.+)$", re.IGNORECASE)
_TELEPHONE = re.compile(
    r"^(?:(?:tele)?phone|telefon|tel\.?|handy|t[ée]l[ée]phone|tel[ée]fono)(?!\w)\s*(.*)$",
    re.IGNORECASE,
)
MOST = 400
"""Numbers that a range may hold at most (own choice): more is a slip of the pen."""


@dataclass(frozen=True, slots=True)
class Duty:
    """What an official does, and where.

    Attributes:
        name: who.
        role: as one word, such as ``chief_referee``.
        holes: the holes given.
        groups: the groups given, by number on the starting sheet.
        roving: whether the official goes where needed.
        radio: the name on the radio; empty where none is given.
        telephone: whether the official answers the telephone.
        elsewhere: what else is said of the place or the work, in words.
    """

    name: str
    role: str
    holes: tuple[int, ...] = ()
    groups: tuple[int, ...] = ()
    roving: bool = False
    radio: str = ""
    telephone: bool = False
    elsewhere: str = ""

    @property
    def has_place(self) -> bool:
        """Whether it is said where the official is."""
        return bool(self.holes or self.groups or self.roving or self.elsewhere)


def duty_of(official: Official) -> Duty:
    """Return what the words of an official's role say."""
    role, *pieces = re.split(r"[,;]", official.role)
    numbers: dict[str, list[int]] = {"hole": [], "group": []}
    roving, telephone, radio = False, False, ""
    rest: list[str] = []
    last = ""
    for piece in (one.strip() for one in pieces):
        areas = _AREAS.match(piece)
        if areas and _NUMBERS.search(areas["which"]):
            last = "hole" if areas["hole"] else "group"
            numbers[last] += _numbers(areas["which"])
        elif last and _MORE_NUMBERS.match(piece):  # "holes 1, 3 and 5" was cut at its comma
            numbers[last] += _numbers(piece)
        elif found := _ROVING.match(piece):
            roving = True
            rest += [words] if (words := piece[found.end() :].strip()) else []
        elif found := _RADIO.match(piece):
            radio = found[1].strip()
        elif found := _TELEPHONE.match(piece):
            telephone = True
            rest += [found[1]] if found[1] else []
        elif piece:
            rest.append(piece)
    return Duty(
        official.name,
        role.strip().casefold().replace(" ", "_"),
        tuple(dict.fromkeys(numbers["hole"])),
        tuple(dict.fromkeys(numbers["group"])),
        roving,
        radio,
        telephone,
        ", ".join(rest),
    )


def uncovered(duties: Iterable[Duty], holes: Iterable[int]) -> tuple[int, ...]:
    """Return the holes that no referee has, where some have holes: where all rove, or follow groups, every hole is covered."""
    referees = [one for one in duties if one.role in REFEREES]
    given = {hole for one in referees for hole in one.holes}
    if not given or any(one.roving or one.groups for one in referees):
        return ()
    return tuple(hole for hole in sorted(holes) if hole not in given)


def ranges(numbers: Iterable[int]) -> str:
    """Return numbers as they are spoken: ``1–9, 12``."""
    runs: list[list[int]] = []
    for one in sorted(numbers):
        if runs and one == runs[-1][1] + 1:
            runs[-1][1] = one
        else:
            runs.append([one, one])
    return ", ".join(str(first) if first == last else f"{first}–{last}" for first, last in runs)


def _numbers(words: str) -> list[int]:
    found: list[int] = []
    for one in _NUMBERS.findall(words):
        ends = [int(number) for number in re.findall(r"\d+", one)]
        first, last = ends[0], ends[-1]
        found += range(first, min(last, first + MOST) + 1) if first <= last else range(last, first + 1)
    return found
