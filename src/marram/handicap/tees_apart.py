"""Rule 6.2b: players who compete from tees of different par.

With Course Rating less par in the Course Handicap only a difference in par needs strokes, and only where results are
told in strokes. Where that difference is left out of the formula, the difference in Course Rating stands in its place
(a former frequently asked question of an association, to the system before 2020).
"""

from collections.abc import Sequence
from enum import Enum

from marram.errors import BadHandicap
from marram.handicap.allowances import AGAINST_PAR, Format
from marram.handicap.arithmetic import to_whole
from marram.handicap.rated_tee import RatedTee
from marram.handicap.worked import Worked, step, worked
from marram.said import said


class Adjustment(Enum):
    """Whose strokes change."""

    ADD_TO_HIGHER = "add_to_higher"
    """Players on tees of higher par receive the difference (Rule 6.2b)."""
    TAKE_FROM_LOWER = "take_from_lower"
    """Players on tees of lower par lose it: the other way the Rule allows where most play from the highest par."""


def strokes_for_par(
    tees: Sequence[RatedTee], form: Format, *, adjustment: Adjustment = Adjustment.ADD_TO_HIGHER
) -> tuple[Worked, ...]:
    """Return what is added to the Playing Handicap of players on each of some tees (Rule 6.2b).

    In Stableford, Par/Bogey and other formats told against par nothing is added: each plays against the par of their own tees.

    Raises:
        BadHandicap: no tees, or tees of 9 and of 18 holes together.
    """
    _check(tees)
    pars = [one.par for one in tees]
    if form in AGAINST_PAR:
        return tuple(worked(step("par_no_matter", "6.2b", 0, par=par)) for par in pars)
    base = min(pars) if adjustment is Adjustment.ADD_TO_HIGHER else max(pars)
    return tuple(worked(step("par_apart", "6.2b", par - base, par=par, base=base)) for par in pars)


def strokes_for_rating(tees: Sequence[RatedTee]) -> tuple[Worked, ...]:
    """Return the same where the Course Handicap leaves out Course Rating less par: the rounded difference of ratings.

    Raises:
        BadHandicap: no tees, or tees of 9 and of 18 holes together.
    """
    _check(tees)
    lowest = min(one.course_rating for one in tees)
    found = []
    for one in tees:
        apart = one.course_rating - lowest
        found.append(
            worked(
                step("rating_apart", "6.2b", apart, rating=one.course_rating, base=lowest),
                step("strokes_rounded", "6.2b", to_whole(apart), value=apart),
            )
        )
    return tuple(found)


def _check(tees: Sequence[RatedTee]) -> None:
    if not tees or len({one.holes for one in tees}) > 1:
        raise BadHandicap(said("Give the tees of all players, all of 9 or all of 18 holes."))
