"""Sentences of the layers beneath the words: said in English, each knowing its message and what is set into it.

A layer that may not know the catalogue says what it found with :func:`said`; whoever shows it to a person puts it into
the reader's language with :func:`marram.words.spoken.spoken`. An operation of :class:`str` gives a plain string, which
has forgotten its message: put sentences together with :func:`joined` or ``+``, and as values of :func:`said`.
"""

from collections.abc import Iterable, Mapping
from enum import Enum
from types import MappingProxyType
from typing import Self


class Said(str):
    """An English sentence that can still be put into another language.

    Attributes:
        message: the sentence with its places open, the message id of the catalogue.
        values: what is set into it, by name.
        several: the message where ``count`` is not one; empty for a sentence that depends on no number.
    """

    __slots__ = ("message", "several", "values")
    message: str
    several: str
    values: Mapping[str, object]

    def __new__(
        cls, sentence: str, message: str = "", values: Mapping[str, object] | None = None, several: str = ""
    ) -> Self:
        """Return a sentence that knows its message; without one it is the message itself."""
        found = super().__new__(cls, sentence)
        found.message = message or sentence
        found.values = MappingProxyType(dict(values or {}))
        found.several = several
        return found

    def __add__(self, other: str) -> "Said":
        return joined("", self, other)

    def __reduce__(self) -> tuple[type["Said"], tuple[str, str, dict[str, object], str]]:
        return type(self), (str(self), self.message, dict(self.values), self.several)


def said(message: str, /, **values: object) -> Said:
    """Return a sentence, values set into its places as :meth:`str.format` does.

    A member of an enum is named by its value, which is a term of the Rules' Definitions: ``red penalty area``.
    """
    return Said(_set_in(message, values), message, values)


def counted(one: str, several: str, count: int, /, **values: object) -> Said:
    """Return the sentence that fits a number, which ``{count}`` stands for in it: of one thing, and of several."""
    values = {"count": count, **values}
    return Said(_set_in(one if count == 1 else several, values), one, values, several)


def _set_in(message: str, values: Mapping[str, object]) -> str:
    return message.format(**{name: in_english(value) for name, value in values.items()})


def in_english(value: object) -> object:
    """Return a value as an English sentence names it."""
    return str(value.value).replace("_", " ") if isinstance(value, Enum) else value


def joined(between: str, *parts: str) -> Said:
    """Return parts, each of which may be a sentence, with something between them that is the same in all languages."""
    places = [f"{{part_{number}}}" for number in range(len(parts))]
    return said(between.join(places), **{f"part_{number}": part for number, part in enumerate(parts)})


def sentences(*parts: str) -> Said:
    """Return sentences one after the other, empty ones left out."""
    return joined(" ", *filter(None, parts))


def all_of(parts: Iterable[object]) -> Said:
    """Return parts as a list that names all of them: ``1, 2 and 3``."""
    *before, last = map(_part, parts)
    return (
        said("{before} and {last}", before=joined(", ", *before), last=last) if before else joined("", last)
    )


def one_of(parts: Iterable[object]) -> Said:
    """Return parts as a list of which one is meant: ``1, 2 or 3``."""
    *before, last = map(_part, parts)
    return said("{before} or {last}", before=joined(", ", *before), last=last) if before else joined("", last)


def _part(value: object) -> str:
    return value if isinstance(value, str) else str(in_english(value))
