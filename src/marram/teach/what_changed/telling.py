"""A change in words: what it is about, how it was, how it is now, and the situation that shows it, ruled on both days."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from marram.rules.editions import EDITION_2019, EDITION_2023
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.incidents import incident
from marram.rules.story.story import Happened, rule_story
from marram.teach.what_changed.grouping import Touched
from marram.teach.what_changed.register import BY_KEY
from marram.words.changes import differences, fact_words
from marram.words.language import translate
from marram.words.sheet import Sheet, sheet
from marram.words.story import story_sheet
from marram.words.texts import text

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
    """A situation ruled on both days.

    Attributes:
        what: what happened.
        facts: what is known of it, each as question and answer.
        before: the ruling on the earlier day in one line.
        after: the ruling on the later day.
        differences: what stands in one of the two rulings only, line by line.
    """

    what: str
    facts: tuple[str, ...]
    before: str
    after: str
    differences: tuple[str, ...]


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


def told(found: Iterable[Touched], earlier: date, later: date) -> list[ToldChange]:
    """Return changes in words, what players meet most often first.

    Args:
        found: what changed between the two days.
        earlier: the earlier day.
        later: the later one.
    """
    every = [_told(one, earlier, later) for one in found]
    if earlier >= EDITION_2019 and earlier < EDITION_2023 <= later:
        every.append(_several_breaches(earlier, later))
    return sorted(every, key=lambda one: (one.common, -(one.situations or 0), one.key))


def _told(one: Touched, earlier: date, later: date) -> ToldChange:
    facts = one.example.facts
    before, after = (_sheet(one.example.incident, facts, day) for day in (earlier, later))
    example = Shown(
        translate()(incident(one.example.incident).title),
        tuple(fact_words(name, answer) for name, answer in facts.items()),
        before.headline,
        after.headline,
        tuple(differences(before, after)),
    )
    known = BY_KEY.get(one.key)
    if known is None:
        words = (text("what_changed.other"), text("what_changed.other.was"), text("what_changed.other.now"))
        return ToldChange(one.key, "", *words, 4, one.situations, example)
    return ToldChange(one.key, known.rule, *_words(one.key), known.common, one.situations, example)


def _words(key: str) -> tuple[str, str, str]:
    title, before, now = (text(f"what_changed.{key}.{part}") for part in ("title", "before", "now"))
    return title, before, now


def _sheet(name: str, facts: Mapping[str, Any], day: date) -> Sheet:
    given = facts.get(form_of_play.name)
    form = None if given is None else FormOfPlay(given)
    return sheet(rule(name, facts, played_on=day), form_of_play=form)


def _several_breaches(earlier: date, later: date) -> ToldChange:
    before, after = (_both_touches(day) for day in (earlier, later))
    shown = Shown(
        "; ".join(translate()(incident(one.incident).title) for one in _TWO_TOUCHES),
        tuple(fact_words(name, answer) for one in _TWO_TOUCHES for name, answer in one.facts.items())
        + tuple(fact_words(name, answer) for name, answer in _UNRELATED.items()),
        before.headline,
        after.headline,
        tuple(differences(before, after)),
    )
    return ToldChange(SEVERAL_BREACHES, "1.3c(4)", *_words(SEVERAL_BREACHES), MOST_ROUNDS, None, shown)


def _both_touches(day: date) -> Sheet:
    form = FormOfPlay.STROKE_PLAY
    result = rule_story(_TWO_TOUCHES, _UNRELATED, played_on=day, form_of_play=form, local_rules=())
    words = story_sheet(result, form_of_play=form, given=_UNRELATED)
    assert words is not None  # both acts are ruled with what is given here
    return words
