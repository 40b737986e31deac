"""The next question, or the ruling."""

from fastapi import APIRouter, Request
from fastapi.responses import RedirectResponse, Response

from marram.course.model import Course
from marram.desk.log.recording import record_form
from marram.desk.rulings.as_text import ruling_text
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.chosen import choices
from marram.desk.rulings.consultation import Consultation, consult
from marram.desk.rulings.drawings import begin_drawings, come_later, with_figures
from marram.desk.rulings.proposals import proposals
from marram.desk.rulings.relief_view import relief_views
from marram.desk.rulings.shown_flags import keep_flag
from marram.desk.rulings.story import handed_over, next_incident, together
from marram.desk.rulings.story_view import consult_story
from marram.desk.rulings.teaching import taught
from marram.desk.shell.map_state import again as shown_again
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import Workplace, show, workplace
from marram.relief.pictures.measuring import how_to_measure_anywhere
from marram.rules.engine.request import fact_named
from marram.rules.ruling import Action, Ruling
from marram.services.cases.address import BETWEEN, STROKES_BEFORE
from marram.services.cases.flag import flag_missing
from marram.services.cases.from_tee import tee_of
from marram.services.cases.missing import sheet_with_missing
from marram.services.cases.places import place_words
from marram.services.cases.usual import usual_here
from marram.services.ground.marked import zones_not_offered
from marram.words.penalties import strokes_words
from marram.words.questions import question_words
from marram.words.story import next_stroke_words, ordinal_words, stroke_missing_words
from marram.words.texts import text

router = APIRouter()


@router.get("/case")
def case_page(request: Request) -> Response:
    """Show the next question of the case, or its ruling."""
    desk = workplace(request)
    case = desk.read(request)
    if not case.what:
        return RedirectResponse(case.url("/what"), 303)
    if flag_missing(desk.course, case):
        return RedirectResponse(case.url("/flag"), 303)
    if case.ask in BETWEEN:
        return RedirectResponse(together(case).url("/together"), 303)
    found = consult(desk.course, case)
    assert found.sheet is not None
    if case.ask:
        return _question(request, desk, found, again=True)
    if found.sheet.question:
        return keep_flag(_question(request, desk, found, again=False), request, case)
    return keep_flag(_ruling(request, desk, found), request, case)


def _question(request: Request, desk: Workplace, found: Consultation, *, again: bool) -> Response:
    case, sheet = found.case, found.sheet
    assert sheet is not None
    question = question_words(fact_named(case.ask)) if again and case.ask else sheet.question
    assert question is not None
    current = found.known.get(question.fact)
    fact = fact_named(question.fact)
    return show(
        request,
        "question.html",
        case,
        map_state(desk.course, case, hole=found.hole),
        title=question.question,
        question=question,
        fact=fact,
        current=None if current is None else fact.token(fact.parse(current)),
        current_from_map=question.fact in found.from_map,
        again=again,
        number=1 + sum(one.fact in case.facts for one in sheet.why),
        sheet=sheet,
        hole=found.hole,
        place=found.place,
        taught=taught(case),
        proposals=proposals(found),
        hidden=case.pairs(without=(question.fact, "ask")),
        usual=(gathered := () if again else usual_here(found)),
        usual_hidden=case.pairs(without=("ask", *(one.fact for one in gathered))),
    )


def _ruling(request: Request, desk: Workplace, found: Consultation) -> Response:
    case, sheet = found.case, sheet_with_missing(found)
    assert sheet is not None
    if later := come_later(request):
        begin_drawings(request, desk.course, found)
    options = relief_views(desk.course, found) if later else with_figures(request, desk.course, found)
    return show(
        request,
        "ruling.html",
        case,
        map_state(desk.course, case, hole=found.hole, options=options),
        title=sheet.headline,
        sheet=sheet,
        options=options,
        come_later=later,
        again=[(role, place_words(role)) for role in shown_again(case, options)],
        taught=taught(case),
        proposals=proposals(found),
        choices=(taken := choices(case, case.number, [found.result] if found.result else [])),
        from_tee=_from_tee(desk.course, found),
        not_offered=zones_not_offered(desk.course, found),
        rather_url=handed_over(case, sheet.rather) if sheet.rather else None,
        next_url=next_incident(case),
        together_url=together(case).url("/together", ask=None) if case.kept else None,
        judge=found.judge,
        next_stroke=_next_stroke(desk, case),
        before_hidden=case.pairs(without=(STROKES_BEFORE, "ask")),
        measuring=how_to_measure_anywhere(case.conditions.club)
        if any(one.words.size for one in options)
        else "",
        as_text=ruling_text(found, sheet, options, desk.event, desk.course.name),
        hole=found.hole,
        place=found.place,
        record=record_form(request, case, taken) if not case.kept and sheet.kind == "ruling" else None,
    )


def _next_stroke(desk: Workplace, case: CaseAddress) -> str:
    """Return which stroke comes next as a sentence; empty where the strokes before were not told or it is still open."""
    if case.strokes_before is None or case.kept:  # of several incidents their own page tells it
        return ""
    count = consult_story(desk.course, case).count
    if count is not None and count.stroke_missing is not None:
        return stroke_missing_words(count.stroke_missing)
    if count is None or count.next_stroke is None:
        return ""
    result = consult(desk.course, case).result
    prices = sorted({one.penalty for one in result.relief} - {0}) if isinstance(result, Ruling) else []
    may = isinstance(result, Ruling) and result.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF
    if not may and len(prices) < 2:  # what it costs is counted already
        return next_stroke_words(count.next_stroke)
    dearer = [
        text(
            "rulings.ruling.next_by_relief",
            penalty=strokes_words(one),
            ordinal=ordinal_words(count.next_stroke + one),
        )
        for one in prices
    ]
    return " ".join([next_stroke_words(count.next_stroke), *dearer] if may else dearer)


def _from_tee(course: Course, found: Consultation) -> str | None:
    """Return the address of the case with the previous stroke made from the teeing area of its hole."""
    tee = tee_of(course, found.hole) if found.hole is not None and found.place is not None else None
    return found.case.url("/case", places={**found.case.places, "previous": tee}, ask=None) if tee else None
