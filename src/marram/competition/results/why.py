"""Why a side has its place: every comparison with the side before it, up to the one that decided, down to the hole."""

from dataclasses import dataclass
from fractions import Fraction

from marram.competition.results.board import LeaderBoard, Place, Standing
from marram.competition.results.comparisons import Compared, Comparison, taken_off
from marram.competition.results.side_score import RoundScore, SideScore
from marram.competition.results.terms import Terms
from marram.competition.results.ties import comparisons, figure
from marram.errors import InputError, shown
from marram.said import Said, said


@dataclass(frozen=True, slots=True)
class HoleBeside:
    """A hole of both sides: what it counts for each."""

    round: int
    number: int
    mine: int | None
    theirs: int | None


@dataclass(frozen=True, slots=True)
class Step:
    """A comparison with the side before.

    Attributes:
        comparison: what was compared.
        mine: the figure of the side asked about; ``None``: not known.
        theirs: that of the side before it.
        holes: the holes compared, where the figures differ.
        words: the comparison in words.
    """

    comparison: Comparison
    mine: Fraction | int | None
    theirs: Fraction | int | None
    holes: tuple[HoleBeside, ...]
    words: Said

    @property
    def differs(self) -> bool:
        """Whether it decided."""
        return self.mine != self.theirs


@dataclass(frozen=True, slots=True)
class Why:
    """Why a side has its place.

    Attributes:
        place: the side asked about.
        before: the one before it; ``None`` for the first, and for who has no place.
        steps: the comparisons in their order, the last one that which decided, where one did.
        words: the answer in words.
    """

    place: Place
    before: Place | None
    steps: tuple[Step, ...]
    words: Said

    @property
    def decided(self) -> Step | None:
        """The comparison that decided; ``None`` where the place is shared, or there is nobody before."""
        return self.steps[-1] if self.steps and self.steps[-1].differs else None


def why(board: LeaderBoard, side: str) -> Why:
    """Return why a side has its place; of sides that share a place each is compared with the one named before it.

    Raises:
        InputError: nobody of this name competes.
    """
    places = board.places
    at = next((number for number, one in enumerate(places) if one.side == side), None)
    if at is None:
        raise InputError(said("{side} does not compete here; give a side of the board.", side=shown(side)))
    mine = places[at]
    if mine.out is not None:
        return Why(mine, None, (), _out_words(mine))
    if mine.place is None:
        return Why(mine, None, (), said("{side} has not started.", side=side))
    if at == 0:
        return Why(mine, None, (), said("{side} leads: nobody is before.", side=side))
    before = places[at - 1]
    missed = mine.standing is Standing.MISSED_CUT
    if missed and before.standing is not mine.standing:
        return Why(mine, before, (), _cut_words(board, mine))
    steps = _steps(board, before, mine)
    words = _words(mine, before, steps)
    if missed:
        words = said("{side} missed the cut. {words}", side=side, words=words)
    return Why(mine, before, steps, words)


def _steps(board: LeaderBoard, before: Place, mine: Place) -> tuple[Step, ...]:
    terms = board.terms
    totals = board.final or (
        mine.score.complete_rounds == before.score.complete_rounds
        and not (mine.left - before.left)
        and mine.score.played == before.score.played
    )
    by = Compared.TOTAL if totals else Compared.AGAINST_LEVEL
    values = (
        (mine.score.total, before.score.total)
        if totals
        else (mine.score.against_level, before.score.against_level)
    )
    scores = (mine.score, before.score)
    found = [_step(terms, Comparison(by), values, scores)]
    if found[0].differs or not board.final:
        return tuple(found)
    first = board.places[0].score.rank(True) == mine.score.rank(True)
    methods = terms.ties.first_place if first else terms.ties.other_places
    for one in comparisons(mine.score, methods):
        figures = (figure(terms, mine.score, one), figure(terms, before.score, one))
        found.append(_step(terms, one, figures, scores))
        if found[-1].differs:
            break
    return tuple(found)


def _step(
    terms: Terms,
    comparison: Comparison,
    figures: tuple[Fraction | int | None, Fraction | int | None],
    scores: tuple[SideScore, SideScore],
) -> Step:
    """Return a comparison: the figures and the scores of the side asked about and of the one before it."""
    mine, theirs = figures
    off = [taken_off(terms.scoring, terms.countback_strokes, one, comparison) for one in scores]
    in_strokes = any(one is not None for one in off)
    of_values = comparison.by not in (Compared.HANDICAP, Compared.PLAY_OFF, Compared.LOT)
    against = comparison.by is Compared.AGAINST_LEVEL
    signed = against or (of_values and terms.scoring.counts_against_target)
    words = said(
        "{what}: {mine} against {theirs}",
        what=compared_words(comparison, scores[0]),
        mine=_signed(mine) if signed else _with_handicap(mine, off[0]),
        theirs=_signed(theirs) if signed else _with_handicap(theirs, off[1]),
    )
    holes = () if mine == theirs else _beside(comparison, *scores, in_strokes=in_strokes)
    return Step(comparison, mine, theirs, holes, words)


