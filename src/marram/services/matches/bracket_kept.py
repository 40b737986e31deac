"""A bracket or a round robin of an event as it stands: drawn, moved on by matches of the log or results entered without holes."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from marram.competition.draw.round_robin import round_robin
from marram.competition.matches.bracket import moved_on
from marram.competition.matches.robin import RobinLine, robin_table
from marram.competition.matches.seeding import numerical_draw
from marram.records.entry import Kept
from marram.records.field import details
from marram.records.log import Log
from marram.said import said
from marram.services.field.field_kept import WITHDRAWN
from marram.services.kinds.brackets import Plan, ResultHow
from marram.services.kinds.matches import Side
from marram.services.matches.matches_kept import MatchNow, matches
from marram.services.results.scored import Scored

DRAWN, RESULT = "bracket_drawn", "bracket_result"


@dataclass(frozen=True)
class Decided:
    """How a match of it ended.

    Attributes:
        winner: the first-named player of the winner; ``None``: tied.
        words: how, such as "3 and 2" or "walkover".
        entry: the entry that says so; ``None``: its holes do.
    """

    winner: str | None
    words: str
    entry: Kept | None = None


@dataclass(frozen=True)
class BracketMeeting:
    """A match of it.

    Attributes:
        stage: its round, from 1.
        number: 1 for the uppermost of its round.
        first: the first-named player of a side; ``None``: not known yet.
        second: of the other; ``None``: not known yet, and in the first round of a bracket a bye.
        decided: how it ended; ``None``: it has not.
        match: the match on the starting sheet; ``None``: there is none.
        round: the number of the round of the event that it stands in; 0 where it is on no starting sheet.
        doubts: what does not go together, in words.
    """

    stage: int
    number: int
    first: str | None
    second: str | None
    decided: Decided | None = None
    match: MatchNow | None = None
    round: int = 0
    doubts: tuple[str, ...] = ()

    @property
    def bye(self) -> bool:
        """Whether a side moves on without a match."""
        return self.stage == 1 and (self.first is None) != (self.second is None)

    @property
    def open(self) -> bool:
        """Whether both sides are known and it is not decided."""
        return self.first is not None and self.second is not None and self.decided is None


@dataclass(frozen=True)
class BracketNow:
    """A bracket or a round robin as it stands.

    Attributes:
        entry: the entry that drew it.
        plan: which it is.
        sides: the players of each side by its first-named one, in the order of the numbers.
        names: what each side is called.
        stages: the matches of each round.
        table: of a round robin.
        gone: the sides of which somebody plays no more.
        doubts: what belongs to no match, in words.
    """

    entry: Kept
    plan: Plan
    sides: Mapping[str, tuple[str, ...]]
    names: Mapping[str, str]
    stages: tuple[tuple[BracketMeeting, ...], ...]
    table: tuple[RobinLine, ...] = ()
    gone: frozenset[str] = frozenset()
    doubts: tuple[str, ...] = ()

    @property
    def begun(self) -> bool:
        """Whether a match of it has a result, or holes."""
        every = (one for stage in self.stages for one in stage)
        return any(one.decided or (one.match is not None and one.match.holes) for one in every)

    @property
    def winner(self) -> str | None:
        """Who won the bracket; ``None`` while it is open, and in a round robin."""
        last = self.stages[-1][0].decided if self.plan is Plan.BRACKET else None
        return None if last is None else last.winner

    def meeting(self, stage: int, number: int) -> BracketMeeting | None:
        """Return a match by its round and number, both from 1."""
        some = self.stages[stage - 1] if 0 < stage <= len(self.stages) else ()
        return some[number - 1] if 0 < number <= len(some) else None


def bracket_now(scored: Scored) -> BracketNow | None:
    """Return the bracket or round robin of an event; ``None``: none is drawn."""
    log = Log(scored.records)
    gone = {one.corrects for one in log.entries(scored.event, kind="withdrawn") if one.corrects}
    entries = [one for kind in (DRAWN, RESULT) for one in log.entries(scored.event, kind=kind)]
    gone |= {one.corrects for one in entries if one.corrects}
    drawn = [one for one in entries if one.kind == DRAWN and one.id not in gone]
    if not drawn:
        return None
    entry = drawn[-1]
    moved = _moved_up(log.entries(scored.event, kind=WITHDRAWN), entry.number)
    people = [tuple(moved.get(who, who) for who in side) for side in entry.content["sides"]]
    sides = {side[0]: side for side in people}
    results = [one for one in entries if one.kind == RESULT and one.id not in gone]
    known = {one.person for one in scored.competition.entries}
    left = frozenset(first for first, side in sides.items() if not set(side) <= known)
    names = _names(scored, sides)
    plan = Plan(entry.content["plan"])
    found = _Found(scored, plan, sides, names, moved, results, left)
    stages = found.bracket() if plan is Plan.BRACKET else found.robin()
    decided = [
        (one.first, one.second, one.decided.winner)
        for stage in stages
        for one in stage
        if one.decided and one.first and one.second
    ]
    table = robin_table(sides, decided) if plan is Plan.ROUND_ROBIN else ()
    return BracketNow(entry, plan, sides, names, stages, table, left, tuple(found.astray(stages)))


def decided_without_holes(now: BracketNow | None) -> dict[tuple[str, str], Decided]:
    """Return how matches ended whose result was entered, by their first-named players either way round."""
    every = () if now is None else (one for stage in now.stages for one in stage)
    return {
        pair: one.decided
        for one in every
        if one.first and one.second and one.decided and one.decided.entry
        for pair in ((one.first, one.second), (one.second, one.first))
    }


def _moved_up(withdrawals: list[Kept], since: int) -> dict[str, str]:
    """Return who stands in whose place by withdrawals after the draw."""
    moved: dict[str, str] = {}
    for one in withdrawals:
        instead = one.content.get("moves_up")
        if one.number > since and instead is not None:
            who = str(one.told["player"])
            moved = {old: instead if new == who else new for old, new in moved.items()} | {who: instead}
    return moved


def _names(scored: Scored, sides: Mapping[str, tuple[str, ...]]) -> dict[str, str]:
    known = scored.competition.players
    others = {who: one.name for who, one in details(scored.records).items()}
    return {
        first: " / ".join(known.get(one) or others.get(one) or "–" for one in side)
        for first, side in sides.items()
    }


@dataclass
class _Found:
    """What the matches of a bracket are put together from."""

    scored: Scored
    plan: Plan
    sides: Mapping[str, tuple[str, ...]]
    names: Mapping[str, str]
    moved: Mapping[str, str]
    results: list[Kept]
    gone: frozenset[str]

    def __post_init__(self) -> None:
        self.sheet: dict[frozenset[str], tuple[int, MatchNow]] = {}
        for number, one in enumerate(self.scored.competition.rounds, start=1):
            for now in matches(self.scored, one.id):
                self.sheet[frozenset(now.meeting.key)] = number, now

    def bracket(self) -> tuple[tuple[BracketMeeting, ...], ...]:
        draw = numerical_draw(tuple(self.sides))
        winners: dict[tuple[int, int], str] = {}
        stages: list[tuple[BracketMeeting, ...]] = []
        for stage in range(1, len(draw).bit_length() + 1):
            pairs = moved_on(draw, winners)[stage - 1]
            stages.append(tuple(self.meeting(stage, one.number, one.first, one.second) for one in pairs))
            winners |= {
                (stage, one.number): one.decided.winner
                for one in stages[-1]
                if one.decided is not None and one.decided.winner is not None
            }
        return tuple(stages)

    def robin(self) -> tuple[tuple[BracketMeeting, ...], ...]:
        return tuple(
            tuple(self.meeting(stage, number, *pair) for number, pair in enumerate(pairs, start=1))
            for stage, pairs in enumerate(round_robin(tuple(self.sides)), start=1)
        )

    def meeting(self, stage: int, number: int, first: str | None, second: str | None) -> BracketMeeting:
        if first is None or second is None:
            return BracketMeeting(stage, number, first, second)
        round_, now = self.sheet.get(frozenset((first, second)), (0, None))
        entries = [one for one in self.results if self.of(one) == (stage, number, first, second)]
        by_entry = _decided(entries[-1], (first, second)) if entries else None
        by_holes = None if now is None else _by_holes(now)
        doubts = list(self.doubts((first, second), entries, by_entry, by_holes, now))
        decided = by_entry or by_holes
        if self.plan is Plan.BRACKET and decided is not None and decided.winner is None:
            decided = None
            doubts.append(
                said("Tied, and somebody has to move on. Play extra holes, or enter who won (Rule 3.2a(4)).")
            )
        return BracketMeeting(stage, number, first, second, decided, now, round_, tuple(doubts))

    def of(self, entry: Kept) -> tuple[int, int, str, str]:
        """Return which match an entry is of: its round, number and sides."""
        told = entry.content
        one, other = (self.moved.get(who, who) for who in told["sides"])
        return int(told["stage"]), int(told["meeting"]), one, other

    def doubts(
        self,
        sides: tuple[str, str],
        entries: list[Kept],
        by_entry: Decided | None,
        by_holes: Decided | None,
        now: MatchNow | None,
    ) -> Iterator[str]:
        if len(entries) > 1:
            yield said("The result was entered twice at once. Enter which is right.")
        if by_entry and by_holes and by_entry.winner != by_holes.winner:
            yield said("The holes of the match and the result entered for it differ. Look at both.")
        if now is not None:
            yield from now.doubts
        out = [one for one in sides if one in self.gone]
        if out and by_entry is None and by_holes is None:
            yield said(
                "{side} plays no more. Enter a walkover, where the Terms of the Competition give one.",
                side=self.names[out[0]],
            )

    def astray(self, stages: tuple[tuple[BracketMeeting, ...], ...]) -> Iterator[str]:
        """Yield which results belong to no match any more, as where the winner of one before it was put right."""
        there = {(one.stage, one.number, one.first, one.second) for stage in stages for one in stage}
        for one in self.results:
            if self.of(one) not in there:
                yield said(
                    "A result of round {stage}, match {number}, is of sides that do not meet there (entry {entry}). Look at the matches before it.",
                    stage=one.content["stage"],
                    number=one.content["meeting"],
                    entry=one.number,
                )


def _decided(entry: Kept, sides: tuple[str, str]) -> Decided:
    told = entry.content
    side = told.get("winner")
    winner = None if side is None else sides[0] if side == Side.FIRST.value else sides[1]
    how = ResultHow(told["how"])
    up, left, holes = (int(told.get(key, 0)) for key in ("up", "left", "holes"))
    if how is ResultHow.PLAYED:
        if winner is None:
            words = said("tied")
        elif left:
            words = said("{up} and {left}", up=up, left=left)
        elif holes:
            words = said("{up} up after {holes} holes", up=up, holes=holes)
        else:
            words = said("{up} up", up=up)
    elif how is ResultHow.WALKOVER:
        words = said("walkover")
    elif how is ResultHow.CONCEDED:
        words = said("conceded")
    else:
        words = said("disqualified ({rule})", rule=told["citation"])
    return Decided(winner, words, entry)


def _by_holes(now: MatchNow) -> Decided | None:
    state = now.state
    if not state.over:
        return None
    at = 0 if state.winner == now.meeting.match.first else 1
    return Decided(None if state.winner is None else now.meeting.key[at], state.words)
