"""Finding an incident by the words an official uses, the likeliest first."""

from dataclasses import dataclass

from marram.rules.finding.citations import citations, closeness, without
from marram.rules.finding.ranking import Context, Ranked, rank
from marram.rules.finding.sentence import WORD
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.incident import Incident

__all__ = ["MOST", "Context", "Found", "find"]

MOST = 12
"""How many incidents are offered."""
LITTLE = frozenset(
    [
        "a",
        "an",
        "and",
        "as",
        "at",
        "for",
        "from",
        "has",
        "have",
        "in",
        "into",
        "is",
        "it",
        "of",
        "on",
        "or",
        "that",
        "the",
        "this",
        "to",
        "was",
        "were",
        "with",
        "rule",
    ]
)
"""Words that look for nothing by themselves."""
SURE = 0.7
"""How likely the first three must be together for the list to be called likely; else it is said to be only near (our choice, by
our held-out sentences: nine in ten that hold the incident in the first three, four in nine that have none in the book)."""
KNOWN = 0.6
"""Which part of the words must be known for that (our choice)."""
SHORT = 5
"""Words: where one is not known, a sentence of fewer is only near; it may be the one that matters (our choice)."""
FAR = 0.00001
"""What is less likely is not offered, where something else is likely (our choice)."""


@dataclass(frozen=True, slots=True)
class Found:
    """What was found.

    Attributes:
        incidents: the likeliest first.
        sure: whether the first few are likely to hold the one meant; otherwise the list is only near.
        likelihoods: how likely each is, as far as the training sentences tell; empty where nothing was looked for.
        read_as: what misspelt words were taken for.
        unknown: words that say nothing here, as they were written.
    """

    incidents: tuple[Incident, ...]
    sure: bool = True
    likelihoods: tuple[float, ...] = ()
    read_as: tuple[tuple[str, str], ...] = ()
    unknown: tuple[str, ...] = ()


def find(words: str, context: Context | None = None, *, beside: str = "") -> Found:
    """Return the incidents that words point to; every incident, in order, when there are no words.

    Args:
        words: what an official would say or type: a sentence, everyday words, or a Rule number.
        context: what is known without having been said; incidents of Local Rules that are not in force come last.
        beside: the sentence that the words are a part of; it counts a little.
    """
    if LITTLE.issuperset(WORD.findall(words.lower())):
        return Found(INCIDENTS)
    ranked = rank(words, context, beside=beside)
    cited = citations(words)
    if cited and not WORD.search(without(words, cited).lower()):
        return _of_rule(ranked, cited)
    if not ranked.known:
        return Found((), sure=False)
    near = [at for at in range(MOST) if ranked.likelihoods[at] >= FAR or at == 0 or cited]
    known = ranked.known >= KNOWN and not (ranked.unknown and ranked.said < SHORT)
    sure = known and sum(ranked.likelihoods[:3]) >= SURE
    return Found(
        tuple(ranked.incidents[at] for at in near),
        sure,
        tuple(ranked.likelihoods[at] for at in near),
        ranked.read_as,
        ranked.unknown,
    )


def _of_rule(ranked: Ranked, cited: tuple[str, ...]) -> Found:
    """Return the incidents that begin from a Rule, in a part of it, or from what it is a part of, the nearest first."""
    near = [one for one in ranked.incidents if any(closeness(one, number) for number in cited)]
    return Found(tuple(near[:MOST]), sure=bool(near))
