"""Who bears a penalty where players compete as sides (Rules 21.4, 22.2 and 23.9): of every incident, whatever is answered."""

from dataclasses import replace
from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import marram
from marram.errors import BadAnswer
from marram.rules.engine.conditions import conditions
from marram.rules.engine.export import graph_document
from marram.rules.engine.request import book_among
from marram.rules.engine.tree import Node
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.facts.conditions import sides as the_sides
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.among_sides import BY_RULE_21, BY_RULE_22, BY_RULE_23
from marram.rules.penalty import Penalty, PenaltyKind, Who
from marram.rules.ruling import Judgement, Ruling
from marram.rules.story.story import Happened, rule_story
from marram.words.sheet import sheet

DAYS = (date(2021, 6, 1), date(2024, 6, 1))
NAMES = [one.name for one in INCIDENTS if one.theme != "Teaching" and not one.name.startswith("teaching_")]
OF_OTHERS = {Who.OPPONENT, Who.OTHER_PLAYER, Who.OTHER_SIDE, Who.EACH_PLAYER, Who.EACH_SIDE}
MAY_BEAR = {
    Sides.FOURSOMES: {Who.SIDE, Who.OTHER_SIDE, Who.EACH_SIDE},
    Sides.FOUR_BALL: {Who.ONE_PARTNER, Who.EACH_PARTNER, Who.SIDE} | OF_OTHERS - {Who.OTHER_SIDE},
    Sides.BEST_OF_FOUR: {Who.ONE_PARTNER, Who.EACH_PARTNER, Who.SIDE} | OF_OTHERS - {Who.OTHER_SIDE},
}
REPLACED = {*BY_RULE_21, *BY_RULE_22, *BY_RULE_23}


@st.composite
def walks(draw: st.DrawFn) -> tuple[str, Sides, date, FormOfPlay, dict[str, Any], Any]:
    """Strategy: an incident with sides, and what an official may answer to its questions, one by one, to its end."""
    name, who = (
        draw(st.sampled_from(NAMES)),
        draw(st.sampled_from(sorted(MAY_BEAR, key=lambda one: one.value))),
    )
    day, form = draw(st.sampled_from(DAYS)), draw(st.sampled_from(list(FormOfPlay)))
    known = {**conditions(day, form, frozenset()), the_sides: who}
    facts: dict[str, Any] = {}
    here = book_among(name, who).root
    while isinstance(here, Node):
        if here.fact in known:
            here = here.follow(known[here.fact])
            continue
        index = draw(st.integers(0, len(here.branches) - 1))
        branch = here.branches[index]
        facts[here.fact.name] = (
            branch.answers[0]
            if branch.answers
            else branch.at_most
            if branch.at_most is not None
            else branch.above + 1
        )
        here = here.child(index)
    return name, who, day, form, facts, here


def costs(outcome: Any) -> list[Penalty]:
    """Return every penalty of an outcome, also those that threaten and those a judgement can end in."""
    if isinstance(outcome, Judgement):
        return [one for ending in outcome.outcomes for one in costs(ending)]
    if not isinstance(outcome, Ruling):
        return []
    later = [one.otherwise for one in outcome.corrections if one.otherwise is not None]
    return [*outcome.penalties, *later]


@settings(max_examples=400, deadline=None)
@given(walks())
def test_every_penalty_names_who_bears_it(
    walked: tuple[str, Sides, date, FormOfPlay, dict[str, Any], Any],
) -> None:
    """Among sides no penalty is just "the player's": it is one partner's, each partner's, a side's, or another's."""
    name, who, *_, outcome = walked

    assert {one.who for one in costs(outcome)} <= MAY_BEAR[who], (name, outcome)


@settings(max_examples=200, deadline=None)
@given(walks())
def test_who_plays_together_moves_the_bearer_only(
    walked: tuple[str, Sides, date, FormOfPlay, dict[str, Any], Any],
) -> None:
    """What a breach costs is what it costs a single player, but for disqualification, which may be for a hole only."""
    name, _, day, form, facts, outcome = walked
    if name in REPLACED or not isinstance(outcome, Ruling):
        return
    alone = marram.rule(
        name, {**facts, "sides": "individual"}, played_on=day, form_of_play=form, local_rules=[]
    )
    if not isinstance(alone, Ruling) or any(
        one.kind is PenaltyKind.DISQUALIFICATION for one in alone.penalties
    ):
        return

    assert [(one.kind, one.strokes) for one in outcome.penalties] == [
        (one.kind, one.strokes) for one in alone.penalties
    ]
    assert (outcome.action, outcome.relief, outcome.stroke) == (alone.action, alone.relief, alone.stroke)


@settings(max_examples=100, deadline=None)
@given(walks())
def test_the_interview_ends_where_the_tree_ends(
    walked: tuple[str, Sides, date, FormOfPlay, dict[str, Any], Any],
) -> None:
    """Asked with the sides by name, or as a fact, the same answers end in the same ruling."""
    name, who, day, form, facts, outcome = walked
    by_name = marram.rule(name, facts, played_on=day, form_of_play=form, sides=who, local_rules=[])
    as_fact = marram.rule(
        name, {**facts, "sides": who.value}, played_on=day, form_of_play=form, local_rules=[]
    )

    assert by_name == as_fact == outcome


