"""Teams: the best scores of their members, of each round, of each hole, or of the whole event (Rule 24)."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby

from marram.competition.conditions.choices import TeamsBy
from marram.competition.conditions.event_file import Teams
from marram.competition.results.board import LeaderBoard
from marram.competition.results.side_score import RoundScore
from marram.errors import InputError, shown
from marram.said import Said, said


@dataclass(frozen=True, slots=True)
class TeamScore:
    """What a side of a team has in a round, or over the event: ``None`` where it has no score; whether it counts."""

    side: str
    figure: int | None
    counts: bool


@dataclass(frozen=True, slots=True)
class TeamHole:
    """A hole of a team whose best scores of each hole count: what it comes to, and whose scores those are."""

    number: int
    value: int | None
    sides: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class TeamRound:
    """What a team has in a round.

    Attributes:
        round: 1 for the first; 0 where scores over the whole event count.
        scores: of its sides, the best first.
        total: the sum of those that count; ``None`` where there are too few.
        holes: where scores count hole by hole, the holes.
    """

    round: int
    scores: tuple[TeamScore, ...]
    total: int | None
    holes: tuple[TeamHole, ...] = ()


@dataclass(frozen=True, slots=True)
class TeamPlace:
    """A team's place.

    Attributes:
        team: its name.
        place: 1 for the first; ``None`` where too few of its scores count, or no round is in.
        shared: whether another team has the same place.
        total: the sum of the scores that count.
        rounds: round by round, as far as they count.
        lacking: why it has no place; ``None`` where it has one.
    """

    team: str
    place: int | None
    shared: bool
    total: int | None
    rounds: tuple[TeamRound, ...]
    lacking: Said | None = None


def team_results(board: LeaderBoard, teams: Mapping[str, Sequence[str]], how: Teams) -> tuple[TeamPlace, ...]:
    """Return the teams in order; a tie is shared. While play goes on they stand by the rounds that are in.

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
    upto = min(rounds_in(board), how.rounds or len(board.terms.holes))
    if not upto:
        waiting = said("Teams stand once every card of a round is in.")
        return tuple(TeamPlace(team, None, False, None, (), waiting) for team in sorted(teams))
    found = {team: tuple(_rounds(board, sides, how, upto)) for team, sides in teams.items()}
    sums = {team: _total(rounds) for team, rounds in found.items()}
    sign = 1 if board.terms.scoring.lower_wins else -1
    ranked = sorted(
        ((total, team) for team, total in sums.items() if total is not None),
        key=lambda one: (sign * one[0], one[1]),
    )
    places: list[TeamPlace] = []
    number = 1
    for total, same in groupby(ranked, key=lambda one: one[0]):
        group = [team for _, team in same]
        places += [TeamPlace(team, number, len(group) > 1, total, found[team]) for team in group]
        number += len(group)
    without = sorted(team for team, total in sums.items() if total is None)
    places += [
        TeamPlace(team, None, False, None, found[team], _lacking(found[team], how)) for team in without
    ]
    return tuple(places)


def rounds_in(board: LeaderBoard) -> int:
    """Return how many rounds are in, from the first on: of everybody who is to play them there is a whole card."""
    count = 0
    for number in range(1, len(board.terms.holes) + 1):
        playing = [side for side in board.cards if plays_in(board, side, number)]
        if not playing or any(board.score(side).complete_rounds < number for side in playing):
            break
        count = number
    return count


def plays_in(board: LeaderBoard, side: str, round_: int) -> bool:
    """Return whether a side is to play a round: it is not out before or in it, and has not missed the cut."""
    cut, through = board.terms.cut, board.through
    missed = through is not None and side not in through and round_ > (cut.after_round if cut else 0)
    out = board.out.get(side)
    return not missed and (out is None or (out.round is not None and out.round > round_))


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


def _rounds(board: LeaderBoard, sides: Sequence[str], how: Teams, upto: int) -> Iterator[TeamRound]:
    if how.by is TeamsBy.EVENT:
        whole = {side: board.score(side).after(upto) for side in sides}
        figures = {
            side: one.total if side not in board.out and one.complete_rounds == upto else None
            for side, one in whole.items()
        }
        yield _best(0, figures, how.counting, board.terms.scoring.lower_wins)
        return
    for number in range(1, upto + 1):
        played = {
            side: next((one for one in board.score(side).rounds if one.round == number), None)
            for side in sides
            if not _out_in(board, side, number)
        }
        if how.by is TeamsBy.HOLE:
            yield _by_hole(number, played, how.counting, board.terms.scoring.lower_wins)
        else:
            figures = {
                side: one.total if (one := played.get(side)) is not None and one.complete else None
                for side in sides
            }
            yield _best(number, figures, how.counting, board.terms.scoring.lower_wins)


def _out_in(board: LeaderBoard, side: str, round_: int) -> bool:
    out = board.out.get(side)
    return out is not None and out.round in (None, round_)


def _best(round_: int, figures: Mapping[str, int | None], counting: int, lower: bool) -> TeamRound:
    known = sorted(
        ((figure, side) for side, figure in figures.items() if figure is not None),
        key=lambda one: (one[0] if lower else -one[0], one[1]),
    )
    scores = [TeamScore(side, figure, at < counting) for at, (figure, side) in enumerate(known)]
    scores += [TeamScore(side, None, False) for side, figure in sorted(figures.items()) if figure is None]
    total = sum(figure for figure, _ in known[:counting]) if len(known) >= counting else None
    return TeamRound(round_, tuple(scores), total)


def _by_hole(round_: int, played: Mapping[str, RoundScore | None], counting: int, lower: bool) -> TeamRound:
    there = {side: one for side, one in sorted(played.items()) if one is not None}
    holes = []
    for at, hole in enumerate(next(iter(there.values())).holes if there else ()):
        known = [(value, side) for side, one in there.items() if (value := one.values[at]) is not None]
        best = sorted(known, key=lambda one: (one[0] if lower else -one[0], one[1]))[:counting]
        value = sum(one for one, _ in best) if len(best) >= counting else None
        holes.append(TeamHole(hole.number, value, tuple(side for _, side in best)))
    values = [one.value for one in holes]
    total = None if not values or None in values else sum(one for one in values if one is not None)
    scores = tuple(
        TeamScore(side, one.total, any(side in hole.sides for hole in holes)) for side, one in there.items()
    )
    return TeamRound(round_, scores, total, tuple(holes))


def _total(rounds: Sequence[TeamRound]) -> int | None:
    totals = [one.total for one in rounds]
    return None if None in totals else sum(one for one in totals if one is not None)


def _lacking(rounds: Sequence[TeamRound], how: Teams) -> Said:
    short = next(one for one in rounds if one.total is None)
    if short.holes:
        hole = next(one for one in short.holes if one.value is None)
        return said("round {round}: too few scores on hole {hole}", round=short.round, hole=hole.number)
    there = sum(one.figure is not None for one in short.scores)
    if short.round:
        return said(
            "round {round}: {there} of {counting} scores",
            round=short.round,
            there=there,
            counting=how.counting,
        )
    return said("{there} of {counting} scores", there=there, counting=how.counting)
