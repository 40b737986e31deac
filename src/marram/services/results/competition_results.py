"""Results of a competition, once for desk, shell and Python: from conditions, holes and cards to the boards."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any, ClassVar, Literal

from marram.competition.conditions.choices import Score, Target, TieMethod
from marram.competition.conditions.event_file import WORDS, Division, Entrant, EventFile, Ties
from marram.competition.conditions.handicaps import competes_alone
from marram.competition.conditions.reading import read_event_file
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import Hole, Out, OutKind, RoundCard
from marram.competition.results.scoring import Scoring
from marram.competition.results.teams import TeamPlace, team_results
from marram.competition.results.terms import Terms
from marram.errors import InputError, shown
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.said import joined, said
from marram.schema import STRICT, give, read_into, read_json
from marram.services.cards.card_given import CardGiven, card_of


@dataclass(frozen=True)
class HoleGiven:
    """A hole, as a file gives it."""

    __pydantic_config__: ClassVar = STRICT

    number: int = field(metadata=give(said("the number of a hole")))
    par: int = field(metadata=give(said("its par")))
    stroke_index: int | None = field(default=None, metadata=give(said("its stroke index")))


@dataclass(frozen=True)
class OutGiven:
    """Who is out, as a file says it."""

    __pydantic_config__: ClassVar = STRICT

    side: str = field(metadata=give(WORDS))
    kind: OutKind = field(
        metadata=give(said("one of {known}", known=", ".join(one.value for one in OutKind)))
    )
    citation: str = field(default="", metadata=give(WORDS))
    score: Score | None = field(default=None, metadata=give(said("gross or net, or leave it out")))
    round: int | None = field(default=None, metadata=give(said("the number of a round")))


@dataclass(frozen=True)
class ResultsFile:
    """What a file of cards may hold."""

    __pydantic_config__: ClassVar = STRICT

    event: Mapping[str, Any] = field(metadata=give(said("an object as in event.json")))
    course: tuple[HoleGiven, ...] = field(
        metadata=give(said('a list of objects with "number", "par" and "stroke_index"'))
    )
    cards: tuple[CardGiven, ...] = field(metadata=give(said('a list of objects with "side" and "gross"')))
    out: tuple[OutGiven, ...] = field(
        default=(), metadata=give(said('a list of objects with "side" and "kind"'))
    )
    play_off: tuple[str, ...] = field(default=(), metadata=give(said("a list of names, the winner first")))
    lot: tuple[str, ...] = field(default=(), metadata=give(said("a list of names, the first drawn first")))
    made_cut: tuple[str, ...] = field(default=(), metadata=give(said("a list of names")))
    teams: Mapping[str, tuple[str, ...]] = field(
        default_factory=dict, metadata=give(said("an object of names of teams, each with a list of names"))
    )


@dataclass(frozen=True)
class Result:
    """One result of a competition.

    Attributes:
        score: gross or net.
        division: its division; ``None``: the whole field.
        board: the leader board.
        teams: the teams in order, of the whole field.
    """

    score: Score
    division: Division | None
    board: LeaderBoard
    teams: tuple[TeamPlace, ...] = ()


def terms_of(
    found: EventFile,
    score: Score,
    rounds: Sequence[int],
    decided: Mapping[TieMethod, tuple[str, ...]],
    made_cut: frozenset[str] | None = None,
) -> Terms:
    """Return what of the conditions decides about a result.

    Args:
        found: the conditions.
        score: gross or net.
        rounds: how many holes each round has.
        decided: the order that a play-off or a lot gave.
        made_cut: who plays on after the cut, where the Committee has said so.

    Raises:
        InputError: the form of play gives no such result.
    """
    counting = found.scores_counting or 1
    return Terms(
        Scoring(
            found.form_of_play or FormOfPlay.STROKE_PLAY,
            score,
            found.target or Target.PAR,
            found.maximum,
            counting if found.sides in (Sides.FOUR_BALL, Sides.BEST_OF_FOUR) else 1,
        ),
        tuple(rounds),
        found.cut,
        found.ties or Ties(),
        decided,
        made_cut,
    )


def results(
    found: EventFile,
    cards: Iterable[RoundCard],
    out: Iterable[Out] = (),
    *,
    rounds: Sequence[int],
    decided: Mapping[TieMethod, tuple[str, ...]] | None = None,
    made_cut: frozenset[str] | None = None,
    teams: Mapping[str, Sequence[str]] | None = None,
    played_in: int | None = None,
    partners: Mapping[str, Sequence[str]] | None = None,
) -> tuple[Result, ...]:
    """Return every result that the conditions ask for: gross and net, of the whole field and of each division.

    The cut is that of the whole field, by the score it names, or else the first one that counts.

    Args:
        found: the conditions.
        cards: the cards, in any order.
        out: who is out.
        rounds: how many holes each round has.
        decided: the order that a play-off or a lot gave, for the first result.
        made_cut: who plays on after the cut, where the Committee has said so.
        teams: for each team its sides.
        played_in: the year of play, for divisions by age.
        partners: for each side its players, where sides compete; a side is in a division where every partner is.

    Raises:
        InputError: a card cannot be used, or there is no such result; every fault is listed.
    """
    given, gone = list(cards), list(out)
    scores = found.scores or (Score.GROSS,)
    by = found.cut.score if found.cut and found.cut.score else scores[0]
    sides = [one.name for one in found.players] if competes_alone(found) else list(partners or ())
    first = LeaderBoard(terms_of(found, by, rounds, decided or {}, made_cut), given, sides=sides, out=gone)
    on = first.through
    answers: list[Result] = []
    for score in scores:
        terms = terms_of(found, score, rounds, decided or {}, on)
        if on is None:
            terms = replace(terms, cut=None)
        for division in (None, *found.divisions):
            mine = None if division is None else _of_division(found, division, played_in, partners)
            answers.append(
                Result(
                    score,
                    division,
                    board := LeaderBoard(
                        terms,
                        [one for one in given if mine is None or one.side in mine],
                        sides=[one for one in sides if mine is None or one in mine],
                        out=[one for one in gone if mine is None or one.side in mine],
                    ),
                    teams_on(board, found, teams, division),
                )
            )
    return tuple(answers)


def teams_on(
    board: LeaderBoard,
    found: EventFile,
    teams: Mapping[str, Sequence[str]] | None,
    division: Division | None,
) -> tuple[TeamPlace, ...]:
    """Return the teams in order, where there are some; they compete in the whole field."""
    return team_results(board, teams, found.teams) if teams and found.teams and division is None else ()


def _of_division(
    found: EventFile, division: Division, year: int | None, partners: Mapping[str, Sequence[str]] | None
) -> frozenset[str]:
    players = frozenset(one.name for one in found.players if in_division(one, division, year))
    if partners is None:
        return players
    return frozenset(side for side, some in partners.items() if players.issuperset(some))


def in_division(entrant: Entrant, division: Division, year: int | None) -> bool:
    """Return whether a player is in a division; what is not known of the player keeps out of one that asks for it."""
    index = entrant.handicap_index
    age = None if entrant.born is None or year is None else year - entrant.born
    return (
        _within(index, division.handicap_from, division.handicap_to)
        and _within(age, division.age_from, division.age_to)
        and division.sex in (None, entrant.sex)
        and (not division.clubs or entrant.club in division.clubs)
    )


def _within(value: Any, low: Any, high: Any) -> bool:
    if low is None and high is None:
        return True
    return value is not None and (low is None or value >= low) and (high is None or value <= high)


def read_results(source: Path | Mapping[str, Any]) -> tuple[EventFile, tuple[Result, ...]]:
    """Return the results of a file of cards, or of what it holds.

    Raises:
        InputError: it cannot be used; every fault is listed, with its place and what to give.
    """
    where = source.name if isinstance(source, Path) else said("the cards")
    document = read_json(source, where) if isinstance(source, Path) else source
    faults: list[str] = []
    file = read_into(ResultsFile, dict(document), where, faults)
    event: EventFile | None = None
    if isinstance(document.get("event"), Mapping):
        try:
            event = read_event_file(document["event"])
        except InputError as error:
            faults += error.faults
    if file is None or event is None or faults:
        raise InputError(*faults)
    holes = tuple(Hole(one.number, one.par, one.stroke_index) for one in file.course)
    cards = [card_of(event, one, holes, faults) for one in file.cards]
    names = {one.name for one in event.players}
    if competes_alone(event) and names:
        faults += [
            joined(": ", where, said("{side} is not among the players; correct the name.", side=shown(side)))
            for side in (*(one.side for one in file.cards), *(one.side for one in file.out))
            if side not in names
        ]
    if faults:
        raise InputError(*faults)
    count = max([1, len(event.every_round()), *(one.round for one in file.cards)])
    decided = {
        method: order
        for method, order in ((TieMethod.PLAY_OFF, file.play_off), (TieMethod.LOT, file.lot))
        if order
    }
    days = list(event.days())
    return event, results(
        event,
        [one for one in cards if one is not None],
        [Out(one.side, one.kind, one.citation, one.score, one.round) for one in file.out],
        rounds=[len(holes)] * count,
        decided=decided,
        made_cut=frozenset(file.made_cut) or None,
        teams=file.teams or _teams_of(event),
        played_in=days[0].year if days else None,
        partners=None if competes_alone(event) else _named_by(event, "side") or None,
    )


def _teams_of(event: EventFile) -> dict[str, list[str]]:
    """Return the sides of each team, as the players of the event name their teams."""
    by_team = _named_by(event, "team")
    if competes_alone(event):
        return by_team
    side = {one.name: one.side for one in event.players}
    return {
        team: list(dict.fromkeys(side[one] for one in some if side[one])) for team, some in by_team.items()
    }


def _named_by(event: EventFile, what: Literal["side", "team"]) -> dict[str, list[str]]:
    """Return the players of each side, or of each team, by its name."""
    found: dict[str, list[str]] = {}
    for one in event.players:
        if name := getattr(one, what):
            found.setdefault(name, []).append(one.name)
    return found


def told(results_: Sequence[Result]) -> Iterator[dict[str, Any]]:
    """Yield results as plain data, ready for JSON: nothing personal but names."""
    for one in results_:
        yield {
            "score": one.score.value,
            "division": one.division.name if one.division else None,
            "form_of_play": one.board.terms.scoring.form.value,
            "final": one.board.final,
            "places": [
                {
                    "place": place.place,
                    "shared": place.shared,
                    "side": place.side,
                    "total": place.score.total if place.score.played else None,
                    "against_level": place.score.against_level if place.score.played else None,
                    "rounds": [round_.total for round_ in place.score.rounds],
                    "left": place.left,
                    "standing": place.standing.value,
                    "out": place.out.kind.value if place.out else None,
                    "citation": place.out.citation if place.out else None,
                    "to_decide": place.to_decide.value if place.to_decide else None,
                }
                for place in one.board.places
            ],
            "teams": [
                {"place": team.place, "shared": team.shared, "team": team.team, "total": team.total}
                for team in one.teams
            ],
        }
