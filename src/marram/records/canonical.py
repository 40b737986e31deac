"""JSON in one canonical form, so that equal contents have equal bytes and one digest: RFC 8785 (JCS, June 2020).

Keys are sorted by their UTF-16 code units, nothing stands between tokens, strings are escaped only where they must
be, and numbers are written as ECMAScript writes an IEEE 754 double (RFC 8785, 3.2.2.3).
"""

import json
import math
from collections.abc import Mapping
from datetime import date
from hashlib import sha256
from typing import Any

from marram.errors import InputError, shown
from marram.said import said

LARGEST = 2**53 - 1
"""The largest whole number that every JSON reader keeps exactly (RFC 7493, 2.2)."""

_quoted = json.encoder.encode_basestring  # its escapes are those of RFC 8785, 3.2.2.2


def canonical(thing: Any) -> str:
    """Return plain data as canonical JSON.

    Args:
        thing: dictionaries with strings as keys, lists, tuples, strings, numbers, booleans, ``None``; a date is
            written as its ISO 8601 day.

    Raises:
        InputError: something in it cannot be written so: a number that is none or too large, half of a
            surrogate pair, or an object of another type.
    """
    written: list[str] = []
    _write(thing, written.append)
    text = "".join(written)
    try:
        text.encode()
    except UnicodeEncodeError:
        raise InputError(said("A text to be kept holds half a character; enter it anew.")) from None
    return text


def digest(text: str) -> str:
    """Return the SHA-256 of a text in UTF-8, as 64 hexadecimal digits."""
    return sha256(text.encode()).hexdigest()


def _write(thing: Any, write: Any) -> None:
    if isinstance(thing, str):
        write(_quoted(thing))
    elif thing is None or isinstance(thing, bool):
        write({None: "null", True: "true", False: "false"}[thing])
    elif isinstance(thing, int):
        write(str(int(thing)) if abs(thing) <= LARGEST else _large(thing))
    elif isinstance(thing, float):
        write(_number(thing))
    elif isinstance(thing, Mapping):
        _write_object(thing, write)
    elif isinstance(thing, list | tuple):
        mark = "["
        for one in thing:
            write(mark)
            _write(one, write)
            mark = ","
        write("]" if mark == "," else "[]")
    elif isinstance(thing, date):
        write(_quoted(thing.isoformat()))
    else:
        raise InputError(said("Something of the type {type} cannot be kept.", type=type(thing).__name__))


def _large(thing: int) -> str:
    """Return a large whole number, where it stands for a double without loss: exactly, or as the form writes one."""
    try:
        written = _number(float(thing))
        if float(thing) == thing or written == str(thing):
            return written
    except OverflowError:
        pass
    raise InputError(said("{given} is too large to be kept as a number.", given=shown(thing)))


def _write_object(thing: Mapping[Any, Any], write: Any) -> None:
    keys = list(thing)
    for key in keys:
        if not isinstance(key, str):
            raise InputError(said("{key} cannot be a key of what is kept; give a word.", key=shown(key)))
    plain = all(key.isascii() for key in keys)
    keys.sort(key=None if plain else lambda key: key.encode("utf-16-be", "surrogatepass"))
    mark = "{"
    for key in keys:
        write(f"{mark}{_quoted(key)}:")
        _write(thing[key], write)
        mark = ","
    write("}" if mark == "," else "{}")


def _number(value: float) -> str:
    """Return a double as ECMAScript writes it (ECMA-262, Number::toString): the shortest digits that give it back."""
    if not math.isfinite(value):
        raise InputError(said("{given} is no number that can be kept.", given=shown(value)))
    if value == 0:
        return "0"
    mantissa, _, exponent = repr(abs(value)).partition("e")
    whole, _, fraction = mantissa.partition(".")
    digits = (whole + fraction).lstrip("0")
    point = len(whole) + int(exponent or 0) - (len(whole + fraction) - len(digits))
    digits = digits.rstrip("0")
    sign, count = "-" if value < 0 else "", len(digits)
    if count <= point <= 21:
        return sign + digits + "0" * (point - count)
    if 0 < point <= 21:
        return f"{sign}{digits[:point]}.{digits[point:]}"
    if -6 < point <= 0:
        return f"{sign}0.{'0' * -point}{digits}"
    power = f"e{point - 1:+d}"
    return f"{sign}{digits[0]}{'.' if count > 1 else ''}{digits[1:]}{power}"
