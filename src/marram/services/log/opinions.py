"""Second opinions: asked of the chief referee with everything, answered, and open until then; all read out of the log."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from marram.records.entry import Entry, Kept, Part
from marram.records.log import Log
from marram.services.cases.case import Case

ASKED, GIVEN = "opinion_asked", "opinion_given"


@dataclass(frozen=True)
class Opinion:
    """A second opinion.

    Attributes:
        asked: the entry that asks.
        answers: the entries that answer, the first first; several where two people answered at once.
        thinks: what the official thinks, in words; empty where nothing was said, or it was erased.
        words: the words of each answer.
    """

    asked: Kept
    answers: tuple[Kept, ...]
    thinks: str = ""
    words: tuple[str, ...] = ()

    @property
    def is_open(self) -> bool:
        """Whether nobody has answered yet."""
        return not self.answers

    @property
    def about(self) -> str | None:
        """The case begun, or the entry, that it is about."""
        return self.asked.content.get("about")

    @property
    def case(self) -> dict[str, Any] | None:
        """The case as it was told when the question was asked; ``None`` where nothing was told."""
        return self.asked.content.get("case")


def opinions(log: Log, event: str, about: str | None = None) -> list[Opinion]:
    """Return the second opinions of an event, the latest asked first.

    Args:
        log: the log.
        event: the event.
        about: only those about this case or entry.
    """
    asked = [
        one for one in log.entries(event, kind=ASKED) if about is None or one.content.get("about") == about
    ]
    if not asked:
        return []
    answers: dict[str, list[Kept]] = {}
    for one in log.entries(event, kind=GIVEN):
        answers.setdefault(str(one.content.get("asked")), []).append(one)
    parts = log.parts_of([*asked, *(one for some in answers.values() for one in some)])
    return [
        Opinion(
            one,
            tuple(answers.get(one.id, ())),
            _words(parts[one.id]),
            tuple(_words(parts[answer.id]) for answer in answers.get(one.id, ())),
        )
        for one in reversed(asked)
    ]


def asking(
    ident: str,
    asked_at: datetime,
    *,
    by: str | None,
    about: str,
    case: Case | None,
    headline: str,
    thinks: str,
    player: str | None = None,
) -> Entry:
    """Return the entry that asks for a second opinion.

    Args:
        ident: the identifier of the entry.
        asked_at: when, with its distance from UTC.
        by: the official who asks.
        about: the case begun, or the entry, that it is about.
        case: the case as far as it is told.
        headline: what the official was shown of it.
        thinks: what the official thinks, in words.
        player: the player.
    """
    spot = case.incidents[0].places.get("ball") if case and case.incidents else None
    return Entry(
        ASKED,
        asked_at,
        ident,
        by=by,
        player=player,
        hole=case.hole if case else None,
        place=None if spot is None else {"latitude": spot.latitude, "longitude": spot.longitude},
        content={
            "about": about,
            "headline": headline,
            **({"case": case.document()} if case and case.incidents else {}),
        },
        parts=_note(thinks),
    )


def answering(
    ident: str,
    given_at: datetime,
    asked: Kept,
    *,
    by: str | None,
    agrees: bool,
    words: str,
    case: Case | None = None,
    headline: str = "",
) -> Entry:
    """Return the entry that answers a question.

    Args:
        ident: the identifier of the entry.
        given_at: when, with its distance from UTC.
        asked: the entry that asks.
        by: who answers.
        agrees: whether it is to be ruled as the official was shown.
        words: the answer in words.
        case: the case as it is to be ruled, where that is another one.
        headline: what the Rules say of that case.
    """
    return Entry(
        GIVEN,
        given_at,
        ident,
        by=by,
        player=asked.told.get("player"),
        hole=asked.told.get("hole"),
        content={
            "asked": asked.id,
            "agrees": agrees,
            **({"case": case.document(), "headline": headline} if case else {}),
        },
        parts=_note(words),
    )


def _note(words: str) -> tuple[Part, ...]:
    return (Part("note", words.strip().encode()),) if words.strip() else ()


def _words(parts: Sequence[Part | None]) -> str:
    return " ".join(
        part.content.decode(errors="replace") for part in parts if part is not None and part.what == "note"
    )
