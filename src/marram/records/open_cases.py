"""Cases begun and not recorded yet: kept at every page, found again on any device, and never overwritten by another one."""

from dataclasses import dataclass
from datetime import UTC, datetime

from sqlalchemy import ColumnElement, delete, insert, select, update

from marram.records.database import Records
from marram.records.entry import ident, instant
from marram.records.tables import LogEntry, OpenCase, OpenCasePage

LONGEST_ADDRESS = 8000
"""Letters of an address that are kept (own choice): a page with a longer one could not be opened again either."""


@dataclass(frozen=True, slots=True)
class Reached:
    """How far a case has come on one device.

    Attributes:
        device: the device.
        address: the page it stands at.
        title: what stands there, in words.
        kept_at: when, ISO 8601 in UTC.
    """

    device: str
    address: str
    title: str
    kept_at: str


@dataclass(frozen=True, slots=True)
class Begun:
    """A case that somebody began.

    Attributes:
        id: its identifier, which its entry will have.
        event: the event.
        begun_at: when it was begun, ISO 8601 in UTC.
        by: the official who has it in hand.
        player: whom it is about.
        group: the group of the player.
        recorded: the number of the entry that it ended in; 0 while it is open.
        set_aside_at: when it was set aside; ``None``: it was not.
        pages: how far it has come, the latest first; more than one where several devices went on with it.
    """

    id: str
    event: str
    begun_at: str
    by: str | None
    player: str | None
    group: str | None
    recorded: int = 0
    set_aside_at: str | None = None
    pages: tuple[Reached, ...] = ()

    @property
    def is_open(self) -> bool:
        """Whether it still waits for a ruling."""
        return not self.recorded and self.set_aside_at is None


def begin(
    records: Records,
    event: str,
    id_: str,
    *,
    by: str | None,
    player: str | None,
    group: str | None,
    now: datetime | None = None,
) -> None:
    """Begin a case; the same one begun again, by a second tap, stays as it is.

    Raises:
        InputError: an identifier is none, or it cannot be written.
    """
    row = {
        "id": ident(id_, "id"),
        "event_id": event,
        "begun_at": instant(now or datetime.now(UTC)),
        "by": ident(by, "by") if by else None,
        "player": ident(player, "player") if player else None,
        "group_id": ident(group, "group") if group else None,
    }
    with records.writing() as connection:
        if connection.scalar(select(OpenCase.id).where(OpenCase.id == row["id"])) is None:
            connection.execute(insert(OpenCase), [row])


def keep_page(
    records: Records, id_: str, device: str, address: str, title: str, *, now: datetime | None = None
) -> None:
    """Keep the page that a case has reached on a device; nothing is written where it stands there already.

    A case that nobody began here, that was recorded or set aside, is left as it is.
    """
    if len(address) > LONGEST_ADDRESS:
        return
    here = (OpenCasePage.case_id == id_) & (OpenCasePage.device == device)
    with records.reading() as connection:
        if connection.scalar(select(OpenCasePage.address).where(here)) == address:
            return
    with records.writing() as connection:
        known = select(OpenCase.id).where(OpenCase.id == id_, OpenCase.set_aside_at.is_(None))
        recorded = select(LogEntry.id).where(LogEntry.id == id_)
        if connection.scalar(known) is None or connection.scalar(recorded) is not None:
            return
        told = {"address": address, "title": title, "kept_at": instant(now or datetime.now(UTC))}
        if not connection.execute(update(OpenCasePage).where(here).values(**told)).rowcount:
            connection.execute(insert(OpenCasePage), [{"case_id": id_, "device": device, **told}])


def hand_to(records: Records, id_: str, official: str) -> None:
    """Give a case into the hands of another official."""
    with records.writing() as connection:
        connection.execute(update(OpenCase).where(OpenCase.id == id_).values(by=ident(official, "by")))


def set_aside(records: Records, id_: str, now: datetime | None = None) -> None:
    """Set a case aside without a ruling; it can still be looked at."""
    with records.writing() as connection:
        connection.execute(
            update(OpenCase).where(OpenCase.id == id_).values(set_aside_at=instant(now or datetime.now(UTC)))
        )


def forget_pages(records: Records, id_: str) -> None:
    """Forget the pages of a case that was recorded: its entry holds all of it."""
    with records.writing() as connection:
        connection.execute(delete(OpenCasePage).where(OpenCasePage.case_id == id_))


def begun(records: Records, id_: str) -> Begun | None:
    """Return a case that was begun, or ``None``."""
    found = _found(records, OpenCase.id == id_)
    return found[0] if found else None


def open_cases(records: Records, event: str) -> list[Begun]:
    """Return the cases of an event that wait for a ruling, the latest begun first."""
    wanted = (OpenCase.event_id == event) & OpenCase.set_aside_at.is_(None)
    return [one for one in _found(records, wanted) if one.is_open]


def _found(records: Records, wanted: ColumnElement[bool]) -> list[Begun]:
    cases = (
        select(OpenCase, LogEntry.number)
        .join(LogEntry, LogEntry.id == OpenCase.id, isouter=True)
        .where(wanted)
        .order_by(OpenCase.begun_at.desc())
    )
    with records.reading() as connection:
        rows = connection.execute(cases).all()
        pages: dict[str, list[Reached]] = {}
        ids = [row.id for row in rows if row.number is None]
        reached = (
            select(OpenCasePage).where(OpenCasePage.case_id.in_(ids)).order_by(OpenCasePage.kept_at.desc())
        )
        for page in connection.execute(reached):
            pages.setdefault(page.case_id, []).append(
                Reached(page.device, page.address, page.title, page.kept_at)
            )
    return [
        Begun(
            row.id,
            row.event_id,
            row.begun_at,
            row.by,
            row.player,
            row.group_id,
            row.number or 0,
            row.set_aside_at,
            tuple(pages.get(row.id, ())),
        )
        for row in rows
    ]
