"""A card in the scoring area: figures, the return, what became of rulings beside it, what was found out afterwards.

A player's card of a round is what these entries make together: totals, differences and what the Rules say of it are
worked out of them, and never kept. Every entry names the player and the round.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, ClassVar, Literal

from marram.competition.cards.acts import By, SettledAs
from marram.competition.results.card import OutKind
from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import AN_ENTRY, WORDS, Kind

LONGEST = 99
"""Strokes above which a figure is a slip of the hand (own choice)."""

_SCORE = said('a number of strokes, or "-" for none')
_SCORES = said('an object of holes, each with a number of strokes, "-" for none, or null for nothing yet')
_YES_NO = said("true or false")
NEEDS = ("player", "round")

Score = int | Literal["-"]


@dataclass(frozen=True)
class CardFigures:
    """Figures of holes as somebody gives them. A correction holds those that replace the ones of the entry it corrects.

    Attributes:
        by: who gives them: the player, the marker, or a scorer on the course.
        figures: strokes with penalty strokes by the number of the hole.
    """

    __pydantic_config__: ClassVar = STRICT

    by: By = field(metadata=give(said("one of {known}", known=", ".join(one.value for one in By))))
    figures: Mapping[str, Score | None] = field(metadata=give(_SCORES))


@dataclass(frozen=True)
class CardReturned:
    """The card is returned: from here on nothing on it may be changed (Rule 3.3b(2)).

    Attributes:
        player_certified: whether the player has certified the scores.
        marker_certified: whether the marker has.
        at: when it was returned; ``None``: at the time of the entry.
        promptly: whether as soon as reasonably possible; ``None``: nobody doubts it.
        handicap: the handicap that it shows, ``"none"`` where none stands on it; ``None``: nobody looked.
        handicaps: the same of each partner who plays a ball, by the identifier of the player; nothing of whom nobody looked.
    """

    __pydantic_config__: ClassVar = STRICT

    player_certified: bool = field(metadata=give(_YES_NO))
    marker_certified: bool = field(metadata=give(_YES_NO))
    at: str | None = field(default=None, metadata=give(said("a time such as 2025-06-21T15:30:00+01:00")))
    promptly: bool | None = field(default=None, metadata=give(_YES_NO))
    handicap: int | Literal["none"] | None = field(
        default=None, metadata=give(said('a whole number, or "none" where none is shown'))
    )
    handicaps: Mapping[str, int | Literal["none"]] = field(
        default_factory=dict,
        metadata=give(said('an object of players, each with a whole number, or "none" where none is shown')),
    )


@dataclass(frozen=True)
class CardSettled:
    """What became of a ruling that lies beside the card.

    Attributes:
        ruling: the entry of the ruling.
        how: whether its penalty is in the scores, is not, or does not concern this card.
    """

    __pydantic_config__: ClassVar = STRICT

    ruling: str = field(metadata=give(AN_ENTRY))
    how: SettledAs = field(
        metadata=give(said("one of {known}", known=", ".join(one.value for one in SettledAs)))
    )


@dataclass(frozen=True)
class CardFoundOut:
    """What the score of a hole was in fact, found out after the return; the entry names the hole.

    Attributes:
        score: the actual score.
    """

    __pydantic_config__: ClassVar = STRICT

    score: Score = field(metadata=give(_SCORE))


@dataclass(frozen=True)
class CardAnswered:
    """What was told where the Rules asked about something wrong with the card.

    Attributes:
        finding: its name on the card.
        facts: the answers, as on the command line.
    """

    __pydantic_config__: ClassVar = STRICT

    finding: str = field(metadata=give(WORDS))
    facts: Mapping[str, str] = field(metadata=give(said("an object of facts and answers")))


@dataclass(frozen=True)
class CardEnded:
    """The player ends the round without a card that counts.

    Attributes:
        how: withdrawn, no return, disqualified otherwise, conceded.
        citation: the Rule a disqualification rests on.
    """

    __pydantic_config__: ClassVar = STRICT

    how: OutKind = field(metadata=give(said("one of {known}", known=", ".join(one.value for one in OutKind))))
    citation: str = field(default="", metadata=give(WORDS))


def is_score(given: Any) -> bool:
    """Tell whether this can be a score."""
    return given == "-" or (isinstance(given, int) and not isinstance(given, bool) and 1 <= given <= LONGEST)


def _figures(found: CardFigures) -> Iterator[str]:
    for hole, score in found.figures.items():
        if not (hole.isascii() and hole.isdecimal() and str(int(hole)) == hole and 1 <= int(hole) <= LONGEST):
            yield said("card_figures: {hole} is no number of a hole.", hole=hole[:20])
        if score is not None and not is_score(score):
            yield said(
                "card_figures: hole {hole} is {score}; give 1 to {most} strokes, or '-' for none.",
                hole=hole[:20],
                score=score,
                most=LONGEST,
            )
    if not found.figures:
        yield said("card_figures: there is no figure; give one.")


def _returned(found: CardReturned) -> Iterator[str]:
    try:
        whole = found.at is None or datetime.fromisoformat(found.at).tzinfo is not None
    except ValueError:
        whole = False
    if not whole:
        yield said("card_returned: at is {given}; give a time with its distance from UTC.", given=found.at)


def _found_out(found: CardFoundOut) -> Iterator[str]:
    if not is_score(found.score):
        yield said(
            "card_found_out: {score} is no score; give 1 to {most} strokes, or '-' for none.",
            score=found.score,
            most=LONGEST,
        )


KINDS = (
    Kind("card_figures", CardFigures, needs=NEEDS, parts=(), faults=_figures),
    Kind("card_returned", CardReturned, needs=NEEDS, parts=("note",), faults=_returned),
    Kind("card_settled", CardSettled, needs=NEEDS, points_at=("ruling",), parts=("note",)),
    Kind("card_found_out", CardFoundOut, needs=(*NEEDS, "hole"), parts=("note",), faults=_found_out),
    Kind("card_answered", CardAnswered, needs=NEEDS, parts=("note",)),
    Kind("card_ended", CardEnded, needs=NEEDS, parts=("note", "reason")),
)
