"""Versions of a map: kept whole, never overwritten, put together or shown as a conflict."""

import json
import os
import signal
from concurrent.futures import ProcessPoolExecutor
from datetime import date
from multiprocessing import get_context
from pathlib import Path
from tempfile import TemporaryDirectory
from unittest.mock import patch

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.course import area_at
from marram.course.lies.areas import Area
from marram.course.model import Kind
from marram.course.versions.map_edits import Edit, EditConflict, feature_ident
from marram.course.versions.map_versions import MapVersions
from marram.demo import COURSE
from marram.errors import BadCourse, InputError

DAY = date(2025, 6, 21)


def square(ident: str, longitude: float = 4.0, latitude: float = 55.004, size: float = 0.00005) -> dict:
    ring = [
        [longitude, latitude], [longitude + size, latitude], [longitude + size, latitude + size],
        [longitude, latitude + size], [longitude, latitude],
    ]  # fmt: skip
    tags = {"marram": "ground_under_repair", "name": ident}
    return {
        "type": "Feature",
        "id": ident,
        "properties": tags,
        "geometry": {"type": "Polygon", "coordinates": [ring]},
    }


def added(ident: str, **where: float) -> Edit:
    return Edit("add", ident, square(ident, **where))


@pytest.fixture
def maps(tmp_path: Path) -> MapVersions:
    return MapVersions(COURSE, tmp_path / "maps")


def names(maps: MapVersions, number: int) -> set[str]:
    return {feature.ident for feature in maps.course(number).of(Kind.GROUND_UNDER_REPAIR)}


def test_the_first_version_is_the_file(maps: MapVersions) -> None:
    """Before any edit there is one version, in force on every day."""
    assert [one.number for one in maps.versions()] == [1]
    assert maps.version_on(date(2019, 1, 1)).number == 1
    assert maps.document(1)["features"]


def test_an_edit_is_in_force_from_its_day(maps: MapVersions) -> None:
    """Ground marked on the day is on the map that day and later, not the day before; the file stays as it was."""
    before = COURSE.read_bytes()
    maps.save([added("new/1")], base=1, who="Referee", in_force_from=DAY, note="flooded")
    assert maps.version_on(DAY).number == 2
    assert maps.version_on(date(2025, 6, 20)).number == 1
    assert "new/1" in names(maps, 2) - names(maps, 1)
    assert COURSE.read_bytes() == before


def test_versions_survive_a_restart(maps: MapVersions) -> None:
    """Another process reads what was saved, whole."""
    saved = maps.save([added("new/1")], base=1, who="Referee", in_force_from=DAY, note="why")
    again = MapVersions(COURSE, maps.place)
    assert again.latest() == saved
    assert "new/1" in names(again, 2)


def test_edits_of_different_features_are_put_together(maps: MapVersions) -> None:
    """Two people edit version 1; both edits are in the newest version."""
    maps.save([added("a/1")], base=1, who="A", in_force_from=DAY)
    maps.save([added("b/1", longitude=4.001)], base=1, who="B", in_force_from=DAY)
    assert {"a/1", "b/1"} <= names(maps, 3)


def test_edits_of_the_same_feature_are_a_conflict_that_shows_both(maps: MapVersions) -> None:
    """Nothing is saved; their edits and the newest version are named."""
    maps.save([added("a/1")], base=1, who="A", in_force_from=DAY)
    moved = Edit("change", "a/1", square("a/1", latitude=55.0041))
    maps.save([moved], base=2, who="A", in_force_from=DAY)
    with pytest.raises(EditConflict, match="also changes a/1") as caught:
        maps.save([Edit("remove", "a/1")], base=2, who="B", in_force_from=DAY)
    assert caught.value.theirs == (moved,)
    assert caught.value.latest == 3
    assert maps.latest().number == 3


def test_a_map_with_errors_is_refused_and_nothing_written(maps: MapVersions) -> None:
    """A bow-tie is named with its place and remedy; the folder stays empty."""
    bow_tie = square("bad/1")
    ring = bow_tie["geometry"]["coordinates"][0]
    ring[1], ring[2] = ring[2], ring[1]
    with pytest.raises(BadCourse, match="bad/1"):
        maps.save([Edit("add", "bad/1", bow_tie)], base=1, who="A", in_force_from=DAY)
    assert not maps.place.exists()


