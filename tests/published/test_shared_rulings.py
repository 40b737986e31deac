"""Each of the published rulings kept beside the repository is decided as published."""

from typing import Any

import pytest

import marram
from marram.rules.penalty import PenaltyKind
from marram.rules.ruling import Ruling, Stroke
from tests.published.shared import (
    ACTIONS,
    DAYS,
    assert_same_options,
    assert_same_penalty,
    published,
    runs,
    translations,
)

PUBLISHED = {case["id"]: case for case in published()}
TRANSLATED = translations()
RUNS = list(runs())


def decide(translation: dict[str, Any], edition: str, form: str) -> Any:
    conditions: dict[str, Any] = {
        "played_on": DAYS[edition],
        "form_of_play": form,
        "local_rules": translation.get("local_rules", []),
    }
    if "combine" in translation:
        parts = [
            marram.rule(part["incident"], part["facts"], **conditions) for part in translation["combine"]
        ]
        return marram.combine(parts, translation.get("facts", {}), played_on=DAYS[edition])
    return marram.rule(translation["incident"], translation["facts"], **conditions)


@pytest.mark.parametrize(("ident", "edition", "form"), RUNS)
def test_decided_as_published(ident: str, edition: str, form: str) -> None:
    """Penalty, who gets it, what happens next and the relief options are those of the published ruling."""
    wanted, translation = PUBLISHED[ident]["ruling"], TRANSLATED[ident]
    result = decide(translation, edition, form)

    assert isinstance(result, Ruling), result
    assert_same_penalty(result, wanted, translation.get("incurred", 0))
    if wanted["penalised"] == "other player":
        assert {one.who.value for one in result.penalties} <= {"other_player", "opponent"}, result
    elif wanted["penalised"] in ("player", "side"):
        assert {one.who.value for one in result.penalties} <= {"player", "side", "each_player"}, result
    lost = any(one.kind is PenaltyKind.GENERAL for one in result.penalties) and form == "match_play"
    if wanted["next"] in ACTIONS and not lost:
        assert result.action is not None
        assert result.action.value in ACTIONS[wanted["next"]], result
    if wanted["next"].startswith("stroke counts") and not lost:
        assert result.stroke in (Stroke.COUNTS, None), result
    if wanted.get("options"):
        assert_same_options(result, wanted["options"])


def test_each_translation_belongs_to_a_published_ruling() -> None:
    """No translation names a ruling that was not published."""
    assert not TRANSLATED.keys() - PUBLISHED.keys()


def test_every_published_ruling_is_translated() -> None:
    """All of them are decided here; none is left out because it is awkward."""
    assert not PUBLISHED.keys() - TRANSLATED.keys()
