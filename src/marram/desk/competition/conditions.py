"""The conditions at the desk: from the address of the page, else the cookie, else the event."""

from collections.abc import Mapping
from urllib.parse import parse_qsl, urlencode

from marram.services.cases.conditions import (
    KEYS,
    PLAYER_KEYS,
    Conditions,
    conditions_of_event,
    read_conditions,
)
from marram.services.cases.event import Event

COOKIE = "marram_conditions"


def conditions_of(address: Mapping[str, str], cookie: str, event: Event) -> Conditions:
    """Return the conditions: the address wins over the cookie, the cookie over the event.

    Raises:
        BadAnswer, DateNotCovered: one of them cannot be read.
    """
    kept = {key: value for key, value in parse_qsl(cookie) if key in KEYS and key not in PLAYER_KEYS}
    given = {key: value for key, value in address.items() if key in KEYS}
    if "edition" in given:  # which stands for a day
        kept.pop("on", None)
    return read_conditions(kept | given, conditions_of_event(event))


def cookie_of(conditions: Conditions, event: Event) -> str:
    """Return the value kept in the cookie: what differs from the event, so that its other conditions follow it; no player."""
    own = set(conditions_of_event(event).pairs())
    pairs = [one for one in conditions.pairs() if one[0] not in PLAYER_KEYS and one not in own]
    return urlencode(pairs, safe=",")
