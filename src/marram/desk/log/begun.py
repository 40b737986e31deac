"""A case begun for somebody: whom it is for stands over every page of it, and each page it reaches is kept."""

from dataclasses import dataclass, replace

from fastapi import Request, Response

from marram.desk.log.here import DEVICE, can_decide, device_here, moment_words, person_here, remember
from marram.desk.log.kept import KeptHere
from marram.desk.rulings.case_address import CaseAddress
from marram.records.open_cases import Begun, begun, keep_page
from marram.services.log.opinions import Opinion, opinions

PAGES = frozenset({"/", "/ball", "/what", "/case", "/together"})
"""Pages a case can stand at."""


@dataclass(frozen=True)
class BegunHere:
    """A case begun, as its pages show it.

    Attributes:
        case: the case.
        player: the name of the player; empty where it is not known.
        group: the number of the group; 0 where it is not known.
        by: the name of the official who has it in hand.
        elsewhere: where another device has got with it, the latest first: the address of its page, its time and title.
        opinions: the second opinions asked about it, the latest first.
    """

    case: Begun
    player: str
    group: int
    by: str
    elsewhere: tuple[tuple[str, str], ...] = ()
    opinions: tuple[Opinion, ...] = ()


def begun_here(request: Request, case: CaseAddress | None) -> BegunHere | None:
    """Return the case begun that a page belongs to; ``None`` where it belongs to none, or none is known here."""
    kept: KeptHere | None = request.app.state.kept_here
    if kept is None or case is None or not case.begun:
        return None
    found = begun(kept.records, case.begun)
    if found is None or found.event != kept.event_id:
        return None
    asked = tuple(opinions(kept.log, kept.event_id, found.id))
    return replace(shown_begun(kept, found, device_here(request)), opinions=asked)


def shown_begun(kept: KeptHere, found: Begun, device: str) -> BegunHere:
    """Return a case begun as a page on a device shows it."""
    names = kept.names()
    numbers = {group.id: group.number for group in kept.all_groups()}
    zone = kept.zone
    return BegunHere(
        found,
        names.get(found.player or "", ""),
        numbers.get(found.group or "", 0),
        names.get(found.by or "", ""),
        tuple(
            (page.address, f"{moment_words(page.kept_at, zone)} {page.title}")
            for page in found.pages
            if page.device != device
        ),
    )


def keep_begun(
    request: Request, case: CaseAddress | None, here: BegunHere | None, title: str, answer: Response
) -> None:
    """Keep the page that a case has reached, so that it is found again after the tab, or the phone, is gone.

    Who is asked for a second opinion looks at a case that somebody else has in hand; that is no second way it has gone.
    """
    kept: KeptHere | None = request.app.state.kept_here
    if kept is None or here is None or case is None or request.url.path not in PAGES or not here.case.is_open:
        return
    if _only_looks(request, kept, here):
        return
    device = device_here(request)
    keep_page(kept.records, here.case.id, device, case.url(request.url.path), title)
    remember(answer, **{DEVICE: device})


def _only_looks(request: Request, kept: KeptHere, here: BegunHere) -> bool:
    """Whether whoever decides second opinions looks at a case that another official, who is known, has in hand."""
    me = person_here(request)
    return bool(me and here.case.by) and me != here.case.by and can_decide(request, kept)
