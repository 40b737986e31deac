"""What a database says when it cannot, told as what to do about it."""

from sqlalchemy.exc import DBAPIError

from marram.errors import InputError, NotKept
from marram.said import Said, said

_SQLITE = (
    ("is full", "full"),
    ("is locked", "busy"),
    ("readonly", "read_only"),
    ("read-only", "read_only"),
    ("not a database", "foreign"),
    ("malformed", "damaged"),
    ("unable to open", "closed"),
    ("disk I/O error", "disk"),
)
_POSTGRESQL = {
    "53100": "full",
    "55P03": "busy",
    "40P01": "busy",
    "25006": "read_only",
    "42501": "read_only",
    "28P01": "refused",
    "28000": "refused",
    "3D000": "no_database",
}
"""SQLSTATE codes (PostgreSQL 15, Appendix A)."""

_PASSING = frozenset({"full", "busy", "read_only", "disk", "out_of_reach"})
"""What somebody can put right, so that the same can be given again."""


def fault_of(error: DBAPIError, name: str) -> InputError:
    """Return the fault that a database's error is, in words.

    Args:
        error: what the driver raised.
        name: what the records are called.
    """
    original = error.orig
    state = getattr(original, "sqlstate", None)
    words = str(original).strip()
    if state:
        kind = _POSTGRESQL.get(state, "")
    else:
        kind = next((kind for mark, kind in _SQLITE if mark in words), "")
        if not kind and type(original).__module__.startswith("psycopg") and state is None:
            kind = "out_of_reach"
    told = _told(kind, name, words.splitlines()[0] if words else type(original).__name__)
    return NotKept(told) if kind in _PASSING else InputError(told)


def _told(kind: str, name: str, words: str) -> Said:
    told = {
        "full": said(
            "The disk of {name} is full; nothing was saved. Make room, then do it again.", name=name
        ),
        "busy": said(
            "Somebody else has been writing to {name} for too long; nothing was saved. Try again.", name=name
        ),
        "read_only": said(
            "{name} may not be written by you; nothing was saved. Give write access to it and to its folder.",
            name=name,
        ),
        "foreign": said("{name} is no file of records. Check the name, or put back a backup.", name=name),
        "damaged": said(
            "{name} is damaged ({words}). Leave it as it is, and put back a backup with 'marram records restore'.",
            name=name,
            words=words,
        ),
        "closed": said("{name} cannot be opened. Check the path and the rights of its folder.", name=name),
        "disk": said(
            "The disk of {name} fails to read or write; nothing was saved. Copy what is there to another disk.",
            name=name,
        ),
        "refused": said(
            "The server of {name} refuses this user. Check the name and the password.", name=name
        ),
        "no_database": said("There is no database {name}. Make it on the server first.", name=name),
        "out_of_reach": said(
            "The server of {name} cannot be reached ({words}). Check that it runs and the address is right.",
            name=name,
            words=words,
        ),
    }
    return told.get(kind) or said(
        "{name} refused what was asked of it ({words}); nothing was saved.", name=name, words=words
    )