def _signed(value: Fraction | int | None) -> str:
    """Return what stands against par or target with its sign, as a leader board has it."""
    return f"+{in_figures(value)}" if value is not None and value > 0 else in_figures(value)


def _with_handicap(value: Fraction | int | None, off: Fraction | None) -> str:
    """Return a figure as it is written, with the strokes and the part of the handicap that it is made of."""
    if value is None or off is None:
        return in_figures(value)
    sign = "−" if off >= 0 else "+"
    return f"{in_figures(value)} ({in_figures(value + off)} {sign} {in_figures(abs(off))})"


def _beside(
    comparison: Comparison, mine: SideScore, theirs: SideScore, *, in_strokes: bool
) -> tuple[HoleBeside, ...]:
    """Return the holes compared that count differently for the two: in strokes where a part of the handicap is taken off."""
    if comparison.by in (Compared.HANDICAP, Compared.PLAY_OFF, Compared.LOT):
        return ()
    whole = comparison.by in (Compared.TOTAL, Compared.AGAINST_LEVEL)
    two = comparison.by is Compared.LAST_TWO_ROUNDS
    rounds = mine.rounds if whole else mine.rounds[-2:] if two else mine.rounds[-1:]
    found = []
    for one in rounds:
        other = next((its for its in theirs.rounds if its.round == one.round), None)
        ends = (
            slice(None)
            if whole or two or comparison.by is Compared.LAST_ROUND
            else slice(comparison.first, comparison.end)
        )
        ours = _by_hole(one, in_strokes=in_strokes)
        others = _by_hole(other, in_strokes=in_strokes) if other else {}
        for hole in one.holes[ends]:
            value, against = ours[hole.number], others.get(hole.number)
            if value != against:
                found.append(HoleBeside(one.round, hole.number, value, against))
    return tuple(found)


def _by_hole(round_: RoundScore, *, in_strokes: bool) -> dict[int, int | None]:
    """Return what each hole counts by its number, or the strokes taken there."""
    received = round_.strokes if in_strokes and round_.strokes else (0,) * len(round_.holes)
    return {
        hole.number: None if value is None else value + strokes
        for hole, value, strokes in zip(round_.holes, round_.values, received, strict=True)
    }


def compared_words(comparison: Comparison, score: SideScore) -> Said:
    """Return what is compared, in words."""
    simple = {
        Compared.TOTAL: said("the total"),
        Compared.AGAINST_LEVEL: said("the score against par or target, on the holes played"),
        Compared.LAST_TWO_ROUNDS: said("the last two rounds"),
        Compared.LAST_ROUND: said("the last round"),
        Compared.HANDICAP: said("the handicap"),
        Compared.PLAY_OFF: said("the order in the play-off"),
        Compared.LOT: said("the order by lot"),
    }
    if comparison.by in simple:
        return simple[comparison.by]
    holes = score.rounds[-1].holes
    first, last = holes[comparison.first].number, holes[comparison.end - 1].number
    if first == last:
        return said("hole {hole}", hole=first)
    return said("holes {first} to {last}", first=first, last=last)


def in_figures(value: Fraction | int | None) -> str:
    """Return a figure as it is written: whole, or whole with a fraction; ``?`` where it is not known."""
    if value is None:
        return "?"
    exact = Fraction(value)
    if exact.denominator == 1:
        return str(exact.numerator)
    whole, part = divmod(abs(exact.numerator), exact.denominator)
    sign = "-" if exact < 0 else ""
    return f"{sign}{whole} {part}/{exact.denominator}" if whole else f"{sign}{part}/{exact.denominator}"


def _words(mine: Place, before: Place, steps: tuple[Step, ...]) -> Said:
    last = steps[-1]
    if not last.differs:
        if mine.place == before.place:
            return said(
                "{side} shares place {place} with {other}.",
                side=mine.side,
                place=mine.place,
                other=before.side,
            )
        return said("{side} comes after {other}.", side=mine.side, other=before.side)
    return said("{side} comes after {other}: {words}.", side=mine.side, other=before.side, words=last.words)


def _cut_words(board: LeaderBoard, mine: Place) -> Said:
    """Return that a side missed the cut, with the two scores where this board made it."""
    cut = board.terms.cut
    plain = said("{side} missed the cut.", side=mine.side)
    if cut is None or board.terms.made_cut is not None:
        return plain
    on = [
        one.score.after(cut.after_round)
        for one in board.places
        if one.place is not None and one.standing is not Standing.MISSED_CUT
    ]
    if not on:
        return plain
    last = max(on, key=lambda one: one.rank(True))
    return said(
        "{side} missed the cut: {mine} after round {round}, and the last who plays on has {theirs}.",
        side=mine.side,
        mine=mine.score.after(cut.after_round).total,
        round=cut.after_round,
        theirs=last.total,
    )


def _out_words(mine: Place) -> Said:
    assert mine.out is not None
    if mine.out.citation:
        return said(
            "{side} is out: {kind} (Rule {citation}).",
            side=mine.side,
            kind=mine.out.kind,
            citation=mine.out.citation,
        )
    return said("{side} is out: {kind}.", side=mine.side, kind=mine.out.kind)
