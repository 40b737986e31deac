"""What a player may do, in words: the answer first, its provision, what it rests on, and what is allowed instead."""

from collections.abc import Iterable
from dataclasses import dataclass

from marram.rules.engine.request import fact_named
from marram.rules.facts.ball import area_of_ball
from marram.rules.facts.conditions import LOCAL_RULE_TITLES, FormOfPlay
from marram.services.asked.may import MayAnswer, Verdict, local_rules_that_decide
from marram.words.language import translate
from marram.words.messages import listed
from marram.words.penalties import penalties_in_short, relief_cost_words
from marram.words.provisions import cited
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class MayLine:
    """One answer in words.

    Attributes:
        act: the name of the act.
        verdict: ``yes``, ``at_a_cost``, ``no``, ``depends`` or ``no_relief``.
        title: the act, as a player asks for it.
        answer: yes, no, or what it costs or hangs on.
        instead: the nearest thing that is allowed; empty where the act is.
        citation: the provision that decides.
        reason: what that provision says, where the act is not allowed.
        granted: what the act takes for granted, each as a question with its answer.
        group: what the act is about, as a key.
    """

    act: str
    verdict: str
    title: str
    answer: str
    instead: str
    citation: str
    reason: str = ""
    granted: tuple[str, ...] = ()
    group: str = ""


def may_line(answer: MayAnswer, form: FormOfPlay | None) -> MayLine:
    """Return one answer in words."""
    refused = answer.verdict in (Verdict.NO, Verdict.NO_RELIEF)
    return MayLine(
        answer.act,
        answer.verdict.value,
        text(f"may.act.{answer.act}"),
        _answer_words(answer, form),
        _instead_words(answer),
        answer.citation,
        reason=cited(answer.citation).statement if refused else "",
        granted=tuple(_answered(fact, token) for fact, token in answer.granted),
        group=answer.group,
    )


def asked_once(answers: Iterable[MayAnswer]) -> str:
    """Return the sentence that asks once which Local Rules are in force, where answers depend on any; else nothing."""
    codes = local_rules_that_decide(answers)
    return text("may.local_rules", codes=", ".join(codes)) if codes else ""


def _answered(name: str, token: str) -> str:
    fact = fact_named(name)
    answer = translate()(fact.answers[fact.parse(token)])
    return text("may.answered", question=translate()(fact.question), answer=answer)


def _answer_words(answer: MayAnswer, form: FormOfPlay | None) -> str:
    if answer.in_force is not None and answer.not_in_force is not None:
        return text(
            "may.depends.local_rule",
            code=answer.local_rule,
            title=translate()(LOCAL_RULE_TITLES[answer.local_rule]),
            yes=_answer_words(answer.in_force, form),
            no=_answer_words(answer.not_in_force, form),
        )
    if answer.verdict is Verdict.DEPENDS:
        return text("may.depends", question=translate()(fact_named(answer.hangs_on).question))
    if answer.verdict is Verdict.AT_A_COST:
        return text("may.at_a_cost", cost=relief_cost_words(answer.costs))
    if answer.verdict is Verdict.NO:
        least_first = sorted(answer.penalties, key=lambda one: sum(penalty.strokes for penalty in one))
        ways = tuple(dict.fromkeys(_lowered(penalties_in_short(one, form)) for one in least_first))
        return text("may.no", penalty=listed(ways)) if ways else text("may.not")
    return text(f"may.{answer.verdict.value}")


def _lowered(words: str) -> str:
    return words[0].lower() + words[1:]


def _instead_words(answer: MayAnswer) -> str:
    parts = []
    if answer.instead is not None and not answer.rather:
        fact = fact_named(answer.instead.fact)
        ways = listed(tuple(translate()(fact.answers[one]) for one in answer.instead.answers))
        parts.append(text("may.instead", question=translate()(fact.question), answer=ways))
    if answer.rather:
        parts.append(text("may.rather", act=_lowered(text(f"may.act.{answer.rather}"))))
    if answer.elsewhere:
        areas = listed(tuple(translate()(area_of_ball.answers[one]) for one in answer.elsewhere))
        parts.append(text("may.elsewhere", areas=areas))
    if not parts and answer.verdict in (Verdict.NO, Verdict.NO_RELIEF):
        return text("may.leave")
    return " ".join(parts)
