"""Rulings near a situation, the likeliest mistake first: what people take for its ruling."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations, islice
from random import Random

from marram.rules.engine.request import fact_named, rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.incidents import incident
from marram.rules.penalty import PenaltyKind
from marram.rules.result import NeedFacts
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes.misjudged import choice_misjudged, misjudged, prices_misjudged
from marram.teach.quizzes.prices_of_relief import priced_apart
from marram.teach.situations.fitting_together import fit_together
from marram.teach.situations.reaching import taught
from marram.teach.situations.sampling import situation
from marram.teach.situations.situation import Situation, ruled
from marram.words.telling import is_told

_DEEPEST = 2
"""How many further facts may have to be told once one is otherwise (own choice: a near situation stays near)."""
_DEEPER = 4
"""The same where a boundary would have to be one: what then follows hangs on more (own choice)."""
_BEYOND_A_BOUNDARY = frozenset({"beyond_internal_boundary", "beyond_public_road"})
"""Incidents of a ball that a Local Rule may put out of bounds: whoever believes it does, would play again."""
_PLAYED_BEYOND = {
    *(("provisional_state", each) for each in ("found", "lost_or_out", "second_found", "both_lost_or_out")),
    ("last_stroke_from_penalty_area", "yes"),
}
"""What would have to be told besides of balls that nobody spoke of."""
_BACK_ON_THE_LINE, _DEEPER_THERE = "back_on_the_line_drop", 5
"""The same of a ball to be dropped again back on the line: what stopped it and three limits are asked before it is played as it lies."""
_MOST_TWO = 40
"""Pairs of facts otherwise that are tried (own choice)."""
_MOST_MORE = 40
"""Rulings that more would have to be told for, of which some are drawn (own choice)."""
_MOST_TAKEN_FOR = 12
"""Situations of other incidents that are tried, the nearest first (own choice)."""
LOCAL_RULE, NOT_IN_FORCE = "local_rule_", "no"
"""Of a Local Rule that would have to be told besides it is taken that it is not in force: that makes nothing harder."""
_GENERAL = (PenaltyKind.GENERAL, PenaltyKind.LOSS_OF_HOLE)
_OF_FORM = (*_GENERAL, PenaltyKind.HOLES_DEDUCTED, PenaltyKind.POINTS_DEDUCTED)
"""Penalties that tell their form of play."""


@dataclass(frozen=True, slots=True)
class Near:
    """A ruling of something near.

    Attributes:
        ruling: the ruling.
        form: the form of play it was given in.
        otherwise: the facts that would have to be told otherwise, or besides, with their answers as tokens.
        edition: the year of the edition that ruled so; 0 for the one in force.
        incident: what else would have had to happen; empty where it is the same incident.
        misjudged: whether the right step stands with another penalty than the Rules give, as it is often remembered.
    """

    ruling: Ruling
    form: FormOfPlay
    otherwise: tuple[tuple[str, str], ...] = ()
    edition: int = 0
    incident: str = ""
    misjudged: bool = False


def near_rulings(one: Situation) -> Iterator[Near]:
    """Yield rulings near a situation: an older edition's, of facts otherwise, of another form or incident, at another penalty.

    Each kind is drawn up only when it is asked for; within a kind the order is by a lot of the situation's own: of the same
    facts it is always the same.
    """
    yield from (near for near in _every_near(one) if _fits(one, near))


def _lot(one: Situation, what: str) -> Random:
    """Return a lot of the facts, and of what is drawn: whatever else is drawn, and however often, changes nothing in it."""
    facts = " ".join(f"{name}={answer}" for name, answer in sorted(one.facts.items()))
    return Random(f"{what} {one.incident} {one.form.value} {facts}")  # noqa: S311 - a seed, no secret


def _fits(one: Situation, near: Near) -> bool:
    """Whether what is otherwise can be told with the rest; facts of another incident were drawn to fit together."""
    return (
        bool(near.incident)
        or near.misjudged
        or fit_together(one.incident, {**one.facts, **dict(near.otherwise)}, near.form)
    )


def _every_near(one: Situation) -> Iterator[Near]:
    before = one.ruled_otherwise_before
    if before is not None:
        yield Near(before, one.form, edition=2019)
    lot = _lot(one, "near")
    if priced_apart(one.ruling):
        prices = [Near(each, one.form, misjudged=True) for each in prices_misjudged(one.ruling)]
        lot.shuffle(prices)
        yield from prices
    for found in (
        _one_otherwise(one),
        islice(_more_told(one), _MOST_MORE),
        _other_form(one),
        _two_otherwise(one),
    ):
        kind = list(found)
        lot.shuffle(kind)
        yield from kind
    yield from _taken_for(one)
    *wrong, out = (Near(each, one.form, misjudged=True) for each in misjudged(one.ruling))
    lot.shuffle(wrong)
    choice = (Near(each, one.form, misjudged=True) for each in choice_misjudged(one.ruling))
    yield from (*wrong, *choice, out)


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


def is_within_boundary(one: Situation) -> bool:
    """Whether a ball is in bounds that lies beyond what might be a boundary."""
    return one.incident in _BEYOND_A_BOUNDARY and one.ruling.action is Action.PLAY_AS_IT_LIES


def _more_told(one: Situation) -> Iterator[Near]:
    """Yield the rulings for which, one fact being otherwise, a little more has to be told."""
    in_bounds = is_within_boundary(one)
    deepest = _DEEPER if in_bounds else _DEEPEST
    if one.incident == _BACK_ON_THE_LINE and one.ruling.action is Action.DROP_AGAIN:
        deepest = _DEEPER_THERE
    for flip in _flips(one):
        for otherwise, ruling in _completed(one, (flip,), deepest):
            if len(otherwise) > 1 and not (in_bounds and _PLAYED_BEYOND & {*otherwise}):
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
    if fact.name.startswith(LOCAL_RULE):
        yield from _completed(one, (*otherwise, (fact.name, NOT_IN_FORCE)), left)
        return
    if fact is the_sides or not fact.answers or not is_told(fact):
        return
    for token in fact.tokens():
        yield from _completed(one, (*otherwise, (fact.name, token)), left - 1)


def _other_form(one: Situation) -> Iterator[Near]:
    """Yield rulings in other forms of play that are no matter of the general penalty, which is another one in each.

    Strokes where the hole is lost, or the other way round, nobody takes for right who was told the form of play; and as such
    an answer would stand beside a general penalty only, it would give that away.
    """
    if the_sides.name in one.facts:
        return
    for form in FormOfPlay:
        other = None if form is one.form else ruled(one.incident, one.facts, form, one.played_on)
        if isinstance(other, Ruling) and not any(each.kind in _OF_FORM for each in other.penalties):
            yield Near(other, form)


def _two_otherwise(one: Situation) -> Iterator[Near]:
    flips = _flips(one)
    _lot(one, "pairs").shuffle(flips)
    for pair in islice(combinations(flips, 2), _MOST_TWO):
        if pair[0][0] == pair[1][0]:
            continue
        other = ruled(one.incident, {**one.facts, **dict(pair)}, one.form, one.played_on)
        if isinstance(other, Ruling):
            yield Near(other, one.form, pair)


def _taken_for(one: Situation) -> Iterator[Near]:
    """Yield rulings of other incidents, of the same Rule and theme first: what happened may be taken for one of them."""
    here = incident(one.incident)
    others = [each for each in taught() if each.name != here.name]
    _lot(one, "others").shuffle(others)
    others.sort(key=lambda each: (each.theme != here.theme) + (each.rule != here.rule))  # the nearest first
    for name in [each.name for each in others][:_MOST_TAKEN_FOR]:
        other = situation(name, _lot(one, name))
        if (
            other is not None and the_sides.name not in other.facts
        ):  # who plays together may not fit the form of play
            here_too = {fact: token for fact, token in one.facts.items() if fact in other.facts}
            found = ruled(name, {**other.facts, **here_too}, one.form, one.played_on)
            if isinstance(found, Ruling):
                yield Near(found, one.form, incident=name)
