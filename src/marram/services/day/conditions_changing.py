"""The conditions of an event that records keep, changed: said that scores count net, a Local Rule adopted or left out."""

from collections.abc import Mapping
from datetime import date
from typing import Any

from marram.competition.conditions.reading import event_document, read_event_file
from marram.errors import InputError
from marram.records.entry import Entry
from marram.records.field_changes import set_conditions
from marram.records.starting_sheet import conditions
from marram.said import Said, said
from marram.services.cards.card_log import FIGURES
from marram.services.keeping import KEPT_APART
from marram.services.log.tap import Tap
from marram.services.matches.matches_kept import HOLE
from marram.services.results.scored import Scored

CHANGED = "conditions_changed"
BEFORE_PLAY = ("form_of_play", "sides", "holes")
"""What holds from the first score on: figures that were entered mean something else without it."""


def conditions_changing(
    scored: Scored, given: Mapping[str, Any], tap: Tap, days: Mapping[str, date] | None = None
) -> Entry:
    """Change conditions, and return the entry that tells what they were and are now.

    Args:
        scored: the competition.
        given: the conditions to change, by their keys in ``event.json``; ``None`` takes one out.
        tap: who does it, and when.
        days: the days of rounds to change, by the identifier of the round.

    Raises:
        InputError: the competition is closed, nothing would change, a key is kept elsewhere or holds since scores were entered, or
            the conditions would not hold together; every fault is listed and nothing was changed.
    """
    scored.refuse_closed()
    before = conditions(scored.records, scored.event)
    faults = [
        said("{key} is no condition that is changed here; it has its own page and commands.", key=key)
        for key in sorted(set(given) & KEPT_APART)
    ]
    after = {key: value for key, value in {**before, **given}.items() if value is not None}
    if not faults:
        kept = read_event_file({**after, **_dated(scored, days or {})})
        after = {key: value for key, value in event_document(kept).items() if key not in KEPT_APART}
    changed = [key for key in sorted({*before, *after}) if before.get(key) != after.get(key)]
    if _scored(scored):
        faults += [
            said("{key} is not changed any more: scores are entered already.", key=key)
            for key in changed
            if key in BEFORE_PLAY
        ]
    faults += _faults_of_days(scored, days or {})
    if not faults and not changed and not days:
        faults.append(said("The conditions are so already."))
    if faults:
        raise InputError(*faults)
    was = {key: before[key] for key in changed if key in before}
    is_now = {key: after[key] for key in changed if key in after}
    if days:
        was["rounds"], is_now["rounds"] = _rounds(scored, {}), _rounds(scored, days)
    set_conditions(scored.records, scored.event, after, days or {})
    content = {"was": was, "now": is_now}
    return Entry(CHANGED, tap.at, tap.ident, by=tap.by, content=content)


def _rounds(scored: Scored, days: Mapping[str, date]) -> list[dict[str, str]]:
    """Return the rounds as an event file lists them, on the days given; a round without a day is not among them."""
    dated = [(one.name, days.get(one.id, one.day)) for one in scored.competition.rounds]
    return [{"name": name, "played_on": day.isoformat()} for name, day in dated if day]


def _dated(scored: Scored, days: Mapping[str, date]) -> dict[str, Any]:
    """Return what an event file says of the rounds, so that what names a round by its number is held against them."""
    listed = _rounds(scored, days)
    if len(listed) < len(scored.competition.rounds):  # a round without a day is in no list
        return {"played_on": listed[0]["played_on"]} if listed else {}
    return {"round": listed[0]["name"], "played_on": listed[0]["played_on"], "rounds": listed}


def _faults_of_days(scored: Scored, days: Mapping[str, date]) -> list[Said]:
    """Return why rounds cannot be moved to these days."""
    faults: list[Said] = []
    log, before = scored.results.log, None
    for number, one in enumerate(scored.competition.rounds, start=1):
        day = days.get(one.id, one.day)
        if one.id in days and any(
            each.told.get("round") == one.id
            for kind in (FIGURES, HOLE)
            for each in log.entries(scored.event, kind=kind)
        ):
            faults.append(
                said("Round {number} keeps its day: scores of it are entered already.", number=number)
            )
        if day and before and day < before and days:
            faults.append(
                said(
                    "Round {number} would be played on {day}, before the round ahead of it; give a later day.",
                    number=number,
                    day=day.isoformat(),
                )
            )
        before = day or before
    return faults


def _scored(scored: Scored) -> bool:
    log = scored.results.log
    return any(log.entries(scored.event, kind=kind) for kind in (FIGURES, HOLE))
