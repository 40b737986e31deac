"""The par of each hole from the tees of a player: women's tees may have a par of five on a hole that is a four for men.

Par is set for each hole and set of tees (Rules of Handicapping, Appendix F), so that a hole counts against the par of the tees
it is played from: in Stableford, Par/Bogey and Maximum Score, and where results are told against par.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from marram.competition.conditions.event_file import Entrant, EventFile, Rating
from marram.competition.conditions.handicaps import rating_for
from marram.competition.results.card import Hole
from marram.errors import shown
from marram.said import said

LEAST, MOST = 3, 6
"""The pars that a hole can have."""


def holes_from_tees(found: EventFile, players: Sequence[Entrant], holes: Sequence[Hole]) -> tuple[Hole, ...]:
    """Return the holes with the par of the tees that these play from; that of the map where it is not given, or not the same.

    Args:
        found: the conditions, with the ratings of the tees.
        players: a player, or the partners of a side.
        holes: the holes as the map has them.
    """
    each = {_from_tees(rating_for(found, one), holes) for one in players}
    return each.pop() if len(each) == 1 else tuple(holes)


def pars_apart(found: EventFile, player: Entrant, holes: Sequence[Hole]) -> tuple[int, ...]:
    """Return the pars that hold for a partner's ball, where they differ from those of the card; else nothing."""
    pars = tuple(one.par for one in _from_tees(rating_for(found, player), holes))
    return pars if pars != tuple(one.par for one in holes) else ()


def _from_tees(rating: Rating | None, holes: Sequence[Hole]) -> tuple[Hole, ...]:
    if rating is None or not rating.hole_pars:
        return tuple(holes)
    pars = dict(enumerate(rating.hole_pars, start=1))
    return tuple(
        one if pars.get(one.number, one.par) == one.par else replace(one, par=pars[one.number])
        for one in holes
    )


def contradictions_of_pars(found: EventFile) -> Iterator[str]:
    """Yield pars of holes that cannot be, or do not add up to the par of their tees."""
    for one in found.ratings:
        known = dict(enumerate(one.hole_pars, start=1))
        if not known:
            continue
        if wrong := [number for number, par in known.items() if not LEAST <= par <= MOST]:
            yield said(
                "ratings of {tees}, hole_pars: the par of hole {hole} is {par}; give one from {least} to {most}.",
                tees=shown(one.tees),
                hole=wrong[0],
                par=known[wrong[0]],
                least=LEAST,
                most=MOST,
            )
        played = found.holes or tuple(known)
        if missing := [number for number in played if number not in known]:
            yield said(
                "ratings of {tees}: hole_pars has no par of hole {hole}; give one for every hole, from the first on.",
                tees=shown(one.tees),
                hole=missing[0],
            )
        elif (total := sum(known[number] for number in played)) != one.par:
            yield said(
                "ratings of {tees}: hole_pars add up to {total}, and par is {par}; correct one of them.",
                tees=shown(one.tees),
                total=total,
                par=one.par,
            )
