"""A story consulted: each incident by itself, what separates them, and the combined ruling (Rule 1.3c(4))."""

from dataclasses import dataclass, replace
from typing import Any

from marram.course.model import Course
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.consultation import Consultation, consult
from marram.desk.rulings.story import at_incident, handed_over, together, without_incident
from marram.errors import UnknownIncident
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.facts.several import option_taken
from marram.rules.penalty import Who
from marram.rules.result import Result
from marram.rules.ruling import Ruling
from marram.rules.story.story import ANOTHER_PLAYER, Happened, rule_story, total_strokes
from marram.rules.story.strokes import StrokeCount
from marram.said import said
from marram.words.headline import forced_costs
from marram.words.language import translate
from marram.words.penalties import strokes_words
from marram.words.sheet import Sheet
from marram.words.story import story_sheet


@dataclass(frozen=True)
class Part:
    """One incident of a story.

    Attributes:
        number: its place in the story.
        found: what is known of it, and what the Rules say of it by itself.
        url: the address of its own page.
        remove: the address of the story without it.
    """

    number: int
    found: Consultation
    url: str
    remove: str

    @property
    def title(self) -> str:
        """What happened, in words."""
        one = self.found.case.incident
        return translate()(one.title) if one else ""

    @property
    def sheet(self) -> Sheet:
        """What the Rules say of it by itself, in words."""
        assert self.found.sheet is not None
        return self.found.sheet

    @property
    def rather_url(self) -> str | None:
        """The address of the incident that it rather is, with the answers given; ``None`` where it is this one."""
        return handed_over(self.found.case, self.sheet.rather) if self.sheet.rather else None

    @property
    def relief_costs(self) -> dict[str, list[str]]:
        """What taking relief costs on top of the penalties: the options by their cost, in words."""
        result = self.found.result
        costs: dict[str, list[str]] = {}
        if isinstance(result, Ruling):
            for option, words in zip(result.relief, self.sheet.options, strict=True):
                if option.penalty:
                    costs.setdefault(strokes_words(option.penalty), []).append(words.title)
        return costs


@dataclass(frozen=True)
class StoryView:
    """A story as the screen shows it.

    Attributes:
        case: the story as its address holds it; no incident is the page's own.
        parts: the incidents, in order.
        result: the combined ruling, or the question between incidents; ``None`` while an incident is not ruled.
        sheet: the result in words; ``None`` likewise.
        totals: penalty strokes in stroke play, by who gets them; ``None`` stands for disqualified. Empty in match
            play, while the form of play is open, and while nothing is combined.
        count: the strokes of the player; ``None`` while nothing is combined.
    """

    case: CaseAddress
    parts: tuple[Part, ...]
    result: Result | None
    sheet: Sheet | None
    totals: dict[Who, int | None]
    count: StrokeCount | None = None

    @property
    def open_parts(self) -> list[Part]:
        """Incidents with a question still to be answered."""
        return [part for part in self.parts if part.sheet.kind == "need_facts"]

    @property
    def unruled_parts(self) -> list[Part]:
        """Incidents that end in a judgement or are not covered: nothing can be added up from them."""
        return [part for part in self.parts if part.sheet.kind in ("judgement", "hand_over", "not_covered")]

    def taken(self, number: int) -> str:
        """What the player took of the relief after an incident, in words; empty where it was not told."""
        fact = option_taken[number - 1]
        answer = self.case.between.get(fact.name)
        return "" if answer is None else translate()(fact.answers[fact.parse(answer)])

    @property
    def headline(self) -> str:
        """The combined ruling in one line."""
        assert self.sheet is not None
        return self.sheet.headline

    @property
    def counts(self) -> bool:
        """Whether strokes on the hole still count: not for one who is disqualified, nor once the hole of a match is lost."""
        return self.count is None or self.count.penalty_strokes is not None

    @property
    def corrections(self) -> dict[str, list[int]]:
        """Which mistakes can still be corrected, what that takes, and until when, with the numbers of the incidents."""
        still = self.sheet.if_wrong if self.sheet and isinstance(self.result, Ruling) else ()
        return {words: numbers for words, numbers in self._by_words("if_wrong").items() if words in still}

    @property
    def on_top(self) -> list[tuple[Part, str, list[str]]]:
        """What relief that still stands open costs besides the total, by incident.

        Relief taken is in the total, and relief that must be taken in the headline.
        """
        if self.relief_in_headline:
            return []
        return [
            (part, cost, titles) for part in self.options_from for cost, titles in part.relief_costs.items()
        ]

    @property
    def relief_in_headline(self) -> bool:
        """Whether relief must be taken that is not free: the headline counts it, so that no total stands beside it."""
        return isinstance(self.result, Ruling) and any(forced_costs(self.result, _form(self.case)))

    @property
    def options_from(self) -> list[Part]:
        """The incidents whose relief options still stand in the combined ruling."""
        still = self.sheet.options if self.sheet else ()
        return [part for part in self.parts if any(one in still for one in part.sheet.options)]

    @property
    def cautions(self) -> dict[str, list[int]]:
        """The safety cautions of every incident."""
        return self._by_words("cautions")

    def _by_words(self, attribute: str) -> dict[str, list[int]]:
        found: dict[str, list[int]] = {}
        for part in self.parts:
            for words in getattr(part.sheet, attribute):
                found.setdefault(words, []).append(part.number)
        return found


