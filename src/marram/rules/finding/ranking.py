"""Incidents in the order in which a sentence speaks for them.

Scores are sums of integers, so that Python and the browser (``desk/rulings/static/ranking.js``) agree to the last one.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from math import exp, floor, sqrt

from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.finding.citations import citations, closeness, without
from marram.rules.finding.features import DENIED, features
from marram.rules.finding.misspelt import meant
from marram.rules.finding.model import Model, model
from marram.rules.finding.sentence import Word, plain, words
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.incident import Incident

SAID, KNOWN, BESIDE = 4, 2, 1
"""What a feature of the sentence counts, beside one of what is known without having been said, and one of the rest of the
sentence that an act is a part of (our choice, the last by our own sentences of several acts)."""
CODE = re.compile(r"[A-M]-[0-9]+")
FORMER = re.compile(
    r"\b(former|formerly|old|older|previous|previously|earlier|until|prior to|used to|back then|back in|those days|ago|decades?"
    r"|before 19|before 2019|before the|history|rewrite|reform|new rules|in 2019|19[0-9][0-9]|200[0-9]|201[0-8]|eighties|nineties)\b"
)
"""What is said of the Rules before 2019."""
NOT_FORMER, NOT_KNOWN, NOT_IN_FORCE = 6.0, 0.7, 12.0
"""By what an incident falls behind, as a logarithm of odds: one of the former Rules where nothing is said of them; one of a
Local Rule where it is not known which are in force, or it is not (our choice, by held-out sentences and published cases)."""

WORDS_OF_AREA = {
    Area.TEEING_AREA: "on the teeing area",
    Area.GENERAL_AREA: "in the rough",
    Area.PENALTY_AREA: "in a penalty area",
    Area.BUNKER: "in a bunker",
    Area.PUTTING_GREEN: "on the putting green",
}
WORDS_OF_FORM = {FormOfPlay.MATCH_PLAY: "in match play", FormOfPlay.STABLEFORD: "in stableford"}
WORDS_OF_SIDES = {Sides.FOURSOMES: "in foursomes", Sides.FOUR_BALL: "in four-ball"}


@dataclass(frozen=True, slots=True)
class Context:
    """What is known without having been said.

    Attributes:
        local_rules: the codes of the Local Rules in force; ``None``: not known.
        area: where the ball lies.
        form_of_play: the form of play.
        sides: who plays together.
    """

    local_rules: frozenset[str] | None = None
    area: Area | None = None
    form_of_play: FormOfPlay | None = None
    sides: Sides | None = None

    def words(self) -> str:
        """Return it as it would be said."""
        said = (
            WORDS_OF_AREA.get(self.area, "") if self.area else "",
            WORDS_OF_FORM.get(self.form_of_play, "") if self.form_of_play else "",
            WORDS_OF_SIDES.get(self.sides, "") if self.sides else "",
        )
        return " ".join(one for one in said if one)


@dataclass(frozen=True, slots=True)
class Ranked:
    """Every incident in order.

    Attributes:
        incidents: the likeliest first.
        scores: the score of each.
        likelihoods: how likely each is, of all together; a rough measure, learned with the weights.
        known: which part of the words said is known, from 0 to 1.
        read_as: what misspelt words were taken for.
        unknown: the words said that are not known, as they were written.
        said: how many words say something.
    """

    incidents: tuple[Incident, ...]
    scores: tuple[int, ...]
    likelihoods: tuple[float, ...]
    known: float
    read_as: tuple[tuple[str, str], ...] = ()
    unknown: tuple[str, ...] = ()
    said: int = 0


def rank(sentence: str, context: Context | None = None, *, beside: str = "") -> Ranked:
    """Return all incidents in the order in which a sentence speaks for them.

    Args:
        sentence: what was told, in whatever words; Rule numbers in it are exact.
        context: what is known without having been said.
        beside: the sentence that this is a part of, if any.
    """
    learned, context = model(), context or Context()
    cited = citations(sentence)
    said, read_as = corrected(words(without(sentence, cited), learned.tables), learned)
    scores, likely = _weighed(sentence, said, context, beside)
    closest = _closest(cited)
    order = sorted(
        range(len(scores)),
        key=lambda at: (-closest[at], out_of_force(_incidents()[at], context), -scores[at], at),
    )
    return Ranked(
        tuple(_incidents()[at] for at in order),
        tuple(scores[at] for at in order),
        tuple(likely[at] for at in order),
        1.0 if any(closest) else _known(said, learned),
        read_as,
        tuple(dict.fromkeys(one.written for one in said if not _is_known(one, learned))),
        len(said),
    )


def likeliest(sentence: str, context: Context | None = None) -> tuple[str, float]:
    """Return the incident that a sentence speaks for most, and how likely it is, less where words are not known.

    Args:
        sentence: what was told.
        context: what is known without having been said.
    """
    learned = model()
    said, _ = corrected(words(sentence, learned.tables), learned)
    scores, likely = _weighed(sentence, said, context or Context(), "")
    best = max(range(len(scores)), key=scores.__getitem__)
    return learned.incidents[best], likely[best] * _known(said, learned)


def _weighed(
    sentence: str, said: Sequence[Word], context: Context, beside: str
) -> tuple[list[int], list[float]]:
    """Return the score of each incident, and how likely each is; that it is none of them is likely too."""
    learned = model()
    tables = learned.tables
    told = ((SAID, said), (KNOWN, words(context.words(), tables)), (BESIDE, words(beside, tables)))
    scores, length = _scores(learned, told)
    _put_back(scores, learned, length, former=tells_of_former(sentence), context=context)
    likely = _likelihoods(learned, scores, length)
    return scores[:-1], likely[:-1]


def _closest(cited: Sequence[str]) -> list[int]:
    if not cited:
        return [0] * len(_incidents())
    return [max(closeness(one, number) for number in cited) for one in _incidents()]


def corrected(said: Sequence[Word], learned: Model) -> tuple[list[Word], tuple[tuple[str, str], ...]]:
    """Return words with misspelt ones read as what they were meant for, and which ones."""
    read, read_as = [], {}
    for one in said:
        near = None if _has_stem(one, learned) else meant(one.stem, learned.stems)
        if near is not None:
            read_as[one.written] = near
        read.append(
            one if near is None else Word(near, one.written, one.things or _things(near, learned), one.denied)
        )
    return read, tuple(read_as.items())


def _things(meant_for: str, learned: Model) -> tuple[str, ...]:
    return tuple(learned.tables.things.get(meant_for, "").split())


def _known(said: Sequence[Word], learned: Model) -> float:
    return sum(_is_known(one, learned) for one in said) / (len(said) or 1)


def _is_known(one: Word, learned: Model) -> bool:
    return _has_stem(one, learned) or bool(one.things)


def _has_stem(one: Word, learned: Model) -> bool:
    return one.stem in learned.places or DENIED + one.stem in learned.places


def _scores(learned: Model, told: Sequence[tuple[int, Sequence[Word]]]) -> tuple[list[int], int]:
    """Return the score of each incident and of none, and the squared length of what was said, in the model's units."""
    scores, length = [0] * (len(learned.incidents) + 1), 0
    for share, spoken in told:
        for place in learned.known(features(spoken)):
            length += learned.values[place] if share == SAID else 0
            for at, weight in learned.row(place):
                scores[at] += share * weight
    return scores, length


