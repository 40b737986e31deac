"""The former Rules stand beside the present ones in the incidents of teaching, and nowhere else."""

from datetime import date, timedelta

import pytest

import marram
from marram.errors import DateNotCovered
from marram.rules.book import rule_09_player, rule_10_making_a_stroke, rule_19_unplayable
from marram.rules.editions import (
    EDITION_2019,
    EDITIONS,
    FIRST_DAY,
    FORMER_RULES,
    GREEN_MOVEMENT_RULE,
    edition_of,
)
from marram.rules.engine.request import book
from marram.rules.engine.tree import grow, leaves_on
from marram.rules.incidents import INCIDENTS
from marram.rules.ruling import Judgement, NotCovered, Ruling
from marram.words.english import catalogue
from marram.words.sheet import sheet

TAUGHT = [one.name for one in INCIDENTS if one.covered_from < FIRST_DAY]
DAYS = (FORMER_RULES, GREEN_MOVEMENT_RULE, EDITION_2019 - timedelta(days=1))


def former(name: str) -> list[object]:
    return [leaf for day in DAYS for leaf in leaves_on(book(name).root, day)]


@pytest.mark.parametrize("name", TAUGHT)
def test_a_former_outcome_rests_on_former_provisions_that_have_words(name: str) -> None:
    """No present Rule is cited for a day before 2019, and every citation and note has its sentence."""
    said, notes = catalogue("PROVISIONS"), catalogue("NOTES")
    for leaf in former(name):
        assert isinstance(leaf, Ruling | NotCovered), leaf
        if isinstance(leaf, NotCovered):
            cited, keys = {leaf.citation}, {leaf.why}
        else:
            cited = {*leaf.citations, *(one.citation for one in (*leaf.penalties, *leaf.relief))}
            cited |= {one.otherwise.citation for one in leaf.corrections if one.otherwise}
            keys = {*leaf.notes, *(one.what for one in leaf.corrections)}
            assert leaf.action is not None, leaf
        assert all(one.startswith("former ") for one in cited), cited
        assert cited <= said.keys(), cited - said.keys()
        assert keys <= notes.keys(), keys - notes.keys()


@pytest.mark.parametrize("name", TAUGHT)
def test_a_present_outcome_rests_on_no_former_provision(name: str) -> None:
    """From 2019 on the incidents of teaching give the present Rules alone."""
    for day in EDITIONS:
        for leaf in leaves_on(book(name).root, day):
            cited = leaf.citations if isinstance(leaf, Ruling) else (leaf.citation,)
            assert not any(one.startswith("former") for one in cited), leaf


@pytest.mark.parametrize(
    ("name", "entry"),
    [
        ("teaching_double_hit", rule_10_making_a_stroke.hit_again_by_accident),
        ("teaching_ball_moved_on_green", rule_09_player.moved_by_accident_on_green),
        ("teaching_unplayable", rule_19_unplayable.unplayable_ball),
    ],
)
def test_the_present_rules_are_not_written_twice(name: str, entry: object) -> None:
    """For a day since 2019 a teaching incident ends exactly as the provision it shows."""
    for day in EDITIONS:
        shown = list(leaves_on(book(name).root, day))
        assert shown == list(leaves_on(grow(entry), day))  # type: ignore[arg-type]


def test_nothing_else_is_ruled_on_before_2019() -> None:
    """Every incident but those of teaching refuses the last day of 2018."""
    for one in INCIDENTS:
        if one.name not in TAUGHT:
            with pytest.raises(DateNotCovered, match="2018-12-31 is not covered"):
                marram.rule(one.name, {}, played_on=date(2018, 12, 31))


def test_a_day_before_the_former_rules_is_refused() -> None:
    """Days before 2016 are refused with the first day that is covered."""
    with pytest.raises(DateNotCovered, match="on or after 2016-01-01"):
        marram.rule("teaching_double_hit", {}, played_on=date(2015, 12, 31))


def test_penalties_are_not_combined_before_2019() -> None:
    """Rule 1.3c(4) is of 2019: combining rulings of an earlier day is refused."""
    day = date(2017, 6, 1)
    one = marram.rule("teaching_double_hit", {}, played_on=day)
    with pytest.raises(DateNotCovered):
        marram.combine([one, one], played_on=day)


def test_the_last_day_of_the_former_rules_and_the_first_of_2019() -> None:
    """A double hit costs its stroke on 31 December 2018 and nothing on 1 January 2019 (former 14-4, 10.1a)."""
    before = marram.rule("teaching_double_hit", {}, played_on=date(2018, 12, 31))
    since = marram.rule("teaching_double_hit", {}, played_on=date(2019, 1, 1))
    assert isinstance(before, Ruling)
    assert isinstance(since, Ruling)
    assert [one.strokes for one in before.penalties] == [1]
    assert not since.penalties
    assert edition_of(date(2018, 12, 31)) == FORMER_RULES


def test_the_local_rule_of_2017_is_not_asked_before_its_day() -> None:
    """The Local Rule on the putting green could be adopted from 1 January 2017 only."""
    facts = {"moved_in_allowed_act": "no"}
    in_2016 = marram.rule("teaching_ball_moved_on_green", facts, played_on=date(2016, 12, 31))
    in_2017 = marram.rule("teaching_ball_moved_on_green", facts, played_on=date(2017, 1, 1))
    assert isinstance(in_2016, Ruling)
    assert getattr(in_2017, "fact", None) == "green_movement_rule_adopted"


@pytest.mark.parametrize("name", TAUGHT)
def test_no_former_sheet_tells_to_drop_from_the_knee(name: str) -> None:
    """The words of a former option are those of its time: shoulder height."""
    for leaf in former(name):
        assert not isinstance(leaf, Judgement)
        words = sheet(leaf)  # type: ignore[arg-type]
        assert not any("knee" in option.how for option in words.options), words.options
