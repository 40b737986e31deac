"""The hub: one thread that watches the records while anybody listens, and tells all who do; each thing is written once."""

import asyncio
import json
import logging
import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from threading import Lock, Thread
from time import sleep
from typing import Any

from marram.desk.live.happening import Told, asked_now, open_now, places, told_of
from marram.desk.live.play import play_told
from marram.desk.live.watching import changes
from marram.desk.log.kept import KeptHere
from marram.desk.people.roles import LEADING, OFFICIALS, PUBLIC, hears, sees
from marram.errors import InputError
from marram.records.entry import Kept
from marram.services.day.suspension import SUSPENDED
from marram.words.place import NOWHERE, Writing, written_as

AGAIN = 2.0
"""Seconds until the records are tried again that could not be read (own choice)."""

Items = list[tuple[int, str]]
"""What is sent: each with the number of the entry it tells of; 0 for what stands, whatever happened before."""

MOVES_THE_BOARD = re.compile(r"(card_|match_|ruling$|withdrawn$|tie_|competition_|play_)")
"""The kinds of entries after which a leader board may stand otherwise, or says otherwise whether play goes on."""

END: Items = []
"""What ends a stream."""


@dataclass(frozen=True, slots=True)
class Sight:
    """What a role sees of what happens.

    Attributes:
        role: the role.
        writing: how times and days are written where it listens.
    """

    role: str
    writing: Writing = NOWHERE

    @property
    def players(self) -> bool:
        """Whether names of players are told."""
        return sees(self.role, "player_name")

    @property
    def people(self) -> bool:
        """Whether places of officials are told."""
        return sees(self.role, "whereabouts")

    @property
    def cases(self) -> bool:
        """Whether open cases are told."""
        return self.role in OFFICIALS and hears(self.role, "ruling")

    def entries(self, told: Sequence[Told]) -> "Items":
        """Return entries as events; of those that the role does not hear of, the number alone.

        Everybody hears that the leader board moves, and not by what.
        """
        if self.role == PUBLIC:
            return [
                (
                    one["number"],
                    event("board", {}, one["number"])
                    if MOVES_THE_BOARD.match(one["kind"])
                    else passed(one["number"]),
                )
                for one in told
            ]
        return [
            (
                one["number"],
                event("entry", one, one["number"])
                if hears(self.role, one["kind"])
                else passed(one["number"]),
            )
            for one in told
        ]


@dataclass(eq=False)
class Listener:
    """Somebody who listens.

    Attributes:
        sight: what is told.
        loop: where it waits.
        queue: what was told and not sent yet.
        about: what else is listened to, and nothing but it, such as a class; empty: what the role sees.
        standing: how that stands, as an event; told whenever it is another one than before.
        before: what was told of it last.
    """

    sight: Sight
    loop: asyncio.AbstractEventLoop
    queue: "asyncio.Queue[Items]" = field(default_factory=asyncio.Queue)
    about: str = ""
    standing: Callable[[KeptHere], str] | None = None
    before: str = ""

    def tell(self, items: Items) -> None:
        """Have something sent."""
        try:
            self.loop.call_soon_threadsafe(self.queue.put_nowait, items)
        except RuntimeError:  # its loop has ended
            return


