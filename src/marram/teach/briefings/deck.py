"""A briefing as a value: its pages in order, each with what the engine says and what the teacher says instead."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from marram.errors import InputError
from marram.said import said

PARTS = ("title", "told", "question", "ruling", "why")
"""The parts of a page that can be put otherwise, in the order in which they are read."""


@dataclass(frozen=True, slots=True)
class Topic:
    """What a briefing is about, so that it can be drawn up again.

    Attributes:
        kind: ``topics``, ``beginners``, ``changes``, ``local_rules`` or ``event``.
        given: what the kind needs: incidents, Rules or provisions; years of editions; codes of Local Rules.
        seed: the seed of its situations.
        count: how many pages are wanted at most.
    """

    kind: str
    given: tuple[str, ...] = ()
    seed: int = 1
    count: int = 20


@dataclass(frozen=True, slots=True)
class Page:
    """One page.

    Attributes:
        incident: what happened; empty for a page of words alone.
        facts: what decides, as tokens.
        form: the form of play, as a token.
        made: what the engine says, by part.
        edited: what the teacher says instead, by part; a part that is missing stands as made.
        was: the ruling that stood here before the engine decided otherwise; empty where it did not.
    """

    incident: str
    facts: Mapping[str, Any]
    form: str
    made: Mapping[str, str]
    edited: Mapping[str, str] = field(default_factory=dict)
    was: str = ""

    @property
    def key(self) -> str:
        """What tells a page from others: what happened and what decides; of words alone, their title."""
        if not self.incident:
            return self.made["title"]
        facts = "&".join(f"{name}={answer}" for name, answer in sorted(self.facts.items()))
        return f"{self.incident}?{self.form}&{facts}"

    def part(self, name: str) -> str:
        """Return a part as it is shown."""
        return self.edited.get(name, self.made[name])

    def put_otherwise(self, parts: Mapping[str, str]) -> "Page":
        """Return the page with parts in the teacher's words; words like those made are no edit.

        Raises:
            InputError: there is no such part, or one is left empty.
        """
        faults = [
            said("A page has no {part}. Its parts: {parts}.", part=name, parts=", ".join(PARTS))
            for name in parts
            if name not in PARTS
        ]
        faults += [
            said("The {part} of the page is empty: write something.", part=name)
            for name, words in parts.items()
            if name in PARTS and not words.strip()
        ]
        if faults:
            raise InputError(*faults)
        edited = {**self.edited, **{name: words.strip() for name, words in parts.items()}}
        kept = {name: words for name, words in edited.items() if words != self.made[name]}
        return replace(self, edited=kept)


WORDS_A_MINUTE = 130
"""How fast somebody speaks to a room (common practice of speakers, who name 120 to 150)."""
MINUTES_TO_ANSWER = 0.5
"""How long a room is given to answer (own choice)."""


@dataclass(frozen=True, slots=True)
class Deck:
    """A briefing.

    Attributes:
        title: its name.
        topic: what it was drawn up from.
        pages: the pages.
        version: counts from 1; every change that is kept has one more.
        left_out: how many rulings of an event could not be made a page.
    """

    title: str
    topic: Topic
    pages: tuple[Page, ...]
    version: int = 1
    left_out: int = 0

    @property
    def minutes(self) -> int:
        """How long it takes to hold, in minutes: every page read aloud, and a while to answer each question."""
        return self.minutes_until(len(self.pages))

    def minutes_until(self, number: int) -> int:
        """How long it takes to hold as far as the end of a page, in minutes.

        Args:
            number: the page, from 1.
        """
        held = self.pages[:number]
        words = sum(len(page.part(name).split()) for page in held for name in PARTS)
        return round(words / WORDS_A_MINUTE + len(held) * MINUTES_TO_ANSWER)

    def with_page(self, number: int, page: Page) -> "Deck":
        """Return the deck with another page at a place, from 1, one version on.

        Raises:
            InputError: there is no such page.
        """
        if not 1 <= number <= len(self.pages):
            raise InputError(
                said(
                    "There is no page {number}: the briefing has {count}.",
                    number=number,
                    count=len(self.pages),
                )
            )
        pages = (*self.pages[: number - 1], page, *self.pages[number:])
        return replace(self, pages=pages, version=self.version + 1)
