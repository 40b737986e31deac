"""The conditions of a competition are read strictly, refused with the reason where they contradict themselves, and written back."""

import json
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from marram.competition.conditions.choices import (
    CountbackStrokes,
    MaximumBy,
    Score,
    Target,
    TieMethod,
    Variation,
)
from marram.competition.conditions.reading import event_document, read_event_file
from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay, Sides

TWO_ROUNDS = [
    {"name": "First", "played_on": "2025-06-21"},
    {"name": "Second", "played_on": "2025-06-22"},
]

REFUSED: list[tuple[dict[str, Any], str]] = [
    ({"form_of_play": "stableford", "sides": "three_ball"}, "three_ball is match play (Rule 21.4a)"),
    (
        {"form_of_play": "stroke_play", "maximum": {"by": "strokes", "number": 10}},
        "only Maximum Score has one",
    ),
    ({"form_of_play": "maximum_score", "maximum": {"by": "strokes", "number": 0}}, "give a number above 0"),
    (
        {"scores": ["gross"], "maximum": {"by": "net_over_par", "number": 2}},
        "counted with handicap strokes, and only gross scores count",
    ),
    ({"form_of_play": "stroke_play", "target": "bogey"}, "no fixed target score"),
    ({"form_of_play": "stroke_play", "match_may_end_tied": True}, "match_may_end_tied is given"),
    ({"sides": "four_ball", "side_size": 3}, "of 2 to 2 players"),
    ({"sides": "individual", "scores_counting": 2}, "here each side has one"),
    ({"sides": "best_of_four", "scores_counting": 5}, "from 1 to 4"),
    ({"sides": "four_ball", "variation": "greensomes"}, "partners share a ball"),
    ({"sides": "foursomes", "variation": "scramble"}, "no Rule names the sides of a scramble"),
    ({"scores": ["gross"], "allowance": 95}, "only gross scores count"),
    ({"scores": ["net"], "allowance": 0}, "above 0 and up to 100"),
    ({"scores": ["net", "net"]}, "names one of them twice"),
    (
        {"form_of_play": "match_play", "cut": {"after_round": 1, "places": 8}},
        "in match play who loses is out",
    ),
    ({"rounds": TWO_ROUNDS, "cut": {"after_round": 2, "places": 60}}, "followed by another"),
    ({"rounds": TWO_ROUNDS, "cut": {"after_round": 1}}, "says nobody who plays on"),
    ({"scores": ["gross"], "cut": {"after_round": 1, "places": 3, "score": "net"}}, "which do not count"),
    (
        {"form_of_play": "match_play", "ties": {"first_place": ["countback"]}},
        "a match goes on hole by hole (Rule 3.2a(4))",
    ),
    ({"ties": {"first_place": ["shared", "countback"]}}, "so that countback is never reached"),
    ({"ties": {"first_place": ["countback", "countback"]}}, "stands twice"),
    ({"scores": ["gross"], "ties": {"first_place": ["lower_handicap"]}}, "needs handicaps"),
    ({"sides": "four_ball", "ties": {"first_place": ["lower_handicap"]}}, "each partner has one"),
    (
        {"sides": "foursomes", "variation": "greensomes", "scores": ["net"], "allowance": 50},
        "the shares of Appendix C",
    ),
    (
        {
            "form_of_play": "stableford",
            "ties": {"first_place": ["countback"], "countback_strokes": "exact_fraction"},
        },
        "whose results stand as they are",
    ),
    ({"ties": {"first_place": ["lot"], "countback_strokes": "exact_fraction"}}, "no cards are matched"),
    ({"divisions": [{"name": "A", "handicap_to": 12}, {"name": "B", "handicap_from": 12}]}, "overlap"),
    ({"divisions": [{"name": "A", "handicap_from": 12, "handicap_to": 3}]}, "nobody could play in it"),
    ({"divisions": [{"name": "A", "sex": "male"}, {"name": "A", "sex": "female"}]}, "stands twice"),
    ({"teams": {"size": 3, "counting": 4}}, "a team of 3"),
    (
        {"teams": {"size": 3, "counting": 2, "rounds": 3}, "played_on": "2025-06-21", "round": "Only"},
        "teams, rounds is 3, and there are 1 rounds",
    ),
    ({"minutes_of_play": 0}, "minutes_of_play is 0; give minutes from 1 to 1440"),
    (
        {"rounds": [{**TWO_ROUNDS[0], "minutes_of_play": 1441}]},
        "rounds 1, minutes_of_play is 1441; give minutes from 1 to 1440",
    ),
    (
        {
            "rounds": [
                {**TWO_ROUNDS[0], "minutes_of_play": 240},
                {**TWO_ROUNDS[0], "minutes_of_play": 270},
            ]
        },
        "the round of 2025-06-21 is given 240 / 270 minutes",
    ),
    (
        {
            "minutes_of_play": 240,
            "holes": list(range(1, 19)),
            "rounds": [
                TWO_ROUNDS[0],
                {**TWO_ROUNDS[1], "holes": list(range(1, 10)), "minutes_of_play": 250},
            ],
        },
        "'Second' is given 250 minutes for some of the holes that 'First' is given 240 for",
    ),
    ({"form_of_play": "match_play", "local_rules": ["L-1"]}, "L-1 concerns stroke play only"),
    ({"form_of_play": "stroke_play", "local_rules": ["I-1.1"]}, "I-1.1 concerns match play only"),
    ({"form_of_play": "stroke_play", "local_rules": ["H-5"]}, "H-5 concerns team competitions"),
    ({"holes": [1, 2, 2]}, "a hole stands twice"),
]


