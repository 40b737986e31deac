"""What changed between editions: found in the book, told in words, and compared with the published lists."""

import json
from datetime import date, timedelta
from itertools import pairwise

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from marram import changes as changes_told
from marram.errors import InputError
from marram.rules.editions import (
    CLARIFIED_ON,
    EDITION_2019,
    EDITION_2023,
    EDITIONS,
    FORMER_RULES,
    as_clarified,
)
from marram.rules.engine.changes import changes, substance
from marram.rules.engine.counting import days_of
from marram.rules.engine.request import rule
from marram.rules.engine.turning_points import TurningPoint, turning_points
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.incident import Incident
from marram.rules.ruling import Action, Ruling
from marram.teach.situations.fitting_together import contradict
from marram.teach.what_changed import kept as kept_changes
from marram.teach.what_changed.grouping import key_of, walked
from marram.teach.what_changed.kept import CLARIFICATIONS, FILE, OTHER_PAIRS, PAIRS, found, found_now
from marram.teach.what_changed.register import BY_KEY, BY_PLACE, SINCE_2019, SINCE_2023
from marram.teach.what_changed.telling import SEVERAL_BREACHES, told
from tests.cli.running import marram as marram_command

DAYS_2023 = as_clarified(EDITION_2019), as_clarified(EDITION_2023)
DAYS_2019 = as_clarified(FORMER_RULES), as_clarified(EDITION_2019)

PRINCIPAL_2023 = {
    "1.3c(4) whether breaches are related no longer matters": SEVERAL_BREACHES,
    "3.3b(4) no handicap needed on the scorecard": "handicap_on_the_card",
    "4.1a(2) a damaged club may be replaced, unless abused": "damaged_club",
    "6.3b(3) one stroke for an incorrectly substituted ball": "substituted_ball",
    "9.3 Exception 2": "natural_forces",
    "10.2b(1)-(3) no object set down": "object_set_down",
    "11.1b a putt that hits the player or an insect": "putt_hits_player_or_insect",
    "back-on-the-line relief": "back_on_the_line",
    "21.1c and 21.3c penalties applied to the hole": "totals_in_other_forms",
    "25 players with disabilities": "players_with_disabilities",
}
"""The list that the governing bodies published as "Principal Changes Introduced in the 2023 Rules of Golf".

Read to Rule 11.1b at the USGA's page of that name; back-on-the-line relief and Rule 25 in an association's summary
(Victorian Open, "2023 changes to the Rules of Golf"); 21.1c and 21.3c from memory.
"""

PUBLISHED_2019 = {
    "three minutes to search": "search_time",
    "no penalty for moving the ball in a search": "moved_in_search",
    "embedded ball relief in the general area": "embedded_ball",
    "a club-length is of the longest club but the putter": "club_length",
    "drop from knee height": "dropping",
    "no stance on a wrong green": "wrong_green",
    "hitting one's own equipment by accident": "ball_hits_own_side",
    "double hit": "double_hit",
    "touching sand": "sand_touched",
    "loose impediments anywhere": "loose_impediments_in_bunkers",
    "unplayable ball in a bunker, outside for two strokes": "unplayable",
    "penalty areas": "penalty_areas",
    "the ground of a penalty area may be touched": "ground_touched_in_penalty_area",
    "moving the ball on the green by accident": "moved_on_green",
    "damage on the green may be repaired": "damage_on_green",
    "no help of a caddie in lining up": "caddie_lined_up",
    "hitting the flagstick in the hole": "flagstick",
    "a ball wedged against the flagstick": "against_flagstick",
    "a replaced ball that natural forces move on the green": "blown_after_replacing",
    "a club laid down for alignment": "club_laid_down",
}
"""A golf club's "20 Must Know Rules Changes for 2019" (newburygolf.co.uk): all twenty."""


def examples() -> dict[str, dict[str, object]]:
    """Return the example of each change that is kept, by its name and the later year."""
    return {
        f"{later}:{one.key}": {**one.example.facts, "incident": one.example.incident}
        for later, days in ((2019, DAYS_2019), (2023, DAYS_2023))
        for one in found(*days)
    }


def test_no_example_tells_what_cannot_be() -> None:
    """By geometry, a ball no nearer than the point behind is no nearer than where the line starts; in time, likewise."""
    shown = examples()
    assert shown
    assert [name for name, facts in shown.items() if contradict(facts)] == []


