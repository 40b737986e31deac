"""How long groups took, out of the starting sheet and the cards as they were returned."""

from collections.abc import Sequence
from datetime import datetime, timedelta, tzinfo

from marram.competition.conditions.event_file import EventFile
from marram.paper.event.event_report import Stop
from marram.paper.event.pace import GroupPace, RoundPace
from marram.records.starting_sheet import GroupOfDay
from marram.services.results.scored import Scored

MINUTE = timedelta(minutes=1)


def round_paces(
    scored: Scored, found: EventFile, zone: tzinfo | None, stops: Sequence[Stop]
) -> tuple[RoundPace, ...]:
    """Return how long the groups of every round took; nothing where no cards are kept, as in match play.

    Args:
        scored: the competition, with its cards.
        found: its conditions with every round, which say how many minutes a group is given.
        zone: of the clocks of the place; ``None``: those of this machine.
        stops: when play was stopped: that time is taken off.
    """
    competition = scored.competition
    if competition.why_no_cards():
        return ()
    return tuple(
        _round(scored, number, found.minutes_in(number), zone, stops)
        for number in range(1, len(competition.rounds) + 1)
    )


def _round(
    scored: Scored, number: int, given: int | None, zone: tzinfo | None, stops: Sequence[Stop]
) -> RoundPace:
    known = scored.competition.rounds[number - 1]
    groups = [one for one in scored.groups[known.id] if one.starts_at is not None]
    in_order = sorted(groups, key=lambda one: (one.starts_at, one.tee))
    last = _last_cards(scored, known.id, in_order)
    found = []
    for place, (group, returned) in enumerate(zip(in_order, last, strict=True), start=1):
        if returned is None or known.day is None or group.starts_at is None:
            continue
        start = datetime.combine(known.day, group.starts_at).replace(tzinfo=zone)
        start, end = (one.astimezone(zone) for one in (start, returned))
        minutes = round((end - start - _stopped(stops, start, end)) / MINUTE)
        if minutes > 0:
            found.append(GroupPace(place, group.tee, start, end, minutes))
    return RoundPace(known.name, tuple(found), len(in_order), given)


def _last_cards(scored: Scored, round_: str, groups: Sequence[GroupOfDay]) -> list[datetime | None]:
    """Return when the last card of each group came in; ``None`` where one is still out, or nobody returned any."""
    cards = scored.cards(round_)
    found: list[datetime | None] = []
    for group in groups:
        sides = {scored.competition.side_of.get(one.id, one.id) for one in group.players}
        kept = [cards[side].kept if side in cards else None for side in sides]
        playing = [one for one in kept if one is None or one.ended is None]
        times = [one.returned_at for one in playing if one is not None and one.returned_at is not None]
        found.append(max(times) if times and len(times) == len(playing) else None)
    return found


def _stopped(stops: Sequence[Stop], start: datetime, end: datetime) -> timedelta:
    """Return for how long play was stopped between two moments."""
    parts = (min(one.last or end, end) - max(one.first, start) for one in stops)
    return sum((one for one in parts if one > timedelta()), timedelta())
