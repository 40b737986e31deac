"""The handicap that each player has in the competition: from index, tees and allowance, or as it was given."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from marram.competition.conditions.event_file import Entrant, EventFile, Rating
from marram.competition.results.card import Hole
from marram.handicap.allowances import Allowance
from marram.handicap.course_handicaps import course_handicap
from marram.handicap.playing_handicaps import playing_handicap
from marram.handicap.rated_tee import RatedTee
from marram.handicap.strokes import strokes_by_hole
from marram.said import Said, said

EVERYBODY = 100
"""Per cent: the allowance where nothing else is set."""


@dataclass(frozen=True, slots=True)
class Has:
    """A player's handicap in the competition.

    Attributes:
        playing: the Playing Handicap; ``None`` where it cannot be worked out.
        strokes: handicap strokes of each hole; empty where a stroke index is missing.
        why_not: what is missing; ``None`` where nothing is.
    """

    playing: int | None
    strokes: tuple[int, ...] = ()
    why_not: Said | None = None


def handicap_of(found: EventFile, entrant: Entrant, holes: Sequence[Hole]) -> Has:
    """Return a player's Playing Handicap and strokes by hole.

    Args:
        found: the conditions, with the ratings of the tees.
        entrant: the player.
        holes: the holes that are played.
    """
    if entrant.playing_handicap is not None:
        return _has(entrant.playing_handicap, holes)
    if entrant.handicap_index is None:
        return Has(None, (), said("{name} has no handicap_index.", name=entrant.name))
    rating = rating_for(found, entrant)
    if rating is None:
        return Has(
            None, (), said("No rating is given of the tees that {name} plays from.", name=entrant.name)
        )
    tee = RatedTee.read(rating.course_rating, rating.slope, rating.par, 9 if len(holes) <= 9 else 18)
    share = Fraction(found.allowance if found.allowance is not None else EVERYBODY)
    if share.denominator != 1:
        return Has(None, (), said("allowance is {given}; give whole per cent.", given=found.allowance))
    course = course_handicap(entrant.handicap_index, tee)
    return _has(int(playing_handicap(course, Allowance((int(share),))).value), holes)


def rating_for(found: EventFile, entrant: Entrant) -> Rating | None:
    """Return the rating of the tees that a player plays from: those of the entry, of the competition, or the only one."""
    tees = entrant.tees or found.tees
    fitting = [
        one for one in found.ratings if (not tees or one.tees == tees) and one.sex in (None, entrant.sex)
    ]
    return fitting[0] if len({(one.tees, one.sex) for one in fitting}) == 1 else None


def _has(playing: int, holes: Sequence[Hole]) -> Has:
    indexes = [one.stroke_index for one in holes if one.stroke_index is not None]
    if len(indexes) != len(holes) or len(holes) not in (9, 18):
        return Has(playing, (), said("A stroke index is missing, or these are not 9 or 18 holes."))
    return Has(playing, strokes_by_hole(playing, indexes))
