"""Partners go into groups together, whatever their number; and a clash is the smallest, held against every draw there is."""

import random
from collections.abc import Iterator, Sequence
from datetime import time
from itertools import combinations

import pytest

from marram.competition.draw.order import beside_partners
from marram.competition.draw.sizes import groups_needed
from marram.competition.draw.solving import draw
from marram.competition.draw.wishes import (
    Apart,
    ClubsApart,
    Drawn,
    NotBefore,
    Part,
    Start,
    Together,
    Wish,
    Within,
    in_part,
    partners_together,
    starts,
)


def field(sides: int, size: int) -> tuple[Drawn, ...]:
    """Sides of so many players, all partners of one club, in an order that parts them."""
    players = [Drawn(f"p{at}", f"club {at % sides}", f"side {at % sides}") for at in range(sides * size)]
    return beside_partners(players)


@pytest.mark.parametrize(
    ("sides", "size", "places", "expected"),
    [
        (11, 2, 4, [2, 4, 4, 4, 4, 4]),  # an odd number of pairs: one of them goes alone
        (11, 2, 3, [2] * 11),  # no pair and a half
        (5, 3, 4, [3] * 5),
        (3, 4, 4, [4] * 3),
    ],
)
def test_partners_are_never_parted(sides: int, size: int, places: int, expected: list[int]) -> None:
    players = field(sides, size)
    slots = starts(time(8), groups_needed(players, places), minutes=10, places=places, tees=(1, 10))

    found = draw(players, slots, [*partners_together(players), ClubsApart()])

    assert not found.clash
    assert [len(one) for one in found.groups] == expected
    side = {one.key: one.side for one in players}
    assert all(
        sum(side[key] == one for key in group) in (0, size) for group in found.groups for one in side.values()
    )


def test_two_sides_of_one_club_are_kept_apart() -> None:
    """Partners of one club are together; two pairs of it are not. Four pairs of two clubs in two groups of four."""
    players = [Drawn(f"p{at}", f"club {at // 4}", f"side {at // 2}") for at in range(8)]
    slots = starts(time(8), 2, minutes=10, places=4)

    found = draw(players, slots, [*partners_together(players), ClubsApart()])

    club = {one.key: one.club for one in players}
    assert [sorted(club[key] for key in group) for group in found.groups] == [
        ["club 0"] * 2 + ["club 1"] * 2
    ] * 2


def test_where_one_plays_without_a_partner_groups_differ_by_a_player() -> None:
    players = [*field(2, 2), Drawn("alone")]

    assert groups_needed(players, 4) == 2


def test_a_clash_is_the_smallest_of_every_draw_there_is() -> None:
    """Seven players in groups of 2, 2 and 3: each of the 210 ways is tried. Where none obeys all wishes, none obeys those that
    are named, and one does without any of them. The wishes are invented from numbers that stand fixed."""
    clashes = 0
    for seed in range(40):
        chosen = random.Random(seed)
        players = [Drawn(f"p{at}", chosen.choice(["a", "b", "c", ""])) for at in range(7)]
        slots = starts(time(8), 3, minutes=10, tees=chosen.choice([(1,), (1, 10)]))
        wishes = list(dict.fromkeys(_wish(chosen) for _ in range(chosen.randint(2, 6))))

        found = draw(players, slots, wishes)

        every = list(_every_draw([one.key for one in players], (2, 2, 3)))
        assert any(_obeys(at, wishes, players, slots) for at in every) is not bool(found.clash)
        if found.clash:
            clashes += 1
            assert not any(_obeys(at, found.clash, players, slots) for at in every)
            for one in found.clash:
                others = [each for each in found.clash if each is not one]
                assert any(_obeys(at, others, players, slots) for at in every)
    assert clashes > 10


def _wish(chosen: random.Random) -> Wish:
    keys = [f"p{at}" for at in range(7)]
    kind = chosen.random()
    if kind < 0.35:
        return Together(tuple(chosen.sample(keys, 2)))
    if kind < 0.6:
        return Apart(tuple(chosen.sample(keys, chosen.choice([2, 3]))))
    if kind < 0.85:
        return Within(chosen.choice(keys), chosen.choice(list(Part)))
    if kind < 0.93:
        return NotBefore(chosen.choice(keys), time(8, chosen.choice([5, 10, 15])))
    return ClubsApart()


def _every_draw(keys: Sequence[str], sizes: Sequence[int]) -> Iterator[dict[str, int]]:
    """Yield the start of every player in every draw there is."""
    if not keys:
        yield {}
        return
    for at, size in enumerate(sizes):
        if size:
            left = [each - (number == at) for number, each in enumerate(sizes)]
            for rest in _every_draw(keys[1:], left):
                yield {keys[0]: at, **rest}


def _obeys(
    at: dict[str, int], wishes: Sequence[Wish], players: Sequence[Drawn], slots: Sequence[Start]
) -> bool:
    return all(_holds(at, wish, players, slots) for wish in wishes)


def _holds(at: dict[str, int], wish: Wish, players: Sequence[Drawn], slots: Sequence[Start]) -> bool:
    if isinstance(wish, Together):
        return len({at[key] for key in wish.players}) == 1
    if isinstance(wish, Apart):
        return len({at[key] for key in wish.players}) == len(wish.players)
    if isinstance(wish, Within):
        return in_part(slots, at[wish.player], wish.part)
    if isinstance(wish, NotBefore):
        return slots[at[wish.player]].time >= wish.time
    alike = [(one.key, two.key) for one, two in combinations(players, 2) if one.club and one.club == two.club]
    return all(at[one] != at[two] for one, two in alike)
