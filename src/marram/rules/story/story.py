"""A story: several incidents that happened one after the other, ruled on together."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from marram.errors import InputError, shown
from marram.rules.engine.conditions import day_meant
from marram.rules.engine.request import read_facts, rule
from marram.rules.facts.ball import area_of_ball
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.facts.several import MOST_INCIDENTS, StoryBall, about_ball
from marram.rules.penalty import PenaltyKind
from marram.rules.result import Result
from marram.rules.ruling import Action, Ruling
from marram.rules.story.bearing import relief_borne, rests_on, sides_of_acts, told_of_the_breach
from marram.rules.story.combine import combine, deeds_of
from marram.rules.story.contradictions import check_acts, told_apart
from marram.rules.story.deeds import NOTHING_DONE, with_areas
from marram.rules.story.hole_completed import between_holes, strokes_count
from marram.rules.story.provisional import in_play_at_its_cost, with_provisional_chosen
from marram.rules.story.strokes import StrokeCount, count_strokes
from marram.said import joined, said

MOST_STROKES = 999
"""More strokes on one hole than anybody makes (own choice): a slip of the pen."""


@dataclass(frozen=True, slots=True)
class Happened:
    """One incident of a story, what is known of it, and what the player then took of the relief offered.

    Attributes:
        incident: its name.
        facts: what is known of it, by fact name.
        option: what the player did of what the ruling lets be done: a kind of relief (``"lateral"``),
            ``"as_it_lies"``, or ``"nothing_yet"``; ``None`` where it was not told.
        ball: which ball of the story it was about (:class:`marram.rules.facts.several.StoryBall`, such as
            ``"provisional"``); ``None`` where it was not told.
        strokes: strokes that count, made in this act and until the next; ``None``: those the act itself shows.
        by: ``"another_player"`` where it was another player's act (in a match the opponent's), whose penalties and
            ball are that player's; ``None``: the player's own.
    """

    incident: str
    facts: Mapping[str, Any]
    option: str | None = None
    ball: str | None = None
    strokes: int | None = None
    by: str | None = None


ANOTHER_PLAYER = "another_player"
"""Whose act it was, where it was not the player's."""


@dataclass(frozen=True, slots=True)
class OtherBall:
    """What an act leaves to be done with a ball that is not the player's.

    Attributes:
        ball: its name.
        act: the number of the act, from 1.
        action: what happens next with it.
    """

    ball: StoryBall
    act: int
    action: Action | None


@dataclass(frozen=True, slots=True)
class StoryResult:
    """What the Rules say of a story.

    Attributes:
        parts: the result of each incident, in the order of what happened.
        combined: the combined ruling, or the question between incidents; ``None`` while a part is open.
        count: the strokes of the player; ``None`` until there is a combined ruling.
        other_balls: what is left to be done with balls of other players.
        on_next_hole: the numbers, from 1, of the acts whose penalty counts on the hole after the one just played.
    """

    parts: tuple[Result, ...]
    combined: Result | None
    count: StrokeCount | None = None
    other_balls: tuple[OtherBall, ...] = ()
    on_next_hole: tuple[int, ...] = ()

    @property
    def next_stroke(self) -> int | None:
        """Which stroke comes next on the hole, where the strokes before the story were told."""
        return None if self.count is None else self.count.next_stroke


