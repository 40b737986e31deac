"""Several acts in one sentence: "he swung, the twig broke, then he dropped over there and played".

A sentence is cut where it goes on in time or to another clause; parts that do not stand by themselves are joined to their
neighbour again. Whether the whole sentence is one incident is said beside the acts: a story can be begun either way.
"""

import re
from dataclasses import dataclass

from marram.rules.finding.find import Found, find
from marram.rules.finding.ranking import Context

AND_THEN = re.compile(
    r"\s*(?:[.;!?]+\s+|,?\s+\b(?:and then|then|after that|afterwards|later|next|before that|and after|whereupon|so then)\b,?\s*|,\s+(?:and|but|so)\s+|,\s+|\s+\band\b\s+)",
    re.IGNORECASE,
)
"""Where a sentence may go on to another act."""
CLEARLY = re.compile(r"[.;!?]|then|after|later|next|before|whereupon", re.IGNORECASE)
"""Where it surely goes on in time."""
FEWEST = 3
"""Words: a shorter part does not stand by itself (our choice)."""
LIKELY, LIKELY_ALONE = 0.3, 0.6
"""How likely the first incident of a part must be for it to be an act of its own: where the sentence surely goes on, and
where it only may (our choice)."""
WHOLE = 0.5
"""How likely the first incident of the whole sentence must be to be said to cover it (our choice)."""
MOST_ACTS = 6
"""How many acts are told apart."""
OFFERED = 3
"""How many incidents are offered for each act."""


@dataclass(frozen=True, slots=True)
class ActTold:
    """One act of a sentence: its words, and what it may be, the likeliest first."""

    words: str
    found: Found


@dataclass(frozen=True, slots=True)
class Acts:
    """A sentence as one incident, and as acts in order.

    Attributes:
        whole: what the whole sentence may be.
        covers: whether one incident is likely to cover it all.
        acts: the acts in order, where there is more than one.
    """

    whole: Found
    covers: bool
    acts: tuple[ActTold, ...]


def acts(sentence: str, context: Context | None = None) -> Acts:
    """Return what a sentence tells, as one incident and as acts in order.

    Args:
        sentence: what was told.
        context: what is known without having been said.
    """
    whole = find(sentence, context)
    told: list[ActTold] = []
    for joint, part in _parts(sentence):
        one = ActTold(part, find(part, context))
        if told and not _of_its_own(one.found, told[-1].found, clearly=CLEARLY.search(joint) is not None):
            joined = f"{told[-1].words}{joint}{part}"
            told[-1] = ActTold(joined, find(joined, context))
        else:
            told.append(one)
    several = tuple(told[:MOST_ACTS]) if len(told) > 1 else ()
    first = whole.likelihoods[0] if whole.likelihoods else 0.0
    return Acts(whole, first >= WHOLE or not several, several)


def _of_its_own(part: Found, before: Found, *, clearly: bool) -> bool:
    """Tell whether a part is an act of its own: likely something, and something else than the part before it."""
    likelihood = part.likelihoods[0] if part.likelihoods else 0.0
    return likelihood >= (LIKELY if clearly else LIKELY_ALONE) and part.incidents[:1] != before.incidents[:1]


def _parts(sentence: str) -> list[tuple[str, str]]:
    """Return the parts of a sentence, each with what joins it to the one before; a short one stays with that."""
    parts: list[tuple[str, str]] = []
    at, joint = 0, ""
    for match in [*AND_THEN.finditer(sentence), None]:
        part = sentence[at : match.start() if match else len(sentence)].strip()
        if parts and len(part.split()) < FEWEST and not CLEARLY.search(joint):
            parts[-1] = (parts[-1][0], f"{parts[-1][1]}{joint}{part}")
        elif part:
            parts.append((joint, part))
        if match:
            at, joint = match.end(), match[0]
    return parts
