"""The one card of a side: of partners who share a ball, or who each play one (Rules 22.1 and 23.2b)."""

from collections.abc import Iterator, Mapping, Sequence

from marram.competition.conditions.event_file import Entrant, Group
from marram.competition.conditions.handicaps import Has, shares_ball, side_handicap_of
from marram.competition.conditions.pars import pars_apart
from marram.paper.event.card_spread import Spread
from marram.paper.event.handicap_words import playing_words
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Card, CardLine
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.words.spoken import spoken
from marram.words.texts import clock_words, text


def on_one_card(event: OnPaper) -> bool:
    """Return whether a side has one card: partners share a ball, or count their better scores; cards of matches: ``match_cards.py``."""
    if without_side(event) or not event.players:
        return False
    better_ball = event.found.sides in (Sides.FOUR_BALL, Sides.BEST_OF_FOUR)
    return shares_ball(event.found) or better_ball


def without_side(event: OnPaper) -> list[str]:
    """Return the players of whom it is not known whom they play with."""
    return [one.name for one in event.players if not one.side]


def side_cards(event: OnPaper) -> Iterator[Card]:
    """Yield the card of every side, in the order of the starting sheet, then of those in no group."""
    group_of: dict[str, Group] = {name: group for group in event.groups for name in group.players}
    in_order = [event.by_name[name] for name in group_of] + list(event.waiting)
    sides: dict[str, list[Entrant]] = {}
    for one in in_order:
        sides.setdefault(one.side, []).append(one)
    for side, partners in sides.items():
        yield _card(event, side, partners, group_of)


def _card(event: OnPaper, side: str, partners: Sequence[Entrant], group_of: Mapping[str, Group]) -> Card:
    spread = Spread(event.holes)
    holes = event.holes_of(*(one.name for one in partners))
    lines = [
        CardLine(text("paper.card.par"), spread.figures([one.par for one in holes])),
        CardLine(
            text("paper.card.stroke_index"),
            spread.figures([one.stroke_index for one in event.holes], totals=False),
        ),
    ]
    shared = (
        side_handicap_of(event.found, partners, event.holes)
        if shares_ball(event.found) and event.net
        else None
    )
    if shares_ball(event.found):
        lines += _ball(spread, text("paper.card.score"), shared)
        why_not = shared.why_not if shared else None
    else:
        of = {one.name: event.has(one.name) if event.net else None for one in partners}
        for name, has in of.items():
            if pars := pars_apart(event.found, event.by_name[name], holes):
                lines.append(CardLine(text("paper.card.par"), spread.figures(pars)))
            known = "" if has is None or has.playing is None else f" ({playing_words(has.playing)})"
            lines += _ball(spread, f"{name}{known}", has)
        why_not = next((has.why_not for has in of.values() if has and has.why_not), None)
    lines += [CardLine(words, spread.empty, blank=True) for words in _results(event)]
    return Card(
        " / ".join(one.name for one in partners),
        tuple(_facts(side, partners, group_of, shared)),
        spread.head,
        spread.totals,
        tuple(lines),
        (text("paper.card.sign.player"), text("paper.card.sign.marker")),
        text("paper.card.no_index", why=spoken(why_not)) if why_not else "",
    )


def _ball(spread: Spread, heading: str, has: Has | None) -> Iterator[CardLine]:
    """Yield the line for the scores of a ball, after the strokes that are received with it."""
    if has is not None and any(has.strokes):
        back = any(one < 0 for one in has.strokes)
        received = spread.figures([abs(one) or None for one in has.strokes])
        yield CardLine(text("paper.card.given_back" if back else "paper.card.strokes"), received)
    yield CardLine(heading, spread.empty, blank=True)


def _results(event: OnPaper) -> Iterator[str]:
    form = event.found.form_of_play
    if form is FormOfPlay.STABLEFORD:
        yield text("paper.card.points")
    elif form is FormOfPlay.PAR_BOGEY:
        yield text("paper.card.result")
    elif not shares_ball(event.found):
        yield text("paper.card.side")
    yield text("paper.card.marker_own")


def _facts(
    side: str, partners: Sequence[Entrant], group_of: Mapping[str, Group], shared: Has | None
) -> Iterator[tuple[str, str]]:
    names = " / ".join(one.name for one in partners)
    if side != names:
        yield text("paper.card.fact.side"), side
    group = group_of.get(partners[0].name)
    if group:
        yield text("paper.card.fact.time"), clock_words(group.time)
        yield text("paper.card.fact.tee"), str(group.tee)
    tees = list(dict.fromkeys(one.tees for one in partners if one.tees))
    if tees:
        yield text("paper.card.fact.tees"), ", ".join(tees)
    if shared is not None and shared.playing is not None:
        yield text("paper.card.fact.playing"), playing_words(shared.playing)