class Hub:
    """The hub of one process.

    Args:
        kept: what is watched.
    """

    def __init__(self, kept: KeptHere) -> None:
        self.kept = kept
        self.leaving: Callable[[], bool] = lambda: False
        self._listeners: set[Listener] = set()
        self._lock = Lock()
        self._thread: Thread | None = None
        self._told = 0

    def join(self, listener: Listener) -> None:
        """Have somebody told from now on: of every entry after this, whenever the watch begins."""
        with self._lock:
            if self._thread is None:
                self._told = self.head()
            self._listeners.add(listener)
            if self._thread is None:
                self._thread = Thread(target=self._watch, name="live", daemon=True)
                self._thread.start()

    def count(self, role: str) -> int:
        """Return how many of a role listen."""
        with self._lock:
            return sum(one.sight.role == role for one in self._listeners)

    def leave(self, listener: Listener) -> None:
        """Have somebody told no more."""
        with self._lock:
            self._listeners.discard(listener)

    def head(self) -> int:
        """Return the number of the last entry."""
        return self.kept.log.head(self.kept.event_id)

    def since(self, number: int, sight: Sight) -> Items:
        """Return what a role missed after an entry."""
        entries = self.kept.log.entries(self.kept.event_id, after=number)
        return sight.entries(told_of(self.kept, entries, sight.players))

    def standing(self, sight: Sight) -> str:
        """Return what stands now, whatever happened before: where officials are, open cases, the state of play, who waits for an opinion."""
        return (
            _where(self.kept, sight)
            + _cases(self.kept, sight)
            + _play(self.kept, sight)
            + _asked(self.kept, sight)
        )

    def _watch(self) -> None:
        """Watch as long as anybody listens."""
        while True:
            try:
                with changes(self.kept.records) as changed:
                    self._go_on(changed)
                    return
            except (InputError, OSError):
                sleep(AGAIN)
            except Exception:  # whatever the database driver says: the others must hear of the next change
                logging.getLogger(__name__).exception(
                    "The records could not be watched; they are tried again."
                )
                sleep(AGAIN)
            with self._lock:
                if not self._listeners:
                    self._thread = None
                    return

    def _go_on(self, changed: Callable[[], bool]) -> None:
        before: dict[tuple[Sight, str], str] = {}
        if self.head() != self._told:  # what came before anything was watched, or while nothing could be
            self._told = self._tell(self._told, before)
        while True:
            with self._lock:
                if not self._listeners:
                    self._thread = None
                    return
            if self.leaving():
                for one in self._all():
                    one.tell(END)
            if changed():
                self._told = self._tell(self._told, before)

    def _tell(self, last: int, before: dict[tuple[Sight, str], str]) -> int:
        """Tell everybody what is new; return the number of the last entry."""
        entries = self.kept.log.entries(self.kept.event_id, after=last)
        upto = entries[-1].number if entries else last
        items: dict[Sight, Items] = {}
        stands: dict[str, str] = {}
        for one in self._all():
            if one.standing is not None:
                if one.about not in stands:
                    stands[one.about] = one.standing(self.kept)
                if stands[one.about] != one.before:
                    one.before = stands[one.about]
                    one.tell([(0, one.before)])
                continue
            if one.sight not in items:
                with written_as(one.sight.writing):
                    items[one.sight] = self._seen(one.sight, entries, before)
            if items[one.sight]:
                one.tell(items[one.sight])
        return upto

    def _seen(self, sight: Sight, entries: Sequence[Kept], before: dict[tuple[Sight, str], str]) -> Items:
        """Return what somebody sees of new entries, and of what stands otherwise than before."""
        said = sight.entries(told_of(self.kept, entries, sight.players)) if entries else []
        for name, make in (("where", _where), ("cases", _cases), ("play", _play), ("asked", _asked)):
            now = make(self.kept, sight)
            if before.get((sight, name)) != now:
                before[sight, name] = now
                said.append((0, now))
        return said

    def _all(self) -> list[Listener]:
        with self._lock:
            return list(self._listeners)


def event(name: str, data: Any, number: int | None = None) -> str:
    """Return an event as it is sent (HTML Standard, 9.2: server-sent events)."""
    ident = "" if number is None else f"id: {number}\n"
    return f"{ident}event: {name}\ndata: {json.dumps(data, ensure_ascii=False)}\n\n"


def passed(number: int) -> str:
    """Return what tells a device how far it has come, and nothing else."""
    return f"id: {number}\n\n"


def _where(kept: KeptHere, sight: Sight) -> str:
    return event("where", places(kept, True)) if sight.people else ""


def _cases(kept: KeptHere, sight: Sight) -> str:
    return event("cases", open_now(kept)) if sight.cases else ""


def _play(kept: KeptHere, sight: Sight) -> str:
    return event("play", play_told(kept)) if hears(sight.role, SUSPENDED) else ""


def _asked(kept: KeptHere, sight: Sight) -> str:
    return event("asked", asked_now(kept)) if sight.role in LEADING else ""
