"""An examination as a candidate meets it: no account, a code from the examiner, the paper, and in the end the result."""

from collections.abc import Mapping, Sequence
from datetime import UTC, datetime
from functools import lru_cache
from typing import Annotated, Any

from fastapi import APIRouter, Depends, Query, Request, Response
from fastapi.responses import JSONResponse, RedirectResponse
from pydantic import BaseModel, Field

from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.answers import NO_STORE, page, too_often
from marram.desk.people.moments import moments_of
from marram.desk.people.who import may
from marram.desk.shell.errors import answer
from marram.desk.teaching.closed_book import asks_first, sits_on
from marram.records import examinations as kept_examinations
from marram.records import retired_items
from marram.records.examinations import Chosen, Sat, Sitter, chosen_by, chosen_in, hand_in, sitter_of, sitters
from marram.teach.examinations.blueprint import PASS
from marram.teach.examinations.kept_paper import KeptItem, KeptPapers, read_papers, sat, to_look_at
from marram.teach.quizzes.told import letter
from marram.words.texts import text, texts_of

router = APIRouter()

MOST_ITEMS = 120
MOST_TURNS = 100_000


@lru_cache(maxsize=16)
def papers_of(kept: str) -> KeptPapers:
    """Return papers that are kept."""
    return read_papers(kept)


def state_of(one: Sat, sitter: Sitter) -> str:
    """Return what a device compares: it shows its page anew where this is another."""
    return f"{one.state}:{'handed_in' if sitter.handed_in_at else 'open'}"


@router.get("/examination")
def open_paper(request: Request, code: Annotated[str, Query(max_length=40)] = "") -> Response:
    """Ask for the code of a paper; to whoever may examine, offer to draw one up."""
    kept = kept_here(request)
    if code:
        found = _found(request, kept, code)
        if isinstance(found, Response):
            return found
        if found is not None:
            return RedirectResponse(f"/examination/{found[1].code}", 303)
    examines = may(request, "POST /examination")
    listed = kept_examinations.examinations(kept.records, kept.event_id) if examines else []
    return page(
        request,
        "examination.html",
        title=text("examining.title"),
        unknown=code,
        examines=examines,
        listed=listed,
        moment=moments_of(kept.records, kept.event_id),
    )


@router.get("/examination/{code}")
def paper(request: Request, code: str, handing: bool = False, here: bool = False) -> Response:
    """Show a candidate the paper, or what to wait for, or the result; an official is first asked whether to sit it here."""
    kept = kept_here(request)
    found = _found(request, kept, code)
    if isinstance(found, Response):
        return found
    if found is None:
        return answer(request, 404, "no_paper", [text("examining.none")])
    one, sitter = found
    if _sits(one, sitter) and asks_first(request, sitter):
        if not here:
            return page(request, "examination_here.html", title=text("examining.title"), sitter=sitter)
        sitting = RedirectResponse(f"/examination/{sitter.code}", 303, headers=NO_STORE)
        sits_on(request, sitting, sitter, sits=True)
        return sitting
    return _page(request, kept, one, sitter, handing=handing)


def _sits(one: Sat, sitter: Sitter) -> bool:
    """Return whether a paper is open and not handed in."""
    return one.state == "running" and sitter.handed_in_at is None


async def _fields(request: Request) -> dict[str, str]:
    """Return what a form sent."""
    return {name: str(value) for name, value in (await request.form()).items()}


@router.post("/examination/{code}")
def form_sent(request: Request, code: str, fields: Annotated[dict[str, str], Depends(_fields)]) -> Response:
    """Take the paper as a form sends it, without a script; then go on, or ask whether to hand it in, or hand it in."""
    return _taken(request, code, fields)


class Choice(BaseModel):
    """A choice: item from 1, place of the answer from 0, turn of the candidate."""

    item: int = Field(ge=1, le=MOST_ITEMS)
    place: int = Field(ge=0, le=7)
    turn: int = Field(ge=1, le=MOST_TURNS)


class Choices(BaseModel):
    """What a device sends."""

    answers: list[Choice] = Field(default=[], max_length=MOST_ITEMS)


@router.post("/api/examination/{code}")
def answers_sent(request: Request, code: str, given: Choices) -> Response:
    """Keep what a device sends; return whether it was taken, and what the desk has by item: place and turn."""
    kept = kept_here(request)
    found = _found(request, kept, code)
    if isinstance(found, Response):
        return found
    if found is None:
        return answer(request, 404, "no_paper", [text("examining.none")])
    one, sitter = found
    items = papers_of(one.papers).forms[sitter.form]
    sent = [
        (each.item, each.place, each.turn)
        for each in given.answers
        if _is_there(items, each.item, each.place)
    ]
    taken = kept_examinations.answer(kept.records, sitter, sent, datetime.now(UTC))
    held = {str(item): [each.place, each.turn] for item, each in chosen_by(kept.records, sitter).items()}
    told = {"marram": 1, "taken": taken, "state": state_of(one, sitter), "held": held}
    return JSONResponse(told, headers=NO_STORE)


