"""The leader board: sides in order, with the place of each, what is left to play, the cut and the ties."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from enum import Enum
from functools import cached_property
from itertools import groupby
from typing import NamedTuple

from marram.competition.conditions.choices import TieMethod
from marram.competition.results.card import Out, RoundCard
from marram.competition.results.cut import through
from marram.competition.results.out_by_card import hole_without_score
from marram.competition.results.side_score import SideScore, holes_left, round_score, side_score
from marram.competition.results.terms import Terms, card_faults
from marram.competition.results.ties import TieKey, tie_key
from marram.errors import InputError, shown
from marram.said import said


class Standing(Enum):
    """How a side stands in the competition."""

    NOT_STARTED = "not_started"
    PLAYING = "playing"
    FINISHED = "finished"
    MISSED_CUT = "missed_cut"
    OUT = "out"


class Place(NamedTuple):
    """A side on the leader board.

    Attributes:
        side: who.
        place: 1 for the first; ``None`` for who is out or has not started.
        shared: whether another side has the same place.
        standing: how the side stands.
        score: its score.
        left: how many holes it has left to play.
        out: why it is out; ``None`` where it is not.
        to_decide: what is still to decide its tie; ``None`` where nothing is.
    """

    side: str
    place: int | None
    shared: bool
    standing: Standing
    score: SideScore
    left: int
    out: Out | None = None
    to_decide: TieMethod | None = None


class LeaderBoard:
    """Sides in order.

    Args:
        terms: what of the conditions decides.
        cards: the cards, in any order; a later one of the same side and round is refused.
        sides: everybody who competes; those of cards are added.
        out: who is out; who by a card is out in stroke play need not be named.

    Raises:
        InputError: a card cannot be used; every fault is listed.
    """

    def __init__(
        self,
        terms: Terms,
        cards: Iterable[RoundCard] = (),
        *,
        sides: Iterable[str] = (),
        out: Iterable[Out] = (),
    ) -> None:
        self.terms = terms
        self.cards: dict[str, dict[int, RoundCard]] = {side: {} for side in sides}
        self.said_out = {one.side: one for one in out if one.score in (None, terms.scoring.score)}
        self.no_score: dict[str, Out] = {}
        faults: list[str] = []
        for card in cards:
            of_card = list(card_faults(terms, card))
            faults += of_card
            mine = self.cards.setdefault(card.side, {})
            if card.round in mine:
                faults.append(
                    said(
                        "{side} has two cards of round {round}; take one away.",
                        side=shown(card.side),
                        round=card.round,
                    )
                )
            mine[card.round] = card
            if not of_card:
                self.no_score.update({one.side: one for one in hole_without_score(terms, card)})
        if faults:
            raise InputError(*faults)
        self.out = {**self.no_score, **self.said_out}
        for side in self.out:
            self.cards.setdefault(side, {})
        self.scores = {
            side: side_score(terms.scoring, side, mine.values()) for side, mine in self.cards.items()
        }
        self.tie_keys: dict[str, TieKey] = {}

    def with_card(self, card: RoundCard) -> "LeaderBoard":
        """Return the board with a card added, or put in the place of the one of that side and round.

        Raises:
            InputError: the card cannot be used; every fault is listed.
        """
        faults = list(card_faults(self.terms, card))
        if faults:
            raise InputError(*faults)
        new = LeaderBoard.__new__(LeaderBoard)
        new.terms, new.said_out = self.terms, self.said_out
        others = {
            side: one for side, one in self.no_score.items() if (side, one.round) != (card.side, card.round)
        }
        new.no_score = others | {one.side: one for one in hole_without_score(self.terms, card)}
        new.out = {**new.no_score, **new.said_out}
        new.cards = {**self.cards, card.side: {**self.cards.get(card.side, {}), card.round: card}}
        before = self.scores.get(card.side)
        kept = [one for one in before.rounds if one.round != card.round] if before else []
        rounds = sorted([*kept, round_score(self.terms.scoring, card)], key=lambda one: one.round)
        score = SideScore(card.side, tuple(rounds), self.terms.scoring.lower_wins)
        new.scores = {**self.scores, card.side: score}
        new.tie_keys = dict(self.tie_keys)
        new.tie_keys.pop(card.side, None)
        return new

    def score(self, side: str) -> SideScore:
        """Return the score of a side.

        Raises:
            InputError: nobody of this name competes.
        """
        if side not in self.scores:
            raise InputError(
                said("{side} does not compete here; give a side of the board.", side=shown(side))
            )
        return self.scores[side]

    @cached_property
    def through(self) -> frozenset[str] | None:
        """Who plays on after the cut; ``None`` where there is none, or the round before it is not complete."""
        cut = self.terms.cut
        if cut is None or self.terms.made_cut is not None:
            return self.terms.made_cut
        before = {
            side: score.after(cut.after_round)
            for side, score in self.scores.items()
            if not self._out_by(side, cut.after_round)
        }
        if not before or any(one.complete_rounds < cut.after_round for one in before.values()):
            return None
        order = _by_rank(before.values(), totals=True)
        if not cut.ties:
            methods = self.terms.ties.other_places
            keys = {one.side: tie_key(self.terms, one, methods) for one in before.values()}
            order = [group for tied in order for group in _split(tied, keys)]
        return through(cut, order)

    @cached_property
    def final(self) -> bool:
        """Whether everybody who is still in has played everything."""
        rounds = len(self.terms.holes)
        return (
            bool(self.still_in)
            and (self.terms.cut is None or self.through is not None)
            and all(one.complete_rounds == rounds for one in self.still_in)
        )

    @cached_property
    def still_in(self) -> tuple[SideScore, ...]:
        """The score of everybody who is neither out nor missed the cut."""
        out, through = self.out, self.through
        return tuple(
            score
            for side, score in self.scores.items()
            if side not in out and (through is None or side in through)
        )

    @cached_property
    def places(self) -> tuple[Place, ...]:
        """Every side in order: those with a place, those who have not started, those who are out."""
        return tuple(self._places())

    def _out_by(self, side: str, round_: int) -> bool:
        out = self.out.get(side)
        return out is not None and (out.round is None or out.round <= round_)

    def _places(self) -> Iterator[Place]:
        playing = [one for one in self.still_in if one.played]
        number = 1
        for group, to_decide in self._in_order(playing):
            for score in group:
                yield self._place(score, number, len(group) > 1, to_decide)
            number += len(group)
        through = self.through
        missed = [
            one
            for side, one in self.scores.items()
            if side not in self.out and through is not None and side not in through
        ]
        for group in _by_rank(missed, totals=True):
            for score in group:
                yield self._place(score, number, len(group) > 1, None, Standing.MISSED_CUT)
            number += len(group)
        waiting = [one for one in self.still_in if not one.played]
        for score in sorted(waiting, key=lambda one: one.side):
            yield self._place(score, None, False, None, Standing.NOT_STARTED)
        for side in sorted(self.out):
            yield self._place(self.scores[side], None, False, None, Standing.OUT)

    def _place(
        self,
        score: SideScore,
        place: int | None,
        shared: bool,
        to_decide: TieMethod | None,
        standing: Standing | None = None,
    ) -> Place:
        stands = standing or (
            Standing.FINISHED if score.complete_rounds == len(self.terms.holes) else Standing.PLAYING
        )
        left = (
            0
            if stands in (Standing.OUT, Standing.MISSED_CUT, Standing.FINISHED)
            else holes_left(score, self.terms.holes)
        )
        return Place(score.side, place, shared, stands, score, left, self.out.get(score.side), to_decide)

    def _in_order(self, playing: Sequence[SideScore]) -> Iterator[tuple[list[SideScore], TieMethod | None]]:
        """Yield those who play in order, together where they share a place, with what is still to decide it."""
        if not self.final:
            for group in _by_rank(playing, totals=_as_many_rounds(playing)):
                yield group, None
            return
        first, other = self.terms.ties.first_place, self.terms.ties.other_places
        best = min(one.rank(True) for one in playing)
        leaders = [one for one in playing if one.rank(True) == best]
        followers = [one for one in playing if one.rank(True) != best]
        for group in _split(leaders, {one.side: tie_key(self.terms, one, first) for one in leaders}):
            yield group, self._to_decide(group, first)
        for one in followers:
            if one.side not in self.tie_keys:
                self.tie_keys[one.side] = (one.rank(True), *tie_key(self.terms, one, other))
        for group in _split(followers, self.tie_keys):
            yield group, self._to_decide(group, other)

    def _to_decide(self, tied: Sequence[SideScore], methods: Sequence[TieMethod]) -> TieMethod | None:
        if len(tied) == 1:
            return None
        ends = next((one for one in methods if one in (TieMethod.PLAY_OFF, TieMethod.LOT)), None)
        return ends if ends is not None and ends not in self.terms.decided else None


def _by_rank(scores: Iterable[SideScore], *, totals: bool) -> list[list[SideScore]]:
    """Return scores in order, those of one rank together, by name."""
    found: dict[int, list[SideScore]] = {}
    for one in scores:
        found.setdefault(one.rank(totals), []).append(one)
    return [sorted(found[rank], key=lambda one: one.side) for rank in sorted(found)]


def _split(tied: Iterable[SideScore], keys: Mapping[str, TieKey]) -> list[list[SideScore]]:
    """Return scores in the order of their keys, those of one key together, by name."""
    ordered = sorted(tied, key=lambda one: (keys[one.side], one.side))
    return [list(same) for _, same in groupby(ordered, key=lambda one: keys[one.side])]


def _as_many_rounds(playing: Sequence[SideScore]) -> bool:
    """Return whether all have played as many rounds, and none is in the middle of one."""
    return len({one.complete_rounds for one in playing}) == 1 and all(
        one.complete_rounds == len(one.rounds) for one in playing
    )
