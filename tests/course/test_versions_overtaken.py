"""Versions of a map saved at the same moment by two: one goes on top of the other, or is refused whole."""

from datetime import date
from pathlib import Path

import pytest

from marram.course.model import Kind
from marram.course.versions.map_versions import MapVersions
from marram.demo import COURSE
from marram.errors import InputError
from tests.course.test_versions import added

DAY = date(2025, 6, 21)


@pytest.fixture
def maps(tmp_path: Path) -> MapVersions:
    return MapVersions(COURSE, tmp_path / "maps")


def names(maps: MapVersions, number: int) -> set[str]:
    return {feature.ident for feature in maps.course(number).of(Kind.GROUND_UNDER_REPAIR)}


def while_another_saves(maps: MapVersions) -> None:
    """Let somebody else save when these versions are about to write."""
    other = MapVersions(COURSE, maps.place)
    write = maps._files.write

    def overtaken(*given: object) -> bool:
        maps._files.write = write
        other.save([added("theirs", latitude=55.006)], base=other.latest().number, who="B", in_force_from=DAY)
        return write(*given)

    maps._files.write = overtaken


def test_a_save_overtaken_by_another_goes_on_top_of_it(maps: MapVersions) -> None:
    """Two officials save at the same moment, different things: both are kept, the later one as the next version."""
    while_another_saves(maps)
    saved = maps.save([added("mine")], base=1, who="A", in_force_from=DAY)

    assert saved.number == 3
    assert {"mine", "theirs"} <= names(maps, 3)


def test_a_save_always_overtaken_is_refused_whole(maps: MapVersions) -> None:
    """Nothing of it is on any map, and what to do is said."""
    maps._files.write = lambda *_: False  # its number is taken whenever it is about to be written
    with pytest.raises(InputError, match="Try again"):
        maps.save([added("mine")], base=1, who="A", in_force_from=DAY)

    assert "mine" not in names(maps, maps.latest().number)


def test_going_back_is_refused_when_another_saves_meanwhile(maps: MapVersions) -> None:
    """Going back would undo unseen what the other saved: look again first."""
    maps.save([added("mine")], base=1, who="A", in_force_from=DAY)
    while_another_saves(maps)
    with pytest.raises(InputError, match="Look again"):
        maps.restore(1, base=2, who="A", in_force_from=DAY)

    assert {"mine", "theirs"} <= names(maps, maps.latest().number)


def test_a_base_that_does_not_exist_is_refused(maps: MapVersions) -> None:
    """The versions there are stand in the message."""
    with pytest.raises(InputError, match="no version 7 to edit; the map has 1 to 1"):
        maps.save([added("mine")], base=7, who="A", in_force_from=DAY)
