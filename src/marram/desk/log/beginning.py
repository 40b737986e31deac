"""Beginning a ruling for a player of a group, with one hand; the cases that are open; handing one to somebody else."""

from functools import partial
from typing import Annotated
from uuid import UUID, uuid5

from fastapi import APIRouter, Form, HTTPException, Request
from fastapi.responses import HTMLResponse, RedirectResponse

from marram.desk.log.begun import shown_begun
from marram.desk.log.here import (
    DEVICE,
    GROUP,
    OFFICIAL,
    device_here,
    group_here,
    moment_words,
    now,
    person_here,
    remember,
    signed_in_here,
)
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.shell.workplace import show, workplace
from marram.errors import InputError
from marram.records.entry import Entry, Part, ident, new_ident
from marram.records.open_cases import Begun, begin, begun, hand_to, open_cases, set_aside
from marram.said import said
from marram.words.texts import text

router = APIRouter()


@router.get("/begin")
def beginning(request: Request) -> HTMLResponse:
    """Show the groups of the day, the last one ruled for first and open; one tap on a player begins a ruling."""
    kept = kept_here(request)
    case = workplace(request).read(request)
    last = group_here(request)
    groups = sorted(kept.groups_on(case.conditions.on), key=lambda one: one.id != last)
    return show(
        request,
        "begin.html",
        None,
        title=text("log.begin.title"),
        groups=groups,
        last=last,
        officials=[] if signed_in_here(request) else kept.officials(),
        by=person_here(request),
        tapped=new_ident(),
        waiting=len(open_cases(kept.records, kept.event_id)),
    )


@router.post("/begin")
def begin_case(
    request: Request,
    tapped: Annotated[str, Form()],
    player: Annotated[str, Form()] = "",
    by: Annotated[str, Form()] = "",
) -> RedirectResponse:
    """Begin a ruling for a player, given as GROUP.PLAYER; the same tap twice begins one."""
    kept = kept_here(request)
    group, _, person = player.partition(".")
    case = str(uuid5(UUID(ident(tapped, "tapped")), player))
    official = person_here(request) if signed_in_here(request) else by
    begin(kept.records, kept.event_id, case, by=official or None, player=person or None, group=group or None)
    conditions = workplace(request).read(request).conditions
    answer = RedirectResponse(CaseAddress(conditions.of_competition(), begun=case).url("/"), 303)
    remember(answer, **{OFFICIAL: official, GROUP: group, DEVICE: device_here(request)})
    return answer


@router.get("/open-cases")
def waiting(request: Request) -> HTMLResponse:
    """Show the cases that were begun and not recorded yet, each with the page it stands at."""
    kept = kept_here(request)
    me = person_here(request)
    found = sorted(open_cases(kept.records, kept.event_id), key=lambda one: one.by != me)
    return show(
        request,
        "open_cases.html",
        None,
        title=text("log.open.title"),
        cases=[(shown_begun(kept, one, ""), one.by == me) for one in found],
        officials=kept.officials(),
        moment_words=partial(moment_words, zone=kept.zone),
    )


@router.post("/open-cases/aside")
def aside(request: Request, case: Annotated[str, Form()]) -> RedirectResponse:
    """Set a case aside."""
    set_aside(kept_here(request).records, _open(kept_here(request), case).id)
    return RedirectResponse("/open-cases", 303)


@router.post("/open-cases/hand-over")
def hand_over(
    request: Request,
    case: Annotated[str, Form()],
    to: Annotated[str, Form()],
    tapped: Annotated[str, Form()],
    note: Annotated[str, Form(max_length=2000)] = "",
) -> RedirectResponse:
    """Give a case into the hands of another official, as an entry of the log."""
    kept = kept_here(request)
    found = _open(kept, case)
    if to not in {one.id for one in kept.officials()}:
        raise InputError(said("Choose the official who goes on with the case."))
    headline = found.pages[0].title if found.pages else ""
    kept.add_tapped(
        Entry(
            "handed_over",
            now(),
            ident(tapped, "tapped"),
            by=person_here(request) or found.by,
            player=found.player,
            content={"about": found.id, "to": to, "headline": headline},
            parts=(Part("note", note.strip().encode()),) if note.strip() else (),
        )
    )
    hand_to(kept.records, found.id, to)
    return RedirectResponse("/open-cases", 303)


def _open(kept: KeptHere, case: str) -> Begun:
    """Return an open case.

    Raises:
        InputError: it was recorded or set aside meanwhile.
    """
    found = begun(kept.records, case)
    if found is None or found.event != kept.event_id:
        raise HTTPException(404)
    if not found.is_open:
        raise InputError(said("This case is open no longer. Look at the open cases again."))
    return found
