"""Sequences of incidents are combined as the published Rules and Clarifications say.

``situations.json`` holds a list of sequences, each with its source. The keys are those of a case file
(:mod:`tests.published.cases`), but ``incidents`` lists what happened in order, ``between`` what is known
between the incidents (an incident may also hold ``option``, what the player took of the relief offered), and ``total`` the penalty strokes in stroke play (``null``: disqualified). ``expect``
may also hold ``corrections``: exactly the mistakes that can still be corrected.
"""

import json
from typing import Any

import pytest

from marram.rules.ruling import Ruling
from marram.rules.story.story import Happened, rule_story, total_strokes
from tests.published.cases import DAYS, HERE, assert_as_expected

SEQUENCES = json.loads((HERE / "situations.json").read_text(encoding="utf-8"))
RUNS = [
    pytest.param(raw, edition, form, id=f"{raw['name']}::{edition}::{form}")
    for raw in SEQUENCES
    for edition in (["2019", "2023"] if raw["edition"] == "both" else [raw["edition"]])
    for form in (["stroke_play", "match_play"] if raw["form"] == "any" else [raw["form"]])
]


@pytest.mark.parametrize(("raw", "edition", "form"), RUNS)
def test_combined_as_published(raw: dict[str, Any], edition: str, form: str) -> None:
    """The penalties, their total, the ball, and until when which mistake may be corrected are as published."""
    result = rule_story(
        [Happened(one["incident"], one["facts"], one.get("option")) for one in raw["incidents"]],
        raw["between"],
        played_on=DAYS[edition],
        form_of_play=form,
        local_rules=[],
    ).combined

    assert isinstance(result, Ruling), result
    expect = dict(raw["expect"])
    if "corrections" in expect:
        assert [one.what for one in result.corrections] == expect.pop("corrections"), result
    assert_as_expected(result, expect)
    if "total" in raw:
        assert total_strokes(result) == raw["total"], result
