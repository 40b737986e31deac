"""A match: the hole is lost once, by the first act that loses it, and what came after it on that hole costs nothing."""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet

from marram.rules.penalty import OWN, Penalty, PenaltyKind, Who

_LOSES_THE_HOLE = (PenaltyKind.GENERAL, PenaltyKind.LOSS_OF_HOLE)
_IN_THE_MATCH = OWN | {Who.OPPONENT, Who.OTHER_SIDE}
"""Those whose loss of the hole ends it for them; another player on the course plays another match."""
_BOTH_PARTNERS = (Who.EACH_PARTNER, Who.SIDE, Who.EACH_SIDE)
"""Those whose loss of the hole costs something still when one partner had lost it alone (Rule 23.9a)."""
_NEXT_HOLE = ("5.5b", "5.5c")
"""Practice between holes costs the next hole (Rule 5.5b)."""


def hole_lost_by(counting: Sequence[tuple[Penalty, ...]]) -> int | None:
    """Return the first act, from 0, whose penalty is the loss of the hole; ``None`` if none is."""
    for place, penalties in enumerate(counting):
        if any(one.kind in _LOSES_THE_HOLE and one.who in _IN_THE_MATCH for one in penalties):
            return place
    return None


def penalties_in_match(
    counting: Sequence[tuple[Penalty, ...]], lost_by: int, between: AbstractSet[int] = frozenset()
) -> tuple[Penalty, ...]:
    """Return what counts once a hole is lost: the loss, once; holes deducted and disqualification beside it.

    Strokes on a hole that is lost count nothing (Rules 1.3c(2) and 3.2a). The breaches at the places ``between``,
    from 0, count on the hole to come.
    """
    every = [(place, one) for place, penalties in enumerate(counting) for one in penalties]
    out = {one.who for _, one in every if one.kind is PenaltyKind.DISQUALIFICATION}
    kept: list[Penalty] = []
    seen: set[Who] = set()
    for place, one in every:
        if one.who in out:
            if one.kind is PenaltyKind.DISQUALIFICATION and one not in kept:
                kept.append(one)
        elif one.kind is PenaltyKind.HOLES_DEDUCTED:
            kept.append(one)
        elif one.kind in _LOSES_THE_HOLE:
            later_hole = place > lost_by and (place in between or one.citation.startswith(_NEXT_HOLE))
            partner_too = one.who in _BOTH_PARTNERS and seen == {Who.ONE_PARTNER}
            if (place == lost_by and one.who not in seen) or later_hole or partner_too:
                kept.append(one)
                seen.add(one.who)
    return tuple(kept)