def _taken(request: Request, code: str, fields: Mapping[str, str]) -> Response:
    kept = kept_here(request)
    found = _found(request, kept, code)
    if isinstance(found, Response):
        return found
    if found is None:
        return answer(request, 404, "no_paper", [text("examining.none")])
    one, sitter = found
    now, held = datetime.now(UTC), chosen_by(kept.records, sitter)
    items = papers_of(one.papers).forms[sitter.form]
    turn = 1 + max((each.turn for each in held.values()), default=0)
    chosen = [
        (number, place, turn + number)
        for number in range(1, len(items) + 1)
        if (place := _place(fields.get(f"item-{number}", ""))) is not None
        and _is_there(items, number, place)
        and (number not in held or held[number].place != place)
    ]
    kept_examinations.answer(kept.records, sitter, chosen, now)
    step = fields.get("step", "")
    if step == "hand_in" and one.state == "running":
        hand_in(kept.records, sitter, now)
    asks = "?handing=true" if step == "ask" else ""
    return RedirectResponse(f"/examination/{sitter.code}{asks}", 303, headers=NO_STORE)


def _found(request: Request, kept: KeptHere, code: str) -> tuple[Sat, Sitter] | Response | None:
    """Return the paper of a code; where an address tried too many that are none, the answer to that."""
    door = request.app.state.door
    if door is not None and (wait := too_often(request, door)):
        return wait
    found = sitter_of(kept.records, kept.event_id, code)
    if found is None and door is not None:
        door.by_address.failed(request.client.host if request.client else "")
    return found


def _place(given: str) -> int | None:
    return int(given) if given.isdecimal() and len(given) == 1 else None


def _is_there(items: Sequence[KeptItem], number: int, place: int) -> bool:
    return number <= len(items) and place < len(items[number - 1].answers)


def _page(request: Request, kept: KeptHere, one: Sat, sitter: Sitter, *, handing: bool) -> Response:
    papers = papers_of(one.papers)
    items = papers.forms[sitter.form]
    held = chosen_by(kept.records, sitter)
    ends = sitter.ends_at(one)
    sits = _sits(one, sitter)
    context: dict[str, Any] = {
        "one": one,
        "sitter": sitter,
        "papers": papers,
        "count": len(items),
        "minutes": one.minutes + sitter.extra,
        "pass_mark": PASS,
        "state": state_of(one, sitter),
        "held": held,
        "sits": sits,
        "open": [number for number in range(1, len(items) + 1) if number not in held],
        "ends": ends.isoformat() if ends else "",
        "now": datetime.now(UTC).isoformat(),
        "words": texts_of("examining_script"),
    }
    if sits and not handing:
        context["items"] = [
            _shown(number, each, held.get(number)) for number, each in enumerate(items, start=1)
        ]
    if one.state == "closed":
        context |= _result(kept, one, sitter, items, held)
    name = "examination_handing.html" if sits and handing else "examination_paper.html"
    shown = page(request, name, title=text("examining.title"), **context)
    sits_on(request, shown, sitter, sits=sits)
    return shown


def _shown(number: int, item: KeptItem, chosen: Chosen | None) -> dict[str, Any]:
    """Return an item as a candidate sees it: nothing of the key."""
    return {
        "number": number,
        "told": item.told,
        "turn": chosen.turn if chosen else 0,
        "answers": [
            {
                "place": place,
                "letter": letter(place),
                "words": words,
                "chosen": chosen is not None and chosen.place == place,
            }
            for place, words in enumerate(item.answers)
        ],
    }


def _result(
    kept: KeptHere, one: Sat, sitter: Sitter, items: Sequence[KeptItem], held: Mapping[int, Chosen]
) -> dict[str, Any]:
    every = chosen_in(kept.records, one)
    same = {each.id for each in sitters(kept.records, one) if each.form == sitter.form}
    chosen = {
        ident: {item: each.place for item, each in found.items()}
        for ident, found in every.items()
        if ident in same
    }
    retired = retired_items.retired(kept.records)
    found = sat(items, chosen, retired)
    own = {item: each.place for item, each in held.items()}
    return {
        "mark": found.marks.get(sitter.id) if found else None,
        "look_at": to_look_at(items, own, retired) if own else [],
    }
