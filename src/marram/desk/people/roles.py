"""The roles at an event, and what each may know of people. Plain data: this is the table, and there is no other."""

CHIEF = "chief_referee"
REFEREE = "referee"
COMMITTEE = "committee"
SCORER = "scorer"
STARTER = "starter"
PLAYER = "player"
PUBLIC = "public"

ROLES = (CHIEF, REFEREE, COMMITTEE, SCORER, STARTER, PLAYER, PUBLIC)
"""Every role. ``public`` is whoever is not signed in."""

Roles = frozenset[str]

NOBODY: Roles = frozenset()
LEADING: Roles = frozenset({CHIEF, COMMITTEE})
"""They are responsible for the event: conditions, course, people."""
RULING: Roles = LEADING | {REFEREE}
"""They rule."""
OFFICIALS: Roles = RULING | {SCORER, STARTER}
SIGNED_IN: Roles = OFFICIALS | {PLAYER}
EVERYBODY: Roles = SIGNED_IN | {PUBLIC}

INVITES: dict[str, Roles] = {CHIEF: SIGNED_IN, COMMITTEE: SIGNED_IN - {CHIEF}}
"""Whom a role may invite into which roles."""

PERSONAL: dict[str, Roles] = {
    "player_name": OFFICIALS,
    "handicap_index": LEADING | {SCORER, STARTER},
    "official_name": OFFICIALS,
    "whereabouts": OFFICIALS,
    "note": RULING,
    "photograph": RULING,
    "device": LEADING,
}
"""What is personal, and who sees it. A field that is not here is seen by nobody."""


def sees(role: str, field: str) -> bool:
    """Whether a role sees what is personal."""
    return role in PERSONAL.get(field, NOBODY)


HEARS: dict[str, Roles] = {
    "ruling": RULING | {SCORER},
    "note": RULING,
    "erasure": LEADING,
    "card_figures": OFFICIALS,
    "card_returned": OFFICIALS,
    "card_settled": LEADING | {SCORER},
    "card_found_out": LEADING | {SCORER},
    "card_answered": LEADING | {SCORER},
    "card_ended": OFFICIALS,
    "match_hole": OFFICIALS,
    "match_ended": OFFICIALS,
    "bracket_drawn": OFFICIALS,
    "bracket_result": OFFICIALS,
    "tie_decided": OFFICIALS,
    "competition_closed": OFFICIALS,
    "competition_reopened": OFFICIALS,
    "list_published": OFFICIALS,
    "entries_taken": LEADING,
    "ballot_drawn": OFFICIALS,
    "entry_withdrawn": OFFICIALS,
    "conditions_changed": OFFICIALS,
    "entry_put_right": OFFICIALS,
    "draw_made": OFFICIALS,
    "officials_placed": OFFICIALS,
    "play_suspended": OFFICIALS,
    "play_resumed": OFFICIALS,
}
"""Who hears live of an entry of the log, by its kind. A kind that is not here is heard of by those who rule."""


def hears(role: str, kind: str) -> bool:
    """Whether a role hears live of entries of a kind."""
    return role in HEARS.get(kind, RULING)
