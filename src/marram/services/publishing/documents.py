"""What a published list says, as plain data: names and clubs of players, and nothing else that is personal."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from marram.competition.results.board import Place
from marram.competition.results.teams import TeamPlace
from marram.errors import InputError
from marram.records.database import Records
from marram.records.field import Details
from marram.records.starting_sheet import GroupOfDay, groups, round_conditions, time_zone
from marram.said import said
from marram.services.results.competition_kept import CompetitionKept
from marram.services.results.competition_results import Result

STARTING_TIMES, RESULTS, BALLOT, BRACKET = "starting_times", "results", "ballot", "bracket"
PUBLISHED = "list_published"
"""The kind of entries of the log that publishes a list."""
WHO = "who"
"""The key under which the log keeps who somebody is; a published document has ``name`` and ``club`` in its place."""

Document = dict[str, Any]


@dataclass(frozen=True)
class Named:
    """The names that a document is filled in with.

    Attributes:
        names: the name of each player and side by identifier.
        clubs: the club of each, likewise.
    """

    names: Mapping[str, str]
    clubs: Mapping[str, str]


def named(competition: CompetitionKept, everybody: Mapping[str, Details]) -> Named:
    """Return the names as they now are.

    Args:
        competition: who competes, under the names that results use.
        everybody: of the records: who withdrew stands in lists that were published before.
    """
    clubs = {one.person: one.club or "" for one in competition.entries}
    of_sides = {side: competition.clubs[label] for side, label in competition.labels.items()}
    others = {who: one.name for who, one in everybody.items()}
    clubs = {who: one.club or "" for who, one in everybody.items()} | clubs
    sides = {
        side: f"{label} ({some})" if (some := competition.players_named.get(label)) else label
        for side, label in competition.labels.items()
    }
    return Named({**others, **competition.players, **sides}, {**clubs, **of_sides})


def starting_times(
    records: Records, event: str, name: str, competition: CompetitionKept, number: int
) -> Document:
    """Return the starting times of a round, by identifier.

    Raises:
        InputError: there is no such round, or no group of it has a starting time.
    """
    if not 1 <= number <= len(competition.rounds):
        raise InputError(
            said(
                "There is no round {round}; give one from 1 to {last}.",
                round=number,
                last=len(competition.rounds),
            )
        )
    this = competition.rounds[number - 1]
    started = [one for one in groups(records, this.id) if one.starts_at is not None]
    if not started:
        raise InputError(said("No group has a starting time in this round. Draw it first."))
    minutes = round_conditions(records, event).get(this.id, {}).get("minutes_of_play")
    minutes = minutes or competition.file.minutes_of_play
    return {
        "marram": 1,
        "kind": STARTING_TIMES,
        "event": name,
        "round": number,
        "round_name": this.name,
        "day": None if this.day is None else this.day.isoformat(),
        "time_zone": time_zone(records, event),
        **({"minutes_of_play": minutes} if minutes else {}),
        "groups": [_group(one) for one in started],
    }


def results(name: str, competition: CompetitionKept, found: Sequence[Result], *, closed: bool) -> Document:
    """Return results as they stand, by identifier."""
    return {
        "marram": 1,
        "kind": RESULTS,
        "event": name,
        "closed": closed,
        "results": [
            {
                "score": one.score.value,
                "division": None if one.division is None else one.division.name,
                "final": one.board.final,
                "places": [_place(each, competition.people[each.side]) for each in one.board.places],
                **({"teams": [_team(each) for each in one.teams]} if one.teams else {}),
            }
            for one in found
        ],
    }


def filled(document: Any, known: Named) -> Any:
    """Return a document with names and clubs in the place of identifiers."""
    if isinstance(document, Mapping):
        plain = {key: filled(value, known) for key, value in document.items() if key != WHO}
        who = document.get(WHO)
        if who is not None:
            plain |= {"name": known.names.get(who, ""), "club": known.clubs.get(who, "")}
        return plain
    if isinstance(document, list | tuple):
        return [filled(one, known) for one in document]
    return document


def _group(one: GroupOfDay) -> Document:
    assert one.starts_at is not None
    return {
        "number": one.number,
        "time": one.starts_at.isoformat("minutes"),
        "tee": one.tee,
        "players": [{WHO: player.id} for player in one.players],
    }


def _team(one: TeamPlace) -> Document:
    return {
        "team": one.team,
        "place": one.place,
        "shared": one.shared,
        "rounds": [{"round": each.round, "total": each.total} for each in one.rounds if each.round],
        "total": one.total,
    }


def _place(one: Place, who: str) -> Document:
    played = bool(one.score.played) and one.out is None
    return {
        WHO: who,
        "place": one.place,
        "shared": one.shared,
        "rounds": []
        if one.out
        else [{"round": each.round, "total": each.total} for each in one.score.rounds],
        "total": one.score.total if played else None,
        "against_level": one.score.against_level if played else None,
        "standing": one.standing.value,
        "left": one.left,
        "out": None if one.out is None else one.out.kind.value,
        "rule": one.out.citation or None if one.out else None,
    }
