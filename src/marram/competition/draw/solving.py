"""Groups and starts that obey every wish, or the smallest set of wishes that clash.

A constraint solver (OR-Tools CP-SAT, one worker, a fixed seed, a limit in its own deterministic time) keeps as many
players as it can in the start that the order alone would give them. Where no draw obeys all wishes, wishes are left out
one by one as long as the others still clash: what remains clashes, and without any one of them it does not.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Any

from ortools.sat.python import cp_model

from marram.competition.draw.sizes import group_sizes
from marram.competition.draw.wishes import (
    Apart,
    ClubsApart,
    Drawn,
    NotBefore,
    Start,
    Together,
    Wish,
    Within,
    in_part,
)
from marram.errors import InputError
from marram.said import said

EFFORT = 60.0
"""How long the solver may look, in units of its deterministic time (about seconds, alike on every machine)."""


@dataclass(frozen=True, slots=True)
class Draw:
    """A draw: the keys of the players of each start, in the order of the starts.

    Attributes:
        groups: one for each start; empty where nobody starts.
        clash: where no draw obeys all wishes: wishes that cannot hold together, and could without any one of them.
        moved: how many players are not in the start that the order alone gives them.
    """

    groups: tuple[tuple[str, ...], ...]
    clash: tuple[Wish, ...] = ()
    moved: int = 0


def draw(players: Sequence[Drawn], starts: Sequence[Start], wishes: Sequence[Wish] = ()) -> Draw:
    """Return a draw.

    Args:
        players: in the order in which they go into the starts (:mod:`marram.competition.draw.order`).
        starts: in the order in which they are filled; groups differ by one player (or one side) at most, the smaller ones
            first.
        wishes: that hold.

    Raises:
        InputError: more players than places, a key twice, a wish of somebody who is not drawn; every fault at once.
    """
    sizes = group_sizes(players, starts, wishes)
    assigned = _solved(players, starts, sizes, wishes)
    if assigned is None:
        return Draw(tuple(() for _ in starts), _smallest(players, starts, sizes, wishes))
    groups = tuple(
        tuple(one.key for one, at in zip(players, assigned, strict=True) if at == start)
        for start in range(len(starts))
    )
    preferred = _preferred(sizes)
    return Draw(groups, (), sum(at != wanted for at, wanted in zip(assigned, preferred, strict=True)))


def _preferred(sizes: Sequence[int]) -> list[int]:
    return [start for start, size in enumerate(sizes) for _ in range(size)]


def _solved(
    players: Sequence[Drawn], starts: Sequence[Start], sizes: Sequence[int], wishes: Sequence[Wish]
) -> list[int] | None:
    """Return the start of each player; ``None`` where the wishes clash."""
    preferred = _preferred(sizes)
    if not wishes:
        return preferred
    model, place = _model(players, starts, sizes, wishes)
    for who, wanted in enumerate(preferred):
        for at in range(len(starts)):
            model.add_hint(place[who][at], at == wanted)
    model.maximize(sum(place[who][wanted] for who, wanted in enumerate(preferred)))
    solver = _solver()
    solver.parameters.relative_gap_limit = 0.02
    status = solver.solve(model)
    if status == cp_model.INFEASIBLE:
        return None
    if status not in {cp_model.OPTIMAL, cp_model.FEASIBLE}:
        raise InputError(
            said(
                "No draw was found in the time given, and no clash either. Wish for less, or give more starts."
            )
        )
    return [next(at for at in range(len(starts)) if solver.value(row[at])) for row in place]


def _smallest(
    players: Sequence[Drawn], starts: Sequence[Start], sizes: Sequence[int], wishes: Sequence[Wish]
) -> tuple[Wish, ...]:
    """Return wishes that clash, none of which can be left out."""
    kept = _core(players, starts, sizes, wishes)
    for wish in tuple(kept):
        fewer = [one for one in kept if one is not wish]
        if not _possible(players, starts, sizes, fewer):
            kept = fewer
    return tuple(kept)


def _core(
    players: Sequence[Drawn], starts: Sequence[Start], sizes: Sequence[int], wishes: Sequence[Wish]
) -> list[Wish]:
    """Return wishes that clash, as the solver names them: few, but some of them may be idle.

    What is wished of everybody (that clubs are apart) is left out where the others clash by themselves.
    """
    of_some = [one for one in wishes if not isinstance(one, ClubsApart)]
    if len(of_some) < len(wishes) and not _possible(players, starts, sizes, of_some):
        return _core(players, starts, sizes, of_some)
    wished = _wished_of(players, wishes)
    model, place = _model(wished, starts, sizes, (), filled=False)
    held = [model.new_bool_var("") for _ in wishes]
    for wish, literal in zip(wishes, held, strict=True):
        _wished(model, place, wished, starts, wish, literal=literal)
    model.add_assumptions(held)
    solver = _solver()
    if solver.solve(model) != cp_model.INFEASIBLE:
        return list(wishes)
    named = set(solver.sufficient_assumptions_for_infeasibility())
    found = [wish for wish, literal in zip(wishes, held, strict=True) if literal.index in named]
    return found if found and not _possible(players, starts, sizes, found) else list(wishes)


def _possible(
    players: Sequence[Drawn], starts: Sequence[Start], sizes: Sequence[int], wishes: Sequence[Wish]
) -> bool:
    wished = _wished_of(players, wishes)
    model, _place = _model(wished, starts, sizes, wishes, filled=False)
    return bool(_solver().solve(model) != cp_model.INFEASIBLE)


def _wished_of(players: Sequence[Drawn], wishes: Sequence[Wish]) -> list[Drawn]:
    """Return whom wishes say something of: everybody else goes wherever there is room, and there is as much as players."""
    named: set[str] = set()
    for wish in wishes:
        if isinstance(wish, ClubsApart):
            return list(players)
        named.update(wish.players if isinstance(wish, Together | Apart) else [getattr(wish, "player", "")])
    return [one for one in players if one.key in named]


def _solver() -> cp_model.CpSolver:
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = 1
    solver.parameters.max_deterministic_time = EFFORT
    return solver


def _model(
    players: Sequence[Drawn],
    starts: Sequence[Start],
    sizes: Sequence[int],
    wishes: Sequence[Wish],
    *,
    filled: bool = True,
) -> tuple[cp_model.CpModel, list[list[Any]]]:
    """Return who may start where, under some wishes; every start is filled, or else no fuller than it can be."""
    model = cp_model.CpModel()
    place = [[model.new_bool_var("") for _ in starts] for _ in players]
    for row in place:
        model.add_exactly_one(row)
    for at, size in enumerate(sizes):
        there = sum(row[at] for row in place)
        model.add(there == size if filled else there <= size)
    for wish in wishes:
        _wished(model, place, players, starts, wish)
    return model, place


def _wished(
    model: cp_model.CpModel,
    place: Sequence[Sequence[Any]],
    players: Sequence[Drawn],
    starts: Sequence[Start],
    wish: Wish,
    *,
    literal: Any = None,
) -> None:
    """Add a wish to a model; where there is a literal, the wish holds only if that does."""
    number = {one.key: who for who, one in enumerate(players)}

    def hold(relation: Any) -> None:
        constraint = model.add(relation)
        if literal is not None:
            constraint.only_enforce_if(literal)

    def apart(who: Sequence[int]) -> None:
        if len(who) > 1:
            for at in range(len(starts)):
                hold(sum(place[one][at] for one in who) <= 1)

    def only(who: int, allowed: Sequence[bool]) -> None:
        hold(sum(variable for variable, may in zip(place[who], allowed, strict=True) if may) == 1)

    if isinstance(wish, Together):
        first, *others = (number[key] for key in wish.players)
        for other in others:
            for at in range(len(starts)):
                hold(place[first][at] == place[other][at])
    elif isinstance(wish, Apart):
        apart([number[key] for key in wish.players])
    elif isinstance(wish, ClubsApart):
        for club in sorted({one.club for one in players if one.club}):
            apart(_one_of_each_side(players, club))
    elif isinstance(wish, Within):
        only(number[wish.player], [in_part(starts, at, wish.part) for at in range(len(starts))])
    elif isinstance(wish, NotBefore):
        only(number[wish.player], [one.time >= wish.time for one in starts])


def _one_of_each_side(players: Sequence[Drawn], club: str) -> list[int]:
    """Return who of a club is to be kept apart: of partners, who are together anyway, the first."""
    first: dict[str, int] = {}
    for who, one in enumerate(players):
        if one.club == club:
            first.setdefault(f"side {one.side}" if one.side else f"player {one.key}", who)
    return list(first.values())


def no_repeats(earlier: Sequence[Sequence[str]]) -> tuple[Apart, ...]:
    """Return the wish that nobody meets again whom they played with in earlier groups."""
    pairs = {tuple(sorted(pair)) for group in earlier for pair in combinations(group, 2)}
    return tuple(Apart(pair) for pair in sorted(pairs))
