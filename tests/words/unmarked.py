"""What a reader sees of a page, a drawing or an answer, and which of its words went past the catalogue."""

import json
import re
from collections.abc import Iterable, Iterator
from functools import lru_cache
from html.parser import HTMLParser
from typing import Any

from marram.said import Said
from tests.words.outside import without_outside

SEEN = {"alt", "title", "aria-label", "aria-description", "placeholder", "label", "data-words"}
"""Attributes that a reader sees or hears."""

UNSEEN = {"style", "script"}
BUTTONS = {"button", "submit", "reset"}

TOLD = {
    "words",
    "title",
    "messages",
    "measures",
    "what",
    "remedy",
    "where",
    "weight",
    "slope",
    "without",
}
"""Keys of the data of a script that hold what a reader sees."""

_LETTERS = re.compile(r"[A-Za-z]+")
_PLACES = re.compile(r"\{[^{}]*\}")
"""Places for values in the words handed to a script."""
_CODES = re.compile(
    r"\b[A-M]-\d+(\.\d+)*\b|\b\d+(\.\d+)+[a-z]?(\(\d+\))?(/\d+)?|\b\d+(-\d+)?[a-z](\(\d+\))?(/\d+)?"
    r"|(?<![A-Za-z])[A-JXPVLBST](?![A-Za-z])|\b\d*(m|yd|km|UTC|PDF|SVG|JSON|ft)\b|\bm²|–|\bGeoJSON\b"
)
"""Codes of Local Rules, numbers of Rules, letters of options, units, forms of files: alike in every language."""


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.seen: list[str] = []
        self.data: list[tuple[str, str]] = []
        self.open: list[tuple[str, dict[str, str | None]]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        self.seen += [value for key, value in attrs if key in SEEN and value]
        if tag == "input" and given.get("type") in BUTTONS and given.get("value"):
            self.seen.append(str(given["value"]))
        self.open.append((tag, given))

    def handle_endtag(self, tag: str) -> None:
        while self.open and self.open.pop()[0] != tag:
            pass

    def handle_data(self, data: str) -> None:
        tag, given = self.open[-1] if self.open else ("", {})
        if tag == "script" and given.get("type") == "application/json":
            self.data.append((given.get("id") or "", data))
        elif tag not in UNSEEN and tag != "code" and data.strip():
            self.seen.append(" ".join(data.split()))


def seen_in(page: str) -> list[str]:
    """Return everything a reader sees of a page or a drawing: texts, attributes, and words handed to scripts."""
    reader = _Reader()
    reader.feed(page)
    told = [
        words for ident, data in reader.data for words in told_in(json.loads(data), every=ident == "words")
    ]
    return [*reader.seen, *told]


def told_in(data: Any, *, every: bool = False) -> Iterator[str]:
    """Yield the words for people in the data of a script or the answer of an address."""
    if isinstance(data, str):
        if every:
            yield data
    elif isinstance(data, list):
        for one in data:
            yield from told_in(one, every=every)
    elif isinstance(data, dict):
        for key, value in data.items():
            yield from told_in(value, every=every or key in TOLD)


def unmarked(texts: Iterable[str], names: Iterable[str] = ()) -> set[str]:
    """Return the texts with a plain letter left once proper names and codes are taken out."""
    known = _any_of(frozenset(names))
    found = set()
    for one in texts:
        rest = known.sub("", _PLACES.sub("", one))
        if _LETTERS.search(_CODES.sub("", without_outside(rest))):
            found.add(one)
    return found


@lru_cache(maxsize=64)
def _any_of(names: frozenset[str]) -> re.Pattern[str]:
    """Find any of the names, the longest first; nothing where there is none."""
    return re.compile(
        "|".join(re.escape(one) for one in sorted(names, key=len, reverse=True) if one) or r"(?!)"
    )


def plain_values(sentence: object) -> Iterator[str]:
    """Yield the words that are set into a sentence as they are, however deep."""
    if isinstance(sentence, Said):
        for value in sentence.values.values():
            yield from plain_values(value)
    elif isinstance(sentence, str | Exception):
        yield str(sentence)


class _Skeleton(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.bones: list[tuple[str, ...]] = []
        self.in_drawing = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.in_drawing += tag == "svg"
        if not self.in_drawing:
            told = sorted(f"{key}={value}" for key, value in attrs if key in STRUCTURE)
            self.bones.append((tag, *told))

    def handle_endtag(self, tag: str) -> None:
        self.in_drawing -= tag == "svg"


STRUCTURE = {
    "class",
    "id",
    "name",
    "href",
    "type",
    "for",
    "hidden",
    "open",
    "checked",
    "disabled",
    "data-letter",
    "data-pick",
}
"""Attributes that say what a page does, rather than what it says."""


def skeleton(page: str) -> list[tuple[str, ...]]:
    """Return the elements of a page with what they do, drawings left out: alike in every language."""
    parser = _Skeleton()
    parser.feed(page)
    return parser.bones
