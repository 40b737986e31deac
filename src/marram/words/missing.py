"""Relief that is not there, and why, in words."""

from collections.abc import Sequence
from dataclasses import replace

from marram.rules.engine.request import fact_named
from marram.rules.nearby import MissingRelief
from marram.words.language import translate
from marram.words.messages import listed, say, term
from marram.words.sheet import Sheet


def with_missing(words: Sheet, missing: Sequence[MissingRelief]) -> Sheet:
    """Return a sheet that also says which relief is not offered, and why."""
    return replace(words, missing=tuple(missing_words(one) for one in missing))


def missing_words(missing: MissingRelief) -> str:
    """Return why a relief is not offered here: the fact that stands against it, and the provision that says so."""
    fact = fact_named(missing.fact)
    others = tuple(answer for answer in fact.answers if answer not in missing.here)
    there = (
        say("TERMS", "missing.any_other")
        if len(missing.there) > 1 and missing.there == others
        else listed(tuple(translate()(fact.answers[answer]) for answer in missing.there))
    )
    here = listed(tuple(translate()(fact.answers[answer]) for answer in missing.here))
    relief = say("TERMS", f"missing.{missing.family}") if missing.kind is None else term(missing.kind)
    return say("TERMS", "missing.always" if missing.always else "missing.perhaps").format(
        relief=relief,
        given_by=missing.given_by,
        question=translate()(fact.question),
        here=here,
        there=there,
        citation=missing.decided_by,
    )
