"""Text that others wrote, made safe to show: nothing in it can move a terminal's cursor or turn the writing round.

A name on a map can hold characters that are orders rather than letters: escape codes that clear or recolour a
terminal, marks that reverse the direction of what follows (Unicode Technical Report 36, *Unicode Security
Considerations*, section 3), halves of characters that cannot be written at all. Each is shown as a symbol instead.
"""

import re

from marram.said import said

_ORDERS = re.compile("[\x00-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ud800-\udfff\ufeff]")


def visible(text: str) -> str:
    """Return a text with every control character, mark of direction and half character as a visible symbol."""
    return _ORDERS.sub(lambda found: _symbol(found[0]), text)


def escaped(json: str) -> str:
    """Return JSON as it would be with such characters escaped; line ends between its parts stay."""
    return _ORDERS.sub(lambda found: found[0] if found[0] == "\n" else f"\\u{ord(found[0]):04x}", json)


def short(value: object, most: int = 60) -> str:
    """Return what a file holds, visible, and cut where it is longer than a sentence can bear."""
    if isinstance(value, int) and abs(value) > 10**most:
        return said("a very long number")
    text = visible(value if isinstance(value, str) else _written(value, most))
    return text if len(text) <= most else text[: most - 2] + " …"


def _written(value: object, most: int) -> str:
    # A list nested without end, or a number of a million digits, is not written out to be cut afterwards.
    if isinstance(value, list):
        return (
            "["
            + ", ".join(_written(one, most) if not isinstance(one, list | dict) else "…" for one in value[:4])
            + (", …]" if value[4:] else "]")
        )
    if isinstance(value, dict):
        return "{…}"
    if isinstance(value, int) and abs(value) > 10**most:
        return "…"
    return repr(value)


def _symbol(order: str) -> str:
    code = ord(order)
    if code < 0x20:
        return chr(0x2400 + code)
    return "␡" if code == 0x7F else f"[U+{code:04X}]"
