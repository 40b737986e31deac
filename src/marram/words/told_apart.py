"""Relief options of one name, told apart: what differs stands beside the name.

One ruling may offer "back on the line" twice, inside the bunker for one stroke and outside it for two (Rule 19.3), or
lateral relief from either edge of a penalty area (Model Local Rule B-2).
"""

from collections.abc import Callable, Hashable, Iterable, Sequence
from dataclasses import replace

from marram.rules.relief_option import Limit, Reference, ReliefOption
from marram.words.messages import term
from marram.words.penalties import strokes_words
from marram.words.relief_options import OptionWords, option_words
from marram.words.texts import text

_GROUND = (
    Limit.IN_BUNKER,
    Limit.OUTSIDE_BUNKER,
    Limit.IN_PENALTY_AREA,
    Limit.OUTSIDE_PENALTY_AREA,
    Limit.GENERAL_AREA,
    Limit.ON_GREEN_OR_GENERAL_AREA,
    Limit.TEEING_AREA,
)
"""Limits that say where: the first of them tells options apart best."""

_FROM = frozenset(
    {
        Reference.PREVIOUS_STROKE,
        Reference.LAST_STROKE_OUTSIDE_PENALTY_AREA,
        Reference.CROSSING_POINT,
        Reference.OPPOSITE_EDGE,
        Reference.BALL,
        Reference.LINE_THROUGH_BALL,
        Reference.LINE_THROUGH_CROSSING_POINT,
    }
)
"""References with a short way to say them."""


def _where(option: ReliefOption) -> str:
    return next((term(limit) for limit in _GROUND if limit in option.limits), "")


def _from(option: ReliefOption) -> str:
    return text(f"relief.apart.{option.reference.value}") if option.reference in _FROM else ""


def _cost(option: ReliefOption) -> str:
    return strokes_words(option.penalty)


def _provision(option: ReliefOption) -> str:
    return option.citation


_WAYS: tuple[Callable[[ReliefOption], str], ...] = (_where, _from, _cost, _provision)
"""What options may differ in, the plainest first."""


def options_words(options: Iterable[ReliefOption]) -> tuple[OptionWords, ...]:
    """Return relief options in words; where several have one title, each title says what is its own."""
    every = list(options)
    words = [option_words(one) for one in every]
    titles = [one.title for one in words]
    for title in {one for one in titles if titles.count(one) > 1}:
        same = [number for number, one in enumerate(words) if one.title == title]
        for number, own in zip(same, _own([every[number] for number in same]), strict=True):
            if own:
                words[number] = replace(words[number], title=text("relief.apart.title", title=title, own=own))
    return tuple(words)


def _own(options: Sequence[ReliefOption]) -> list[str]:
    """Return what each of several options of one name has of its own, in words; empty where they are alike in all."""
    for way in _WAYS:
        found = [way(one) for one in options]
        if all(found) and _distinct(found):
            return found
    both = [text("relief.label.both", first=_provision(one), second=_cost(one)) for one in options]
    return both if _distinct(both) else [""] * len(options)


def _distinct(values: Sequence[Hashable]) -> bool:
    return len(set(values)) == len(values)
