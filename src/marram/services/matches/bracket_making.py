"""A bracket or a round robin made: drawn, a result entered without its holes, the matches of a round put on a starting sheet."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import time
from decimal import Decimal

from marram.competition.draw.order import by_handicap, by_seed
from marram.competition.draw.wishes import starts
from marram.errors import InputError, did_you_mean, shown
from marram.records.entry import Entry
from marram.records.field_changes import GroupSet
from marram.records.starting_sheet import groups
from marram.said import said, sentences
from marram.services.field.draw_kept import drawn, drawn_by
from marram.services.field.field_kept import EventLog, index_of
from marram.services.kinds.brackets import Plan, ResultHow
from marram.services.kinds.matches import Side
from marram.services.log.tap import Tap
from marram.services.matches.bracket_kept import DRAWN, RESULT, BracketNow
from marram.services.results.scored import Scored


@dataclass(frozen=True)
class Numbering:
    """How sides get their numbers in the draw.

    Attributes:
        plan: a bracket or a round robin.
        seed: of the lots, as it is published.
        seeded: the names of who is seeded, the highest first; of a side that of any of its players, or its own.
        by_handicap: whether the others are numbered by handicap, the lowest first, and not by lot.
    """

    plan: Plan
    seed: str
    seeded: tuple[str, ...] = ()
    by_handicap: bool = False


def bracket_drawn(scored: Scored, by: Numbering, tap: Tap, before: BracketNow | None) -> Entry:
    """Return the entry that draws a bracket or a round robin anew; nothing of the one before may be decided.

    Raises:
        InputError: no seed, fewer than two sides, somebody seeded who does not play; every fault is listed.
    """
    if before is not None and before.begun:
        raise InputError(said("A match of it has begun or has a result, so it is not drawn anew."))
    faults: list[str] = (
        []
        if by.seed.strip()
        else [said("A draw needs a seed. Give one that nobody chooses, and publish it.")]
    )
    members = scored.competition.members
    if len(members) < 2:
        faults.append(said("A bracket has two sides at least."))
    seeded = _seeded(scored, by.seeded, faults)
    if faults:
        raise InputError(*faults)
    entries = scored.competition.entries
    of = {one.person: one for one in entries}
    keys = {
        side: "\n".join(sorted(drawn_by(of[one], entries) for one in some)) for side, some in members.items()
    }
    sides = {key: side for side, key in keys.items() if side not in seeded}
    if by.by_handicap:
        indexes = {
            key: _index([index_of(of[one].handicap_index) for one in members[side]])
            for key, side in sides.items()
        }
        others = by_handicap(indexes, by.seed)
    else:
        others = by_seed(tuple(sides), by.seed)
    content = {
        "plan": by.plan.value,
        "seed": by.seed.strip(),
        "seeded": len(seeded),
        "sides": [list(members[one]) for one in (*seeded, *(sides[key] for key in others))],
    }
    corrects = None if before is None else before.entry.id
    return Entry(DRAWN, tap.at, tap.ident, by=tap.by, content=content, corrects=corrects)


def _index(some: Sequence[Decimal | None]) -> Decimal | None:
    """Return the sum of the Handicap Indexes of a side; ``None`` where one is not known."""
    known = [one for one in some if one is not None]
    return sum(known, Decimal(0)) if len(known) == len(some) else None


def _seeded(scored: Scored, given: Sequence[str], faults: list[str]) -> tuple[str, ...]:
    competition = scored.competition
    known: dict[str, str] = {label.casefold(): side for side, label in competition.labels.items()}
    known |= {name.casefold(): competition.side_of[who] for who, name in competition.players.items()}
    found: list[str] = []
    for name in (one.strip() for one in given if one.strip()):
        side = known.get(name.casefold())
        if side is None:
            faults.append(
                sentences(
                    said("{name} does not play.", name=shown(name)),
                    did_you_mean(name, dict.fromkeys(competition.players.values())),
                )
            )
        elif side in found:
            faults.append(said("{side} is in the draw twice. Keep one.", side=shown(name)))
        else:
            found.append(side)
    return tuple(found)


@dataclass(frozen=True)
class ResultGiven:
    """A result as it is entered.

    Attributes:
        stage: the round of the bracket.
        number: the match of it.
        how: how it ended.
        winner: who won; ``None``: tied.
        up: by how many holes.
        left: how many were left.
        holes: after how many, with extra holes.
        citation: the Rule of a disqualification.
        corrects: the entry seen that it puts right; empty for none.
    """

    stage: int
    number: int
    how: ResultHow
    winner: Side | None
    up: int = 0
    left: int = 0
    holes: int = 0
    citation: str = ""
    corrects: str = ""


def bracket_result(now: BracketNow, given: ResultGiven, tap: Tap) -> Entry:
    """Return the entry of a result.

    Raises:
        InputError: there is no such match, its sides are not known, or a bracket has nobody to move on.
    """
    meeting = now.meeting(given.stage, given.number)
    if meeting is None or meeting.first is None or meeting.second is None:
        raise InputError(said("The sides of this match are not known yet. Enter the matches before it."))
    if given.winner is None and now.plan is Plan.BRACKET:
        raise InputError(
            said("Tied, and somebody has to move on. Play extra holes, or enter who won (Rule 3.2a(4)).")
        )
    before = None if meeting.decided is None else meeting.decided.entry
    content = {
        "stage": given.stage,
        "meeting": given.number,
        "sides": [meeting.first, meeting.second],
        "how": given.how.value,
        "winner": None if given.winner is None else given.winner.value,
        "up": given.up,
        "left": given.left,
        "holes": given.holes,
        "citation": given.citation.strip(),
    }
    seen = before is not None and before.id == given.corrects
    return Entry(
        RESULT, tap.at, tap.ident, by=tap.by, content=content, corrects=given.corrects if seen else None
    )


@dataclass(frozen=True)
class Starts:
    """How the matches of a round start.

    Attributes:
        stage: the round of the bracket, from 1.
        round: the round of the event they start in, by identifier.
        first: the first starting time.
        minutes: between two groups of a tee; 0 for a shotgun start.
        tees: the holes that groups start at.
        matches: how many matches a group plays, 1 or 2.
    """

    stage: int
    round: str
    first: time
    minutes: int = 10
    tees: tuple[int, ...] = field(default=(1,))
    matches: int = 1


def stage_started(at: EventLog, now: BracketNow, by: Starts, tap: Tap) -> Entry:
    """Have the matches of a round that are known and open start in a round of the event; groups of others stay there.

    Raises:
        InputError: no match is open, or somebody plays in that round already; nothing was changed.
    """
    some = now.stages[by.stage - 1] if 0 < by.stage <= len(now.stages) else ()
    pairs = [
        (*now.sides[one.first], *now.sides[one.second])
        for one in some
        if one.open and one.first is not None and one.second is not None
    ]
    if not pairs:
        raise InputError(said("No match of this round is known and open."))
    size = max(map(len, pairs))
    together = by.matches if size == 2 else 1
    groups_of = [sum(pairs[at : at + together], ()) for at in range(0, len(pairs), together)]
    slots = starts(by.first, len(groups_of), minutes=by.minutes, places=size * together, tees=by.tees)
    new = [GroupSet(slot.time, slot.tee, people) for slot, people in zip(slots, groups_of, strict=True)]
    playing = {who for one in new for who in one.people}
    kept = [
        GroupSet(one.starts_at, one.tee, tuple(each.id for each in one.players))
        for one in groups(at.records, by.round)
        if one.starts_at is not None and not playing & {each.id for each in one.players}
    ]
    every = sorted([*kept, *new], key=lambda one: (one.at, one.tee))
    return drawn(at, by.round, every, str(now.entry.content["seed"]), tap)
