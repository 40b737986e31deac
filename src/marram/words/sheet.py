"""A result as a sheet: everything an official reads, in words, ready to be shown anywhere."""

from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import Any

from marram.rules.done_wrong import corrections_of
from marram.rules.engine.fact import DecidedBy, Fact
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding_of import finding_of
from marram.rules.findings import Finding
from marram.rules.incidents import incident
from marram.rules.result import NeedFacts, Result, Settled
from marram.rules.ruling import Action, Correction, HandOver, Judgement, NotCovered, Reason, Ruling, Stroke
from marram.words.headline import (
    cost_words,
    costs_something,
    ends_the_hole,
    forced_costs,
    goes_without_saying,
    headline,
    hole_lost_words,
    loses_hole,
    said_by_note,
    side_loses_hole,
    tell_the_player,
)
from marram.words.hole_lost import notes_left
from marram.words.language import translate
from marram.words.messages import amount_words, say, term
from marram.words.penalties import penalty_words, totals_words
from marram.words.provisions import Cited, cited
from marram.words.questions import QuestionWords, question_words
from marram.words.relief_options import OptionWords
from marram.words.told_apart import options_words


@dataclass(frozen=True, slots=True)
class Why:
    """One fact of the reasons: the question, the answer, the provision that read it."""

    fact: str
    question: str
    answer: str
    citation: str
    from_map: bool


