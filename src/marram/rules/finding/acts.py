"""Several acts in one sentence: "he swung, the twig broke, then he dropped over there and played".

A sentence is cut wherever it may go on to another clause; of all ways to join the pieces again the one is taken whose
parts are likeliest to be an act each. Acts stand in the order in which they happened, as far as the words tell
("before that", "after he had"), and each is ranked by its own words, with the rest of the sentence beside them.
Whether the whole sentence is one incident is said beside the acts: a story can be begun either way.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from marram.rules.finding.find import Found, find
from marram.rules.finding.ranking import Context, likeliest

SUBJECT = r"(?:he|she|they|we|i|it|you|his|her|my|our|their|the|a|an|some\w*|another|that|one|both)"
JOINT = re.compile(
    r"\s*[.;:!?]+\s+"
    r"|,?\s+\b(?:(?:and|but|so)\s+)?(?:then|after that|after which|afterwards|later(?: on)?|next(?=,)|before that|earlier"
    r"|meanwhile|whereupon|a moment later|subsequently|eventually|finally)\b,?\s+"
    r"|,\s+(?:and|but|so|or|yet)\s+"
    r"|,\s+(?:which|where)\s+"
    rf"|,?\s+(?:before|after|when|while|as|because|until|although|though)\s+(?={SUBJECT}\b)"
    r"|,\s+"
    r"|\s+(?:and|but)\s+",
    re.IGNORECASE,
)
"""Where a sentence may go on to another act."""
LEADING = re.compile(
    r"(?:after|once|when|while|as)\s+(?:[^\s,.;:!?]+\s+){2,}?(?=(?:he|she|they|we|i)\s)", re.IGNORECASE
)
"""A clause at the beginning that ends, without a comma, where somebody does something else: "After the drop he played"."""
HAPPENED_BEFORE = re.compile(r"\b(?:before that|earlier|after)\b", re.IGNORECASE)
"""A joint after which something stands that happened before."""
WITHIN = re.compile(r"\b(?:when|while|as|because|until|although|though|which|where)\b", re.IGNORECASE)
"""A joint after which what stands is rather a circumstance of the same act."""
FEWEST = 3
"""Words: a shorter part does not stand by itself (our choice)."""
MOST_PIECES, MOST_JOINED = 7, 3
"""Into how many pieces a sentence is cut, and how many of them are joined to one part of several (our choice)."""
COST, TWICE, CIRCUMSTANCE = 0.2, 0.5, 0.5
"""How likely an act must be to be told for itself, and by how much more where the act before it is the same, or where it is
rather a circumstance: chosen on our own sentences of several acts (``training/held_out/several_acts.txt``) and of one."""
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


@dataclass(frozen=True, slots=True)
class _Part:
    """A part of a sentence: what joins it to the one before, its words, and what it likely is."""

    joint: str
    words: str
    incident: str
    likelihood: float


def acts(sentence: str, context: Context | None = None) -> Acts:
    """Return what a sentence tells, as one incident and as acts in order.

    Args:
        sentence: what was told.
        context: what is known without having been said.
    """
    whole = find(sentence, context)
    parts = in_order(_parts(sentence, context))[:MOST_ACTS]
    told = tuple(ActTold(one.words, find(one.words, context, beside=sentence)) for one in parts)
    several = told if len(told) > 1 else ()
    first = whole.likelihoods[0] if whole.likelihoods else 0.0
    return Acts(whole, first >= WHOLE or not several, several)


def in_order(parts: Sequence[_Part]) -> list[_Part]:
    """Return parts in the order in which they happened, as far as what joins them tells."""
    ordered: list[_Part] = []
    for one in parts:
        ordered.insert(
            len(ordered) - bool(ordered and HAPPENED_BEFORE.search(one.joint) and not _after_that(one)), one
        )
    return ordered


def _after_that(part: _Part) -> bool:
    return re.search(r"\bafter (?:that|which)\b", part.joint, re.IGNORECASE) is not None


def _parts(sentence: str, context: Context | None) -> list[_Part]:
    """Return the parts that are likeliest to be an act each."""
    pieces = _pieces(sentence)
    best: list[tuple[float, list[_Part]] | None] = [(0.0, [])]
    for end in range(1, len(pieces) + 1):
        ways = []
        for start in (
            *range(max(0, end - MOST_JOINED), end),
            *((0,) if end == len(pieces) > MOST_JOINED else ()),
        ):
            before = best[start]
            words = _joined(pieces[start:end])
            if before is None or (len(words.split()) < FEWEST and len(pieces) > 1):
                continue
            part = _Part(pieces[start][0], words, *likeliest(words, context))
            again = bool(before[1]) and before[1][-1].incident == part.incident
            cost = COST + TWICE * again + CIRCUMSTANCE * bool(WITHIN.search(part.joint))
            ways.append((before[0] + part.likelihood - cost, [*before[1], part]))
        best.append(max(ways, key=lambda way: way[0]) if ways else None)
    last = best[-1]
    return last[1] if last else []


def _joined(pieces: Sequence[tuple[str, str]]) -> str:
    return "".join(joint * (number > 0) + words for number, (joint, words) in enumerate(pieces))


def _pieces(sentence: str) -> list[tuple[str, str]]:
    """Return the pieces of a sentence, each with what joins it to the one before; the last holds all that is left."""
    pieces: list[tuple[str, str]] = []
    at, joint = 0, ""
    led = LEADING.match(sentence)
    if led is not None:
        pieces.append((joint, led[0].rstrip()))
        at, joint = led.end(), " "
    for match in [*JOINT.finditer(sentence, at), None]:
        last = match is None or len(pieces) == MOST_PIECES - 1
        piece = sentence[at : None if last or match is None else match.start()].strip()
        if piece:
            pieces.append((joint, piece))
        if last or match is None:
            break
        at, joint = match.end(), match[0]
    return pieces