@pytest.mark.parametrize(
    ("document", "reason"), REFUSED, ids=lambda one: one[:40] if isinstance(one, str) else ""
)
def test_a_contradiction_is_refused_with_its_reason(document: dict[str, Any], reason: str) -> None:
    """Each contradiction is refused, and the sentence names why."""
    with pytest.raises(InputError) as refused:
        read_event_file(document)
    assert any(reason in fault for fault in refused.value.faults), refused.value.faults


def test_every_contradiction_is_told_at_once() -> None:
    """Conditions with several contradictions are refused once, with each of them."""
    with pytest.raises(InputError) as refused:
        read_event_file(
            {"form_of_play": "stroke_play", "target": "bogey", "scores": ["gross"], "allowance": 95}
        )
    assert len(refused.value.faults) == 2


def test_divisions_side_by_side_are_taken() -> None:
    """Divisions that meet without overlapping, or that differ otherwise, are no contradiction."""
    read_event_file(
        {
            "divisions": [
                {"name": "A", "handicap_to": 11.4},
                {"name": "B", "handicap_from": 11.5},
                {"name": "Seniors", "age_from": 55},
                {"name": "Women", "sex": "female"},
            ]
        }
    )


def ties() -> st.SearchStrategy[dict[str, Any]]:
    methods = st.lists(
        st.sampled_from([TieMethod.COUNTBACK, TieMethod.LOWER_HANDICAP]).map(lambda one: one.value),
        unique=True,
    )
    return st.fixed_dictionaries(
        {},
        optional={
            "first_place": methods.map(lambda some: [*some, "play_off"]),
            "other_places": methods.map(lambda some: [*some, "shared"]),
        },
    )


def holding_together(document: dict[str, Any]) -> dict[str, Any]:
    """Return a document without the one contradiction that its parts can make: a side of two handicaps has no lower one."""
    if document.get("sides") not in (Sides.FOUR_BALL.value, Sides.BEST_OF_FOUR.value):
        return document
    lower = TieMethod.LOWER_HANDICAP.value
    kept = {key: [one for one in some if one != lower] for key, some in document.get("ties", {}).items()}
    return {**document, "ties": kept} if kept else document


DOCUMENTS = st.fixed_dictionaries(
    {},
    optional={
        "name": st.text(max_size=10),
        "form_of_play": st.sampled_from(
            [one.value for one in FormOfPlay if one is not FormOfPlay.MATCH_PLAY]
        ),
        "sides": st.sampled_from([one.value for one in Sides if one is not Sides.THREE_BALL]),
        "scores": st.sampled_from([["gross", "net"], ["net"]]),
        "rounds": st.just(TWO_ROUNDS),
        "cut": st.fixed_dictionaries(
            {"after_round": st.just(1), "places": st.integers(1, 99)},
            optional={"ties": st.booleans(), "within": st.integers(0, 20)},
        ),
        "ties": ties(),
        "local_rules": st.sampled_from([[], ["E-5"], ["E-5", "E-8"]]),
        "players": st.lists(
            st.fixed_dictionaries(
                {"name": st.text(min_size=1, max_size=5).filter(str.strip)},
                optional={
                    "handicap_index": st.integers(-80, 540).map(lambda tenths: tenths / 10),
                    "sex": st.sampled_from(["female", "male"]),
                },
            ),
            max_size=3,
            unique_by=lambda one: " ".join(one["name"].casefold().split()),
        ),
        "code_of_conduct": st.just([{"about": "Clubs thrown", "penalties": ["warning", "one_stroke"]}]),
    },
).map(holding_together)


@settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(DOCUMENTS)
def test_what_was_read_is_written_back_and_reads_the_same(document: dict[str, Any]) -> None:
    """Reading what was written back gives the same conditions, also through JSON."""
    found = read_event_file(document)
    written = json.loads(json.dumps(event_document(found)))
    assert read_event_file(written) == found


def test_every_choice_can_be_read() -> None:
    """Every member of every choice is read from its own word."""
    for one in Score:
        assert read_event_file({"scores": [one.value]}).scores == (one,)
    for by in MaximumBy:
        found = read_event_file({"form_of_play": "maximum_score", "maximum": {"by": by.value, "number": 2}})
        assert found.maximum
        assert found.maximum.by is by
    for target in Target:
        assert read_event_file({"form_of_play": "par_bogey", "target": target.value}).target is target
    for strokes in CountbackStrokes:
        given_ = {"first_place": ["countback"], "countback_strokes": strokes.value}
        assert read_event_file({"ties": given_}).ties
    for variation in Variation:
        sides = {} if variation is Variation.SCRAMBLE else {"sides": "foursomes"}
        assert read_event_file({"variation": variation.value, **sides}).variation is variation
