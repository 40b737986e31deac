"""How an incident enters the book where players compete as sides: what it costs, then who bears it."""

from collections.abc import Callable
from functools import partial
from importlib import import_module
from typing import Any

from marram.rules.engine.case import Case
from marram.rules.facts.conditions import EACH_PLAYS_OWN_BALL, Sides
from marram.rules.incidents.incident import Incident
from marram.rules.ruling import Outcome

BY_RULE_23 = {
    "played_out_of_turn": "book.rule_23_four_ball:out_of_turn_in_four_ball",
    "whose_turn": "book.rule_23_four_ball:whose_turn_in_four_ball",
    "did_not_hole_out": "book.rule_23_four_ball:four_ball_hole",
    "hole_completed": "book.rule_23_four_ball:four_ball_hole_completed",
}
BY_RULE_22 = {"started_off_time": "book.rule_22_foursomes:foursomes_start"}
BY_RULE_21 = {"played_out_of_turn": "book.rule_21_other_forms:three_ball_out_of_turn"}


def entry_among_sides(found: Incident, who: Sides) -> Callable[[Case], Outcome]:
    """Return the provision by which an incident enters the book, with what follows for the sides."""
    instead = {**dict.fromkeys(EACH_PLAYS_OWN_BALL, BY_RULE_23), Sides.FOURSOMES: BY_RULE_22}
    entry = instead.get(who, BY_RULE_21).get(found.name)
    own = found.provision() if entry is None else _function(entry)
    return partial(_ruled, own, _function("book.who_bears:borne"), who)


def _ruled(
    own: Callable[[Case], Outcome],
    borne: Callable[[Case, Outcome, Sides], Outcome],
    who: Sides,
    case: Case,
) -> Outcome:
    return borne(case, own(case), who)


def _function(path: str) -> Callable[..., Any]:
    module, function = path.split(":")
    found: Callable[..., Any] = getattr(import_module(f"marram.rules.{module}"), function)
    return found
