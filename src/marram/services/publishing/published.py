"""Lists that were published: read out of the log, filled in with names, and checked against their digest."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from marram.records.entry import Entry, Kept
from marram.records.log import Log
from marram.services.publishing.changes import StartChanged, starts_changed
from marram.services.publishing.documents import PUBLISHED, STARTING_TIMES, Document, Named, filled
from marram.services.publishing.formats import digest_of


@dataclass(frozen=True)
class Published:
    """A list that was published.

    Attributes:
        entry: the entry of the log.
        digest: its address.
        document: the list with names.
        whole: whether it is still what was published: no name on it was erased or changed since.
        latest: whether no later list of its kind and round was published.
        changed: what is otherwise than in the list of its round before; empty for the first, and where nothing is known of it.
        number: how many lists of its kind and round were published before it.
    """

    entry: Kept
    digest: str
    document: Document
    whole: bool
    latest: bool
    changed: tuple[StartChanged, ...] = ()
    number: int = 0

    @property
    def at(self) -> datetime:
        """When it was published."""
        return datetime.fromisoformat(self.entry.told["given_at"])


def publishing(ident: str, at: datetime, document: Document, known: Named, *, by: str | None) -> Entry:
    """Return the entry that publishes a list.

    Args:
        ident: the identifier of the entry.
        at: when, with its distance from UTC.
        document: the list, by identifier.
        known: the names it is published with.
        by: who publishes it.
    """
    content = {"digest": digest_of(filled(document, known)), "document": document}
    return Entry(PUBLISHED, at, ident, by=by, content=content)


def published(log: Log, event: str, known: Named) -> list[Published]:
    """Return every list of an event that was published, the latest first."""
    found: list[Published] = []
    seen: set[tuple[object, object]] = set()
    for one in reversed(log.entries(event, kind=PUBLISHED)):
        digest = str(one.content["digest"])
        if any(before.digest == digest for before in found):  # the same list again is no other list
            continue
        document = filled(one.content["document"], known)
        about = (document.get("kind"), document.get("round"))
        found.append(Published(one, digest, document, digest_of(document) == digest, about not in seen))
        seen.add(about)
    return [_beside_the_one_before(one, found[at + 1 :]) for at, one in enumerate(found)]


def _beside_the_one_before(one: Published, earlier: Sequence[Published]) -> Published:
    """Return a list with what changed since the one of its kind and round before it."""
    about = (one.document.get("kind"), one.document.get("round"))
    same = [each for each in earlier if (each.document.get("kind"), each.document.get("round")) == about]
    changed: tuple[StartChanged, ...] = ()
    if same and about[0] == STARTING_TIMES and one.whole and same[0].whole:
        changed = starts_changed(same[0].document, one.document)
    return replace(one, changed=changed, number=len(same))
