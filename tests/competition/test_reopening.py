"""Every way in which a closed result may be changed, beside Rules 20.2d and 20.2e as they are published.

Rule 20.2e of 2019 was read whole, in the translation of the German Golf Association; of 2023 Rules 20.2d and 20.2e(1), in English.
That 20.2e(2) of 2023 is as in 2019 but for the handicap on the card, which no longer puts a player out, follows from Rule
3.3b(4) of 2023 and is from memory beyond that.
"""

from datetime import date, datetime

import pytest

from marram.competition.results.closing import Change, Closed, reopening
from marram.rules.facts.conditions import FormOfPlay

CLOSED = Closed(datetime(2025, 6, 22, 19, 30))  # noqa: DTZ001
IN_2019, IN_2023 = date(2021, 6, 19), date(2025, 6, 21)
STROKE, MATCH = FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY


@pytest.mark.parametrize(
    ("day", "form", "breach", "may_change"),
    [
        # A hole score lower than taken, unless for penalties not known of before the close.
        (IN_2019, STROKE, "score_too_low", True),
        (IN_2023, STROKE, "score_too_low", True),
        # A breach with disqualification that the player knew of before the close.
        (IN_2019, STROKE, "known_disqualification", True),
        (IN_2023, STROKE, "known_disqualification", True),
        # A handicap known to be too high, which affected the strokes received: in 2019 alone.
        (IN_2019, STROKE, "handicap_too_high", True),
        (IN_2023, STROKE, "handicap_too_high", False),
        # Anything else: no penalty is added or corrected.
        (IN_2019, STROKE, "other", False),
        (IN_2023, STROKE, "other", False),
        # Serious misconduct, or ignoring a Rule knowingly: no time limit, and what was known is for the Committee to find.
        (IN_2019, STROKE, "misconduct_or_agreement", None),
        (IN_2023, STROKE, "misconduct_or_agreement", None),
        (IN_2019, MATCH, "misconduct_or_agreement", None),
        (IN_2023, MATCH, "misconduct_or_agreement", None),
        # Nothing else reopens a match (20.2e(1)); a ruling that was asked for is Rule 20.1b(3).
        *(
            (day, MATCH, breach, False)
            for day in (IN_2019, IN_2023)
            for breach in ("score_too_low", "known_disqualification", "handicap_too_high", "other")
        ),
    ],
)
def test_a_breach_that_comes_to_light_after_the_result(
    day: date, form: FormOfPlay, breach: str, may_change: bool | None
) -> None:
    found = reopening(Change.BREACH, {"late_breach": breach}, played_on=day, form=form, closed=CLOSED)
    assert found.allowed is may_change


@pytest.mark.parametrize("day", [IN_2019, IN_2023])
@pytest.mark.parametrize("form", [STROKE, MATCH])
def test_an_administrative_mistake_has_no_time_limit(day: date, form: FormOfPlay) -> None:
    """Rule 20.2d(2) of 2023; before it Interpretation 20.2d/1, from memory."""
    assert reopening(Change.ADMINISTRATIVE, {}, played_on=day, form=form, closed=CLOSED).allowed is True
