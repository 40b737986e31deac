"""A card of a round as a file gives it, with the handicap that is given with it or follows from the conditions."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import ClassVar, Literal

from marram.competition.conditions.choices import Score
from marram.competition.conditions.event_file import WORDS, Entrant, EventFile
from marram.competition.conditions.handicaps import Has, handicap_of, shares_ball, side_handicap_of
from marram.competition.conditions.pars import holes_from_tees, pars_apart
from marram.competition.results.card import Hole, RoundCard, Row
from marram.errors import shown
from marram.said import joined, said
from marram.schema import STRICT, give

_SCORES = said('a list with a number of strokes, "-" or null for each hole')
_STROKES = said("a list with the handicap strokes of each hole")
_WHOLE = said("a whole number")


@dataclass(frozen=True)
class BallGiven:
    """The scores of one partner, as a file gives them."""

    __pydantic_config__: ClassVar = STRICT

    player: str = field(metadata=give(WORDS))
    gross: tuple[int | Literal["-"] | None, ...] = field(metadata=give(_SCORES))
    strokes: tuple[int, ...] = field(default=(), metadata=give(_STROKES))


@dataclass(frozen=True)
class CardGiven:
    """A card, as a file gives it: ``gross`` of one ball, with ``players`` where partners share it, or ``balls`` of partners."""

    __pydantic_config__: ClassVar = STRICT

    side: str = field(metadata=give(WORDS))
    round: int = field(default=1, metadata=give(said("the number of a round")))
    gross: tuple[int | Literal["-"] | None, ...] = field(default=(), metadata=give(_SCORES))
    handicap: int | None = field(default=None, metadata=give(_WHOLE))
    strokes: tuple[int, ...] = field(default=(), metadata=give(_STROKES))
    players: tuple[str, ...] = field(default=(), metadata=give(said("a list of the partners' names")))
    balls: tuple[BallGiven, ...] = field(
        default=(), metadata=give(said('a list of objects with "player" and "gross"'))
    )


def card_of(
    found: EventFile, given: CardGiven, holes: tuple[Hole, ...], faults: list[str]
) -> RoundCard | None:
    """Return a card as results take it; what is wrong with it, or not known of its handicap, is added to the faults.

    Args:
        found: the conditions.
        given: the card.
        holes: its holes.
        faults: where faults are added.
    """
    if bool(given.gross) == bool(given.balls):
        faults.append(_of_card(given, said("give gross, or balls of partners, and not both.")))
        return None
    holes = holes_from_tees(found, _who(found, given), holes)
    if given.balls:
        rows = tuple(
            Row(
                one.player,
                one.gross,
                one.strokes or _strokes_of_ball(found, given, one, holes, faults),
                _pars_of_ball(found, one, holes),
            )
            for one in given.balls
        )
        return RoundCard(given.side, given.round, holes, rows)
    handicap, strokes = given.handicap, given.strokes
    if handicap is None and not strokes and Score.NET in found.scores:
        has = _handicap_of_side(found, given, holes)
        handicap, strokes = has.playing, has.strokes
        if handicap is None and has.why_not is not None:
            faults.append(_of_card(given, has.why_not))
    if strokes and handicap is None:
        handicap = sum(strokes)
    if handicap is not None and not strokes:
        known = Entrant(given.side, playing_handicap=handicap)
        strokes = handicap_of(found, known, holes).strokes
    return RoundCard(given.side, given.round, holes, (Row(given.side, given.gross, strokes),), handicap or 0)


def _handicap_of_side(found: EventFile, given: CardGiven, holes: Sequence[Hole]) -> Has:
    named = given.players or tuple(one.name for one in found.players if one.side == given.side)
    partners = list(_entrants(found, named if shares_ball(found) else (given.side,)))
    if None in partners or not partners:
        return Has(None, (), _NOT_KNOWN)
    known = [one for one in partners if one is not None]
    return (
        side_handicap_of(found, known, holes) if shares_ball(found) else handicap_of(found, known[0], holes)
    )


def _who(found: EventFile, given: CardGiven) -> list[Entrant]:
    """Return who makes the scores of a card, as far as they are entered."""
    named = given.players or tuple(one.player for one in given.balls)
    named = named or tuple(one.name for one in found.players if given.side in (one.name, one.side))
    return [one for one in _entrants(found, named) if one is not None]


def _pars_of_ball(found: EventFile, ball: BallGiven, holes: Sequence[Hole]) -> tuple[int, ...]:
    (entrant,) = _entrants(found, (ball.player,))
    return () if entrant is None else pars_apart(found, entrant, holes)


def _strokes_of_ball(
    found: EventFile, given: CardGiven, ball: BallGiven, holes: Sequence[Hole], faults: list[str]
) -> tuple[int, ...]:
    if Score.NET not in found.scores:
        return ()
    (entrant,) = _entrants(found, (ball.player,))
    has = Has(None, (), _NOT_KNOWN) if entrant is None else handicap_of(found, entrant, holes)
    if has.why_not is not None:
        faults.append(_of_card(given, joined(": ", shown(ball.player), has.why_not)))
    return has.strokes


def _entrants(found: EventFile, names: Sequence[str]) -> Iterator[Entrant | None]:
    for name in names:
        yield next((one for one in found.players if one.name == name), None)


def _of_card(given: CardGiven, fault: str) -> str:
    return joined(": ", said("the card of {side}", side=shown(given.side)), fault)


_NOT_KNOWN = said(
    "net scores count, and the handicap is not known. Give it with the card, or enter every player who made the score."
)
