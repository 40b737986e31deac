"""Finding an incident by the words an official uses, the likeliest first.

A word counts the more, the fewer incidents have it, and more in a title than among the further words looked
for. An incident that lacks a word is still found when it comes near the best, further down. The weights are
our own choice; no ruling depends on them.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import pairwise
from math import log

from marram.nearest_names import nearest
from marram.rules.editions import FIRST_DAY
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.incident import Incident
from marram.word_stems import stem as _stem

MOST = 12
"""How many incidents are offered."""
_NEAR = 0.4
"""An incident is offered when it scores so large a part of the best, where some incident has every word."""
_NEAR_LACKING = 0.2
"""The same where none has: a sentence has words beside the point, and the one meant may stand further down."""
_LACK = 2.0
"""The power by which the part of the words that an incident has counts once more, where some has every word."""
_LACK_LACKING = 0.5
"""The same where none has."""
_ALIKE = 0.85
"""How like a known word a misspelt one must be, as a ratio of matching letters."""
_AS_WRITTEN = 1.25
"""What a word weighs more when it stands there as it was typed, ending and all."""
_LONG = 100
"""A field of so many words has its weight halved: one word of many says less."""
_SIDE_BY_SIDE = 1.0
"""What two words side by side add, as a weight."""
_TEACHING = 0.5
"""What an incident only for teaching weighs beside the others."""
_FIELDS = {"rule": 4.0, "title": 3.0, "name": 2.5, "keywords": 2.0, "theme": 1.0}
_FORM_OF_PLAY = re.compile(r"(three|four)[-_ ]ball(?![a-z])")
"""Two words that are one: "three" by itself is said of minutes, strokes and holes."""
_LITTLE_WORDS = frozenset(
    re.findall(
        r"\w+",
        "a an and are as at be been but by did do does for from had has have he her him his how i in into is it "
        "its may me my of on or our rule rules s she should that the their them then there they this to was we "
        "were what when where while who will with you your",
    )
)


@dataclass(frozen=True, slots=True)
class Found:
    """What was found.

    Attributes:
        incidents: the likeliest first.
        complete: whether some incident has every word looked for.
        read_as: what misspelt words were taken for.
    """

    incidents: tuple[Incident, ...]
    complete: bool = True
    read_as: tuple[tuple[str, str], ...] = ()


def find(words: str) -> Found:
    """Return the incidents that words point to; every incident, in order, when there are no words.

    Args:
        words: what an official would say or type: everyday words, or a Rule number.
    """
    wanted = _wanted(words)
    if not wanted:
        return Found(INCIDENTS)
    read_as = tuple((word, near) for word in wanted if not _known(word) and (near := _like(word)))
    read = [dict(read_as).get(word, word) for word in wanted]
    matches = [_match(entry, read) for entry in _index()]
    complete = any(match.part == 1 for match in matches)
    least, lack = (_NEAR, _LACK) if complete else (_NEAR_LACKING, _LACK_LACKING)
    scored = [
        (match.score * pow(match.part, lack), entry.incident)
        for match, entry in zip(matches, _index(), strict=True)
    ]
    best = max(score for score, _ in scored)
    if not best:
        return Found((), False)
    offered = sorted((one for one in scored if one[0] >= least * best), key=lambda one: -one[0])[:MOST]
    return Found(tuple(one for _, one in offered), complete, read_as)


@dataclass(frozen=True, slots=True)
class _Entry:
    """An incident with its words, field by field."""

    incident: Incident
    fields: tuple[tuple[float, tuple[str, ...]], ...]


@cache
def _index() -> tuple[_Entry, ...]:
    return tuple(
        _Entry(one, tuple((weight, tuple(_split(getattr(one, field)))) for field, weight in _FIELDS.items()))
        for one in INCIDENTS
    )


@dataclass(frozen=True, slots=True)
class _Match:
    """How an incident matches words: what they score, and which part of them, by rarity, it has."""

    score: float
    part: float


def _match(entry: _Entry, words: Sequence[str]) -> _Match:
    score, lacked = 0.0, 0.0
    stems = [_stem(word) for word in words]
    for word, stem in zip(words, stems, strict=True):
        weight = _weight(entry, word, stem)
        score += weight * _rarity(stem)
        lacked += 0 if weight else _rarity(stem)
    for first, second in pairwise(stems):
        if any(_side_by_side(known, first, second) for _, known in entry.fields):
            score += _SIDE_BY_SIDE * (_rarity(first) + _rarity(second))
    if entry.incident.covered_from != FIRST_DAY:
        score *= _TEACHING
    return _Match(score, 1 - lacked / sum(_rarity(stem) for stem in stems))


def _weight(entry: _Entry, word: str, stem: str) -> float:
    """Return the greatest weight of the fields that have a word; of a Rule, its sub-rules count as the word too."""
    found = [
        weight / (1 + len(known) / _LONG) * (_AS_WRITTEN if word in known else 1)
        for weight, known in entry.fields
        if not _having(stem).isdisjoint(known)
    ]
    if stem.startswith(entry.incident.rule.lower()):
        found.append(_FIELDS["rule"])
    return max(found, default=0.0)


def _side_by_side(known: Sequence[str], first: str, second: str) -> bool:
    begins, follows = _having(first), _having(second)
    if begins.isdisjoint(known) or follows.isdisjoint(known):
        return False
    return any(one in begins and other in follows for one, other in pairwise(known))


@lru_cache(maxsize=4096)
def _rarity(stem: str) -> float:
    words = _having(stem)
    having = sum(any(not words.isdisjoint(known) for _, known in entry.fields) for entry in _index())
    return log(1 + len(_index()) / (1 + having))


@cache
def _vocabulary() -> tuple[str, ...]:
    return tuple(sorted({word for entry in _index() for _, known in entry.fields for word in known}))


def _known(word: str) -> bool:
    return bool(_having(_stem(word)))


def _like(word: str) -> str | None:
    return next(iter(nearest(word, _vocabulary(), most=1, alike=_ALIKE)), None)


def _wanted(words: str) -> list[str]:
    return [word for word in _split(words) if word not in _LITTLE_WORDS]


def _split(text: str) -> list[str]:
    text = _FORM_OF_PLAY.sub(r"\1ball", text.lower())
    return [part for word in re.findall(r"[a-z0-9][a-z0-9_.()]*", text) for part in _parts(word)]


def _parts(word: str) -> list[str]:
    return [part for part in word.strip(".").split("_") if part]


@lru_cache(maxsize=4096)
def _having(stem: str) -> frozenset[str]:
    """Return the words of all incidents that begin with a stem."""
    return frozenset(word for word in _vocabulary() if _begins(word, stem))


def _begins(word: str, stem: str) -> bool:
    """Tell whether a known word, or its stem, begins with the stem; one as short as "OB" has to be the word itself."""
    return word.startswith(stem) or _stem(word).startswith(stem) if len(stem) > 2 else word == stem
