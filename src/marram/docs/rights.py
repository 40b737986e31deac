"""``docs/rights.md``: who may use which route of the desk, and who sees what is personal, from the one table."""

from collections.abc import Mapping

from marram.desk.people.hours import HOURS
from marram.desk.people.rights import ROOMS
from marram.desk.people.roles import HEARS, INVITES, PERSONAL, ROLES, Roles

HEAD = """# Who may do what at the desk

Written from the one table that every request is checked against (`src/marram/desk/people/rights.py`, `roles.py`): what
does not stand here is refused. *public* is whoever is not signed in. A desk that serves its own machine alone, or that
keeps no records, signs nobody in: whoever reaches it may do everything.
"""


def rights_page() -> str:
    """Return the page."""
    parts = [HEAD]
    for room in ROOMS:
        parts.append(f"## {room.name}\n")
        if room.order:
            order = ", ".join(f"{hour} {room.order[hour]}" for hour in HOURS if hour in room.order)
            parts.append(f"Its first page is `{room.entry}`; its place in the navigation by hour: {order}.\n")
        parts.append(_table("route", room.rights))
    parts.append("## What is personal\n\nWho sees it; what is not in this list is seen by nobody.\n")
    parts.append(_table("what", PERSONAL))
    parts.append(
        "## What is told live\n\nEntries of the log by their kind; others are heard of by those who rule.\n"
    )
    parts.append(_table("kind", HEARS))
    parts.append("## Who invites whom\n\nThe role that invites, and into which roles.\n")
    parts.append(_table("role", INVITES))
    return "\n".join(parts)


def _table(what: str, rows: Mapping[str, Roles]) -> str:
    names = [role.replace("_", " ") for role in ROLES]
    lines = [f"| {what} | {' | '.join(names)} |", "|---" * (len(names) + 1) + "|"]
    for key, roles in rows.items():
        cells = " | ".join("yes" if role in roles else "–" for role in ROLES)
        lines.append(f"| `{key}` | {cells} |")
    return "\n".join(lines) + "\n"
