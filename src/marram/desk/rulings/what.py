"""What happened? The list of incidents by theme, with a search box."""

from dataclasses import dataclass, replace

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse

from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.consultation import consult
from marram.desk.rulings.story import beginning
from marram.desk.rulings.teaching import is_taught
from marram.desk.shell.listing import Theme, listing, listing_of
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.rules.facts.ball import Area
from marram.rules.finding.ranking import out_of_force
from marram.rules.incidents.incident import Incident
from marram.services.cases.conditions import Conditions
from marram.services.cases.likely import by_place, likely_here
from marram.services.cases.told import Sentence, Told, told
from marram.services.ground.lies import to_plane
from marram.words.language import translate
from marram.words.texts import text

router = APIRouter()

A_SENTENCE = 3
"""Words from which what was typed is kept with the case, so that facts are read in it."""
OFFERED = 3
"""How many incidents are offered for each act."""


@router.get("/what")
def what(request: Request, q: str = "") -> HTMLResponse:
    """Show the incidents; those likely for the ball's place come first."""
    desk = workplace(request)
    case = desk.read(request)
    found = consult(desk.course, case)
    area = found.place.area if found.place else None
    heard = told(_sentence(q, case, area)) if q.strip() else None
    likely = (
        likely_here(desk.course, to_plane(desk.course, case.places["ball"]), area, case.conditions)
        if found.place
        else ()
    )
    if heard:
        heard = replace(heard, offered=by_place(heard.offered, _sentence(q, case, area), likely))
    themes = listing_of(heard) if heard else listing(area, placed=found.place is not None, likely=likely)
    return show(
        request,
        "what.html",
        case,
        map_state(desk.course, case, hole=found.hole),
        title=text("rulings.what.title"),
        hole=found.hole,
        place=found.place,
        q=q,
        likely=likely,
        said=q if len(q.split()) >= A_SENTENCE else "",
        context=_sentence(q, case, area).context(),
        out_of_force=out_of_force,
        unknown=heard.unknown if heard and themes else (),
        themes=_covered(themes, case.conditions),
        acts=_acts_of(heard, case) if heard else None,
    )


def _sentence(words: str, case: CaseAddress, area: Area | None) -> Sentence:
    conditions = case.conditions
    local = None if conditions.local is None else frozenset(conditions.local)
    return Sentence(words, local, area, conditions.form, conditions.sides, read=0)


@dataclass(frozen=True, slots=True)
class ActsOffered:
    """The acts of a sentence, each with its incidents, and the address that begins the story of the likeliest.

    Attributes:
        each: the words of each act, and the incidents it may be.
        one_covers: whether one incident may cover the whole sentence.
        titles: the likeliest incidents, in order.
        begin: the address of the story; ``None`` where it would hold too many.
    """

    each: tuple[tuple[str, tuple[Incident, ...]], ...]
    one_covers: bool
    titles: tuple[str, ...]
    begin: str | None


def _acts_of(heard: Told, case: CaseAddress) -> ActsOffered | None:
    if not heard.acts or case.conditions.former:
        return None
    likeliest = [(one.offered[0].incident, one.words) for one in heard.acts]
    return ActsOffered(
        tuple((one.words, tuple(each.incident for each in one.offered[:OFFERED])) for one in heard.acts),
        heard.one_covers,
        tuple(translate()(one.title) for one, _ in likeliest),
        beginning(case, [(one.name, words) for one, words in likeliest]),
    )


def _covered(themes: tuple[Theme, ...], conditions: Conditions) -> tuple[Theme, ...]:
    """Return the incidents that are ruled on under these conditions: before 2019 only those for teaching."""
    if not conditions.former:
        return themes
    kept = (
        replace(theme, incidents=tuple(one for one in theme.incidents if is_taught(one)), open=True)
        for theme in themes
    )
    return tuple(theme for theme in kept if theme.incidents)
