"""Which of the relief offered did the player take? One tap each, told in the address of the story."""

from collections.abc import Sequence
from dataclasses import dataclass

from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.story import OPTION_TAKEN, together
from marram.rules.facts.several import Taken, option_taken, taken_as
from marram.rules.result import Result
from marram.rules.ruling import Action, Ruling
from marram.words.language import translate

_MAY_BE_PLAYED = (Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF,)


@dataclass(frozen=True, slots=True)
class Choice:
    """One thing that can be told of an act with one tap.

    Attributes:
        words: what it tells.
        url: the address that tells it.
        told: whether it was told.
        remarkable: whether it is worth saying once told; what holds anyway is not.
        token: the answer as an address gives it.
    """

    words: str
    url: str
    told: bool
    remarkable: bool = True
    token: str = ""


def choices(case: CaseAddress, number: int, results: Sequence[Result]) -> list[Choice]:
    """Return what the player can have done with the relief that stands open after an incident.

    Args:
        case: the case, as a page about one of its incidents or about all holds it.
        number: the incident, from 1.
        results: the rulings whose relief stands open then.
    """
    offered = [one for one in results if isinstance(one, Ruling) and one.relief]
    if not offered:
        return []
    can = dict.fromkeys(taken_as(option) for one in offered for option in one.relief)
    if any(one.action in _MAY_BE_PLAYED for one in offered):
        can[Taken.AS_IT_LIES] = None
    can[Taken.NOTHING_YET] = None
    whole = together(case)
    fact = option_taken[number - 1]
    told = whole.between.get(fact.name)
    return [
        Choice(
            translate()(fact.answers[one]),
            whole.url(
                "/together", between={**whole.between, f"{OPTION_TAKEN}_{number}": one.value}, ask=None
            ),
            told == one.value,
            token=one.value,
        )
        for one in can
    ]
