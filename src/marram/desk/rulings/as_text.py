"""A ruling as plain text, to be copied or shared: what was found, what to do, the Rules it rests on, who decides."""

from collections.abc import Iterator, Sequence

from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.consultation import Consultation
from marram.desk.rulings.relief_view import OptionView
from marram.desk.rulings.story_view import StoryView
from marram.desk.shell.wording import rule_words
from marram.relief.pictures.measuring import how_to_measure_anywhere
from marram.services.cases.event import Event
from marram.words.citations import named
from marram.words.language import translate
from marram.words.sheet import Sheet
from marram.words.texts import day_words, text


def ruling_text(
    found: Consultation, sheet: Sheet, options: Sequence[OptionView], event: Event, course_name: str
) -> str:
    """Return a ruling as text, section by section, an empty line between them; it ends with who decides."""
    sections = [
        _headline(sheet, sheet.headline),
        list(_situation(found, event, course_name)),
        _section("rulings.ruling.tell", [sheet.tell] if sheet.tell not in ("", sheet.headline) else []),
        _section("rulings.ruling.penalty", [] if sheet.penalty_said else sheet.penalties),
        _section("rulings.ruling.caution", sheet.cautions),
        _section("rulings.ruling.what_to_do", sheet.further if sheet.kind == "ruling" else sheet.steps),
        _section("rulings.ruling.weigh", sheet.criteria),
        _section("rulings.ruling.ends", sheet.outcomes),
        _section("rulings.ruling.options", list(_options(found, options))),
        _section("rulings.ruling.if_wrong", sheet.if_wrong),
        _section(
            "rulings.ruling.why", [_with(one.question, one.answer, named(one.citation)) for one in sheet.why]
        ),
        _section(
            "rulings.ruling.rules",
            [f"{rule_words(one.citation)}: {one.statement}" for one in sheet.provisions],
        ),
        [sheet.reminder],
    ]
    return "\n\n".join("\n".join(lines) for lines in sections if lines)


def story_text(view: StoryView, event: Event, course_name: str) -> str:
    """Return a story as text: the ruling on all acts together, then each of them; it ends with who decides."""
    assert view.sheet is not None
    sheet = view.sheet
    acts = [
        f"{part.number}. {part.title}: {part.sheet.headline} {view.taken(part.number)}".rstrip()
        for part in view.parts
    ]
    rests_on = dict.fromkeys(one for part in view.parts for one in part.sheet.provisions)
    sections = [
        _headline(sheet, view.headline),
        list(_conditions(view.case, event, course_name)),
        _section("rulings.ruling.tell", [sheet.tell] if sheet.tell not in ("", view.headline) else []),
        _section("rulings.ruling.penalty", [] if sheet.penalty_said else sheet.penalties),
        _section("rulings.ruling.caution", list(view.cautions)),
        _section("rulings.together.ball", sheet.further),
        _section("rulings.together.corrections", list(view.corrections)),
        _section("rulings.together.incidents", acts),
        _section(
            "rulings.ruling.rules",
            [
                f"{rule_words(one.citation)}: {one.statement}"
                for one in dict.fromkeys((*sheet.provisions, *rests_on))
            ],
        ),
        [sheet.reminder],
    ]
    return "\n\n".join("\n".join(lines) for lines in sections if lines)


def _headline(sheet: Sheet, headline: str) -> list[str]:
    """Return the first line, and where it is the sentence for the player itself, that it is."""
    tells = sheet.kind == "ruling" and sheet.tell == headline
    return [headline, text("rulings.ruling.tell.just_that")] if tells else [headline]


def _situation(found: Consultation, event: Event, course_name: str) -> Iterator[str]:
    case = found.case
    names, rules = _conditions(case, event, course_name)
    yield names
    where = [] if found.hole is None else [text("shell.hole_number", number=found.hole.number)]
    if found.place is not None:
        where.append(found.place.words)
    if case.incident:
        where.append(translate()(case.incident.title))
    yield " · ".join(where)
    yield rules


def _options(found: Consultation, options: Sequence[OptionView]) -> Iterator[str]:
    for one in options:
        yield from _option(one)
    if any(one.words.size for one in options):
        yield how_to_measure_anywhere(found.case.conditions.club)


def _conditions(case: CaseAddress, event: Event, course_name: str) -> tuple[str, str]:
    """Return the competition with its round and day, and the Rules that it is played under."""
    conditions = case.conditions
    names = (event.name or course_name, event.round_on(conditions.on), day_words(conditions.on))
    rules = (
        conditions.rules_words,
        conditions.clarified_words,
        conditions.form_words,
        conditions.local_words,
    )
    return " · ".join(filter(None, names)), " · ".join(filter(None, rules))


def _option(one: OptionView) -> Iterator[str]:
    words = one.words
    yield f"{one.letter}. {words.title} ({rule_words(words.citation)}), {words.cost}: {'; '.join((words.area, *words.limits))}. {words.how}"
    yield from (f"   {step}" for step in one.how_to_measure)


def _with(question: str, answer: str, citation: str) -> str:
    return f"{question} {answer} ({rule_words(citation)})" if citation else f"{question} {answer}"


def _section(heading: str, lines: Sequence[str]) -> list[str]:
    return [text(heading), *lines] if lines else []
