"""The verifier sees what is wrong: areas moved or grown by 5 mm, a limit dropped, a reference point 5 mm off.

Answers without a fault are spoilt, each in one way, and given to the verifier again.
"""

import copy
from collections import Counter
from dataclasses import replace

import numpy as np
import pytest
import shapely
from shapely.geometry import mapping, shape

from marram.relief.geometry.limits import Bound
from marram.rules.plain import as_plain
from marram.services.ground.relief import draw_options
from tests.relief.verifier.asking import asked, exported
from tests.relief.verifier.ball_places import ground_of
from tests.relief.verifier.balls import Balls
from tests.relief.verifier.check_answer import check_answer
from tests.relief.verifier.made_maps import made

BY = 0.005
"""Metres."""
DIRECTIONS = [(np.cos(a), np.sin(a)) for a in np.arange(8) * np.pi / 4]
KINDS = ("lateral", "free", "back_on_the_line", "stroke_and_distance", "extended")


@pytest.fixture(scope="module")
def answers(tmp_path_factory):
    """For each kind of relief a drawn answer without a fault: question, ground, marram's answer, what was exported."""
    file = made("several ways", tmp_path_factory.mktemp("made"))
    wet = made("islands", tmp_path_factory.mktemp("made"))
    found = {}
    for one in (wet, file):
        for question in Balls(one, None, seed=11).questions(40):
            if question.sort not in {"in a penalty area", "on a path", "unplayable", "lost (E-5)"}:
                continue
            asking = asked(question)
            for option in asking.options:
                name = option.kind.value
                if name in found or (name in {"lateral", "back_on_the_line"} and "17" not in option.citation):
                    continue
                (drawn,) = draw_options(asking.course, asking.ruled, [option])
                if not drawn.areas or drawn.areas[0].is_spot or drawn.areas[0].polygon.area < 0.5:
                    continue
                ground = ground_of(question.file, question.course, question.hole)
                answer = exported(drawn.answer, as_plain(option), asking.course)
                if drawn.areas[0].radius is None and name != "extended":
                    continue  # the teeing area as a whole
                found[name] = question, ground, drawn.answer, answer, asking.course
        if len(found) == len(KINDS):
            break
    return found


def seen(question, ground, answer):
    """What the verifier holds against an answer."""
    return [one.sort for one in check_answer(question, ground, answer, Counter())]


def moved(features, flat, by, roles=None):
    """Features moved by metres: all of them, or only the area and marks of some roles."""
    spoilt = copy.deepcopy(features)
    for one in spoilt:
        if (
            roles is None
            or one["properties"].get("role") in roles
            or one["properties"]["what"] == "relief_area"
        ):
            laid = flat.laid(shape(one["geometry"]))
            there = shapely.transform(laid, lambda points: points + by)
            one["geometry"] = mapping(shapely.transform(there, flat.degrees))
    return spoilt


@pytest.mark.parametrize("kind", KINDS)
def test_nothing_is_held_against_the_answers_as_they_are(answers, kind):
    """Before it is spoilt an answer has no fault."""
    question, ground, _, answer, _ = answers[kind]
    assert seen(question, ground, answer) == []


@pytest.mark.parametrize("kind", KINDS)
def test_an_area_moved_by_5_mm_is_seen(answers, kind):
    """The area alone, or its verdicts alone, moved by 5 mm: whatever the direction, it is seen."""
    question, ground, _, answer, _ = answers[kind]
    for direction in DIRECTIONS:
        by = BY * np.array(direction)
        drawn = replace(
            answer, features=tuple(moved(one, ground.flat, by, roles=()) for one in answer.features)
        )
        assert seen(question, ground, drawn), f"drawn moved {direction}"

        def accepts(places, ball=0.0, first=answer.accepts[0], by=by):
            return first(ground.flat.degrees(ground.flat.metres(places) - by), ball)

        judged = replace(answer, accepts=(accepts, *answer.accepts[1:]))
        assert seen(question, ground, judged), f"judged moved {direction}"


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("by", [BY, -BY])
def test_an_area_grown_or_shrunk_by_5_mm_is_seen(answers, kind, by):
    """The drawn area with an edge of 5 mm added or taken off is seen."""
    question, ground, _, answer, _ = answers[kind]
    features = copy.deepcopy(answer.features)
    area = ground.flat.laid(shape(features[0][0]["geometry"])).buffer(by)
    features[0][0]["geometry"] = mapping(shapely.transform(area, ground.flat.degrees))
    assert seen(question, ground, replace(answer, features=features))


