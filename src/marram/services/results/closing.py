"""The close of a competition, and reopening a closed result as Rule 20.2 allows: the same checks for desk, shell and Python."""

from collections.abc import Iterator, Mapping
from typing import Any
from uuid import UUID, uuid5

from marram.competition.conditions.choices import TieMethod
from marram.competition.results.board import LeaderBoard
from marram.competition.results.closing import Change, Closed, Reopening, reopening
from marram.errors import InputError
from marram.records.entry import Entry, Part
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import FormOfPlay
from marram.said import Said, counted, said
from marram.services.log.tap import Tap
from marram.services.matches.bracket_kept import bracket_now, decided_without_holes
from marram.services.matches.matches_kept import matches
from marram.services.results.competition_results import Result
from marram.services.results.event_results import CLOSED, REOPENED
from marram.services.results.scored import Scored
from marram.words.texts import text


def waits(scored: Scored) -> list[str]:
    """Return what still stands between now and the close, in words; empty where nothing does."""
    if scored.competition.form is FormOfPlay.MATCH_PLAY:
        return list(_matches_wait(scored))
    if why_not := scored.competition.why_no_cards():
        return [why_not]
    return list(_waits(scored))


def _matches_wait(scored: Scored) -> Iterator[str]:
    found = [one for known in scored.competition.rounds for one in matches(scored, known.id)]
    bracket = bracket_now(scored)
    without_holes = decided_without_holes(bracket)
    if not found and bracket is None:
        yield said("No match is on the starting sheet.")
    for one in found:
        words = f"{one.meeting.match.first} – {one.meeting.match.second}"
        if not one.state.over and one.meeting.key not in without_holes:
            yield said("{match} is not over.", match=words)
        yield from (f"{words}: {doubt}" for doubt in one.doubts)
    if bracket is not None:
        undecided = sum(not (one.bye or one.decided) for stage in bracket.stages for one in stage)
        if undecided:
            yield counted(
                "A match of the bracket or round robin is not decided.",
                "{count} matches of the bracket or round robin are not decided.",
                undecided,
            )


def _waits(scored: Scored) -> Iterator[Said]:
    cards = [card for one in scored.competition.rounds for card in scored.cards(one.id).values()]
    if open_ := sorted({card.card.side for card in cards if card.something_open}):
        yield said("Cards with something open: {names}.", names=", ".join(open_))
    found = scored.now().results
    unfinished = [result_words(one) for one in found if not one.board.final and one.board.places]
    if unfinished:
        yield said(
            "Not everybody who is in has returned every card: {results}.", results=", ".join(unfinished)
        )
    for one in found:
        for method, sides in to_decide(one.board):
            yield said(
                "{result}: {names} are tied, and {how} decides. Enter how it went.",
                result=result_words(one),
                names=", ".join(sides),
                how=text(f"results.tie.{method.value}"),
            )


def to_decide(board: LeaderBoard) -> list[tuple[TieMethod, tuple[str, ...]]]:
    """Return those whose tie is still to be decided, by how."""
    ties: dict[tuple[TieMethod, int | None], list[str]] = {}
    for one in board.places:
        if one.to_decide is not None:
            ties.setdefault((one.to_decide, one.place), []).append(one.side)
    return [(method, tuple(sides)) for (method, _), sides in ties.items()]


def result_words(result: Result) -> str:
    """Return what a result is called."""
    words = text(f"results.score.{result.score.value}")
    return words if result.division is None else f"{result.division.name} · {words}"


def closing(scored: Scored, tap: Tap, note: str = "") -> Entry:
    """Return the entry that closes the competition: from then on its result is final (Rules 1.3c and 20.2e).

    Raises:
        InputError: it is closed already, or something still stands between; every fault is listed.
    """
    scored.refuse_closed()
    if open_ := waits(scored):
        raise InputError(*open_)
    return Entry(CLOSED, tap.at, tap.ident, by=tap.by, parts=_part("note", note))


def may_reopen(scored: Scored, change: Change, facts: Mapping[str, Any], tap: Tap) -> Reopening:
    """Return whether the closed result may be changed, as the Rules of the last day of play have it.

    Raises:
        InputError: the competition is open, or a fact cannot be used.
    """
    if scored.closed is None:
        raise InputError(said("The competition is open: any mistake is put right as it is."))
    days = [one.day for one in scored.competition.rounds if one.day]
    return reopening(
        change,
        facts,
        played_on=max(days, default=tap.at.date()),
        form=scored.competition.form,
        closed=Closed(tap.at),
    )


def reopened(scored: Scored, change: Change, facts: Mapping[str, Any], tap: Tap, why: str) -> Entry:
    """Return the entry that reopens the result; it corrects that of the close.

    Args:
        scored: the competition.
        change: what for.
        facts: what the Rules asked, by the names of facts.
        tap: who, and when.
        why: what is to be put right, in words.

    Raises:
        InputError: the competition is open, the Rules do not allow it or ask more, or nobody said why.
    """
    found = may_reopen(scored, change, facts, tap)
    closed = scored.closed
    assert closed is not None
    if not found.allowed:
        raise InputError(
            said("The Rules do not let this result be changed, or ask more before they do (Rule 20.2).")
        )
    if not why.strip():
        raise InputError(said("Say what is to be put right."))
    content = {"change": change.value, "facts": {name: token(name, value) for name, value in facts.items()}}
    return Entry(
        REOPENED,
        tap.at,
        str(uuid5(UUID(tap.ident), REOPENED)),
        by=tap.by,
        corrects=closed.id,
        content=content,
        parts=_part("reason", why),
    )


def token(name: str, value: object) -> str:
    """Return a fact's value as it is written on the command line."""
    fact = fact_named(name)
    return fact.token(fact.parse(value))


def _part(what: str, words: str) -> tuple[Part, ...]:
    return (Part(what, words.strip().encode()),) if words.strip() else ()
