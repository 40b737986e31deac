"""An examination as its examiner meets it: drawn up, begun, collected; the results, what they say of each item, retiring."""

from collections.abc import Mapping, Sequence
from datetime import UTC, datetime
from secrets import randbelow
from typing import Annotated, Any, Literal

from fastapi import APIRouter, Form, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel, Field

from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.answers import NO_STORE, page
from marram.desk.shell.errors import answer
from marram.desk.shell.reached import only_here, qr_code, reached_by
from marram.desk.shell.workplace import workplace
from marram.desk.teaching.examination_pages import papers_of
from marram.errors import InputError
from marram.paper.paper_size import PaperSize
from marram.records.examinations import (
    MOST_CANDIDATES,
    MOST_EXTRA,
    MOST_MINUTES,
    ON_PAPER,
    Chosen,
    Sat,
    Sitter,
    begin,
    chosen_in,
    close,
    enter,
    examination_of,
    give_extra,
    how_far,
    keep_examination,
    reopen,
    sitters,
)
from marram.records.retired_items import restore, retire, retired
from marram.teach.examinations.entered import NONE, read_entered
from marram.teach.examinations.kept_paper import KeptItem, sat, written
from marram.teach.examinations.paper import MOST_FORMS, MOST_ITEMS, examination
from marram.teach.examinations.printing import kept_pdf
from marram.teach.examinations.report import Mark, Sitting
from marram.teach.examinations.retiring import FEWEST_CANDIDATES
from marram.teach.quizzes.told import letter
from marram.words.spoken import spoken
from marram.words.texts import clock_words, text

router = APIRouter()

SEEDS = 1_000_000


class Wanted(BaseModel):
    """What an examination is to be."""

    items: int = Field(60, ge=1, le=MOST_ITEMS)
    level: int = Field(2, ge=1, le=3)
    forms: int = Field(2, ge=1, le=MOST_FORMS)
    minutes: int = Field(90, ge=1, le=MOST_MINUTES)
    candidates: int = Field(12, ge=1, le=MOST_CANDIDATES)
    open_book: bool = False


class Step(BaseModel):
    """What the examiner does: a step, with the candidate or item it is about."""

    step: Literal["begin", "close", "reopen", "extra", "enter", "retire", "restore"]
    candidate: int = Field(1, ge=1, le=MOST_CANDIDATES)
    extra: int = Field(0, ge=0, le=MOST_EXTRA)
    item: str = Field("", max_length=36)
    answers: str = Field("", max_length=MOST_CANDIDATES * (MOST_ITEMS * 3 + 8))


@router.post("/examination")
def draw_up(request: Request, wanted: Annotated[Wanted, Form()]) -> Response:
    """Draw up an examination without what is retired, and show it to its examiner."""
    kept = kept_here(request)
    out = frozenset(retired(kept.records))
    exam = examination(
        randbelow(SEEDS),
        wanted.items,
        level=wanted.level,
        forms=wanted.forms,
        open_book=wanted.open_book,
        retired=out,
    )
    one = keep_examination(
        kept.records,
        kept.event_id,
        written(exam, workplace(request).course.name),
        [form.letter for form in exam.forms],
        minutes=wanted.minutes,
        candidates=wanted.candidates,
        now=datetime.now(UTC),
    )
    return RedirectResponse(f"/examining/{one.id}", 303)


@router.get("/examining/{ident}")
def examiner(request: Request, ident: str) -> Response:
    """Show an examination: candidates with their codes and how far they are; once collected, results and items."""
    kept = kept_here(request)
    one = examination_of(kept.records, kept.event_id, ident)
    return _none(request) if one is None else _page(request, kept, one)


def _page(
    request: Request, kept: KeptHere, one: Sat, faults: Sequence[str] = (), entered: str = ""
) -> Response:
    papers = papers_of(one.papers)
    people, every = sitters(kept.records, one), chosen_in(kept.records, one)
    out = retired(kept.records)
    found = {form: _sat(items, form, people, every, out) for form, items in papers.forms.items()}
    collected = one.state == "closed"
    first = next(iter(papers.forms.values()))
    arrived, handed = how_far(kept.records, one)
    return page(
        request,
        "examining.html",
        title=text("examining.title"),
        one=one,
        papers=papers,
        count=len(first),
        ends=max((at for each in people if (at := each.ends_at(one))), default=None),
        candidates=[
            _candidate(one, each, every.get(each.id, {}), found[each.form], collected) for each in people
        ],
        state=one.state,
        arrived=f"{arrived},{handed}",
        results=[_form(form, papers.forms[form], each, out) for form, each in found.items()]
        if collected
        else [],
        fewest=FEWEST_CANDIDATES,
        most_extra=MOST_EXTRA,
        only_here=only_here(request),
        faults=faults,
        entered=entered,
        no_answer=NONE,
        clock=lambda at: clock_words(at.astimezone(kept.zone)),
    )