def test_examples_show_what_their_sentences_say() -> None:
    """A drop in the open, the Local Rule adopted, a repair without delay, and a caddie who goes in time."""
    shown = examples()
    line = shown["2023:back_on_the_line"]
    assert (line["deflection_of_drop"], line["rest_nearer_than_chosen_point"]) == ("nothing", "yes")
    assert line["rest_nearer_than_start_of_line"] == "no"
    assert shown["2019:lost_or_out"]["local_rule_e_5"] == "yes"
    assert shown["2019:damage_on_green"]["repair_delayed_play"] == "no"
    assert shown["2019:caddie_lined_up"]["left_before_stroke"] == "yes"
    assert shown["2019:penalty_areas"]["last_stroke_from_penalty_area"] == "no"
    assert "2019:caddie_behind_ball" not in shown  # that purpose decides is of 2023


def test_what_the_package_keeps_is_what_the_book_says() -> None:
    """`make changes` writes it; nobody edits it by hand."""
    kept = json.loads(FILE.read_text(encoding="utf-8"))["pairs"]
    assert kept[: len(PAIRS)] == found_now(PAIRS)["pairs"]
    assert [(one["from"], one["to"]) for one in kept[len(PAIRS) :]] == [
        (earlier.isoformat(), later.isoformat()) for earlier, later in OTHER_PAIRS
    ]


def test_between_other_days_is_kept_what_the_days_between_add_up_to() -> None:
    """A change between two days is one of those of the steps between them, and its example is ruled otherwise on the two."""
    steps = list(pairwise(sorted({*EDITIONS, *CLARIFIED_ON})))
    of_step = {step: {one.key for one in found(*step)} for step in steps}
    for earlier, later in OTHER_PAIRS:
        keys = {one.key for one in found(earlier, later)}
        assert keys == set().union(
            *(some for (first, last), some in of_step.items() if earlier <= first and last <= later)
        ), (earlier, later)
        for one in found(earlier, later):
            ruled = [rule(one.example.incident, one.example.facts, played_on=day) for day in (earlier, later)]
            assert substance(ruled[0]) != substance(ruled[1]), one.key


