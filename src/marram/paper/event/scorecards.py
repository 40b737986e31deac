"""Scorecards: each player's, with the strokes received marked on their holes."""

from collections.abc import Iterable, Iterator, Sequence

from marram.competition.conditions.event_file import Entrant, Group
from marram.competition.results.card import Hole
from marram.competition.results.scoring import maximum_for
from marram.errors import InputError
from marram.handicap.strokes import strokes_by_hole
from marram.paper.event.handicap_words import index_words, playing_words
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Card, CardLine, Cards, Sheet
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.said import said
from marram.words.spoken import spoken
from marram.words.texts import text

NINE = 9


def scorecards(event: OnPaper) -> Sheet:
    """Return the cards of everybody who plays, in the order of the starting sheet.

    Raises:
        InputError: the holes are not known, or partners share a ball, so that the card is not a player's.
    """
    faults = []
    if not event.holes:
        faults.append(
            said("The pars of the holes are not known. Give a course map that has the par of every hole.")
        )
    if event.found.sides is Sides.FOURSOMES or event.found.variation is not None:
        faults.append(
            said(
                "Cards of partners who share a ball are not printed: the conditions do not say who plays with whom."
            )
        )
    if faults:
        raise InputError(*faults)
    in_order = [(event.by_name[name], group) for group in event.groups for name in group.players]
    cards = [_card(event, one, group) for one, group in (*in_order, *((one, None) for one in event.waiting))]
    return Sheet(
        text("paper.title.scorecards"),
        event.name,
        event.about,
        event.day_words,
        (Cards(tuple(cards), text("paper.card.none")),),
        "",
    )


def strokes_on(
    event: OnPaper, entrant: Entrant, group: Group | None
) -> tuple[int | None, tuple[int, ...], str]:
    """Return a player's strokes in the round, those of each hole, and why they are not marked.

    In match play between two players the one with the higher Playing Handicap receives the difference (Rules of
    Handicapping, Appendix C); elsewhere everybody has the own Playing Handicap.
    """
    has = event.has(entrant.name)
    if event.found.form_of_play is FormOfPlay.MATCH_PLAY:
        opponents = [one for one in group.players if one != entrant.name] if group else []
        if len(opponents) != 1:
            return None, (), spoken(said("it is not known who plays against whom."))
        theirs = event.has(opponents[0])
        if has.playing is None or theirs.playing is None:
            why = has.why_not if has.playing is None else theirs.why_not
            return None, (), spoken(why or "")
        apart = max(0, has.playing - theirs.playing)
        indexes = [one.stroke_index for one in event.holes if one.stroke_index is not None]
        if has.why_not is not None:
            return apart, (), spoken(has.why_not)
        return apart, strokes_by_hole(apart, indexes), ""
    return has.playing, has.strokes, "" if has.why_not is None else spoken(has.why_not)


def _card(event: OnPaper, entrant: Entrant, group: Group | None) -> Card:
    found, holes = event.found, event.holes
    playing, strokes, why_not = strokes_on(event, entrant, group) if event.net else (None, (), "")
    spread = _Spread(holes)
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
    if found.form_of_play in (FormOfPlay.PAR_BOGEY, FormOfPlay.MATCH_PLAY):
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
        yield text("paper.card.fact.time"), group.time
        yield text("paper.card.fact.tee"), str(group.tee)
    tees = entrant.tees or event.found.tees
    if tees:
        yield text("paper.card.fact.tees"), tees
    if entrant.handicap_index is not None:
        yield text("paper.card.fact.index"), index_words(entrant.handicap_index)
    if playing is not None:
        match = event.found.form_of_play is FormOfPlay.MATCH_PLAY
        yield text("paper.card.fact.strokes" if match else "paper.card.fact.playing"), playing_words(playing)


class _Spread:
    """Holes over the columns of a card: nine and nine with their sums, or as many as there are with one sum."""

    def __init__(self, holes: Sequence[Hole]) -> None:
        numbers = [str(one.number) for one in holes]
        self._halves = len(holes) == 2 * NINE
        if self._halves:
            self.head = (
                *numbers[:NINE],
                text("paper.card.out"),
                *numbers[NINE:],
                text("paper.card.in"),
                text("paper.card.total"),
            )
            self.totals: tuple[int, ...] = (NINE, 2 * NINE + 1, 2 * NINE + 2)
        else:
            self.head = (*numbers, text("paper.card.total"))
            self.totals = (len(holes),)

    @property
    def empty(self) -> tuple[str, ...]:
        """Cells to write in."""
        return ("",) * len(self.head)

    def figures(self, values: Sequence[int | None], *, totals: bool = True) -> tuple[str, ...]:
        """Return a figure for each hole, with the sums where they mean something."""

        def sum_of(part: Iterable[int | None]) -> str:
            return str(sum(one or 0 for one in part)) if totals else ""

        cells = ["" if one is None else str(one) for one in values]
        if not self._halves:
            return (*cells, sum_of(values))
        return (
            *cells[:NINE],
            sum_of(values[:NINE]),
            *cells[NINE:],
            sum_of(values[NINE:]),
            sum_of(values),
        )
