"""Where officials are in a round, for all of them; proposed with a seed and changed by hand by those who lead."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Annotated

from fastapi import APIRouter, HTTPException, Query, Request, Response
from fastapi.responses import RedirectResponse

from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.people.answers import page
from marram.desk.people.who import may
from marram.desk.shell.typed import Typed
from marram.errors import InputError
from marram.records.entry import new_ident
from marram.records.starting_sheet import Known, round_conditions
from marram.said import said
from marram.services.day.officials_placed import Key, Placed, placed, placing, proposal
from marram.words.texts import text

router = APIRouter()
LONGEST = 200
"""Letters of a place (own choice)."""


@router.get("/officials")
def officials(request: Request, round: Annotated[int, Query(ge=1, le=99)] = 1) -> Response:
    """Show where everybody who officiates is in a round, and what changed last."""
    here = scoring_here(request)
    return _page(request, here, round)


@router.post("/officials/propose")
def propose(request: Request, given: Typed) -> Response:
    """Show where everybody is proposed to be; nothing is kept yet."""
    here = scoring_here(request)
    number = _number(given)
    this = _round(here, number)
    minutes = round_conditions(here.records, here.event)[this.id].get("minutes_of_play")
    seed = given.get("seed", "")[:LONGEST]
    try:
        found = proposal(
            here.records,
            here.event,
            this.id,
            [one.number for one in here.competition.holes] or list(range(1, 19)),
            minutes=minutes or here.competition.file.minutes_of_play,
            seed=seed,
        )
    except InputError as error:
        return _page(request, here, number, faults=error.faults)
    return _page(request, here, number, proposed=found, seed=seed)


@router.post("/officials")
def place(request: Request, given: Typed) -> Response:
    """Place officials as it was filled in."""
    here = scoring_here(request)
    number = _number(given)
    this = _round(here, number)
    tap = tap_here(request, given.get("tapped", ""))
    typed = _typed(given, placed(here.records, here.event, this.id))
    places = {key: one.place for key, one in typed.items()}
    faults = [
        said("A place is said in {most} letters at most; this has {count}.", most=LONGEST, count=len(one))
        for one in places.values()
        if len(one) > LONGEST
    ][:1]
    faults += [
        said(
            "{name}: somebody else said {theirs} meanwhile, here it is {mine}. Say where, and keep it.",
            name=one.official.duty.name,
            theirs=one.official.at or text("paper.officials.no_place"),
            mine=one.place or text("paper.officials.no_place"),
        )
        for one in typed.values()
        if one.clashes
    ]
    if faults:
        return _page(request, here, number, faults=tuple(faults), typed=places)
    here.add(placing(places, this.id, given.get("seed", "")[:LONGEST], tap))
    return RedirectResponse(f"/officials?round={number}", 303)


@dataclass(frozen=True)
class _Row:
    """What a page said of an official.

    Attributes:
        official: where the official is now.
        showed: where the page showed them to be when it was opened.
        given: what it was sent with.
    """

    official: Placed
    showed: str
    given: str

    @property
    def place(self) -> str:
        """Where the official is to be: what was left as it was shown is as somebody else may have changed it meanwhile."""
        return self.official.at if self.given == self.showed else self.given

    @property
    def clashes(self) -> bool:
        """Whether two people changed it, each without seeing the other, and differ."""
        return self.official.at not in {self.showed, self.place}


def _typed(given: Mapping[str, str], now: tuple[Placed, ...]) -> dict[Key, _Row]:
    rows = {(given.get(f"who-{at}", ""), given.get(f"role-{at}", "")): at for at in range(1, len(given) + 1)}
    found = {}
    for one in now:
        at = rows.get(one.key, 0)
        found[one.key] = _Row(one, given.get(f"was-{at}", one.at), given.get(f"at-{at}", one.at).strip())
    return found


def _number(given: Mapping[str, str]) -> int:
    written = given.get("round", "1")
    return int(written) if written.isascii() and written.isdecimal() and len(written) < 3 else 0


def _round(here: ScoringHere, number: int) -> Known:
    found = here.round(number)
    if found is None:
        raise HTTPException(404)
    return found


def _page(
    request: Request,
    here: ScoringHere,
    number: int,
    *,
    faults: tuple[str, ...] = (),
    proposed: Mapping[Key, str] | None = None,
    typed: Mapping[Key, str] | None = None,
    seed: str = "",
) -> Response:
    this = _round(here, number)
    now: tuple[Placed, ...] = placed(here.records, here.event, this.id)
    answer = page(
        request,
        "officials.html",
        title=text("day.officials"),
        rounds=list(enumerate(here.competition.rounds, start=1)),
        number=number,
        now=now,
        shown=[
            typed[one.key] if typed else one.at if proposed is None else proposed.get(one.key, "")
            for one in now
        ],
        proposed=proposed is not None,
        seed=seed,
        faults=list(faults),
        decides=may(request, "POST /officials"),
        tapped=new_ident(),
    )
    if faults:
        answer.status_code = 422
    return answer
