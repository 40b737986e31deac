"""What is marked and rests on a Local Rule that is not in force is said everywhere it is looked at.

Dropping zones: Committee Procedures 8E-1 (a Committee "provides" one by Local Rule); no play zones: 8E-8 to 8E-10.
"""

import json
from collections.abc import Sequence
from dataclasses import replace
from datetime import date

import pytest

from marram.course import load
from marram.course.model import Course, Kind
from marram.demo import COURSE, EVENT
from marram.desk.app import create_app
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Ruling
from marram.services.cases.conditions import Conditions
from marram.services.cases.event import read_event
from marram.services.cases.places import Places
from marram.services.cases.rulings import Asked, Ruled, rule_on
from marram.services.ground.marked import marking_faults, without_local_rule, zones_not_offered
from marram.services.ground.marking import check_marking
from tests.desk.asking import TestClient

IN_THE_CAULDRON = (55.005237, 4.002143)
IN_THE_BURN = (55.003888, 3.992193)
PENALTY_AREA = {"found_in_penalty_area": "yes", "last_stroke_from_penalty_area": "no"}


@pytest.fixture(scope="module")
def course() -> Course:
    return load(COURSE)


def ruled(course: Course, ball: tuple[float, float], hole: int, codes: Sequence[str] | None) -> Ruled:
    conditions = Conditions(
        date(2025, 6, 21),
        FormOfPlay.STROKE_PLAY,
        Sides.INDIVIDUAL,
        None if codes is None else tuple(codes),
    )
    asked = Asked(conditions, "ball_in_penalty_area", hole, Places({"ball": ball}), PENALTY_AREA)
    return rule_on(course, asked)


def test_a_zone_that_is_not_in_force_is_said_by_the_ruling_that_would_offer_it(course: Course) -> None:
    """Without E-1 the ruling names the zone it leaves out; with it, it offers the zone and says nothing."""
    without = zones_not_offered(course, ruled(course, IN_THE_CAULDRON, 17, ["E-5"]))
    assert without is not None
    assert [one.name for one in without.features] == ["Dropping zone of the Cauldron"]

    offered = ruled(course, IN_THE_CAULDRON, 17, ["E-5", "E-1"])
    assert zones_not_offered(course, offered) is None
    assert isinstance(offered.result, Ruling)
    assert ReliefKind.DROPPING_ZONE in {one.kind for one in offered.result.relief}


@pytest.mark.parametrize(("ball", "hole", "codes"), [(IN_THE_BURN, 9, ["E-5"]), (IN_THE_CAULDRON, 17, None)])
def test_a_ruling_that_would_not_offer_it_says_nothing(
    course: Course, ball: tuple[float, float], hole: int, codes: Sequence[str] | None
) -> None:
    """No zone serves the Burn; and where the Local Rules are not known, the ruling asks instead."""
    assert zones_not_offered(course, ruled(course, ball, hole, codes)) is None


def test_markings_are_told_by_what_is_in_force(course: Course) -> None:
    """Each kind goes when one of its Local Rules is in force; unknown is a note, not in force a warning."""
    kinds = [one.kind for one in without_local_rule(course, ())]
    assert kinds == [Kind.DROPPING_ZONE, Kind.NO_PLAY_ZONE]
    assert [one.kind for one in without_local_rule(course, ("E-1.3",))] == [Kind.NO_PLAY_ZONE]
    assert without_local_rule(course, ("E-1",), ("E-8",)) == ()

    for codes, severity in (((), "warning"), (None, "note")):
        faults = marking_faults(course, without_local_rule(course, codes))
        assert [one.severity.value for one in faults] == [severity] * 4
        assert all(one.latitude and one.longitude for one in faults)
    bare = replace(
        course,
        features=tuple(
            one for one in course.features if one.kind not in (Kind.DROPPING_ZONE, Kind.NO_PLAY_ZONE)
        ),
    )
    assert without_local_rule(bare, ()) == ()


def test_the_marking_check_and_the_desk_say_it() -> None:
    """The marking check lists each zone with its place; the first page names those without effect, until they are in force."""
    found = [one for one in check_marking(COURSE, ("E-5",)).faults if one.check == "needs_local_rule"]
    assert {one.hole for one in found} == {17, 14, None}

    event = json.loads(EVENT.read_text(encoding="utf-8"))
    said = TestClient(create_app(COURSE, event | {"local_rules": ["E-5"]})).get("/").text
    assert "Dropping zone of the Cauldron" in said
    assert "Orchid ground" in said
    adopting = event | {"local_rules": ["E-1", "E-5", "E-8"]}
    assert read_event(adopting).local_rules == ("E-1", "E-5")
    now = TestClient(create_app(COURSE, adopting)).get("/").text
    assert "Dropping zone of the Cauldron" not in now
    assert "Orchid ground" not in now


def test_the_page_and_the_json_of_a_ruling_say_it() -> None:
    """The official who reads the ruling is told why the promised zone is not among its options."""
    client = TestClient(create_app())
    at = f"{IN_THE_CAULDRON[0]},{IN_THE_CAULDRON[1]}"
    query = f"what=ball_in_penalty_area&hole=17&ball={at}&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    assert "Dropping zone of the Cauldron" in client.get(f"/case?{query}").text
    assert "Cauldron" in client.get(f"/api/rule?{query}").json()["not_offered"]
    assert client.get(f"/api/rule?{query}&local=E-1").json()["not_offered"] is None
