"""Map versions and hole locations live in the records as they did in a folder, and a folder is taken over whole."""

from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from datetime import date
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from sqlalchemy import event

from marram.course.versions.hole_days import HoleConflict, HoleDays
from marram.course.versions.map_edits import Edit, EditConflict
from marram.course.versions.map_versions import MapVersions
from marram.demo import COURSE
from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import new_ident
from marram.records.maps import HOLES, HoleShelf, MapShelf, TakenOver, take_over
from marram.records.tables import Club, Course

DAY = date(2025, 6, 21)


@pytest.fixture
def course(records: Records) -> str:
    return new_course(records)


def new_course(records: Records) -> str:
    club, found = new_ident(), new_ident()
    with records.changing() as session:
        session.add(Club(id=club, name=f"Club {club}", time_zone=None))
        session.flush()
        session.add(Course(id=found, club_id=club, name="Links", map_file=None))
    return found


def added(ident: str, longitude: float = 3.99) -> Edit:
    shape = {"type": "Point", "coordinates": [longitude, 55.0]}
    return Edit("add", ident, {"type": "Feature", "properties": {"natural": "tree"}, "geometry": shape})


def files(folder: Path) -> Mapping[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()
    }


def made_folder(folder: Path, second: str = "Jorund") -> Mapping[str, bytes]:
    """A folder as a club has it: a version prepared for a later day, one before it, and two days of holes."""
    for name, content in _made(second).items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(content)
    return files(folder)


@cache
def _made(second: str) -> Mapping[str, bytes]:
    """Its files: made once, written wherever they are wanted."""
    with TemporaryDirectory() as folder:
        return _saved(Path(folder), second)


def _saved(folder: Path, second: str) -> Mapping[str, bytes]:
    maps = MapVersions(COURSE, folder)
    maps.save([added("t/1")], base=1, who="Ottiline", in_force_from=date(2025, 7, 1), note="Größe")
    maps.save([added("t/2")], base=2, who=second, in_force_from=DAY)
    holes = HoleDays(folder / HOLES)
    holes.save(DAY, {1: (3.99, 55.0)}, base=0, who="Ottiline")
    holes.save(DAY, {2: (3.98, 55.0)}, base=1, who="Jorund")
    holes.save(date(2025, 6, 22), {1: (3.99, 55.0)}, base=0, who="Ottiline")
    return files(folder)


def test_a_folder_is_taken_over_whole_and_byte_for_byte(
    records: Records, course: str, tmp_path: Path
) -> None:
    """Every version and every day of holes is there with its very bytes; the law of versions finds the same in both."""
    folder = tmp_path / "maps"
    there = made_folder(folder)
    assert take_over(records, course, folder) == TakenOver(maps=3, holes=3)
    maps, holes = MapShelf(records, course), HoleShelf(records, course)
    kept = {name: maps.read(name) for name in maps.names("*")}
    kept |= {f"{HOLES}/{name}": holes.read(name) for name in holes.names("*")}

    assert kept == there == files(folder)
    before, after = MapVersions(COURSE, folder), MapVersions(COURSE, maps)
    assert after.versions() == before.versions()
    assert after.document_on(date(2025, 7, 2)) == before.document_on(date(2025, 7, 2))
    assert HoleDays(holes).days() == HoleDays(folder / HOLES).days()
    assert HoleDays(holes).versions(DAY) == HoleDays(folder / HOLES).versions(DAY)


def test_taking_over_again_takes_what_is_new(records: Records, course: str, tmp_path: Path) -> None:
    """What was saved in the folder since is taken over; what is there already is left."""
    folder = tmp_path / "maps"
    made_folder(folder)
    take_over(records, course, folder)
    MapVersions(COURSE, folder).save([added("t/3")], base=3, who="Ada", in_force_from=DAY)

    assert take_over(records, course, folder) == TakenOver(maps=1, holes=0)
    assert take_over(records, course, folder) == TakenOver(maps=0, holes=0)


def test_another_courses_folder_is_refused_whole(records: Records, course: str, tmp_path: Path) -> None:
    """A folder whose versions differ from those that are kept is not mixed with them; each is named."""
    made_folder(tmp_path / "one")
    made_folder(tmp_path / "other", second="Sigrun")
    (tmp_path / "other" / "nonsense-2025.json").write_text("{}")
    (tmp_path / "other" / "7x.json").write_text("{}")
    take_over(records, course, tmp_path / "one")
    before = MapShelf(records, course).names("*")
    with pytest.raises(InputError) as fault:
        take_over(records, course, tmp_path / "other")

    assert any("000002.json is not version 2" in one for one in fault.value.faults)
    assert any("7x.json cannot be taken over" in one for one in fault.value.faults)
    assert MapShelf(records, course).names("*") == before


def test_the_law_of_versions_holds_in_the_records(records: Records, course: str) -> None:
    """Edits of one feature from one base, and one hole set twice, are conflicts there as in a folder."""
    mine, theirs = (MapVersions(COURSE, MapShelf(records, course)) for _ in range(2))
    assert mine.save([added("t/1")], base=1, who="Ada", in_force_from=DAY).number == 2
    with pytest.raises(EditConflict):
        theirs.save([added("t/1", 3.98)], base=1, who="Bo", in_force_from=DAY)
    holes = HoleDays(HoleShelf(records, course))
    holes.save(DAY, {1: (3.99, 55.0)}, base=0, who="Ada")
    with pytest.raises(HoleConflict):
        holes.save(DAY, {1: (3.98, 55.0)}, base=0, who="Bo")

    assert [one.number for one in theirs.versions()] == [1, 2]
    assert holes.latest(DAY).places == {1: (3.99, 55.0)}  # type: ignore[union-attr]


def test_of_many_who_take_a_number_one_gets_it(records: Records, course: str) -> None:
    """The others are told, and what was kept stays as it was; another course has numbers of its own."""
    shelf, other = MapShelf(records, course), MapShelf(records, new_course(records))
    with ThreadPoolExecutor(6) as many:
        got = list(many.map(lambda who: shelf.keep("000001.json", str(who).encode()), range(12)))

    assert got.count(True) == 1
    assert shelf.read("000001.json") == str(got.index(True)).encode()
    assert other.keep("000001.json", b"other")


def test_what_is_missing_is_named(records: Records, course: str) -> None:
    """A version that is not there is called by its number and where it should be."""
    with pytest.raises(InputError, match="There is no version 7 of the map in"):
        MapShelf(records, course).read("000007.json")


def test_what_is_in_force_is_asked_at_once_however_many_versions_there_are(
    records: Records, course: str
) -> None:
    """A page asks what is in force on a day: with thirteen versions as many statements as with three."""
    maps, holes = MapVersions(COURSE, MapShelf(records, course)), HoleDays(HoleShelf(records, course))
    asked: list[str] = []
    event.listen(
        records.engine, "before_cursor_execute", lambda _, __, statement, *___: asked.append(statement)
    )

    def statements() -> int:
        maps.map_on(DAY), holes.latest(DAY)  # what is new is read once
        asked.clear()
        assert maps.map_on(DAY)
        assert holes.latest(DAY)
        return len(asked)

    def saved(number: int) -> None:
        maps.save([added(f"t/{number}")], base=number, who="Ada", in_force_from=DAY)
        holes.save(DAY, {1: (3.9 + number / 1000, 55.0)}, base=number - 1, who="Ada")

    for number in range(1, 3):
        saved(number)
    few = statements()
    for number in range(3, 13):
        saved(number)

    assert statements() == few
