"""How many players each group has: as few groups as there is room for, of even size, and no side parted by it."""

from collections import Counter
from collections.abc import Sequence

from marram.competition.draw.wishes import Apart, Drawn, Start, Together, Wish
from marram.errors import InputError
from marram.said import said


def of_sides(players: Sequence[Drawn], places: int) -> int:
    """Return by how many players groups differ: the size of a side where all have partners alike and fit in; else one."""
    sizes = set(Counter(one.side for one in players if one.side).values())
    alike = all(one.side for one in players) and len(sizes) == 1
    step = max(sizes) if alike else 1
    return step if step <= places else 1


def groups_needed(players: Sequence[Drawn], places: int) -> int:
    """Return how many groups of so many places, one at least, the players fill."""
    step = of_sides(players, places)
    return -(-len(players) // (places // step * step))


def group_sizes(players: Sequence[Drawn], starts: Sequence[Start], wishes: Sequence[Wish]) -> list[int]:
    """Return how many players each start has: as few groups as have room, of even size, the smaller ones first.

    Where everybody has a partner, or as many, groups differ by a side: partners are never parted by the sizes.
    """
    keys = [one.key for one in players]
    faults = [
        said("{key} is drawn twice. Give each player a key of their own.", key=repr(key))
        for key in sorted({key for key in keys if keys.count(key) > 1})
    ]
    step = of_sides(players, max((one.places for one in starts), default=1))
    rooms = [one.places // step * step for one in starts]
    places = sum(rooms)
    if len(keys) > places:
        faults.append(
            said(
                "{players} players do not go into {places} places. Add starts.",
                players=len(keys),
                places=places,
            )
        )
    for wish in wishes:
        named = wish.players if isinstance(wish, Together | Apart) else [getattr(wish, "player", None)]
        faults.extend(
            said("{key} is named in a wish and not drawn: {wish}.", key=repr(key), wish=wish.said())
            for key in named
            if key is not None and key not in set(keys)
        )
    if faults:
        raise InputError(*faults)
    used = 0
    room = 0
    while room < len(keys):
        room += rooms[used]
        used += 1
    sizes = rooms[:used] + [0] * (len(starts) - used)
    spare = room - len(keys)
    while spare:
        widest = max(sizes)
        at = sizes.index(widest)
        sizes[at] -= step
        spare -= step
    return sizes
