"""Which questions may be asked: those of which somebody who knows the Rules has read the like, and found it good.

Facts combine to more situations than a test can judge by its words; what reads oddly together, leaves something open or gives
itself away is seen by reading. So a question is drafted by the machine and asked once it was read: ``approved_questions.json`` holds
a mark of each that was found good, and of each that was not; ``approved_acts.json`` the same of the acts that stories about strokes
are put together of. Whoever the player is, and wherever it happens, is no part of the mark; nor are the words, which may be mended.
What the facts lead to is: where the Rules or the wrong answers become other ones, the question waits to be read again.
How it is read: :mod:`marram.teach.quizzes.reading`.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from hashlib import sha256
from importlib.resources import files
from importlib.resources.abc import Traversable

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding_of import finding_of
from marram.rules.ruling import Ruling
from marram.rules.story.story import Happened
from marram.teach.quizzes.drafting import Question, told_in


class Kept(StrEnum):
    """What is read before it is asked; each is kept in a file of its own."""

    QUESTIONS = "approved_questions"
    ACTS = "approved_acts"

    @property
    def file(self) -> Traversable:
        """Where it is kept."""
        return files("marram.teach.quizzes") / f"{self.value}.json"


LENGTH = 10
"""Hexadecimal digits of a mark: among 20,000 questions of one book, two of the same mark are met once in 5,000 books."""
Marks = Mapping[str, frozenset[str]]
"""Marks of questions by the incident that they are about."""


@dataclass(frozen=True, slots=True)
class Read:
    """What was read.

    Attributes:
        approved: what was found good.
        refused: what was not: it waits for better words or other answers.
    """

    approved: Marks
    refused: Marks

    def text(self, kind: Kept) -> str:
        """Return the file that keeps it: a line for each incident, marks in order, so that two readers' files can be merged."""
        kept = {
            part: {name: " ".join(sorted(marks)) for name, marks in sorted(found.items()) if marks}
            for part, found in (("approved", self.approved), ("refused", self.refused))
        }
        return json.dumps({"marram": 1, "kind": kind.value, **kept}, indent=1) + "\n"


def is_approved(one: Question) -> bool:
    """Whether a question of these facts with these answers was read and found good."""
    return mark_of(one) in read_so_far(Kept.QUESTIONS).approved.get(one.situation.incident, frozenset())


def is_approved_act(one: Happened, ruling: Ruling) -> bool:
    """Whether an act of a story, with what was done then, was read and found good."""
    return mark_of_act(one, ruling) in read_so_far(Kept.ACTS).approved.get(one.incident, frozenset())


def mark_of(one: Question) -> str:
    """Return what tells a question from others: the facts, the right ruling and the wrong ones; the same for every player."""
    name, form, facts = told_in(one.situation)
    wrong = sorted(_comes_to(each.near.ruling, each.near.form.value) for each in one.answers if each.near)
    return _mark([name, form.value, sorted(facts), _comes_to(one.situation.ruling, form.value), wrong])


def mark_of_act(one: Happened, ruling: Ruling) -> str:
    """Return what tells an act from others: its facts, what was done then and what it comes to; not how many strokes followed."""
    facts = sorted((name, str(answer)) for name, answer in one.facts.items())
    return _mark([one.incident, one.option, facts, _comes_to(ruling, FormOfPlay.STROKE_PLAY.value)])


def _mark(held: list[object]) -> str:
    return sha256(json.dumps(held).encode()).hexdigest()[:LENGTH]


@cache
def read_so_far(kind: Kept) -> Read:
    """Return what was read, as the package keeps it."""
    return read_from(kind.file.read_text(encoding="utf-8"))


def read_from(text: str) -> Read:
    """Return what a file of :meth:`Read.text` holds."""
    kept = json.loads(text)
    approved, refused = (
        {name: frozenset(marks.split()) for name, marks in kept[part].items()}
        for part in ("approved", "refused")
    )
    return Read(approved, refused)


def _comes_to(ruling: Ruling, form: str) -> str:
    """Return what a ruling comes to, as an answer says it, in tokens: no provision, no word of a language."""
    finding = finding_of(ruling)
    parts = (
        form,
        *sorted(f"{each.kind.value} {each.who.value} {each.strokes}" for each in ruling.penalties),
        ruling.action.value if ruling.action else "",
        *sorted(f"{each.kind.value} {each.penalty}" for each in ruling.relief),
        *(each.what for each in ruling.corrections),
        finding.value if finding else "",
    )
    return "; ".join(parts)
