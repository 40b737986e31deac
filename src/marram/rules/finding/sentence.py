"""A sentence as it was told, taken apart: words in one spelling, without their endings, and what kind of thing each names.

Everything here is done alike in ``desk/rulings/static/sentence.js``; the tables stand in the model file, so that both read
the same. A test in Chromium compares them over every sentence of the project.
"""

import re
import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from marram.word_stems import stem

NEGATION = re.compile(r"n't\b", re.ASCII)
APOSTROPHE = re.compile(r"'[a-z]*")
WORD = re.compile(r"[a-z]+|[0-9]+(?:\.[0-9]+)?")
PIECE = re.compile(rf"{WORD.pattern}|[.,;:!?]")
"""A word or a sign between clauses."""
DENIES = frozenset({"not", "never", "without", "no", "nor", "neither", "nobody", "none"})
"""Words that deny what is said after them."""
FURTHER = re.compile(
    r"and|but|so|then|because|when|while|before|after|until|although|though|which|where|he|she|i|we|they|[.,;:!?]"
)
"""Words and signs at which another clause begins: what was denied ends there."""
REACH = 4
"""How many words that say something are denied, at most (our choice, by the held-out sentences)."""
LONGEST = 400
"""Words: what is said beyond them is not read."""


@dataclass(frozen=True, slots=True)
class Tables:
    """What is known of words beyond their endings.

    Attributes:
        forms: what a word is read as: an irregular form, another spelling, a number in words.
        compounds: two words in a row that are one.
        things: what kind of thing an everyday name names, by the word or the two words in a row.
        little: words that say nothing by themselves.
    """

    forms: Mapping[str, str]
    compounds: Mapping[str, str]
    things: Mapping[str, str]
    little: frozenset[str]


@dataclass(frozen=True, slots=True)
class Word:
    """One word of a sentence: its stem, how it was written, the kinds of thing it names, and whether it is denied."""

    stem: str
    written: str
    things: tuple[str, ...] = ()
    denied: bool = False


def plain(sentence: str) -> str:
    """Return a sentence in lower case, without accents, "n't" written out."""
    letters = unicodedata.normalize("NFKD", sentence).replace("\u2019", "'").lower()
    return NEGATION.sub(" not", "".join(one for one in letters if not "\u0300" <= one <= "\u036f"))


def words(sentence: str, tables: Tables) -> list[Word]:
    """Return the words of a sentence that say something."""
    spelled = PIECE.findall(APOSTROPHE.sub(" ", plain(sentence)))[:LONGEST]
    joined = list(_joined(spelled, tables.compounds))
    found, reach = [], 0
    for place, one in enumerate(joined):
        things = _things(joined, place, tables.things)
        reach = 0 if FURTHER.fullmatch(one) else reach
        for number, part in enumerate(tables.forms.get(one, one).split()):
            if part not in tables.little and part[0].isalnum():
                found.append(Word(stem(part), one, things if number == 0 else (), reach > 0))
                reach = REACH if part in DENIES else max(reach - 1, 0)
    return found


def _joined(spelled: Sequence[str], compounds: Mapping[str, str]) -> Iterator[str]:
    skip = False
    for first, second in pairwise([*spelled, ""]):
        if skip:
            skip = False
        elif one := compounds.get(f"{first} {second}"):
            skip = True
            yield one
        else:
            yield first


def _things(spelled: Sequence[str], place: int, things: Mapping[str, str]) -> tuple[str, ...]:
    """Return the kinds of thing that a word, or it with the next one, names; a plural names what its singular does."""
    two = " ".join(spelled[place : place + 2])
    for said in (two, spelled[place]):
        for form in (said, said.removesuffix("s"), said.removesuffix("es")):
            if kinds := things.get(form):
                return tuple(kinds.split())
    return ()
