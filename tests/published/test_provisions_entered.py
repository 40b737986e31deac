"""Every provision of the book is entered by some published case."""

import sys
from collections.abc import Iterator, Mapping
from datetime import date
from types import CodeType, FrameType
from typing import Any

from marram.rules.engine.case import Branch, Case
from marram.rules.engine.fact import Fact
from marram.rules.engine.provision import PROVISIONS
from marram.rules.engine.request import book, conditions_of, read_facts
from marram.rules.engine.tree import Node
from marram.rules.incidents import INCIDENTS, incident
from tests.published.cases import DAYS, all_cases
from tests.published.shared import translated_parts

Asked = tuple[str, Mapping[str, Any], date, str | None, frozenset[str]]


def every_request() -> Iterator[Asked]:
    """Yield what is asked of the Rules for every published case: incident, facts, day, form, Local Rules."""
    for case in all_cases():
        codes = frozenset(case.raw.get("local_rules", []))
        yield case.raw["incident"], case.raw["facts"], case.day, case.form, codes
    for part, edition, form, codes in translated_parts():
        yield part["incident"], part["facts"], DAYS[edition], form, frozenset(codes)


def path_of(asked: Asked) -> list[tuple[Fact[Any], Branch]]:
    """Return the branches that lead to the outcome; a question that is open has been found not to matter."""
    name, facts, day, form, codes = asked
    known = read_facts(facts) | dict(conditions_of(name, day, form, codes))
    taken: list[tuple[Fact[Any], Branch]] = []
    node = book(name).root
    while isinstance(node, Node):
        answer = known.get(node.fact)
        followed = 0
        if answer is not None:
            followed = node.by_answer[answer] if node.bound is None else int(answer > node.bound)
        taken.append((node.fact, node.branches[followed]))
        node = node.child(followed)
    return taken


def code_entered(requests: Iterator[Asked]) -> set[CodeType]:
    """Return the code of every function that ran while the outcomes of these requests were worked out."""
    entered: set[CodeType] = set()
    walked = [(incident(asked[0]).provision(), path_of(asked)) for asked in requests]

    def note(frame: FrameType, event: str, _: object) -> None:
        if event == "call":
            entered.add(frame.f_code)

    before = sys.getprofile()
    sys.setprofile(note)
    try:
        for entry, path in walked:
            entry(Case(path))
    finally:
        sys.setprofile(before)
    return entered


def test_every_provision_is_entered_by_a_published_case() -> None:
    """No provision stands in the book whose outcome nobody compared with a published text."""
    for one in INCIDENTS:
        book(one.name)
    entered = {(code.co_filename, code.co_name) for code in code_entered(every_request())}
    left = [
        f"{one.citation}: {one.module}.{one.function}"
        for one in PROVISIONS
        if one.module.startswith("marram.")
        and (sys.modules[one.module].__file__, one.function) not in entered
    ]

    assert not left, left
