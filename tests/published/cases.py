"""Published cases as data: what is in a case file, how a result is compared with it.

A file ``rule_NN*.json`` (or ``former_rules.json``) holds a list of cases. Each case::

    {
      "name": "a sentence that says what happened",
      "source": "Rules of Golf 2019 and 2023, Rule 9.4b Exception 2",      where the expectation comes from
      "edition": "2016" (former Rules, teaching only) | "2019" | "2023" | "both" (2019 and 2023),
      "form": "stroke_play" | "match_play" | ... | ["stroke_play", "match_play"] | "any" | null,
      "sides": "four_ball",                         optional
      "local_rules": ["E-5"],                       optional; none in force when left out
      "incident": "ball_moved_by_player",
      "facts": {"area_of_ball": "bunker", ...},
      "expect": {
        "penalty": "none" | "1" | "2" | "general" | "disqualification" | "loss_of_hole" | list of these,
        "who": "player" | ... ,                     optional
        "action": "replace" | ...,                  optional, an Action value
        "stroke": "counts" | ...,                   optional, a Stroke value
        "which_ball": "original" | ...,             optional
        "options": [{"kind": ..., "penalty": 1, "club_lengths": 2, "reference": ..., "limits": [...]}],
                                                    optional: exactly these, in any order, on the keys given
        "notes": ["key", ...],                      optional: at least these
        "cautions": ["key", ...],                   optional: at least these
        "cites": ["9.4b", ...],                     optional: at least these
        "correct_until": "before_stroke" | ...,     optional: some correction has this deadline
        "otherwise": "general",                     optional: some correction ends in this penalty
        "needs": "fact_name",                       instead of the above: this is the next question
        "judgement": "1.2a"                         instead of the above: left to judgement under this provision
        "not_covered": "key"                        instead of the above: refused, for this reason
        "hand_over": "incident"                     instead of the above: it is rather this incident
      }
    }

``"day": "2025-06-01"`` beside an edition names the day of play, where one within the edition decides.
Every case says what is ruled (STRONG): notes and citations alone prove too little.

``form: "any"`` runs the case in stroke play and in match play; ``null`` leaves the form of play unknown.
Unknown keys are errors, so that a slip of the pen cannot make a case pass.
"""

import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

import pytest

import marram
from marram.rules.local_rules.register import REGISTER
from marram.rules.penalty import PenaltyKind
from marram.rules.result import NeedFacts
from marram.rules.ruling import HandOver, Judgement, NotCovered, Ruling

HERE = Path(__file__).parent
DAYS = {"2016": date(2017, 6, 1), "2019": date(2021, 6, 1), "2023": date(2024, 6, 1)}
CASE_KEYS = {
    "name",
    "source",
    "edition",
    "form",
    "local_rules",
    "sides",
    "incident",
    "facts",
    "expect",
    "day",
}
EXPECT_KEYS = {
    "penalty", "who", "action", "stroke", "which_ball", "options", "notes", "cautions", "cites",
    "correct_until", "otherwise", "needs", "judgement", "not_covered", "hand_over",
}  # fmt: skip
STRONG = EXPECT_KEYS - {"notes", "cautions", "cites"}
OPTION_KEYS = {"kind", "penalty", "club_lengths", "reference", "limits", "setting"}


@dataclass(frozen=True)
class PublishedCase:
    """One case in one edition and one form of play."""

    file: str
    raw: dict[str, Any]
    edition: str
    form: str | None

    @property
    def ident(self) -> str:
        return f"{self.file}::{self.raw['name']}::{self.edition}::{self.form}"

    def run(self) -> Any:
        return marram.rule(
            self.raw["incident"],
            self.raw["facts"],
            played_on=self.day,
            form_of_play=self.form,
            sides=self.raw.get("sides"),
            local_rules=self.raw.get("local_rules", []),
        )

    @property
    def day(self) -> date:
        """The day given; else that of the edition, or the first on which its Local Rules could be adopted, if later."""
        if "day" in self.raw:
            return date.fromisoformat(self.raw["day"])
        begun = [REGISTER[code].since for code in self.raw.get("local_rules", [])]
        return max([DAYS[self.edition], *(day for day in begun if day is not None)])


