"""From the address of a page to the case it holds, and from a case to the address of a page about one of its acts."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any, Literal, TypeVar

from marram.errors import UnknownIncident
from marram.relief.place.player import USUAL_CLUB_LENGTH
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import LOCAL_RULES, form_of_play, sides
from marram.rules.facts.several import about_ball, option_taken
from marram.rules.local_rules.adoption import adopt
from marram.said import said
from marram.services.cases.address import Address, Kept
from marram.services.cases.case import Act, Case, CasePlayer, MadeWith, Spot
from marram.services.cases.conditions import Conditions
from marram.services.cases.places import ROLES, Degrees, Places
from marram.services.cases.rulings import Asked

SHARED = frozenset({form_of_play.name, sides.name, *(fact.name for fact in LOCAL_RULES.values())})
"""Answers about the competition: they hold for every incident of a story."""

A = TypeVar("A", bound=Address)


def case_at(address: Address, made_with: MadeWith | None = None) -> Case:
    """Return the case that an address holds: every incident that was chosen, in order."""
    shared = {name: answer for name, answer in address.facts.items() if name in SHARED}
    every = {
        number: _act(one.what, one.places, {**shared, **one.facts}, one.condition)
        for number, one in address.kept.items()
    }
    if address.what:
        own = address.own()
        every[address.number] = _act(own.what, own.places, own.facts, own.condition)
    between = dict(address.between)
    acts = []
    for number, act in sorted(every.items()):
        option = between.pop(option_taken[number - 1].name, None)
        ball = between.pop(about_ball[number - 1].name, None)
        strokes = address.strokes.get(number)
        by: Literal["another_player"] | None = "another_player" if number in address.by_another else None
        acts.append(Act(act.incident, act.facts, act.places, act.condition, option, ball, strokes, by))
    conditions = address.conditions
    return Case(
        conditions.on,
        tuple(acts),
        conditions.form,
        conditions.sides,
        conditions.local,
        address.hole,
        _player(conditions),
        between,
        address.strokes_before,
        made_with,
        _flag(address.flag),
    )


def case_asked(asked: Asked, made_with: MadeWith | None = None) -> Case:
    """Return the case of one incident that was asked about.

    Raises:
        UnknownIncident: nobody said what happened.
    """
    if asked.what is None:
        raise UnknownIncident(said("Nobody said what happened."))
    conditions = asked.conditions
    return Case(
        conditions.on,
        (_act(asked.what, asked.places, asked.facts, asked.condition),),
        conditions.form,
        conditions.sides,
        conditions.local,
        asked.hole,
        _player(conditions),
        made_with=made_with,
        flag=_flag(asked.flag),
    )


def address_of(kind: type[A], case: Case, number: int = 1) -> A:
    """Return the address of a page about one act of a case.

    Args:
        kind: the kind of address to return.
        case: the case.
        number: the act the page is about, from 1; one more than there are acts: about all of them.
    """
    kept = {
        place: Kept(act.incident, _places(act), dict(act.facts), act.condition)
        for place, act in enumerate(case.incidents, start=1)
    }
    own = kept.pop(number, Kept(""))
    if own.what:
        kept = {place: _without_shared(one) for place, one in kept.items()}
    of_acts = {
        fact.name: answer
        for place, act in enumerate(case.incidents)
        for fact, answer in ((option_taken[place], act.option), (about_ball[place], act.ball))
        if answer is not None
    }
    local = None if case.local_rules is None else adopt(case.local_rules, case.played_on).codes
    length = case.player.club_length
    return kind(
        Conditions(
            case.played_on,
            case.form_of_play,
            case.sides,
            local,
            case.player.handed,
            USUAL_CLUB_LENGTH if length is None else length,
        ),
        case.hole,
        dict(own.places.at),
        own.what or None,
        own.facts,
        condition=own.condition,
        accuracy=dict(own.places.accuracy),
        number=number,
        kept=kept,
        between={**case.between, **of_acts},
        strokes_before=case.strokes_before,
        strokes={
            place: act.strokes for place, act in enumerate(case.incidents, start=1) if act.strokes is not None
        },
        by_another=frozenset(
            place for place, act in enumerate(case.incidents, start=1) if act.by is not None
        ),
        flag=(case.flag.latitude, case.flag.longitude) if case.flag else None,
    )


def _without_shared(one: Kept) -> Kept:
    facts = {name: answer for name, answer in one.facts.items() if name not in SHARED}
    return replace(one, facts=facts)


def _act(what: str, places: Places, facts: Mapping[str, Any], condition: str | None) -> Act:
    tokens = {name: fact_named(name).token(fact_named(name).parse(answer)) for name, answer in facts.items()}
    spots = {role: Spot(at[0], at[1], places.accuracy.get(role)) for role, at in places.at.items()}
    return Act(what, tokens, spots, condition)


def _places(act: Act) -> Places:
    spots = {role: act.places[role] for role in ROLES if role in act.places}
    return Places(
        {role: (spot.latitude, spot.longitude) for role, spot in spots.items()},
        {role: spot.accuracy for role, spot in spots.items() if spot.accuracy is not None},
    )


def _flag(at: Degrees | None) -> Spot | None:
    return None if at is None else Spot(*at)


def _player(conditions: Conditions) -> CasePlayer:
    handed = conditions.handed
    return CasePlayer("right" if handed == "right" else "left" if handed else None, conditions.club)