@router.post("/examining/{ident}")
def lead(request: Request, ident: str, taken: Annotated[Step, Form()]) -> Response:
    """Begin, collect, take papers again, give more time, enter printed papers, retire an item or take that back."""
    kept = kept_here(request)
    one = examination_of(kept.records, kept.event_id, ident)
    if one is None:
        return _none(request)
    records, now, place = kept.records, datetime.now(UTC), ""
    if taken.step == "begin":
        begin(records, one, now)
    elif taken.step == "close":
        close(records, one, now)
    elif taken.step == "reopen":
        reopen(records, one)
    elif taken.step == "extra":
        give_extra(records, one, taken.candidate, taken.extra)
    elif taken.step == "enter":
        try:
            _enter(kept, one, taken.answers, now)
        except InputError as error:
            return _page(request, kept, one, [spoken(each) for each in error.faults], taken.answers)
        place = "#progress"
    else:
        place = _retiring(kept, one, taken.item, taken.step == "retire", now)
    return RedirectResponse(f"/examining/{one.id}{place}", 303, headers=NO_STORE)


@router.get("/examining/{ident}/slips")
def slips(request: Request, ident: str) -> Response:
    """Show the slips with the codes, to print and cut."""
    kept = kept_here(request)
    one = examination_of(kept.records, kept.event_id, ident)
    if one is None:
        return _none(request)
    at = f"{reached_by(request)}examination"
    found = [
        {"sitter": each, "picture": qr_code(f"{at}/{each.code}", 4)} for each in sitters(kept.records, one)
    ]
    return page(
        request,
        "examining_slips.html",
        title=text("examining.slips"),
        one=one,
        link=at,
        slips=found,
        only_here=only_here(request),
    )


@router.get("/examining/{ident}/paper/{letter}")
def printed(
    request: Request, ident: str, letter: str, key: bool = False, paper: PaperSize = PaperSize.A4
) -> Response:
    """Return a form, or its key, as PDF, on A4 or Letter."""
    kept = kept_here(request)
    one = examination_of(kept.records, kept.event_id, ident)
    if one is None or letter not in papers_of(one.papers).forms:
        return _none(request)
    made = kept_pdf(papers_of(one.papers), letter, key=key, paper=paper)
    return Response(made, media_type="application/pdf", headers=NO_STORE)


def _enter(kept: KeptHere, one: Sat, given: str, now: datetime) -> None:
    forms = papers_of(one.papers).forms
    people = {each.number: each for each in sitters(kept.records, one)}
    read = read_entered(
        given,
        {number: [len(item.answers) for item in forms[each.form]] for number, each in people.items()},
    )
    for number, chosen in read.items():
        enter(kept.records, people[number], chosen, now)


def _none(request: Request) -> Response:
    return answer(request, 404, "no_examination", [text("examining.no_such")])


def _sat(
    items: tuple[KeptItem, ...],
    form: str,
    people: list[Sitter],
    every: Mapping[str, Mapping[int, Chosen]],
    out: Mapping[str, object],
) -> Sitting | None:
    answers = {
        one.id: {item: each.place for item, each in every[one.id].items()}
        for one in people
        if one.form == form and one.id in every
    }
    return sat(items, answers, out.keys())


def _candidate(
    one: Sat, sitter: Sitter, chosen: Mapping[int, Chosen], found: Sitting | None, collected: bool
) -> dict[str, Any]:
    ends = sitter.ends_at(one)
    mark: Mark | None = found.marks.get(sitter.id) if found and collected else None
    return {
        "sitter": sitter,
        "answered": len(chosen),
        "late": sum(
            1
            for each in chosen.values()
            if each.turn != ON_PAPER and ends is not None and each.arrived_at > ends
        ),
        "on_paper": bool(chosen) and all(each.turn == ON_PAPER for each in chosen.values()),
        "mark": mark,
    }


def _form(
    form: str, items: tuple[KeptItem, ...], found: Sitting | None, out: Mapping[str, list[str]]
) -> dict[str, Any]:
    """Return what the answers say of a form; an item that something speaks against comes first."""
    if found is None:
        return {"letter": form, "found": None}
    shown = []
    for at, (item, figures) in enumerate(zip(items, found.items, strict=True)):
        against = [spoken(each) for each in found.retired.get(at, ())]
        shown.append(
            {
                "number": at + 1,
                "item": item,
                "difficulty": round(100 * figures.difficulty),
                "discrimination": figures.discrimination,
                "unanswered": figures.chosen.get(-1, 0),
                "answers": [
                    {
                        "letter": letter(place),
                        "words": words,
                        "right": place == item.right,
                        "count": figures.chosen.get(place, 0),
                        "value": figures.distractors.get(place),
                    }
                    for place, words in enumerate(item.answers)
                ],
                "against": "; ".join(against),
                "retired": "; ".join(out.get(item.ident, ())),
            }
        )
    shown.sort(key=lambda each: (not each["against"], each["number"]))
    percents = [each.percent for each in found.marks.values()]
    return {
        "letter": form,
        "found": found,
        "items": shown,
        "count": len(percents),
        "percent": round(sum(percents) / len(percents)),
        "few": len(percents) < FEWEST_CANDIDATES,
    }


def _retiring(kept: KeptHere, one: Sat, ident: str, away: bool, now: datetime) -> str:
    """Retire an item of an examination with what speaks against it, or take that back; return where it stands on the page."""
    for form, items in papers_of(one.papers).forms.items():
        for at, item in enumerate(items):
            if item.ident != ident:
                continue
            if not away:
                restore(kept.records, ident, now)
            else:
                found = _sat(items, form, sitters(kept.records, one), chosen_in(kept.records, one), {})
                why = [spoken(each) for each in found.retired.get(at, ())] if found else []
                retire(kept.records, one, ident, why or [text("examining.retire.by_examiner")], now)
            return f"#{form}-{at + 1}"
    return ""
