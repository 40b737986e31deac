"""An edition named without a day is the edition as clarified up to its last day; a day of play decides otherwise."""

import importlib
import pkgutil
from datetime import date

import pytest

import marram
from marram.errors import BadAnswer
from marram.rules import book, local_rules
from marram.rules.editions import EDITION_2023, LAST_CHANGE_KNOWN, as_clarified, clarified_to, day_of_edition
from marram.rules.local_rules.register import REGISTER


def test_an_edition_ends_the_day_before_the_next() -> None:
    """2019 stands for the last day of 2022; 2016, for teaching, for the last day of 2018."""
    assert day_of_edition(2019) == date(2022, 12, 31)
    assert day_of_edition("2016") == date(2018, 12, 31)
    assert day_of_edition(2021) is None


def test_the_edition_in_force_reaches_to_the_newest_change_known() -> None:
    """2023 is still in force: it stands for the day of the newest change to it known here."""
    assert as_clarified(EDITION_2023) == LAST_CHANGE_KNOWN


def test_no_change_in_the_book_is_newer_than_the_newest_known() -> None:
    """Every day that a provision or a Local Rule of the list begins is known to the editions."""
    days = [one.since for one in REGISTER.values() if one.since]
    for room in (book, local_rules):
        for found in pkgutil.walk_packages(room.__path__, f"{room.__name__}."):
            module = importlib.import_module(found.name)
            days += [value for value in vars(module).values() if type(value) is date]
    assert max(days) == LAST_CHANGE_KNOWN


def test_a_ruling_stands_on_the_clarifications_up_to_the_day_of_play() -> None:
    """A day within an edition reaches to that day, a day after everything known to the newest change."""
    assert clarified_to(date(2019, 1, 15)) == date(2019, 1, 15)
    assert clarified_to(date(2099, 1, 1)) == LAST_CHANGE_KNOWN


def test_an_edition_can_be_given_instead_of_a_day() -> None:
    """``edition=2019`` rules as on the last day of that edition, alone and in a story."""
    facts = {"cause_known": "yes", "area_of_ball": "putting_green", "movement_accidental": "yes"}
    by_edition = marram.rule("ball_moved_by_player", facts, edition=2019, form_of_play="stroke_play")
    by_day = marram.rule(
        "ball_moved_by_player", facts, played_on=date(2022, 12, 31), form_of_play="stroke_play"
    )
    assert by_edition == by_day
    story = marram.rule_story(
        [marram.Happened("ball_moved_by_player", facts)], edition="2019", form_of_play="stroke_play"
    )
    assert story.combined == by_day


@pytest.mark.parametrize(
    ("given", "message"),
    [
        ({}, "no day of play is given"),
        ({"edition": 2019, "played_on": date(2020, 1, 1)}, "both name a day"),
        ({"edition": 2021}, "2021 is no edition. Give one of 2019, 2023"),
    ],
)
def test_a_day_or_an_edition_and_not_both(given: dict[str, object], message: str) -> None:
    """Neither, both, or an edition that there is not: said, with what to give."""
    with pytest.raises(BadAnswer, match=message):
        marram.rule("ball_moved_by_player", {}, **given)  # type: ignore[arg-type]
