"""May I? Each answer is the ruling on the same act done; published rules give the expectations.

Sources: Rules of Golf 2023, 4.1b, 4.2c, 4.3a, 5.5, 5.7a, 6.2b, 6.3b, 7.3, 8.1a and 8.1b, 9.4b, 10.1 to 10.3, 12.2b(1) and (2),
13.1b to 13.1e, 13.2a, 14.1 to 14.3, 15.1a and b, 15.2a, 15.3, 16.1 to 16.4, 17.1b, 17.3, 18.1, 18.3a, 19.1; Model Local Rules
E-2, G-5 and I-2.
"""

from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

import marram
from marram.errors import BadAnswer
from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.penalty import Who
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.services.asked.acts import ACTS
from marram.services.asked.may import MayAnswer, MayAsk, Verdict, local_rules_that_decide, may
from marram.services.asked.may_words import may_line
from marram.words.headline import costs_something

ON = date(2024, 6, 1)

PUBLISHED = [
    ("loose", Area.GENERAL_AREA, Verdict.YES),  # 15.1a
    ("loose", Area.BUNKER, Verdict.YES),  # 12.2a
    ("loose", Area.PENALTY_AREA, Verdict.YES),  # 17.1b
    ("loose_moves_ball", Area.GENERAL_AREA, Verdict.NO),  # 15.1b: one stroke
    ("loose_moves_ball", Area.PUTTING_GREEN, Verdict.YES),  # 13.1d(1)
    ("obstruction", Area.BUNKER, Verdict.YES),  # 15.2a(1)
    ("ground_club", Area.BUNKER, Verdict.NO),  # 12.2b(1)
    ("ground_club", Area.PENALTY_AREA, Verdict.YES),  # 17.1b
    ("ground_club", Area.GENERAL_AREA, Verdict.YES),  # 8.1b(4)
    ("practice_swing", Area.BUNKER, Verdict.NO),  # 12.2b(1)
    ("dig_in", Area.BUNKER, Verdict.YES),  # 12.2b(2)
    ("smooth_sand", Area.BUNKER, Verdict.DEPENDS),  # 12.2b(2): unless it improves
    ("clean", Area.GENERAL_AREA, Verdict.NO),  # 9.4b
    ("clean", Area.PUTTING_GREEN, Verdict.YES),  # 13.1b
    ("repair", Area.PUTTING_GREEN, Verdict.YES),  # 13.1c(2)
    ("brush_sand", Area.PUTTING_GREEN, Verdict.YES),  # 13.1c(1)
    ("bend", Area.GENERAL_AREA, Verdict.NO),  # 8.1a(1)
    ("boundary_stake", Area.GENERAL_AREA, Verdict.NO),  # 8.1a(1)
    ("test_green", Area.PUTTING_GREEN, Verdict.NO),  # 13.1e
    ("unplayable", Area.GENERAL_AREA, Verdict.AT_A_COST),  # 19.1
    ("unplayable", Area.PENALTY_AREA, Verdict.NO_RELIEF),  # 17.3
    ("path", Area.GENERAL_AREA, Verdict.YES),  # 16.1b
    ("path", Area.PENALTY_AREA, Verdict.NO_RELIEF),  # 16.1a(2)
    ("embedded", Area.GENERAL_AREA, Verdict.YES),  # 16.3a(1)
    ("embedded", Area.BUNKER, Verdict.NO_RELIEF),  # 16.3a(1)
    ("again", Area.PENALTY_AREA, Verdict.AT_A_COST),  # 18.1
    ("tee_marker", Area.TEEING_AREA, Verdict.NO),  # 6.2b(4)
    ("tee_ground", Area.TEEING_AREA, Verdict.YES),  # 6.2b(3)
    ("dew", Area.TEEING_AREA, Verdict.YES),  # 6.2b(3)
    ("dew", Area.GENERAL_AREA, Verdict.NO),  # 8.1a(5)
    ("tee_again", Area.TEEING_AREA, Verdict.YES),  # 6.2b(5)
    ("stand_outside_tee", Area.TEEING_AREA, Verdict.YES),  # 6.2b(1)
    ("stance_in_bush", Area.GENERAL_AREA, Verdict.YES),  # 8.1b(2)
    ("press_behind", Area.GENERAL_AREA, Verdict.NO),  # 8.1a(3)
    ("backswing_sand", Area.BUNKER, Verdict.NO),  # 12.2b(1)
    ("test_sand", Area.BUNKER, Verdict.NO),  # 12.2b(1)
    ("lean_in_bunker", Area.BUNKER, Verdict.YES),  # 12.2b(2)
    ("roll_ball", Area.PUTTING_GREEN, Verdict.NO),  # 13.1e
    ("penalty_area", Area.PENALTY_AREA, Verdict.AT_A_COST),  # 17.1d
    ("path_on_line", Area.GENERAL_AREA, Verdict.NO_RELIEF),  # 16.1a(1)
    ("path_on_line", Area.PUTTING_GREEN, Verdict.YES),  # 16.1d
    ("water", Area.GENERAL_AREA, Verdict.YES),  # 16.1b
    ("bare_ground", Area.GENERAL_AREA, Verdict.NO_RELIEF),  # Definition of ground under repair
    ("fence", Area.GENERAL_AREA, Verdict.NO_RELIEF),  # Definition of boundary object
    ("animal", Area.GENERAL_AREA, Verdict.YES),  # 16.2b(1)
    ("lift_unmarked", Area.PUTTING_GREEN, Verdict.NO),  # 14.1a
    ("identify", Area.BUNKER, Verdict.YES),  # 7.3
    ("see_damage", Area.GENERAL_AREA, Verdict.YES),  # 4.2c(1)
    ("see_relief", Area.GENERAL_AREA, Verdict.YES),  # 16.4
    ("caddie_lifts", Area.PUTTING_GREEN, Verdict.YES),  # 14.1b Exception (2023)
    ("caddie_lifts", Area.GENERAL_AREA, Verdict.NO),  # 14.1b
    ("ask_to_lift", Area.GENERAL_AREA, Verdict.YES),  # 15.3b(2)
    ("lift_unasked", Area.GENERAL_AREA, Verdict.NO),  # 15.3b(2)
    ("leave_helping", Area.PUTTING_GREEN, Verdict.NO),  # 15.3a
    ("change_damaged", Area.GENERAL_AREA, Verdict.YES),  # 4.2c(2)
    ("change_scratched", Area.GENERAL_AREA, Verdict.NO),  # 4.2c(2), 6.3b(3)
    ("change_in_relief", Area.GENERAL_AREA, Verdict.YES),  # 6.3b(1)
    ("change_on_spot", Area.GENERAL_AREA, Verdict.NO),  # 14.2a
    ("provisional", Area.GENERAL_AREA, Verdict.YES),  # 18.3a
    ("provisional_for_water", Area.GENERAL_AREA, Verdict.NO),  # 18.3a
    ("moving_water", Area.PENALTY_AREA, Verdict.YES),  # 10.1d Exception 3
    ("stand_out_of_bounds", Area.GENERAL_AREA, Verdict.YES),  # 18.2a(2)
    ("drop_from_knee", Area.GENERAL_AREA, Verdict.YES),  # 14.3b(2)
    ("drop_from_shoulder", Area.GENERAL_AREA, Verdict.NO),  # 14.3b
    ("place_not_drop", Area.GENERAL_AREA, Verdict.NO),  # 14.3b
    ("caddie_drops", Area.GENERAL_AREA, Verdict.NO),  # 14.3b(1)
    ("ask_distance", Area.GENERAL_AREA, Verdict.YES),  # Definition of advice
    ("ask_club", Area.GENERAL_AREA, Verdict.NO),  # 10.2a
    ("ask_caddie", Area.GENERAL_AREA, Verdict.YES),  # 10.2a
    ("look_in_bag", Area.GENERAL_AREA, Verdict.YES),  # 10.2a
    ("lift_towel", Area.GENERAL_AREA, Verdict.NO),  # 10.2a
    ("show_line", Area.GENERAL_AREA, Verdict.NO),  # 10.2b(1)
    ("club_for_aim", Area.GENERAL_AREA, Verdict.NO),  # 10.2b(3)
    ("line_on_ball", Area.PUTTING_GREEN, Verdict.YES),  # 10.2b(3), Clarification
    ("caddie_behind", Area.GENERAL_AREA, Verdict.NO),  # 10.2b(4)
    ("umbrella", Area.GENERAL_AREA, Verdict.NO),  # 10.2b(5)
    ("straddle", Area.PUTTING_GREEN, Verdict.NO),  # 10.1c
    ("distance_device", Area.GENERAL_AREA, Verdict.YES),  # 4.3a(1)
    ("slope_device", Area.GENERAL_AREA, Verdict.NO),  # 4.3a(1)
    ("wind_device", Area.GENERAL_AREA, Verdict.NO),  # 4.3a(2)
    ("toss_grass", Area.GENERAL_AREA, Verdict.YES),  # 4.3a(2)
    ("music", Area.GENERAL_AREA, Verdict.NO),  # 4.3a(4)
    ("swing_aid", Area.GENERAL_AREA, Verdict.NO),  # 4.3a(6)
    ("borrow_club", Area.GENERAL_AREA, Verdict.NO),  # 4.1b(2)
    ("add_club", Area.GENERAL_AREA, Verdict.YES),  # 4.1b(1)
    ("practice_on_hole", Area.GENERAL_AREA, Verdict.NO),  # 5.5a
    ("practice_between", Area.PUTTING_GREEN, Verdict.YES),  # 5.5b
    ("practice_swing_off_ball", Area.GENERAL_AREA, Verdict.YES),  # 5.5a
    ("flagstick_in", Area.PUTTING_GREEN, Verdict.YES),  # 13.2a(2)
    ("flagstick_leant", Area.PUTTING_GREEN, Verdict.NO),  # 13.2a(1)
    ("stop_for_lightning", Area.GENERAL_AREA, Verdict.YES),  # 5.7a
    ("stop_for_rain", Area.GENERAL_AREA, Verdict.NO),  # 5.7a
    ("drop_over_there", Area.GENERAL_AREA, Verdict.NO),  # 14.7a
    ("clean_in_relief", Area.GENERAL_AREA, Verdict.YES),  # 14.1c
    ("repair_off_green", Area.GENERAL_AREA, Verdict.NO),  # 8.1a(3)
    ("repair_off_green", Area.PUTTING_GREEN, Verdict.NO),  # 8.1a(3): the fringe is no green
    ("tree_shaken", Area.GENERAL_AREA, Verdict.NO),  # 9.4b, Clarification 9.4a/1
    ("wrong_green", Area.GENERAL_AREA, Verdict.YES),  # 13.1f
    ("from_wrong_green", Area.GENERAL_AREA, Verdict.NO),  # 13.1f
    ("no_play_zone", Area.GENERAL_AREA, Verdict.YES),  # 16.1f(1)
    ("no_play_zone", Area.PENALTY_AREA, Verdict.NO_RELIEF),  # 17.1e(1)
    ("from_no_play_zone", Area.BUNKER, Verdict.NO),  # 16.1f(1)
    ("out_of_bunker", Area.BUNKER, Verdict.AT_A_COST),  # 16.1c(2)
    ("rake_in_motion", Area.GENERAL_AREA, Verdict.NO),  # 11.3, 15.2a Exception 2
    ("loose_in_motion", Area.PUTTING_GREEN, Verdict.NO),  # 11.3, 15.1a Exception 2
    ("press_in_motion", Area.GENERAL_AREA, Verdict.NO),  # 11.3
    ("flagstick_in_motion", Area.PUTTING_GREEN, Verdict.YES),  # 11.3 Exception
    ("bag_in_motion", Area.GENERAL_AREA, Verdict.YES),  # 11.3 Exception
    ("ball_in_motion", Area.PUTTING_GREEN, Verdict.YES),  # 11.3 Exception
    ("flagstick_out_in_motion", Area.PUTTING_GREEN, Verdict.NO),  # 13.2a(3)
    ("stop_putt", Area.PUTTING_GREEN, Verdict.NO),  # 11.2b
    ("wait_ten", Area.PUTTING_GREEN, Verdict.YES),  # 13.3a
    ("wait_longer", Area.PUTTING_GREEN, Verdict.NO),  # 13.3a
    ("play_on_at_once", Area.GENERAL_AREA, Verdict.NO),  # 5.7b(1)
    ("finish_hole", Area.GENERAL_AREA, Verdict.YES),  # 5.7b(2)
    ("begin_hole", Area.TEEING_AREA, Verdict.NO),  # 5.7b(2)
    ("lift_when_stopped", Area.BUNKER, Verdict.YES),  # 5.7d(1)
    ("leave_when_stopped", Area.GENERAL_AREA, Verdict.YES),  # 5.7d(1)
    ("practise_when_stopped", Area.GENERAL_AREA, Verdict.NO),  # 5.5c
    ("play_first", Area.GENERAL_AREA, Verdict.YES),  # 6.4b(2)
    ("marker_aside", Area.PUTTING_GREEN, Verdict.YES),  # 15.3c
    ("marker_stays_aside", Area.PUTTING_GREEN, Verdict.NO),  # 15.3c, 14.7a
]


