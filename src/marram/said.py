"""Sentences of the layers beneath the words: said in English, each knowing its message and what is set into it.

A layer that may not know the catalogue says what it found with :func:`said`; whoever shows it to a person puts it into
the reader's language with :func:`marram.words.spoken.spoken`.
"""

from collections.abc import Mapping
from enum import Enum
from types import MappingProxyType
from typing import Self


class Said(str):
    """An English sentence that can still be put into another language.

    Attributes:
        message: the sentence with its places open, the message id of the catalogue.
        values: what is set into it, by name.
    """

    __slots__ = ("message", "values")
    message: str
    values: Mapping[str, object]

    def __new__(cls, sentence: str, message: str = "", values: Mapping[str, object] | None = None) -> Self:
        """Return a sentence that knows its message; without one it is the message itself."""
        found = super().__new__(cls, sentence)
        found.message = message or sentence
        found.values = MappingProxyType(dict(values or {}))
        return found

    def __reduce__(self) -> tuple[type["Said"], tuple[str, str, dict[str, object]]]:
        return type(self), (str(self), self.message, dict(self.values))


def said(message: str, /, **values: object) -> Said:
    """Return a sentence, values set into its places as :meth:`str.format` does.

    A member of an enum is named by its value, which is a term of the Rules' Definitions: ``red penalty area``.
    """
    sentence = message.format(**{name: in_english(value) for name, value in values.items()})
    return Said(sentence, message, values)


def in_english(value: object) -> object:
    """Return a value as an English sentence names it."""
    return str(value.value).replace("_", " ") if isinstance(value, Enum) else value


def joined(between: str, *parts: str) -> Said:
    """Return parts, each of which may be a sentence, with something between them that is the same in all languages."""
    places = [f"{{part_{number}}}" for number in range(len(parts))]
    return said(between.join(places), **{f"part_{number}": part for number, part in enumerate(parts)})
