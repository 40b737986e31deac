"""Versions by day: what is in force when, and a save for today beside what is prepared for a later day."""

import json
from datetime import date, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.course.versions.map_edits import Edit, EditConflict, Side, by_ident
from marram.course.versions.map_versions import MapVersions, Overlap
from marram.errors import BadCourse, InputError
from tests.course.test_versions import square

TODAY, TOMORROW, DAY_AFTER = (date(2025, 6, day) for day in (21, 22, 23))
WEST, SOUTH = 4.0, 55.0


def line(*places: tuple[float, float]) -> list[list[float]]:
    return [[WEST + east / 1000, SOUTH + north / 1000] for east, north in places]


def feature(ident: str, kind: str, geometry: str, coordinates: object, **tags: str) -> dict:
    return {
        "type": "Feature",
        "id": ident,
        "properties": {"golf": kind, **tags},
        "geometry": {"type": geometry, "coordinates": coordinates},
    }


def small_map() -> dict:
    """One hole: line of play, tee, green."""
    green = line((0, 3), (0.3, 3), (0.3, 3.2), (0, 3.2), (0, 3))
    tee = line((0, 0), (0.2, 0), (0.2, 0.1), (0, 0.1), (0, 0))
    return {
        "type": "FeatureCollection",
        "features": [
            feature("h/1", "hole", "LineString", line((0.1, 0.05), (0.1, 3.1)), ref="1", par="4"),
            feature("g/1", "green", "Polygon", [green], ref="1"),
            feature("t/1", "tee", "Polygon", [tee], ref="1"),
        ],
    }


def ground(ident: str, size: float = 0.00005, place: int = 0) -> dict:
    return square(ident, WEST + 0.0005 + place * 0.0002, SOUTH + 0.001, size)


def added(ident: str, **how: float) -> Edit:
    return Edit("add", ident, ground(ident, **how))


@pytest.fixture
def maps(tmp_path: Path) -> MapVersions:
    course = tmp_path / "course.geojson"
    course.write_text(json.dumps(small_map()), encoding="utf-8")
    return MapVersions(course, tmp_path / "maps")


def there(maps: MapVersions, day: date) -> set[str]:
    """Ground under repair on the map in force on a day, as a program that starts now reads it."""
    again = MapVersions(maps.course_file, maps.place)
    found = again.map_on(day)
    features = again.course(found.version.number, day).features
    return {one.ident for one in features if one.kind.value == "ground_under_repair"}


def test_a_save_for_today_is_carried_over_into_what_is_prepared(maps: MapVersions) -> None:
    """Prepared for tomorrow and then marked today: today has the one, tomorrow both, yesterday none."""
    maps.save([added("prepared", place=1)], base=1, who="Ada", in_force_from=TOMORROW)
    saved = maps.save([added("marked")], base=2, who="Bo", in_force_from=TODAY)

    assert there(maps, TODAY - timedelta(1)) == set()
    assert there(maps, TODAY) == {"marked"}
    assert there(maps, TOMORROW) == there(maps, DAY_AFTER) == {"marked", "prepared"}
    assert saved.since(TODAY) == TODAY
    assert saved.since(DAY_AFTER) == TOMORROW
    assert [one.since for one in maps.prepared(TODAY)] == [TOMORROW]


def test_a_save_for_tomorrow_waits(maps: MapVersions) -> None:
    """What is saved for tomorrow on top of today's map is not on today's map."""
    maps.save([added("today")], base=1, who="Ada", in_force_from=TODAY)
    maps.save([added("later", place=1)], base=2, who="Ada", in_force_from=TOMORROW)

    assert there(maps, TODAY) == {"today"}
    assert there(maps, TOMORROW) == {"today", "later"}


@settings(deadline=None, max_examples=25)
@given(
    st.lists(
        st.tuples(st.integers(0, 3), st.integers(0, 4), st.sampled_from(["new", "old"])),
        min_size=1,
        max_size=6,
    )
)
def test_nothing_saved_is_ever_lost(saves: list[tuple[int, int, str]]) -> None:
    """On each day the map holds just what was saved for that day or an earlier one, whatever the order of saving.

    Some saves begin from an old version, some end by taking away again what an earlier save added.
    """
    with TemporaryDirectory() as folder:
        course = Path(folder) / "course.geojson"
        course.write_text(json.dumps(small_map()), encoding="utf-8")
        maps = MapVersions(course, Path(folder) / "maps")
        span: dict[str, tuple[int, int]] = {}
        for number, (first, last, base) in enumerate(saves):
            ident = f"n/{number}"
            latest = maps.latest().number
            maps.save(
                [added(ident, place=number)],
                base=latest if base == "new" else 1,
                who="A",
                in_force_from=TODAY + timedelta(first),
            )
            if first < last < 4:
                gone = Edit("remove", ident)
                at = TODAY + timedelta(last)
                maps.save([gone], base=maps.latest().number, who="A", in_force_from=at)
            span[ident] = (first, last if first < last < 4 else 99)
        for day in range(5):
            expected = {ident for ident, (first, last) in span.items() if first <= day < last}
            assert there(maps, TODAY + timedelta(day)) == expected


