"""A breach told twice: as what happened, and as the question who bears it. It counts once."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from marram.rules.facts.conditions import EACH_PLAYS_OWN_BALL, Sides
from marram.rules.penalty import Penalty, PenaltyKind, Who
from marram.rules.result import Result
from marram.rules.ruling import Ruling
from marram.rules.story.deeds import Deed

_QUESTION_WHO_BEARS = frozenset(
    {"four_ball_disqualified", "four_ball_penalty", "partner_acted_on_ball", "shared_caddie_in_breach"}
)
"""Incidents that ask on whom the penalty for a breach falls: a caddie shared, partners in Four-Ball."""
_SAYS_WHO_BEARS_IT = ("10.3a(2)", "23.9a", "23.8a", "23.5b")
"""The provisions of those, where a ruling comes without the name of its incident."""
_ONLY_OF_SIDES = {"four_ball_": Sides.FOUR_BALL, "foursomes_": Sides.FOURSOMES}
"""How the names of incidents begin that only happen where players play together so."""
_TOLD_OF_THE_BREACH = ("whom_else", "partner_also_disqualified", "other_partner_completed")

_OF_A_BREACH = (
    PenaltyKind.STROKES,
    PenaltyKind.GENERAL,
    PenaltyKind.HOLES_DEDUCTED,
    PenaltyKind.POINTS_DEDUCTED,
)


def says_who_bears(deed: Deed) -> bool:
    """Whether an act is the question on whom the penalty for a breach falls, not a breach of its own."""
    if deed.incident:
        return deed.incident in _QUESTION_WHO_BEARS
    return any(citation.startswith(_SAYS_WHO_BEARS_IT) for citation in deed.ruling.citations)


def told_of_the_breach(incident: str, facts: Mapping[str, Any]) -> dict[str, Any]:
    """Return what an act that asks who bears a penalty tells of the breach itself, which is not asked again there."""
    if incident not in _QUESTION_WHO_BEARS:
        return {}
    return {name: facts[name] for name in _TOLD_OF_THE_BREACH if name in facts}


def rests_on(part: Result, told: Mapping[str, Any]) -> bool:
    """Whether what was told of a breach was read in ruling on an act: it is the breach that was spoken of."""
    return any(one.fact in told for one in part.reasons)


def sides_of_acts(incidents: Sequence[str]) -> Sides | None:
    """Return who plays together where an act can only be of one such form: Four-Ball or Foursomes."""
    return next(
        (who for name in incidents for start, who in _ONLY_OF_SIDES.items() if name.startswith(start)), None
    )


def relief_borne(ruling: Ruling, who: Sides | None) -> Ruling:
    """Put the strokes of relief that was taken on the side, or on the partner who took it: its parts are already."""
    if who is not Sides.FOURSOMES and who not in EACH_PLAYS_OWN_BALL:
        return ruling
    bearer = Who.SIDE if who is Sides.FOURSOMES else Who.ONE_PARTNER
    borne = tuple(replace(one, who=bearer) if one.who is Who.PLAYER else one for one in ruling.penalties)
    return replace(ruling, penalties=borne)


def each_breach_once(
    counting: Sequence[tuple[Penalty, ...]], deeds: Sequence[Deed]
) -> list[tuple[Penalty, ...]]:
    """Return the penalties of each act, less those of a breach that another act tells again.

    Args:
        counting: the penalties of each act, in order.
        deeds: the acts.
    """
    left = list(counting)
    for place in range(1, len(left)):
        if says_who_bears(deeds[place]) and left[place]:
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
    both = any(one.who in (Who.EACH_PARTNER, Who.SIDE) for own in counting for one in own if _clubs(one))
    if not both:
        return list(counting)
    return [
        tuple(one for one in own if not (_clubs(one) and one.who in (Who.PLAYER, Who.ONE_PARTNER)))
        for own in counting
    ]


def _clubs(penalty: Penalty) -> bool:
    return penalty.citation.startswith("4.1b")