def asked(area: Area, form: FormOfPlay = FormOfPlay.STROKE_PLAY, *local_rules: str) -> dict[str, MayAnswer]:
    """Return the answers at a place on a day of 2024, by act."""
    return {one.act: one for one in may(MayAsk(area, ON, form, local_rules))}


@pytest.mark.parametrize(("act", "area", "verdict"), PUBLISHED)
def test_an_act_is_answered_as_published(act: str, area: Area, verdict: Verdict) -> None:
    """What the Rules allow, forbid, charge for or leave to a fact is answered so before it is done."""
    assert asked(area)[act].verdict is verdict


def test_a_no_names_the_nearest_thing_that_is_allowed() -> None:
    """Rules 12.2b(1) and 17.1b: in a bunker sand may be touched in other ways; the club grounded in other areas."""
    answer = asked(Area.BUNKER)["ground_club"]
    assert answer.instead is not None
    assert answer.instead.fact == "sand_touch"
    assert Area.PENALTY_AREA in answer.elsewhere
    assert Area.BUNKER not in answer.elsewhere


def test_a_sprinkler_on_the_line_gives_relief_near_the_green_where_it_is_adopted() -> None:
    """Model Local Rule F-5; without it Rule 16.1a(1) gives none off the green."""
    assert asked(Area.GENERAL_AREA)["sprinkler_on_line"].verdict is Verdict.NO_RELIEF
    with_it = asked(Area.GENERAL_AREA, FormOfPlay.STROKE_PLAY, "F-5")
    assert with_it["sprinkler_on_line"].verdict is Verdict.YES
    assert (with_it["path_on_line"].verdict, with_it["path_on_line"].rather) == (
        Verdict.NO_RELIEF,
        "sprinkler_on_line",
    )