def rule_story(
    happened: Sequence[Happened],
    between: Mapping[str, Any] | None = None,
    *,
    played_on: date | None = None,
    form_of_play: FormOfPlay | str | None = None,
    sides: Sides | str | None = None,
    local_rules: Iterable[str] | None = None,
    strokes_before: int | None = None,
    edition: int | str | None = None,
) -> StoryResult:
    """Rule on several incidents of one story, and combine them under Rule 1.3c(4).

    Args:
        happened: the incidents in order; one to six.
        between: what is known between incidents, such as ``intervening_event_1`` between the first and the
            second; all of it is listed in :data:`marram.rules.facts.several.BETWEEN`.
        played_on: the day of the round.
        form_of_play: as for :func:`marram.rule`.
        sides: as for :func:`marram.rule`.
        local_rules: as for :func:`marram.rule`.
        strokes_before: strokes on the hole before the first incident, penalty strokes included; 0 before the
            first stroke. An incident that is itself a stroke counts as one made in the story.
        edition: instead of a day, as for :func:`marram.rule`.

    Raises:
        InputError: no incident, too many, or faults in one; each fault names the incident by its place.
        DateNotCovered: as for :func:`marram.rule`.
    """
    _check_told(happened, strokes_before)
    day = day_meant(played_on, edition)
    if not 1 <= len(happened) <= MOST_INCIDENTS:
        raise InputError(
            said(
                "A situation holds one to {most_incidents} incidents; {count} were given.",
                most_incidents=MOST_INCIDENTS,
                count=len(happened),
            )
        )
    adopted = tuple(local_rules) if isinstance(local_rules, Iterator) else local_rules
    parts: list[Result] = []
    faults = told_apart([(one.incident, one.facts) for one in happened], form_of_play, sides)
    if sides is None and not any(the_sides.name in one.facts for one in happened):
        sides = sides_of_acts([one.incident for one in happened])

    def ruled(place: int, borne: Mapping[str, Any]) -> Result:
        one = happened[place]
        return rule(
            one.incident,
            {**borne, **one.facts},
            played_on=day,
            form_of_play=form_of_play,
            sides=sides,
            local_rules=adopted,
        )

    for place, one in enumerate(happened, start=1):
        try:
            parts.append(ruled(place - 1, {}))
            borne = told_of_the_breach(one.incident, one.facts)
            for before in reversed(range(place - 1) if borne else ()):
                spoken_of = ruled(before, borne)
                if rests_on(spoken_of, borne):
                    parts[before] = spoken_of
                    break
        except InputError as error:
            faults += [
                joined(": ", said("Incident {number} ({name})", number=place, name=one.incident), fault)
                for fault in error.faults
            ]
    if faults:
        raise InputError(*faults)
    if not all(isinstance(part, Ruling) for part in parts):
        return StoryResult(tuple(parts), None)
    known = dict(between or {})
    for place, one in enumerate(happened, start=1):
        if one.option is not None:
            known[f"option_taken_{place}"] = one.option
        if one.ball is not None:
            known[f"about_ball_{place}"] = one.ball
    names = [one.incident for one in happened]
    by_another = {place for place, one in enumerate(happened) if one.by is not None}
    alone = len(parts) == 1 and "option_taken_1" not in known and not by_another
    combined = (
        in_play_at_its_cost(parts[0])
        if alone and isinstance(parts[0], Ruling)
        else combine(
            parts,
            known,
            played_on=day,
            form_of_play=form_of_play,
            incidents=names,
            by_another=by_another,
            strokes=[one.strokes for one in happened],
        )
    )
    if not isinstance(combined, Ruling):
        return StoryResult(tuple(parts), combined)
    combined = relief_borne(combined, _who_plays_together(happened, sides))
    told = read_facts(known)
    others = [
        OtherBall(StoryBall.OTHER_PLAYERS, place, part.action)
        for place, part in enumerate(parts, start=1)
        if isinstance(part, Ruling)
        and (told.get(about_ball[place - 1]) is StoryBall.OTHER_PLAYERS or place - 1 in by_another)
    ]
    areas = [read_facts(one.facts).get(area_of_ball) for one in happened]
    every = with_provisional_chosen(with_areas(deeds_of(parts, names), areas), told)
    deeds = [NOTHING_DONE if place in by_another else deed for place, deed in enumerate(every)]
    match = form_of_play in (FormOfPlay.MATCH_PLAY, FormOfPlay.MATCH_PLAY.value)
    check_acts(deeds, told, [one.strokes for one in happened])
    of_hole, one_hole = strokes_count(deeds, told)
    count = count_strokes(
        combined,
        of_hole,
        told,
        before=strokes_before if one_hole else None,
        said=[one.strokes for one in happened],
        match=match,
    )
    to_come = tuple(place + 1 for place in between_holes(every if match else deeds, told))
    return StoryResult(tuple(parts), combined, count, tuple(others), to_come)


def _who_plays_together(happened: Sequence[Happened], told: Sides | str | None) -> Sides | None:
    """Return who plays together, as said of the story or of one of its incidents."""
    every = (told, *(one.facts.get(the_sides.name) for one in happened))
    said = [one for one in every if one is not None]
    who: Sides | None = the_sides.parse(said[0]) if said else None
    return who


def _check_told(happened: Sequence[Happened], strokes_before: int | None) -> None:
    """Refuse numbers of strokes that cannot be, and persons nobody knows.

    Raises:
        InputError: there are such; all are listed.
    """
    given: list[tuple[str, int | None]] = [("strokes_before", strokes_before)]
    given += [
        (said("Incident {number} ({name}): strokes", number=place, name=one.incident), one.strokes)
        for place, one in enumerate(happened, 1)
    ]
    faults = [
        said(
            "{what} is {number}; give a whole number of strokes from 0 to {most_strokes}.",
            what=what,
            number=shown(number),
            most_strokes=MOST_STROKES,
        )
        for what, number in given
        if number is not None
        and (isinstance(number, bool) or not isinstance(number, int) or not 0 <= number <= MOST_STROKES)
    ]
    faults += [
        said(
            "Incident {place} ({incident}): by {by} is nobody; give {other!r} or leave it out.",
            place=place,
            incident=one.incident,
            by=shown(one.by),
            other=ANOTHER_PLAYER,
        )
        for place, one in enumerate(happened, 1)
        if one.by not in (None, ANOTHER_PLAYER)
    ]
    if faults:
        raise InputError(*faults)


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
