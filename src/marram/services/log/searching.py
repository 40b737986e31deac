"""Entries found by words, Rule, hole, player, official and outcome: what an entry is found by, and what is looked for."""

import re
import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Kept, Part
from marram.records.people import names
from marram.records.searching import Wanted, found, index
from marram.rules.incidents import incident
from marram.word_stems import stem

CITED = re.compile(r"(?:rule\s*)?(\d{1,2}(?:\.\d{1,2}[a-z]?(?:\(\d{1,2}\))?)?)", re.IGNORECASE)
"""A number of a Rule as it is written: 17, 17.1, 17.1d, 17.1d(2)."""
OUTCOMES = ("free", "penalty", "general", "disqualified", "otherwise")
"""What a ruling can be looked for by: no penalty, some penalty strokes, the general penalty, disqualification, other than computed."""
AT_A_TIME = 25
"""Entries of one page (own choice)."""


@dataclass(frozen=True, slots=True)
class Search:
    """What is looked for.

    Attributes:
        words: words and numbers of Rules, as typed; the names of people are words too.
        kind: a kind of entries; empty for any.
        hole: a hole.
        outcome: one of :data:`OUTCOMES`; empty for any.
        player: a person it concerns, by identifier; empty for anybody.
        by: an official, likewise.
    """

    words: str = ""
    kind: str = ""
    hole: int | None = None
    outcome: str = ""
    player: str = ""
    by: str = ""


@dataclass(frozen=True, slots=True)
class Page:
    """A page of what was found.

    Attributes:
        entries: the entries, the latest first.
        count: how many were found in all.
        number: the number of this page, from 1.
    """

    entries: list[Kept]
    count: int
    number: int

    @property
    def pages(self) -> int:
        """How many pages there are."""
        return max(1, -(-self.count // AT_A_TIME))


def search(records: Records, event: str | None, wanted: Search, page: int = 1) -> Page:
    """Return a page of the entries that hold all that is looked for; every entry added since the last search is found.

    Args:
        records: where they are kept.
        event: the event; ``None`` for all.
        wanted: what is looked for.
        page: which page, from 1.
    """
    if wanted.words or wanted.outcome or wanted.player or wanted.by:
        index(
            records, words_of
        )  # else nothing of it is asked for: the page of all entries waits for no words
    people = names(records) if wanted.words else {}
    looked_for = Wanted(
        tuple(_exact(wanted)),
        tuple(_anyone(wanted.words, people)),
        (wanted.kind,) if wanted.kind else (),
        wanted.hole,
        event,
    )
    entries, count = found(records, looked_for, most=AT_A_TIME, before=AT_A_TIME * (page - 1))
    return Page(entries, count, page)


def all_found(records: Records, event: str | None, wanted: Search) -> list[Kept]:
    """Return every entry that holds all that is looked for, by number."""
    first = search(records, event, wanted)
    rest = [search(records, event, wanted, page).entries for page in range(2, first.pages + 1)]
    every = [*first.entries, *(entry for entries in rest for entry in entries)]
    return sorted(every, key=lambda one: (one.event, one.number))


def words_of(entry: Kept, parts: Sequence[Part | None]) -> list[str]:
    """Return the words that an entry is found by."""
    return list(dict.fromkeys(_words(entry, parts)))


def _words(entry: Kept, parts: Sequence[Part | None]) -> Iterator[str]:
    content = entry.content
    for who in ("by", "player"):
        if entry.told.get(who):
            yield _person(who, entry.told[who])
    yield from _spelled(str(content.get("headline", "")))
    yield from _spelled(str(content.get("lie", "")))
    case = content.get("case")
    if isinstance(case, dict):
        for act in case.get("incidents", ()):
            yield from _spelled(_title(str(act.get("incident", ""))))
    for rule in (*content.get("rules", ()), *_of_relief(content)):
        yield from rule_words(str(rule))
    yield from _outcome(content)
    for part in parts:
        if part is not None and part.media_type == "text/plain":
            yield from _spelled(part.content.decode(errors="replace"))


def _of_relief(content: Mapping[str, Any]) -> Iterator[str]:
    """Yield the Rules of the relief that a ruling offers: an unplayable ball is looked for by 19.2 as well as by 19.1."""
    combined = (content.get("outcome") or {}).get("combined") or {}
    for option in combined.get("relief") or ():
        if option.get("citation"):
            yield option["citation"]


def rule_words(citation: str) -> Iterator[str]:
    """Yield the words a Rule is found by: 17.1d(2) by itself, by 17.1d, 17.1 and 17; a Local Rule by its code."""
    whole = re.match(r"(\d+)(?:\.(\d+)([a-z]?)(?:\((\d+)\))?)?", citation)
    if whole is None:
        yield "rule_" + re.sub(r"\W+", "_", citation.casefold())
        return
    number, sub, letter, item = whole.groups()
    said = f"rule_{number}"
    yield said
    for step in (sub, letter, item):
        if not step:
            return
        said += f"_{step}"
        yield said


def _exact(wanted: Search) -> Iterator[str]:
    for who, person in (("by", wanted.by), ("player", wanted.player)):
        if person:
            yield _person(who, person)
    if wanted.outcome:
        yield f"outcome_{wanted.outcome}"


def _anyone(typed: str, people: Mapping[str, str]) -> Iterator[tuple[str, ...]]:
    """Yield, for each word as typed, the words any of which an entry must hold."""
    rest = typed
    for cited in re.finditer(rf"(?<!\S){CITED.pattern}(?!\S)", typed, re.IGNORECASE):
        yield (list(rule_words(cited[1].casefold()))[-1], cited[1])
        rest = rest.replace(cited[0], " ")
    for code in re.findall(r"(?<!\S)[A-Za-z]-\d+(?!\S)", rest):
        yield tuple(rule_words(code))
        rest = rest.replace(code, " ")
    for word in _letters(rest):
        named = [
            person for person, name in people.items() if any(one.startswith(word) for one in _letters(name))
        ]
        yield (stem(word), *(_person(who, person) for person in named for who in ("by", "player")))


def _person(who: str, person: str) -> str:
    return f"{who}_{person.replace('-', '')}"


def _spelled(sentence: str) -> Iterator[str]:
    return map(stem, _letters(sentence))


def _letters(sentence: str) -> list[str]:
    """Return the words of a sentence, in small letters and without accents."""
    bare = sentence.casefold()
    if not bare.isascii():
        bare = "".join(one for one in unicodedata.normalize("NFKD", bare) if not unicodedata.combining(one))
    return re.findall(r"[^\W_]+", bare)


def _title(name: str) -> str:
    try:
        return incident(name).title
    except InputError:
        return name.replace("_", " ")


def _outcome(content: Mapping[str, object]) -> Iterator[str]:
    """Yield what a ruling can be looked for by."""
    if content.get("otherwise"):
        yield "outcome_otherwise"
    outcome = content.get("outcome")
    combined = outcome.get("combined") if isinstance(outcome, dict) else None
    if not isinstance(combined, dict) or "penalties" not in combined:
        return
    kinds = {str(one.get("kind", "")) for one in combined["penalties"] if isinstance(one, dict)}
    if not kinds:
        yield "outcome_free"
    for kind in kinds:
        yield f"outcome_{kind}"
        if "disqualification" in kind:
            yield "outcome_disqualified"
        elif "general" in kind:
            yield "outcome_general"
        if "stroke" in kind:
            yield "outcome_penalty"
