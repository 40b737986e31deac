"""Hole locations kept by day: nothing is lost, nothing overwritten, a conflict shows both sides."""

import json
from concurrent.futures import ThreadPoolExecutor
from datetime import date

import pytest

from marram.course.versions.hole_days import HoleConflict, HoleDays
from marram.errors import BadPlace, InputError

DAY = date(2025, 6, 21)
HERE, THERE, ELSEWHERE = (4.0, 55.0), (4.0001, 55.0), (4.0, 55.0001)


@pytest.fixture
def days(tmp_path):
    return HoleDays(tmp_path / "holes")


def test_what_is_saved_is_found_again(days) -> None:
    """By another reader of the same folder, with who, why and when."""
    days.save(DAY, {1: HERE, 2: THERE}, base=0, who=" Ada ", note="first round")
    (found,) = HoleDays(days.place).versions(DAY)
    assert (found.number, found.who, found.note, found.places) == (
        1,
        "Ada",
        "first round",
        {1: HERE, 2: THERE},
    )
    assert found.saved_at.endswith("+00:00")


def test_every_version_stays(days) -> None:
    """A later save moves one hole; the others stay, and so does the earlier version."""
    days.save(DAY, {1: HERE, 2: THERE}, base=0, who="Ada")
    days.save(DAY, {1: ELSEWHERE}, base=1, who="Bo")
    assert [one.places for one in days.versions(DAY)] == [{1: HERE, 2: THERE}, {1: ELSEWHERE, 2: THERE}]


def test_two_who_move_different_holes_are_put_together(days) -> None:
    """Both start from version 1; neither is lost."""
    days.save(DAY, {1: HERE, 2: HERE}, base=0, who="Ada")
    days.save(DAY, {1: THERE}, base=1, who="Ada")
    days.save(DAY, {2: ELSEWHERE}, base=1, who="Bo")
    assert days.latest(DAY).places == {1: THERE, 2: ELSEWHERE}


def test_two_who_move_the_same_hole_are_a_conflict(days) -> None:
    """Nothing is saved; the conflict names the hole and who saved; on top of theirs it goes."""
    days.save(DAY, {1: HERE}, base=0, who="Ada")
    days.save(DAY, {1: THERE}, base=1, who="Ada")
    with pytest.raises(
        HoleConflict, match="Ada meanwhile saved version 2, which also moves hole 1"
    ) as refused:
        days.save(DAY, {1: ELSEWHERE}, base=1, who="Bo")
    assert (refused.value.holes, refused.value.latest.places[1]) == ((1,), THERE)
    assert len(days.versions(DAY)) == 2
    days.save(DAY, {1: ELSEWHERE}, base=2, who="Bo")
    assert days.latest(DAY).places == {1: ELSEWHERE}


def test_the_same_move_twice_is_no_conflict(days) -> None:
    """Two who put a hole to the same place agree; so do two who both save the first proposal."""
    days.save(DAY, {1: HERE}, base=0, who="Ada")
    days.save(DAY, {1: HERE}, base=0, who="Bo")
    assert days.latest(DAY).places == {1: HERE}
    with pytest.raises(HoleConflict):
        days.save(DAY, {1: THERE}, base=0, who="Cy")


def test_many_at_once_lose_nothing(days) -> None:
    """Twelve save one hole each at the same time: twelve versions, twelve holes."""
    with ThreadPoolExecutor(12) as pool:
        list(
            pool.map(lambda hole: days.save(DAY, {hole: HERE}, base=0, who=f"official {hole}"), range(1, 13))
        )
    assert set(days.latest(DAY).places) == set(range(1, 13))
    assert len(days.versions(DAY)) == 12


def test_recent_days_come_latest_first(days) -> None:
    """What was last saved of each of the days before, and nothing of the day itself or later."""
    for number in (18, 19, 20, 21, 22):
        days.save(date(2025, 6, number), {1: (4.0, 55 + number / 1e4)}, base=0, who="Ada")
    days.save(date(2025, 6, 20), {1: THERE}, base=1, who="Ada")
    found = days.recent(DAY, most=2)
    assert [(one.day.day, one.number) for one in found] == [(20, 2), (19, 1)]


@pytest.mark.parametrize(
    ("wrong", "error", "words"),
    [
        ({"who": " "}, InputError, "Say who"),
        ({"moved": {}}, InputError, "no hole was moved"),
        ({"base": 3}, BadPlace, "no version 3"),
    ],
)
def test_a_save_that_lacks_something_is_refused(days, wrong, error, words) -> None:
    """Nothing is written."""
    given = {"moved": {1: HERE}, "base": 0, "who": "Ada", **wrong}
    with pytest.raises(error, match=words):
        days.save(DAY, given.pop("moved"), **given)
    assert days.days() == []


def test_a_damaged_file_is_named_and_left(days) -> None:
    """A changed file does not fit its digest; a missing one is missed."""
    for base in (0, 1):
        days.save(DAY, {1: (4.0, 55 + base)}, base=base, who="Ada")
    path = days.place / "2025-06-21-0002.json"
    kept = json.loads(path.read_text())
    path.write_text(json.dumps({**kept, "who": "Eve"}))
    with pytest.raises(InputError, match=r"2025-06-21-0002\.json holds no hole locations that can be read"):
        days.versions(DAY)
    path.write_text(json.dumps(kept))
    (days.place / "2025-06-21-0001.json").unlink()
    with pytest.raises(InputError, match=r"2025-06-21-0001\.json is missing"):
        days.versions(DAY)


def test_a_folder_that_cannot_be_made_says_what_to_do(tmp_path) -> None:
    """A file stands where the folder should be."""
    (tmp_path / "taken").write_text("")
    with pytest.raises(InputError, match=r"Nothing was saved: .* cannot be written"):
        HoleDays(tmp_path / "taken" / "holes").save(DAY, {1: HERE}, base=0, who="Ada")
