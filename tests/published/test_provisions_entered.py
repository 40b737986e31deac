"""Every provision of the book is entered by some published case, and every incident has one of its own."""

import sys
from collections.abc import Iterator, Mapping
from datetime import date
from types import CodeType, FrameType
from typing import Any

from marram.rules.engine.case import Branch, Case
from marram.rules.engine.fact import Fact
from marram.rules.engine.provision import PROVISIONS
from marram.rules.engine.request import book, book_among, conditions_of, past_open, read_facts
from marram.rules.engine.tree import Entry, Node
from marram.rules.facts.conditions import Sides, sides
from marram.rules.incidents import INCIDENTS, incident
from marram.rules.incidents.among_sides import entry_among_sides
from marram.rules.result import NeedFacts
from tests.published.cases import DAYS, all_cases
from tests.published.shared import translated_parts

Asked = tuple[str, Mapping[str, Any], date, str | None, frozenset[str]]


def every_request() -> Iterator[Asked]:
    """Yield what is asked of the Rules for every published case: incident, facts, day, form, Local Rules."""
    for case in all_cases():
        codes = frozenset(case.raw.get("local_rules", []))
        among = {"sides": case.raw["sides"]} if "sides" in case.raw else {}
        yield case.raw["incident"], {**among, **case.raw["facts"]}, case.day, case.form, codes
    for part, edition, form, codes in translated_parts():
        yield part["incident"], part["facts"], DAYS[edition], form, frozenset(codes)


def path_of(asked: Asked) -> list[tuple[Fact[Any], Branch]] | None:
    """Return the branches that lead to the outcome; ``None`` where a fact is open that can change it.

    An open fact that cannot change the outcome is passed by its first branch, as the desk passes it.
    """
    name, facts, day, form, codes = asked
    known = read_facts(facts) | dict(conditions_of(name, day, form, codes))
    taken: list[tuple[Fact[Any], Branch]] = []
    who = who_plays_together(known)
    pages = book_among(name, who) if who else book(name)
    node = pages.root
    while isinstance(node, Node):
        answer = known.get(node.fact)
        followed = 0
        if answer is not None:
            followed = node.by_answer[answer] if node.bound is None else int(answer > node.bound)
        elif isinstance(past_open(pages, node, known), NeedFacts):
            return None
        taken.append((node.fact, node.branches[followed]))
        node = node.child(followed)
    return taken


def who_plays_together(known: Mapping[Fact[Any], Any]) -> Sides | None:
    """Return the sides, where players compete as such."""
    told = known.get(sides)
    return None if told is Sides.INDIVIDUAL else told


def entry_of(asked: Asked) -> Entry:
    """Return the provision by which a request enters the book."""
    who = who_plays_together(read_facts(asked[1]))
    found = incident(asked[0])
    return entry_among_sides(found, who) if who else found.provision()


def code_entered(requests: Iterator[Asked]) -> set[CodeType]:
    """Return the code of every function that ran while the outcomes of these requests were worked out."""
    entered: set[CodeType] = set()
    walked = [(entry_of(asked), path) for asked in requests for path in [path_of(asked)] if path is not None]

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


def test_every_incident_has_a_published_case_of_its_own() -> None:
    """Whatever can be asked about was compared with a published text to the end, in a case written for it."""
    compared = {case.raw["incident"] for case in all_cases() if "needs" not in case.raw["expect"]}

    assert not [one.name for one in INCIDENTS if one.name not in compared]


def test_a_question_left_open_enters_nothing() -> None:
    """A case that ends in a question says nothing of what lies behind it; one whose open facts are idle does."""
    day, form, none = DAYS["2023"], "stroke_play", frozenset[str]()
    enough = {"cause_known": "yes", "area_of_ball": "putting_green", "movement_accidental": "yes"}

    assert path_of(("ball_moved_by_player", {"cause_known": "yes"}, day, form, none)) is None
    assert path_of(("ball_moved_by_player", enough, day, form, none))
