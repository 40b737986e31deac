"""Adopting Local Rules on the command line."""

import json
from pathlib import Path

import pytest

from marram.rules.facts.conditions import LOCAL_RULES
from marram.words.texts import text as said
from tests.cli.running import Finished, marram
from tests.published.cases import PublishedCase
from tests.published.test_adopting_local_rules import changed_by

LATE_IN_EDITION = {"2019": "2022-12-31", "2023": "2026-06-01"}
"""Days on which every addition to the list of the edition so far stands."""


def ruled(case: PublishedCase, local_rules: list[str]) -> Finished:
    facts = [f"--fact={name}={value}" for name, value in case.raw["facts"].items()]
    form = [f"--form={case.form}"] if case.form else []
    adopted = [f"--local-rule={code}" for code in local_rules or ["none"]]
    day = f"--played-on={LATE_IN_EDITION[case.edition]}"
    return marram("rule", case.raw["incident"], day, *form, *facts, *adopted, "--json")


@pytest.mark.parametrize("code", LOCAL_RULES)
def test_adopting_it_changes_what_the_command_answers(code: str) -> None:
    """A published case under this Local Rule is answered otherwise without it, and the answer names it."""
    case = next(changed_by(code))
    adopted = case.raw["local_rules"]
    with_it, without = ruled(case, adopted), ruled(case, [one for one in adopted if one != code])

    answer = json.loads(with_it.out)
    assert answer["local_rules"] == adopted
    assert answer["result"] != json.loads(without.out)["result"]


def test_codes_that_exclude_each_other_are_refused_with_the_reason() -> None:
    """Exit code 2; what, why, and what to do; no ruling."""
    refused = marram(
        "rule", "caddie_against_local_rule", "--edition=2023", "--local-rule=H-1.1", "--local-rule=H-1.3"
    )

    assert refused.code == 2
    assert refused.out == ""
    assert "H-1.1 and H-1.3" in refused.err
    assert "every caddie is forbidden" in refused.err
    assert "Leave one of them out" in refused.err


def test_a_situation_refuses_them_too(tmp_path: Path) -> None:
    """The fault names the file and its key."""
    file = tmp_path / "situation.json"
    file.write_text(
        json.dumps(
            {"edition": "2023", "local_rules": ["D-4.1", "D-4.2"], "incidents": [{"incident": "wrong_green"}]}
        )
    )
    refused = marram("situation", str(file))

    assert refused.code == 2
    assert "local_rules: D-4.1 and D-4.2" in refused.err


def test_a_code_that_only_defines_something_is_named_among_those_in_force() -> None:
    """B-1 on a hard card is no error; the sheet names it with the rest."""
    answer = marram(
        "rule", "ball_in_penalty_area", "--edition=2023", "--local-rule=B-1.6", "--local-rule=B-2"
    )

    assert answer.code != 2
    assert said("cli.local", codes="B-1, B-2") in answer.out


def test_the_list_shows_each_area_and_how_far_each_code_is_worked_out() -> None:
    """An official sees at once what is worked out, what is not, and since when."""
    listed = marram("local-rules").out

    assert said("local_rules.area.K") in listed
    assert said("local_rules.not_computed") in listed
    assert said("local_rules.only_2019") in listed


def test_one_code_is_told_in_detail() -> None:
    """What it says, what it changes, its forms, what it cannot go with and why, what the entry rests on."""
    told = " ".join(marram("local-rules", "d-4.1", "B-2.2").out.split())

    assert "Not together with D-4.2" in told
    assert "Changes Rule 17.1d." in told
    assert "forms B-2.1, B-2.2" in told
    assert "on its opposite side" in told
    assert "rests on" in told
