"""Rule 1.3c(4): which breaches of a story belong together and get one penalty, and which get one each."""

from collections.abc import Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import replace
from typing import Any

from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.fact import Fact
from marram.rules.facts.several import (
    Taken,
    acts_related,
    intervening_event,
    moved_ball_not_replaced_before,
    option_taken,
)
from marram.rules.penalty import Penalty, PenaltyKind, Who
from marram.rules.story.deeds import Deed

_LEVEL = {
    PenaltyKind.STROKES: 0,
    PenaltyKind.GENERAL: 1,
    PenaltyKind.LOSS_OF_HOLE: 1,
    PenaltyKind.HOLES_DEDUCTED: 1,
    PenaltyKind.POINTS_DEDUCTED: 1,
    PenaltyKind.DISQUALIFICATION_FOR_HOLE: 2,
    PenaltyKind.DISQUALIFICATION: 3,
}
_PER_HOLE = ("4.1b", "5.6a")
"""Counted by hole or by how often: never one with a breach of something else, nor with the one before."""
_MOVED = ("9.4", "14.1b", "15.1b")
"""Breaches by which a ball was moved that must be replaced."""
_STROKES_PLAYED = (Taken.AS_IT_LIES, Taken.REPLAY)

_ONE_AND_EACH = frozenset({Who.ONE_PARTNER, Who.EACH_PARTNER})
"""Whose breaches are those of one partner: of each of them the other may bear the same."""

Told = Mapping[Fact[Any], Any]
"""What is known between the acts."""


def penalties_together(
    case: Case, deeds: Sequence[Deed], counting: Sequence[tuple[Penalty, ...]], told: Told
) -> tuple[Penalty, ...]:
    """Return the penalties in total: one, the highest, for breaches that belong together; else one for each."""
    people = dict.fromkeys(one.who for penalties in counting for one in penalties)
    shared = people.keys() >= _ONE_AND_EACH
    alone = [who for who in people if not (shared and who in _ONE_AND_EACH)]
    found = [one for who in alone for one in _penalties_of(case, deeds, {who}, counting, told)]
    if shared:
        found += _of_partners(
            _penalties_of(case, deeds, _ONE_AND_EACH, counting, told),
            _penalties_of(case, deeds, {Who.EACH_PARTNER}, counting, told),
        )
    out = {one.who for one in found if one.kind is PenaltyKind.DISQUALIFICATION}
    return tuple(one for one in found if one.kind is PenaltyKind.DISQUALIFICATION or one.who not in out)


def _of_partners(in_breach: Sequence[Penalty], other: Sequence[Penalty]) -> list[Penalty]:
    """Return what each of two partners gets: what both get as such, and what one of them gets besides.

    Args:
        in_breach: what the partner gets who was in breach.
        other: what the other gets, of the breaches that were borne by each.
    """
    left = list(in_breach)
    both, rest = [], []
    for one in other:
        alike = [own for own in left if (own.kind, own.strokes) == (one.kind, one.strokes)]
        if alike:
            left.remove(one if one in alike else alike[0])
            both.append(one)
        else:
            rest.append(replace(one, who=Who.OTHER_PARTNER))
    return both + [replace(one, who=Who.ONE_PARTNER) for one in left] + rest


def _penalties_of(
    case: Case,
    deeds: Sequence[Deed],
    who: AbstractSet[Who],
    counting: Sequence[tuple[Penalty, ...]],
    told: Told,
) -> list[Penalty]:
    """Return what one person gets: the highest of each group of breaches that belong together, and all relief."""
    own = [tuple(one for one in penalties if one.who in who) for penalties in counting]
    relief = [one for penalties in own for one in penalties if for_relief(one)]
    breaches = [tuple(one for one in penalties if not for_relief(one)) for penalties in own]
    if any(one.kind is PenaltyKind.DISQUALIFICATION for penalties in breaches for one in penalties):
        return [
            one for penalties in breaches for one in penalties if one.kind is PenaltyKind.DISQUALIFICATION
        ][:1]
    breaches = _without_what_not_replacing_covers(deeds, breaches)
    groups: list[list[tuple[Penalty, ...]]] = []
    last = 0
    for place, penalties in enumerate(breaches):
        if not penalties:
            continue
        earlier = [one for before in groups[-1] for one in before] if groups else []
        if groups and not _separate(case, deeds, (last, place), (earlier, penalties), told):
            groups[-1].append(penalties)
        else:
            groups.append([penalties])
        last = place
    return [one for group in groups for one in max(group, key=_rank)] + relief


