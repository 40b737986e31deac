"""What is told beside a ruling: the way to it as a picture, the principle behind it, what players commonly believe."""

from random import Random
from xml.etree import ElementTree as ET

import pytest

from marram.teach.beliefs.belief import Belief
from marram.teach.beliefs.telling import BELIEFS, believed_of
from marram.teach.book.contents import entries
from marram.teach.book.permanent import situation_at
from marram.teach.explaining import explain
from marram.teach.pathway import path_svg
from marram.teach.principles import principle_behind
from marram.teach.situations.sampling import situation
from marram.teach.situations.situation import Situation
from tests.cli.running import marram


def _with(one: Belief, lot: int) -> Situation | None:
    """A situation that a belief is about; ``None`` where the lot gives another."""
    found = situation(one.about[lot % len(one.about)], Random(lot))
    if found is None or any(str(found.facts.get(name)) != str(to) for name, to in one.when.items()):
        return None
    return found


@pytest.mark.parametrize("one", BELIEFS, ids=lambda one: one.key)
def test_every_belief_is_computed_and_is_not_the_ruling(one: Belief) -> None:
    """Somewhere each of the list is told, with an outcome that the engine gives and the ruling is not."""
    told = None
    for lot in range(400):
        there = _with(one, lot)
        if there is None:
            continue
        found = believed_of(
            there.incident, there.facts, there.headline, form=there.form, played_on=there.played_on
        )
        told = next((each for each in found if each.key == one.key), None)
        if told:
            assert all(there.headline not in line for line in told.computed)
            break
    assert told, one.key


def test_a_belief_is_never_told_where_it_does_not_belong() -> None:
    """A ball wholly out of bounds has no belief about a ball that touches the line."""
    out = situation_at("ball_near_boundary", [("form", "stroke_play"), ("all_of_ball_out_of_bounds", "yes"), ("provisional_state", "not_played"), ("local_rule_e_5", "no"), ("last_stroke_from_penalty_area", "no")])  # fmt: skip
    assert not believed_of(out.incident, out.facts, out.headline, form=out.form, played_on=out.played_on)


def test_every_rule_has_a_principle() -> None:
    """Each provision that rulings rest on below Rules 1 to 25 has one behind it, and a longer number goes first."""
    missing = [one for one in entries().values() if one.rule and not principle_behind(one.citation)]
    assert not [one.citation for one in missing]
    assert principle_behind("16.2a") == "danger"
    assert principle_behind("16.1a(3)") == principle_behind("Clarification 16.1/1") == "free_relief"
    assert principle_behind("E-5.2") == "local"


@pytest.mark.parametrize("wide", [False, True])
def test_the_picture_of_the_way_holds_every_question_that_decided(wide: bool) -> None:
    """Questions, answers, and the ruling stand in it; nothing leaves the picture at the right."""
    one = situation_at("ball_near_boundary", [("form", "stroke_play"), ("all_of_ball_out_of_bounds", "no")])
    why = explain(one.incident, one.facts, played_on=one.played_on, form_of_play=one.form)
    drawn = path_svg(why, wide=wide)
    svg = ET.fromstring(drawn)
    words = " ".join("".join(each.itertext()) for each in svg.iter("{http://www.w3.org/2000/svg}text"))
    assert "Does all of the ball lie outside the boundary edge?" in words
    assert "In bounds: no penalty; play it as it lies." in words
    assert "Otherwise: yes" in words
    width = float(svg.attrib["viewBox"].split()[2])
    for each in svg.iter("{http://www.w3.org/2000/svg}rect"):
        assert float(each.attrib["x"]) + float(each.attrib["width"]) <= width


def test_branches_leave_the_way_itself_on_a_slide() -> None:
    """Questions end before the way in the middle; what leaves it starts at its dots and crosses no words."""
    one = situation_at("ball_near_boundary", [("form", "stroke_play"), ("all_of_ball_out_of_bounds", "no")])
    svg = ET.fromstring(
        path_svg(explain(one.incident, one.facts, played_on=one.played_on, form_of_play=one.form), wide=True)
    )
    name = "{http://www.w3.org/2000/svg}"
    dots = [float(each.attrib["cx"]) for each in svg.iter(f"{name}circle")]
    asked = [float(each.attrib["x"]) for each in svg.iter(f"{name}text") if each.get("text-anchor") == "end"]
    starts = [
        float(each.attrib["d"][1:].split()[0])
        for each in svg.iter(f"{name}path")
        if each.get("fill") == "none"
    ]
    assert len(set(dots)) == 1
    assert asked
    assert starts
    assert all(one < dots[0] - 11 for one in asked)
    assert all(dots[0] < one < dots[0] + 20 for one in starts)


def test_the_shell_tells_the_lesson_and_draws_the_way(tmp_path) -> None:
    """The principle and the belief stand among the lines; the picture is written where it was asked for."""
    file = tmp_path / "way.svg"
    asked = ("why", "ball_near_boundary", "--fact", "all_of_ball_out_of_bounds=no", "--form", "stroke_play")
    told = " ".join(marram(*asked, "--svg", str(file)).out.split())
    assert "that touches the line is out" in told
    assert ET.fromstring(file.read_text(encoding="utf-8")).tag.endswith("svg")