def test_any_two_days_are_told_without_a_walk(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whichever days since 2019 are given, what is kept answers; only the former Rules' few incidents are walked."""
    monkeypatch.setattr(kept_changes, "what_changed", lambda *_: pytest.fail("the book was walked"))
    assert found(date(2022, 6, 1), date(2024, 3, 5))
    assert found(date(2019, 1, 20), date(2025, 7, 1))
    assert not found(date(2023, 2, 1), date(2024, 12, 31))


@pytest.mark.parametrize(("days", "known"), [(DAYS_2019, SINCE_2019), (DAYS_2023, SINCE_2023)])
def test_every_change_found_has_its_words_and_none_is_told_that_moves_nothing(days, known) -> None:
    """A new dated branch in the book needs its change in the register; a change without one would be an assertion."""
    keys = {one.key for one in found(*days)}

    assert keys <= set(BY_KEY)
    assert {one.key for one in known} <= keys


@pytest.mark.parametrize(("days", "published"), [(DAYS_2023, PRINCIPAL_2023), (DAYS_2019, PUBLISHED_2019)])
def test_nothing_of_the_published_lists_is_missing(days, published) -> None:
    """Each published change is told, and its example is ruled otherwise on the two days."""
    ours = {one.key: one for one in told(found(*days), *days)}

    for title, key in published.items():
        assert key in ours, title
        assert ours[key].example.before != ours[key].example.after, title


def test_every_example_is_ruled_otherwise_on_the_two_days() -> None:
    """An example that reads the same before and after would teach nothing."""
    for days in PAIRS:
        for one in told(found(*days), *days):
            assert one.example.differences or one.example.before != one.example.after, one.key


COMPARED = [one for one in walked(EDITION_2019) if one.name in {
    "club_damaged", "putt_hit_something", "embedded_ball", "ball_moved_by_natural_forces", "line_of_play_shown",
    "dropped_ball_played", "back_on_the_line_drop", "started_off_time",
}]  # fmt: skip


@given(st.sampled_from(COMPARED), st.data())
@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_the_turning_points_of_a_change_make_the_difference(one: Incident, data) -> None:
    """Every change comes from at least one turning point, and each of them reads a day between the two."""
    change = data.draw(st.sampled_from(changes(one.name, *DAYS_2023)))
    points = turning_points(change, *DAYS_2023)

    if substance(change.before) == substance(change.after):
        assert points == ()
    else:
        assert points
    assert all(DAYS_2023[0] < point.since <= DAYS_2023[1] for point in points)
    assert all(key_of(point) in BY_KEY for point in points)


def test_a_turning_point_without_words_is_told_by_its_place() -> None:
    """Nothing found is left out because nobody has written its words yet."""
    point = TurningPoint("book.rule_99_new:decided", "decided", EDITION_2023)

    assert key_of(point) not in BY_PLACE
    assert key_of(point).startswith("rule_99_new")


def test_every_place_of_the_register_is_one_change_and_is_in_the_book() -> None:
    """A place belongs to one change, whatever the edition."""
    places = [place for every in (SINCE_2023, SINCE_2019) for one in every for place in one.places]

    assert len(places) == len(set(places)) == len(BY_PLACE)
    assert {one.incident for every in (SINCE_2023, SINCE_2019) for one in every if one.incident} <= {
        one.name for one in INCIDENTS
    }


def test_the_time_to_search_is_shown_between_the_two_limits() -> None:
    """Former Definitions: lost ball (five minutes) and Rule 18.2a(1) (three): at four minutes the two differ by it alone."""
    shown = next(one for one in told(found(*DAYS_2019), *DAYS_2019) if one.key == "search_time")
    assert any("4 minutes" in words for words in shown.example.facts)


def test_a_provisional_ball_was_in_play_for_one_found_too_late() -> None:
    """Former Rule 27-2b: found after five minutes the original was lost, and the provisional ball in play."""
    facts = {
        "search_minutes": 6,
        "identified_in_reasonable_time": "yes",
        "late_ball_played": "no",
        "provisional_state": "found",
    }
    found = rule("teaching_search_time", facts, played_on=DAYS_2019[0])
    assert isinstance(found, Ruling)
    assert found.action is Action.PLAY_PROVISIONAL
    assert [option.penalty for option in found.relief] == [1]


def test_every_day_on_which_something_is_decided_otherwise_is_known() -> None:
    """A dated branch of a new day would else be left out of what is told of clarifications."""
    days = {day for one in INCIDENTS for day in days_of(one.name)}

    assert days == {*EDITIONS, *CLARIFIED_ON}


@pytest.mark.parametrize(
    ("day", "keys"),
    [
        (date(2019, 2, 6), {"caddie_behind_ball"}),
        (date(2025, 1, 1), {"damaged_club_local_rule", "self_standing_putter"}),
        (date(2026, 1, 1), {"club_built_from_parts"}),
    ],
)
def test_the_day_of_a_clarification_is_told_by_itself(day, keys) -> None:
    """Clarification 10.2b/1 to 10 of 6 February 2019; Clarification 10.2b/1 and G-9 of January 2025; G-9 of January 2026."""
    assert {one.key for one in found(day - timedelta(days=1), day)} == keys
    assert found(day, day + timedelta(days=30)) == ()


def test_since_an_edition_came_into_force_its_clarifications_add_up() -> None:
    """From the first day of 2023 to today only what was clarified since has moved; the sum of the two days."""
    since = {one.key for one in found(date(2023, 1, 1), date(2026, 6, 1))}

    assert since == {one.key for days in CLARIFICATIONS[1:] for one in found(*days)}


def test_what_is_rare_comes_first_for_those_who_know() -> None:
    """The same changes, in the opposite order of how often they are met."""
    common = told(found(*DAYS_2019), *DAYS_2019)
    rare = told(found(*DAYS_2019), *DAYS_2019, rare_first=True)

    assert [one.key for one in rare] == [one.key for one in common][::-1]
    assert [one.common for one in rare] == sorted((one.common for one in common), reverse=True)


def test_from_python_it_is_told_as_by_the_shell() -> None:
    """Editions by their years or two days; the same changes in the same order as the command prints."""
    ours = changes_told(2019, 2023)
    assert ours == changes_told(*DAYS_2023)
    shell = json.loads(marram_command("changes", "--from", "2019", "--to", "2023", "--json").out)
    assert [one.key for one in ours] == [one["key"] for one in shell["changes"]]
    assert changes_told(2019, 2023, rare_first=True) == ours[::-1]


@pytest.mark.parametrize(
    ("earlier", "later", "fault"),
    [
        (2020, 2023, "2020 is no edition; there are 2016, 2019, 2023"),
        (date(2024, 1, 2), date(2024, 1, 1), "2024-01-02 is not before 2024-01-01"),
        (date(2015, 1, 2), 2019, "knows the Rules since 2016-01-01"),
    ],
)
def test_days_that_cannot_be_compared_are_said(earlier, later, fault) -> None:
    """What is wrong with them, in one sentence."""
    with pytest.raises(InputError, match=fault):
        changes_told(earlier, later)
