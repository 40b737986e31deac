"""May I? Each answer is the ruling on the same act done; published rules give the expectations.

Sources: Rules of Golf 2023, 8.1a and 8.1b(4), 9.4b, 12.2b(1) and (2), 13.1b to 13.1e, 14.1c, 15.1a and b, 15.2a, 16.1a(2),
16.3a(1), 17.1b, 17.3, 18.1, 19.1; Model Local Rule E-2.
"""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as draw

import marram
from marram.errors import BadAnswer
from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.services.acts import ACTS
from marram.services.may import RELIEF, MayAnswer, MayAsk, Verdict, may
from marram.services.may_words import may_line
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


def test_a_local_rule_in_force_changes_the_answer() -> None:
    """Model Local Rule E-2: where it is in force the ball may be lifted and cleaned off the green too."""
    assert asked(Area.GENERAL_AREA)["clean"].verdict is Verdict.NO
    assert asked(Area.GENERAL_AREA, FormOfPlay.STROKE_PLAY, "E-2")["clean"].verdict is Verdict.YES


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
        if isinstance(done, NeedFacts) or answer.act in RELIEF:
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
