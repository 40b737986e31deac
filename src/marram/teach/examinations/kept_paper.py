"""The papers of an examination as they are kept: words and key as they were drawn, so that no later program marks otherwise."""

import json
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from marram.teach.book.permanent import address_of
from marram.teach.examinations.item import Item
from marram.teach.examinations.paper import Examination
from marram.teach.examinations.report import Sitting, judged
from marram.teach.quizzes.told import why_not

VERSION = 1
"""Of what :func:`written` makes."""


@dataclass(frozen=True, slots=True)
class KeptItem:
    """An item as it was put before candidates.

    Attributes:
        ident: the item.
        rule: the Rule it stands for; 0 for the Model Local Rules.
        level: its difficulty, 1 to 3.
        told: the situation.
        answers: the answers in words.
        whys: for each, when it would be right.
        right: the place of the right one, from 0.
        citations: the provisions it rests on.
        situation: the address of the situation in the book.
    """

    ident: str
    rule: int
    level: int
    told: str
    answers: tuple[str, ...]
    whys: tuple[str, ...]
    right: int
    citations: tuple[str, ...]
    situation: str


@dataclass(frozen=True, slots=True)
class KeptPapers:
    """The papers: seed and level they were drawn by, whether the book may be used, and the items of each form by letter."""

    seed: int
    level: int
    open_book: bool
    forms: Mapping[str, tuple[KeptItem, ...]]


def written(exam: Examination, course: str) -> str:
    """Return papers as JSON, told on a course."""
    document = {
        "marram": VERSION,
        "kind": "examination_papers",
        "seed": exam.seed,
        "level": exam.level,
        "open_book": exam.open_book,
        "forms": {form.letter: [_item(one, course) for one in form.items] for form in exam.forms},
    }
    return json.dumps(document, ensure_ascii=False)


def read_papers(given: str) -> KeptPapers:
    """Return papers from what :func:`written` made of them."""
    found = json.loads(given)
    forms = {letter: tuple(_read(one) for one in items) for letter, items in found["forms"].items()}
    return KeptPapers(found["seed"], found["level"], found["open_book"], forms)


@lru_cache(maxsize=16)
def with_the_book(given: str) -> bool:
    """Return whether the book may be used with papers that :func:`written` made."""
    return read_papers(given).open_book


def sat(
    items: Sequence[KeptItem], answers: Mapping[str, Mapping[int, int]], retired: Collection[str]
) -> Sitting | None:
    """Return what came of a form; ``None`` where nobody answered anything.

    Args:
        items: the form.
        answers: by candidate, the place chosen for each item, which is counted from 1.
        retired: items that do not count.
    """
    if not answers:
        return None
    rows = {
        name: [chosen.get(number) for number in range(1, len(items) + 1)] for name, chosen in answers.items()
    }
    out = {at for at, one in enumerate(items) if one.ident in retired}
    return judged([one.right for one in items], [len(one.answers) for one in items], rows, out)


def to_look_at(items: Sequence[KeptItem], chosen: Mapping[int, int], retired: Collection[str]) -> list[int]:
    """Return the Rules in which an item was not answered rightly, those with most first; 0 for the Model Local Rules."""
    wrong = [
        one.rule
        for number, one in enumerate(items, start=1)
        if one.ident not in retired and chosen.get(number) != one.right
    ]
    return sorted(set(wrong), key=lambda rule: (-wrong.count(rule), rule or 99))


def _item(one: Item, course: str) -> dict[str, Any]:
    asked = one.question
    return {
        "item": one.ident,
        "rule": one.rule,
        "level": one.level,
        "told": " ".join(asked.situation.told(course)),
        "answers": [each.words for each in asked.answers],
        "whys": [why_not(asked, each) for each in asked.answers],
        "right": asked.right,
        "citations": list(asked.situation.ruling.citations),
        "situation": address_of(asked.situation),
    }


def _read(one: Mapping[str, Any]) -> KeptItem:
    return KeptItem(
        one["item"],
        one["rule"],
        one["level"],
        one["told"],
        tuple(one["answers"]),
        tuple(one["whys"]),
        one["right"],
        tuple(one["citations"]),
        one["situation"],
    )