@pytest.mark.parametrize(
    ("edit", "message"),
    [
        (Edit("add", "quillsand/1", square("quillsand/1")), "on the map already"),
        (Edit("remove", "nothing/1"), "not on the map"),
        (Edit("add", "x/1", {"type": "Feature"}), "no geometry"),
        (Edit("paint", "x/1"), "is no edit"),
        (Edit("add", "", square("")), "names no feature"),
    ],
)
def test_edits_that_do_not_fit_are_named(maps: MapVersions, edit: Edit, message: str) -> None:
    """Each misfit says what to do; nothing is saved."""
    with pytest.raises(InputError, match=message):
        maps.save([edit], base=1, who="A", in_force_from=DAY)
    assert maps.latest().number == 1


def test_a_feature_without_identifier_keeps_its_name(tmp_path: Path) -> None:
    """Removing one feature does not shift the names of those after it."""
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    for feature in document["features"]:
        feature.pop("id", None)
        feature["properties"].pop("@id", None)
    bare = tmp_path / "bare.geojson"
    bare.write_text(json.dumps(document), encoding="utf-8")
    maps = MapVersions(bare, tmp_path / "maps")
    before = {feature_ident(one): one["properties"] for one in maps.document(1)["features"]}
    maps.save([Edit("remove", "feature 40")], base=1, who="A", in_force_from=DAY)
    after = {feature_ident(one): one["properties"] for one in maps.document(2)["features"]}
    assert before.pop("feature 40")
    assert after == before


def test_nobody_and_nothing_are_refused(maps: MapVersions) -> None:
    """A version names who saved it, and holds an edit."""
    with pytest.raises(InputError, match="who saves"):
        maps.save([added("a/1")], base=1, who="  ", in_force_from=DAY)
    with pytest.raises(InputError, match="nothing to save"):
        maps.save([], base=1, who="A", in_force_from=DAY)


def test_going_back_is_a_new_version(maps: MapVersions) -> None:
    """Version 3 has the features of version 1; version 2 is still there."""
    maps.save([added("a/1"), Edit("remove", "quillsand/20")], base=1, who="A", in_force_from=DAY)
    back = maps.restore(1, base=2, who="A", in_force_from=DAY)
    idents = [{feature_ident(one) for one in maps.document(number)["features"]} for number in (1, 2, 3)]
    assert back.number == 3
    assert idents[2] == idents[0] != idents[1]


def test_a_crash_before_the_name_is_given_leaves_the_previous_version(maps: MapVersions) -> None:
    """When writing dies half-way the newest version is the one before, whole, and saving again works."""
    with patch.object(os, "link", side_effect=KeyboardInterrupt), pytest.raises(KeyboardInterrupt):
        maps.save([added("a/1")], base=1, who="A", in_force_from=DAY)
    again = MapVersions(COURSE, maps.place)
    assert again.latest().number == 1
    assert again.save([added("a/1")], base=1, who="A", in_force_from=DAY).number == 2


def save_and_be_killed(folder: str) -> None:
    """Die without any clean-up once the version is written, just before it gets its name."""
    with patch.object(os, "link", side_effect=lambda *_names: os.kill(os.getpid(), signal.SIGKILL)):
        MapVersions(COURSE, Path(folder)).save([added("b/1")], base=2, who="B", in_force_from=DAY)


def test_a_killed_process_leaves_the_previous_version_whole(maps: MapVersions) -> None:
    """What the dead process left behind is no version; the one before is whole and can be built upon."""
    saved = maps.save([added("a/1")], base=1, who="A", in_force_from=DAY)
    dying = get_context("spawn").Process(target=save_and_be_killed, args=(str(maps.place),))
    dying.start()
    dying.join()
    assert dying.exitcode == -signal.SIGKILL
    again = MapVersions(COURSE, maps.place)
    assert list(maps.place.glob(".writing-*"))
    assert again.versions()[1:] == [saved]
    assert again.save([added("b/1")], base=2, who="B", in_force_from=DAY).number == 3


def test_a_missing_version_is_named_and_nothing_saved(maps: MapVersions) -> None:
    """A file taken away between others is asked for, not passed over."""
    for number in (1, 2, 3):
        maps.save(
            [added(f"a/{number}", longitude=4.0 + number / 1000)], base=number, who="A", in_force_from=DAY
        )
    (maps.place / "000003.json").unlink()
    again = MapVersions(COURSE, maps.place)
    with pytest.raises(InputError, match=r"000003\.json is missing"):
        again.save([added("b/1")], base=2, who="A", in_force_from=DAY)
    assert not (maps.place / "000005.json").exists()


