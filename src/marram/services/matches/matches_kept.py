"""Matches of an event as they stand, by what the log holds of them."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal

from marram.competition.matches.acts import (
    HoleAgreedTied,
    HoleBy,
    HoleGiven,
    HoleLostByBoth,
    HolesDeducted,
    HoleTied,
    MatchAct,
    MatchConceded,
    MatchDisqualified,
    ResultAgreed,
)
from marram.competition.matches.match import MatchState, MatchStatus, best_of, match_state
from marram.competition.results.card import NO_SCORE, HoleScore
from marram.errors import InputError
from marram.records.entry import Kept
from marram.records.log import Log
from marram.rules.penalty import OWN, PenaltyKind
from marram.said import said
from marram.services.kinds.matches import EndHow, HoleHow, Side
from marram.services.matches.meetings import Meeting, meetings
from marram.services.results.scored import Scored

HOLE, ENDED, RULING = "match_hole", "match_ended", "ruling"
_OWN = frozenset(one.value for one in OWN)
_LOSES = frozenset({PenaltyKind.GENERAL.value, PenaltyKind.LOSS_OF_HOLE.value})


@dataclass(frozen=True)
class MatchNow:
    """A match as it stands.

    Attributes:
        meeting: who meets.
        state: how it stands.
        holes: for each place in the order of play every entry that nobody corrected, the first entered first.
        ended: the entries of how it ended that stand.
        rulings: the rulings on its players that cost a hole, holes or the match.
        doubts: what does not go together, in words.
    """

    meeting: Meeting
    state: MatchState
    holes: Mapping[int, tuple[Kept, ...]]
    ended: tuple[Kept, ...]
    rulings: tuple[Kept, ...]
    doubts: tuple[str, ...]

    @property
    def next_place(self) -> int:
        """The place of the next hole, from 1."""
        return len(self.state.holes) + 1

    @property
    def points(self) -> tuple[Decimal, Decimal] | None:
        """What the match is worth to each side of a team match: one for a win, a half each for a tie; ``None``: not over."""
        if not self.state.over:
            return None
        if self.state.status is MatchStatus.TIED:
            return Decimal("0.5"), Decimal("0.5")
        first = self.state.winner == self.meeting.match.first
        return Decimal(int(first)), Decimal(int(not first))


def matches(scored: Scored, round_: str) -> tuple[MatchNow, ...]:
    """Return the matches of a round as they stand."""
    log = Log(scored.records)
    entries = [
        one
        for kind in (HOLE, ENDED, RULING, "withdrawn")
        for one in log.entries(scored.event, kind=kind)
        if one.told.get("round") in (round_, None)
    ]
    gone = {one.corrects for one in entries if one.corrects}
    standing = [one for one in entries if one.id not in gone and one.kind != "withdrawn"]
    return tuple(match_now(one, standing) for one in meetings(scored, round_))


def match_now(meeting: Meeting, standing: Iterable[Kept]) -> MatchNow:
    """Return a match as the entries that nobody corrected or withdrew make it."""
    mine = list(standing)
    of_match = [
        one
        for one in mine
        if one.kind in (HOLE, ENDED)
        and one.told.get("player") in meeting.sides[0]
        and one.content["against"] in meeting.sides[1]
    ]
    holes: dict[int, tuple[Kept, ...]] = {}
    for one in of_match:
        if one.kind == HOLE:
            place = int(one.content["place"])
            holes[place] = (*holes.get(place, ()), one)
    ended = tuple(one for one in of_match if one.kind == ENDED)
    players = {*meeting.sides[0], *meeting.sides[1]}
    rulings = tuple(
        one for one in mine if one.kind == RULING and one.told.get("player") in players and any(_costs(one))
    )
    doubts: list[str] = []
    state = match_state(meeting.match, ())
    acts: list[MatchAct] = []
    for act in _acts(meeting, holes, ended, rulings):
        try:
            state = match_state(meeting.match, [*acts, act])
        except InputError as error:
            doubts += error.faults
        else:
            acts.append(act)
    doubts += _doubts(meeting, state, holes, rulings)
    return MatchNow(meeting, state, holes, ended, rulings, tuple(doubts))


def _acts(
    meeting: Meeting, holes: Mapping[int, tuple[Kept, ...]], ended: Sequence[Kept], rulings: Sequence[Kept]
) -> Iterator[MatchAct]:
    place = 0
    while (place := place + 1) in holes:
        number = meeting.match.hole_at(place - 1)
        yield _of_hole(meeting, holes[place][-1], number)
        for one in rulings if place <= len(meeting.match.holes) else ():
            taken = sum(count for kind, count in _costs(one) if kind == PenaltyKind.HOLES_DEDUCTED.value)
            if taken and one.told.get("hole") == number:
                yield HolesDeducted(_side_of(meeting, one), taken)
    for one in ended:
        how = EndHow(one.content["how"])
        side = meeting.match.first if one.content.get("side") == Side.FIRST.value else meeting.match.second
        if how is EndHow.CONCEDED:
            yield MatchConceded(side)
        elif how is EndHow.DISQUALIFIED:
            yield MatchDisqualified(side, one.content["citation"])
        else:
            yield ResultAgreed()


def _of_hole(meeting: Meeting, entry: Kept, number: int) -> MatchAct:
    match, told = meeting.match, entry.content
    how = HoleHow(told["how"])
    if how is HoleHow.SCORES:
        return _scored(meeting, told["scores"], number)
    if how in (HoleHow.TIED, HoleHow.AGREED_TIED):
        return HoleTied() if how is HoleHow.TIED else HoleAgreedTied()
    if how is HoleHow.LOST_BY_BOTH:
        return HoleLostByBoth()
    by = {HoleHow.WON: HoleBy.STROKES, HoleHow.CONCEDED: HoleBy.CONCEDED, HoleHow.PENALTY: HoleBy.PENALTY}[
        how
    ]
    return HoleGiven(match.first if told["winner"] == Side.FIRST.value else match.second, by)


def _scored(meeting: Meeting, scores: Sequence[HoleScore], number: int) -> MatchAct:
    """Return what the gross scores of a hole come to: the lower net score of a side counts (Rules 3.2a(3) and 23.2a)."""
    balls = list(zip(scores, (one.get(number, 0) for one in meeting.strokes), strict=False))
    half = len(balls) // 2
    net = []
    for some in (balls[:half], balls[half:]):
        gross, received = best_of(some)
        net.append(None if gross == NO_SCORE or gross is None else int(gross) - received)
    first, second = net
    if first == second:
        return HoleTied()
    won = second is None or (first is not None and first < second)
    return HoleGiven(meeting.match.first if won else meeting.match.second, HoleBy.STROKES)


def _costs(ruling: Kept) -> Iterator[tuple[str, int]]:
    """Yield the kind and number of each penalty of a ruling that tells in a match: a hole, holes, or the match."""
    combined = (ruling.content.get("outcome") or {}).get("combined") or {}
    for one in combined.get("penalties") or ():
        kind = one.get("kind")
        told = kind in _LOSES or kind in (
            PenaltyKind.HOLES_DEDUCTED.value,
            PenaltyKind.DISQUALIFICATION.value,
        )
        if told and one.get("who") in _OWN and ruling.content.get("instead") is None:
            yield str(kind), int(one.get("strokes") or 0)


def _side_of(meeting: Meeting, ruling: Kept) -> str:
    return meeting.match.first if ruling.told.get("player") in meeting.sides[0] else meeting.match.second


def _doubts(
    meeting: Meeting, state: MatchState, holes: Mapping[int, tuple[Kept, ...]], rulings: Sequence[Kept]
) -> Iterator[str]:
    for place, some in sorted(holes.items()):
        if (
            len(
                {
                    str((one.content["how"], one.content.get("winner"), one.content.get("scores")))
                    for one in some
                }
            )
            > 1
        ):
            yield said(
                "Hole {hole} was entered twice at once, and differs. Enter which is right.",
                hole=meeting.match.hole_at(place - 1),
            )
    if beyond := [place for place in holes if place > len(state.holes)]:
        yield said(
            "Holes were entered that do not follow on what is known: {holes}. Enter the hole before them.",
            holes=", ".join(str(meeting.match.hole_at(place - 1)) for place in sorted(beyond)),
        )
    for one in rulings:
        loser, number = _side_of(meeting, one), one.told.get("hole")
        found = next((each for each in state.holes if each.hole == number), None)
        kinds = {kind for kind, _ in _costs(one)}
        if kinds & _LOSES and found is not None and (found.winner is None or found.winner == loser):
            yield said(
                "Hole {hole}: by a ruling {side} loses it, and it is entered otherwise. Look at the ruling and the hole.",
                hole=number,
                side=loser,
            )
        if PenaltyKind.DISQUALIFICATION.value in kinds and not state.over:
            yield said("By a ruling {side} is disqualified. Enter it, or withdraw the ruling.", side=loser)
