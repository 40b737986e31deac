"""About how wide letters are: the page's own type is not known here, so a wide one is assumed."""

BOLD = 0.70
"""The width of a usual bold letter, in heights (DejaVu Sans Bold, among the widest in use)."""
PLAIN = 0.86
"""The width of plain letters, in widths of bold ones (DejaVu Sans)."""
_NARROW = frozenset("iljtfrI.,:;'|!()[]/ \u00a0°²")
_WIDE = frozenset("mwMW—%@")
_OF_NARROW, _OF_WIDE = 0.62, 1.45


def text_width(text: str, size: float, *, bold: bool = True) -> float:
    """Return about how wide a text is, in the units of its size; rather too much than too little."""
    letters = sum(_OF_NARROW if one in _NARROW else _OF_WIDE if one in _WIDE else 1.0 for one in text)
    return letters * size * BOLD * (1.0 if bold else PLAIN)
