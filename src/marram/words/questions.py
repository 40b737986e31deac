"""Questions in words, with what each answer would leave open."""

from dataclasses import dataclass
from typing import Any

from marram.rules.engine.fact import Fact
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.result import Stake
from marram.words.language import translate
from marram.words.messages import term
from marram.words.provisions import Cited, cited
from marram.words.stakes import costs_in_short
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class AnswerWords:
    """One answer a question allows: its token, its words, and what it would leave open."""

    token: str
    words: str
    stake: str


@dataclass(frozen=True, slots=True)
class QuestionWords:
    """A question as it is put to an official. ``kind`` is ``choice``, ``number`` or ``date``."""

    fact: str
    kind: str
    question: str
    help: str
    source: str
    decided_by: str
    unit: str
    answers: tuple[AnswerWords, ...]
    why: Cited | None = None
    unit_words: str = ""


def question_words(
    fact: Fact[Any], stakes: tuple[Stake, ...] = (), form: FormOfPlay | None = None, citation: str = ""
) -> QuestionWords:
    """Return a question as it is put to an official, with what each answer would leave open."""
    said = [(stake, costs_in_short(stake.costs, form)) for stake in stakes]
    telling = len({words for _, words in said}) > 1
    by_answer = {answer: words for stake, words in said for answer in stake.answers} if telling else {}
    possible = {answer for stake in stakes for answer in stake.answers} or fact.answers.keys()
    open_kind = "date" if fact.is_date else "number"
    return QuestionWords(
        fact.name,
        "choice" if fact.answers else open_kind,
        translate()(fact.question),
        translate()(fact.help),
        fact.source,
        term(fact.decided_by),
        fact.unit,
        tuple(
            AnswerWords(fact.token(answer), translate()(words), by_answer.get(answer, ""))
            for answer, words in yes_first(fact)
            if answer in possible
        ),
        cited(citation) if citation else None,
        text(f"units.{fact.unit}") if fact.unit else "",
    )


def yes_first(fact: Fact[Any]) -> list[tuple[Any, str]]:
    """Return the answers of a fact in the order in which every question offers them: yes, no, all else as declared."""
    order = {"yes": 0, "no": 1}
    both = order.keys() <= {fact.token(answer) for answer in fact.answers}
    return sorted(fact.answers.items(), key=lambda one: order.get(fact.token(one[0]), 2) if both else 0)
