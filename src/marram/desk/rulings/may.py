"""May I? What the player may do where the ball lies, asked before anything is done."""

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse

from marram.desk.rulings.consultation import consult
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.rules.facts.ball import Area, area_of_ball
from marram.services.asked.may import MayAsk, may
from marram.services.asked.may_words import MayLine, asked_once, may_line
from marram.words.language import translate
from marram.words.texts import text

router = APIRouter()


@router.get("/may")
def may_page(request: Request) -> HTMLResponse:
    """Show each act with whether it is allowed; the area is the map's, where the ball was shown, else chosen."""
    desk = workplace(request)
    case = desk.read(request)
    found = consult(desk.course, case)
    area = _area(case.facts.get(area_of_ball.name)) or (found.place.area if found.place else None)
    conditions = case.conditions
    answers = () if area is None else may(
        MayAsk(
            area,
            conditions.on,
            conditions.form,
            None if conditions.local is None else tuple(conditions.local),
            sides=conditions.sides,
        )
    )  # fmt: skip
    return show(
        request,
        "may.html",
        case,
        map_state(desk.course, case, hole=found.hole),
        title=text("may.title"),
        area=area_of_ball.token(area) if area else "",
        areas=[(area_of_ball.token(one), translate()(words)) for one, words in area_of_ball.answers.items()],
        fact=area_of_ball.name,
        hidden=case.pairs(without=(area_of_ball.name,)),
        local_rules=asked_once(answers),
        groups=_by_group([may_line(one, conditions.form) for one in answers]),
        hole=found.hole,
        place=found.place,
    )


def _by_group(lines: list[MayLine]) -> list[tuple[str, list[MayLine]]]:
    """Return the lines by what they are about, each group with its heading."""
    groups: dict[str, list[MayLine]] = {}
    for line in lines:
        groups.setdefault(line.group, []).append(line)
    return [(text(f"may.group.{group}"), own) for group, own in groups.items()]


def _area(told: str | None) -> Area | None:
    """Return the area that was chosen; ``None`` where none was."""
    return None if told is None else area_of_ball.parse(told)
