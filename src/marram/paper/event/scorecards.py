"""Scorecards: each player's, with the strokes received marked on their holes."""

from collections.abc import Iterator

from marram.competition.conditions.event_file import Entrant, Group
from marram.competition.conditions.handicaps import Has, shares_ball
from marram.competition.results.scoring import maximum_for
from marram.errors import InputError
from marram.paper.event.card_spread import Spread
from marram.paper.event.handicap_words import index_words, playing_words
from marram.paper.event.match_cards import match_cards
from marram.paper.event.on_paper import OnPaper
from marram.paper.event.side_cards import on_one_card, side_cards, without_side
from marram.paper.sheet import Card, CardLine, Cards, Sheet
from marram.rules.facts.conditions import FormOfPlay
from marram.said import said
from marram.words.spoken import spoken
from marram.words.texts import clock_words, text


def scorecards(event: OnPaper) -> Sheet:
    """Return the cards of everybody who plays, or of every side, in the order of the starting sheet.

    Raises:
        InputError: the holes are not known, or partners share a ball and who they are is not.
    """
    faults = []
    if not event.holes:
        faults.append(
            said("The pars of the holes are not known. Give a course map that has the par of every hole.")
        )
    if shares_ball(event.found) and (alone := without_side(event)):
        faults.append(
            said(
                "Partners share a ball, and who plays with whom is not known of {names}. Give each player a side.",
                names=", ".join(alone),
            )
        )
    if faults:
        raise InputError(*faults)
    if event.found.form_of_play is FormOfPlay.MATCH_PLAY:
        return _sheet(event, tuple(match_cards(event)))
    if on_one_card(event):
        return _sheet(event, tuple(side_cards(event)))
    in_order = [(event.by_name[name], group) for group in event.groups for name in group.players]
    cards = [_card(event, one, group) for one, group in (*in_order, *((one, None) for one in event.waiting))]
    return _sheet(event, tuple(cards))


def _sheet(event: OnPaper, cards: tuple[Card, ...]) -> Sheet:
    title, none = text("paper.title.scorecards"), text("paper.card.none")
    return Sheet(title, event.name, event.about, event.day_words, (Cards(cards, none),), "")


def _card(event: OnPaper, entrant: Entrant, group: Group | None) -> Card:
    found, holes = event.found, event.holes_of(entrant.name)
    has = event.has(entrant.name) if event.net else Has(None)
    playing, strokes = has.playing, has.strokes
    why_not = "" if has.why_not is None else spoken(has.why_not)
    spread = Spread(holes)
    lines = [
        CardLine(text("paper.card.par"), spread.figures([one.par for one in holes])),
        CardLine(
            text("paper.card.stroke_index"),
            spread.figures([one.stroke_index for one in holes], totals=False),
        ),
    ]
    if strokes:
        back = any(one < 0 for one in strokes)
        heading = text("paper.card.given_back" if back else "paper.card.strokes")
        lines.append(CardLine(heading, spread.figures([abs(one) or None for one in strokes])))
    if found.form_of_play is FormOfPlay.MAXIMUM_SCORE and found.maximum:
        received = strokes or (0,) * len(holes)
        most = [maximum_for(found.maximum, hole.par, got) for hole, got in zip(holes, received, strict=True)]
        lines.append(CardLine(text("paper.card.maximum"), spread.figures(most, totals=False)))
    lines.append(CardLine(text("paper.card.score"), spread.empty, blank=True))
    if found.form_of_play is FormOfPlay.STABLEFORD:
        lines.append(CardLine(text("paper.card.points"), spread.empty, blank=True))
    if found.form_of_play is FormOfPlay.PAR_BOGEY:
        lines.append(CardLine(text("paper.card.result"), spread.empty, blank=True))
    lines.append(CardLine(text("paper.card.marker_own"), spread.empty, blank=True))
    return Card(
        entrant.name,
        tuple(_facts(event, entrant, group, playing)),
        spread.head,
        spread.totals,
        tuple(lines),
        (text("paper.card.sign.player"), text("paper.card.sign.marker")),
        text("paper.card.no_index", why=why_not) if why_not else "",
    )


def _facts(
    event: OnPaper, entrant: Entrant, group: Group | None, playing: int | None
) -> Iterator[tuple[str, str]]:
    if group:
        yield text("paper.card.fact.time"), clock_words(group.time)
        yield text("paper.card.fact.tee"), str(group.tee)
    tees = entrant.tees or event.found.tees
    if tees:
        yield text("paper.card.fact.tees"), tees
    if entrant.handicap_index is not None:
        yield text("paper.card.fact.index"), index_words(entrant.handicap_index)
    if playing is not None:
        yield text("paper.card.fact.playing"), playing_words(playing)
