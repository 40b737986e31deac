"""The draw of a round: what it goes by, groups and starts or the wishes that clash, kept once somebody says so, and what changed since it was published."""

import json
from datetime import time
from typing import Annotated, Any

from fastapi import APIRouter, Form, HTTPException, Query, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel, Field

from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.people.answers import page
from marram.errors import InputError, shown
from marram.records.entry import new_ident
from marram.records.field import details
from marram.records.field_changes import GroupSet
from marram.records.starting_sheet import Known, groups
from marram.said import said
from marram.services.field.draw_kept import Asked, DrawFound, drawn
from marram.services.field.draw_round import draw_of_round
from marram.services.field.field_kept import EventLog
from marram.services.field.wishes_written import wish_lines
from marram.services.publishing.change_words import changed_words
from marram.services.publishing.changes import changed_since_published
from marram.services.publishing.documents import named
from marram.words.texts import text

router = APIRouter()


class Filled(BaseModel):
    """The form as it was filled in."""

    round: int = Field(default=1, ge=1, le=99)
    seed: str = Field(default="", max_length=200)
    first: str = Field(default="08:00", max_length=5)
    second: str = Field(default="", max_length=5)
    minutes: int = Field(default=10, ge=0, le=120)
    places: int = Field(default=3, ge=1, le=4)
    tees: str = Field(default="1", max_length=80)
    order: str = Field(default="seed", pattern="^(seed|handicap|score)$")
    clubs_apart: bool = False
    not_again: bool = False
    wishes: str = Field(default="", max_length=20_000)

    def asked(self) -> Asked:
        """Return what the draw goes by.

        Raises:
            InputError: the time or a tee is none; both are listed.
        """
        faults = []
        times: list[time | None] = []
        for given in (self.first, self.second):
            try:
                times.append(
                    time.fromisoformat(given.strip().zfill(5)) if given.strip() or not times else None
                )
            except ValueError:
                faults.append(text("draw.time", given=repr(given)))
                times.append(None)
        written = [one.strip() for one in self.tees.replace(";", ",").split(",") if one.strip()]
        if not written or not all(one.isascii() and one.isdecimal() and len(one) < 3 for one in written):
            faults.append(said("{given} are no tees; give holes such as 1, 10.", given=shown(self.tees)))
        first, second = times
        if faults or first is None:
            raise InputError(*faults)
        return Asked(
            self.seed.strip(),
            first,
            self.minutes,
            self.places,
            tuple(int(one) for one in written),
            self.order,
            self.clubs_apart,
            self.not_again,
            self.wishes,
            second,
        )


@router.get("/draw")
def draw_page(request: Request, round: Annotated[int, Query(ge=1, le=99)] = 1) -> Response:
    """Show the groups of a round as they stand, and what a draw goes by."""
    here = scoring_here(request)
    return _page(request, here, _round(here, round), Filled(round=round))


@router.post("/draw")
def make(request: Request, filled: Annotated[Filled, Form()]) -> Response:
    """Draw a round and show it; nothing is kept yet."""
    here = scoring_here(request)
    this = _round(here, filled.round)
    try:
        found = draw_of_round(here, filled.round, filled.asked())
    except InputError as error:
        return _page(request, here, this, filled, faults=error.faults)
    return _page(request, here, this, filled, found=found)


@router.post("/draw/keep")
def keep(
    request: Request,
    round: Annotated[int, Form(ge=1, le=99)],
    tapped: Annotated[str, Form()],
    groups: Annotated[str, Form(max_length=200_000)],
    seed: Annotated[str, Form(max_length=200)] = "",
) -> Response:
    """Have a round start as it was drawn."""
    here = scoring_here(request)
    this = _round(here, round)
    tap = tap_here(request, tapped)
    if here.kept.log.entry(tap.ident) is None:
        try:
            found = _groups(groups)
            here.add(drawn(EventLog(here.records, here.kept.log, here.event), this.id, found, seed, tap))
        except InputError as error:
            return _page(request, here, this, Filled(round=round), faults=error.faults)
    return RedirectResponse(f"/draw?round={round}", 303)


def _round(here: ScoringHere, number: int) -> Known:
    found = here.round(number)
    if found is None:
        raise HTTPException(404)
    return found


def _groups(given: str) -> tuple[GroupSet, ...]:
    try:
        return tuple(
            GroupSet(time.fromisoformat(at), int(tee), tuple(str(one) for one in people))
            for at, tee, people in json.loads(given)
        )
    except (ValueError, TypeError):
        raise InputError(said("The draw was lost on the way. Draw it again.")) from None


def _page(
    request: Request,
    here: ScoringHere,
    this: Known,
    filled: Filled,
    *,
    found: DrawFound | None = None,
    faults: tuple[str, ...] = (),
) -> Response:
    kept = here.kept
    names = here.competition.players
    answer = page(
        request,
        "draw.html",
        title=text("field.draw"),
        rounds=list(enumerate(here.competition.rounds, start=1)),
        this=this,
        filled=filled,
        faults=list(faults),
        found=found,
        carried="" if found is None else _carried(found),
        names=names,
        groups=groups(kept.records, this.id),
        changes=changed_since_published(here, kept.log, kept.event.name, filled.round),
        known=named(here.competition, details(kept.records)).names,
        changed_words=changed_words,
        tapped=new_ident(),
        wish_lines=list(wish_lines()),
    )
    if faults or (found is not None and found.clash):
        answer.status_code = 422
    return answer


def _carried(found: DrawFound) -> str:
    told: list[Any] = [[one.at.isoformat("minutes"), one.tee, list(one.people)] for one in found.groups]
    return json.dumps(told)
