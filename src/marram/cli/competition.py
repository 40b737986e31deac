"""What the commands of ``marram competition``, ``marram results`` and ``marram card`` do."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from marram.cli.exits import LEFT_OPEN, MORE_FACTS_NEEDED
from marram.cli.show import Line, print_json, show_lines
from marram.competition.conditions.choices import Score
from marram.competition.results.board import Place, Standing
from marram.competition.results.teams import TeamScore
from marram.competition.results.why import why
from marram.competition.results.why_team import why_team
from marram.errors import InputError
from marram.rules.engine.request import fact_named
from marram.rules.plain import as_plain
from marram.rules.result import NeedFacts
from marram.said import said
from marram.services.cards.cards import CardRuled, rule_card
from marram.services.cards.cards import told as card_told
from marram.services.results.competition_results import Result, read_results
from marram.services.results.competition_results import told as results_told
from marram.words.language import translate
from marram.words.spoken import spoken
from marram.words.texts import count_text, text


def show_results(cards: Path, as_json: bool) -> None:
    """Print every result."""
    _, found = read_results(cards)
    tell_results(found, as_json)


def tell_results(found: Sequence[Result], as_json: bool) -> None:
    """Print results."""
    if as_json:
        print_json({"marram": 1, "kind": "results", "results": list(results_told(tuple(found)))})
        return
    for one in found:
        show_lines(_board(one))


def name_of(result: Result) -> str:
    """Return what a result is called."""
    score = text(f"competition.score.{result.score.value}")
    if result.division is None:
        return score
    return text("competition.of_division", score=score, division=result.division.name)


def _board(result: Result) -> Iterator[Line]:
    yield "head", name_of(result)
    if not result.board.final:
        yield "quiet", text("competition.not_final")
    for one in result.board.places:
        yield "text", place_line(one)
    if result.teams:
        yield "head", text("competition.teams")
    for team in result.teams:
        shared = "=" if team.shared else ""
        figures = spoken(team.lacking) if team.lacking is not None else team.total
        yield "text", f"{team.place or '–'}{shared}  {team.team}  {figures}"


_SAID = {Standing.MISSED_CUT, Standing.NOT_STARTED}
"""How a side stands, where its figures do not show it."""


def _figures(total: int, against: int) -> str:
    """Return a total and what it is against par or the target; once where they are one, as against par (Rule 21.3)."""
    return f"{against:+d}" if total == against else f"{total} ({against:+d})"


def place_line(one: Place) -> str:
    """Return a place in one line."""
    place = f"{one.place}{'=' if one.shared else ''}" if one.place else "–"
    figures = _figures(one.score.total, one.score.against_level) if one.score.played else ""
    more = [
        text(f"competition.out.{one.out.kind.value}") if one.out else "",
        one.out.citation if one.out else "",
        count_text("competition.left", one.left) if one.left else "",
        text(f"competition.standing.{one.standing.value}") if one.standing in _SAID else "",
        text(f"competition.to_decide.{one.to_decide.value}") if one.to_decide else "",
    ]
    return "  ".join(filter(None, (place, one.side, figures, *more)))


def show_why(cards: Path, side: str, score: str | None, division: str | None, as_json: bool) -> None:
    """Print why somebody has a place."""
    _, found = read_results(cards)
    tell_why(found, side, score, division, as_json)


def tell_why(
    found: Sequence[Result], side: str, score: str | None, division: str | None, as_json: bool
) -> None:
    """Print why somebody, or a team, has a place in one of several results.

    Raises:
        InputError: there is no such result, or nobody of that name in it.
    """
    wanted = [
        one
        for one in found
        if (score is None or one.score.value == score)
        and (one.division.name if one.division else None) == division
    ]
    if not wanted:
        raise InputError(
            said(
                "There is no such result. There are: {known}.", known=", ".join(name_of(one) for one in found)
            )
        )
    teams = {one.team for one in wanted[0].teams}
    if side in teams and side not in wanted[0].board.scores:
        _show_why_team(wanted[0], side, as_json)
        return
    answer = why(wanted[0].board, side)
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "why",
                "side": side,
                "place": answer.place.place,
                "before": answer.before.side if answer.before else None,
                "words": spoken(answer.words),
                "steps": [
                    {
                        "by": step.comparison.by.value,
                        "words": spoken(step.words),
                        "mine": None if step.mine is None else str(step.mine),
                        "theirs": None if step.theirs is None else str(step.theirs),
                        "decided": step.differs,
                        "holes": as_plain(step.holes),
                    }
                    for step in answer.steps
                ],
            }
        )
        return
    lines: list[Line] = [("title", spoken(answer.words))]
    for step in answer.steps:
        lines.append(("item", spoken(step.words)))
        if step.holes:
            lines.append(("head", text("competition.why.holes", score=name_of(wanted[0]))))
        lines += [
            (
                "quiet",
                text(
                    "competition.why.hole",
                    round=hole.round,
                    hole=hole.number,
                    mine="?" if hole.mine is None else hole.mine,
                    theirs="?" if hole.theirs is None else hole.theirs,
                ),
            )
            for hole in step.holes
        ]
    show_lines(lines)


def _show_why_team(result: Result, team: str, as_json: bool) -> None:
    """Print why a team has its place: the scores of its sides, round by round, and which of them count."""
    answer = why_team(result.teams, team)
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "why_team",
                "team": team,
                "place": answer.place.place,
                "before": answer.before.team if answer.before else None,
                "words": spoken(answer.words),
                "rounds": as_plain(answer.place.rounds),
            }
        )
        return
    lines: list[Line] = [("title", spoken(answer.words))]
    for one in answer.place.rounds:
        called = text("draw.round", number=one.round) if one.round else text("results.why.event")
        lines.append(("head", called if one.total is None else f"{called}: {one.total}"))
        for hole in one.holes:
            value = "–" if hole.value is None else hole.value
            told = text(
                "competition.why.team.hole", hole=hole.number, value=value, sides=", ".join(hole.sides)
            )
            lines.append(("item", told))
        if not one.holes:
            lines += [("item" if each.counts else "quiet", _team_score(each)) for each in one.scores]
    show_lines(lines)


def _team_score(one: TeamScore) -> str:
    if one.figure is None:
        return f"{one.side}: {text('results.why.team.none')}"
    counts = text("results.why.team.counts" if one.counts else "results.why.team.not")
    return f"{one.side}: {one.figure}, {counts}"


def show_card(card: Path, as_json: bool) -> None:
    """Print what becomes of a card; exit with 3 where something is to be done or asked, 4 where the Committee judges."""
    ruled = rule_card(card)
    if as_json:
        print_json({"marram": 1, "kind": "card", **card_told(ruled)})
    else:
        show_lines(_card(ruled))
    found = ruled.outcome
    if found.to_do or found.questions:
        raise SystemExit(MORE_FACTS_NEEDED)
    if found.judgements:
        raise SystemExit(LEFT_OPEN)


def _card(ruled: CardRuled) -> Iterator[Line]:
    card, found = ruled.card, ruled.outcome
    state = "competition.card.settled" if found.settled else "competition.card.open"
    yield "title", text(state, side=card.side, round=card.round)
    for one in found.to_do:
        yield "item", spoken(one)
    for finding in found.questions:
        assert isinstance(finding.result, NeedFacts)
        fact = fact_named(finding.result.fact)
        yield (
            "item",
            text(
                "competition.card.asks",
                finding=finding.name,
                question=translate()(fact.question),
                fact=fact.name,
            ),
        )
    for finding in found.judgements:
        yield "item", text("competition.card.judged", finding=finding.name)
    for (_, hole), strokes in found.added.items():
        yield "text", text("competition.card.added", hole=hole, strokes=strokes)
    if found.out is not None:
        kind = text(f"competition.out.{found.out.kind.value}")
        key = "net" if found.out.score is Score.NET else "" if found.out.citation else "unsaid"
        name = f"competition.card.out.{key}" if key else "competition.card.out"
        yield "caution", text(name, kind=kind, citation=found.out.citation)


__all__ = ["name_of", "place_line", "show_card", "show_results", "show_why", "tell_results", "tell_why"]
