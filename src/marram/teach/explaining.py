"""Why this ruling: the facts that decided it, and for each what another answer would have led to."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from marram.errors import InputError
from marram.rules.engine.conditions import conditions_of
from marram.rules.engine.fact import Fact
from marram.rules.engine.request import book, book_among, fact_named, read_facts, rule
from marram.rules.facts.conditions import FormOfPlay, Sides, date_of_play
from marram.rules.facts.conditions import form_of_play as the_form
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.nearby import ends_told
from marram.rules.result import NeedFacts, Result
from marram.rules.ruling import Outcome, Reason, Ruling
from marram.said import said
from marram.words.changes import fact_words
from marram.words.language import translate
from marram.words.messages import amount_words
from marram.words.sheet import sheet

MOST_ENDS = 3
"""How many of the rulings that another answer leaves open are named (own choice)."""


@dataclass(frozen=True, slots=True)
class Instead:
    """Other answers to one fact, and where they lead.

    Attributes:
        answers: the answers, in words.
        rulings: the rulings they can end in, each in one line; several where it would depend on more. At most
            :data:`MOST_ENDS` are named.
        more: how many further ones there are.
        same: whether it is the ruling that was given.
    """

    answers: tuple[str, ...]
    rulings: tuple[str, ...]
    more: int
    same: bool


@dataclass(frozen=True, slots=True)
class Decided:
    """One fact that was read on the way.

    Attributes:
        fact: its name.
        told: question and answer.
        asked: the question alone.
        answer: the answer alone.
        citation: the provision that read it.
        instead: where other answers lead, those to another ruling first.
    """

    fact: str
    told: str
    asked: str
    answer: str
    citation: str
    instead: tuple[Instead, ...]

    @property
    def matters(self) -> bool:
        """Whether another answer alone would have changed the ruling."""
        return any(not one.same for one in self.instead)


@dataclass(frozen=True, slots=True)
class Explained:
    """A ruling and why: its line, the facts in the order in which they were read, and the provisions it cites."""

    headline: str
    decided: tuple[Decided, ...]
    citations: tuple[str, ...]


def explain(
    incident: str,
    facts: Mapping[str, Any],
    *,
    played_on: date,
    form_of_play: FormOfPlay | None = None,
    local_rules: Iterable[str] | None = None,
    sides: Sides | None = None,
) -> Explained:
    """Explain the ruling on an incident by the answers that would have changed it.

    Args:
        incident: the name of the incident.
        facts: what is known, by fact name; all that the ruling needs.
        played_on: the day of the round.
        form_of_play: the form of play, if known.
        local_rules: the Local Rules in force, if known.
        sides: who plays together, if known.

    Raises:
        InputError: a fact is still open, or what :func:`marram.rule` refuses.
    """
    adopted = None if local_rules is None else frozenset(local_rules)
    result = rule(
        incident, facts, played_on=played_on, form_of_play=form_of_play, local_rules=adopted, sides=sides
    )
    if isinstance(result, NeedFacts):
        raise InputError(
            said(
                "There is no ruling to explain yet: {fact} is open. 'marram rule {incident}' asks for it.",
                fact=result.fact,
                incident=incident,
            )
        )
    alone = sides in {None, Sides.INDIVIDUAL}
    pages = book(incident) if sides is None or alone else book_among(incident, sides)
    known = {**conditions_of(incident, played_on, form_of_play, adopted), **read_facts(facts)}
    if sides is not None:
        known[the_sides] = sides
    line = _line(result, form_of_play)

    def lead(fact: Fact[Any], answer: Any) -> tuple[str, ...]:
        form = answer if fact is the_form else form_of_play
        ends = ends_told(pages, {**known, fact: answer})
        return tuple(dict.fromkeys(_line(end, form) for end in ends))

    decided = []
    for reason in result.reasons:
        fact = fact_named(reason.fact)
        if fact in {date_of_play, the_sides}:
            continue
        grouped: dict[tuple[str, ...], list[Any]] = {}
        for answer in _others(fact, reason):
            grouped.setdefault(lead(fact, answer), []).append(answer)
        instead = [
            Instead(
                tuple(_answer_words(fact, answer) for answer in answers),
                ends[:MOST_ENDS],
                max(0, len(ends) - MOST_ENDS),
                ends == (line,),
            )
            for ends, answers in grouped.items()
        ]
        given = known.get(fact, next(iter(reason.answers), reason.at_most))
        asked = translate()(fact.question)
        decided.append(
            Decided(
                fact.name,
                fact_words(fact.name, given),
                asked,
                fact_words(fact.name, given).removeprefix(asked).strip(),
                reason.citation,
                tuple(sorted(instead, key=lambda one: one.same)),
            )
        )
    return Explained(line, tuple(decided), result.citations if isinstance(result, Ruling) else ())


def _line(outcome: Result | Outcome, form: FormOfPlay | None) -> str:
    return sheet(outcome, form_of_play=form).headline


def _answer_words(fact: Fact[Any], answer: Any) -> str:
    return translate()(fact.answers[answer]) if fact.answers else amount_words(answer, fact.unit)


def _others(fact: Fact[Any], reason: Reason) -> Iterator[Any]:
    """Yield the answers that the ruling does not rest on; of a number or day, the nearest beyond its bounds."""
    if fact.answers:
        yield from (answer for answer in fact.answers if answer not in reason.answers)
        return
    if reason.above is not None:
        yield reason.above
    if reason.at_most is not None:
        yield reason.at_most + (timedelta(days=1) if fact.is_date else 1)
