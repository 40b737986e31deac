"""What can be entered of a card, in the order in which it happens."""

from dataclasses import dataclass
from enum import Enum

from marram.competition.results.card import HoleScore, OutKind


class By(Enum):
    """Who gave a figure."""

    PLAYER = "player"
    MARKER = "marker"
    SCORER = "scorer"
    """An official or a walking scorer, hole by hole from the course; it shows on the leader board and certifies nothing."""


class SettledAs(Enum):
    """What becomes of a ruling that lies beside a card."""

    INCLUDED = "included"
    NOT_INCLUDED = "not_included"
    DOES_NOT_CONCERN = "does_not_concern"


@dataclass(frozen=True, slots=True)
class Figure:
    """A score on a hole as somebody gives it.

    Attributes:
        by: who.
        hole: the number of the hole.
        score: strokes with penalty strokes; ``"-"`` for none.
        ball: whose ball, where partners play one each; empty for the only one of the card.
    """

    by: By
    hole: int
    score: HoleScore
    ball: str = ""


@dataclass(frozen=True, slots=True)
class Certified:
    """The player or the marker certifies the hole scores, or is known not to have."""

    by: By
    done: bool = True


@dataclass(frozen=True, slots=True)
class HandicapShown:
    """The handicap that the returned card shows.

    Attributes:
        handicap: the handicap; ``None``: none is on it.
        ball: whose, where partners play a ball each and each shows one; empty for the only one of the card.
    """

    handicap: int | None
    ball: str = ""


@dataclass(frozen=True, slots=True)
class Returned:
    """The card is returned: from here on nothing on it may be changed (Rule 3.3b(2)).

    Attributes:
        promptly: whether as soon as reasonably possible; ``None``: nobody doubts it.
    """

    promptly: bool | None = None


@dataclass(frozen=True, slots=True)
class Settlement:
    """A ruling beside the card is settled.

    Attributes:
        ruling: its identifier.
        how: what becomes of it.
    """

    ruling: str
    how: SettledAs


@dataclass(frozen=True, slots=True)
class FoundOut:
    """The Committee finds out what the actual score of a hole was, after the card was returned."""

    hole: int
    score: HoleScore
    ball: str = ""


@dataclass(frozen=True, slots=True)
class Ended:
    """The side ends its round without a card that counts: withdrawn, no return, disqualified otherwise, conceded."""

    kind: OutKind
    citation: str = ""


CardAct = Figure | Certified | HandicapShown | Returned | Settlement | FoundOut | Ended
"""Everything that can be entered of a card."""
