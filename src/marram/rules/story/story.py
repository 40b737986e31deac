"""A story: several incidents that happened one after the other, ruled on together."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from marram.errors import InputError
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.several import MOST_INCIDENTS
from marram.rules.result import Result
from marram.rules.ruling import PenaltyKind, Ruling
from marram.rules.story.combine import combine


@dataclass(frozen=True, slots=True)
class Happened:
    """One incident of a story, what is known of it, and what the player then took of the relief offered.

    Attributes:
        incident: its name.
        facts: what is known of it, by fact name.
        option: what the player did of what the ruling lets be done: a kind of relief (``"lateral"``),
            ``"as_it_lies"``, or ``"nothing_yet"``; ``None`` where it was not told.
    """

    incident: str
    facts: Mapping[str, Any]
    option: str | None = None


@dataclass(frozen=True, slots=True)
class StoryResult:
    """What the Rules say of a story.

    Attributes:
        parts: the result of each incident, in the order of what happened.
        combined: the combined ruling, or the question between incidents; ``None`` while a part is open.
    """

    parts: tuple[Result, ...]
    combined: Result | None


def rule_story(
    happened: Sequence[Happened],
    between: Mapping[str, Any] | None = None,
    *,
    played_on: date,
    form_of_play: FormOfPlay | str | None = None,
    local_rules: Iterable[str] | None = None,
) -> StoryResult:
    """Rule on several incidents of one story, and combine them under Rule 1.3c(4).

    Args:
        happened: the incidents in order; one to six.
        between: what is known between incidents, such as ``intervening_event_1`` between the first and the
            second; all of it is listed in :data:`marram.rules.facts.several.BETWEEN`.
        played_on: the day of the round.
        form_of_play: as for :func:`marram.rule`.
        local_rules: as for :func:`marram.rule`.

    Raises:
        InputError: no incident, too many, or faults in one; each fault names the incident by its place.
        DateNotCovered: as for :func:`marram.rule`.
    """
    if not 1 <= len(happened) <= MOST_INCIDENTS:
        raise InputError(f"A situation holds one to {MOST_INCIDENTS} incidents; {len(happened)} were given.")
    adopted = tuple(local_rules) if isinstance(local_rules, Iterator) else local_rules
    parts: list[Result] = []
    faults: list[str] = []
    for place, one in enumerate(happened, start=1):
        try:
            parts.append(
                rule(
                    one.incident,
                    one.facts,
                    played_on=played_on,
                    form_of_play=form_of_play,
                    local_rules=adopted,
                )
            )
        except InputError as error:
            faults += [f"Incident {place} ({one.incident}): {fault}" for fault in error.faults]
    if faults:
        raise InputError(*faults)
    if not all(isinstance(part, Ruling) for part in parts):
        return StoryResult(tuple(parts), None)
    known = dict(between or {})
    for place, one in enumerate(happened, start=1):
        if one.option is not None:
            known[f"option_taken_{place}"] = one.option
    alone = len(parts) == 1 and "option_taken_1" not in known
    combined = parts[0] if alone else combine(parts, known, played_on=played_on)
    return StoryResult(tuple(parts), combined)


def total_strokes(ruling: Ruling) -> int | None:
    """Return the penalty strokes of a ruling in stroke play; ``None`` when the player is disqualified.

    The general penalty counts two. What a relief option costs comes on top when it is taken.
    """
    if any(one.kind is PenaltyKind.DISQUALIFICATION for one in ruling.penalties):
        return None
    counted = (PenaltyKind.STROKES, PenaltyKind.GENERAL)
    return sum(one.strokes for one in ruling.penalties if one.kind in counted)


rule_situation = rule_story
"""The name this had before."""