def consult_story(course: Course, case: CaseAddress) -> StoryView:
    """Return what the Rules say of all incidents of a story.

    Raises:
        UnknownIncident: nobody said what happened.
        InputError: something in the case cannot be used.
    """
    case = together(case)
    if not case.kept:
        raise UnknownIncident(said("Nobody said what happened. Give what=…; /api/incidents lists the names."))
    parts = []
    for number in case.kept:
        found = consult(course, at_incident(case, number))
        url = at_incident(case, number).url("/case")
        parts.append(Part(number, found, url, _removed(without_incident(case, number))))
    happened = [
        Happened(
            part.found.case.what or "",
            part.found.known,
            strokes=case.strokes.get(part.number),
            by=ANOTHER_PLAYER if part.number in case.by_another else None,
        )
        for part in parts
    ]
    form = _form(case)
    request = {**case.conditions.request(), "form_of_play": form}
    ruled = rule_story(happened, case.between, **request, strokes_before=case.strokes_before)
    given: dict[str, Any] = {"date_of_play": case.conditions.on, **case.between}
    words = story_sheet(ruled, form_of_play=form, given=given)
    return StoryView(case, tuple(parts), ruled.combined, words, _totals(ruled.combined, form), ruled.count)


def _form(case: CaseAddress) -> FormOfPlay | None:
    if form_of_play.name in case.facts:
        answer: FormOfPlay = form_of_play.parse(case.facts[form_of_play.name])
        return answer
    return case.conditions.form


def _totals(result: Result | None, form: FormOfPlay | None) -> dict[Who, int | None]:
    """Return the penalty strokes by who gets them; the player always stands among them."""
    if not isinstance(result, Ruling) or form in (None, FormOfPlay.MATCH_PLAY):
        return {}
    people = dict.fromkeys((Who.PLAYER, *(one.who for one in result.penalties)))
    if len(people) == 2 and not any(one.who is Who.PLAYER for one in result.penalties):
        people.pop(Who.PLAYER)
    return {
        who: total_strokes(
            replace(result, penalties=tuple(one for one in result.penalties if one.who is who))
        )
        for who in people
    }


def _removed(case: CaseAddress) -> str:
    """Return where to go when an incident is taken away: a story of one is that incident's own page."""
    if not case.kept:
        return case.url("/what")
    return at_incident(case, 1).url("/case") if len(case.kept) == 1 else case.url("/together")
