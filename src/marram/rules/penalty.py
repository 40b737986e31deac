"""A penalty: its level, who gets it, and under which provision."""

from dataclasses import dataclass
from enum import Enum


class Who(Enum):
    """Who gets a penalty.

    Where players compete as sides (Rules 22 and 23), :mod:`marram.rules.book.who_bears` says which of these it is.
    """

    PLAYER = "player"
    OPPONENT = "opponent"
    OTHER_PLAYER = "other_player"
    ONE_PARTNER = "one_partner"
    """The partner in breach alone: the other's score is as it was (Rule 23.9a(1))."""
    OTHER_PARTNER = "other_partner"
    """The partner of the one in breach, where that one gets something else (Rules 1.3c(4) and 23.9a(2))."""
    EACH_PARTNER = "each_partner"
    """The partner in breach and the partner or partners besides (Rule 23.9a(2))."""
    SIDE = "side"
    OTHER_SIDE = "other_side"
    """The opposing side in a match, another side in stroke play, where a side plays one ball (Rule 22.2)."""
    EACH_PLAYER = "each_player"
    """Every player who took part in the breach."""
    EACH_SIDE = "each_side"
    """Every side of which a player took part in the breach."""


OWN = frozenset({Who.PLAYER, Who.ONE_PARTNER, Who.EACH_PARTNER, Who.SIDE, Who.EACH_PLAYER, Who.EACH_SIDE})
"""Those whose penalty is (also) one of the player who is ruled on."""


class PenaltyKind(Enum):
    """The level of a penalty (Rule 1.3c(2))."""

    STROKES = "strokes"
    GENERAL = "general_penalty"
    """Loss of hole in match play, two strokes otherwise."""
    LOSS_OF_HOLE = "loss_of_hole"
    DISQUALIFICATION = "disqualification"
    DISQUALIFICATION_FOR_HOLE = "disqualification_for_hole"
    """Four-Ball: the partner has no score on the hole that can count for the side (Clarification 23.2a/1)."""
    HOLES_DEDUCTED = "holes_deducted"
    """Holes deducted from the match score (Rule 4.1b), or from the result in Par/Bogey until 2022."""
    POINTS_DEDUCTED = "points_deducted"
    """Points deducted from the total in Stableford (Rule 21.1c until 2022)."""


@dataclass(frozen=True, slots=True)
class Penalty:
    """One penalty: its level, to whom, under which provision."""

    kind: PenaltyKind
    citation: str
    who: Who = Who.PLAYER
    strokes: int = 0
    """Number of strokes for ``STROKES``; 2 for ``GENERAL`` (as it counts in stroke play); the number of holes
    or points where those are deducted; else 0."""


def strokes(count: int, citation: str, who: Who = Who.PLAYER) -> Penalty:
    """A penalty of ``count`` strokes, in every form of play."""
    return Penalty(PenaltyKind.STROKES, citation, who, count)


def general(citation: str, who: Who = Who.PLAYER) -> Penalty:
    """The general penalty: loss of hole in match play, two strokes otherwise (Rule 1.3c(2))."""
    return Penalty(PenaltyKind.GENERAL, citation, who, 2)


def disqualified(citation: str, who: Who = Who.PLAYER) -> Penalty:
    """Disqualification."""
    return Penalty(PenaltyKind.DISQUALIFICATION, citation, who)


def loss_of_hole(citation: str, who: Who = Who.PLAYER) -> Penalty:
    """Loss of the hole, where the Rules name it as such (match play)."""
    return Penalty(PenaltyKind.LOSS_OF_HOLE, citation, who)


def holes_deducted(count: int, citation: str, who: Who = Who.PLAYER) -> Penalty:
    """``count`` holes deducted from the match score or the result of the round."""
    return Penalty(PenaltyKind.HOLES_DEDUCTED, citation, who, count)


def points_deducted(count: int, citation: str, who: Who = Who.PLAYER) -> Penalty:
    """``count`` points deducted from the total of the round."""
    return Penalty(PenaltyKind.POINTS_DEDUCTED, citation, who, count)
