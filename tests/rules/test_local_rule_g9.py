"""Local Rule G-9 by the text of the day: what damage is enough, and what may replace the club."""

from datetime import date
from typing import Any

import pytest

import marram
from marram.rules.ruling import Ruling

BEFORE_CRACKS, CRACKS, PARTS = date(2024, 8, 25), date(2025, 1, 1), date(2026, 2, 14)
CRACKED = {
    "after_damage": "replaced", "damaged_by": "player_not_abuse", "significantly_damaged": "no",
    "cracked_or_loose": "yes", "same_kind_of_club": "yes", "club_source": "elsewhere",
    "had_fourteen_clubs": "yes", "holes_with_breach": 1,
}  # fmt: skip


def replaced(day: date, local_rules: tuple[str, ...] = ("G-9",), **other: str) -> Any:
    return marram.rule(
        "club_damaged",
        {**CRACKED, **other},
        played_on=day,
        form_of_play="stroke_play",
        local_rules=local_rules,
    )


def allowed(day: date, local_rules: tuple[str, ...] = ("G-9",), **other: str) -> bool:
    ruling = replaced(day, local_rules, **other)
    assert isinstance(ruling, Ruling)
    return not ruling.penalties


def test_a_cracked_driver_could_not_be_replaced_in_2024() -> None:
    """M. Fitzpatrick, BMW Championship, 25 August 2024: a crack alone was not enough (pgatour.com)."""
    assert not allowed(BEFORE_CRACKS)


def test_since_2025_a_visible_crack_is_enough() -> None:
    """Text of G-9 from 1 January 2025, as Australian Golf Digest gives it."""
    assert allowed(CRACKS)
    assert not allowed(CRACKS, cracked_or_loose="no")


def test_without_the_local_rule_any_damage_but_abuse_is_enough() -> None:
    """Rule 4.1a(2) of 2023 asks for no amount of damage."""
    assert allowed(BEFORE_CRACKS, ())


@pytest.mark.parametrize(("day", "may"), [(BEFORE_CRACKS, True), (CRACKS, False)])
def test_since_2025_a_putter_does_not_replace_a_driver(day: date, may: bool) -> None:
    """The new club does what the damaged one did (PGA Tour on G-9, 16 December 2024)."""
    assert allowed(day, significantly_damaged="yes", same_kind_of_club="no") is may


@pytest.mark.parametrize(("day", "may"), [(date(2025, 12, 31), False), (PARTS, True)])
def test_since_2026_a_head_carried_in_the_bag_may_be_used(day: date, may: bool) -> None:
    """L. Åberg, Pebble Beach, 14 February 2026: a cracked head changed for the spare in the bag (Golf Channel)."""
    assert allowed(day, club_source="built_from_parts") is may


def test_without_the_local_rule_parts_carried_on_the_course_stay_forbidden() -> None:
    """Rule 4.1b(4) forbids building a club from parts carried by anyone for the player during the round."""
    assert not allowed(PARTS, (), club_source="built_from_parts")


def test_nothing_replaces_a_club_damaged_by_abuse() -> None:
    """Unchanged in every text of G-9."""
    assert not allowed(PARTS, damaged_by="abuse", significantly_damaged="yes")
