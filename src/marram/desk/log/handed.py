"""Cases handed over, as every page of the official who got one says it, until they have looked at it."""

from dataclasses import dataclass

from fastapi import Request

from marram.desk.log.here import device_here, person_here
from marram.desk.log.kept import KeptHere
from marram.desk.people.who import may
from marram.errors import InputError
from marram.records.open_cases import Begun, open_cases
from marram.words.texts import count_text, text


@dataclass(frozen=True)
class Handed:
    """What is said of cases handed over.

    Attributes:
        to: the official who uses this device.
        words: who handed over what; empty where nothing is to be said.
    """

    to: str
    words: str


@dataclass(frozen=True)
class _HandedOver:
    case: Begun
    to: str
    by: str
    at: str
    headline: str


def handed_here(request: Request, looks_at: str = "") -> Handed | None:
    """Return what a page says of cases handed over; ``None`` for whoever has none in hand, or where nothing is kept.

    Args:
        request: the request it answers.
        looks_at: the case that the page is about, which is looked at by that.
    """
    kept: KeptHere | None = request.app.state.kept_here
    me = person_here(request)
    if kept is None or not me or not may(request, "GET /open-cases"):
        return None
    try:
        over = kept.records.until_written((handed_here, kept.event_id), lambda: _handed_over(kept))
        device = device_here(request)
        mine = [
            one
            for one in over
            if one.to == me
            and one.case.id != looks_at
            and not any(page.device == device and page.kept_at >= one.at for page in one.case.pages)
        ]
        return Handed(me, _words(kept, mine))
    except InputError:  # the records cannot be read: the page that says so still stands
        return None


def _handed_over(kept: KeptHere) -> tuple[_HandedOver, ...]:
    """Return the open cases that were handed over, each as it was last, the latest handed over first."""
    entries = kept.log.entries(kept.event_id, kind="handed_over")
    if not entries:
        return ()
    still = {one.id: one for one in open_cases(kept.records, kept.event_id)}
    last = {one.content["about"]: one for one in entries}  # by number: a later one counts
    return tuple(
        _HandedOver(
            still[about],
            one.content["to"],
            one.told.get("by", ""),
            one.recorded_at,
            one.content.get("headline", ""),
        )
        for about, one in reversed(last.items())
        if about in still
    )


def _words(kept: KeptHere, mine: list[_HandedOver]) -> str:
    if len(mine) != 1:
        return count_text("day.handed.cases", len(mine)) if mine else ""
    (one,) = mine
    who = kept.names().get(one.by, "") or text("day.handed.somebody")
    return (
        text("day.handed.about", name=who, title=one.headline)
        if one.headline
        else text("day.handed", name=who)
    )
