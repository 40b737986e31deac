"""Team matches: what singles and pairs come to for the teams."""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from marram.services.matches.matches_kept import MatchNow


@dataclass(frozen=True)
class TeamStanding:
    """A team of a team match: its points so far, and what its matches on the course would come to as they stand."""

    team: str
    points: Decimal
    as_it_stands: Decimal


def team_standings(found: Iterable[MatchNow]) -> tuple[TeamStanding, ...]:
    """Return what matches come to for teams, the leader first: a point for a win, a half for a tie."""
    sure: dict[str, Decimal] = {}
    leads: dict[str, Decimal] = {}
    for one in found:
        first, second = one.meeting.teams
        if not first or not second or first == second:
            continue
        points = one.points
        state = one.state
        if points is None:
            half = Decimal("0.5")
            now = (
                (half, half)
                if state.leader is None
                else (
                    Decimal(int(state.leader == one.meeting.match.first)),
                    Decimal(int(state.leader != one.meeting.match.first)),
                )
            )
        else:
            now = points
        for team, mine, stands in zip((first, second), points or (Decimal(0), Decimal(0)), now, strict=True):
            sure[team] = sure.get(team, Decimal(0)) + mine
            leads[team] = leads.get(team, Decimal(0)) + stands
    return tuple(
        TeamStanding(team, sure[team], leads[team])
        for team in sorted(sure, key=lambda one: (-sure[one], one))
    )
