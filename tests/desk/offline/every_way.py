"""Every way through every incident as the desk answers it, in the lines that ``every_way.mjs`` prints of a phone."""

import hashlib
import json
from collections.abc import Iterator, Mapping
from typing import Any

from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named, rule
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.incidents import INCIDENTS
from marram.rules.plain import as_plain
from marram.rules.rather import UNASKED
from marram.rules.result import NeedFacts, Stake
from marram.services.cases.conditions import Conditions
from marram.words.sheet import Sheet, sheet

WALKED = ("question", "settled", "why", "missing")
"""Parts of a sheet that belong to the walk, or to what is asked beside it."""


def lines(conditions: Conditions) -> Iterator[str]:
    """Yield a line for each question and each end: its way, the fact asked, a digest of all that is said."""
    for one in INCIDENTS:
        yield from _below(one.name, one.name, {}, conditions)
        if one.name in UNASKED:  # told by the map, and asked by nothing
            fact, answer = UNASKED[one.name]
            yield from _below(one.name, f"{one.name}/unasked", {fact: answer}, conditions)


def _below(name: str, path: str, answers: Mapping[str, Any], conditions: Conditions) -> Iterator[str]:
    result = rule(name, {**conditions.facts(), **answers}, **conditions.request())
    form = FormOfPlay(answers[form_of_play.name]) if form_of_play.name in answers else conditions.form
    words = sheet(result, form_of_play=form, given=answers)
    why = [[one.fact, one.question, one.answer] for one in words.why if one.fact in answers]
    why.sort(
        key=lambda one: one[0] != the_sides.name
    )  # a tree of its own, whose place among the reasons is its own
    if not isinstance(result, NeedFacts):
        said = {key: value for key, value in as_plain(words).items() if key not in WALKED}
        yield _line(path, "end", {"sheet": said, "why": why})
        return
    yield _line(path, result.fact, {"told": _told(words), "why": why})
    fact = fact_named(result.fact)
    for stake in result.stakes:
        answer = _of(fact, stake)
        yield from _below(name, f"{path}/{answer}", {**answers, result.fact: answer}, conditions)


def _told(words: Sheet) -> dict[str, Any]:
    question = as_plain(words.question)
    kept = ("kind", "question", "help", "source", "decided_by", "answers")
    return {"settled": list(words.settled), **{key: question[key] for key in kept}}


def _of(fact: Fact[Any], stake: Stake) -> Any:
    if stake.answers:
        return fact.token(stake.answers[0])
    return stake.at_most if stake.at_most is not None else stake.above + 1


def _line(path: str, kind: str, what: Mapping[str, Any]) -> str:
    written = json.dumps(what, sort_keys=True, ensure_ascii=False, separators=(",", ":"))
    return f"{path}\t{kind}\t{hashlib.sha256(written.encode()).hexdigest()[:16]}"
