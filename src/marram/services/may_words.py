"""What a player may do, in words: the answer first, its provision, and the nearest thing that is allowed."""

from dataclasses import dataclass

from marram.rules.engine.request import fact_named
from marram.rules.facts.ball import area_of_ball
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.services.may import MayAnswer, Verdict
from marram.words.language import translate
from marram.words.messages import listed
from marram.words.penalties import level_words, relief_cost_words
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class MayLine:
    """One answer in words.

    Attributes:
        act: the name of the act.
        verdict: ``yes``, ``at_a_cost``, ``no``, ``depends`` or ``no_relief``.
        title: the act, as a player asks for it.
        answer: yes, no, or what it costs or hangs on.
        instead: the nearest thing that is allowed; empty where nothing is near.
        citation: the provision that decides.
    """

    act: str
    verdict: str
    title: str
    answer: str
    instead: str
    citation: str


def may_line(answer: MayAnswer, form: FormOfPlay | None) -> MayLine:
    """Return one answer in words."""
    return MayLine(
        answer.act,
        answer.verdict.value,
        text(f"may.act.{answer.act}"),
        _answer_words(answer, form),
        _instead_words(answer),
        _citation(answer),
    )


def _answer_words(answer: MayAnswer, form: FormOfPlay | None) -> str:
    if answer.verdict is Verdict.DEPENDS:
        return text("may.depends", question=translate()(fact_named(answer.hangs_on).question))
    if answer.verdict is Verdict.AT_A_COST:
        return text("may.at_a_cost", cost=relief_cost_words(answer.costs))
    if answer.verdict is Verdict.NO:
        result = answer.result
        levels = [level_words(one, form) for one in result.penalties] if isinstance(result, Ruling) else []
        return (
            text("may.no", penalty=listed(tuple(dict.fromkeys(levels)), "and")) if levels else text("may.not")
        )
    return text(f"may.{answer.verdict.value}")


def _instead_words(answer: MayAnswer) -> str:
    parts = []
    if answer.instead is not None:
        fact = fact_named(answer.instead.fact)
        ways = listed(tuple(translate()(fact.answers[one]) for one in answer.instead.answers))
        parts.append(text("may.instead", question=translate()(fact.question), answer=ways))
    if answer.elsewhere:
        areas = listed(tuple(translate()(area_of_ball.answers[one]) for one in answer.elsewhere))
        parts.append(text("may.elsewhere", areas=areas))
    return " ".join(parts)


def _citation(answer: MayAnswer) -> str:
    result = answer.result
    if isinstance(result, NeedFacts):
        return result.citation
    return result.citations[0] if isinstance(result, Ruling) and result.citations else ""
