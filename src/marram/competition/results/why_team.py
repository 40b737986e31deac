"""Why a team has its place: its total beside that of the team before, out of the scores that count."""

from collections.abc import Sequence
from dataclasses import dataclass

from marram.competition.results.teams import TeamPlace
from marram.errors import InputError, shown
from marram.said import Said, said


@dataclass(frozen=True, slots=True)
class WhyTeam:
    """Why a team has its place.

    Attributes:
        place: the team asked about, with its scores round by round.
        before: the one before it; ``None`` for the first, and for one without a place.
        words: the answer in words.
    """

    place: TeamPlace
    before: TeamPlace | None
    words: Said


def why_team(places: Sequence[TeamPlace], team: str) -> WhyTeam:
    """Return why a team has its place.

    Raises:
        InputError: there is no such team.
    """
    at = next((number for number, one in enumerate(places) if one.team == team), None)
    if at is None:
        raise InputError(said("There is no team {team}; give one of the teams.", team=shown(team)))
    mine = places[at]
    if mine.lacking is not None:
        return WhyTeam(mine, None, said("{side} has no place: {reason}.", side=team, reason=mine.lacking))
    if at == 0:
        return WhyTeam(mine, None, said("{side} leads: nobody is before.", side=team))
    before = places[at - 1]
    if before.place == mine.place:
        shares = said(
            "{side} shares place {place} with {other}.", side=team, place=mine.place, other=before.team
        )
        return WhyTeam(mine, before, shares)
    words = said(
        "{what}: {mine} against {theirs}", what=said("the total"), mine=mine.total, theirs=before.total
    )
    return WhyTeam(
        mine, before, said("{side} comes after {other}: {words}.", side=team, other=before.team, words=words)
    )


__all__ = ["WhyTeam", "why_team"]
