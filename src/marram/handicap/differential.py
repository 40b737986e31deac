"""Rule 5.1: Score Differentials of 18 and of 9 holes.

The expected Score Differential of 2024 is taken as given: the governing bodies work it out themselves from how players
of an index score on average, and print neither formula nor table (frequently asked questions, 2024; 3.2/1).
"""

from fractions import Fraction

from marram.errors import BadHandicap
from marram.handicap.arithmetic import HALF, to_tenth
from marram.handicap.checking import Checking
from marram.handicap.editions import Edition
from marram.handicap.rated_tee import STANDARD_SLOPE, RatedTee
from marram.handicap.worked import Worked, step, worked
from marram.said import said

LEAST_PCC, MOST_PCC = -1, 3
"""The playing conditions calculation gives -1, 0, 1, 2 or 3 (Rule 5.6)."""


def score_differential(adjusted_gross: object, tee: RatedTee, pcc: object = 0) -> Worked:
    """Return the Score Differential of an 18-hole score, to a tenth (Rule 5.1a).

    (113 ÷ Slope Rating) × (adjusted gross score − Course Rating − playing conditions). The value before the rounding is
    the result of the last step but one: an exceptional score is measured with it (Rule 5.9).

    Args:
        adjusted_gross: the adjusted gross score.
        tee: the ratings of the 18 holes.
        pcc: the playing conditions calculation of the day, -1 to 3, as published for it.

    Raises:
        BadHandicap: with every figure that cannot be used.
    """
    score, conditions = _read(adjusted_gross, tee, pcc, 18)
    value = _differential(score, tee, conditions)
    return worked(
        step(
            "differential",
            "5.1a",
            value,
            slope=tee.slope,
            score=score,
            course_rating=tee.course_rating,
            pcc=conditions,
        ),
        step("differential_rounded", "5.1a", to_tenth(value), value=value),
    )


def nine_hole_differential(adjusted_gross: object, tee: RatedTee, pcc: object = 0) -> Worked:
    """Return the differential of a 9-hole score: with half the day's playing conditions, unrounded (Rule 5.1b).

    Raises:
        BadHandicap: with every figure that cannot be used.
    """
    score, conditions = _read(adjusted_gross, tee, pcc, 9)
    half = conditions * HALF
    value = _differential(score, tee, half)
    return worked(
        step(
            "differential",
            "5.1b",
            value,
            slope=tee.slope,
            score=score,
            course_rating=tee.course_rating,
            pcc=half,
        )
    )


def combine_nines(
    first: Worked, second: Worked | None = None, *, expected: object = None, edition: Edition
) -> Worked:
    """Return the 18-hole Score Differential of a 9-hole score, to a tenth (Rule 5.1b).

    Args:
        first: the differential of the nine holes played.
        second: 2020: that of the other 9-hole score it is added to.
        expected: 2024: the player's expected Score Differential over nine holes, as the association gives it.
        edition: of the day of the round.

    Raises:
        BadHandicap: what the edition adds is missing, or is what the other edition adds.
    """
    return _completed(first, second, expected, edition)


def complete_round(played: Worked, expected: object) -> Worked:
    """Return the 18-hole Score Differential of 10 to 17 holes played, to a tenth (2024, Rules 3.2 and 5.1a).

    Args:
        played: the differential of the holes played.
        expected: the expected Score Differential of the holes not played, as the association gives it.

    Raises:
        BadHandicap: the expected differential is missing.
    """
    return _completed(played, None, expected, Edition.OF_2024)


def _completed(first: Worked, second: Worked | None, expected: object, edition: Edition) -> Worked:
    if edition is Edition.OF_2020:
        if second is None or expected is not None:
            raise BadHandicap(
                said(
                    "In the edition of 2020 a 9-hole differential is added to another one (Rule 5.1b). Give the second, and no expected one."
                )
            )
        total = first.value + second.value
        joined = step("two_nines", "5.1b", total, first=first.value, second=second.value)
        steps = (*first.steps, *second.steps, joined)
    else:
        if second is not None or expected is None:
            raise BadHandicap(
                said(
                    "In the edition of 2024 an expected Score Differential stands for holes not played (Rule 5.1b). It is not "
                    "published how it is worked out: give it as the association does, and no second score."
                )
            )
        checking = Checking()
        value = checking.number(said("Expected Score Differential"), expected, least=-10, most=80)
        checking.done()
        total = first.value + value
        steps = (*first.steps, step("with_expected", "5.1b", total, first=first.value, expected=value))
    return worked(*steps, step("differential_rounded", "5.1c", to_tenth(total), value=total))


def _read(adjusted_gross: object, tee: RatedTee, pcc: object, holes: int) -> tuple[Fraction, Fraction]:
    checking = Checking()
    if tee.holes != holes:
        checking.fault(
            said("The ratings are of {given} holes, the score is of {holes}.", given=tee.holes, holes=holes)
        )
    score = checking.number(
        said("Adjusted gross score"), adjusted_gross, least=holes, most=20 * holes, whole=True
    )
    conditions = checking.number(
        said("Playing conditions calculation"), pcc, least=LEAST_PCC, most=MOST_PCC, whole=True
    )
    checking.done()
    return score, conditions


def _differential(score: Fraction, tee: RatedTee, conditions: Fraction) -> Fraction:
    return Fraction(STANDARD_SLOPE, tee.slope) * (score - tee.course_rating - conditions)
