"""The wishes of a draw as somebody writes them, one a line, in the reader's language or in English."""

import re
from collections.abc import Iterator, Mapping, Sequence
from datetime import time

from marram.competition.draw.wishes import Apart, NotBefore, Part, Together, Wish, Within
from marram.errors import InputError, did_you_mean, shown
from marram.records.field import EntrantKept
from marram.said import said, sentences
from marram.words.texts import clock_words, english, sentence, text

WISHES = ("together", "apart", *(one.value for one in Part), "not_before")
"""Every kind of wish, by the name of its words in the catalogue."""

_OF_SEVERAL = ("together", "apart")
_TIME = r"(?P<time>\d\d?:\d\d.*?)"
_HALVES = (("before_noon", 0), ("after_noon", 12))
"""How hours counted to twelve are written, and what the hours of that half of the day are counted from."""
_LINE = re.compile(r"^\s*(?P<what>[^:]+?(?:\d\d?:\d\d[^:]*)?)\s*:\s*(?P<who>[^:]*)$")


def wish_lines() -> Iterator[str]:
    """Yield how each wish is written, in the reader's language."""
    for kind in WISHES:
        who = text("field.draw.wish.names" if kind in _OF_SEVERAL else "field.draw.wish.name")
        what = text(
            f"field.draw.wish.{kind}", **({"time": clock_words(time(10, 30))} if kind == "not_before" else {})
        )
        yield f"{what}: {who}"


def read_wishes(written: str, playing: Sequence[EntrantKept]) -> list[tuple[Wish, str]]:
    """Return wishes, each with its line, the players by identifier.

    A line is ``together: NAME, NAME``, ``apart: NAME, NAME``, ``early: NAME``, ``late: NAME``, ``first tee: NAME``,
    ``other tee: NAME`` or ``not before 10:30: NAME``; or the same in the reader's language. A time is one of 24 hours, or of
    twelve with the half of the day (``1:30 pm``).

    Raises:
        InputError: a line is none of them, or names nobody who plays; every fault is listed with its line.
    """
    known: dict[str, list[str]] = {}
    for one in playing:
        known.setdefault(one.name.casefold(), []).append(one.person)
    names = list(dict.fromkeys(one.name for one in playing))
    found: list[tuple[Wish, str]] = []
    faults: list[str] = []
    for number, line in enumerate(written.splitlines(), start=1):
        if not line.strip():
            continue
        read = _LINE.match(line)
        people, unknown = _people(read["who"] if read else "", known, names)
        faults += [said("Line {line}: {fault}", line=number, fault=one) for one in unknown]
        if unknown:
            continue
        wished = _wished(read["what"] if read else "", people)
        if wished is None:
            fault = said(
                "Line {line}: {words} is no wish. Write one of these: {wishes}",
                line=number,
                words=shown(line.strip()),
                wishes=" · ".join(wish_lines()),
            )
            faults.append(fault)
        else:
            found += [(one, line.strip()) for one in wished]
    if faults:
        raise InputError(*faults)
    return found


def _people(
    written: str, known: Mapping[str, Sequence[str]], names: Sequence[str]
) -> tuple[list[str], list[str]]:
    """Return the players of a line by identifier, and what is wrong with its names."""
    people: list[str] = []
    faults: list[str] = []
    for name in filter(None, (one.strip() for one in written.split(","))):
        there = known.get(name.casefold(), [])
        if len(there) > 1:
            faults.append(said("{name} is called by several who play.", name=name))
        elif not there:
            does_not = said("{name} does not play.", name=shown(name))
            faults.append(sentences(does_not, did_you_mean(name, dict.fromkeys(names))))
        people += there[:1]
    return people, faults


def _wished(what: str, people: Sequence[str]) -> list[Wish] | None:
    """Return the wishes of a line; ``None`` where it is none."""
    kind, at = _kind(what)
    if kind in _OF_SEVERAL:
        if len(set(people)) < 2:
            return None
        return [Together(tuple(people)) if kind == "together" else Apart(tuple(people))]
    if not people or not kind:
        return None
    if kind == "not_before":
        return None if at is None else [NotBefore(one, at) for one in people]
    return [Within(one, Part(kind)) for one in people]


def _kind(what: str) -> tuple[str, time | None]:
    """Return which wish some words are, with the time in them; an empty name where they are none."""
    words = " ".join(what.casefold().split())
    for kind in WISHES:
        for known in (sentence(f"field.draw.wish.{kind}"), english("field")[f"draw.wish.{kind}"]):
            before, open_, after = (re.escape(one) for one in known.casefold().partition("{time}"))
            read = re.fullmatch(f"{before}{_TIME if open_ else ''}{after}", words)
            if read is not None:
                return kind, _clock(read["time"]) if kind == "not_before" else None
    return "", None


def _clock(written: str) -> time | None:
    """Return a time as it is written by hours of one day or of half a day, in the reader's language or in English."""
    tight = _tight(written)
    for half, counted_from in _HALVES:
        for known in (sentence(f"days.{half}"), english("days")[half]):
            pattern = (
                re.escape(_tight(known)).replace(r"\{hour\}", r"(\d\d?)").replace(r"\{minute\}", r"(\d\d)")
            )
            read = re.fullmatch(pattern, tight)
            if read is not None:
                hour = int(read[1])
                return _time(hour % 12 + counted_from, int(read[2])) if 1 <= hour <= 12 else None
    plain = re.fullmatch(r"(\d\d?):(\d\d)", tight)
    return None if plain is None else _time(int(plain[1]), int(plain[2]))


def _time(hour: int, minute: int) -> time | None:
    return time(hour, minute) if hour < 24 and minute < 60 else None


def _tight(words: str) -> str:
    """Return words in small letters without blanks and stops, as ``1:30 p.m.`` and ``1:30pm`` are the same."""
    return "".join(words.casefold().split()).replace(".", "")
