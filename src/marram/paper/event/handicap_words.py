"""Handicaps as sheets write them: a plus one with its sign."""

from decimal import Decimal

from marram.paper.event.on_paper import OnPaper
from marram.words.texts import text


def index_words(index: Decimal) -> str:
    """Return a Handicap Index as golfers write it: ``8.1``, or ``+1.4`` for one below zero."""
    return f"+{-index:.1f}" if index < 0 else f"{index:.1f}"


def playing_words(playing: int) -> str:
    """Return a Playing Handicap as golfers write it: ``9``, or ``+2`` for one below zero."""
    return f"+{-playing}" if playing < 0 else str(playing)


def handicap_words(sheet: OnPaper, name: str) -> str:
    """Return a player's handicap for a sheet: the Playing Handicap where net scores count, else the index; or nothing."""
    entrant = sheet.by_name.get(name)
    if sheet.net:
        playing = sheet.has(name).playing
        return text("paper.handicap.unknown") if playing is None else playing_words(playing)
    index = entrant.handicap_index if entrant else None
    return "" if index is None else index_words(index)
