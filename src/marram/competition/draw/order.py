"""In which order players go into the starts, before any wish moves one."""

from collections.abc import Mapping, Sequence
from decimal import Decimal
from hashlib import sha256

from marram.competition.draw.wishes import Drawn


def by_seed(keys: Sequence[str], seed: str) -> tuple[str, ...]:
    """Return a random order that anybody can repeat: ascending SHA-256 of ``SEED``, a line feed and the key."""
    return tuple(sorted(keys, key=lambda key: sha256(f"{seed}\n{key}".encode()).hexdigest()))


def by_handicap(
    indexes: Mapping[str, Decimal | None], seed: str, *, lowest_first: bool = True
) -> tuple[str, ...]:
    """Return players by Handicap Index; those without one last, equal ones in the order of the seed."""
    drawn = by_seed(tuple(indexes), seed)
    sign = 1 if lowest_first else -1
    return tuple(sorted(drawn, key=lambda key: ((at := indexes[key]) is None, sign * (at or Decimal(0)))))


def by_score(scores: Mapping[str, int], seed: str, *, leaders_last: bool = True) -> tuple[str, ...]:
    """Return players by their score so far, as after a cut: the leaders last; equal ones in the order of the seed."""
    drawn = by_seed(tuple(scores), seed)
    return tuple(sorted(drawn, key=lambda key: -scores[key] if leaders_last else scores[key]))


def beside_partners(players: Sequence[Drawn]) -> tuple[Drawn, ...]:
    """Return players in their order, but partners beside each other, where the first of them stands."""
    first: dict[str, int] = {}
    places = [first.setdefault(one.side or f"alone {at}", at) for at, one in enumerate(players)]
    return tuple(one for _, one in sorted(zip(places, players, strict=True), key=lambda each: each[0]))
