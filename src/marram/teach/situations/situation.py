"""A situation for teaching: what happened, what is known, and the ruling it leads to."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from marram.errors import BookError
from marram.rules.editions import EDITION_2019, as_clarified, edition_of
from marram.rules.engine.changes import substance
from marram.rules.engine.request import fact_named, rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import incident
from marram.rules.result import NeedFacts
from marram.rules.ruling import Outcome, Ruling
from marram.teach.situations.how_often import rarity
from marram.teach.situations.order_of_telling import in_order
from marram.words.headline import headline
from marram.words.telling import telling
from marram.words.texts import text

_MEDIUM, _HARD = 7, 10
"""From how many points on a situation is of medium difficulty, and hard: about a third of those sampled evenly are each."""
_MOST_PROVISIONS = 3
"""Provisions that count at most: more are cited where relief is offered in many ways, which makes nothing harder."""
NO_HOLE = frozenset(
    {
        "The round",
        "Starting place and order of holes",
        "Clubs, ball and equipment",
        "Resolving doubt and disputes",
        "Other forms of play, partners and teams",
        "Local Rules: course, equipment and conduct",
    }
)
"""Themes in which it need not happen on a hole."""
ON_NO_HOLE: Mapping[str, frozenset[str]] = {
    "breach_when": frozenset({"several_holes"}),
    "during_round": frozenset({"no"}),
}
"""By fact: answers by which it happened on no hole, or on several."""


@dataclass(frozen=True, slots=True)
class Situation:
    """What happened to whom, with all that decides the ruling and nothing else.

    Attributes:
        incident: the incident's name.
        facts: the facts that decide, by name, answers as tokens, in the order in which the Rules ask for them.
        form: the form of play.
        played_on: the day of play.
        player: the first name of the player, invented.
        hole: the hole it happens on; ``None`` where it is not about a hole.
        ruling: the ruling.
    """

    incident: str
    facts: Mapping[str, Any]
    form: FormOfPlay
    played_on: date
    player: str
    hole: int | None
    ruling: Ruling

    def told(self, course: str) -> tuple[str, ...]:
        """Return the situation as sentences, the scene first, and last the edition, where an older one rules otherwise or asks for more."""
        form = text(f"situations.form.{self.form.value}")
        if self.hole is None:
            scene = text("situations.scene.in_competition", player=self.player, course=course, form=form)
        else:
            scene = text(
                "situations.scene.on_hole", player=self.player, hole=self.hole, course=course, form=form
            )
        said = (scene, *telling(self.incident, in_order(self.facts), self.player, self.form))
        before = rule(self.incident, self.facts, played_on=as_clarified(EDITION_2019), form_of_play=self.form)
        if not isinstance(before, NeedFacts) and (
            not isinstance(before, Ruling) or headline(before, self.form) == self.headline
        ):
            return said
        return (*said, text("situations.edition", edition=edition_of(self.played_on).year))

    @property
    def headline(self) -> str:
        """The ruling in one line."""
        return headline(self.ruling, self.form)

    @property
    def points(self) -> int:
        """How hard it is to rule on.

        One for each fact that decides (a Local Rule that is not in force is none), two for each provision that has to be put
        together with others, four where an Exception or a Clarification decides, two for each step from what happens in most
        rounds to what happens rarely.

        Chosen on 80 situations that were judged from 1 to 5 before their grade was seen, tried on 40 others: there its rank
        correlation with the judgement is 0.58; that of facts, exceptions and editions that differ, as it was before, 0.19.
        On 75 more, judged by two who knew nothing of each other (0.86 between them), it is 0.52; the means judged of easy, medium
        and hard ones are 1.9, 2.3 and 3.1 of 5.
        What told nothing more: beliefs that err, near rulings, editions that differ, a penalty beside relief.
        """
        facts = sum(not name.startswith("local_rule_") or _holds(told) for name, told in self.facts.items())
        cited = self.ruling.citations
        exception = any("Exception" in one or "Clarification" in one for one in cited)
        together = min(len(cited), _MOST_PROVISIONS)
        return facts + 2 * together + 4 * exception + 2 * rarity(incident(self.incident))

    @property
    def level(self) -> int:
        """How hard it is, from 1 to 3."""
        points = self.points
        return 1 + (points >= _MEDIUM) + (points >= _HARD)

    @property
    def ruled_otherwise_before(self) -> Ruling | None:
        """The ruling of 2019, where the same facts were then ruled otherwise."""
        before = ruled(self.incident, self.facts, self.form, as_clarified(EDITION_2019))
        if not isinstance(before, Ruling) or substance(before) == substance(self.ruling):
            return None
        return before


def _holds(told: object) -> bool:
    return told in {True, "yes", "true"}


def ruled(name: str, facts: Mapping[str, Any], form: FormOfPlay, day: date) -> Outcome | None:
    """Return the outcome of facts on a day; ``None`` where something is still open."""
    found = rule(name, facts, played_on=day, form_of_play=form)
    return None if isinstance(found, NeedFacts) else found


def solved(situation: Situation) -> Outcome:
    """Rule on a situation anew as an official does: asked one question after the other, from nothing.

    Raises:
        BookError: a question comes up that the situation does not tell of.
    """
    known: dict[str, Any] = {}
    while True:
        found = rule(situation.incident, known, played_on=situation.played_on, form_of_play=situation.form)
        if not isinstance(found, NeedFacts):
            return replace(found, reasons=())
        if found.fact not in situation.facts:
            raise BookError(
                f"{situation.incident}: {found.fact} is asked for, and the situation does not tell it."
            )
        known[found.fact] = situation.facts[found.fact]


def deciding(found: Outcome, facts: Mapping[str, Any]) -> dict[str, Any]:
    """Return those of the facts that an outcome rests on, as tokens, in the order in which they were read."""
    kept = {}
    for reason in found.reasons:
        if reason.fact in facts:
            fact = fact_named(reason.fact)
            answer = facts[reason.fact]
            kept[reason.fact] = fact.token(fact.parse(answer)) if fact.answers else answer
    return kept
