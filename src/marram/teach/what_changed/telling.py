"""A change in words: what it is about, how it was, how it is now, and the situation that shows it, ruled on both days."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any

from marram.rules.editions import EDITION_2019, EDITION_2023
from marram.rules.engine.request import fact_named, rule
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.incidents import incident
from marram.rules.story.story import Happened, rule_story
from marram.teach.what_changed.grouping import Touched
from marram.teach.what_changed.register import BY_KEY
from marram.words.changes import differences, fact_words
from marram.words.language import translate
from marram.words.sheet import Sheet, sheet
from marram.words.story import story_sheet
from marram.words.telling import is_told, telling
from marram.words.texts import capital, count_text, day_words, text

SEVERAL_BREACHES = "several_breaches"
"""The change of Rule 1.3c(4): it lies between acts, so that no single incident shows it."""
_TWO_TOUCHES = (
    Happened("sand_touched", {"ball_and_bunker": "lies_in_it", "sand_touch": "practice_swing"}),
    Happened("sand_touched", {"ball_and_bunker": "lies_in_it", "sand_touch": "backswing"}),
)
_UNRELATED = {"intervening_event_1": "no", "acts_related_1": "no"}
MOST_ROUNDS = 2
"""How common :data:`SEVERAL_BREACHES` is, as in the register."""


@dataclass(frozen=True, slots=True)
class Shown:
    """A situation ruled twice: on both days, or without and with a Local Rule.

    Attributes:
        what: what happened.
        told: the same as somebody tells it, with all that is known; empty where a fact has no sentence of its own.
        facts: what is known of it, each as question and answer.
        before: the first ruling in one line.
        after: the second.
        differences: what stands in one of the two rulings only, line by line.
        incident: the incident's name; empty for what lies between acts.
        given: what is known, answers as tokens.
    """

    what: str
    told: str
    facts: tuple[str, ...]
    before: str
    after: str
    differences: tuple[str, ...]
    incident: str = ""
    given: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class ToldChange:
    """A change as it is told.

    Attributes:
        key: its name; the place in the book where it has no words of its own yet.
        rule: the provision as numbered on the later day.
        title: what it is about.
        before: how it was.
        now: how it is.
        common: how often players meet it, from 1 (in most rounds) to 4 (hardly ever).
        situations: how many situations of the book it moves; ``None`` for what lies between acts.
        example: the situation that shows it.
    """

    key: str
    rule: str
    title: str
    before: str
    now: str
    common: int
    situations: int | None
    example: Shown


def title_of(count: int, earlier: str, later: str) -> str:
    """Return what a list of changes is called.

    Args:
        count: how many there are.
        earlier: the earlier edition's year, or a day as year-month-day.
        later: the later one.
    """
    if "-" not in earlier + later:
        return count_text("what_changed.count", count, earlier=earlier, later=later)
    days = [date.fromisoformat(one) for one in (earlier, later) if "-" in one]
    if len(days) > 1 and days[1] - days[0] == timedelta(days=1):
        return count_text("what_changed.on", count, day=called(later))
    return count_text("what_changed.between", count, earlier=called(earlier), later=called(later))


def called(given: str) -> str:
    """Return how an edition or a day is called: its year, or the day as it is spoken."""
    return day_words(date.fromisoformat(given)) if "-" in given else given


def told(
    found: Iterable[Touched], earlier: date, later: date, *, rare_first: bool = False
) -> list[ToldChange]:
    """Return changes in words, what players meet most often first.

    Args:
        found: what changed between the two days.
        earlier: the earlier day.
        later: the later one.
        rare_first: instead what is met least, for those who know the rest.
    """
    every = [_told(one, earlier, later) for one in found]
    if earlier >= EDITION_2019 and earlier < EDITION_2023 <= later:
        every.append(_several_breaches(earlier, later))
    common_first = sorted(every, key=lambda one: (one.common, -(one.situations or 0), one.key))
    return common_first[::-1] if rare_first else common_first


def _told(one: Touched, earlier: date, later: date) -> ToldChange:
    before, after = (ruled_sheet(one.example.incident, one.example.facts, day) for day in (earlier, later))
    example = shown(one.example.incident, one.example.facts, before, after)
    known = BY_KEY.get(one.key)
    if known is None:
        words = (text("what_changed.other"), text("what_changed.other.was"), text("what_changed.other.now"))
        return ToldChange(one.key, "", *words, 4, one.situations, example)
    return ToldChange(one.key, known.rule, *_words(one.key), known.common, one.situations, example)


def shown(name: str, facts: Mapping[str, Any], before: Sheet, after: Sheet) -> Shown:
    """Return a situation with its two rulings in words.

    Args:
        name: the incident.
        facts: what is known, answers as tokens.
        before: the first ruling.
        after: the second.
    """
    return Shown(
        translate()(incident(name).title),
        _as_told(name, facts),
        tuple(fact_words(each, answer) for each, answer in facts.items()),
        before.headline,
        after.headline,
        tuple(differences(before, after)),
        name,
        facts,
    )


def _as_told(name: str, facts: Mapping[str, Any]) -> str:
    rest = {each: answer for each, answer in facts.items() if each != form_of_play.name}
    if not all(is_told(fact_named(each)) for each in rest):
        return ""
    form = facts.get(form_of_play.name)
    scene = [] if form is None else [_in_form(FormOfPlay(form))]
    told = telling(name, rest, text("situations.the_player"))
    return " ".join((*scene, *(capital(each) for each in told)))


def _in_form(form: FormOfPlay) -> str:
    return text("what_changed.in_form", form=text(f"situations.form.{form.value}"))


def _words(key: str) -> tuple[str, str, str]:
    title, before, now = (text(f"what_changed.{key}.{part}") for part in ("title", "before", "now"))
    return title, before, now


def ruled_sheet(name: str, facts: Mapping[str, Any], day: date) -> Sheet:
    """Return the ruling on a situation in words, by the form of play it is told in."""
    given = facts.get(form_of_play.name)
    form = None if given is None else FormOfPlay(given)
    return sheet(rule(name, facts, played_on=day), form_of_play=form)


def _several_breaches(earlier: date, later: date) -> ToldChange:
    before, after = (_both_touches(day) for day in (earlier, later))
    example = Shown(
        "; ".join(translate()(incident(one.incident).title) for one in _TWO_TOUCHES),
        text("what_changed.several_breaches.example"),
        tuple(fact_words(name, answer) for one in _TWO_TOUCHES for name, answer in one.facts.items())
        + tuple(fact_words(name, answer) for name, answer in _UNRELATED.items()),
        before.headline,
        after.headline,
        tuple(differences(before, after)),
    )
    return ToldChange(SEVERAL_BREACHES, "1.3c(4)", *_words(SEVERAL_BREACHES), MOST_ROUNDS, None, example)


def _both_touches(day: date) -> Sheet:
    form = FormOfPlay.STROKE_PLAY
    result = rule_story(_TWO_TOUCHES, _UNRELATED, played_on=day, form_of_play=form, local_rules=())
    words = story_sheet(result, form_of_play=form, given=_UNRELATED)
    assert words is not None  # both acts are ruled with what is given here
    return words
