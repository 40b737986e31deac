"""Who is out by what the card shows: in stroke play a complete card with a hole that has no score (Rule 3.3b(3))."""

from collections.abc import Iterator

from marram.competition.results.card import Out, OutKind, RoundCard
from marram.competition.results.scoring import side_values
from marram.competition.results.terms import Terms
from marram.rules.facts.conditions import FormOfPlay


def hole_without_score(terms: Terms, card: RoundCard) -> Iterator[Out]:
    """Yield that a side is out, where its card leaves no hole open and has none for the side on one of them.

    While other holes are still to be played the mistake may be corrected in time (Rule 3.3c), so that nobody is out yet.
    """
    if terms.scoring.form is not FormOfPlay.STROKE_PLAY:
        return
    values = side_values(terms.scoring, card)
    open_holes = [
        value is None and any(row.gross[place] is None for row in card.rows)
        for place, value in enumerate(values)
    ]
    if None in values and not any(open_holes):
        yield Out(card.side, OutKind.DISQUALIFIED, "3.3b(3)", round=card.round)
