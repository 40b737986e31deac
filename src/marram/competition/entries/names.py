"""What stands in the cell of a name: family name first, a club in brackets behind it, no person at all; and who is spelled otherwise."""

import re
import unicodedata

_COMMA = re.compile(r"^([^,]+),\s*([^,]+)$")
_BEHIND = re.compile(r"^(.*\S)\s*[(\[]([^()\[\]]+)[)\]]$")
_SUFFIXES = {"jr", "sr", "jun", "sen", "junior", "senior", "ii", "iii", "iv", "dr", "prof", "med", "mba"}
_TOTALS = re.compile(
    r"^(?:total|sum|subtotal|count|average|mean|players?|entries|summe|gesamt|anzahl|durchschnitt|teilnehmer(?:innen)?|ø|somme|nombre)"
    r"(?:\s+(?:players|entries|spieler|teilnehmer|of players|der spieler))?\s*[:=]?\s*[\d.,]*(?:\s+(?:players|entries|spieler|teilnehmer(?:innen)?|personen|joueurs))?$",
    re.IGNORECASE,
)
_LETTERS = {"æ": "ae", "œ": "oe", "ß": "ss", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "\u0131": "i"}
_FOLDED = str.maketrans(_LETTERS | {"ä": "ae", "ö": "oe", "ü": "ue", "ø": "oe", "å": "aa"})
_STRUCK = str.maketrans(_LETTERS | {"ø": "o"})
"""Letters that no accent can be taken from, by what is typed for them."""


def turned(name: str) -> str | None:
    """Return a name written as ``Family, Given`` the other way round; ``None`` where it is not written so."""
    found = _COMMA.match(name)
    if found is None or found[2].strip().rstrip(".").casefold() in _SUFFIXES:
        return None
    return f"{found[2].strip()} {found[1].strip()}"


def behind(name: str) -> tuple[str, str] | None:
    """Return a name and what stands in brackets behind it; ``None`` where nothing does."""
    found = _BEHIND.match(name)
    return None if found is None else (found[1].strip(), found[2].strip())


def is_total(name: str) -> bool:
    """Tell whether a cell says what is summed up or counted below a list, and names nobody."""
    return bool(_TOTALS.match(name.strip()))


def spelled_alike(name: str) -> str:
    """Return what is the same however a name is spelled: accents, umlauts, capitals, hyphens and the order of its words apart."""
    return " ".join(sorted(re.findall(r"\w+", _plain(name))))


def bare_letters(words: str) -> str:
    """Return words in small letters with accents taken off, where an umlaut may have been typed as its letter alone."""
    return _bare(unicodedata.normalize("NFC", words).casefold().translate(_STRUCK))


def in_a_list(name: str) -> tuple[str, str]:
    """Return what a name is put in order by where names are listed: its letters without accents, so that Çelik stands with Cole."""
    return _plain(name), name


def found_by(name: str) -> str:
    """Return every way a name may be typed to find it: as it is, without accents and umlauts, with umlauts spelled out."""
    small = unicodedata.normalize("NFC", name).casefold()
    return " ".join(dict.fromkeys((small, _bare(small.translate(_STRUCK)), _plain(name))))


def _plain(name: str) -> str:
    small = unicodedata.normalize("NFC", name).casefold().translate(_FOLDED)
    return _bare(small)


def _bare(letters: str) -> str:
    return "".join(one for one in unicodedata.normalize("NFKD", letters) if not unicodedata.combining(one))
