"""How templates say things: every text from the catalogue, by key."""

from typing import Any

from markupsafe import Markup, escape

from marram.words.ground import ground_words
from marram.words.language import language, translate
from marram.words.texts import (
    capital,
    count_text,
    counted_sentence,
    day_words,
    sentence,
    set_in,
    short_day_words,
    text,
    texts_of,
)


def rich_text(key: str, **values: object) -> Markup:
    """Return a text whose values may be marked up, such as a name in bold; the text itself is never markup."""
    return Markup(set_in(escape(sentence(key)), values))  # noqa: S704 - escaped; values are escaped when set in


def rich_count_text(key: str, count: int, **values: object) -> Markup:
    """Return a text that fits a number, whose values may be marked up."""
    return Markup(set_in(escape(counted_sentence(key, count)), {"count": count, **values}))  # noqa: S704 - the same


def strong(words: object) -> Markup:
    """Return words in bold, for a value of :func:`rich_text`."""
    return Markup("<strong>{}</strong>").format(words)


def link(words: str, url: str) -> Markup:
    """Return words that lead somewhere, for a value of :func:`rich_text`."""
    return Markup('<a href="{}">{}</a>').format(url, words)


def page_link(words: str, url: str) -> Markup:
    """Return a link to a page that is fetched whole, such as one with another script."""
    return Markup('<a href="{}" hx-boost="false">{}</a>').format(url, words)


def translated(sentence: str) -> str:
    """Return a sentence of the vocabulary, the incidents or the register in the reader's language."""
    return translate()(sentence)


WORDING: dict[str, Any] = {
    "text": text,
    "count_text": count_text,
    "rich_text": rich_text,
    "rich_count_text": rich_count_text,
    "strong": strong,
    "link": link,
    "page_link": page_link,
    "ground_words": ground_words,
    "capital": capital,
    "translated": translated,
    "day_words": day_words,
    "short_day_words": short_day_words,
    "texts_of": texts_of,
    "language": language,
}
"""What a template can say with."""
