"""Amounts of what numbers are asked in."""

TEXTS: dict[str, str] = {
    "club-lengths.one": "{amount} club-length",
    "club-lengths.several": "{amount} club-lengths",
    "club-lengths": "club-lengths",
    "holes.one": "{amount} hole",
    "holes.several": "{amount} holes",
    "holes": "holes",
    "minutes.one": "{amount} minute",
    "minutes.several": "{amount} minutes",
    "minutes": "minutes",
    "seconds.one": "{amount} second",
    "seconds.several": "{amount} seconds",
    "seconds": "seconds",
    "strokes.one": "{amount} stroke",
    "strokes.several": "{amount} strokes",
    "strokes": "strokes",
}
