"""What was ruled on at an event, as a briefing takes it."""

from dataclasses import replace
from datetime import date
from pathlib import Path

from marram.rules.facts.conditions import FormOfPlay
from marram.services.cases.case import Act, Case
from marram.services.log.log import About, ruling_entry
from marram.services.log.ruled_cases import cases_of
from marram.teach.briefings.choosing import of_event
from marram.teach.briefings.deck import Topic
from marram.teach.briefings.drawing_up import drawn_up
from tests.services.scoring import NOON, scoring

UNPLAYABLE = {
    "area_of_ball": "general_area",
    "spot_of_ball_known": "yes",
    "last_stroke_from_penalty_area": "no",
}

OUT = {
    "all_of_ball_out_of_bounds": "yes",
    "provisional_state": "not_played",
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


def test_what_the_committee_adopted_is_told_and_what_was_put_right_comes_first(tmp_path: Path) -> None:
    """Ruled at the desk a case keeps Local Rules beside its facts: it makes a page all the same; what went wrong leads."""
    in_area = {**UNPLAYABLE, "form_of_play": "stroke_play"}
    plain = Case(
        date(2024, 5, 1), (Act("unplayable_ball", in_area, {}),), FormOfPlay.STROKE_PLAY, local_rules=("E-5",)
    )
    near = Case(
        date(2024, 5, 1), (Act("ball_near_boundary", OUT, {}),), FormOfPlay.STROKE_PLAY, local_rules=("E-5",)
    )
    wrong = replace(near, local_rules=())
    with scoring(tmp_path) as here:
        here.add(ruling_entry(plain, NOON))
        here.add(ruling_entry(plain, NOON))
        first = here.add(ruling_entry(wrong, NOON))
        here.add(ruling_entry(near, NOON, About(corrects=first.id)))

        met, left_out = of_event(cases_of(here.log, here.event), 10)
        deck = drawn_up(Topic("event", (), 1, 10), cases=cases_of(here.log, here.event))

    assert left_out == 0
    assert [(one.situation.incident, one.times, sorted(one.went)) for one in met] == [
        ("ball_near_boundary", 1, ["corrected"]),
        ("unplayable_ball", 2, []),
    ]
    assert met[0].situation.facts["local_rule_e_5"] in {"yes", True}
    assert str(first.content["headline"]) in deck.pages[0].part("why")
