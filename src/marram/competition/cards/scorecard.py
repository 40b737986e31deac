"""A card as the acts entered so far make it, with what differs and what is missing."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from marram.competition.cards.acts import (
    By,
    CardAct,
    Certified,
    Ended,
    Figure,
    FoundOut,
    HandicapShown,
    Returned,
    SettledAs,
    Settlement,
)
from marram.competition.results.card import NO_SCORE, Hole, HoleScore
from marram.errors import InputError, shown
from marram.said import said

_LONGEST = 99
"""Strokes above which a figure is taken for a slip of the pen; own choice."""


@dataclass(frozen=True, slots=True)
class Beside:
    """A ruling with a penalty that lies beside a card.

    Attributes:
        ruling: its identifier in the log.
        hole: the hole; ``None``: not said.
        strokes: the penalty strokes; 0 for a penalty that is none of strokes.
        words: the ruling in one line.
        disqualified_under: the provision under which it disqualifies; empty where it does not.
        deducted: points or holes to be taken off the total of the round (Rules 21.1c and 21.3c until 2022).
        ball: whose ball, where partners each play one; empty where the card shows one ball.
        partner_strokes: the penalty strokes that the other partners get (Rule 23.9a).
        no_score: the balls that have no score on the hole that can count for the side (Clarification 23.2a/1).
    """

    ruling: str
    hole: int | None
    strokes: int
    words: str = ""
    disqualified_under: str = ""
    deducted: int = 0
    ball: str = ""
    partner_strokes: int = 0
    no_score: tuple[str, ...] = ()

    def on(self, ball: str) -> int:
        """Return the penalty strokes that a ball gets."""
        return self.strokes if self.ball in ("", ball) else self.partner_strokes


@dataclass(frozen=True, slots=True)
class Difference:
    """A hole on which player and marker give different figures."""

    ball: str
    hole: int
    player: HoleScore
    marker: HoleScore


@dataclass(frozen=True)
class Scorecard:
    """A side's card of a round.

    Attributes:
        side: who competes.
        round: 1 for the first.
        holes: the holes, in the order of their numbers.
        balls: whose balls have a score on it: the side itself, or each partner.
        started_at: the hole the round began at.
        figures: for each ball and hole what each has given, the last figure of everybody.
        certified: who certified, or is known not to have.
        handicaps_shown: for each ball the handicap it shows, ``None`` where none is on it; nothing where nobody looked.
        returned: the return; ``None``: not yet.
        settled: what became of each ruling beside it.
        found_out: actual scores found out after the return.
        ended: how the round ended without a card that counts.
    """

    side: str
    round: int
    holes: tuple[Hole, ...]
    balls: tuple[str, ...]
    started_at: int
    figures: Mapping[tuple[str, int], Mapping[By, HoleScore]]
    certified: Mapping[By, bool]
    handicaps_shown: Mapping[str, int | None]
    returned: Returned | None
    settled: Mapping[str, SettledAs]
    found_out: Mapping[tuple[str, int], HoleScore]
    ended: Ended | None

    @property
    def last_hole(self) -> int:
        """The number of the hole that was played last, where play begins at any hole and goes round."""
        numbers = [one.number for one in self.holes]
        return numbers[numbers.index(self.started_at) - 1]

    def agreed(self, ball: str, hole: int) -> HoleScore:
        """Return the score of a hole that player and marker have both given; ``None`` where they have not."""
        given = self.figures.get((ball, hole), {})
        player, marker = given.get(By.PLAYER), given.get(By.MARKER)
        return player if player == marker else None

    def so_far(self, ball: str, hole: int) -> HoleScore:
        """Return the best figure there is for the leader board: agreed, or else of marker, scorer or player."""
        given = self.figures.get((ball, hole), {})
        for by in (By.MARKER, By.SCORER, By.PLAYER):
            if given.get(by) is not None:
                return given[by]
        return None

    def differences(self) -> tuple[Difference, ...]:
        """Return the holes on which player and marker differ."""
        return tuple(
            Difference(ball, hole, given[By.PLAYER], given[By.MARKER])
            for (ball, hole), given in sorted(self.figures.items())
            if By.PLAYER in given and By.MARKER in given and given[By.PLAYER] != given[By.MARKER]
        )

    def missing(self, by: By) -> tuple[int, ...]:
        """Return the holes for which somebody has given no figure of any ball."""
        return tuple(
            one.number
            for one in self.holes
            if all(by not in self.figures.get((ball, one.number), {}) for ball in self.balls)
        )

    def unsettled(self, beside: Iterable[Beside]) -> tuple[Beside, ...]:
        """Return the rulings beside the card that are not settled."""
        return tuple(one for one in beside if one.ruling not in self.settled)


def scorecard(
    side: str,
    round_: int,
    holes: tuple[Hole, ...],
    acts: Iterable[CardAct] = (),
    *,
    balls: tuple[str, ...] = (),
    started_at: int | None = None,
) -> Scorecard:
    """Return the card that acts make, in their order.

    Raises:
        InputError: an act does not fit the card; every fault is listed.
    """
    figures: dict[tuple[str, int], dict[By, HoleScore]] = {}
    certified: dict[By, bool] = {}
    settled: dict[str, SettledAs] = {}
    found: dict[tuple[str, int], HoleScore] = {}
    handicaps: dict[str, int | None] = {}
    returned: Returned | None = None
    ended: Ended | None = None
    faults: list[str] = []
    known = balls or (side,)
    numbers = tuple(one.number for one in holes)
    for act in acts:
        if isinstance(act, Figure | FoundOut):
            ball = act.ball or known[0]
            wrong = list(_faults_of_score(act, ball, known, numbers, returned))
            faults += wrong
            if wrong:
                continue
            if isinstance(act, FoundOut):
                found[ball, act.hole] = act.score
            else:
                figures.setdefault((ball, act.hole), {})[act.by] = act.score
        elif isinstance(act, Certified):
            certified[act.by] = act.done
        elif isinstance(act, HandicapShown):
            wrong = list(_faults_of_ball(act.ball, known, needed=True))
            faults += wrong
            if not wrong:
                handicaps[act.ball or known[0]] = act.handicap
        elif isinstance(act, Returned):
            returned = act
        elif isinstance(act, Settlement):
            settled[act.ruling] = act.how
        else:
            ended = act
    if started_at is not None and started_at not in numbers:
        faults.append(said("The round began at hole {hole}, which is not on the card.", hole=started_at))
    if faults:
        raise InputError(*faults)
    return Scorecard(
        side,
        round_,
        holes,
        known,
        started_at or numbers[0],
        figures,
        certified,
        handicaps,
        returned,
        settled,
        found,
        ended,
    )


def _faults_of_score(
    act: Figure | FoundOut,
    ball: str,
    balls: tuple[str, ...],
    holes: tuple[int, ...],
    returned: Returned | None,
) -> Iterator[str]:
    if act.hole not in holes:
        yield said("Hole {hole} is not on the card; it has {holes}.", hole=act.hole, holes=_span(holes))
    yield from _faults_of_ball(ball, balls)
    score = act.score
    if score is None or (score != NO_SCORE and not 1 <= score <= _LONGEST):
        yield said(
            "Hole {hole}: {score} is no score. Give strokes from 1 to {most}, or '-' for none.",
            hole=act.hole,
            score=shown(score),
            most=_LONGEST,
        )
    if isinstance(act, FoundOut) and returned is None:
        yield said(
            "Hole {hole}: the card is not returned yet, and can be put right by player and marker. Enter their figures.",
            hole=act.hole,
        )
    if isinstance(act, Figure) and returned is not None:
        yield said(
            "Hole {hole}: the card is returned, and nothing on it may be changed (Rule 3.3b(2)). "
            "Enter what was found out, so that it is ruled on.",
            hole=act.hole,
        )


def _faults_of_ball(ball: str, balls: tuple[str, ...], *, needed: bool = False) -> Iterator[str]:
    """Yield what is wrong with whose ball it is; ``needed``: of several it must be said."""
    listed = ", ".join(map(shown, balls))
    if not ball and needed and len(balls) > 1:
        yield said("The card shows a handicap of each of {balls}; say whose it is.", balls=listed)
    if ball and ball not in balls:
        yield said("{ball} has no ball on this card; give one of {balls}.", ball=shown(ball), balls=listed)


def _span(holes: tuple[int, ...]) -> str:
    return (
        f"{holes[0]}–{holes[-1]}"
        if holes == tuple(range(holes[0], holes[-1] + 1))
        else ", ".join(map(str, holes))
    )
