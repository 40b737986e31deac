"""Who meets whom in a round of matches, by the starting sheet, and the strokes they give each other."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from marram.competition.conditions.choices import Score
from marram.competition.conditions.event_file import Entrant, EventFile
from marram.competition.conditions.handicaps import Has, handicap_of, shares_ball, side_handicap_of
from marram.competition.matches.match import Match
from marram.competition.results.card import Hole
from marram.handicap.strokes import strokes_by_hole
from marram.records.starting_sheet import GroupOfDay, round_conditions
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.services.scored import Scored

FOUR_BALL_ALLOWANCE = Decimal(90)
"""Per cent, where the conditions set none (Rules of Handicapping, Appendix C)."""

_Pair = tuple[tuple[str, ...], tuple[str, ...]]


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

    Two sides of a group meet; of four players alone the first meets the second and the third the fourth; in Three-Ball
    each of three meets the others.
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
        if sides is Sides.THREE_BALL and len(players) == 3:
            pairs: list[_Pair] = [
                ((a,), (b,))
                for a, b in ((players[0], players[1]), (players[0], players[2]), (players[1], players[2]))
            ]
        elif sides in (Sides.FOURSOMES, Sides.FOUR_BALL):
            pairs = [(tuple(players[:2]), tuple(players[2:]))] if len(players) == 4 else []
        else:
            pairs = [((a,), (b,)) for a, b in zip(players[::2], players[1::2], strict=False)]
        found += [_meeting(scored, file, round_, group, pair) for pair in pairs]
    return tuple(found)


def _meeting(
    scored: Scored,
    file: EventFile,
    round_: str,
    group: GroupOfDay,
    sides: _Pair,
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
    indexes = [one.stroke_index for one in holes if one.stroke_index is not None]
    if Score.NET not in file.scores or len(indexes) != len(holes) or len(holes) not in (9, 18):
        return [{} for _ in balls]
    if own_balls and file.allowance is None:
        file = replace(file, allowance=FOUR_BALL_ALLOWANCE)
    known = {one.name: one for one in file.players}
    has = [_has(file, [known[one] for one in some], holes) for some in balls]
    playing = [one.playing for one in has if one.playing is not None]
    if len(playing) != len(balls):
        return [{} for _ in balls]
    numbers = [one.number for one in holes]
    lowest = min(playing)
    return [dict(zip(numbers, strokes_by_hole(one - lowest, indexes), strict=True)) for one in playing]


def _has(file: EventFile, players: Sequence[Entrant], holes: Sequence[Hole]) -> Has:
    if len(players) > 1 or shares_ball(file):
        return side_handicap_of(file, players, holes)
    return handicap_of(file, players[0], holes)