def test_out_of_turn_in_a_match_hangs_on_the_opponent() -> None:
    """Rule 6.4a(2): the opponent may cancel the stroke, but not where playing out of turn was agreed to save time."""
    match = asked(Area.GENERAL_AREA, FormOfPlay.MATCH_PLAY)
    assert (match["play_first"].verdict, match["play_first"].hangs_on) == (
        Verdict.DEPENDS,
        "agreed_out_of_turn",
    )
    assert match["play_first_agreed"].verdict is Verdict.YES


def test_a_local_rule_in_force_changes_the_answer() -> None:
    """Model Local Rule E-2: where it is in force the ball may be lifted and cleaned off the green too."""
    assert asked(Area.GENERAL_AREA)["clean"].verdict is Verdict.NO
    assert asked(Area.GENERAL_AREA, FormOfPlay.STROKE_PLAY, "E-2")["clean"].verdict is Verdict.YES


@pytest.mark.parametrize("area", list(Area))
def test_local_rules_nobody_told_of_are_asked_for_once_and_answered_both_ways(area: Area) -> None:
    """What depends on a Local Rule is what is answered with it and without it, and no act asks about one by itself."""
    unknown = may(MayAsk(area, ON, FormOfPlay.STROKE_PLAY, None))
    depending = [one for one in unknown if one.local_rule]
    assert local_rules_that_decide(unknown) == tuple(sorted({one.local_rule for one in depending}))
    assert {one.local_rule for one in depending} >= {"G-5", "G-8"}
    for one in depending:
        for told, codes in ((one.in_force, (one.local_rule,)), (one.not_in_force, ())):
            known = {other.act: other for other in may(MayAsk(area, ON, FormOfPlay.STROKE_PLAY, codes))}
            assert told is not None
            assert told.verdict is known[one.act].verdict, (one.act, codes)
            assert told.penalties == known[one.act].penalties
        assert f"Local Rule {one.local_rule}" in may_line(one, FormOfPlay.STROKE_PLAY).answer


