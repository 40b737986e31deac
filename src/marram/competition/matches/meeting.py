"""Who meets whom in a group of a round of matches, and the strokes that they give each other."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import TypeVar

from marram.competition.conditions.event_file import Entrant, EventFile
from marram.competition.conditions.handicaps import Has, handicap_of, shares_ball, side_handicap_of
from marram.competition.results.card import Hole
from marram.handicap.strokes import strokes_by_hole
from marram.rules.facts.conditions import Sides

FOUR_BALL_ALLOWANCE = Decimal(90)
"""Per cent, where the conditions set none (Rules of Handicapping, Appendix C)."""

Who = TypeVar("Who")


def pairs(players: Sequence[Who], sides: Sides) -> list[tuple[tuple[Who, ...], tuple[Who, ...]]]:
    """Return who meets whom in a group.

    Two sides of it meet; of four players alone the first meets the second and the third the fourth; in Three-Ball each of
    three meets the others.
    """
    if sides is Sides.THREE_BALL and len(players) == 3:
        first, second, third = players
        return [((first,), (second,)), ((first,), (third,)), ((second,), (third,))]
    if sides in (Sides.FOURSOMES, Sides.FOUR_BALL):
        return [(tuple(players[:2]), tuple(players[2:]))] if len(players) == 4 else []
    return [((one,), (other,)) for one, other in zip(players[::2], players[1::2], strict=False)]


def in_a_match(file: EventFile, balls: Sequence[Sequence[Entrant]], holes: Sequence[Hole]) -> tuple[Has, ...]:
    """Return what each ball of a match receives, over all and on each hole: the lowest none, the others the difference.

    Args:
        file: the conditions, with the sides of this round.
        balls: for each ball of the match who plays it: one player, or partners who share it.
        holes: the holes that are played.
    """
    if file.sides is Sides.FOUR_BALL and file.allowance is None:
        file = replace(file, allowance=FOUR_BALL_ALLOWANCE)
    has = [_has(file, some, holes) for some in balls]
    playing = [one.playing for one in has if one.playing is not None]
    if len(playing) != len(has):
        missing = next(one for one in has if one.playing is None)
        return tuple(Has(None, (), missing.why_not) for _ in has)
    apart = [one - min(playing) for one in playing]
    why_not = next((one.why_not for one in has if one.why_not is not None), None)
    if why_not is not None:
        return tuple(Has(one, (), why_not) for one in apart)
    indexes = [one.stroke_index for one in holes if one.stroke_index is not None]
    return tuple(Has(one, strokes_by_hole(one, indexes)) for one in apart)


def _has(file: EventFile, players: Sequence[Entrant], holes: Sequence[Hole]) -> Has:
    if len(players) > 1 or shares_ball(file):
        return side_handicap_of(file, players, holes)
    return handicap_of(file, players[0], holes)