def _separate(
    case: Case,
    deeds: Sequence[Deed],
    places: tuple[int, int],
    penalties: tuple[Sequence[Penalty], Sequence[Penalty]],
    told: Told,
) -> bool:
    """Tell whether a breach gets a penalty besides those of an earlier one."""
    last, place = places
    earlier, own = penalties
    if any(one.citation.startswith(_PER_HOLE) for one in (*earlier, *own)) and not _same_hole_rule(
        earlier, own
    ):
        return True
    if _failure_to_replace(case, deeds, places, earlier, own):
        return False
    gaps = range(last, place)
    if any(told.get(intervening_event[gap]) is True for gap in gaps) or _stroke_between(deeds, places, told):
        return True
    if not case.played_since(EDITION_2023) and not case[acts_related[place - 1]]:
        return True
    return any(case[intervening_event[gap]] for gap in gaps)


def _same_hole_rule(earlier: Sequence[Penalty], own: Sequence[Penalty]) -> bool:
    """Whether both are about one club or clubs too many: told twice, they are one breach."""
    return all(one.citation.startswith("4.1b") for one in (*earlier, *own))


def _stroke_between(deeds: Sequence[Deed], places: tuple[int, int], told: Told) -> bool:
    """Tell whether the acts themselves show a stroke completed between two breaches."""
    last, place = places
    between = deeds[last + 1 : place]
    if any(told.get(option_taken[one]) in _STROKES_PLAYED for one in range(last, place)):
        return True
    if any(one.has_a_stroke or one.follows_a_stroke for one in between):
        return True
    if (
        deeds[last].has_a_stroke
        and deeds[place].has_a_stroke
        and deeds[last].incident == deeds[place].incident != ""
    ):
        return True  # told twice: two strokes
    came_to_rest = not deeds[place].has_a_stroke or any(one.ruling.relief for one in between)
    return deeds[last].breach_before_its_stroke_ended and came_to_rest


def _failure_to_replace(
    case: Case,
    deeds: Sequence[Deed],
    places: tuple[int, int],
    before: Sequence[Penalty],
    own: Sequence[Penalty],
) -> bool:
    """Rule 1.3c(4) Exception: not replacing a ball moved under 9.4, or lifted by others than allowed (14.1b), costs the general penalty in total."""
    last, place = places
    moved = all(one.citation.startswith(_MOVED) for one in before)
    wrong_place = any(one.kind is PenaltyKind.GENERAL and one.citation.startswith("14.7a") for one in own)
    if not (moved and wrong_place) or deeds[place].voids_relief or deeds[place].pays_stroke_and_distance:
        return False
    nothing_between = not any(one.ruling.penalties for one in deeds[last + 1 : place])
    if deeds[place].fails_to_replace and nothing_between:
        return True
    if not deeds[place].may_fail_to_replace or _relief_between(deeds, places):
        return False
    return bool(case[moved_ball_not_replaced_before[place - 1]])


def _without_what_not_replacing_covers(
    deeds: Sequence[Deed], breaches: Sequence[tuple[Penalty, ...]]
) -> list[tuple[Penalty, ...]]:
    """Rule 1.3c(4) Exception, with breaches of something else between: moving a ball is no longer a breach by itself.

    It lasts until the ball is replaced, played, or relief is taken for it.
    """
    left = list(breaches)
    moved: int | None = None
    for place, (deed, own) in enumerate(zip(deeds, breaches, strict=True)):
        of_stroke = any(one.kind is PenaltyKind.GENERAL and one.citation.startswith("14.7a") for one in own)
        if moved is not None and deed.incident == "moved_ball_not_replaced" and of_stroke:
            left[moved] = ()
        if own and all(one.citation.startswith(_MOVED) for one in own):
            moved = place
        elif deed.is_replacing or deed.has_a_stroke or deed.follows_a_stroke or deed.ruling.relief:
            moved = None
    return left


def _relief_between(deeds: Sequence[Deed], places: tuple[int, int]) -> bool:
    """Whether relief that must be taken lay between: the wrong place was the relief's, not the moved ball's."""
    last, place = places
    return any(one.ruling.relief for one in deeds[last:place])


def for_relief(penalty: Penalty) -> bool:
    """Whether it is the cost of penalty relief, which is always added (Rule 1.3c(4), last sentence)."""
    return penalty.kind is PenaltyKind.STROKES and penalty.citation.startswith(("17.", "18.", "19."))


def _rank(penalties: tuple[Penalty, ...]) -> tuple[int, int]:
    return max(_LEVEL[one.kind] for one in penalties), sum(one.strokes for one in penalties)
