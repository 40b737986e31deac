"""Who meets whom in a round of matches, by the starting sheet, and the strokes they give each other."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from marram.competition.conditions.choices import Score
from marram.competition.conditions.event_file import EventFile
from marram.competition.matches.match import Match
from marram.competition.matches.meeting import in_a_match, pairs
from marram.competition.results.card import Hole
from marram.records.starting_sheet import GroupOfDay, round_conditions
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.services.results.scored import Scored


@dataclass(frozen=True)
class Meeting:
    """Two sides that meet in a round.

    Attributes:
        round: the identifier of the round.
        group: the group of the starting sheet they play in.
        sides: the players of the first side and of the second, by identifier.
        teams: the team of each side; empty where there is none.
        match: the match, its sides by name.
        strokes: for each player, or for the side where it plays one ball, the strokes received on each hole by its number.
        own_balls: whether partners each play a ball.
    """

    round: str
    group: GroupOfDay
    sides: tuple[tuple[str, ...], tuple[str, ...]]
    teams: tuple[str, str]
    match: Match
    strokes: tuple[Mapping[int, int], ...]
    own_balls: bool

    @property
    def key(self) -> tuple[str, str]:
        """The first-named player of each side."""
        return self.sides[0][0], self.sides[1][0]


def meetings(scored: Scored, round_: str) -> tuple[Meeting, ...]:
    """Return who meets whom in a round, by its groups; nobody where another form than match play is played.

    Who meets whom in a group: :func:`marram.competition.matches.meeting.pairs`.
    """
    competition = scored.competition
    if competition.file.form_of_play not in (None, FormOfPlay.MATCH_PLAY):
        return ()
    differs = round_conditions(scored.records, scored.event).get(round_, {}).get("sides")
    sides = Sides(differs) if differs else competition.file.sides or Sides.INDIVIDUAL
    file = replace(competition.file, sides=sides)
    found: list[Meeting] = []
    for group in scored.groups[round_]:
        players = [one.id for one in group.players]
        found += [_meeting(scored, file, round_, group, pair) for pair in pairs(players, sides)]
    return tuple(found)


def _meeting(
    scored: Scored,
    file: EventFile,
    round_: str,
    group: GroupOfDay,
    sides: tuple[tuple[str, ...], tuple[str, ...]],
) -> Meeting:
    names = scored.competition.players
    first, second = (" / ".join(names[one] for one in side) for side in sides)
    own = file.sides is Sides.FOUR_BALL
    strokes = _strokes(
        file, [[names[one] for one in side] for side in sides], scored.competition.holes, own_balls=own
    )
    order = [one.number for one in scored.competition.holes]
    at = order.index(group.tee) if group.tee in order else 0
    match = Match(
        first,
        second,
        (*order[at:], *order[:at]),
        {} if own else dict(zip((first, second), strokes, strict=True)),
        file.match_may_end_tied,
    )
    team = {one.person: one.team or "" for one in scored.competition.entries}
    return Meeting(round_, group, sides, (team[sides[0][0]], team[sides[1][0]]), match, tuple(strokes), own)


def _strokes(
    file: EventFile, sides: Sequence[Sequence[str]], holes: Sequence[Hole], *, own_balls: bool
) -> list[Mapping[int, int]]:
    """Return the strokes received on each hole by each player, or by each side of one ball: the lowest receives none."""
    balls = [[one] for side in sides for one in side] if own_balls else [list(side) for side in sides]
    if Score.NET not in file.scores:
        return [{} for _ in balls]
    known = {one.name: one for one in file.players}
    numbers = [one.number for one in holes]
    received = in_a_match(file, [[known[one] for one in some] for some in balls], holes)
    return [dict(zip(numbers, one.strokes, strict=True)) if one.strokes else {} for one in received]
