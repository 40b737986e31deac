"""The letters of the made-up language: fullwidth forms, which no English word has."""

import re

_OPEN = re.compile(r"(\{[^{}]*\})")


def altered(sentence: str) -> str:
    """Return a sentence in the made-up language; the places for values stay as they are."""
    parts = _OPEN.split(sentence)
    return f"⟦{''.join(part if _OPEN.fullmatch(part) else wide(part) for part in parts)}⟧"


def wide(text: str) -> str:
    return "".join(chr(ord(one) + 0xFEE0) if one.isascii() and one.isalpha() else one for one in text)
