"""An answer depends on what is asked, never on what was asked before."""

import json
import os
import random
import subprocess
import sys
from datetime import UTC, date, datetime
from enum import Enum, IntEnum
from typing import Any

import pytest

import marram
from marram.errors import BadAnswer, InputError
from marram.rules.engine import request
from marram.rules.engine.conditions import conditions
from marram.rules.engine.fact import FACTS
from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import INCIDENTS

DAY = date(2024, 5, 1)


class One(IntEnum):
    """Equal to 1 and to True, and neither."""

    ONE = 1


class Word(str, Enum):  # noqa: UP042 - the older way to write it has another hash
    """A text that is a member too."""

    YES = "yes"


class Shouted(str):
    """A text that takes itself for another."""

    __slots__ = ()


LOOKALIKES: list[Any] = [
    True, 1, 1.0, One.ONE, "1", "yes", "Yes", Word.YES, Shouted("yes"), "true", Area.BUNKER, "bunker", "Bunker",
    False, 0, 0.0, -0.0, "0", "no", "No", None, (), b"yes", 3, 3.0, "3", "three", float("nan"), 10**400,
]  # fmt: skip
"""Answers many of which are one key of a dictionary, and are to be taken, or refused, each for itself."""

Call = tuple[str, dict[str, Any], Any, Any, Any]


def calls() -> list[Call]:
    """Return many calls: each lookalike for facts of each kind, and conditions in every guise, shuffled."""
    facts = ["cause_known", "area_of_ball", "serious_breach", "strokes_made_incorrectly", "date_of_play"]
    found: list[Call] = [
        ("ball_moved_by_player", {name: given}, DAY, "stroke_play", ())
        for name in facts
        for given in LOOKALIKES
    ]
    found += [("ball_moved_by_player", {}, DAY, form, ()) for form in [*FormOfPlay, *LOOKALIKES]]
    found += [
        ("ball_moved_by_player", {}, day, None, codes)
        for day in (
            DAY,
            datetime(2024, 5, 1, 8, tzinfo=UTC),
            "2024-05-01",
            20240501,
            True,
            date(2018, 1, 1),
            date(2019, 1, 1),
        )
        for codes in (
            None,
            (),
            ("E-5",),
            ["e-5"],
            "E-5",
            ("E-8",),
            ("G-10",),
            (1,),
            (True,),
            1,
            ([],),
            ("E5",),
        )
    ]
    found += [
        (name, {}, DAY, "stroke_play", None)
        for name in ("ball_moved", True, 1, None, [], "BALL_MOVED_BY_PLAYER")
    ]
    found += [
        (one.name, {}, DAY, form, ())
        for one in INCIDENTS[::20]
        for form in ("stroke_play", FormOfPlay.MATCH_PLAY)
    ]
    random.Random(20).shuffle(found)
    return found


def answer(call: Call) -> str:
    """Return what a call is answered with, as text: the result, or the faults."""
    incident, facts, day, form, codes = call
    try:
        return repr(marram.rule(incident, facts, played_on=day, form_of_play=form, local_rules=codes))
    except InputError as error:
        return f"{type(error).__name__}: {error}"


def asked_alone() -> None:
    """Write what each fourth call is answered with where nothing was asked before: a process for each."""
    for number, call in enumerate(calls()):
        if number % 4 == 0:
            sys.stdout.flush()
            child = os.fork()
            if child == 0:
                sys.stdout.write(json.dumps([number, answer(call)]) + "\n")
                sys.stdout.flush()
                os._exit(0)
            os.waitpid(child, 0)


@pytest.mark.skipif(not hasattr(os, "fork"), reason="asks each question in a process of its own")
def test_an_answer_is_the_same_after_a_thousand_others() -> None:
    """Whatever was asked before, in whatever order, each call gets the answer it gets alone."""
    every = calls()
    before = [answer(call) for call in reversed(every)]
    for call in every + every:
        answer(call)
    after = [answer(call) for call in every]
    code = "from tests.rules.engine.test_answers_alone import asked_alone; asked_alone()"
    alone = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout

    found = dict(json.loads(line) for line in alone.splitlines())
    assert len(found) > len(every) / 5
    assert len(every) * 4 > 1000
    assert {number: after[number] for number in found} == found
    assert list(reversed(before)) == after


@pytest.mark.parametrize("given", [1, 1.0, One.ONE, (), None])
def test_only_true_is_true(given: Any) -> None:
    """What merely equals an accepted answer is refused, also once that answer was taken."""
    for accepted in (True, "yes"):
        marram.rule("ball_moved_by_player", {"cause_known": accepted}, played_on=DAY)
        with pytest.raises(BadAnswer, match="cause_known"):
            marram.rule("ball_moved_by_player", {"cause_known": given}, played_on=DAY)


def test_true_is_yes_where_there_is_more_to_say_than_yes_and_no() -> None:
    """A graded fact that can be answered with yes takes true for it, and says what it allows otherwise."""
    graded = FACTS["serious_breach"]

    assert graded.parse(True) is graded.parse("yes")
    assert graded.parse(False) is graded.parse("no")
    with pytest.raises(BadAnswer, match=r"area_of_ball: True is not an answer\. It allows"):
        FACTS["area_of_ball"].parse(True)


def kept() -> list[int]:
    """Return how much each store of the engine holds."""
    return [
        len(request._ACCEPTED),
        len(request._BOOKS),
        sum(len(pages.graph.nodes) for pages in request._BOOKS.values()),
    ]


def test_what_is_kept_does_not_grow_with_what_is_asked() -> None:
    """Odd spellings, days and other facts leave nothing behind beyond a bound."""
    letters = "putting_green"
    held = []
    for number in range(60):
        spelled = "".join(one.upper() if number >> place & 1 else one for place, one in enumerate(letters))
        day = date.fromordinal(DAY.toordinal() + number)
        marram.rule("ball_moved_by_player", {"area_of_ball": spelled}, played_on=day)
        held.append(kept())
    for number in range(600):
        conditions(date.fromordinal(DAY.toordinal() + number), None, None)

    assert held[-1] == held[1]
    assert conditions.cache_info().currsize <= conditions.cache_info().maxsize
