"""What acts of one story cannot both be true: refused with what to tell instead, all of it at once."""

from collections.abc import Mapping, Sequence
from typing import Any

from marram.errors import BadAnswer, InputError
from marram.rules.engine.fact import Fact
from marram.rules.facts.conditions import LOCAL_RULES, form_of_play, sides
from marram.rules.facts.several import Taken, option_taken
from marram.rules.ruling import Action, Stroke
from marram.rules.story.breaches import Told
from marram.rules.story.deeds import Deed
from marram.said import said

_OF_THE_COMPETITION: tuple[Fact[Any], ...] = (form_of_play, sides, *LOCAL_RULES.values())
"""What holds for every act of a story alike."""
_PLAYED_WITHOUT_A_BALL = frozenset(
    {
        "ball_hit_flagstick",
        "deflected_off_green",
        "hole_completed",
        "hit_power_line",
        "hit_temporary_line",
        "putt_hit_something",
        "unplayable_ball",
    }
)
"""Incidents that cannot be while the ball is lost or out of bounds and no other is in play."""


def told_apart(every: Sequence[tuple[str, Mapping[str, Any]]], form: Any, who: Any) -> list[str]:
    """Return the faults of acts that tell different conditions of one competition.

    Args:
        every: of each act the name of its incident and its facts.
        form: the form of play, as said of the whole story.
        who: who plays together, likewise.
    """
    faults: list[str] = []
    for fact in _OF_THE_COMPETITION:
        told: dict[Any, int] = {}
        answers = [{form_of_play: form, sides: who}.get(fact), *(facts.get(fact.name) for _, facts in every)]
        for place, answer in enumerate(answers):
            try:
                if answer is not None:
                    told.setdefault(fact.parse(answer), place)
            except BadAnswer:
                continue  # refused with the act itself
        if len(told) > 1:
            (one, here), (other, there) = list(told.items())[:2]
            faults.append(
                said(
                    "{fact} is {one} for {here}, but {other} for {there}; one story has one: give it once.",
                    fact=fact.name,
                    one=fact.token(one),
                    here=_where(every, here),
                    other=fact.token(other),
                    there=_where(every, there),
                )
            )
    return faults


def _where(every: Sequence[tuple[str, Mapping[str, Any]]], place: int) -> str:
    """Return what told something: the story itself (0), or one of its acts by its number."""
    if place == 0:
        return said("the story")
    return said("incident {number} ({name})", number=place, name=every[place - 1][0])


def check_acts(deeds: Sequence[Deed], told: Told, strokes: Sequence[int | None]) -> None:
    """Refuse acts that cannot have followed one another as they are told.

    Args:
        deeds: the acts of the player, in order.
        told: what is known between them.
        strokes: for each act the strokes made in it and until the next, where they were told.

    Raises:
        InputError: there are such; all are listed.
    """
    faults: list[str] = []
    for place, deed in enumerate(deeds):
        number = place + 1
        if deed.ruling.stroke is Stroke.COUNTS and strokes[place] == 0:
            faults.append(
                said(
                    "Incident {number} ({name}) is a stroke that counts, but strokes is 0; give 1 or more, or leave "
                    "it out.",
                    number=number,
                    name=deed.incident,
                )
            )
        following = deeds[number] if number < len(deeds) else None
        gone = deed.ruling.action is Action.TAKE_RELIEF and "18.2b" in deed.ruling.citations
        nothing_yet = told.get(option_taken[place]) is Taken.NOTHING_YET
        if gone and nothing_yet and following and following.incident in _PLAYED_WITHOUT_A_BALL:
            faults.append(
                said(
                    "{fact}: after incident {number} no ball had been put into play yet, but incident {next} ({name}) "
                    "is about a ball in play; say which relief was taken, or leave it out.",
                    fact=option_taken[place].name,
                    number=number,
                    next=number + 1,
                    name=following.incident,
                )
            )
    if faults:
        raise InputError(*faults)