@pytest.mark.parametrize("area", list(Area))
@pytest.mark.parametrize("day", [date(2021, 6, 1), ON])
@pytest.mark.parametrize("codes", [(), ("E-2", "G-5", "I-2"), ("F-6", "G-8")])
def test_every_no_has_its_reason_its_cost_and_the_nearest_thing_allowed(
    area: Area, day: date, codes: tuple[str, ...]
) -> None:
    """Whatever is not allowed, in stroke play and in a match: what the provision says, what it costs, and what is allowed instead."""
    for form in (FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY):
        answers = {one.act: one for one in may(MayAsk(area, day, form, codes))}
        for one in answers.values():
            line = may_line(one, form)
            if one.verdict in (Verdict.NO, Verdict.NO_RELIEF):
                assert line.reason, line
                assert line.instead, line
                assert one.instead or one.rather or one.elsewhere or "G-8" in codes, line
            if one.verdict is Verdict.NO:
                assert one.penalties, line
                assert all(one.penalties), line
            if one.rather:
                assert answers[one.rather].verdict in (Verdict.YES, Verdict.AT_A_COST), line


def test_no_act_is_asked_twice_in_one_area() -> None:
    """Each act has one way of being done in an area, words of its own, and a group; there are at least thirty."""
    for area in Area:
        names = [one.name for one in ACTS if area in one.areas]
        assert len(set(names)) == len(names)
    assert len({one.name for one in ACTS}) >= 30
    assert {one.name for one in ACTS} >= {name for one in ACTS for name in one.rather}


