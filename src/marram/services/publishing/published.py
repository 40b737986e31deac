"""Lists that were published: read out of the log, filled in with names, and checked against their digest."""

from dataclasses import dataclass
from datetime import datetime

from marram.records.entry import Entry, Kept
from marram.records.log import Log
from marram.services.publishing.documents import Document, Named, filled
from marram.services.publishing.formats import digest_of

PUBLISHED = "list_published"


@dataclass(frozen=True)
class Published:
    """A list that was published.

    Attributes:
        entry: the entry of the log.
        digest: its address.
        document: the list with names.
        whole: whether it is still what was published: no name on it was erased or changed since.
        latest: whether no later list of its kind and round was published.
    """

    entry: Kept
    digest: str
    document: Document
    whole: bool
    latest: bool

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
    return found
