"""What the finding of incidents is learned from: our own sentences, the incidents' titles and keywords, tables of words."""

import hashlib
import json
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

from marram.rules.finding.sentence import Tables
from marram.rules.incidents import INCIDENTS

HERE = Path(__file__).parent
SENTENCES = HERE / "sentences"
WORDS = HERE / "words"
NOTHING = "nothing"
"""The heading of sentences that tell of no incident in the book; learned from so that a list can say that it is only near."""
SHORT: Mapping[str, float] = {"clauses.txt": 0.5, "denied.txt": 0.7, "more_talk.txt": 0.7}
"""Files of short clauses, as they stand in sentences of several acts, and of what is said in haste: what one of them counts
beside a whole sentence (our choice, by the held-out sentences and, of three weights tried, the shares of the unseen ones)."""
LITTLE = ("a", "an", "the")
"""Words that say nothing by themselves."""


@dataclass(frozen=True, slots=True)
class Told:
    """A text that tells of an incident.

    Attributes:
        text: the text.
        incident: the name of the incident.
        weight: how much it counts beside a sentence.
        number: its place among the sentences of the incident; ``None`` for what is no sentence.
    """

    text: str
    incident: str
    weight: float = 1.0
    number: int | None = None


def sentences() -> list[Told]:
    """Return the training sentences.

    Raises:
        ValueError: a file holds something that is neither a heading nor a sentence under one, or an unknown incident.
    """
    return [one for file in sorted(SENTENCES.glob("*.txt")) for one in _read(file)]


def _read(file: Path) -> Iterator[Told]:
    known, incident, number = {NOTHING, *(one.name for one in INCIDENTS)}, "", 0
    for at, line in enumerate(file.read_text(encoding="utf-8").splitlines(), start=1):
        if line.startswith("#"):
            incident, number = line.removeprefix("#").strip(), 0
            if incident not in known:
                raise ValueError(f"{file.name}, line {at}: there is no incident {incident!r}.")
        elif line.strip():
            if not incident:
                raise ValueError(f"{file.name}, line {at}: a sentence before the first '# incident_name'.")
            yield Told(line.strip(), incident, SHORT.get(file.name, 1.0), number=number)
            number += 1


HALF, FEWEST_WORDS = 0.25, 8
"""What half of a sentence counts beside the whole, and how many words a sentence has that is halved (our choice, by the
held-out sentences): others tell of the same incident in other company, so that each part is to speak for itself."""


def halves(told: Iterable[Told]) -> list[Told]:
    """Return the two halves of each sentence that has enough words."""
    found = []
    for one in told:
        words = one.text.split()
        if one.weight == 1.0 and one.number is not None and len(words) >= FEWEST_WORDS:
            middle = len(words) // 2
            found += [Told(" ".join(part), one.incident, HALF) for part in (words[:middle], words[middle:])]
    return found


TITLE, KEYWORDS, NAME, KEYWORD = 1.0, 0.5, 0.5, 0.15
"""What a title, keywords, a name and one or two keywords count beside a sentence (our choice, by the held-out sentences)."""


def weak() -> list[Told]:
    """Return what else tells of each incident: its title, its keywords, its name."""
    return [
        Told(text, one.name, weight)
        for one in INCIDENTS
        for text, weight in (
            (one.title, TITLE),
            (one.keywords, KEYWORDS),
            (f"{one.title} {one.keywords}", KEYWORDS),
            (one.name.replace("_", " "), NAME),
        )
        if text
    ] + [Told(text, one.name, KEYWORD) for one in INCIDENTS for text in _one_or_two(one.keywords.split())]


def _one_or_two(keywords: list[str]) -> list[str]:
    """Return keywords one by one, and each with the next: what is typed in haste."""
    return list(dict.fromkeys([*keywords, *(f"{first} {second}" for first, second in pairwise(keywords))]))


def tables() -> Tables:
    """Return the tables of words."""
    forms = {word: to for to, words in _pairs("irregular_forms.txt") for word in words.split()}
    things: dict[str, list[str]] = {}
    kind = ""
    for line in _lines("everyday_names.txt"):
        if line.startswith("#"):
            kind = line.removeprefix("#").strip()
            continue
        for said in line.split(","):
            name = " ".join(re.findall("[a-z]+", said.lower()))
            if name and kind not in things.setdefault(name, []):
                things[name].append(kind)
    return Tables(
        forms,
        dict(_pairs("compounds.txt")),
        {name: " ".join(kinds) for name, kinds in sorted(things.items())},
        frozenset(LITTLE),
    )


def digest() -> str:
    """Return a digest of the sentences, titles, keywords and tables of words, by which a test tells that the shipped file is current."""
    held = tables()
    plain = [
        [[one.text, one.incident] for one in (*sentences(), *weak())],
        [
            sorted(held.forms.items()),
            sorted(held.compounds.items()),
            sorted(held.things.items()),
            sorted(held.little),
        ],
    ]
    return hashlib.sha256(json.dumps(plain).encode()).hexdigest()


def _pairs(name: str) -> Iterator[tuple[str, str]]:
    for line in _lines(name):
        if not line.startswith("#"):
            left, _, right = line.partition(":")
            yield left.strip(), right.strip()


def _lines(name: str) -> list[str]:
    return [line.strip() for line in (WORDS / name).read_text(encoding="utf-8").splitlines() if line.strip()]
