"""The cards of a round of matches: of each player, or of partners who share a ball, with the strokes of the match marked.

Nobody marks a card in a match: there is room for the opponent's score, and both sides agree the result (Rule 3.2a).
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from marram.competition.conditions.event_file import Entrant, Group
from marram.competition.conditions.handicaps import Has, shares_ball
from marram.competition.matches.meeting import in_a_match, pairs
from marram.paper.event.card_spread import Spread
from marram.paper.event.handicap_words import index_words, playing_words
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Card, CardLine
from marram.rules.facts.conditions import Sides
from marram.said import said
from marram.words.spoken import spoken
from marram.words.texts import clock_words, text


@dataclass(frozen=True)
class _Against:
    """Whom a ball plays against, and what it receives; ``None`` where gross scores alone count."""

    opponents: str
    has: Has | None


def match_cards(event: OnPaper) -> Iterator[Card]:
    """Yield the card of every ball, in the order of the starting sheet, then of those in no group."""
    for group in event.groups:
        players = [event.by_name[name] for name in group.players]
        against: dict[str, list[_Against]] = {}
        for pair in pairs(players, event.found.sides or Sides.INDIVIDUAL):
            for called, met in _met(event, pair):
                against.setdefault(called, []).append(met)
        for ball in _balls(event, players):
            yield _card(event, ball, group, against.get(_called(ball), []))
    for ball in _balls(event, event.waiting):
        yield _card(event, ball, None, [])


def _balls(event: OnPaper, players: Sequence[Entrant]) -> list[tuple[Entrant, ...]]:
    size = 2 if shares_ball(event.found) else 1
    return [tuple(players[at : at + size]) for at in range(0, len(players), size)]


def _called(ball: Sequence[Entrant]) -> str:
    return " / ".join(one.name for one in ball)


def _met(
    event: OnPaper, pair: tuple[tuple[Entrant, ...], tuple[Entrant, ...]]
) -> Iterator[tuple[str, _Against]]:
    sides = [_balls(event, side) for side in pair]
    balls = [ball for side in sides for ball in side]
    received = in_a_match(event.found, balls, event.holes) if event.net else [None] * len(balls)
    of_first = len(sides[0])
    for place, (ball, has) in enumerate(zip(balls, received, strict=True)):
        yield _called(ball), _Against(_called(pair[1] if place < of_first else pair[0]), has)


def _card(event: OnPaper, ball: Sequence[Entrant], group: Group | None, against: Sequence[_Against]) -> Card:
    spread = Spread(event.holes)
    several = len(against) > 1
    holes = event.holes_of(*(one.name for one in ball))
    lines = [
        CardLine(text("paper.card.par"), spread.figures([one.par for one in holes])),
        CardLine(
            text("paper.card.stroke_index"),
            spread.figures([one.stroke_index for one in event.holes], totals=False),
        ),
    ]
    for one in against:
        if one.has is not None and one.has.strokes:
            heading = (
                text("paper.card.strokes_against", name=one.opponents)
                if several
                else text("paper.card.strokes")
            )
            lines.append(CardLine(heading, spread.figures([each or None for each in one.has.strokes])))
    lines.append(CardLine(text("paper.card.score"), spread.empty, blank=True))
    results = (
        [text("paper.card.against", name=one.opponents) for one in against]
        if several
        else [text("paper.card.result")]
    )
    theirs = (
        [text("paper.card.score_of", name=one.opponents) for one in against]
        if several
        else [text("paper.card.opponent_score")]
    )
    blank = (*results, *theirs)
    lines += [CardLine(words, spread.empty, blank=True) for words in blank]
    why_not = _why_not(event, against)
    notes = [text("paper.card.against", name=against[0].opponents)] if len(against) == 1 else []
    if why_not:
        notes.append(text("paper.card.no_index", why=why_not))
    return Card(
        _called(ball),
        tuple(_facts(event, ball, group, against)),
        spread.head,
        spread.totals,
        tuple(lines),
        (text("paper.card.sign.player"), text("paper.card.sign.opponent")),
        " · ".join(notes),
    )


def _why_not(event: OnPaper, against: Sequence[_Against]) -> str:
    if not event.net:
        return ""
    if not against:
        return spoken(said("it is not known who plays against whom."))
    missing = next((one.has.why_not for one in against if one.has and one.has.why_not is not None), None)
    return "" if missing is None else spoken(missing)


def _facts(
    event: OnPaper, ball: Sequence[Entrant], group: Group | None, against: Sequence[_Against]
) -> Iterator[tuple[str, str]]:
    if group:
        yield text("paper.card.fact.time"), clock_words(group.time)
        yield text("paper.card.fact.tee"), str(group.tee)
    tees = list(dict.fromkeys(one.tees or event.found.tees for one in ball if one.tees or event.found.tees))
    if tees:
        yield text("paper.card.fact.tees"), ", ".join(tees)
    if len(ball) == 1 and ball[0].handicap_index is not None:
        yield text("paper.card.fact.index"), index_words(ball[0].handicap_index)
    has = against[0].has if len(against) == 1 else None
    if has is not None and has.playing is not None:
        yield text("paper.card.fact.strokes"), playing_words(has.playing)
