"""``event.json`` is read strictly: whatever is not understood is said, all at once, with its place and remedy."""

import json
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from marram.demo import EVENT
from marram.errors import InputError
from marram.services.cases.event import EventFile, read_event
from tests.cli.running import marram

FOLDER = Path(__file__).parents[1] / "bad" / "event"

SAID = {
    "local_rule_for_local_rules.json": ["the key 'local_rule' is not known. Did you mean 'local_rules'"],
    "notice_as_one_string.json": [
        "notice_to_players is 'Preferred lies are in force.'; give a list of sentences"
    ],
    "local_rules_as_one_string.json": ["local_rules is 'E-5'; give a list of codes"],
    "name_is_a_number.json": ["name is 7; give words"],
    "day_is_a_number.json": ["played_on is 20250621; give a day as year-month-day"],
    "day_does_not_exist.json": ["played_on is '2025-02-30'; give a day"],
    "sides_unknown.json": ["sides is 'pairs'; give one of individual"],
    "form_is_a_list.json": ['form_of_play is ["stroke_play"]; give one of stroke_play'],
    "player_without_name.json": ["players 2, name is missing; give words"],
    "player_key_unknown.json": [
        "players 1: the key 'handicap_indx' is not known. Did you mean 'handicap_index'"
    ],
    "handicap_is_words.json": ["players 1, handicap_index is 'scratch'; give a number"],
    "time_is_none.json": ["starting_times 1, time is '25:00'; give a time of day"],
    "tee_is_words.json": ["starting_times 1, tee is 'first'; give the number of the hole"],
    "stranger_in_a_group.json": ["starting_times 1 names 'Maris Quillan-Roe', who is not among the players"],
    "local_rules_exclude_each_other.json": ["H-1.1 and H-1.3 cannot be in force together"],
    "two_rounds_of_one_day.json": [
        "round is 'First round', and rounds has its day 2025-06-21 as 'Third round'"
    ],
    "other_kind_of_file.json": [
        "other_kind_of_file.json is another kind of file: most of what it holds is not known"
    ],
    "many_faults.json": [
        "the key 'nmae' is not known",
        "played_on is 'June'",
        "sides is 3",
        "no Local Rule 'Z-9'",
        "'One.'",
    ],
    "a_list.json": ["give an object"],
    "no_json.json": ["is not JSON: line 2, column 1: a key in double quotes is missing"],
    "comma_missing.json": ["is not JSON: line 3, column 3: a comma is missing. Correct it there."],
    "nested_without_end.json": ["is not JSON: too many brackets stand in one another"],
    "days_nobody_plays_on.json": [
        "played_on is 9999-12-31; give a day from 1900 to 2200",
        "rounds 1, played_on is 0012-06-22",
    ],
    "players_nobody_is.json": [
        "officials 1, name is empty",
        "players 1, name is empty; give words",
        "players 2, handicap_index is 900; give a number from -9.9 to 54.0",
        "players 3 has the name of players 2, 'fenwin  dulsey'",
        "players 4, handicap_index is -50",
    ],
    "key_twice.json": ["'name' is given twice"],
    "not_utf8.json": ["has letters that are not in UTF-8 (save the file as UTF-8)"],
}
"""What is said of each bad file: one entry for each fault, no more and no fewer."""


@pytest.mark.parametrize("name", SAID)
def test_a_bad_event_is_refused_with_every_fault(name: str) -> None:
    """Each fault is one sentence that names the file, the place and what to give."""
    with pytest.raises(InputError) as caught:
        read_event(FOLDER / name)

    faults = caught.value.faults
    assert len(faults) == len(SAID[name]), faults
    for words in SAID[name]:
        assert sum(words in fault for fault in faults) == 1, (words, faults)
    assert all(name in fault for fault in faults)


def test_every_bad_event_is_used() -> None:
    """No file lies in the folder without saying what it is bad at."""
    assert {path.name for path in FOLDER.iterdir()} == SAID.keys()


@pytest.mark.parametrize(
    ("given", "written"),
    [
        (None, "null"),
        (True, "true"),
        ({"a": None}, '{"a": null}'),
        (float("nan"), "NaN"),
        ([False], "[false]"),
    ],
)
def test_what_is_wrong_is_told_as_the_file_writes_it(given: object, written: str) -> None:
    """A reader looks for ``null`` in the file, not for what Python calls it."""
    with pytest.raises(InputError) as refused:
        read_event({"name": given})

    assert f"is {written};" in str(refused.value.faults[0])


def test_serving_a_bad_event_ends_before_anything_is_served() -> None:
    """Exit code 2, the faults on standard error, no address on standard output."""
    found = marram("serve", "--demo", "--event", str(FOLDER / "many_faults.json"))

    assert found.code == 2
    assert "the key 'nmae' is not known" in found.err
    assert found.out == ""


def test_what_is_given_and_not_used_is_said() -> None:
    """Players nobody starts, players started twice, and what no page uses yet: each is a remark, none a fault."""
    event = read_event(
        {
            "players": [{"name": "Fenwin Dulsey"}, {"name": "Tobiah Ling"}],
            "starting_times": [
                {"time": "08:00", "tee": 1, "players": ["Tobiah Ling"]},
                {"time": "08:11", "tee": 1, "players": ["Tobiah Ling"]},
            ],
        }
    )

    said = " ".join(event.remarks)
    assert "'Fenwin Dulsey' stand in no" in said
    assert "'Tobiah Ling' stand in several" in said
    assert "players, starting_times: read and checked" in said
    assert read_event({"name": "Cup"}).remarks == ()


KEYS = tuple(EventFile.__dataclass_fields__)


@settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])  # a busy machine is no fault of a file
@given(
    st.dictionaries(
        st.sampled_from(KEYS) | st.text(max_size=12),
        st.none()
        | st.booleans()
        | st.integers()
        | st.floats()
        | st.text(max_size=8)
        | st.lists(st.text(max_size=5) | st.integers(), max_size=3)
        | st.dictionaries(st.text(max_size=5), st.integers(), max_size=2),
        max_size=6,
    )
)
def test_whatever_is_given_is_understood_or_refused(document: dict[str, object]) -> None:
    """No document is half read and none ends in anything but faults that name the document."""
    try:
        event = read_event(document)
    except InputError as error:
        faults = error.faults
    else:
        faults = ()
        assert set(document) <= set(KEYS)
        assert event.name == document.get("name", "")
    assert all("the event" in fault for fault in faults)


def test_the_demonstration_event_is_understood() -> None:
    """The example that messages point at can be used."""
    given = json.loads(EVENT.read_text(encoding="utf-8"))

    assert read_event(EVENT).notice == tuple(given["notice_to_players"])
