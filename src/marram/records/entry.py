"""An entry of the log as it is given, and as it is kept: plain values, with one written form."""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime
from functools import cached_property
from hashlib import sha256
from secrets import token_bytes
from typing import Any
from uuid import UUID, uuid4, uuid5

from marram.errors import InputError, shown
from marram.records.canonical import canonical
from marram.said import said

PART_KINDS = ("note", "reason", "name", "photograph")
"""What can be sealed beside an entry: words about it, why it was ruled otherwise, who it was about as told, a picture."""


def new_ident() -> str:
    """Return a new identifier: a random UUID (RFC 9562, version 4) in its usual written form."""
    return str(uuid4())


def part_ident(entry: str, place: int) -> str:
    """Return the identifier of an entry's part at a place, from 0: always the same one."""
    return str(uuid5(UUID(entry), str(place)))


def ident(given: str, what: str) -> str:
    """Return an identifier in its one written form.

    Raises:
        InputError: it is none.
    """
    try:
        return str(UUID(given))
    except (ValueError, AttributeError, TypeError):
        raise InputError(said("{what} is {given}; give a UUID.", what=what, given=shown(given))) from None


def instant(moment: datetime) -> str:
    """Return a moment as it is written: ISO 8601 in UTC, to the microsecond.

    Raises:
        InputError: it does not say how far its clock is from UTC.
    """
    if moment.tzinfo is None:
        raise InputError(said("The time {given} names no time zone; give one.", given=moment.isoformat()))
    return moment.astimezone(UTC).isoformat(timespec="microseconds").replace("+00:00", "Z")


@dataclass(frozen=True)
class Part:
    """Something personal that belongs to an entry, kept apart from it so that it can be erased.

    Attributes:
        what: one of :data:`PART_KINDS`.
        content: its bytes; words in UTF-8.
        media_type: its media type (RFC 6838).
        salt: random bytes, so that its digest tells nothing about it.
    """

    what: str
    content: bytes
    media_type: str = "text/plain"
    salt: bytes = field(default_factory=lambda: token_bytes(16))

    def seal(self) -> str:
        """Return the digest that the entry holds of it: SHA-256 of the salt followed by the content."""
        return sha256(self.salt + self.content).hexdigest()


@dataclass(frozen=True)
class Entry:
    """An entry as somebody gives it.

    Attributes:
        kind: what it is, for example ``ruling`` or ``note``.
        given_at: when it happened by the clock of whoever gives it, with its distance from UTC.
        id: made by whoever gives it; the same entry given twice has the same.
        by: the person who gives it.
        player: the person it concerns.
        round: the round it belongs to.
        hole: the number of the hole.
        place: degrees: ``latitude``, ``longitude`` and, in metres, ``accuracy``.
        corrects: the identifier of the entry it puts right.
        alike: what it has in common with entries about the same situation; equal words are looked up.
        content: what belongs to its kind, as plain data.
        parts: what is personal about it.
    """

    kind: str
    given_at: datetime
    id: str = field(default_factory=new_ident)
    by: str | None = None
    player: str | None = None
    round: str | None = None
    hole: int | None = None
    place: Mapping[str, float] | None = None
    corrects: str | None = None
    alike: str | None = None
    content: Mapping[str, Any] = field(default_factory=dict)
    parts: tuple[Part, ...] = ()

    def checked(self) -> "Entry":
        """Return it where it can be kept.

        Raises:
            InputError: it cannot; every fault is listed.
        """
        faults: list[str] = []
        for what in ("id", "by", "player", "round", "corrects"):
            given = getattr(self, what)
            if given is not None or what == "id":
                try:
                    if ident(given, what) != given:
                        faults.append(
                            said("{what} is {given}; write it in small letters.", what=what, given=given)
                        )
                except InputError as error:
                    faults += error.faults
        if not self.kind.strip():
            faults.append(said("The entry does not say what kind of entry it is."))
        if self.hole is not None and (isinstance(self.hole, bool) or not 1 <= self.hole <= 99):
            faults.append(said("hole is {given}; give the number of a hole.", given=shown(self.hole)))
        faults += [
            said(
                "A part is {given}; give one of {known}.", given=shown(one.what), known=", ".join(PART_KINDS)
            )
            for one in self.parts
            if one.what not in PART_KINDS
        ]
        if faults:
            raise InputError(*faults)
        return self

    def body(self) -> str:
        """Return what the log keeps, as canonical JSON; what is not known is left out."""
        sealed = [
            {"what": one.what, "media_type": one.media_type, "digest": one.seal()} for one in self.parts
        ]
        whole = {
            "kind": self.kind,
            "given_at": instant(self.given_at),
            "by": self.by,
            "player": self.player,
            "round": self.round,
            "hole": self.hole,
            "place": self.place,
            "corrects": self.corrects,
            "alike": self.alike,
            "content": self.content or None,
            "sealed": sealed or None,
        }
        return canonical({key: value for key, value in whole.items() if value is not None})


@dataclass(frozen=True)
class Kept:
    """An entry as the log keeps it.

    Attributes:
        event: the event whose log it is in.
        number: its number there, from 1.
        id: its identifier.
        recorded_at: when it was kept, ISO 8601 in UTC, by the clock of whoever keeps it.
        body: what was given, as canonical JSON.
        previous: the digest of the entry before.
        digest: its own digest.
    """

    event: str
    number: int
    id: str
    recorded_at: str
    body: str
    previous: str
    digest: str

    @cached_property
    def told(self) -> dict[str, Any]:
        """What was given, as plain data."""
        found: dict[str, Any] = json.loads(self.body)
        return found

    @property
    def kind(self) -> str:
        """What kind of entry it is."""
        return str(self.told["kind"])

    @property
    def content(self) -> dict[str, Any]:
        """What belongs to its kind."""
        found: dict[str, Any] = self.told.get("content", {})
        return found

    @property
    def corrects(self) -> str | None:
        """The identifier of the entry it puts right."""
        return self.told.get("corrects")

    @property
    def receipt(self) -> str:
        """What to write down of it to prove later that it, and all before it, are as they were: number and digest."""
        return f"{self.number}:{self.digest[:16]}"
