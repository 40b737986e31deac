"""What the phones of a class and its teacher hear live: which question stands, whether it is explained, how many answered."""

from fastapi import APIRouter, Request, Response

from marram.desk.live.hub import event
from marram.desk.live.standing import stream_of
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.shell.errors import answer
from marram.desk.teaching.class_pages import state_of
from marram.records.classes import answers_of, class_of
from marram.words.texts import text

router = APIRouter()


@router.get("/class/{code}/live")
def live(request: Request, code: str) -> Response:
    """Return the events of a class: ``class`` with ``state`` and ``answered``, at once and whenever they change."""
    kept = kept_here(request)
    if class_of(kept.records, kept.event_id, code) is None:
        return answer(request, 404, "no_class", [text("classes.none")])
    named = code.strip().upper()
    return stream_of(request, named, lambda here: told_of_class(here, named))


def told_of_class(kept: KeptHere, code: str) -> str:
    """Return how a class stands, as an event; what was answered is not told, only how often."""
    one = class_of(kept.records, kept.event_id, code)
    if one is None:
        return ""
    answered = sum(answers_of(kept.records, one).get(one.number, {}).values())
    return event("class", {"state": state_of(one), "answered": answered})
