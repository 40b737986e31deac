"""Rulings as they are often remembered: the right step at another penalty, or the right relief at another price."""

from collections.abc import Iterator
from dataclasses import replace

from marram.rules.penalty import Penalty, Who, disqualified, general, strokes
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes.apart import MAY_BE_TAKEN_AWAY

_LOST_ONE_AFTER_ANOTHER = frozenset({"both_provisionals_lost_too", "provisional_lost_too"})
"""Notes of balls lost with provisional balls: how often the stroke of stroke and distance counts, is what is asked."""
_FREE_RELIEF = "16.1b"
"""The provision of free relief as everybody remembers it (Rule 16.1b)."""


def misjudged(right: Ruling) -> list[Ruling]:
    """Return the right step with another penalty (none, one stroke, the general penalty) or relief at another cost; last, out."""
    bearing = {each.who for each in right.penalties} or {Who.PLAYER}
    found = [*_relief_misjudged(right), *_relief_besides(right)]
    cited, step = right.citations[0], _step_misjudged(right)
    if MAY_BE_TAKEN_AWAY.intersection(right.notes) and not any(each.penalty == 0 for each in right.relief):
        free = ReliefOption(ReliefKind.FREE, _FREE_RELIEF, Reference.NEAREST_POINT, 1, ())
        found.append(replace(right, action=Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF, relief=(free,)))
    if right.action is not Action.TAKE_RELIEF:
        whom = {*bearing, Who.PLAYER} if bearing <= {Who.OPPONENT, Who.OTHER_PLAYER} else bearing
        for who in sorted(whom, key=lambda each: each.value):
            costs: tuple[tuple[Penalty, ...], ...] = ((), (strokes(1, cited, who),), (general(cited, who),))
            kept = right.relief if right.action is Action.REPLACE else ()
            found += [replace(right, penalties=each, action=step, relief=kept) for each in costs]
    out = tuple(disqualified(cited, who) for who in sorted(bearing, key=lambda each: each.value))
    found.append(replace(right, penalties=out, action=None, relief=(), corrections=(), notes=()))
    return found


def choice_misjudged(right: Ruling) -> Iterator[Ruling]:
    """Yield the choice that is left with a stroke besides, where all relief in it must be paid for."""
    if right.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF and all(each.penalty for each in right.relief):
        yield replace(right, penalties=(strokes(1, right.citations[0]),))


def _relief_besides(right: Ruling) -> Iterator[Ruling]:
    """Yield free relief besides, where a loose impediment may be taken away and no Local Rule gives more (Rule 15.1a)."""
    free = ReliefOption(ReliefKind.FREE, _FREE_RELIEF, Reference.NEAREST_POINT, 1, ())
    if "may_remove_loose_impediment" in right.notes and right.action is Action.PLAY_AS_IT_LIES:
        yield replace(right, action=Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF, relief=(free,))


def _step_misjudged(right: Ruling) -> Action | None:
    """Return what is done next at another penalty: at none, the hole is not over."""
    if right.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
        return Action.PLAY_AS_IT_LIES
    over = right.action in (None, Action.HOLE_OVER)
    return Action.PLAY_ON if over and right.penalties else right.action


def prices_misjudged(right: Ruling) -> Iterator[Ruling]:
    """Yield rulings with the same relief, which costs one thing in one way and another in another, at other prices."""
    prices = sorted({each.penalty for each in right.relief})
    least, most = prices[0], prices[-1]
    for cost in (least, most):
        yield replace(right, relief=tuple(replace(each, penalty=cost) for each in right.relief))
    turned = {least: most, most: least}
    yield replace(
        right,
        relief=tuple(replace(each, penalty=turned.get(each.penalty, each.penalty)) for each in right.relief),
    )
    yield replace(right, relief=tuple(replace(each, penalty=each.penalty + 1) for each in right.relief))


def _relief_misjudged(right: Ruling) -> Iterator[Ruling]:
    """Yield rulings with the same relief at another cost, or with free relief."""
    choice = right.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF
    if right.action is Action.TAKE_RELIEF and _LOST_ONE_AFTER_ANOTHER.intersection(right.notes):
        paid = sum(each.strokes for each in right.penalties)
        for before in {paid - 1, paid + 1}:
            strokes_before = (strokes(before, right.penalties[0].citation),) if before else ()
            yield replace(right, penalties=strokes_before)
        return
    if not choice and (right.penalties or right.action is not Action.TAKE_RELIEF):
        return
    for cost in (1, 2):
        yield replace(right, relief=tuple(replace(each, penalty=cost) for each in right.relief))
    if all(each.kind is ReliefKind.STROKE_AND_DISTANCE for each in right.relief):
        yield replace(right, relief=tuple(replace(each, penalty=0) for each in right.relief))
    else:
        free = replace(right.relief[-1], kind=ReliefKind.FREE, penalty=0, citation=_FREE_RELIEF)
        yield replace(right, relief=(free,))