@pytest.mark.parametrize("kind", KINDS)
def test_every_limit_dropped_is_seen(answers, kind):
    """Size, not nearer the hole, area of the course, complete relief: dropped one at a time, each is seen."""
    question, ground, drawn, answer, course = answers[kind]
    area = drawn.areas[0]
    tried = 0
    for bound in {one.bound for one in area.limits} - {Bound.ON_COURSE}:
        start = shapely.Point(area.reference).buffer(area.radius + 1) if bound is Bound.SIZE else area.start
        spoilt = replace(
            area, limits=tuple(one for one in area.limits if one.bound is not bound), start=start
        )
        if spoilt.polygon.symmetric_difference(area.polygon).area < 0.01:
            continue  # it limits nothing here
        tried += 1
        answered = exported(replace(drawn, areas=(spoilt,)), answer.option, course)
        assert seen(question, ground, answered), bound
    assert tried


@pytest.mark.parametrize(
    ("kind", "role"),
    [
        ("lateral", "crossing_point"),
        ("back_on_the_line", "crossing_point"),
        ("back_on_the_line", "example_spot"),
        ("stroke_and_distance", "previous_spot"),
        ("free", "reference"),
        ("extended", "ball"),
        ("extended", "fairway_point"),
    ],
)
def test_a_reference_point_off_by_5_mm_is_seen(answers, kind, role):
    """With the whole answer built on a reference point that is 5 mm off, it is seen: along the shift, for a nearest point."""
    question, ground, _, answer, _ = answers[kind]
    ball = ground.flat.metres([question.ball])[0]
    directions = DIRECTIONS
    if role in {"reference", "fairway_point"}:
        # The nearest point is judged by how far it is: what slides along an edge is as near to the last digit.
        point = next(one for one in answer.features[0] if one["properties"].get("role") == role)
        away = ground.flat.metres([point["geometry"]["coordinates"]])[0] - ball
        directions = [away / np.hypot(*away), -away / np.hypot(*away)]
    if role == "example_spot":  # any spot on the line will do, none beside it
        line = ground.flat.metres([question.crossing])[0] - ground.hole
        across = np.array((-line[1], line[0])) / np.hypot(*line)
        directions = [across, -across]
    for direction in directions:
        by = BY * np.array(direction)
        features = tuple(moved(one, ground.flat, by, roles={role, "stance"}) for one in answer.features)

        def accepts(places, ball=0.0, first=answer.accepts[0], by=by):
            return first(ground.flat.degrees(ground.flat.metres(places) - by), ball)

        assert seen(
            question, ground, replace(answer, features=features, accepts=(accepts,) * len(features))
        ), direction


def test_a_club_length_too_many_is_seen(answers):
    """An option that gives three club-lengths where the Rule gives two is seen."""
    question, ground, _, answer, _ = answers["lateral"]
    assert "club-lengths" in seen(
        question, ground, replace(answer, option={**answer.option, "club_lengths": 3})
    )


@pytest.mark.parametrize("kind", KINDS)
def test_a_ball_at_rest_judged_as_a_point_is_seen(answers, kind):
    """A ball lies where any part of it is, and not where any part is nearer the hole: judging its middle alone is seen."""
    question, ground, _, answer, _ = answers[kind]

    def accepts(places, ball=0.0):  # noqa: ARG001
        return answer.accepts[0](places)

    found = seen(question, ground, replace(answer, accepts=(accepts,) * len(answer.accepts)))
    assert any("ball at rest" in one for one in found)


def test_a_stance_on_the_wrong_side_is_seen(answers):
    """The answer to a right-handed player is none for a left-handed one."""
    question, ground, _, answer, _ = answers["free"]
    assert "stance" in seen(replace(question, right_handed=not question.right_handed), ground, answer)


def test_relief_said_not_to_exist_is_seen(answers):
    """No nearest point, where there is one; no room, where there is some."""
    for kind, why in (("free", "no_nearest_point"), ("lateral", "no_room")):
        question, ground, _, answer, _ = answers[kind]
        assert seen(question, ground, replace(answer, state="NoRelief", why=why))
