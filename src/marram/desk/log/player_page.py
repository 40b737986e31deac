"""The page that is shown to the player: in large type what was ruled and what to do now, with the picture, and nothing else."""

from dataclasses import dataclass

from fastapi import APIRouter, Request
from fastapi.responses import RedirectResponse, Response

from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.consultation import consult
from marram.desk.rulings.drawings import with_figures
from marram.desk.rulings.relief_view import OptionView
from marram.desk.rulings.story import together
from marram.desk.rulings.story_view import consult_story
from marram.desk.shell.workplace import Workplace, show, workplace
from marram.words.sheet import Sheet

router = APIRouter()


@dataclass(frozen=True)
class ForPlayer:
    """What the player is shown.

    Attributes:
        headline: the ruling as it is told to the player.
        steps: what to do now.
        options: the options, each with its picture where it could be drawn; the one that was taken alone, once told.
        cautions: what to take care of.
        back: the address of the ruling.
    """

    headline: str
    steps: list[str]
    options: list[OptionView]
    cautions: list[str]
    back: str


@router.get("/player")
def player_page(request: Request) -> Response:
    """Show the ruling of a case to the player; while it still asks, lead to its question."""
    desk = workplace(request)
    case = desk.read(request)
    if not case.what and not case.kept:
        return RedirectResponse(case.url("/what"), 303)
    shown = _story(request, desk, case) if case.kept else _one(request, desk, case)
    if shown is None:
        return RedirectResponse(case.url("/together" if case.kept else "/case"), 303)
    return show(request, "player.html", case, title=shown.headline, shown=shown)


def _one(request: Request, desk: Workplace, case: CaseAddress) -> ForPlayer | None:
    found = consult(desk.course, case)
    if found.sheet is None or found.sheet.kind != "ruling":
        return None
    return _shown(found.sheet, list(with_figures(request, desk.course, found)), case.url("/case"))


def _story(request: Request, desk: Workplace, case: CaseAddress) -> ForPlayer | None:
    view = consult_story(desk.course, together(case))
    if view.sheet is None or view.sheet.kind != "ruling":
        return None
    still = view.sheet.options
    options = [
        one
        for part in view.options_from
        for one in with_figures(request, desk.course, part.found)
        if one.words in still
    ]
    return _shown(view.sheet, options, together(case).url("/together"))


def _shown(sheet: Sheet, options: list[OptionView], back: str) -> ForPlayer:
    return ForPlayer(sheet.tell or sheet.headline, list(sheet.further), options, list(sheet.cautions), back)
