"""What changed in the starting times of a round after they were published: who starts at another time or tee, who is new, who is gone."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from marram.errors import InputError
from marram.records.log import Log
from marram.services.publishing.documents import PUBLISHED, STARTING_TIMES, WHO, Document, starting_times
from marram.services.results.scored import Scored


@dataclass(frozen=True, slots=True)
class StartChanged:
    """What changed for a player.

    Attributes:
        who: the player: by identifier, or by name where the lists hold names.
        was: the time and tee before; ``None``: the player is new.
        now: those from now on; ``None``: the player starts no more.
    """

    who: str
    was: tuple[str, int] | None
    now: tuple[str, int] | None


def starts_changed(before: Document, now: Document) -> tuple[StartChanged, ...]:
    """Return what changed between two lists of starting times of a round, in the order of the later one, who is gone last."""
    was, is_now = _starts(before), _starts(now)
    found = [StartChanged(who, was.get(who), start) for who, start in is_now.items() if was.get(who) != start]
    found += [StartChanged(who, start, None) for who, start in was.items() if who not in is_now]
    return tuple(found)


def changed_since_published(
    scored: Scored, log: Log, name: str, number: int
) -> tuple[StartChanged, ...] | None:
    """Return what changed in a round since its starting times were published last; ``None`` where they never were."""
    lists: list[Document] = [
        one.content["document"]
        for one in log.entries(scored.event, kind=PUBLISHED)
        if one.content["document"].get("kind") == STARTING_TIMES
        and one.content["document"].get("round") == number
    ]
    if not lists:
        return None
    try:
        now = starting_times(scored.records, scored.event, name, scored.competition, number)
    except InputError:  # no group starts any more
        now = {"groups": []}
    return starts_changed(lists[-1], now)


def _starts(document: Mapping[str, Any]) -> dict[str, tuple[str, int]]:
    return {
        str(one.get(WHO) or one.get("name", "")): (group["time"], group["tee"])
        for group in document["groups"]
        for one in group["players"]
    }
