"""A result as a sheet: everything an official reads, in words, ready to be shown anywhere."""

from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass, field
from enum import Enum
from functools import cache
from typing import Any

from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.relief_option import ReliefOption
from marram.rules.ruling import (
    Judgement,
    NeedFacts,
    NotCovered,
    Penalty,
    Reason,
    Result,
    Ruling,
    Settled,
    Stake,
)
from marram.words.english import catalogue
from marram.words.penalties import penalties_in_short, penalty_words, strokes_words


@dataclass(frozen=True, slots=True)
class Cited:
    """A provision and what it says, in our own words."""

    citation: str
    statement: str


@dataclass(frozen=True, slots=True)
class Why:
    """One fact of the reasons: the question, the answer, the provision that read it."""

    fact: str
    question: str
    answer: str
    citation: str
    from_map: bool


@dataclass(frozen=True, slots=True)
class OptionWords:
    """One relief option in words; ``kind`` is the option's code, for drawing it."""

    kind: str
    title: str
    cost: str
    reference: str
    size: str
    limits: tuple[str, ...]
    how: str
    citation: str


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


@dataclass(frozen=True, slots=True)
class Sheet:
    """What an official reads.

    Attributes:
        kind: ``ruling``, ``need_facts``, ``judgement`` or ``not_covered``.
        headline: the answer in one line.
        penalties: each penalty in words; ``("No penalty",)`` when there is none.
        steps: what to do, in order.
        options: relief options, side by side.
        if_wrong: what putting a mistake right takes, until when, and what follows if not.
        cautions: safety cautions.
        why: the facts that led here.
        provisions: the provisions the result rests on, the deciding one first.
        question: the next question, when facts are missing.
        settled: what already holds whatever the answer.
        criteria: what to weigh, for a judgement.
        outcomes: what a judgement can end in.
        reminder: who decides.
    """

    kind: str
    headline: str
    penalties: tuple[str, ...] = ()
    steps: tuple[str, ...] = ()
    options: tuple[OptionWords, ...] = ()
    if_wrong: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    why: tuple[Why, ...] = ()
    provisions: tuple[Cited, ...] = ()
    question: QuestionWords | None = None
    settled: tuple[str, ...] = ()
    criteria: tuple[str, ...] = ()
    outcomes: tuple[str, ...] = ()
    reminder: str = field(default_factory=lambda: say("TERMS", "reminder"))


@cache
def _translate() -> Callable[[str], str]:
    from gettext import translation  # noqa: PLC0415 - only needed once words are

    return translation("marram", fallback=True).gettext


def say(kind: str, key: str) -> str:
    """Return the message ``key`` of the catalogue in the reader's language; the key itself if it has none."""
    return _translate()(catalogue(kind).get(key, key))


def term(member: Enum, suffix: str = "") -> str:
    """Return the words of a member of a result enum."""
    return say("TERMS", f"{type(member).__name__}.{member.name}{suffix}")


def sheet(
    result: Result,
    *,
    form_of_play: FormOfPlay | str | None = None,
    given: Mapping[str, Any] | None = None,
    from_map: Collection[str] = (),
) -> Sheet:
    """Return ``result`` in words.

    Args:
        result: what :func:`marram.rule` returned.
        form_of_play: how general penalties are resolved; both ways are said when unknown.
        given: the facts as given, so that a number is shown as given rather than as a threshold.
        from_map: names of the facts that came from the course map.
    """
    form = FormOfPlay(form_of_play) if isinstance(form_of_play, str) else form_of_play
    why = tuple(_why(reason, given or {}, from_map) for reason in result.reasons)
    if isinstance(result, Ruling):
        return _ruling_sheet(result, form, why)
    if isinstance(result, NeedFacts):
        fact = fact_named(result.fact)
        return Sheet(
            "need_facts",
            _translate()(fact.question),
            why=why,
            question=question_words(fact, result.stakes, form, result.citation),
            settled=_settled_words(result.settled, form),
        )
    if isinstance(result, Judgement):
        return Sheet(
            "judgement",
            say("TERMS", "judgement"),
            why=why,
            provisions=(cited(result.citation),),
            criteria=tuple(say("NOTES", key) for key in result.criteria),
            outcomes=tuple(headline(outcome, form) for outcome in result.outcomes),
        )
    return _not_covered_sheet(result, why)


def _not_covered_sheet(result: NotCovered, why: tuple[Why, ...]) -> Sheet:
    provisions = (cited(result.citation),) if result.citation else ()
    return Sheet(
        "not_covered",
        say("TERMS", "not_covered"),
        steps=(say("NOTES", result.why),),
        why=why,
        provisions=provisions,
    )