def all_cases() -> Iterator[PublishedCase]:
    """Yield every published case, in every edition and form of play it names."""
    for path in sorted(HERE.glob("*_*.json")):
        if path.name.startswith("shared"):
            continue
        for raw in json.loads(path.read_text(encoding="utf-8")):
            unknown = (raw.keys() - CASE_KEYS) | (raw["expect"].keys() - EXPECT_KEYS)
            assert not unknown, f"{path.name}: {raw['name']}: unknown keys {unknown}"
            assert raw["expect"].keys() & STRONG, (
                f"{path.name}: {raw['name']}: says nothing of the ruling itself"
            )
            assert raw["source"], f"{path.name}: {raw['name']}: no source"
            editions = ["2019", "2023"] if raw["edition"] == "both" else [raw["edition"]]
            forms = {"any": ["stroke_play", "match_play"], None: [None]}.get(
                raw["form"] if not isinstance(raw["form"], list) else "", raw["form"]
            )
            for edition in editions:
                for form in forms if isinstance(forms, list) else [forms]:
                    yield PublishedCase(path.name, raw, edition, form)


def penalty_words(result: Ruling) -> list[str]:
    """Return each penalty of a ruling as written in case files, sorted."""
    return sorted(
        str(penalty.strokes)
        if penalty.kind is PenaltyKind.STROKES
        else {"general_penalty": "general"}.get(penalty.kind.value, penalty.kind.value)
        for penalty in result.penalties
    )


def assert_as_expected(result: Any, expect: dict[str, Any]) -> None:
    """Compare a result with the expectation of a case; the message shows the whole result."""
    if "needs" in expect:
        assert isinstance(result, NeedFacts), result
        assert result.fact == expect["needs"], result
        return
    if "judgement" in expect:
        assert isinstance(result, Judgement), result
        assert result.citation == expect["judgement"], result
        return
    if "not_covered" in expect:
        assert isinstance(result, NotCovered), result
        assert result.why == expect["not_covered"], result
        return
    if "hand_over" in expect:
        assert isinstance(result, HandOver), result
        assert result.incident == expect["hand_over"], result
        return
    if isinstance(result, NeedFacts):
        pytest.fail(
            f"The case is open: {result.fact} is still asked. Answer it in the case's file.", pytrace=False
        )
    assert isinstance(result, Ruling), result
    if "penalty" in expect:
        wanted = expect["penalty"] if isinstance(expect["penalty"], list) else [expect["penalty"]]
        assert penalty_words(result) == sorted(one for one in wanted if one != "none"), result
    if "who" in expect:
        assert {penalty.who.value for penalty in result.penalties} == {expect["who"]}, result
    for key in ("action", "stroke", "which_ball"):
        if key in expect:
            value = getattr(result, key)
            assert (value.value if value else None) == expect[key], result
    for key, found in (("notes", result.notes), ("cautions", result.cautions), ("cites", result.citations)):
        missing = set(expect.get(key, ())) - set(found)
        assert not missing, (key, missing, result)
    if "correct_until" in expect:
        assert expect["correct_until"] in {one.until.value for one in result.corrections}, result
    if "otherwise" in expect:
        ends = [one.otherwise for one in result.corrections if one.otherwise]
        assert expect["otherwise"] in penalty_words(Ruling(penalties=tuple(ends))), result
    if "options" in expect:
        assert_options(result, expect["options"])


def assert_options(result: Ruling, wanted: list[dict[str, Any]]) -> None:
    """Assert that the relief options are exactly those wanted, on the keys given."""
    left = list(result.relief)
    for option in wanted:
        assert not option.keys() - OPTION_KEYS, option
        match = next((one for one in left if _fits(one, option)), None)
        assert match is not None, (option, result.relief)
        left.remove(match)
    assert not left, ("options not expected", left)


def _fits(option: Any, wanted: dict[str, Any]) -> bool:
    shown = {
        "kind": option.kind.value,
        "penalty": option.penalty,
        "club_lengths": option.club_lengths,
        "reference": option.reference.value,
        "limits": sorted(limit.value for limit in option.limits),
        "setting": option.setting.value,
    }
    return all(shown[key] == (sorted(value) if key == "limits" else value) for key, value in wanted.items())
