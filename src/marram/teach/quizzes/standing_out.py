"""By what the right answer is picked out without a Rule: it alone costs or is free, is by far the longest, or says again what is told."""

import re
from collections.abc import Sequence
from enum import Enum, auto

from marram.rules.finding_of import finding_of
from marram.rules.ruling import Ruling
from marram.teach.quizzes.believable import OTHERS
from marram.teach.quizzes.near import Near
from marram.teach.quizzes.of_incident import bears_of
from marram.teach.quizzes.saying import SCORED_ALONE
from marram.teach.situations.situation import Situation
from marram.words.headline import costs_something

LONG, LONGER = 40, 1.5
"""From how many letters on, and how many times as long as each wrong one, a right answer stands out (own choice)."""
_NAMED = re.compile(
    r"\b(drop|unplayable|penalty area|provisional|agree|point|lip|tie|conce|replace|place|relief)"
)
"""Words of answers that a situation may tell as well: what was dropped is dropped again, says who knows no Rule."""


_FORMULAS = re.compile(r"\(the general penalty\)|no free relief")
_TOLD_FOR_FORM = ("None of these", "There was a nearest point", "There was no dropping zone")
"""Beginnings of sentences that are told of many situations, and name things in passing."""


class Mark(Enum):
    """A mark that the right answer has alone."""

    COSTS = auto()
    FREE = auto()
    ONLY_MISJUDGED = auto()
    LONGEST = auto()
    TOLD = auto()
    SCORE = auto()
    OTHERS = auto()


BORNE = frozenset({Mark.COSTS, Mark.ONLY_MISJUDGED})
"""Marks that are borne where no like answer is near: about half of all rulings cost something, and penalties are a matter there."""
OF_FINDINGS = frozenset({Mark.TOLD, Mark.LONGEST})
"""Marks by which one finding among findings stands out."""


def marks(one: Situation, right: str, wrong: Sequence[tuple[str, Near]]) -> frozenset[Mark]:
    """Return what the right answer alone has among the answers.

    Args:
        one: the situation.
        right: the right answer in words.
        wrong: the wrong answers in words, and what they are the rulings of.
    """
    costs = [costs_something(near.ruling) for _, near in wrong]
    found = {Mark.COSTS} if costs_something(one.ruling) and not any(costs) else set()
    if not costs_something(one.ruling) and all(costs):
        if not bears_of(one.incident):
            found.add(Mark.FREE)
        elif all(near.misjudged or near.incident for _, near in wrong):
            found.add(Mark.ONLY_MISJUDGED)
    if _of_others(one.ruling) and not any(_of_others(near.ruling) for _, near in wrong):
        found.add(Mark.OTHERS)
    if _length(right) > max(LONG, LONGER * max(_length(words) for words, _ in wrong)):
        found.add(Mark.LONGEST)
    named = _named(right) - {name for words, _ in wrong for name in _named(words)}
    told = [sentence for sentence in one.told("")[1:] if not sentence.startswith(_TOLD_FOR_FORM)]
    if named & _named(" ".join(told)):
        found.add(Mark.TOLD)
    scores = [
        finding_of(ruling) in SCORED_ALONE for ruling in (one.ruling, *(near.ruling for _, near in wrong))
    ]
    if scores[0] and not any(scores[1:]):
        found.add(Mark.SCORE)
    return frozenset(found)


def _of_others(ruling: Ruling) -> bool:
    """Whether somebody else than the player is penalised: where one answer alone says so, it is picked out by what is told."""
    return any(each.who in OTHERS for each in ruling.penalties)


def _length(words: str) -> int:
    return len(_FORMULAS.sub("", words))


def _named(words: str) -> set[str]:
    return set(_NAMED.findall(_FORMULAS.sub("", words.lower())))
