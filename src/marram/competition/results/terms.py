"""What of the conditions decides about results, and whether a card can be used under them."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from marram.competition.conditions.choices import MATCHES_CARDS, CountbackStrokes, TieMethod
from marram.competition.conditions.event_file import Cut, Ties
from marram.competition.results.card import RoundCard
from marram.competition.results.scoring import Scoring
from marram.errors import InputError, shown
from marram.said import said


@dataclass(frozen=True)
class Terms:
    """What of the conditions decides about results.

    Attributes:
        scoring: how scores count.
        holes: how many holes each round has.
        cut: who plays on after a round; ``None``: everybody.
        ties: how ties are decided; nothing given: they are shared.
        decided: the order that a play-off or a lot gave, the best first; who is left out of it comes last, tied.
        made_cut: who plays on, where the Committee has already said so; ``None``: as the cut says.
    """

    scoring: Scoring
    holes: tuple[int, ...] = (18,)
    cut: Cut | None = None
    ties: Ties = field(default_factory=Ties)
    decided: Mapping[TieMethod, tuple[str, ...]] = field(default_factory=dict)
    made_cut: frozenset[str] | None = None

    @property
    def countback_strokes(self) -> CountbackStrokes:
        """Which handicap strokes are taken off part of a round; by the governing text where nothing is given."""
        return self.ties.countback_strokes or CountbackStrokes.EXACT_FRACTION

    @property
    def matches_cards(self) -> bool:
        """Whether ties are decided by matching cards."""
        methods = {*self.ties.first_place, *self.ties.other_places}
        return bool(methods & MATCHES_CARDS)


def card_faults(terms: Terms, card: RoundCard) -> Iterator[str]:
    """Yield why a card cannot be used in this competition."""
    try:
        card.checked()
    except InputError as error:
        yield from error.faults
        return
    if card.round > len(terms.holes):
        yield said(
            "{side}: there is no round {round}; the competition has {rounds}.",
            side=shown(card.side),
            round=card.round,
            rounds=len(terms.holes),
        )
    elif len(card.holes) != terms.holes[card.round - 1]:
        yield said(
            "{side}: round {round} has {wanted} holes, and the card {given}.",
            side=shown(card.side),
            round=card.round,
            wanted=terms.holes[card.round - 1],
            given=len(card.holes),
        )
    if len(card.rows) < terms.scoring.counting:
        yield said(
            "{side}: {counting} scores of the side count on a hole, and the card has {rows}.",
            side=shown(card.side),
            counting=terms.scoring.counting,
            rows=len(card.rows),
        )
    by_index = terms.countback_strokes is CountbackStrokes.BY_STROKE_INDEX and terms.matches_cards
    by_hole = terms.scoring.net and (terms.scoring.strokes_on_holes or len(card.rows) > 1 or by_index)
    if by_hole and card.handicap and not all(row.strokes for row in card.rows):
        yield said(
            "{side}: handicap strokes fall on holes here; give the strokes of each hole, not the handicap alone.",
            side=shown(card.side),
        )