def _ruling_sheet(ruling: Ruling, form: FormOfPlay | None, why: tuple[Why, ...]) -> Sheet:
    steps = [term(ruling.stroke)] if ruling.stroke else []
    steps += [term(ruling.action)] if ruling.action else []
    steps += [term(ruling.which_ball)] if ruling.which_ball else []
    steps += [say("NOTES", key) for key in ruling.notes]
    return Sheet(
        "ruling",
        headline(ruling, form),
        penalties=tuple(penalty_words(one, form) for one in ruling.penalties) or ("No penalty.",),
        steps=tuple(steps),
        options=tuple(option_words(option) for option in ruling.relief),
        if_wrong=tuple(
            _correction_words(one.what, term(one.until), one.otherwise, form) for one in ruling.corrections
        ),
        cautions=tuple(say("NOTES", key) for key in ruling.cautions),
        why=why,
        provisions=tuple(cited(citation) for citation in ruling.citations),
    )


def headline(ruling: Ruling, form: FormOfPlay | None = None) -> str:
    """Return a ruling in one line: the penalty, then what to do."""
    short = penalties_in_short(ruling.penalties, form)
    action = term(ruling.action, ".short") if ruling.action else ""
    return f"{short}: {action}." if action else f"{short}."


def cited(citation: str) -> Cited:
    """Return a provision with its statement."""
    statement = catalogue("PROVISIONS").get(citation, "")
    return Cited(citation, _translate()(statement) if statement else "")


def option_words(option: ReliefOption) -> OptionWords:
    """Return a relief option in words."""
    if option.club_lengths is None:
        size = ""
    elif option.club_lengths == 0:
        size = "on that spot"
    else:
        size = f"within {_club_lengths(option.club_lengths)}"
    limits = [term(limit) for limit in option.limits]
    if option.dropped_on_line:
        limits.insert(
            0, "dropped on the line: where it first touches the ground, one club-length in any direction"
        )
    return OptionWords(
        option.kind.value,
        term(option.kind),
        strokes_words(option.penalty),
        term(option.reference),
        size,
        tuple(limits),
        term(option.setting),
        option.citation,
    )


def question_words(
    fact: Fact[Any], stakes: tuple[Stake, ...] = (), form: FormOfPlay | None = None, citation: str = ""
) -> QuestionWords:
    """Return a question as it is put to an official, with what each answer would leave open."""
    by_answer = {answer: stake for stake in stakes for answer in stake.answers}
    if fact.answers:
        kind = "choice"
    else:
        kind = "date" if fact.is_date else "number"
    return QuestionWords(
        fact.name,
        kind,
        _translate()(fact.question),
        _translate()(fact.help),
        fact.source,
        term(fact.decided_by),
        fact.unit,
        tuple(
            AnswerWords(fact.token(answer), _translate()(words), _stake_words(by_answer.get(answer), form))
            for answer, words in fact.answers.items()
        ),
        cited(citation) if citation else None,
    )


def _stake_words(stake: Stake | None, form: FormOfPlay | None) -> str:
    if stake is None or not stake.penalties:
        return ""
    return " or ".join(dict.fromkeys(penalties_in_short(one, form).lower() for one in stake.penalties))


def _settled_words(settled: Settled, form: FormOfPlay | None) -> tuple[str, ...]:
    words = []
    if settled.penalties is not None:
        words.append(f"{penalties_in_short(settled.penalties, form)}, whatever the answer.")
    if settled.action is not None:
        words.append(term(settled.action))
    return tuple(words)


def _correction_words(what: str, until: str, otherwise: Penalty | None, form: FormOfPlay | None) -> str:
    after = (
        f" If not: {penalty_words(otherwise, form)[0].lower()}{penalty_words(otherwise, form)[1:]}"
        if otherwise
        else ""
    )
    return f"{say('NOTES', what).rstrip('.')} – {until}.{after}"


def _why(reason: Reason, given: Mapping[str, Any], from_map: Collection[str]) -> Why:
    fact = fact_named(reason.fact)
    return Why(
        reason.fact,
        _translate()(fact.question),
        _answer_words(fact, reason, given),
        reason.citation,
        reason.fact in from_map,
    )


def _answer_words(fact: Fact[Any], reason: Reason, given: Mapping[str, Any]) -> str:
    if reason.fact in given:
        answer = fact.parse(given[reason.fact])
        return _translate()(fact.answers[answer]) if fact.answers else f"{answer} {fact.unit}".strip()
    if fact.answers:
        if len(reason.answers) > len(fact.answers) / 2 and len(reason.answers) < len(fact.answers):
            others = [words for answer, words in fact.answers.items() if answer not in reason.answers]
            return "not " + " or ".join(_translate()(words) for words in others)
        return " or ".join(_translate()(fact.answers[answer]) for answer in reason.answers)
    if reason.at_most is not None:
        return (
            f"at most {reason.at_most} {fact.unit}".strip()
            if not fact.is_date
            else f"on or before {reason.at_most}"
        )
    return f"more than {reason.above} {fact.unit}".strip() if not fact.is_date else f"after {reason.above}"


def _club_lengths(count: float) -> str:
    return {1: "one club-length", 2: "two club-lengths"}.get(count, f"{count:g} club-lengths")
