"""Every message that reaches a person through the catalogue, for whoever translates marram.

The sentences of the catalogue stand in ``words/english``; what the vocabulary, the incidents, the register of Model
Local Rules and the commands say stands beside what it speaks of, and is put into the reader's language where it is
shown.
"""

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import NamedTuple

import marram
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import LOCAL_RULE_TITLES
from marram.rules.incidents import INCIDENTS
from marram.rules.local_rules.local_rule import Basis
from marram.rules.local_rules.register import REGISTER
from marram.words import texts
from marram.words.english import catalogue
from marram.words.english import texts as english_texts
from marram.words.english.cases import CASES
from marram.words.english.told import told_sentences
from marram.words.english.told.openings import OPENINGS

__all__ = ["Message", "messages"]


class Message(NamedTuple):
    """A sentence to be translated; of one that depends on a number also how it is said of several."""

    sentence: str
    several: str = ""


@cache
def messages() -> tuple[Message, ...]:
    """Return every message once, in a lasting order."""
    found = (
        *_catalogue(),
        *_texts(),
        *_told(),
        *_said_below(),
        *_vocabulary(),
        *_incidents(),
        *_register(),
        *_commands(),
    )
    return tuple(dict.fromkeys(one for one in found if one.sentence))


def _catalogue() -> Iterator[Message]:
    for kind in ("PROVISIONS", "NOTES", "TERMS"):
        yield from map(Message, catalogue(kind).values())


def _texts() -> Iterator[Message]:
    for path in sorted(Path(english_texts.__path__[0]).glob("[a-z]*.py")):
        known = texts.english(path.stem)
        for name, sentence in known.items():
            if not name.endswith(texts.COUNTED):
                yield Message(sentence)
            elif name.endswith(texts.ONE):
                yield Message(sentence, known[name.removesuffix(texts.ONE) + texts.SEVERAL])


def _told() -> Iterator[Message]:
    """Yield how facts and incidents are told."""
    yield from map(Message, (*told_sentences().values(), *OPENINGS.values(), *filter(None, CASES.values())))


def _said_below() -> Iterator[Message]:
    """Yield the sentences of the layers that may not know the catalogue, as they stand in the source."""
    for path in sorted(Path(marram.__path__[0]).rglob("*.py")):
        source = path.read_text(encoding="utf-8")
        for node in ast.walk(ast.parse(source)) if "said(" in source or "counted(" in source else ():
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") in {"said", "counted"}:
                given = [str(one.value) for one in node.args if isinstance(one, ast.Constant)]
                yield from [Message(*given[:2])] if given else []


def _vocabulary() -> Iterator[Message]:
    for fact in vocabulary().values():
        yield from map(Message, (fact.question, fact.help, *fact.answers.values()))
    yield from map(Message, LOCAL_RULE_TITLES.values())


def _incidents() -> Iterator[Message]:
    for one in INCIDENTS:
        yield Message(one.title)
        yield Message(one.theme)


def _register() -> Iterator[Message]:
    for one in REGISTER.values():
        yield from map(Message, (one.title, one.discouraged, one.why_not_with, one.reason, one.remark))
        yield from map(Message, (*one.definitions, one.subject))
    yield from (Message(one.value) for one in Basis)


def _commands() -> Iterator[Message]:
    from typer.main import get_command  # noqa: PLC0415 - the command line is loaded for its help alone

    from marram.cli.app import application  # noqa: PLC0415 - the same
    from marram.cli.help import flat  # noqa: PLC0415 - the same

    waiting = [get_command(application())]
    while waiting:
        command = waiting.pop()
        yield Message(flat(command.help or ""))
        yield from (Message(said) for one in command.params if (said := getattr(one, "help", None)))
        waiting += getattr(command, "commands", {}).values()