def tells_of_former(sentence: str) -> bool:
    """Return whether a sentence speaks of the Rules before 2019."""
    return FORMER.search(plain(sentence)) is not None


def _put_back(scores: list[int], learned: Model, length: int, *, former: bool, context: Context) -> None:
    """Lower the scores of what is unlikely by what is known, whatever the words."""
    unit = SAID * sqrt(length or 1) / learned.sharpness
    for at in () if former else _for_teaching():
        scores[at] -= floor(NOT_FORMER * unit)
    for at, code in _of_local_rules():
        if context.local_rules is None:
            scores[at] -= floor(NOT_KNOWN * unit)
        elif code not in context.local_rules:
            scores[at] -= floor(NOT_IN_FORCE * unit)


def _likelihoods(learned: Model, scores: Sequence[int], length: int) -> list[float]:
    sharpness = learned.sharpness / SAID / sqrt(length or 1)
    best = max(scores)
    odds = [exp(sharpness * (score - best)) for score in scores]
    every = sum(odds)
    return [one / every for one in odds]


@cache
def _incidents() -> tuple[Incident, ...]:
    named = {one.name: one for one in INCIDENTS}
    return tuple(named[name] for name in model().incidents)


@cache
def _for_teaching() -> tuple[int, ...]:
    return tuple(at for at, one in enumerate(_incidents()) if one.for_teaching)


@cache
def _of_local_rules() -> tuple[tuple[int, str], ...]:
    """Return the places of the incidents that begin from a Local Rule, with its code."""
    return tuple((at, one.rule) for at, one in enumerate(_incidents()) if CODE.fullmatch(one.rule))


def out_of_force(one: Incident, context: Context) -> bool:
    """Tell whether an incident comes after the ordinary ones: its Local Rule is not in force."""
    return (
        context.local_rules is not None
        and CODE.fullmatch(one.rule) is not None
        and one.rule not in context.local_rules
    )
