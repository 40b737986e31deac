"""How templates say things: every text from the catalogue, by key."""

import re
from typing import Any

from markupsafe import Markup, escape

from marram.course.model import Kind
from marram.said import Said
from marram.words.citations import named, named_all
from marram.words.ground import ground_words
from marram.words.language import language, translate
from marram.words.messages import say
from marram.words.spoken import spoken
from marram.words.texts import (
    capital as capital_of,
)
from marram.words.texts import (
    clock_words,
    count_text,
    counted_sentence,
    day_words,
    long_day_words,
    sentence,
    set_in,
    short_day_words,
    text,
    texts_of,
)

LOCAL_RULE = re.compile(r"[A-Z]-\d")
"""How the code of a Model Local Rule begins."""


def in_their_language(value: object) -> object:
    """Return what a template shows: a sentence of the layers below in the reader's language, all else as it is."""
    return spoken(value) if isinstance(value, Said) else value


def capital(words: str) -> str:
    """Return words with a capital at their start, in the reader's language."""
    return capital_of(str(in_their_language(words)))


def rich_text(key: str, /, **values: object) -> Markup:
    """Return a text whose values may be marked up, such as a name in bold; the text itself is never markup."""
    return Markup(set_in(escape(sentence(key)), values))  # noqa: S704 - escaped; values are escaped when set in


def rich_count_text(key: str, count: int, /, **values: object) -> Markup:
    """Return a text that fits a number, whose values may be marked up."""
    return Markup(set_in(escape(counted_sentence(key, count)), {"count": count, **values}))  # noqa: S704 - the same


def strong(words: object) -> Markup:
    """Return words in bold, for a value of :func:`rich_text`."""
    return Markup("<strong>{}</strong>").format(words)


def rule_words(citation: str) -> str:
    """Return a citation as it is spoken: "Rule 17.1d", "Model Local Rule E-5", "Definition: stroke"; the rest as it is named."""
    if citation[:1].isdigit():
        return text("shell.rule", citation=citation)
    return text("shell.local_rule", citation=citation) if LOCAL_RULE.match(citation) else named(citation)


def code(typed: str) -> Markup:
    """Return what is typed, as such, for a value of :func:`rich_text`."""
    return Markup("<code>{}</code>").format(typed)


def spoken_and() -> str:
    """Return what stands between the last two of a list."""
    return say("TERMS", "and")


def link(words: str, url: str) -> Markup:
    """Return words that lead somewhere, for a value of :func:`rich_text`."""
    return Markup('<a href="{}">{}</a>').format(url, words)


def page_link(words: str, url: str) -> Markup:
    """Return a link to a page that is fetched whole, such as one with another script."""
    return Markup('<a href="{}" hx-boost="false">{}</a>').format(url, words)


def translated(sentence: str) -> str:
    """Return a sentence of the vocabulary, the incidents or the register in the reader's language."""
    return translate()(sentence)


def script_words(subject: str, *, labels: bool = False) -> dict[str, str]:
    """Return the words a page hands to its scripts: the texts of a subject, and those for kinds of ground.

    Args:
        subject: the subject of the texts.
        labels: whether kinds of ground are written as labels on the map, rather than in sentences.
    """
    said = texts_of(subject)
    for kind in Kind:
        words = capital_of(ground_words(kind, "label")) if labels else ground_words(kind)
        said[f"ground.{kind.value}"] = words
        if labels:
            said[f"key.{kind.value}"] = capital_of(ground_words(kind))
    return said


WORDING: dict[str, Any] = {
    "text": text,
    "count_text": count_text,
    "rich_text": rich_text,
    "rich_count_text": rich_count_text,
    "strong": strong,
    "rule_words": rule_words,
    "cited": named,
    "cited_all": named_all,
    "code": code,
    "spoken_and": spoken_and,
    "link": link,
    "page_link": page_link,
    "ground_words": ground_words,
    "capital": capital,
    "translated": translated,
    "clock_words": clock_words,
    "day_words": day_words,
    "long_day_words": long_day_words,
    "short_day_words": short_day_words,
    "script_words": script_words,
    "language": language,
}
"""What a template can say with."""
