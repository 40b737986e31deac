"""Which answers no provision of a file names: they take the other way there, as a new answer would without a word.

A provision reads a choice by naming some of its answers; the others fall through to what it ends in otherwise. That
is how the Rules are written, and where an answer added for one incident changes another unseen. What is found here is
pinned (`make pin`), so that such an answer is told for every file that reads its fact.

A file names an answer when its code holds it, or a constant that holds it, for whatever fact: no answer that is named
is ever told, but one named beside another fact of the same answers may be overlooked.
"""

import ast
import sys
from collections.abc import Iterator, Mapping
from enum import Enum
from inspect import getsource, isclass
from types import ModuleType
from typing import Any

from marram.rules.engine.fact import Fact
from marram.rules.incidents import INCIDENTS

BOOK = "marram.rules.book."


def unnamed_answers() -> dict[tuple[str, str], tuple[str, ...]]:
    """Return, by file of the book and fact, the answers that the file reads without naming them."""
    for one in INCIDENTS:
        one.provision()  # loads the Rules it needs
    found: dict[tuple[str, str], tuple[str, ...]] = {}
    for name, module in sys.modules.items():
        if name.startswith(BOOK):
            file = name.removeprefix(BOOK)
            for fact, answers in unnamed_in(getsource(module), vars(module)).items():
                found[file, fact.name] = answers
    return dict(sorted(found.items()))


def unnamed_in(source: str, names: Mapping[str, Any]) -> dict[Fact[Any], tuple[str, ...]]:
    """Return, by fact, the answers that code reads without naming them; ``names`` are those of its module."""
    held = list(_held(source, names))
    named = {answer for value in held for answer in _answers(value)}
    found = {}
    for fact in {value for value in held if _is_choice(value)}:
        unnamed = tuple(fact.token(answer) for answer in fact.answers if answer not in named)
        if unnamed:
            found[fact] = unnamed
    return found


def otherwise_text() -> str:
    """Return the same as lines: file, fact, and the answers that take the other way there."""
    rows = [
        "# file of the book, fact: the answers that no provision there names, which take its other way.",
        "# A new line or answer: name it where the Rules treat it apart, else give it a case, and run `make pin`.",
    ]
    rows += [f"{file} {fact}: {' '.join(answers)}" for (file, fact), answers in unnamed_answers().items()]
    return "\n".join(rows) + "\n"


def _held(source: str, names: Mapping[str, Any]) -> Iterator[Any]:
    """Yield what the names and attributes of some code stand for."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Name):
            yield names.get(node.id)
        elif isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
            owner = names.get(node.value.id)
            if isinstance(owner, ModuleType) or (isclass(owner) and issubclass(owner, Enum)):
                yield getattr(owner, node.attr, None)


def _answers(value: Any) -> Iterator[Enum]:
    """Yield the answers that a value is, or holds."""
    if isinstance(value, Enum):
        yield value
    elif isinstance(value, dict):
        yield from _answers([*value.keys(), *value.values()])
    elif isinstance(value, tuple | list | set | frozenset):
        for one in value:
            yield from _answers(one)


def _is_choice(value: Any) -> bool:
    return isinstance(value, Fact) and any(isinstance(answer, Enum) for answer in value.answers)
