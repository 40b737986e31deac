"""What is read in the words that an incident was told in: shown for confirmation, one tap each; nothing counts before.

Only what can still be asked on the way from here is shown: the rest can change nothing, and would stand before the ruling.
"""

from dataclasses import dataclass

from marram.desk.rulings.consultation import Consultation
from marram.rules.engine.export import graph_of
from marram.rules.engine.graph import Graph, GraphNode, vertices
from marram.rules.engine.request import fact_named, read_facts
from marram.rules.finding.told_facts import told_facts
from marram.words.language import translate
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class Proposal:
    """An answer that was read and not yet confirmed.

    Attributes:
        question: the question it answers.
        answer: the answer in words.
        words: the words it rests on.
        yes: the address that confirms it.
        change: the address that asks the question instead.
    """

    question: str
    answer: str
    words: str
    yes: str
    change: str


@dataclass(frozen=True, slots=True)
class Proposals:
    """All that was read and not yet confirmed, and the address that confirms it all."""

    each: tuple[Proposal, ...]
    all_yes: str


def proposals(found: Consultation) -> Proposals | None:
    """Return what is read in the words the incident was told in, or ``None`` where there is nothing to confirm."""
    case = found.case
    if not case.said or not case.what:
        return None
    read = told_facts(case.what, case.said, found.known.keys())
    open_facts = _still_asked(found) if read else frozenset()
    read = tuple(one for one in read if one.fact in open_facts)
    if not read:
        return None
    every = {**case.facts, **{one.fact: one.answer for one in read}}
    return Proposals(
        tuple(
            Proposal(
                translate()(fact_named(one.fact).question),
                _answer(one.fact, one.answer),
                one.words,
                case.url("/case", facts={**case.facts, one.fact: one.answer}, ask=None),
                case.asking(one.fact),
            )
            for one in read
        ),
        case.url("/case", facts=every, ask=None),
    )


def _still_asked(found: Consultation) -> frozenset[str]:
    """Return the names of the facts that can still change what the incident leads to."""
    conditions = found.case.conditions
    whole = graph_of(found.case.what or "", conditions.on, conditions.sides)
    left = vertices(Graph().restrict(whole, read_facts(found.known)))
    return frozenset(one.fact.name for one in left if isinstance(one, GraphNode))


def _answer(name: str, token: str) -> str:
    fact = fact_named(name)
    if not fact.answers:
        return text("rulings.said.amount", number=token, unit=text(f"units.{fact.unit}"))
    return translate()(fact.answers[fact.parse(token)])
