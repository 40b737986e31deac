"""A briefing drawn up: situations and changes into pages, in words."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from typing import Any

from marram.course.model import Course
from marram.errors import InputError
from marram.rules.engine.request import fact_named
from marram.rules.former_names import incident_now
from marram.rules.incidents import incident
from marram.rules.local_rules.register import REGISTER
from marram.said import said
from marram.services.cases.given import day_of_edition
from marram.teach.beliefs.telling import believed_of
from marram.teach.book.permanent import situation_at
from marram.teach.briefings.choosing import Met, for_beginners, of_event, of_local_rules, of_topics
from marram.teach.briefings.deck import Deck, Page, Topic
from marram.teach.drawings.placing import Placed, placed
from marram.teach.drawings.scene import scene_svg
from marram.teach.explaining import explain
from marram.teach.pathway import MOST_BRANCHES, path_svg
from marram.teach.principles import principles_of
from marram.teach.situations.situation import Situation
from marram.teach.what_changed import kept
from marram.teach.what_changed.grouping import Touched
from marram.teach.what_changed.telling import ToldChange, told
from marram.words.language import translate
from marram.words.provisions import cited
from marram.words.texts import count_text, text

KINDS = ("topics", "beginners", "changes", "local_rules", "event")
MOST_REASONS = 4
"""Provisions named on a page at most (own choice: what can be read from the last row)."""


def drawn_up(
    topic: Topic, course: Course | None = None, *, cases: Iterable[Mapping[str, Any]] = (), title: str = ""
) -> Deck:
    """Return a briefing of a topic, the same for the same topic, course and cases.

    Args:
        topic: what it is about.
        course: the course it is told of and drawn on; ``None``: told without a drawing.
        cases: what happened at the event, where it is about one.
        title: its name; empty: that of the topic.

    Raises:
        InputError: the topic cannot be drawn up; every fault is listed.
    """
    if topic.kind not in KINDS:
        raise InputError(said("There is no briefing of {kind}. Give one of {kinds}.", kind=topic.kind, kinds=", ".join(KINDS)))  # fmt: skip
    left_out = 0
    pages: list[Page] = []
    if topic.kind == "changes":
        pages = _of_changes(topic, course)
    elif topic.kind == "local_rules":
        by_code, without = of_local_rules(topic.given, topic.seed, topic.count)
        pages = [page_of(one, course, _of_local_rule(code)) for code, one in by_code.items()]
        left_out = len(without)
    elif topic.kind == "event":
        met, left_out = of_event(cases, topic.count)
        pages = [page_of(one.situation, course, first=_as_met(one)) for one in met]
    else:
        beginners = topic.kind == "beginners"
        found = for_beginners(topic.seed, topic.count) if beginners else of_topics(topic.given, topic.seed, topic.count)  # fmt: skip
        pages = [page_of(one, course, plain=beginners) for one in found]
    if not pages:
        raise InputError(
            said("There is nothing to show: none of what was given leads to a situation with a ruling.")
        )
    return Deck(title or text(f"briefings.title.{topic.kind}"), topic, tuple(pages), left_out=left_out)


def page_of(
    one: Situation,
    course: Course | None,
    title: str = "",
    *,
    changed: Sequence[str] = (),
    first: Sequence[str] = (),
    plain: bool = False,
) -> Page:
    """Return the page of a situation.

    Args:
        one: the situation.
        course: the course it is told of.
        title: what the page is called; empty: as the incident.
        changed: what changed, in words, where it is a page of that; it comes before the rest, which is then short.
        first: what is said before the reasons.
        plain: whether Local Rules that are not in force are told without their codes, for whoever does not know them.
    """
    reasons = 1 if changed else MOST_REASONS
    why = [
        *first,
        *changed,
        *(
            text("briefings.rests_on", citation=each.citation, statement=each.statement)
            for each in (cited(found) for found in one.ruling.citations[:reasons])
            if each.statement
        ),
    ]
    why += [text("briefings.principle", sentence=each) for each in principles_of(one.ruling.citations)[:1]]
    why += [
        text("briefings.believed", belief=each.said, why=each.why)
        for each in believed_of(one.incident, one.facts, one.headline, form=one.form, played_on=one.played_on)
    ]
    made = {
        "title": title or translate()(incident(one.incident).title),
        "told": " ".join(_told(_as_placed(one, course), course, plain=plain)),
        "question": text("briefings.question"),
        "ruling": one.headline,
        "why": "\n".join(why) or text("briefings.by_definition"),
    }
    return Page(one.incident, dict(one.facts), one.form.value, made)


def _as_met(one: Met) -> list[str]:
    """Return how a situation was met at an event, in sentences."""
    return [
        count_text("briefings.times", one.times),
        *(text("briefings.went.corrected", headline=each) for each in one.at_first),
        *(text(f"briefings.went.{each}") for each in ("otherwise", "opinion") if each in one.went),
    ]


def _told(one: Situation, course: Course | None, *, plain: bool) -> tuple[str, ...]:
    if not plain:
        return one.told(_called(course))
    rest = {
        name: answer
        for name, answer in one.facts.items()
        if not (name.startswith("local_rule_") and answer in {"no", False})
    }
    said_plainly = replace(one, facts=rest).told(_called(course))
    return said_plainly if len(rest) == len(one.facts) else (*said_plainly, text("briefings.no_local_rule"))


def _as_placed(one: Situation, course: Course | None) -> Situation:
    """Return a situation as it is told of a course: of the hole it was placed on."""
    there = placed(one, course) if course is not None else None
    return there.situation if isinstance(there, Placed) else one


def _called(course: Course | None) -> str:
    return (course.name if course is not None else "") or text("shell.the_course")


def _of_local_rule(code: str) -> str:
    """Return the title of the page of a Local Rule: its code, and what it is about."""
    about = translate()(REGISTER[code].title) if code in REGISTER else ""
    return text("briefings.local_rule", code=code, about=about) if about else code


def situation_of(page: Page) -> Situation:
    """Return the situation of a page, ruled today.

    Raises:
        InputError: its facts lead to no ruling any longer.
    """
    pairs = [("form", page.form), *((name, str(answer)) for name, answer in page.facts.items())]
    return situation_at(page.incident, pairs)


def drawing_of(page: Page, course: Course | None, prefix: str = "scene") -> str:
    """Return the drawing of a page as SVG; empty where there is no ground to draw."""
    if course is None or not page.incident:
        return ""
    try:
        there = placed(situation_of(page), course)
    except InputError:
        return ""
    return scene_svg(there, prefix=prefix) if isinstance(there, Placed) else ""


def way_of(
    page: Page,
    *,
    wide: bool = False,
    prefix: str = "way",
    two_until: int | None = None,
    most: int | None = None,
) -> str:
    """Return the way to the ruling of a page as SVG; empty where nothing was asked on it.

    Args:
        page: the page.
        wide: side by side, for a slide.
        prefix: starts the ids.
        two_until: of a way of more questions only one other answer is shown at each; ``None``: two always.
        most: of a way of more questions there is no picture; ``None``: however long it is.
    """
    if not page.incident:
        return ""
    try:
        one = situation_of(page)
    except InputError:
        return ""
    why = explain(one.incident, one.facts, played_on=one.played_on, form_of_play=one.form)
    steps = sum(each.matters for each in why.decided)
    if most is not None and steps > most:
        return ""
    branches = MOST_BRANCHES if two_until is None or steps <= two_until else 1
    return path_svg(why, wide=wide, prefix=prefix, branches=branches) if steps else ""


def _of_changes(topic: Topic, course: Course | None) -> list[Page]:
    years = topic.given or ("2019", "2023")
    if len(years) != 2:
        raise InputError(said("Give the years of two editions, such as 2019 and 2023."))
    earlier, later = (day_of_edition(year, said("edition")) for year in years)
    found = kept.found(earlier, later)
    by_key = {one.key: one for one in found}
    changed = told(found, earlier, later)[: topic.count]
    named = years[0], years[1]
    return [_of_change(one, by_key.get(one.key), course, named) for one in changed]


def _of_change(
    one: ToldChange, touched: Touched | None, course: Course | None, years: tuple[str, str]
) -> Page:
    """Return the page of a change: told with all that the two rulings rest on, and ruled both ways."""
    changed = [
        text("briefings.changed", before=one.before, now=one.now),
        text("briefings.ruled_in", year=years[0], headline=one.example.before),
        text("briefings.ruled_in", year=years[1], headline=one.example.after),
    ]
    if touched is not None:
        facts = dict(touched.example.facts)
        form = str(facts.pop("form_of_play", "stroke_play"))
        facts.pop("date_of_play", None)
        try:
            pairs = [("form", form), *((name, _token(name, to)) for name, to in facts.items())]
            shown = situation_at(incident_now(touched.example.incident), pairs)
        except InputError:
            pass
        else:
            page = page_of(shown, course, one.title, changed=changed)
            whole = replace(
                _as_placed(shown, course), facts={name: _token(name, to) for name, to in facts.items()}
            )
            return replace(page, made={**page.made, "told": " ".join(whole.told(_called(course)))})
    made = {
        "title": one.title,
        "told": one.example.told or "\n".join((one.example.what, *one.example.facts)),
        "question": text("briefings.question"),
        "ruling": one.example.after,
        "why": "\n".join(changed),
    }
    return Page("", {}, "", made)


def _token(name: str, answer: Any) -> str:
    fact = fact_named(name)
    return str(fact.token(fact.parse(answer)) if fact.answers else answer)


def rules_of(page: Page) -> str:
    """Return the first provisions that a page's ruling rests on, as they are cited; empty for words alone."""
    if not page.incident:
        return ""
    try:
        return ", ".join(situation_of(page).ruling.citations[:2])
    except InputError:
        return ""
