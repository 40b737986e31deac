"""What is told beside a scorecard that was returned: what happened before, with no ball left to play."""

from collections.abc import Sequence
from dataclasses import replace

from marram.rules.facts.several import Taken, option_taken, taken_as
from marram.rules.penalty import strokes
from marram.rules.ruling import Ruling
from marram.rules.story.breaches import Told
from marram.rules.story.deeds import NOTHING_DONE, Deed
from marram.rules.story.relief_taken import cost_still_to_come
from marram.rules.story.standing import leaves_mistake

_OF_A_RETURNED_CARD = frozenset(
    {"card_handicap_wrong", "found_after_result", "hole_score_wrong", "scorecard_fault", "side_card"}
)
"""Incidents that can only happen once the scorecard was returned, or the result is final."""


def card_is_in(deeds: Sequence[Deed]) -> bool:
    """Whether an act tells that the scorecard was returned, so that nothing is left to play (Rule 3.3b)."""
    return any(deed.incident in _OF_A_RETURNED_CARD for deed in deeds)


def with_card_in(deeds: Sequence[Deed], told: Told) -> list[Deed]:
    """Return the acts; where the scorecard was returned, what happened in the round keeps its penalties alone."""
    if not card_is_in(deeds):
        return list(deeds)
    return [
        deed
        if deed is NOTHING_DONE or deed.incident in _OF_A_RETURNED_CARD or leaves_mistake(deed.ruling)
        else told_late(deed, told.get(option_taken[place]))
        for place, deed in enumerate(deeds)
    ]


def told_late(deed: Deed, taken: Taken | None) -> Deed:
    """Return an act of before play of the hole was over: what it cost, relief that was taken included."""
    ruling: Ruling = deed.ruling
    options = [option for option in ruling.relief if taken_as(option) is taken]
    if taken is None and cost_still_to_come(ruling):
        options = [ruling.relief[0]]
    cost = [strokes(option.penalty, option.citation) for option in options if option.penalty]
    over = replace(ruling, action=None, relief=(), corrections=(), notes=())
    return replace(deed, ruling=over.also(*cost))
