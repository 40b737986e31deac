"""Play stopped and resumed (Rule 5.7): what holds now, and what each group must do by where it is known to be.

The Committee decides when play is stopped and resumed; this says what the Rules then ask of players. Read against the
Rules of Golf 2019 and 2023 (5.7b, alike in both), Committee Procedures 6E and Model Local Rule J-1.
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, time
from enum import Enum

from marram.errors import InputError
from marram.records.entry import Entry, Kept, Part
from marram.records.log import Log
from marram.records.starting_sheet import GroupOfDay
from marram.rules.facts.conditions import FormOfPlay
from marram.said import said
from marram.services.kinds.suspension import Ball, Cause, Suspension
from marram.words.texts import clock_words

SUSPENDED, POSITION, RESUMED = "play_suspended", "position_kept", "play_resumed"


@dataclass(frozen=True)
class Stopped:
    """A suspension of play.

    Attributes:
        entry: the entry of it.
        how: immediate, or normal.
        cause: what for.
        positions: where balls lay, as it was kept, the latest first.
        resumed: the entries that resume play and hold, the first first; several where two people did at once.
    """

    entry: Kept
    how: Suspension
    cause: Cause
    positions: tuple[Kept, ...]
    resumed: tuple[Kept, ...]

    @property
    def is_on(self) -> bool:
        """Whether nobody has said yet when play goes on."""
        return not self.resumed


def suspensions(log: Log, event: str) -> list[Stopped]:
    """Return every suspension of an event, the latest first."""
    stopped = log.entries(event, kind=SUSPENDED)
    if not stopped:
        return []
    positions, resumed = (log.entries(event, kind=kind) for kind in (POSITION, RESUMED))
    return [
        Stopped(
            one,
            Suspension(one.content["how"]),
            Cause(one.content.get("cause", "other")),
            tuple(kept for kept in reversed(positions) if kept.content.get("suspension") == one.id),
            holding(kept for kept in resumed if kept.content.get("suspension") == one.id),
        )
        for one in reversed(stopped)
    ]


def holding(resumed: Iterable[Kept]) -> tuple[Kept, ...]:
    """Return what was said of resuming play without what somebody who had seen it replaced."""
    every = tuple(resumed)
    settled = {before for one in every for before in one.content.get("settles", ())}
    return tuple(one for one in every if one.id not in settled)


def on_now(log: Log, event: str) -> Stopped | None:
    """Return the suspension that holds now, the last one; ``None`` while play goes on."""
    last = next(iter(suspensions(log, event)), None)
    return last if last is not None and last.is_on else None


class Where(Enum):
    """Where a group was when play was stopped, as far as it is known."""

    NOT_STARTED = "not_started"
    BETWEEN_HOLES = "between_holes"
    ON_A_HOLE = "on_a_hole"
    UNKNOWN = "unknown"


@dataclass(frozen=True)
class GroupStops:
    """What a group must do.

    Attributes:
        group: the group.
        where: where it is known to be.
        hole: the hole it is on, or was last known at; ``None``: not known.
        say: what to tell it, by the keys of the texts, in order.
    """

    group: GroupOfDay
    where: Where
    hole: int | None
    say: tuple[str, ...]


def what_groups_do(
    stopped: Stopped,
    groups: Sequence[GroupOfDay],
    seen: Sequence[Kept],
    form: FormOfPlay | None,
    at: time | None,
) -> list[GroupStops]:
    """Return what each group must do, by where it is known to be; where that is not known, both cases.

    Args:
        stopped: the suspension.
        groups: the groups of the day.
        seen: entries that name a player and a hole, the latest first: where the group was last known to be.
        form: the form of play; ``None``: not known, and both are said.
        at: the time of the suspension on the clocks of the club; ``None``: not known to be on the day of these groups.
    """
    found = []
    for group in groups:
        players = {one.id for one in group.players}
        latest = _latest_of_each(stopped.positions, players)
        on_hole = [one for one in latest.values() if one.told.get("hole") is not None]
        last = next(
            (one for one in (*on_hole, *latest.values(), *seen) if one.told.get("player") in players), None
        )
        where = _where(latest, players)
        if (
            where is Where.UNKNOWN
            and last is None
            and at is not None
            and group.starts_at is not None
            and group.starts_at > at
        ):
            where = Where.NOT_STARTED
        hole = last.told.get("hole") if last is not None else None
        found.append(GroupStops(group, where, hole, what_to_do(stopped.how, where, form)))
    return found


def _latest_of_each(positions: Sequence[Kept], players: Collection[str]) -> dict[str, Kept]:
    """Return the latest position kept of each player; those given are the latest first."""
    found: dict[str, Kept] = {}
    for one in positions:
        player = str(one.told.get("player"))
        if player in players:
            found.setdefault(player, one)
    return found


def _where(latest: Mapping[str, Kept], players: Collection[str]) -> Where:
    """Return where a group is: on a hole if one of it is, between two holes only if all of it are (Rule 5.7b(2))."""
    between = {
        player for player, one in latest.items() if one.content.get("ball") == Ball.BETWEEN_HOLES.value
    }
    if latest.keys() - between:
        return Where.ON_A_HOLE
    return Where.BETWEEN_HOLES if between and between == set(players) else Where.UNKNOWN


def what_to_do(how: Suspension, where: Where, form: FormOfPlay | None) -> tuple[str, ...]:
    """Return what is to be told to a group, as keys of the texts of :mod:`marram.words.english.texts.suspension`.

    Args:
        how: immediate, or normal.
        where: where the group is known to be.
        form: the form of play; ``None``: not known.
    """
    if where is Where.NOT_STARTED:
        return ("do.not_started",)
    if how is Suspension.IMMEDIATE:
        return ("do.stop_at_once",)
    on_hole = ["do.may_finish"]
    if form is not FormOfPlay.STROKE_PLAY:
        on_hole.append("do.match")
    if form is not FormOfPlay.MATCH_PLAY:
        on_hole.append("do.marker")
    if where is Where.ON_A_HOLE:
        return tuple(on_hole)
    if where is Where.BETWEEN_HOLES:
        return ("do.no_next_hole",)
    return ("do.if_between", "do.if_on_hole", *on_hole[1:])


def suspending(
    ident: str, at: datetime, how: Suspension, cause: Cause, *, by: str | None = None, words: str = ""
) -> Entry:
    """Return the entry that stops play.

    Args:
        ident: the identifier of the entry.
        at: from when on it holds, with its distance from UTC.
        how: immediate, or normal.
        cause: what for.
        by: who says so.
        words: what else is to be said.
    """
    return Entry(
        SUSPENDED, at, ident, by=by, content={"how": how.value, "cause": cause.value}, parts=_note(words)
    )


def resuming(
    ident: str,
    now: datetime,
    stopped: Stopped,
    at: datetime,
    *,
    in_position_at: datetime | None = None,
    by: str | None = None,
    words: str = "",
    settles: Sequence[str] = (),
) -> Entry:
    """Return the entry that says when play goes on.

    Args:
        ident: the identifier of the entry.
        now: the time.
        stopped: the suspension.
        at: when play is resumed.
        in_position_at: by when players are to be where they stopped.
        by: who says so.
        words: what else is to be said.
        settles: the entries that said so before, which whoever says so now has seen: they hold no longer.

    Raises:
        InputError: the times contradict each other, or what is settled was not said of this suspension.
    """
    began = datetime.fromisoformat(stopped.entry.told["given_at"])
    if at < began:
        raise InputError(
            said(
                "Play was stopped at {began}; give a later time for it to go on.",
                began=clock_words(began.astimezone(at.tzinfo)),
            )
        )
    if in_position_at is not None and in_position_at > at:
        raise InputError(
            said(
                "Players are to be in position at {ready}, after play goes on; give an earlier time.",
                ready=clock_words(in_position_at),
            )
        )
    content: dict[str, object] = {"suspension": stopped.entry.id, "at": at.isoformat()}
    if in_position_at is not None:
        content["in_position_at"] = in_position_at.isoformat()
    if settles:
        if not set(settles) <= {one.id for one in stopped.resumed}:
            raise InputError(said("Somebody said another time meanwhile. Look at it again."))
        content["settles"] = list(settles)
    return Entry(RESUMED, now, ident, by=by, content=content, parts=_note(words))


def position(
    ident: str,
    now: datetime,
    stopped: Stopped,
    *,
    player: str,
    ball: Ball,
    hole: int | None = None,
    place: tuple[float, float] | None = None,
    lie: str = "",
    strokes: int | None = None,
    by: str | None = None,
    words: str = "",
) -> Entry:
    """Return the entry that keeps where a ball lay when play stopped.

    Args:
        ident: the identifier of the entry.
        now: the time.
        stopped: the suspension.
        player: whose ball.
        ball: what was done with it.
        hole: the hole; needed unless the player was between two holes.
        place: latitude and longitude, in degrees.
        lie: what it lay in, in a word.
        strokes: strokes made on the hole, penalty strokes included.
        by: who keeps it.
        words: where it lay, in words.

    Raises:
        InputError: the hole is not said.
    """
    if hole is None and ball is not Ball.BETWEEN_HOLES:
        raise InputError(said("Say on which hole the ball lay."))
    content: dict[str, object] = {"suspension": stopped.entry.id, "ball": ball.value}
    if lie:
        content["lie"] = lie
    if strokes is not None:
        content["strokes"] = strokes
    return Entry(
        POSITION,
        now,
        ident,
        by=by,
        player=player,
        hole=hole,
        place=None if place is None else {"latitude": place[0], "longitude": place[1]},
        content=content,
        parts=_note(words),
    )


def _note(words: str) -> tuple[Part, ...]:
    return (Part("note", words.strip().encode()),) if words.strip() else ()
