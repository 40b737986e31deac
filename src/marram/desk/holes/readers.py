"""For whom a hole location sheet is."""

from enum import Enum


class Reader(Enum):
    """A reader, by the word that stands in addresses; the players' sheet leaves out slopes and what speaks against a place."""

    PLAYERS = "players"
    COMMITTEE = "committee"
