"""A leader board as a page shows it."""

from collections.abc import Sequence
from dataclasses import dataclass
from urllib.parse import urlencode

from marram.competition.conditions.choices import TieMethod
from marram.competition.results.board import Place, Standing
from marram.competition.results.teams import TeamPlace
from marram.services.results.closing import to_decide
from marram.services.results.competition_kept import CompetitionKept
from marram.services.results.competition_results import Result
from marram.words.spoken import spoken
from marram.words.texts import text


@dataclass(frozen=True)
class Row:
    """A player on the board.

    Attributes:
        place: as it is written: ``1``, ``T3``; empty for who has none.
        name: who.
        players: the players of a side that has a name of its own; else empty.
        club: the club; empty where it is not known.
        total: strokes or points so far; empty where nothing is played.
        against: what stands against par or target, on the holes played.
        rounds: what each round came to.
        left: how many holes are left.
        standing: how the player stands.
        words: why the player is out; else empty.
        why: the query of the page that tells why.
    """

    place: str
    name: str
    players: str
    club: str
    total: str
    against: str
    rounds: tuple[str, ...]
    left: int
    standing: Standing
    words: str
    why: str


@dataclass(frozen=True)
class TeamRow:
    """A team on the board: its place as it is written, its name and total, why it has no place, the query that asks why."""

    place: str
    team: str
    total: str
    words: str
    why: str


@dataclass(frozen=True)
class Shown:
    """A board as a page shows it.

    Attributes:
        result: the result.
        rows: the players in order.
        final: whether everybody who is in has played everything.
        to_decide: those whose tie is still to be decided, by how.
        teams: the teams in order.
    """

    result: Result
    rows: tuple[Row, ...]
    final: bool
    to_decide: Sequence[tuple[TieMethod, tuple[str, ...]]]
    teams: tuple[TeamRow, ...] = ()

    @property
    def once(self) -> bool:
        """Whether the total is what stands against the target, so that one column tells both."""
        return self.result.board.terms.scoring.counts_against_target


def shown(competition: CompetitionKept, result: Result) -> Shown:
    """Return a board as a page shows it."""
    places = result.board.places
    rounds = len(competition.rounds)
    return Shown(
        result,
        tuple(_row(competition, result, one, rounds) for one in places),
        result.board.final,
        to_decide(result.board),
        tuple(_team_row(result, one) for one in result.teams),
    )


def _team_row(result: Result, one: TeamPlace) -> TeamRow:
    return TeamRow(
        placed(one.place, shared=one.shared),
        one.team,
        "" if one.total is None else str(one.total),
        "" if one.lacking is None else spoken(one.lacking),
        urlencode({"team": one.team, **address_of(result)}),
    )


def placed(place: int | None, *, shared: bool) -> str:
    """Return a place as it is written: ``1``, ``T3``; empty where there is none."""
    return "" if place is None else f"T{place}" if shared else str(place)


def _row(competition: CompetitionKept, result: Result, one: Place, rounds: int) -> Row:
    score, once = one.score, result.board.terms.scoring.counts_against_target
    by_number = {each.round: each for each in score.rounds}
    query = {"side": competition.people.get(one.side, ""), **address_of(result)}
    return Row(
        placed(one.place, shared=one.shared),
        one.side,
        competition.players_named.get(one.side, ""),
        competition.clubs.get(one.side, ""),
        str(score.total) if score.played else "",
        against(score.against_level) if score.played else "",
        tuple(
            (against if once else str)(by_number[number].total)
            if number in by_number and by_number[number].played
            else ""
            for number in range(1, rounds + 1)
        ),
        one.left,
        one.standing,
        "" if one.out is None else out_words(one),
        urlencode(query),
    )


def out_words(one: Place) -> str:
    """Return why somebody is out."""
    assert one.out is not None
    words = text(f"cards.out.{one.out.kind.value}")
    return f"{words} ({text('shell.rule', citation=one.out.citation)})" if one.out.citation else words


def address_of(result: Result) -> dict[str, str]:
    """Return how an address names a result."""
    return {"score": result.score.value, **({"division": result.division.name} if result.division else {})}


def chosen(results: Sequence[Result], score: str, division: str) -> Result | None:
    """Return the result that an address names; the first where it names none; ``None`` where there is no such."""
    if not score and not division:
        return next(iter(results), None)
    wanted = [
        one
        for one in results
        if (one.division.name if one.division else "") == division and score in ("", one.score.value)
    ]
    return next(iter(wanted), None)


def against(value: int) -> str:
    """Return a score against par or target as it is written: ``+3``, ``-2``, and ``0`` as the language says it."""
    return text("results.level") if value == 0 else f"{value:+d}".replace("-", "−")
