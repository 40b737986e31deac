"""Told in a sentence: the incidents it may be, the acts in it, and the facts it seems to say.

What is read is proposed and never decides: the answer holds no fact that a ruling takes; whoever asks shows each
proposal with the words it rests on, and gives it to :class:`marram.services.cases.rulings.Asked` once a person confirmed it.
"""

from collections.abc import Collection
from dataclasses import dataclass, field

from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.finding import Context, Found
from marram.rules.finding.acts import acts
from marram.rules.finding.told_facts import FactTold, told_facts
from marram.rules.incidents.incident import Incident


@dataclass(frozen=True, slots=True)
class Sentence:
    """What was told, and what is known beside it.

    Attributes:
        words: the sentence, as typed or dictated.
        local_rules: the codes of the Local Rules in force; ``None``: not known.
        area: where the ball lies, if known.
        form_of_play: the form of play, if known.
        sides: who plays together, if known.
        known: names of facts that are known already; they are not read in the sentence.
        read: for how many of the incidents offered facts are read, the likeliest first.
    """

    words: str
    local_rules: frozenset[str] | None = None
    area: Area | None = None
    form_of_play: FormOfPlay | None = None
    sides: Sides | None = None
    known: Collection[str] = field(default_factory=frozenset)
    read: int = 1

    def context(self) -> Context:
        """Return what is known, as the finding takes it."""
        return Context(self.local_rules, self.area, self.form_of_play, self.sides)


@dataclass(frozen=True, slots=True)
class Offered:
    """An incident offered for a sentence or an act.

    Attributes:
        incident: the incident.
        likelihood: how likely it is, from 0 to 1, as far as the training sentences tell.
        for_teaching: whether it tells of the former Rules only.
        facts: what the words seem to say of its questions, to be confirmed; read for the likeliest only.
    """

    incident: Incident
    likelihood: float
    for_teaching: bool
    facts: tuple[FactTold, ...] = ()


@dataclass(frozen=True, slots=True)
class ActOffered:
    """One act of a sentence: its words, and the incidents it may be, the likeliest first."""

    words: str
    offered: tuple[Offered, ...]


@dataclass(frozen=True, slots=True)
class Told:
    """What a sentence may tell.

    Attributes:
        offered: the incidents that the whole sentence may be, the likeliest first.
        sure: whether the first few are likely to hold the one meant; otherwise they are only near.
        read_as: what misspelt words were taken for.
        unknown: words that were not understood.
        acts: the acts in order, where the sentence seems to hold several.
        one_covers: whether the first incident offered is likely to cover the whole sentence.
    """

    offered: tuple[Offered, ...]
    sure: bool
    read_as: tuple[tuple[str, str], ...]
    unknown: tuple[str, ...]
    acts: tuple[ActOffered, ...]
    one_covers: bool


def told(sentence: Sentence) -> Told:
    """Return what a sentence may tell.

    Args:
        sentence: what was told, and what is known beside it.
    """
    found = acts(sentence.words, sentence.context())
    return Told(
        _offered(found.whole, sentence.words, sentence),
        found.whole.sure,
        found.whole.read_as,
        found.whole.unknown,
        tuple(ActOffered(one.words, _offered(one.found, one.words, sentence)) for one in found.acts),
        found.covers,
    )


def _offered(found: Found, words: str, sentence: Sentence) -> tuple[Offered, ...]:
    likelihoods = found.likelihoods or (0.0,) * len(found.incidents)
    return tuple(
        Offered(
            one,
            likelihood,
            one.for_teaching,
            told_facts(one.name, words, sentence.known) if place < sentence.read else (),
        )
        for place, (one, likelihood) in enumerate(zip(found.incidents, likelihoods, strict=True))
    )
