"""What is held of maps: the last used, no more of them than may be, and not too large together."""

from datetime import date

import pytest

from marram.course.versions import held
from marram.course.versions.held import Held
from marram.course.versions.map_edits import Edit
from marram.course.versions.map_versions import MapVersions
from marram.demo import COURSE

DAY = date(2026, 11, 29)


def test_the_longest_unused_gives_way() -> None:
    """Whatever is asked for is thereby the last used."""
    few: Held[str, str] = Held(2)
    few.hold("a", "first", 1)
    few.hold("b", "second", 1)
    assert few.get("a") == "first"
    few.hold("c", "third", 1)
    assert [few.get(key) for key in "abc"] == ["first", None, "third"]


def test_large_maps_are_held_one_at_a_time_small_ones_together() -> None:
    """The features of all count; the last is held however many it has."""
    many: Held[str, int] = Held(12)
    for number in range(12):
        many.hold(f"small {number}", number, 200)
    assert len(many) == 12
    many.hold("large", 99, 10 * held.MOST_FEATURES)
    assert len(many) == 1
    assert many.get("large") == 99


def test_saving_again_and_again_holds_no_more_maps_than_may_be(
    tmp_path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A long day of edits on a large map takes the memory of one; every version is read as it was saved."""
    maps = MapVersions(COURSE, tmp_path)
    features = maps.document(1)["features"]
    monkeypatch.setattr(held, "MOST_FEATURES", len(features) + 1)
    first = features[0]
    for base in range(1, 5):
        named = {**first, "properties": {**first["properties"], "edited": f"edit {base}"}}
        edit = Edit("change", str(first["id"]), named)
        maps.save([edit], base=base, who="Invented Person", in_force_from=DAY)
        assert len(maps._built) == 1

    edited = [maps.document(number)["features"][0]["properties"].get("edited") for number in range(1, 6)]
    assert edited == [None, "edit 1", "edit 2", "edit 3", "edit 4"]
    assert maps.course(3).name == maps.course(5).name
