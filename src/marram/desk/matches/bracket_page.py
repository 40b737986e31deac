"""The bracket or round robin of an event: drawn, its results as they come, its next matches put on the starting sheet."""

from datetime import time
from typing import Annotated

from fastapi import APIRouter, Form, HTTPException, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel, Field

from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.people.answers import page
from marram.desk.people.who import may
from marram.errors import InputError, shown
from marram.said import said
from marram.services.field.field_kept import EventLog
from marram.services.kinds.brackets import Plan, ResultHow
from marram.services.kinds.matches import Side
from marram.services.matches.bracket_kept import bracket_now
from marram.services.matches.bracket_making import (
    Numbering,
    ResultGiven,
    Starts,
    bracket_drawn,
    bracket_result,
    stage_started,
)
from marram.services.matches.bracket_words import points_words, stage_words
from marram.words.texts import text

router = APIRouter()


@router.get("/matches/bracket")
def bracket_page(request: Request) -> Response:
    """Show the bracket as it stands, and what can be entered of it."""
    return _page(request, scoring_here(request))


class Drawn(BaseModel):
    """What a draw of it goes by, as it was filled in."""

    tapped: str
    plan: Plan = Plan.BRACKET
    seed: str = Field(default="", max_length=200)
    seeded: str = Field(default="", max_length=20_000)
    by_handicap: bool = False


@router.post("/matches/bracket/draw")
def draw(request: Request, filled: Annotated[Drawn, Form()]) -> Response:
    """Draw it; anew only while nothing of it is decided."""
    here = scoring_here(request)
    tap = tap_here(request, filled.tapped)
    if here.kept.log.entry(tap.ident) is None:
        seeded = tuple(one.strip() for one in filled.seeded.splitlines() if one.strip())
        by = Numbering(filled.plan, filled.seed, seeded, filled.by_handicap)
        try:
            here.refuse_closed()
            here.add(bracket_drawn(here, by, tap, bracket_now(here)))
        except InputError as error:
            return _page(request, here, faults=error.faults, filled=filled)
    return RedirectResponse("/matches/bracket", 303)


class Result(BaseModel):
    """A result, as it was filled in: ``how`` is how it ended with who won, such as ``walkover-first``."""

    tapped: str
    stage: int = Field(ge=1, le=4000)
    number: int = Field(ge=1, le=4000)
    how: str = Field(max_length=40)
    up: str = Field(default="", max_length=3)
    left: str = Field(default="", max_length=3)
    holes: str = Field(default="", max_length=3)
    citation: str = Field(default="", max_length=20)
    corrects: str = Field(default="", max_length=40)

    def given(self) -> ResultGiven:
        """Return the result.

        Raises:
            HTTPException: the page knows no such way to end.
            InputError: a number is none.
        """
        words, _, side = self.how.partition("-")
        if words not in {one.value for one in ResultHow} or side not in {"", *(one.value for one in Side)}:
            raise HTTPException(422)
        how = ResultHow(words)
        counts = (self.up, self.left, self.holes) if how is ResultHow.PLAYED else ("", "", "")
        if wrong := [
            one for one in counts if one.strip() and not (one.isascii() and one.strip().isdecimal())
        ]:
            raise InputError(said("{given} is no number of holes.", given=shown(wrong[0])))
        up, left, holes = (int(one) if one.strip() else 0 for one in counts)
        winner = Side(side) if side else None
        citation = self.citation if how is ResultHow.DISQUALIFIED else ""
        return ResultGiven(
            self.stage,
            self.number,
            how,
            winner,
            up if winner else 0,
            left if winner else 0,
            holes,
            citation,
            self.corrects,
        )


@router.post("/matches/bracket/result")
def result(request: Request, filled: Annotated[Result, Form()]) -> Response:
    """Enter the result of a match whose holes are not entered, or that was not played."""
    here = scoring_here(request)
    tap = tap_here(request, filled.tapped)
    if here.kept.log.entry(tap.ident) is None:
        now = bracket_now(here)
        if now is None:
            raise HTTPException(404)
        try:
            here.refuse_closed()
            here.add(bracket_result(now, filled.given(), tap))
        except InputError as error:
            return _page(request, here, faults=error.faults)
    return RedirectResponse("/matches/bracket", 303)


class Starting(BaseModel):
    """When the matches of a round start, as it was filled in."""

    tapped: str
    stage: int = Field(ge=1, le=4000)
    round: int = Field(ge=1, le=99)
    first: str = Field(max_length=8)
    minutes: int = Field(default=10, ge=0, le=120)
    tees: str = Field(default="1", max_length=80)
    in_a_group: int = Field(default=1, ge=1, le=2)

    def starts(self, round_: str) -> Starts:
        """Return the starts.

        Raises:
            InputError: the time or a tee is none.
        """
        try:
            first = time.fromisoformat(self.first.strip().zfill(5))
        except ValueError:
            raise InputError(text("draw.time", given=repr(self.first))) from None
        written = [one.strip() for one in self.tees.replace(";", ",").split(",") if one.strip()]
        if not written or not all(one.isascii() and one.isdecimal() and len(one) < 3 for one in written):
            raise InputError(said("{given} are no tees; give holes such as 1, 10.", given=shown(self.tees)))
        return Starts(
            self.stage, round_, first, self.minutes, tuple(int(one) for one in written), self.in_a_group
        )


@router.post("/matches/bracket/starts")
def starts(request: Request, filled: Annotated[Starting, Form()]) -> Response:
    """Put the matches of a round that are known and open on the starting sheet of a round of the event."""
    here = scoring_here(request)
    tap = tap_here(request, filled.tapped)
    if here.kept.log.entry(tap.ident) is None:
        now, round_ = bracket_now(here), here.round(filled.round)
        if now is None or round_ is None:
            raise HTTPException(404)
        at = EventLog(here.records, here.kept.log, here.event)
        try:
            here.refuse_closed()
            here.add(stage_started(at, now, filled.starts(round_.id), tap))
        except InputError as error:
            return _page(request, here, faults=error.faults)
    return RedirectResponse("/matches", 303)


def _page(
    request: Request, here: ScoringHere, *, faults: tuple[str, ...] = (), filled: Drawn | None = None
) -> Response:
    now = bracket_now(here)
    answer = page(
        request,
        "bracket.html",
        title=text("matches.bracket") if now is None else text(f"matches.bracket.{now.plan.value}"),
        now=now,
        faults=list(faults),
        filled=filled,
        stage_words=stage_words,
        points_words=points_words,
        rounds=here.competition.rounds,
        closed=here.closed is not None,
        opens=may(request, "POST /matches/{number}/{player}/{against}/hole"),
        decides=may(request, "POST /matches/bracket/result"),
        public=here.competition.file.results_public is True,
        upto=0,
    )
    if faults:
        answer.status_code = 422
    return answer
