"""``marram event``: matches and brackets of an event that records keep, hole by hole, with the same checks as at the desk."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from marram.cli.event_here import Here, clock, event_here, list_lines, named
from marram.cli.event_options import Where
from marram.cli.show import Line, print_json, show_lines
from marram.errors import InputError, shown
from marram.said import said
from marram.services.cards.figures_typed import read_score
from marram.services.kinds.brackets import Plan, ResultHow
from marram.services.kinds.matches import EndHow, HoleHow, Side
from marram.services.matches.bracket_kept import BracketNow, bracket_now
from marram.services.matches.bracket_making import (
    Numbering,
    ResultGiven,
    Starts,
    bracket_drawn,
    bracket_result,
    stage_started,
)
from marram.services.matches.bracket_words import points_words, stage_words
from marram.services.matches.match_entering import HoleEnded, end_match, enter_hole, take_back_of_match
from marram.services.matches.matches_kept import MatchNow, matches
from marram.words.spoken import spoken
from marram.words.texts import text


def list_matches(where: Where, as_json: bool) -> None:
    """Print every match of every round, as it stands."""
    with event_here(where) as here:
        known = enumerate(here.scored.competition.rounds, start=1)
        found = [(number, one) for number, each in known for one in matches(here.scored, each.id)]
    if as_json:
        told = [{"round": number, **_told(one)} for number, one in found]
        print_json({"marram": 1, "kind": "event matches", "matches": told})
        return
    lines: list[Line] = [("item", _line(number, one)) for number, one in found]
    list_lines(text("matches.title"), lines, text("matches.none"))


def _told(one: MatchNow) -> dict[str, object]:
    state = one.state
    return {
        "first": one.meeting.match.first,
        "second": one.meeting.match.second,
        "status": state.status.value,
        "leader": state.leader,
        "words": spoken(state.words),
        "final": state.final,
        "holes": [{"hole": each.hole, "winner": each.winner, "up": each.up} for each in state.holes],
        "doubts": [spoken(each) for each in one.doubts],
    }


def _line(number: int, one: MatchNow) -> str:
    leader = f"{one.state.leader} " if one.state.leader else ""
    match = f"{one.meeting.match.first} – {one.meeting.match.second}"
    doubts = "".join(f" ({spoken(each)})" for each in one.doubts)
    return f"{text('draw.round', number=number)}: {match}: {leader}{spoken(one.state.words)}{doubts}"


def _match(here: Here, number: int, first: str) -> MatchNow:
    """Return the match of a round that a side plays.

    Raises:
        InputError: it plays none.
    """
    members = set(here.scored.competition.members[here.side(first)])
    for one in matches(here.scored, here.round(number).id):
        if members & {*one.meeting.sides[0], *one.meeting.sides[1]}:
            return one
    raise InputError(said("{name} plays no match in this round.", name=shown(first)))


def _side(now: MatchNow, here: Here, name: str) -> Side:
    members = set(here.scored.competition.members[here.side(name)])
    if members & set(now.meeting.sides[0]):
        return Side.FIRST
    if members & set(now.meeting.sides[1]):
        return Side.SECOND
    raise InputError(said("{name} plays another match.", name=shown(name)))


def hole(where: Where, side: str, number: int, how: str, scores: str, place: int | None) -> None:
    """Enter how the next hole of a match ended, or put one right; print how the match then stands."""
    with event_here(where) as here:
        now = _match(here, number, side)
        if now.state.over and place is None:
            raise InputError(
                said("The match is over. To put a hole right, say which with --place; the first played is 1.")
            )
        at = place or now.next_place
        words = named(HoleHow, "scores" if scores else how, "HOW")
        given = [read_score(one) for one in scores.replace(",", " ").split()]
        winner = _side(now, here, side)
        before = now.holes[at][-1].id if at in now.holes else ""
        enter_hole(here.scored, now, HoleEnded(at, words, winner, given, before), here.tap)
        show_lines([("title", _line(number, _match(here, number, side)))])


def end(where: Where, side: str, number: int, how: str, citation: str) -> None:
    """Enter that a side concedes its match or is disqualified, or that the result is final."""
    with event_here(where) as here:
        now = _match(here, number, side)
        kind = named(EndHow, how, "HOW")
        whose = "" if kind is EndHow.FINAL else _side(now, here, side).value
        end_match(here.scored, now, kind, here.tap, side=whose, citation=citation)
        show_lines([("title", _line(number, _match(here, number, side)))])


def take_back(where: Where, side: str, number: int, entry: int, why: str) -> None:
    """Withdraw an entry of a match, by its number in the log, that was made by mistake."""
    with event_here(where) as here:
        now = _match(here, number, side)
        every = [*now.ended, *(one for some in now.holes.values() for one in some)]
        found = next((one.id for one in every if one.number == entry), "")
        take_back_of_match(here.scored, now, found, why, here.tap)


def show_bracket(where: Where, as_json: bool) -> None:
    """Print the bracket or round robin as it stands."""
    with event_here(where) as here:
        now = _bracket(here)
    if as_json:
        stages = [
            [
                {
                    "number": one.number,
                    "first": now.names.get(one.first or ""),
                    "second": now.names.get(one.second or ""),
                    "winner": now.names.get((one.decided and one.decided.winner) or ""),
                    "decided": None if one.decided is None else spoken(one.decided.words),
                }
                for one in stage
            ]
            for stage in now.stages
        ]
        print_json({"marram": 1, "kind": "event bracket", "plan": now.plan.value, "stages": stages})
        return
    show_lines(_bracket_lines(now))


def _bracket(here: Here) -> BracketNow:
    now = bracket_now(here.scored)
    if now is None:
        raise InputError(text("matches.bracket.none"))
    return now


def _bracket_lines(now: BracketNow) -> Iterator[Line]:
    yield "title", text(f"matches.bracket.{now.plan.value}")
    for number, stage in enumerate(now.stages, start=1):
        yield "head", f"{number}. {stage_words(now, number)}"
        for one in stage:
            sides = " – ".join(now.names.get(each or "", "…") for each in (one.first, one.second))
            decided = one.decided
            won = f": {now.names.get(decided.winner or '', '')} {spoken(decided.words)}" if decided else ""
            yield "item", f"{one.number}. {sides}{won}"
            yield from (("caution", spoken(each)) for each in one.doubts)
    for line in now.table:
        yield "text", f"{line.place}. {now.names[line.side]} {points_words(line.points)}"
    yield from (("caution", spoken(each)) for each in now.doubts)


def draw_bracket(where: Where, plan: str, seed: str, seeded: Sequence[str], *, by_handicap: bool) -> None:
    """Draw a bracket or a round robin."""
    with event_here(where) as here:
        here.scored.refuse_closed()
        by = Numbering(named(Plan, plan, "--plan"), seed, tuple(seeded), by_handicap)
        here.scored.add(bracket_drawn(here.scored, by, here.tap, bracket_now(here.scored)))
        show_lines(_bracket_lines(_bracket(here)))


@dataclass(frozen=True, slots=True)
class ResultTyped:
    """The result of a match of a bracket, as typed."""

    stage: int
    match: int
    how: str
    winner: str | None
    up: int
    left: int
    holes: int
    citation: str


def enter_result(where: Where, typed: ResultTyped) -> None:
    """Enter the result of a match whose holes are not entered, or that was not played."""
    with event_here(where) as here:
        here.scored.refuse_closed()
        now = _bracket(here)
        meeting = now.meeting(typed.stage, typed.match)
        winner = None
        if typed.winner is not None and meeting is not None:
            members = set(here.scored.competition.members[here.side(typed.winner)])
            of = {Side.FIRST: meeting.first, Side.SECOND: meeting.second}
            winner = next((side for side, who in of.items() if who in members), None)
            if winner is None:
                raise InputError(said("{name} plays another match.", name=shown(typed.winner)))
        seen = meeting.decided.entry if meeting is not None and meeting.decided is not None else None
        given = ResultGiven(
            typed.stage,
            typed.match,
            named(ResultHow, typed.how, "HOW"),
            winner,
            typed.up,
            typed.left,
            typed.holes,
            typed.citation,
            "" if seen is None else seen.id,
        )
        here.scored.add(bracket_result(now, given, here.tap))


def put_on_sheet(
    where: Where, stage: int, number: int, first: str, minutes: int, tees: Sequence[int]
) -> None:
    """Put the matches of a stage that are known and open on the starting sheet of a round."""
    with event_here(where) as here:
        here.scored.refuse_closed()
        by = Starts(stage, here.round(number).id, clock(first), minutes, tuple(tees) or (1,))
        here.scored.add(stage_started(here.at, _bracket(here), by, here.tap))
