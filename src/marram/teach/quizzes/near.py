"""Rulings near a situation, the likeliest mistake first: what people take for its ruling."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations, islice
from random import Random

from marram.rules.engine.request import fact_named, rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.incidents import incident
from marram.rules.penalty import OWN, PenaltyKind
from marram.rules.result import NeedFacts
from marram.rules.ruling import Action, Ruling
from marram.teach.situations.fitting_together import fit_together
from marram.teach.situations.reaching import taught
from marram.teach.situations.sampling import situation
from marram.teach.situations.situation import Situation, ruled
from marram.words.headline import said_by_note
from marram.words.telling import is_told

_DEEPEST = 2
"""How many further facts may have to be told once one is otherwise (own choice: a near situation stays near)."""
_MOST_TWO = 40
"""Pairs of facts otherwise that are tried (own choice)."""
_MOST_MORE = 40
"""Rulings that more would have to be told for, of which some are drawn (own choice)."""
_MOST_TAKEN_FOR = 30
"""Situations of other incidents that are tried (own choice)."""
_GENERAL_PENALTY = 2
"""Strokes of the general penalty in stroke play (Rule 1.3c(2))."""
_ORDINARY = (PenaltyKind.STROKES, PenaltyKind.GENERAL, PenaltyKind.LOSS_OF_HOLE, PenaltyKind.DISQUALIFICATION)


@dataclass(frozen=True, slots=True)
class Near:
    """A ruling of something near.

    Attributes:
        ruling: the ruling.
        form: the form of play it was given in.
        otherwise: the facts that would have to be told otherwise, or besides, with their answers as tokens.
        edition: the year of the edition that ruled so; 0 for the one in force.
        incident: what else would have had to happen; empty where it is the same incident.
    """

    ruling: Ruling
    form: FormOfPlay
    otherwise: tuple[tuple[str, str], ...] = ()
    edition: int = 0
    incident: str = ""


def near_rulings(one: Situation, lot: Random) -> Iterator[Near]:
    """Yield rulings near a situation: an older edition's, one fact otherwise, the other form of play, two facts, another incident.

    Each kind is drawn up only when it is asked for; within a kind the order is by lot.
    """
    yield from (near for near in _every_near(one, lot) if _fits(one, near))


def _fits(one: Situation, near: Near) -> bool:
    """Whether what is otherwise can be told with the rest; facts of another incident were drawn to fit together."""
    return bool(near.incident) or fit_together(one.incident, {**one.facts, **dict(near.otherwise)}, near.form)


def _every_near(one: Situation, lot: Random) -> Iterator[Near]:
    before = one.ruled_otherwise_before
    if before is not None:
        yield Near(before, one.form, edition=2019)
    for found in (
        _one_otherwise(one),
        islice(_more_told(one), _MOST_MORE),
        _other_form(one),
        _two_otherwise(one, lot),
    ):
        kind = list(found)
        lot.shuffle(kind)
        yield from kind
    yield from _taken_for(one, lot)


def _flips(one: Situation) -> list[tuple[str, str]]:
    """Return every other answer to each fact; who plays together is no mistake about what happened."""
    facts = ((name, given, fact_named(name)) for name, given in one.facts.items())
    flips = [
        (name, token)
        for name, given, fact in facts
        if fact is not the_sides
        for token in fact.tokens()
        if token != given
    ]
    for reason in one.ruling.reasons:
        fact = fact_named(reason.fact)
        if (
            reason.fact in one.facts and not fact.answers and not fact.is_date
        ):  # a number: just beyond its bounds
            flips += [(reason.fact, f"{reason.above:g}")] if reason.above is not None else []
            flips += [(reason.fact, f"{reason.at_most + 1:g}")] if reason.at_most is not None else []
    return flips


def _one_otherwise(one: Situation) -> Iterator[Near]:
    for flip in _flips(one):
        other = ruled(one.incident, {**one.facts, flip[0]: flip[1]}, one.form, one.played_on)
        if isinstance(other, Ruling):
            yield Near(other, one.form, (flip,))


def _more_told(one: Situation) -> Iterator[Near]:
    """Yield the rulings for which, one fact being otherwise, a little more has to be told."""
    for flip in _flips(one):
        for otherwise, ruling in _completed(one, (flip,), _DEEPEST):
            if len(otherwise) > 1:
                yield Near(ruling, one.form, otherwise)


def _completed(
    one: Situation, otherwise: tuple[tuple[str, str], ...], left: int
) -> Iterator[tuple[tuple[tuple[str, str], ...], Ruling]]:
    found = rule(
        one.incident, {**one.facts, **dict(otherwise)}, played_on=one.played_on, form_of_play=one.form
    )
    if isinstance(found, Ruling):
        yield otherwise, found
    if not isinstance(found, NeedFacts) or not left:
        return
    fact = fact_named(found.fact)
    if fact is the_sides or not fact.answers or not is_told(fact):
        return
    for token in fact.tokens():
        yield from _completed(one, (*otherwise, (fact.name, token)), left - 1)


def _other_form(one: Situation) -> Iterator[Near]:
    """Yield the ruling in the other form of play: strokes where the hole is lost, or the other way round."""
    if the_sides.name in one.facts:
        return
    for form in FormOfPlay:
        other = None if form is one.form else ruled(one.incident, one.facts, form, one.played_on)
        if isinstance(other, Ruling):
            yield Near(other, form)


def _two_otherwise(one: Situation, lot: Random) -> Iterator[Near]:
    flips = _flips(one)
    lot.shuffle(flips)
    for pair in islice(combinations(flips, 2), _MOST_TWO):
        if pair[0][0] == pair[1][0]:
            continue
        other = ruled(one.incident, {**one.facts, **dict(pair)}, one.form, one.played_on)
        if isinstance(other, Ruling):
            yield Near(other, one.form, pair)


def _taken_for(one: Situation, lot: Random) -> Iterator[Near]:
    """Yield rulings of other incidents, of the same Rule and theme first: what happened may be taken for one of them."""
    here = incident(one.incident)
    others = [each for each in taught() if each.name != here.name]
    lot.shuffle(others)
    others.sort(key=lambda each: (each.theme != here.theme) + (each.rule != here.rule))  # the nearest first
    for name in [each.name for each in others][:_MOST_TAKEN_FOR]:
        other = situation(name, lot)
        if (
            other is not None and the_sides.name not in other.facts
        ):  # who plays together may not fit the form of play
            here_too = {fact: token for fact, token in one.facts.items() if fact in other.facts}
            found = ruled(name, {**other.facts, **here_too}, one.form, one.played_on)
            if isinstance(found, Ruling) and is_believable(one.ruling, found):
                yield Near(found, one.form, incident=name)


def is_believable(right: Ruling, other: Ruling) -> bool:
    """Whether the ruling of another incident can be taken for the right one: it speaks of nothing that was not told.

    More strokes than a general penalty, holes deducted, a step that belongs to the other incident (both balls played out,
    the lie shaped in sand, a club taken out of play) or the end of the hole give themselves away.
    """
    if said_by_note(other) not in {"", said_by_note(right)} or "shape_the_lie_in_sand" in other.notes:
        return False
    ends = (Action.HOLED, Action.HOLE_OVER, Action.STOP_PLAY)
    if other.action in ends and right.action not in ends:
        return False
    if _strokes(other) > max(_strokes(right), _GENERAL_PENALTY):
        return False
    return {one.kind for one in other.penalties} <= {*_ORDINARY, *(one.kind for one in right.penalties)}


def _strokes(ruling: Ruling) -> int:
    return sum(one.strokes for one in ruling.penalties if one.who in OWN)
