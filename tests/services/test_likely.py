"""What is likely where a ball lies: by area, what is near and the conditions (common practice; our choice)."""

from dataclasses import replace
from datetime import date

import pytest

from marram.course import load
from marram.course.model import Course, Kind
from marram.demo import COURSE
from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.incidents import INCIDENTS
from marram.services.cases.conditions import Conditions
from marram.services.cases.likely import (
    BY_AREA,
    BY_FORM,
    BY_KIND,
    BY_SIDES,
    MOST,
    NEAR,
    by_place,
    likely_here,
)
from marram.services.cases.told import Sentence, told
from marram.services.ground.lies import to_plane
from tests.desk.asking import TestClient

ON = Conditions(date(2025, 6, 21), FormOfPlay.STROKE_PLAY, Sides.INDIVIDUAL, ())
IN_THE_BURN = (55.003888, 3.992193)


@pytest.fixture(scope="module")
def course() -> Course:
    return load(COURSE)


def names(
    course: Course, at: tuple[float, float], area: Area | None, conditions: Conditions = ON
) -> list[str]:
    return [one.name for one in likely_here(course, to_plane(course, at), area, conditions)]


def test_every_likely_incident_is_one_and_is_not_for_teaching() -> None:
    """The tables name incidents of the present Rules only."""
    known = {one.name for one in INCIDENTS if not one.for_teaching}
    tables = (BY_AREA, BY_KIND, BY_FORM, BY_SIDES)
    assert {name for table in tables for found in table.values() for name in found} <= known


def test_the_area_near_things_and_conditions_decide(course: Course) -> None:
    """A penalty area first in a penalty area, and beside one before what is likely anywhere; a Local Rule where it is in force."""
    assert names(course, IN_THE_BURN, Area.PENALTY_AREA)[0] == "ball_in_penalty_area"
    assert names(course, IN_THE_BURN, Area.GENERAL_AREA)[0] == "ball_in_penalty_area"
    far = names(course, (55.0045, 4.0001), Area.GENERAL_AREA)
    assert "lie_preferred" not in far
    assert "lie_preferred" in names(course, (55.0045, 4.0001), Area.GENERAL_AREA, replace(ON, local=("E-3",)))
    out = replace(ON, local=("E-5",), form=FormOfPlay.MATCH_PLAY)
    assert "alternative_to_stroke_and_distance" in names(course, IN_THE_BURN, None, out)
    for area in (*Area, None):
        assert len(names(course, IN_THE_BURN, area)) <= MOST


def test_a_sentence_is_put_in_order_by_the_place() -> None:
    """What the place speaks for rises; what a sentence cites by its Rule, and what is not in force, keep their places."""
    sentence = Sentence("my ball moved", frozenset(), None)
    offered = told(sentence).offered
    second = offered[1].incident
    factor = offered[0].likelihood / offered[1].likelihood
    moved = by_place(offered, sentence, (second,))
    assert (moved[0].incident is second) == (factor < 4)
    assert {one.incident.name for one in moved} == {one.incident.name for one in offered}
    cited = Sentence("17.1d", frozenset(), None)
    assert by_place(told(cited).offered, cited, (second,)) == told(cited).offered


def test_what_only_tells_of_the_former_rules_stands_last() -> None:
    """Unless the sentence speaks of them, no incident for teaching stands before one that is ruled on today."""
    for words in (
        "dropped the ball the wrong way",
        "ball moved on the green",
        "flagstick left in",
        "16.1",
        "13.2",
    ):
        sentence = Sentence(words, frozenset(), None)
        taught = [one.for_teaching for one in by_place(told(sentence).offered, sentence, ())]
        assert taught == sorted(taught), words
    former = Sentence("how long could one search before 2019", frozenset(), None)
    assert by_place(told(former).offered, former, ())[0].for_teaching


def test_the_page_of_a_ball_offers_what_is_likely(client: TestClient) -> None:
    """Right after the tap one more tap leads to the incident, on the hole and at the place shown; then not again."""
    at = f"{IN_THE_BURN[0]},{IN_THE_BURN[1]}"
    page = client.get(f"/ball?hole=9&ball={at}").text
    assert page.index('class="likely"') < page.index('<dl class="told">')
    assert "what=ball_in_penalty_area" in page
    assert 'class="likely"' not in client.get(f"/ball?hole=9&ball={at}&what=unplayable_ball").text


@pytest.fixture
def client() -> TestClient:
    from marram.desk.app import create_app

    return TestClient(create_app(), follow_redirects=False)


def test_a_ball_on_the_green_of_another_hole_is_on_a_wrong_green(course: Course) -> None:
    """Relief from a wrong green must be taken (Rule 13.1f): it stands first there, and is not offered beside the green."""
    green = next(iter(course.of(Kind.PUTTING_GREEN))).geometry
    on, off = green.representative_point(), green.centroid
    aside = (green.bounds[2] + NEAR, off.y)

    here = likely_here(course, (on.x, on.y), Area.GENERAL_AREA, ON)
    assert here[0].name == "wrong_green"
    assert "wrong_green" not in [one.name for one in likely_here(course, aside, Area.GENERAL_AREA, ON)]