@dataclass(frozen=True, slots=True)
class Rather:
    """The incident that it rather is: its name, title and Rule, and what the answers given say in its terms."""

    incident: str
    title: str
    rule: str
    facts: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Sheet:
    """What an official reads.

    Attributes:
        kind: ``ruling``, ``need_facts``, ``judgement``, ``hand_over`` or ``not_covered``.
        headline: the answer in one line.
        penalties: each penalty in words; one sentence that says so when there is none.
        steps: what to do, in order.
        options: relief options, side by side.
        if_wrong: what putting a mistake right takes, until when, and what follows if not.
        cautions: safety cautions.
        why: the facts that led here.
        provisions: the provisions the result rests on, the deciding one first.
        question: the next question, when facts are missing.
        settled: what already holds whatever the answer.
        criteria: what to weigh, for a judgement.
        decided_by: whose judgement it is.
        outcomes: what a judgement can end in.
        reminder: who decides.
        finding: what the ruling finds, as a key (:class:`marram.rules.findings.Finding`); empty where the rest says all.
        further: the steps that the headline does not say already.
        tell: the one sentence that the player is told.
        missing: relief that is not offered, and the fact that stands against it (:func:`with_missing`).
        penalty_said: whether the headline says all that ``penalties`` says, but for the provision.
        free: whether a ruling costs nothing: no penalty, and no relief that must be paid for.
        rather: the incident that it rather is, where what was told is another one.
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
    decided_by: str = ""
    outcomes: tuple[str, ...] = ()
    reminder: str = field(default_factory=lambda: say("TERMS", "reminder"))
    free: bool = False
    rather: Rather | None = None
    finding: str = ""
    further: tuple[str, ...] = ()
    tell: str = ""
    penalty_said: bool = False
    missing: tuple[str, ...] = ()


def sheet(
    result: Result,
    *,
    form_of_play: FormOfPlay | str | None = None,
    given: Mapping[str, Any] | None = None,
    from_map: Collection[str] = (),
    with_finding: bool = True,
) -> Sheet:
    """Return ``result`` in words.

    Args:
        result: what :func:`marram.rule` returned.
        form_of_play: how general penalties are resolved; both ways are said when unknown.
        given: the facts as given, so that a number is shown as given rather than as a threshold.
        from_map: names of the facts that came from the course map.
        with_finding: whether one finding speaks for all of a ruling; of several acts together it does not.
    """
    form = FormOfPlay(form_of_play) if isinstance(form_of_play, str) else form_of_play
    why = tuple(_why(reason, given or {}, from_map) for reason in result.reasons)
    if isinstance(result, Ruling):
        return _ruling_sheet(result, form, why, with_finding)
    if isinstance(result, NeedFacts):
        fact = fact_named(result.fact)
        return Sheet(
            "need_facts",
            translate()(fact.question),
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
            decided_by=term(DecidedBy(result.decided_by)),
            outcomes=tuple(headline(outcome, form) for outcome in result.outcomes),
        )
    if isinstance(result, HandOver):
        return _hand_over_sheet(result, why)
    return _not_covered_sheet(result, why)


def _hand_over_sheet(result: HandOver, why: tuple[Why, ...]) -> Sheet:
    other = incident(result.incident)
    rather = Rather(other.name, translate()(other.title), other.rule, dict(result.facts))
    return Sheet(
        "hand_over",
        say("TERMS", "hand_over").format(title=rather.title.rstrip("?")),
        steps=(say("TERMS", "hand_over.step"),),
        why=why,
        provisions=(cited(result.citation),),
        rather=rather,
    )


def _not_covered_sheet(result: NotCovered, why: tuple[Why, ...]) -> Sheet:
    provisions = (cited(result.citation),) if result.citation else ()
    return Sheet(
        "not_covered",
        say("TERMS", "not_covered"),
        steps=(say("NOTES", result.why),),
        why=why,
        provisions=provisions,
    )


def _ruling_sheet(ruling: Ruling, form: FormOfPlay | None, why: tuple[Why, ...], with_finding: bool) -> Sheet:
    provisions = tuple(
        cited(citation) for citation in ruling.citations
    )  # first: notes mostly stand beside them
    lost = ends_the_hole(ruling.penalties, ruling.action, form)
    found = finding_of(ruling) if with_finding else None
    if lost or side_loses_hole(ruling.penalties, form):
        steps = hole_lost_words(ruling.penalties, form)
    else:
        saying_less = goes_without_saying(ruling, form) or said_by_note(ruling)
        action = None if saying_less else ruling.action
        steps = [term(one) for one in (ruling.stroke, action, ruling.which_ball) if one]
    penalties = _penalty_lines(ruling, form)
    said = set() if lost else {term(one) for one in _in_the_headline(ruling, found)}
    if found is not None:
        said |= {say("TERMS", "headline.finding").format(finding=term(found)), *_said_by_finding(found)}
    noted = said_by_note(ruling)
    if noted and say("NOTES", noted).rstrip(".").lower() == say("TERMS", f"next.note.{noted}").lower():
        said.add(say("NOTES", noted))
    over = lost or (form is FormOfPlay.MATCH_PLAY and loses_hole(ruling.penalties))
    steps += [say("NOTES", key) for key in notes_left(ruling.notes, lost=over)]
    return Sheet(
        "ruling",
        headline(ruling, form, with_finding=with_finding),
        penalties=penalties,
        steps=tuple(steps),
        finding="" if found is None else found.value,
        further=tuple(step for step in steps if step not in said),
        tell=tell_the_player(ruling, form, with_finding=with_finding),
        penalty_said=len(penalties) == 1,
        options=() if lost else options_words(ruling.relief),
        if_wrong=() if lost else tuple(_correction_words(one, form) for one in corrections_of(ruling)),
        cautions=tuple(say("NOTES", key) for key in ruling.cautions),
        why=why,
        provisions=provisions,
        free=not costs_something(ruling),
    )


def _penalty_lines(ruling: Ruling, form: FormOfPlay | None) -> tuple[str, ...]:
    """Return each penalty as a sentence, and what relief that must be taken costs; one sentence if nothing does."""
    lines = [
        penalty_words(one, form, times=ruling.penalties.count(one)) for one in dict.fromkeys(ruling.penalties)
    ]
    costs = forced_costs(ruling, form)
    if any(costs) and 0 not in costs:
        citations = dict.fromkeys(option.citation for option in ruling.relief if option.penalty)
        line = say("TERMS", "relief_to_be_taken")
        total = totals_words(sorted(costs))
        lines.append(line.format(strokes=total[0].upper() + total[1:], citation=", ".join(citations)))
    return tuple(lines) or (say("TERMS", "no_penalty"),)


def _said_by_finding(found: Finding) -> tuple[str, ...]:
    """Return the notes that say no more than the finding does."""
    return tuple(say("NOTES", note) for note in _NO_MORE_THAN.get(found, ()))


_NO_MORE_THAN: Mapping[Finding, tuple[str, ...]] = {
    Finding.NO_FREE_RELIEF: ("no_free_relief",),
    Finding.RULING_STANDS: ("wrong_ruling_stands",),
    Finding.NO_RULING: ("no_ruling_result_stands",),
    Finding.FOLLOW_REFEREE: ("follow_referee",),
    Finding.BALL_MAY_BE_PLAYED: ("ball_may_come_from_anyone",),
    Finding.NO_PRACTICE_STROKE: ("not_a_practice_stroke",),
    Finding.ODD_AND_EVEN: ("tee_off_by_odd_and_even",),
}


def _in_the_headline(ruling: Ruling, found: Finding | None) -> tuple[Enum, ...]:
    """Return what the headline says already: whether the stroke counts, and a next step that needs no more words."""
    holed_unsaid = found is None and ruling.action is Action.HOLED
    action = () if ruling.action in (None, *_NEEDS_MORE_WORDS) or holed_unsaid else (ruling.action,)
    stroke = () if ruling.stroke is None or ruling.stroke is Stroke.OPPONENT_MAY_CANCEL else (ruling.stroke,)
    return (*stroke, *action) if found in _OF_STROKE else action


_NEEDS_MORE_WORDS = (Action.REPLACE, Action.STOP_PLAY)
_OF_STROKE = (Finding.STROKE_COUNTS, Finding.STROKE_DOES_NOT_COUNT, Finding.STROKE_MADE, Finding.HOLED)


def _settled_words(settled: Settled, form: FormOfPlay | None) -> tuple[str, ...]:
    words = []
    if settled.cost is not None:
        words.append(say("TERMS", "settled").format(penalties=cost_words(settled.cost, form)))
    if settled.action is not None and not ends_the_hole(
        settled.cost.penalties if settled.cost else (), settled.action, form
    ):
        words.append(term(settled.action))
    return tuple(words)


def _why(reason: Reason, given: Mapping[str, Any], from_map: Collection[str]) -> Why:
    fact = fact_named(reason.fact)
    return Why(
        reason.fact,
        translate()(fact.question),
        _answer_words(fact, reason, given),
        reason.citation,
        reason.fact in from_map,
    )


def _correction_words(correction: Correction, form: FormOfPlay | None) -> str:
    what, until = say("NOTES", correction.what).rstrip("."), term(correction.until)
    what, until = what[0].lower() + what[1:], until[0].upper() + until[1:]
    if correction.otherwise is None:
        return say("TERMS", "correction").format(what=what, until=until)
    level = penalty_words(correction.otherwise, form)
    return say("TERMS", "correction_or").format(what=what, until=until, penalty=level[0].lower() + level[1:])


def _answer_words(fact: Fact[Any], reason: Reason, given: Mapping[str, Any]) -> str:
    if reason.fact in given:
        answer = fact.parse(given[reason.fact])
        return translate()(fact.answers[answer]) if fact.answers else amount_words(answer, fact.unit)
    if fact.answers:
        others = tuple(answer for answer in fact.answers if answer not in reason.answers)
        few = others if 0 < len(others) < len(reason.answers) else reason.answers
        joined = say("TERMS", "or").join(translate()(fact.answers[answer]) for answer in few)
        return say("TERMS", "not").format(answers=joined) if few is others else joined
    kind = "date" if fact.is_date else "number"
    bounds = [
        say("TERMS", f"{kind}.{side}").format(bound=amount_words(bound, fact.unit))
        for side, bound in (("above", reason.above), ("at_most", reason.at_most))
        if bound is not None
    ]
    return say("TERMS", "and").join(bounds)
