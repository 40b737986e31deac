"""The result sheet, as it is hung out on a board: every result with its places, then how ties were decided."""

from collections.abc import Sequence
from dataclasses import replace

from marram.competition.results.board import Place, Standing
from marram.competition.results.teams import TeamPlace
from marram.paper.event.on_paper import OnPaper
from marram.paper.event.tie_words import Listed, ties_decided
from marram.paper.sheet import Cell, Column, Part, Sheet, Side, Table, Words
from marram.words.spoken import spoken
from marram.words.texts import count_text, text

ONE_COLUMN = 30
"""Rows that fit on one page in one column; longer rankings stand in two (own choice, by what A4 and Letter hold)."""

MOST_ROUNDS_IN_TWO = 4
"""Rounds whose totals fit beside a name in half the width of a page (own choice, likewise)."""


def result_sheet(event: OnPaper, results: Sequence[Listed], *, closed: bool = False) -> Sheet:
    """Return the sheet of results: first every ranking, as it is hung out, then how ties were decided.

    Args:
        event: the event, for its name and the clubs of its players.
        results: in the order in which they are printed.
        closed: whether the result is closed (Rule 20.2).
    """
    of = replace(event, round=_latest(event, results))
    parts: list[Part] = []
    for one in results:
        parts.append(_table(event, one))
        if not one.board.final and any(place.score.played for place in one.board.places):
            parts.append(Words("", (text("competition.not_final"),)))
        if one.teams:
            parts.append(_teams(one.teams))
    if closed:
        parts.append(Words("", (text("paper.results.closed"),)))
    parts += [found for one in results if (found := ties_decided(one, named=len(results) > 1))]
    return Sheet(
        text("paper.title.results"),
        event.name,
        of.about,
        of.day_words,
        tuple(parts),
        text("paper.foot.results"),
    )


def _latest(event: OnPaper, results: Sequence[Listed]) -> int:
    """Return the round that results reach: the latest with a hole played, else the round of the sheets."""
    played = [
        one.round
        for listed in results
        for place in listed.board.places
        for one in place.score.rounds
        if place.score.played
    ]
    return min(max(played, default=event.round), max(1, len(event.found.every_round())))


def _table(event: OnPaper, one: Listed) -> Table:
    places = one.board.places
    rounds = max((len(place.score.rounds) for place in places), default=0)
    once = one.board.terms.scoring.counts_against_target
    columns = (
        Column(text("paper.column.place"), 0, Side.RIGHT),
        Column(text("paper.column.player"), 1, names_row=True),
        *(
            Column(text("paper.column.round", number=number), 0, Side.RIGHT)
            for number in range(1, rounds + 1)
            if rounds > 1
        ),
        *(() if once else (Column(text("paper.column.total"), 0, Side.RIGHT),)),
        Column(text("paper.column.against"), 0, Side.RIGHT),
    )
    rows = tuple(_row(event, place, rounds if rounds > 1 else 0, once=once) for place in places)
    across = 2 if len(rows) > ONE_COLUMN and rounds <= MOST_ROUNDS_IN_TWO else 1
    return Table(one.name, columns, rows, text("paper.results.none"), across)


def _row(event: OnPaper, place: Place, rounds: int, *, once: bool) -> tuple[Cell, ...]:
    entrant = event.by_name.get(place.side)
    score, gone = place.score, place.out is not None
    number = "" if place.place is None else f"{place.place}{'=' if place.shared else ''}"
    by_round = {one.round: _signed(one.total) if once else str(one.total) for one in score.rounds}
    played = bool(score.played) and not gone
    partners = " / ".join(one.name for one in event.found.players if one.side == place.side)
    small = (entrant.club if entrant else "" if partners == place.side else partners, _state(place))
    return (
        Cell(number, strong=True),
        Cell(place.side, " · ".join(filter(None, small))),
        *(Cell("" if gone else by_round.get(one, "")) for one in range(1, rounds + 1)),
        *(() if once else (Cell(str(score.total) if played else "", strong=True),)),
        Cell(_signed(score.against_level) if played else "", strong=once),
    )


def _signed(figure: int) -> str:
    return f"{figure:+d}" if figure else "0"


def _state(place: Place) -> str:
    if place.out is not None:
        kind = text(f"competition.out.{place.out.kind.value}")
        return f"{kind} ({place.out.citation})" if place.out.citation else kind
    if place.standing in {Standing.MISSED_CUT, Standing.NOT_STARTED}:
        return text(f"competition.standing.{place.standing.value}")
    if place.to_decide:
        return text(f"competition.to_decide.{place.to_decide.value}")
    return count_text("competition.left", place.left) if place.left else ""


def _counted(team: TeamPlace) -> str:
    """Return what a team's total is made of: its scores that count, or its rounds; or why it has no place."""
    if team.lacking is not None:
        return spoken(team.lacking)
    if len(team.rounds) > 1:
        return " · ".join(str(one.total) for one in team.rounds)
    return ", ".join(
        f"{score.side} {score.figure}" for one in team.rounds for score in one.scores if score.counts
    )


def _teams(teams: Sequence[TeamPlace]) -> Table:
    columns = (
        Column(text("paper.column.place"), 0, Side.RIGHT),
        Column(text("paper.column.team"), 1, names_row=True),
        Column(text("paper.column.total"), 0, Side.RIGHT),
    )
    rows = tuple(
        (
            Cell(f"{one.place or ''}{'=' if one.shared else ''}", strong=True),
            Cell(one.team, _counted(one)),
            Cell("" if one.total is None else str(one.total), strong=True),
        )
        for one in teams
    )
    return Table(text("paper.results.teams"), columns, rows)