def test_a_folder_that_cannot_be_written_is_said(tmp_path: Path) -> None:
    """Where there is a file in the way the message names the folder and what to do."""
    (tmp_path / "file").write_text("", encoding="utf-8")
    maps = MapVersions(COURSE, tmp_path / "file" / "maps")
    with pytest.raises(InputError, match=r"cannot be written .* another folder with --maps"):
        maps.save([added("a/1")], base=1, who="A", in_force_from=DAY)


def test_a_file_that_changes_is_read_again(maps: MapVersions) -> None:
    """Versions are kept in memory, yet a file damaged while the program runs is noticed."""
    maps.save([added("a/1")], base=1, who="A", in_force_from=DAY)
    assert maps.latest().number == 2
    (maps.place / "000002.json").write_text("{}", encoding="utf-8")
    with pytest.raises(InputError, match=r"000002\.json is not a version"):
        maps.versions()


@pytest.mark.parametrize("content", ["", "{}", '{"marram_map_version": 9}', "[1]"])
def test_a_damaged_or_foreign_file_is_named_and_left(maps: MapVersions, content: str) -> None:
    """The message names the file; it is never overwritten."""
    maps.place.mkdir(parents=True)
    strange = maps.place / "000002.json"
    strange.write_text(content, encoding="utf-8")
    with pytest.raises(InputError, match=r"000002\.json is not a version"):
        maps.save([added("a/1")], base=1, who="A", in_force_from=DAY)
    assert strange.read_text(encoding="utf-8") == content


def test_a_changed_document_is_noticed(maps: MapVersions) -> None:
    """A version whose contents were tampered with no longer fits its digest."""
    maps.save([added("a/1")], base=1, who="A", in_force_from=DAY)
    path = maps.place / "000002.json"
    kept = json.loads(path.read_text(encoding="utf-8"))
    kept["document"]["features"].pop()
    path.write_text(json.dumps(kept), encoding="utf-8")
    with pytest.raises(InputError, match="digest"):
        MapVersions(COURSE, maps.place).versions()


def save_one(folder: str, ident: str, place: int) -> int:
    where = {"longitude": 4.0 + place * 0.0005}
    return (
        MapVersions(COURSE, Path(folder))
        .save([added(ident, **where)], base=1, who=ident, in_force_from=DAY)
        .number
    )


def test_many_people_saving_at_once_lose_nothing(tmp_path: Path) -> None:
    """Six saves from four processes on the same base: six versions, every edit in the last one."""
    folder = tmp_path / "maps"
    idents = [f"p/{number}" for number in range(6)]
    with ProcessPoolExecutor(4) as pool:
        numbers = list(pool.map(save_one, [str(folder)] * 6, idents, range(6)))
    maps = MapVersions(COURSE, folder)
    assert sorted(numbers) == [2, 3, 4, 5, 6, 7]
    assert set(idents) <= names(maps, 7)


@settings(deadline=None, max_examples=15)
@given(st.lists(st.tuples(st.sampled_from("abc"), st.sampled_from(["add", "change", "remove"])), max_size=6))
def test_any_sequence_of_edits_keeps_what_was_said(steps: list[tuple[str, str]]) -> None:
    """After any sequence of edits, each saved or refused, the map holds what the saved ones say."""
    with TemporaryDirectory() as folder:
        maps, there = MapVersions(COURSE, Path(folder)), set()
        for step, (ident, action) in enumerate(steps, 1):
            edit = Edit(action, ident, None if action == "remove" else square(ident, size=step * 0.00002))
            fits = (action == "add") != (ident in there)
            try:
                maps.save([edit], base=maps.latest().number, who="A", in_force_from=DAY)
            except InputError:
                assert not fits
                continue
            assert fits
            (there.discard if action == "remove" else there.add)(ident)
        last = {feature_ident(one) for one in maps.document(maps.latest().number)["features"]}
        assert last & {"a", "b", "c"} == there


def test_a_ball_on_newly_marked_ground_is_read_there(maps: MapVersions) -> None:
    """The course of a version is ready for use: the new ground is among the conditions the ball touches."""
    maps.save([added("a/1", size=0.0002)], base=1, who="A", in_force_from=DAY)
    course = maps.course(2)
    reading = area_at(course, *course.plane.to_metres(4.0001, 55.0041), 1)
    assert "a/1" in {feature.ident for feature in reading.conditions}
    assert reading.area in (Area.GENERAL_AREA, Area.BUNKER)
