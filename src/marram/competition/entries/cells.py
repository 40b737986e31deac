"""What stands in a cell: a handicap, a year of birth, a sex, a name in the right encoding."""

import re
import unicodedata
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

from marram.errors import InputError
from marram.handicap.checking import Checking
from marram.said import Said, said

WITHOUT = {"", "-", "–", "pr", "n/a", "na", "nh", "none", "no", "keine", "ohne"} | {
    *("k.a.", "k. a.", "unknown", "unbekannt", "inconnu", "tbc"),
}
"""What lists write where a player has no Handicap Index; PR (permission to play a course) is one of them."""
SCRATCH = {"scr", "scratch", "zero"}
"""What lists write for a Handicap Index of 0."""
_NAMED = re.compile(
    r"^(?:hcpi?|hdcp|hi|whs|index|handicap(?:\s+index)?|vorgabe)\b\s*[:.=]?\s*(?=\S)", re.IGNORECASE
)
"""What lists write before the number, as their heading has it already."""
_PLUS = re.compile(r"^(?:plus|\+)\s*", re.IGNORECASE)
_PLUS_BEHIND = re.compile(r"^(\d+(?:[.,]\d)?)\s*\+$")
"""A plus handicap with its sign behind it."""
_DATE = re.compile(r"\d\s*[-./]\s*\d+\s*[-./]\s*\d|\d\.?\s*[^\W\d_]{3}")
"""What spreadsheets make of 12.5 or 12,5 where they take it for a day of a month: 2025-05-12, 12. May."""
_NUMBER = re.compile(r"^[-+−–]?\s*\d+(?:[.,]\d+)?$")
FIRST_SERIAL = date(1899, 12, 30)
"""Day 0 of the dates that spreadsheets keep as numbers (the 1900 system, as they count from March 1900 on)."""
_SEXES = {
    **dict.fromkeys(
        ("m", "male", "man", "men", "boy", "boys", "mr", "gentleman", "gentlemen", "gents"), "male"
    ),
    **dict.fromkeys(
        ("h", "herr", "herren", "männlich", "mann", "homme", "hommes", "hombre", "caballero"), "male"
    ),
    **dict.fromkeys(
        ("♂", "masculin", "masculino", "homem", "uomo", "mężczyzna", "muž", "mies", "herre", "heren"), "male"
    ),
    **dict.fromkeys(
        ("f", "female", "woman", "women", "girl", "girls", "lady", "ladies", "mrs", "ms", "miss"), "female"
    ),
    **dict.fromkeys(
        ("w", "d", "frau", "dame", "damen", "weiblich", "femme", "femmes", "mujer", "dama"), "female"
    ),
    **dict.fromkeys(
        ("♀", "féminin", "femenino", "mulher", "donna", "kobieta", "k", "žena", "nainen", "dames"), "female"
    ),
    **dict.fromkeys(("kvinna", "kvinne", "kvinde", "dam", "vrouw", "v"), "female"),
}


def handicap_in(cell: str) -> Decimal | None:
    """Return a Handicap Index, ``None`` where the cell says that there is none.

    Raises:
        InputError: it is neither, or can be read in two ways.
    """
    if cell.strip().lower() in WITHOUT:
        return None
    written = _PLUS.sub("+", _NAMED.sub("", cell.strip().lstrip("'")).rstrip("."))
    if written.lower() in SCRATCH:
        return Decimal(0)
    if behind := _PLUS_BEHIND.match(written):
        written = f"+{behind[1]}"
    if _DATE.search(written):
        raise InputError(
            said(
                "{cell} is a date that the spreadsheet made of a Handicap Index. Write the number, such as 12.4, in a cell of text.",
                cell=repr(cell),
            )
        )
    if not _NUMBER.match(written):
        raise InputError(
            said(
                "{cell} is no Handicap Index. Write 12.4, +1.4 for a plus handicap, or leave it empty.",
                cell=repr(cell),
            )
        )
    checking = Checking()
    read = checking.index(written)
    checking.done()
    return Decimal(read.numerator) / Decimal(read.denominator)


def born_in(cell: str) -> int | None:
    """Return a year of birth: of a year, a date written out, or a spreadsheet's number of a day.

    Raises:
        InputError: it is none of them.
    """
    written = cell.strip()
    if not written:
        return None
    year = None
    if written.isdecimal() and len(written) <= 5:
        number = int(written)
        year = number if number < 3000 else (FIRST_SERIAL + timedelta(days=number)).year
    elif match := re.search(r"(?:^|\D)((?:19|20)\d\d)(?:\D|$)", written):
        year = int(match[1])
    if year is None or not 1900 <= year <= datetime.now(tz=UTC).year:  # nobody is born after today
        raise InputError(
            said("{cell} is no year or date of birth. Write 1990, or 1990-04-30.", cell=repr(cell))
        )
    return year


def sex_in(cell: str) -> str:
    """Return ``male`` or ``female``, empty for an empty cell.

    Raises:
        InputError: it is none of the words known.
    """
    written = cell.strip().lower().rstrip(".")
    if written and written not in _SEXES:
        raise InputError(
            said("{cell} is no sex as it is known here. Write m or f, or leave it empty.", cell=repr(cell))
        )
    return _SEXES.get(written, "")


_BROKEN = re.compile(
    r"^#(?:REF|N/A|NV|VALUE|WERT|NAME|DIV/0|BEZUG|NUM|ZAHL|NULL|SPILL|VALEUR|NOM)[!?]?$", re.IGNORECASE
)


def broken(cell: str) -> Said | None:
    """Return what is wrong with a cell in which a formula of the spreadsheet found nothing."""
    if not _BROKEN.match(cell):
        return None
    return said("{cell} is a formula that found nothing. Write what is meant.", cell=repr(cell))


_IN_NAMES = frozenset("\ufffd\u2018\u2019\u00b4\u02bb\u00b7\u2013")
"""What stands in names beside letters, of what is not plain ASCII; a letter lost on the way is told by itself."""


def wrong_letters(name: str) -> Said | None:
    """Return what is wrong with a name that holds signs which no name has: it was read in another encoding than written."""
    odd = dict.fromkeys(
        one
        for one in name
        if ord(one) > 127 and one not in _IN_NAMES and unicodedata.category(one)[0] not in "LMZ"
    )
    if not odd:
        return None
    return said(
        "{name} holds {odd}, which no name has; it was probably written in an encoding that is not known here. Ask for the list in UTF-8, or write it anew.",
        name=repr(name),
        odd=" ".join(odd),
    )


def wrong_encoding(cell: str) -> Said | None:
    """Return what is wrong where letters were read in another encoding than they were written in."""
    if "\ufffd" in cell:
        return said(
            "Letters of {cell} were lost on the way. Ask for the list in UTF-8, or write them anew.",
            cell=repr(cell),
        )
    try:
        meant = cell.encode("cp1252").decode("utf-8")
    except (UnicodeEncodeError, UnicodeDecodeError):
        return None
    if meant == cell:
        return None
    return said(
        "{cell} is probably {meant}, written in UTF-8 and read as something else. Ask for the list in UTF-8, or write it anew.",
        cell=repr(cell),
        meant=repr(meant),
    )
