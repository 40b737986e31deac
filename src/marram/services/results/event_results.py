"""Cards and results of an event out of its log: read on from where one was, so that a card more costs one card.

Nothing here is kept. Whoever asks gets what the entries up to now make: each card with what the Rules say of it, and
every leader board that the conditions ask for.
"""

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from threading import Lock
from typing import Any

from marram.competition.cards.findings import RuledUnder
from marram.competition.cards.outcome import CardOutcome, card_outcome
from marram.competition.cards.scorecard import Beside, Scorecard, scorecard
from marram.competition.conditions.choices import TieMethod
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import Out, RoundCard
from marram.records.entry import Kept
from marram.records.log import Log
from marram.rules.facts.conditions import FormOfPlay
from marram.services.cards.beside_card import RULING, beside_card
from marram.services.cards.card_log import CARD_KINDS, FOUND_OUT, CardKept, card_kept
from marram.services.results.competition_kept import CompetitionKept
from marram.services.results.competition_results import Result, results, teams_on, terms_of

CLOSED, REOPENED, TIE = "competition_closed", "competition_reopened", "tie_decided"
_CONCERNS = CARD_KINDS | {RULING, "withdrawn", CLOSED, REOPENED, TIE}

CardKey = tuple[str, str]
"""A side and a round, both by identifier; who competes alone is a side by himself."""


@dataclass(frozen=True)
class CardNow:
    """A card as it stands.

    Attributes:
        kept: what was entered.
        card: the card it makes.
        beside: the rulings that lie beside it.
        under: what it is ruled under.
        outcome: what becomes of it.
        people: the player of each ball by the name of the ball, where partners each play one.
    """

    kept: CardKept
    card: Scorecard
    beside: tuple[Beside, ...]
    under: RuledUnder
    outcome: CardOutcome
    people: Mapping[str, str] = field(default_factory=dict)

    @property
    def begun(self) -> bool:
        """Whether anything was entered."""
        return bool(self.kept.figures or self.kept.returned or self.kept.ended)

    @property
    def something_open(self) -> bool:
        """Whether it is being entered, or something about it is still to be done, answered or judged."""
        if self.kept.ended is not None:
            return False
        return not self.outcome.settled if self.kept.returned is not None else bool(self.kept.figures)


@dataclass(frozen=True)
class ResultsNow:
    """Results as they stand.

    Attributes:
        results: every result that the conditions ask for.
        closed: the entry of the close that holds; ``None`` where the competition is open.
        upto: the number of the last entry of the log that was read.
    """

    results: tuple[Result, ...]
    closed: Kept | None
    upto: int


@dataclass
class _Read:
    """What was read of the log so far, for one competition as it was put together."""

    competition: CompetitionKept
    starts: Mapping[CardKey, int]
    upto: int = 0
    entries: dict[CardKey, list[Kept]] = field(default_factory=lambda: defaultdict(list))
    of: dict[str, CardKey] = field(default_factory=dict)
    cards: dict[CardKey, CardNow] = field(default_factory=dict)
    decided: dict[TieMethod, tuple[str, ...]] = field(default_factory=dict)
    closed: Kept | None = None
    after_close: set[CardKey] = field(default_factory=set)
    """Cards of which a score was found out after the close."""
    results: tuple[Result, ...] | None = None
    cut: LeaderBoard | None = None
    """The board that the cut is made by; ``None`` where there is no cut."""


