"""Hole numbers as people write them: "Hole 3", "03", "1 - #2", "2W", "1;10", full-width digits."""

import re
import unicodedata
from dataclasses import dataclass

MOST = 36
"""No course has more holes than this that are numbered on (own choice)."""

_WORDS = frozenset(
    {
        "h",
        "hole",
        "holes",
        "no",
        "nr",
        "num",
        "number",
        "n",
        "hoyo",
        "trou",
        "loch",
        "bana",
        "hål",
        "hull",
        "hul",
        "buca",
        "reikä",
        "buraco",
        "jamka",
        "delen",
    }
)
"""Words before a number that say only that it is a hole's (from memory, in languages of golfing countries)."""

_LEADING = re.compile(
    rf"^(?:(?:{'|'.join(sorted(_WORDS, key=len, reverse=True))})[\s.:-]*|[#№º°]\s*)+(?=\d)", re.IGNORECASE
)
_NUMBER = r"0*([1-9]\d?)"
_SIGNS = r"[#№º°]"
_DASHES = str.maketrans(dict.fromkeys("\u2010\u2011\u2012\u2013\u2014\u2212", "-"))
"""Hyphens and dashes of every length, and the minus sign."""
_ONE = re.compile(rf"(?:{_SIGNS}\s*)?{_NUMBER}(?:[.,]0+)?")
"""A number alone, also as tables write a whole number: 4.0."""
_SEVERAL = re.compile(rf"{_NUMBER}(?:\s*[;,/&+|]\s*{_NUMBER})+")
_SPAN = re.compile(rf"{_NUMBER}\s*-\s*{_NUMBER}")
_BEFORE = re.compile(rf"(?P<words>[^\W\d_][^\d]*?)[\s.:#№-]*{_NUMBER}")
_AFTER = re.compile(rf"{_NUMBER}(?:\s*[-/:(\[]\s*|\s*)(?P<words>[#№]\s*\w+|[^\W\d_][^\d()\[\]]*\d?)[)\]]?")
_ORDINAL = re.compile(r"(?:st|nd|rd|th|er|ª|º|°)\b[\s.]*", re.IGNORECASE)
_BESIDE = re.compile(r"[\s,;(-]*\b(?:par|of)\s*\d+\)?$|[\s.:)]+$", re.IGNORECASE)
"""What may stand behind a number and says nothing of which hole it is."""


@dataclass(frozen=True, slots=True)
class HoleWriting:
    """What was read from a hole's number as written.

    Attributes:
        numbers: the holes; none where nothing can be read.
        course: the course or nine that the rest names, such as ``#2`` or ``W``; empty where it names none.
        span: whether it may mean all the holes from the first to the last.
    """

    numbers: tuple[int, ...] = ()
    course: str = ""
    span: bool = False


def read_writing(text: str) -> HoleWriting:
    """Return which hole a text names, and of which course; nothing where that is unclear.

    Args:
        text: a ``ref`` or a name, as it stands in the map.
    """
    said = " ".join(unicodedata.normalize("NFKC", text).translate(_DASHES).split())
    said = _LEADING.sub("", _BESIDE.sub("", said))
    if found := _ONE.fullmatch(said):
        return _checked(HoleWriting((int(found[1]),)))
    if _SEVERAL.fullmatch(said):
        return _checked(HoleWriting(tuple(dict.fromkeys(int(one) for one in re.findall(r"\d+", said)))))
    if found := _SPAN.fullmatch(said):
        first, last = int(found[1]), int(found[2])
        return (
            _checked(HoleWriting((first, last), span=last > first))
            if first != last
            else HoleWriting((first,))
        )
    if found := _BEFORE.fullmatch(said):
        words = found["words"].strip(" .:-#№")
        return _checked(HoleWriting((int(found[2]),), words))
    if found := _AFTER.fullmatch(said):
        words = found["words"].strip(" -")
        words = words[ordinal.end() :] if (ordinal := _ORDINAL.match(words)) else words
        known = [word for word in words.split() if word.casefold() not in _WORDS]
        return _checked(HoleWriting((int(found[1]),), " ".join(known)))
    return HoleWriting()


def _checked(writing: HoleWriting) -> HoleWriting:
    return writing if all(number <= MOST for number in writing.numbers) else HoleWriting()
