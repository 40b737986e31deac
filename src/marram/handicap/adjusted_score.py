"""Rules 2.2, 3.1 to 3.3: hole scores become an adjusted gross score.

A hole not played counts differently by edition. Until 2023 it is net par, if enough holes were played: 7 of 9, or 14 of
18 (of 10 to 13 only nine count). From 2024 nothing is put in its place: an expected Score Differential stands for it
(Rule 5.1), an 18-hole score needs 10 holes, one of 9 all nine (read on the pages of two associations). Where an
association approves net par in a case of its own (2024, Clarification 3.2/1), say so.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from marram.handicap.checking import Checking
from marram.handicap.editions import LATEST, Edition
from marram.handicap.hole_scores import maximum_hole_score, net_par
from marram.handicap.strokes import strokes_by_hole
from marram.said import said

LEAST_HOLES = {
    (Edition.OF_2020, 18): 14,
    (Edition.OF_2020, 9): 7,
    (Edition.OF_2024, 18): 10,
    (Edition.OF_2024, 9): 9,
}
"""How many holes must have been played for a score of 18 or 9 holes (Rule 2.2)."""


class Ending(Enum):
    """How a hole ended."""

    HOLED = "holed"
    NOT_FINISHED = "not_finished"
    """Started, not holed out: the most likely score counts, net double bogey at most (Rule 3.3)."""
    NOT_PLAYED = "not_played"


@dataclass(frozen=True, slots=True)
class HolePlayed:
    """A hole of a round.

    Attributes:
        par: of the hole.
        stroke_index: of the hole.
        score: strokes with penalty strokes; of a hole not finished the most likely score, ``None`` where it is not known
            (then net double bogey counts); ``None`` of a hole not played.
        ending: how it ended.
    """

    par: int
    stroke_index: int
    score: int | None = None
    ending: Ending = Ending.HOLED


class Why(Enum):
    """Why a hole counts as it does."""

    AS_PLAYED = "as_played"
    MAXIMUM = "maximum"
    MOST_LIKELY = "most_likely"
    NET_PAR = "net_par"
    NOT_COUNTED = "not_counted"


@dataclass(frozen=True, slots=True)
class HoleCounted:
    """What a hole counts for handicap purposes, and why; 0 where it is left to an expected differential."""

    counted: int
    strokes: int
    maximum: int
    why: Why
    citation: str


@dataclass(frozen=True, slots=True)
class AdjustedScore:
    """An adjusted gross score.

    Attributes:
        total: over the holes that count.
        holes: hole by hole, in the order given.
        played: how many holes were played.
        expected_for: for how many holes an expected Score Differential stands (2024).
    """

    total: int
    holes: tuple[HoleCounted, ...]
    played: int
    expected_for: int


def adjusted_gross_score(
    holes: Sequence[HolePlayed],
    course_handicap: int | None,
    *,
    edition: Edition = LATEST,
    net_par_approved: bool = False,
) -> AdjustedScore:
    """Return the adjusted gross score of 18 or 9 holes.

    Args:
        holes: in the order of the card.
        course_handicap: the full, rounded Course Handicap; ``None`` before a first Handicap Index.
        edition: of the day of the round.
        net_par_approved: 2024, where the association approves net par for holes not played.

    Raises:
        BadHandicap: a score that cannot be, or fewer holes than make a score; with every fault.
    """
    checking = Checking()
    count = len(holes)
    if count not in {9, 18}:
        checking.fault(said("Give 9 or 18 holes, not {count}; a hole not played is one too.", count=count))
        checking.done()
    played = sum(one.ending is not Ending.NOT_PLAYED for one in holes)
    least = LEAST_HOLES[edition, count]
    if played < least:
        checking.fault(
            said(
                "{played} of {count} holes were played; in the edition of {edition} a score needs {least} (Rule 2.2).",
                played=played,
                count=count,
                edition=edition.value,
                least=least,
            )
        )
    for number, one in enumerate(holes, start=1):
        _check(checking, number, one)
    indexes = checking.indexes(said("Stroke indexes"), (one.stroke_index for one in holes), count)
    checking.done()
    strokes = strokes_by_hole(course_handicap or 0, indexes)
    in_its_place = edition is Edition.OF_2020 or net_par_approved
    counted = tuple(
        _counted(one, given, has_index=course_handicap is not None, net_par_counts=in_its_place)
        for one, given in zip(holes, strokes, strict=True)
    )
    return AdjustedScore(
        sum(one.counted for one in counted), counted, played, 0 if in_its_place else count - played
    )


def _check(checking: Checking, number: int, hole: HolePlayed) -> None:
    if hole.ending is Ending.HOLED:
        checking.whole_number(said("Score of hole {number}", number=number), hole.score, least=1, most=99)
    elif hole.ending is Ending.NOT_FINISHED and hole.score is not None:
        checking.whole_number(
            said("Most likely score of hole {number}", number=number), hole.score, least=1, most=99
        )
    elif hole.ending is Ending.NOT_PLAYED and hole.score is not None:
        checking.fault(
            said("Hole {number} was not played, and yet has a score. Give one or the other.", number=number)
        )


def _counted(hole: HolePlayed, strokes: int, *, has_index: bool, net_par_counts: bool) -> HoleCounted:
    most = maximum_hole_score(hole.par, strokes, has_index=has_index)
    limit, citation = most.whole, most.steps[-1].citation
    if hole.ending is Ending.NOT_PLAYED:
        if net_par_counts:
            return HoleCounted(net_par(hole.par, strokes), strokes, limit, Why.NET_PAR, "3.2")
        return HoleCounted(0, strokes, limit, Why.NOT_COUNTED, "3.2")
    if hole.score is None or hole.score > limit:
        return HoleCounted(limit, strokes, limit, Why.MAXIMUM, citation)
    if hole.ending is Ending.NOT_FINISHED:
        return HoleCounted(hole.score, strokes, limit, Why.MOST_LIKELY, "3.3")
    return HoleCounted(hole.score, strokes, limit, Why.AS_PLAYED, "3.1")