TOLD_BOTH_WAYS = (
    ("too_many_clubs", {"excess_noticed": "brought_knowingly", "holes_with_breach": 2}, {"side_breach": "clubs", "holes_with_breach": 2}),
    ("advice_exchanged", {"advice_deed": "touched_equipment", "was_advice": "yes", "during_round": "yes", "whom_else": "helped_partner"}, {"side_breach": "general", "whom_else": "helped_partner"}),
    ("advice_exchanged", {"advice_deed": "touched_equipment", "was_advice": "yes", "during_round": "yes", "whom_else": "neither"}, {"side_breach": "general", "whom_else": "neither"}),
    ("wrong_ball_played", {"ball_struck": "wrong", "wrong_ball_moving_in_water": "no", "wrong_ball_corrected": "yes", "exchange_of_balls": "only_the_player"}, {"side_breach": "wrong_ball"}),
)  # fmt: skip


@pytest.mark.parametrize("day", DAYS)
@pytest.mark.parametrize("form", ["stroke_play", "match_play"])
@pytest.mark.parametrize(("incident", "facts", "as_question"), TOLD_BOTH_WAYS)
def test_told_once_ends_as_the_question_who_bears_it(
    incident: str, facts: dict[str, Any], as_question: dict[str, Any], form: str, day: date
) -> None:
    """The breach itself, ruled on in Four-Ball, and the incident that asks who bears it end alike."""
    told = marram.rule(incident, facts, played_on=day, form_of_play=form, sides="four_ball", local_rules=[])
    asked = marram.rule("four_ball_penalty", as_question, played_on=day, form_of_play=form, local_rules=[])

    assert isinstance(told, Ruling)
    assert isinstance(asked, Ruling)
    assert [(one.kind, one.strokes, one.who) for one in told.penalties] == [
        (one.kind, one.strokes, one.who) for one in asked.penalties
    ]


@pytest.mark.parametrize("form", ["stroke_play", "match_play"])
def test_a_breach_told_both_ways_in_a_story_counts_once(form: str) -> None:
    """A club too many in Four-Ball, told as such and as the question who bears it, is one breach."""
    _, facts, as_question = TOLD_BOTH_WAYS[0]
    acts = [Happened("too_many_clubs", facts), Happened("four_ball_penalty", as_question)]
    story = rule_story(acts, played_on=DAYS[1], form_of_play=form, sides="four_ball", local_rules=[])

    assert isinstance(story.combined, Ruling)
    expected = {"stroke_play": [(2, Who.EACH_PARTNER)] * 2, "match_play": [(2, Who.SIDE)]}[form]
    assert [(one.strokes, one.who) for one in story.combined.penalties] == expected


def test_three_ball_is_match_play() -> None:
    """Three-Ball in another form is refused; without a form of play it is a match."""
    clubs = TOLD_BOTH_WAYS[0][1]
    with pytest.raises(BadAnswer, match="three_ball is match play"):
        marram.rule(
            "too_many_clubs", clubs, played_on=DAYS[1], form_of_play="stroke_play", sides="three_ball"
        )
    result = marram.rule("too_many_clubs", clubs, played_on=DAYS[1], sides="three_ball", local_rules=[])

    assert isinstance(result, Ruling)
    assert [one.kind for one in result.penalties] == [PenaltyKind.HOLES_DEDUCTED]


def test_words_say_who_bears_it_and_that_the_partner_plays_on() -> None:
    """In a Four-Ball match the headline of a lost hole names the partner, and says that the other plays on."""
    facts = {**TOLD_BOTH_WAYS[2][1]}
    result = marram.rule(
        "advice_exchanged",
        facts,
        played_on=DAYS[1],
        form_of_play="match_play",
        sides="four_ball",
        local_rules=[],
    )
    words = sheet(result, form_of_play="match_play")

    assert "for this partner alone: the partner plays on for the side" in words.headline
    assert not any("no ball is played on" in step for step in words.steps)


def test_the_graph_goes_on_to_who_bears_it() -> None:
    """The exported graph of an incident with sides asks what decides the bearer; without sides it does not."""
    day = DAYS[1]
    asked = {
        who: {
            one["fact"] for one in graph_document("advice_exchanged", day, who)["vertices"] if "fact" in one
        }
        for who in (None, Sides.FOUR_BALL)
    }

    assert asked[Sides.FOUR_BALL] - asked[None] == {"whom_else", "form_of_play"}


@pytest.mark.parametrize(
    ("own", "shared", "expected"),
    [
        ("general", "one_stroke", [(2, Who.ONE_PARTNER), (1, Who.OTHER_PARTNER)]),
        ("one_stroke", "general", [(2, Who.EACH_PARTNER)]),
        ("general", "general", [(2, Who.EACH_PARTNER)]),
    ],
)
def test_partners_get_one_penalty_each_for_breaches_that_belong_together(
    own: str, shared: str, expected: list[tuple[int, Who]]
) -> None:
    """Two breaches without an intervening event, one of which helped the partner: each gets the highest that is theirs."""
    rulings = [
        marram.rule(
            "four_ball_penalty",
            {"side_breach": level, "whom_else": whom},
            played_on=DAYS[1],
            form_of_play="stroke_play",
            local_rules=[],
        )
        for level, whom in ((own, "neither"), (shared, "helped_partner"))
    ]
    total = marram.combine(
        [replace(one, citations=()) for one in rulings if isinstance(one, Ruling)],
        {"intervening_event_1": "no"},
        played_on=DAYS[1],
        form_of_play="stroke_play",
    )

    assert isinstance(total, Ruling)
    assert [(one.strokes, one.who) for one in total.penalties] == expected


@pytest.mark.parametrize("name", [one.name for one in INCIDENTS if one.rule.startswith(("22.", "23."))])
def test_in_three_ball_nobody_has_a_partner(name: str) -> None:
    """Rule 21.4a: what Rules 22 and 23 know of partners is refused where Three-Ball was told, and says what to do."""
    with pytest.raises(BadAnswer, match="in three_ball nobody has one"):
        marram.rule(name, {}, played_on=DAYS[1], form_of_play="match_play", sides="three_ball")
