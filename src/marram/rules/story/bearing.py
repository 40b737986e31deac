"""A breach told twice: as what happened, and as the question who bears it. It counts once."""

from collections.abc import Sequence

from marram.rules.ruling import Penalty, PenaltyKind, Who

_SAYS_WHO_BEARS_IT = ("10.3a(2)", "23.9a", "23.8a", "23.5b")
"""Provisions that say on whom the penalty for a breach falls: a caddie shared, partners in Four-Ball."""

_OF_A_BREACH = (PenaltyKind.STROKES, PenaltyKind.GENERAL)


def says_who_bears(citations: Sequence[str]) -> bool:
    """Whether a ruling says on whom the penalty for a breach falls."""
    return any(citation.startswith(_SAYS_WHO_BEARS_IT) for citation in citations)


def each_breach_once(
    counting: Sequence[tuple[Penalty, ...]], citations: Sequence[Sequence[str]]
) -> list[tuple[Penalty, ...]]:
    """Return the penalties of each act, less those of a breach that another act tells again.

    Args:
        counting: the penalties of each act, in order.
        citations: what each act's ruling rests on.
    """
    left = list(counting)
    for place in range(1, len(left)):
        if says_who_bears(citations[place]) and left[place]:
            before = _told_before(left, place)
            if before is not None:
                left[before] = tuple(one for one in left[before] if not _alike(one, left[place][0]))
    return _clubs_once(left)


def _told_before(counting: Sequence[tuple[Penalty, ...]], place: int) -> int | None:
    """Return the last act before that has a penalty of the same level, as the breach this act speaks of."""
    for before in reversed(range(place)):
        if any(_alike(one, counting[place][0]) for one in counting[before]):
            return before
    return None


def _alike(one: Penalty, other: Penalty) -> bool:
    return one.kind is other.kind and one.kind in _OF_A_BREACH and one.strokes == other.strokes


def _clubs_once(counting: Sequence[tuple[Penalty, ...]]) -> list[tuple[Penalty, ...]]:
    """Rule 4.1b: clubs told of one player and again of both partners are one breach, borne by both."""
    both = any(one.who in (Who.EACH_PLAYER, Who.SIDE) for own in counting for one in own if _clubs(one))
    if not both:
        return list(counting)
    return [tuple(one for one in own if not (_clubs(one) and one.who is Who.PLAYER)) for own in counting]


def _clubs(penalty: Penalty) -> bool:
    return penalty.citation.startswith("4.1b")
