"""Why a ruling: what decided it is what another answer would have changed."""

import json
from datetime import date
from random import Random
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from marram.errors import InputError
from marram.rules.engine.request import fact_named, rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.result import NeedFacts
from marram.teach.explaining import explain
from marram.words.language import translate
from marram.words.sheet import sheet
from tests.cli.running import marram

DAY = date(2024, 5, 1)
STROKE_PLAY = FormOfPlay.STROKE_PLAY
INCIDENTS = ("embedded_ball", "ball_moved_by_player", "putt_hit_something", "club_damaged", "wrong_green")


def line(incident, facts) -> str:
    return sheet(
        rule(incident, facts, played_on=DAY, form_of_play=STROKE_PLAY, local_rules=()),
        form_of_play=STROKE_PLAY,
    ).headline


@st.composite
def situations(draw):
    """An incident with every fact that its ruling needs, answered at random."""
    incident, facts = draw(st.sampled_from(INCIDENTS)), {}
    while True:
        result = rule(incident, facts, played_on=DAY, form_of_play=STROKE_PLAY, local_rules=())
        if not isinstance(result, NeedFacts):
            return incident, facts
        fact = fact_named(result.fact)
        facts[fact.name] = draw(
            st.sampled_from(list(fact.tokens())) if fact.answers else st.integers(min_value=1, max_value=20)
        )


@given(situations())
@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_an_answer_that_leads_to_one_ruling_leads_there(situation) -> None:
    """Where another answer is said to lead to one ruling, ruling with it gives that one or asks on towards it."""
    incident, facts = situation
    why = explain(incident, facts, played_on=DAY, form_of_play=STROKE_PLAY, local_rules=())

    assert why.headline == line(incident, facts)
    for one in why.decided:
        fact = fact_named(one.fact)
        for other in one.instead:
            assert other.rulings
            assert other.same == (other.rulings == (why.headline,) and not other.more)
            if not fact.answers or len(other.rulings) > 1 or one.fact not in facts:
                continue
            by_words = {words: fact.token(answer) for answer, words in fact.answers.items()}
            for answer in other.answers:
                result = rule(
                    incident, {**facts, one.fact: by_words[answer]}, played_on=DAY, form_of_play=STROKE_PLAY, local_rules=(),
                )  # fmt: skip
                if not isinstance(result, NeedFacts):
                    assert sheet(result, form_of_play=STROKE_PLAY).headline == other.rulings[0]


def test_the_double_hit_of_a_putt_names_what_would_have_cost() -> None:
    """Rule 11.1a: a putt that hits a ball at rest costs two strokes in stroke play only if both lay on the green."""
    why = explain(
        "putt_hit_something",
        {"putt_hit": "ball_at_rest", "both_on_green": "yes"},
        played_on=DAY,
        form_of_play=STROKE_PLAY,
        local_rules=(),
    )
    both = next(one for one in why.decided if one.fact == "both_on_green")

    assert both.matters
    assert "no penalty" in both.instead[0].rulings[0].lower()


def test_what_is_open_is_said_and_nothing_explained() -> None:
    """Unknown is unknown: without a ruling there is nothing to explain."""
    with pytest.raises(InputError, match="area_of_ball"):
        explain("embedded_ball", {}, played_on=DAY)


def test_the_command_tells_it_and_gives_it_as_json() -> None:
    """`marram why` says what decided a ruling; with --json the same as data."""
    asked = (
        "why", "putt_hit_something", "--edition", "2023", "--form", "stroke_play", "--local-rule", "none",
        "--fact", "putt_hit=ball_at_rest", "--fact", "both_on_green=yes",
    )  # fmt: skip
    assert "What decided it" in marram(*asked).out
    document = json.loads(marram(*asked, "--json").out)
    assert document["kind"] == "explanation"
    assert {"fact", "told", "citation", "instead"} <= set(document["decided"][0])


def test_another_form_of_play_is_told_in_its_own_penalties() -> None:
    """A wrong ball in a match loses the hole; in stroke play nothing does (Rule 6.3c(1))."""
    facts = {
        "ball_struck": "wrong",
        "wrong_ball_moving_in_water": "no",
        "exchange_of_balls": "only_the_player",
    }
    why = explain("wrong_ball_played", facts, played_on=DAY, form_of_play=FormOfPlay.MATCH_PLAY)
    assert why.headline == "Loss of hole (the general penalty): the hole is over."
    (form,) = (one for one in why.decided if one.fact == "form_of_play")
    lines = [line for one in form.instead for line in one.rulings]
    assert lines
    assert not [one for one in lines if "Loss of hole" in one]


def test_another_answer_is_told_by_what_it_rests_on_itself() -> None:
    """Rule 10.2b(2) Exception: who attends the flagstick may stand there. Equal outcomes are one in the graph, and what was
    asked before must not change what is told of another way."""
    facts = {"area_of_ball": "putting_green", "shown_by_own_side": "yes", "line_shown_by": "object"}
    day = date(2025, 7, 1)

    def told() -> tuple[str, ...]:
        found = explain("line_of_play_shown", facts, played_on=day, form_of_play=FormOfPlay.STROKE_PLAY)
        shown = next(one for one in found.decided if one.fact == "line_shown_by")
        return next(one.rulings for one in shown.instead if one.answers[0].startswith("a person"))

    first = told()
    for still in ("yes", "no"):
        rule(
            "line_of_play_shown",
            {**facts, "line_shown_by": "person", "still_there_in_stroke": still},
            played_on=day,
        )
    assert told() == first
    assert len(set(first)) == 3
    assert any("The stroke counts: no penalty" in one for one in first)


@pytest.mark.parametrize(
    "name", ["ball_not_found", "ball_in_penalty_area", "line_of_play_shown", "played_out_of_turn"]
)
def test_where_another_answer_leads_is_where_the_interview_leads(name: str) -> None:
    """Each other answer, with whatever else is then asked answered by lot, ends in a ruling that is told beside it."""
    day, form = date(2025, 7, 1), FormOfPlay.STROKE_PLAY
    for seed in range(6):
        lot = Random(seed)
        facts, _ = asked_on(name, {}, day, form, lot)
        found = explain(name, facts, played_on=day, form_of_play=form)
        for one in found.decided:
            fact = fact_named(one.fact)
            for token in fact.tokens() if fact.answers and one.fact != "form_of_play" else ():
                words = translate()(fact.answers[fact.parse(token)])
                told = next((each for each in one.instead if words in each.answers), None)
                if told is None or told.more:
                    continue
                _, ended = asked_on(name, {**facts, one.fact: token}, day, form, lot)
                assert sheet(ended, form_of_play=form).headline in told.rulings, (one.fact, token)


def asked_on(
    name: str, known: dict[str, Any], day: date, form: FormOfPlay, lot: Random
) -> tuple[dict[str, Any], Any]:
    """Answer what is asked by lot until there is an outcome; return the facts it rests on, and it."""
    known = dict(known)
    while isinstance(found := rule(name, known, played_on=day, form_of_play=form), NeedFacts):
        fact = fact_named(found.fact)
        known[found.fact] = lot.choice(list(fact.tokens())) if fact.answers else lot.randint(1, 6)
    rests_on = {reason.fact for reason in found.reasons}
    return {fact: answer for fact, answer in known.items() if fact in rests_on}, found