class EventResults:
    """Cards and results of an event.

    Args:
        log: the log.
        event: the event.
    """

    def __init__(self, log: Log, event: str) -> None:
        self.log, self.event = log, event
        self._read: _Read | None = None
        self._lock = Lock()

    def card(self, competition: CompetitionKept, starts: Mapping[CardKey, int], key: CardKey) -> CardNow:
        """Return a player's card of a round, an empty one where nothing was entered."""
        with self._lock:
            read = self._up_to_now(competition, starts)
            return read.cards.get(key) or self._card(read, key)

    def cards(
        self, competition: CompetitionKept, starts: Mapping[CardKey, int], round_: str
    ) -> dict[str, CardNow]:
        """Return the card of every player about whose card of a round there is an entry, by player."""
        with self._lock:
            read = self._up_to_now(competition, starts)
            return {player: card for (player, one), card in read.cards.items() if one == round_}

    def now(self, competition: CompetitionKept, starts: Mapping[CardKey, int]) -> ResultsNow:
        """Return every result.

        Args:
            competition: the competition as it is put together now.
            starts: the hole each card's round began at, where it is not the first of the course.

        Raises:
            InputError: the conditions give no result.
        """
        with self._lock:
            read = self._up_to_now(competition, starts)
            if read.results is None:
                read.results = self._results(read)
            return ResultsNow(read.results, read.closed, read.upto)

    def closed(self, competition: CompetitionKept, starts: Mapping[CardKey, int]) -> Kept | None:
        """Return the entry of the close that holds; ``None`` where the competition is open."""
        with self._lock:
            return self._up_to_now(competition, starts).closed

    def _up_to_now(self, competition: CompetitionKept, starts: Mapping[CardKey, int]) -> _Read:
        read = self._read
        if read is None or read.competition != competition or read.starts != starts:
            read = self._read = _Read(competition, starts)
        new = self.log.entries(self.event, after=read.upto)
        changed: set[CardKey] = set()
        for one in new:
            read.upto = one.number
            if one.kind in _CONCERNS:
                changed |= self._take(read, one)
        before = {key: read.cards.get(key) for key in changed}
        for key in changed:
            read.cards[key] = self._card(read, key)
        if changed and read.results is not None:
            read.results = self._with(read, before)
        return read

    def _take(self, read: _Read, one: Kept) -> set[CardKey]:
        """Take an entry in; return the cards it concerns."""
        if one.kind == CLOSED:
            read.closed = read.closed or one
            return set()
        if one.kind == REOPENED:
            read.closed = None
            return set()
        if one.kind == TIE:
            read.decided[TieMethod(one.content["method"])] = tuple(one.content["order"])
            read.results = None
            return set()
        if read.competition.form is FormOfPlay.MATCH_PLAY:
            return set()  # a match has a state and no card
        key = read.of.get(one.corrects or "") if one.kind == "withdrawn" else None
        found = {key} if key is not None else self._keys(read, one)
        for each in found:
            read.entries[each].append(one)
            read.of[one.id] = each
        if one.kind == FOUND_OUT and read.closed is not None:
            read.after_close |= found
        return found

    def _keys(self, read: _Read, one: Kept) -> set[CardKey]:
        player: str = one.told.get("player", "")
        round_: str | None = one.told.get("round")
        side = read.competition.side_of.get(player)
        if side is None:
            return set()
        if round_ is None:
            day = (one.content.get("case") or {}).get("played_on")
            round_ = next(
                (each.id for each in read.competition.rounds if each.day and each.day.isoformat() == day),
                None,
            )
        known = {each.id for each in read.competition.rounds}
        return {(side, round_)} if round_ is not None and round_ in known else set()

    def _card(self, read: _Read, key: CardKey) -> CardNow:
        side, round_ = key
        competition = read.competition
        entries = read.entries.get(key, [])
        names = competition.ball_names(side)
        first, numbers = competition.members[side][0], [one.number for one in competition.holes]
        kept = card_kept(first, round_, entries, numbers, tuple(names))
        label = competition.labels[side]
        card = scorecard(
            label,
            competition.number(round_),
            competition.holes_of(side),
            kept.acts(names),
            balls=tuple(names.values()),
            started_at=read.starts.get(key),
        )
        beside = beside_card(entries, names)
        has = competition.handicaps.get(side)
        under = RuledUnder(
            competition.day(round_),
            competition.form,
            competition.file.sides,
            competition.file.local_rules,
            competition.scorings,
            key in read.after_close,
            has.playing if has else None,
            competition.strokes(side),
            {
                name: known.playing
                for person, name in names.items()
                if (known := competition.handicaps_of_balls.get(person)) is not None
                and known.playing is not None
            },
            competition.pars(side),
        )
        return CardNow(
            kept,
            card,
            beside,
            under,
            card_outcome(card, under, beside, kept.answers),
            {label: person for person, label in names.items()},
        )

    def _results(self, read: _Read) -> tuple[Result, ...]:
        cards, out = _counting(read.cards)
        competition = read.competition
        found = competition.file
        days = [one.day for one in competition.rounds if one.day]
        rounds = [len(competition.holes)] * len(competition.rounds)
        decided = {
            method: tuple(competition.labels[one] for one in order if one in competition.labels)
            for method, order in read.decided.items()
        }
        by = found.cut.score if found.cut and found.cut.score else competition.scores[0]
        read.cut = None
        if found.cut is not None:
            terms = terms_of(found, by, rounds, decided)
            read.cut = LeaderBoard(terms, cards, sides=competition.people, out=out)
        return results(
            found,
            cards,
            out,
            rounds=rounds,
            decided=decided,
            played_in=min(days).year if days else None,
            partners=None if competition.alone else competition.partners,
            teams=competition.teams,
        )

    def _with(self, read: _Read, before: Mapping[CardKey, CardNow | None]) -> tuple[Result, ...] | None:
        """Return the results with some cards changed; ``None`` where they are to be worked out anew.

        That is where somebody comes to be out or to be in again, or the cut falls otherwise.
        """
        assert read.results is not None
        boards, cut = [one.board for one in read.results], read.cut
        for key, old in before.items():
            new = read.cards[key]
            if (old.outcome.out if old else None) != new.outcome.out or not _counts(new):
                return None
            card = new.outcome.card
            boards = [board.with_card(card) if card.side in board.cards else board for board in boards]
            if cut is not None and cut.terms.cut is not None and card.round <= cut.terms.cut.after_round:
                cut = cut.with_card(card)
        if cut is not read.cut:
            if read.cut is None or cut is None or cut.through != read.cut.through:
                return None
            read.cut = cut
        competition = read.competition
        return tuple(
            replace(
                one, board=board, teams=teams_on(board, competition.file, competition.teams, one.division)
            )
            for one, board in zip(read.results, boards, strict=True)
        )


def _counts(card: CardNow) -> bool:
    return card.kept.ended is None and any(
        score is not None for row in card.outcome.card.rows for score in row.gross
    )


def _counting(cards: Mapping[Any, CardNow]) -> tuple[list[RoundCard], list[Out]]:
    """Return the cards that count, and who is out: for a side that is out in two ways, of everything first."""
    counting = [one.outcome.card for one in cards.values() if _counts(one)]
    out: dict[str, Out] = {}
    for one in cards.values():
        found = one.outcome.out
        if found is not None and (found.side not in out or found.score is None):
            out[found.side] = found
    return counting, list(out.values())
