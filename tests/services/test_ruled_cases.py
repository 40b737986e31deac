"""What was ruled on at an event, as a briefing takes it."""

from dataclasses import replace
from datetime import date
from pathlib import Path

from marram.rules.facts.conditions import FormOfPlay
from marram.services.cases.case import Act, Case
from marram.services.log.log import About, ruling_entry
from marram.services.log.ruled_cases import cases_of
from tests.services.scoring import NOON, scoring

UNPLAYABLE = {
    "area_of_ball": "general_area",
    "spot_of_ball_known": "yes",
    "last_stroke_from_penalty_area": "no",
}


def test_each_case_keeps_its_form_of_play_and_a_corrected_one_is_left_out(tmp_path: Path) -> None:
    """A ruling of a match is told as one of a match; of a ruling and its correction only what stands is told."""
    match = Case(
        date(2024, 5, 1), (Act("unplayable_ball", UNPLAYABLE, {}),), FormOfPlay.MATCH_PLAY, local_rules=()
    )
    strokes = replace(match, form_of_play=FormOfPlay.STROKE_PLAY)
    with scoring(tmp_path) as here:
        first = here.add(ruling_entry(strokes, NOON))
        here.add(ruling_entry(match, NOON, About(corrects=first.id)))

        found = cases_of(here.log, here.event)

    assert [(one["incident"], one["form"]) for one in found] == [("unplayable_ball", "match_play")]
