"""The sheets of an event that records keep, with its results and the report out of its log."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import tzinfo
from zoneinfo import ZoneInfo

from marram.competition.conditions.event_file import Entrant, Group, Official, RoundOnDay
from marram.competition.results.board import Standing
from marram.course.model import Course
from marram.paper.event.bracket_sheet import BracketOnPaper
from marram.paper.event.on_paper import OnPaper
from marram.records.database import Records
from marram.records.log import Log
from marram.records.starting_sheet import groups, round_conditions, rounds, time_zone
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.services.course_kept import course_kept
from marram.services.day.officials_placed import placed
from marram.services.keeping import kept_event
from marram.services.matches.bracket_kept import bracket_now
from marram.services.matches.bracket_words import bracket_on_paper
from marram.services.results.competition_kept import CompetitionKept, competition_kept
from marram.services.results.event_results import EventResults, ResultsNow
from marram.services.results.scored import Scored
from marram.services.sheets.event_papers import EventPapers
from marram.services.sheets.pace_lines import round_paces
from marram.services.sheets.report_lines import ruling_lines, stops


def map_of_round(records: Records, name: str | None, round_: int = 1) -> Course:
    """Return the map that records keep for the day of a round; today's where the event has no such round.

    Args:
        records: where the event and the course are kept.
        name: the name of the event; ``None``: the only one.
        round_: the number of the round, from 1.

    Raises:
        InputError: there is no such event, or no course or several.
    """
    known = rounds(records, kept_event(records, name)[0])
    map_on, _ = course_kept(records)
    return map_on(known[round_ - 1].day if 1 <= round_ <= len(known) else None)


def papers_of_records(records: Records, name: str | None, *, course: Course, round_: int = 1) -> EventPapers:
    """Return what the sheets of an event in records are made of.

    Args:
        records: where it is kept.
        name: the name of the event; ``None``: the only one.
        course: the map of the course it is played on.
        round_: the number of the round, from 1.

    Raises:
        InputError: there is no such event or round, or what is kept cannot be used.
    """
    id_, event = kept_event(records, name)
    kept = competition_kept(records, id_, course)
    differs = round_conditions(records, id_)
    found = replace(
        kept.file,
        name=event.name,
        round=kept.rounds[0].name,
        played_on=kept.rounds[0].day,
        rounds=tuple(
            RoundOnDay(
                one.name,
                one.day,
                sides=Sides(sides) if (sides := differs.get(one.id, {}).get("sides")) else None,
                minutes_of_play=differs.get(one.id, {}).get("minutes_of_play"),
            )
            for one in kept.rounds
            if one.day
        ),
        players=tuple(_with_sides(kept)),
        starting_times=(),
        officials=officials_kept(records, id_, kept.rounds[max(0, min(round_, len(kept.rounds)) - 1)].id),
    )
    drawn = tuple(_groups(records, kept, round_)) if 1 <= round_ <= len(kept.rounds) else ()
    log = Log(records)
    zone_name = time_zone(records, id_)
    zone: tzinfo | None = ZoneInfo(zone_name) if zone_name else None
    event_results = EventResults(log, id_)
    scored = Scored(records, id_, kept, event_results)
    now = scored.now() if not kept.why_no_cards() else None
    stopped = tuple(stops(log, id_, zone))
    return EventPapers(
        OnPaper(found, round_, kept.holes, course.name, drawn, _gone(now)),
        course,
        None if now is None else now.results,
        now is not None and now.closed is not None,
        tuple(ruling_lines(log, id_, zone, course)),
        stopped,
        round_paces(scored, found, zone, stopped),
        _bracket(scored),
    )


def _gone(now: ResultsNow | None) -> frozenset[str]:
    """Return who is out or missed the cut in every result of the whole field: they play no further round."""
    boards = [] if now is None else [one.board for one in now.results if one.division is None]
    done = (Standing.MISSED_CUT, Standing.OUT)
    each = [frozenset(one.side for one in board.places if one.standing in done) for board in boards]
    return frozenset.intersection(*each) if each else frozenset()


def _with_sides(kept: CompetitionKept) -> Iterator[Entrant]:
    """Yield who plays, each with the name of the side, where sides compete."""
    named = {
        kept.players[one.person]: kept.labels[one.side] for one in kept.entries if one.side and not kept.alone
    }
    for one in kept.file.players:
        yield replace(one, side=named.get(one.name, ""))


def _bracket(scored: Scored) -> BracketOnPaper | None:
    now = bracket_now(scored) if scored.competition.form is FormOfPlay.MATCH_PLAY else None
    return None if now is None else bracket_on_paper(now)


def officials_kept(records: Records, event: str, round_: str) -> tuple[Official, ...]:
    """Return who officiates in a round, as the event's file would say it, each where the round has them."""
    return tuple(one.official for one in placed(records, event, round_))


def _groups(records: Records, kept: CompetitionKept, round_: int) -> Iterable[Group]:
    for one in groups(records, kept.rounds[round_ - 1].id):
        if one.starts_at is not None:
            names = tuple(kept.players.get(each.id, each.name) for each in one.players)
            yield Group(one.starts_at.isoformat("minutes"), one.tee, names)
