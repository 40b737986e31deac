"""All incidents of one situation together: what each is by itself, and the combined ruling."""

from fastapi import APIRouter, Request
from fastapi.responses import RedirectResponse, Response

from marram.desk.log.recording import record_form
from marram.desk.rulings.as_text import story_text
from marram.desk.rulings.chosen import choices
from marram.desk.rulings.relief_view import relief_views
from marram.desk.rulings.story import next_incident, together
from marram.desk.rulings.story_view import consult_story
from marram.desk.rulings.told_of_act import told_of_act
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.rules.engine.request import fact_named
from marram.services.cases.address import BETWEEN, STROKES_BEFORE
from marram.words.messages import term
from marram.words.penalties import strokes_words
from marram.words.questions import question_words
from marram.words.texts import text

router = APIRouter()


@router.get("/together")
def all_together(request: Request) -> Response:
    """Show each incident's ruling in short, then the question between them, or the combined ruling."""
    desk = workplace(request)
    case = together(desk.read(request))
    if not case.kept:
        return RedirectResponse(case.url("/what", ask=None), 303)
    view = consult_story(desk.course, case)
    again = case.ask in BETWEEN
    question = view.sheet.question if view.sheet else None
    if again and case.ask:
        question = question_words(fact_named(case.ask))
    last = view.parts[-1].found
    return show(
        request,
        "together.html",
        case,
        map_state(
            desk.course,
            last.case,
            hole=last.hole,
            options=relief_views(desk.course, last),
        ),
        title=question.question if question else text("rulings.together.title"),
        view=view,
        as_text=story_text(view, desk.event, desk.course.name)
        if view.sheet and not view.sheet.question
        else "",
        question=question,
        again=again,
        hidden=case.pairs(without=(question.fact, "ask")) if question else (),
        strokes_words=strokes_words,
        whom=term,
        next_url=next_incident(case),
        choices=(taken := choices(case, len(view.parts), [view.result] if view.result else [])),
        record=record_form(request, case, taken) if view.sheet and view.sheet.kind == "ruling" else None,
        told={part.number: told_of_act(case, part.number) for part in view.parts},
        before_hidden=case.pairs(without=(STROKES_BEFORE, "ask")),
    )
