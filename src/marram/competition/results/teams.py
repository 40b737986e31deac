"""Teams: the best scores of their members, of each round, of each hole, or of the whole event (Rule 24)."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby

from marram.competition.conditions.choices import TeamsBy
from marram.competition.conditions.event_file import Teams
from marram.competition.results.board import LeaderBoard
from marram.competition.results.side_score import RoundScore, SideScore
from marram.errors import InputError, shown
from marram.said import said


@dataclass(frozen=True, slots=True)
class TeamPlace:
    """A team's place.

    Attributes:
        team: its name.
        place: 1 for the first; ``None`` where too few of its scores count.
        shared: whether another team has the same place.
        total: the sum of the scores that count.
        counted: for each round the sides whose scores count; by hole, everybody who has a score.
    """

    team: str
    place: int | None
    shared: bool
    total: int | None
    counted: Mapping[int, tuple[str, ...]]


def team_results(board: LeaderBoard, teams: Mapping[str, Sequence[str]], how: Teams) -> tuple[TeamPlace, ...]:
    """Return the teams in order; a tie is shared.

    Who is disqualified, withdrawn or without a return in a round has no score in it; scores of earlier rounds stand
    (Clarification 24.2/1; where all scores count the Terms of the Competition say what follows, Rule 24.2).

    Args:
        board: the leader board of the sides.
        teams: for each team its sides.
        how: how many scores count, and over what.

    Raises:
        InputError: a side is of two teams, of no team's size, or does not compete.
    """
    _check(board, teams, how)
    sums = {team: _sum(board, sides, how) for team, sides in teams.items()}
    sign = 1 if board.terms.scoring.lower_wins else -1
    ranked = sorted(
        ((total, team) for team, (total, _) in sums.items() if total is not None),
        key=lambda one: (sign * one[0], one[1]),
    )
    found: list[TeamPlace] = []
    number = 1
    for total, same in groupby(ranked, key=lambda one: one[0]):
        group = [team for _, team in same]
        found += [TeamPlace(team, number, len(group) > 1, total, sums[team][1]) for team in group]
        number += len(group)
    without = sorted(team for team, (total, _) in sums.items() if total is None)
    return (*found, *(TeamPlace(team, None, False, None, sums[team][1]) for team in without))


def _check(board: LeaderBoard, teams: Mapping[str, Sequence[str]], how: Teams) -> None:
    faults: list[str] = []
    seen: dict[str, str] = {}
    for team, sides in teams.items():
        if len(sides) > how.size:
            faults.append(
                said(
                    "team {team} has {sides} sides, and a team is of {size}. Take some out.",
                    team=shown(team),
                    sides=len(sides),
                    size=how.size,
                )
            )
        for side in sides:
            if side in seen:
                faults.append(
                    said(
                        "{side} is in {team} and in {other}; take it out of one.",
                        side=shown(side),
                        team=shown(seen[side]),
                        other=shown(team),
                    )
                )
            seen[side] = team
            if side not in board.cards:
                faults.append(
                    said("{side} of team {team} does not compete here.", side=shown(side), team=shown(team))
                )
    if faults:
        raise InputError(*faults)


def _sum(
    board: LeaderBoard, sides: Sequence[str], how: Teams
) -> tuple[int | None, Mapping[int, tuple[str, ...]]]:
    lower = board.terms.scoring.lower_wins
    rounds = range(1, len(board.terms.holes) + 1)
    if how.by is TeamsBy.EVENT:
        whole = [board.score(side) for side in sides if side not in board.out]
        return _best_of_event([one for one in whole if one.complete_rounds == len(rounds)], how.counting)
    total = 0
    counted: dict[int, tuple[str, ...]] = {}
    for number in rounds:
        played = [
            (side, one)
            for side in sides
            if not _out_in(board, side, number)
            for one in board.score(side).rounds
            if one.round == number
        ]
        some = (
            _by_hole(played, how.counting, lower)
            if how.by is TeamsBy.HOLE
            else _best(played, how.counting, lower)
        )
        if some is None:
            return None, counted
        total += some[0]
        counted[number] = some[1]
    return total, counted


def _out_in(board: LeaderBoard, side: str, round_: int) -> bool:
    out = board.out.get(side)
    return out is not None and out.round in (None, round_)


def _best_of_event(
    scores: Sequence[SideScore], counting: int
) -> tuple[int | None, Mapping[int, tuple[str, ...]]]:
    best = sorted(scores, key=lambda one: (one.rank(True), one.side))[:counting]
    if len(best) < counting:
        return None, {}
    return sum(one.total for one in best), {0: tuple(one.side for one in best)}


def _best(
    played: Sequence[tuple[str, RoundScore]], counting: int, lower: bool
) -> tuple[int, tuple[str, ...]] | None:
    complete = [(one.total if lower else -one.total, side, one) for side, one in played if one.complete]
    best = sorted(complete, key=lambda one: one[:2])[:counting]
    if len(best) < counting:
        return None
    return sum(one.total for _, _, one in best), tuple(side for _, side, _ in best)


def _by_hole(
    played: Sequence[tuple[str, RoundScore]], counting: int, lower: bool
) -> tuple[int, tuple[str, ...]] | None:
    total = 0
    for values in zip(*(one.values for _, one in played), strict=False):
        known = sorted((one for one in values if one is not None), reverse=not lower)[:counting]
        if len(known) < counting:
            return None
        total += sum(known)
    return (total, tuple(side for side, _ in played)) if played else None
