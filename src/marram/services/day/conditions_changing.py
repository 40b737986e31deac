"""The conditions of an event that records keep, changed: said that scores count net, a Local Rule adopted or left out."""

from collections.abc import Mapping
from typing import Any

from marram.competition.conditions.reading import event_document, read_event_file
from marram.errors import InputError
from marram.records.entry import Entry
from marram.records.field_changes import set_conditions
from marram.records.starting_sheet import conditions
from marram.said import said
from marram.services.cards.card_log import FIGURES
from marram.services.keeping import KEPT_APART
from marram.services.log.tap import Tap
from marram.services.matches.matches_kept import HOLE
from marram.services.results.scored import Scored

CHANGED = "conditions_changed"
BEFORE_PLAY = ("form_of_play", "sides", "holes")
"""What holds from the first score on: figures that were entered mean something else without it."""


def conditions_changing(scored: Scored, given: Mapping[str, Any], tap: Tap) -> Entry:
    """Change conditions, and return the entry that tells what they were and are now.

    Args:
        scored: the competition.
        given: the conditions to change, by their keys in ``event.json``; ``None`` takes one out.
        tap: who does it, and when.

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
        day = next((one.day for one in scored.competition.rounds if one.day), None)
        kept = read_event_file({**after, **({"played_on": day.isoformat()} if day else {})})
        after = {key: value for key, value in event_document(kept).items() if key not in KEPT_APART}
    changed = [key for key in sorted({*before, *after}) if before.get(key) != after.get(key)]
    if _scored(scored):
        faults += [
            said("{key} is not changed any more: scores are entered already.", key=key)
            for key in changed
            if key in BEFORE_PLAY
        ]
    if not faults and not changed:
        faults.append(said("The conditions are so already."))
    if faults:
        raise InputError(*faults)
    set_conditions(scored.records, scored.event, after)
    content = {
        "was": {key: before[key] for key in changed if key in before},
        "now": {key: after[key] for key in changed if key in after},
    }
    return Entry(CHANGED, tap.at, tap.ident, by=tap.by, content=content)


def _scored(scored: Scored) -> bool:
    log = scored.results.log
    return any(log.entries(scored.event, kind=kind) for kind in (FIGURES, HOLE))