def test_a_feature_prepared_otherwise_is_a_conflict_that_names_the_day(maps: MapVersions) -> None:
    """Changed today and, otherwise, for tomorrow: nothing is saved until somebody says which stays."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    larger = Edit("change", "a", ground("a", size=0.0001))
    maps.save([larger], base=2, who="Ada", in_force_from=TOMORROW)
    smaller = Edit("change", "a", ground("a", size=0.00002))

    with pytest.raises(EditConflict, match="prepared from 2025-06-22 on also changes a") as caught:
        maps.save([smaller], base=3, who="Bo", in_force_from=TODAY)
    assert (caught.value.side, caught.value.since) == (Side.PREPARED, TOMORROW)
    assert caught.value.theirs == (larger,)
    assert maps.latest().number == 3


@pytest.mark.parametrize(("how", "tomorrow"), [(Overlap.KEEP, 0.0001), (Overlap.REPLACE, 0.00002)])
def test_the_answer_to_such_a_conflict_holds_from_that_day(
    maps: MapVersions, how: Overlap, tomorrow: float
) -> None:
    """Today has this change either way; tomorrow what was prepared, or this change in its place."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    maps.save([Edit("change", "a", ground("a", size=0.0001))], base=2, who="Ada", in_force_from=TOMORROW)
    smaller = Edit("change", "a", ground("a", size=0.00002))
    maps.save([smaller], base=3, who="Bo", in_force_from=TODAY, prepared=how)

    assert by_ident(maps.document_on(TODAY))["a"] == smaller.feature
    assert by_ident(maps.document_on(TOMORROW))["a"] == ground("a", size=tomorrow)


def test_a_removal_prepared_for_tomorrow_stays_prepared(maps: MapVersions) -> None:
    """Changed today though it goes tomorrow: with ``keep`` it is changed today and gone tomorrow."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    maps.save([Edit("remove", "a")], base=2, who="Ada", in_force_from=TOMORROW)
    larger = Edit("change", "a", ground("a", size=0.0001))
    maps.save([larger], base=3, who="Bo", in_force_from=TODAY, prepared=Overlap.KEEP)

    assert there(maps, TODAY) == {"a"}
    assert there(maps, TOMORROW) == set()


def test_the_same_change_on_both_sides_is_no_conflict(maps: MapVersions) -> None:
    """What is prepared for tomorrow may come into force today as it is."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TOMORROW)
    maps.save([added("a")], base=2, who="Ada", in_force_from=TODAY)

    assert there(maps, TODAY) == there(maps, TOMORROW) == {"a"}
    assert maps.prepared(TODAY) == []


def test_a_change_that_breaks_the_prepared_map_is_refused(maps: MapVersions) -> None:
    """Going well today, it makes an error of tomorrow's map (a second hole 2): refused, and the day is named."""
    second = feature("h/2", "hole", "LineString", line((2, 0), (2, 3)), ref="2", par="4")
    other = feature("h/3", "hole", "LineString", line((1, 0), (1, 3)), ref="2", par="4")
    maps.save([Edit("add", "h/2", second)], base=1, who="Ada", in_force_from=TOMORROW)

    with pytest.raises(BadCourse, match="On the map prepared from 2025-06-22 on: hole 2"):
        maps.save([Edit("add", "h/3", other)], base=2, who="Bo", in_force_from=TODAY)
    assert maps.latest().number == 2


def test_going_back_sets_aside_what_was_prepared_and_says_so(maps: MapVersions) -> None:
    """From today the map is that of version 1 on every day; the prepared version stays readable."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TOMORROW)
    back = maps.restore(1, base=2, who="Bo", in_force_from=TODAY)

    assert there(maps, TODAY) == there(maps, TOMORROW) == set()
    assert back.note == "back to version 1; what was prepared from 2025-06-22 (version 2) is set aside"
    assert "a" in by_ident(maps.document(2))
    maps.restore(2, base=3, who="Bo", in_force_from=TOMORROW)
    assert there(maps, TODAY) == set()
    assert there(maps, TOMORROW) == {"a"}


def test_going_back_never_undoes_what_nobody_has_seen(maps: MapVersions) -> None:
    """A version saved since the list was read is named first; going back to what is there is refused."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    maps.save([added("b", place=1)], base=2, who="Ada", in_force_from=TODAY)
    with pytest.raises(EditConflict, match="Version 3 of the map, saved meanwhile, also changes b"):
        maps.restore(1, base=2, who="Bo", in_force_from=TODAY)
    with pytest.raises(InputError, match="that of version 3 on 2025-06-21 already"):
        maps.restore(3, base=3, who="Bo", in_force_from=TODAY)


def test_new_faults_are_those_that_a_version_brought(maps: MapVersions) -> None:
    """A dropping zone that serves nothing is new in its version, and old news in the next."""
    zone = ground("z")
    zone["properties"] = {"marram": "dropping_zone", "holes": "1"}
    maps.save([Edit("add", "z", zone)], base=1, who="Ada", in_force_from=TODAY)
    maps.save([added("a", place=2)], base=2, who="Ada", in_force_from=TODAY)

    (fault,) = maps.new_faults(2)
    assert fault.startswith("z, at 55.00")
    assert "does not say what it serves" in fault
    assert maps.new_faults(3) == []