def test_what_an_act_takes_for_granted_is_told_and_an_answer_outweighs_it() -> None:
    """Rule 15.1b: a stone may be taken away if that does not move the ball; told that it does, the answer is no."""
    answer = asked(Area.GENERAL_AREA)["loose"]
    assert answer.granted == (("removal_moved_ball", "no"),)
    assert any("moved the player's ball" in one for one in may_line(answer, None).granted)
    told = {one.act: one for one in may(MayAsk(Area.GENERAL_AREA, ON, FormOfPlay.STROKE_PLAY, (), {
        "removal_moved_ball": "yes", "while_searching": "no", "applying_other_rule": "no"
    }))}["loose"]  # fmt: skip
    assert told.verdict is Verdict.NO
    assert told.granted == ()


def test_who_plays_together_decides_who_bears_what_an_act_costs() -> None:
    """Rule 22.2: in Foursomes what a partner may not do costs the side."""
    answers = may(MayAsk(Area.BUNKER, ON, FormOfPlay.STROKE_PLAY, (), sides=Sides.FOURSOMES))
    ground = {one.act: one for one in answers}["ground_club"]
    assert ground.verdict is Verdict.NO
    assert {penalty.who for way in ground.penalties for penalty in way} == {Who.SIDE}


def test_every_answer_has_words_and_a_provision() -> None:
    """No act is a key left bare, and each answer cites what decides it."""
    for area in Area:
        for one in may(MayAsk(area, ON, FormOfPlay.MATCH_PLAY)):
            line = may_line(one, FormOfPlay.MATCH_PLAY)
            assert not line.title.startswith("may.")
            assert line.citation, line
            assert line.answer


def test_a_fact_that_is_no_answer_is_refused() -> None:
    """A wrong fact is told as everywhere."""
    with pytest.raises(BadAnswer):
        may(MayAsk(Area.BUNKER, ON, facts={"sand_touch": "with_a_rake"}))


@settings(deadline=None)
@given(
    area=draw.sampled_from(list(Area)),
    day=draw.dates(date(2019, 1, 1), date(2030, 12, 31)),
    form=draw.sampled_from(list(FormOfPlay)),
)
def test_no_answer_contradicts_the_ruling_of_the_same_act_done(
    area: Area, day: date, form: FormOfPlay
) -> None:
    """Yes: the act done costs nothing. No: it costs a penalty. At a cost: the relief is offered for a penalty stroke."""
    acts = {one.name: one for one in ACTS if area in one.areas}
    for answer in may(MayAsk(area, day, form)):
        act = acts[answer.act]
        facts = {"area_of_ball": area.value, **act.facts}
        done = marram.rule(act.incident, facts, played_on=day, form_of_play=form, local_rules=[])
        assert done == answer.result
        if isinstance(done, NeedFacts) or act.relief:
            continue
        assert isinstance(done, Ruling)
        assert costs_something(done) == (answer.verdict is Verdict.NO), (answer, done)
        if answer.instead is not None:
            for other in answer.instead.answers:
                allowed = marram.rule(
                    act.incident,
                    {**facts, answer.instead.fact: other},
                    played_on=day,
                    form_of_play=form,
                    local_rules=[],
                )
                if isinstance(allowed, Ruling):
                    assert not costs_something(allowed)


@pytest.mark.parametrize(
    ("act", "area", "verdict", "citation"),
    [
        ("unplayable", Area.GENERAL_AREA, Verdict.AT_A_COST, "19.1"),
        ("path", Area.GENERAL_AREA, Verdict.YES, "16.1"),
        ("animal", Area.BUNKER, Verdict.YES, "16.2b(1)"),
        ("penalty_area", Area.PENALTY_AREA, Verdict.AT_A_COST, "17.1b"),
        ("unplayable", Area.PENALTY_AREA, Verdict.NO_RELIEF, "17.3"),
    ],
)
def test_a_dropping_zone_nobody_told_of_leaves_relief_what_it_is(
    act: str, area: Area, verdict: Verdict, citation: str
) -> None:
    """Model Local Rule E-1 says where relief may be taken, not whether: with no Local Rules told, the answer stands."""
    answers = {one.act: one for one in may(MayAsk(area, ON, FormOfPlay.STROKE_PLAY, None))}
    assert (answers[act].verdict, answers[act].citation) == (verdict, citation)
