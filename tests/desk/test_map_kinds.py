"""Every kind of area that can be drawn: saved, it is that kind on the course, and reads so."""

import json
from datetime import date
from pathlib import Path

import pytest

from marram.course.model import Kind
from marram.course.scheme import AREA_KINDS
from marram.course.versions.map_versions import MapVersions
from marram.desk.course.map_editing import DRAWABLE, Drawable, drawn_area
from marram.errors import InputError
from tests.course.test_versions_by_day import small_map

AROUND = "54.99,3.99\n54.99,4.01\n55.01,4.01\n55.01,3.99"
ASIDE = "55.001,4.0005\n55.001,4.0006\n55.0011,4.0006"


@pytest.mark.parametrize("drawable", DRAWABLE, ids=lambda one: one.kind.value)
def test_a_drawn_area_is_of_its_kind(tmp_path: Path, drawable: Drawable) -> None:
    """Kind, name and hole arrive on the course; a tee belongs to the hole it was given."""
    file = tmp_path / "course.geojson"
    file.write_text(json.dumps(small_map()), encoding="utf-8")
    maps = MapVersions(file, tmp_path / "maps")
    places = AROUND if drawable.kind is Kind.BOUNDARY else ASIDE
    edit = drawn_area(drawable.kind.value, "Mire", "1", places)
    maps.save([edit], base=1, who="Ada", in_force_from=date(2025, 6, 21))

    course = maps.course(2)
    (area,) = [one for one in course.of(drawable.kind) if one.name == "Mire"]
    assert area.holes == (1,)
    assert area.geometry.area > 30
    if drawable.kind is Kind.TEEING_AREA:
        assert area.ident in {tee.ident for tee in course.hole(1).tees}


def test_every_kind_a_ball_can_lie_in_is_offered() -> None:
    """But rough, which is the general area all the same, and wetland, which says nothing of what it is for the Rules, every
    kind that must be an area can be drawn."""
    assert AREA_KINDS - {Kind.ROUGH, Kind.WETLAND} <= {one.kind for one in DRAWABLE}


@pytest.mark.parametrize("hole", ["nine", "0x1", "1;two", "-3"])
def test_holes_that_are_none_are_refused(hole: str) -> None:
    """The words typed stand in the refusal, with how to write two holes."""
    with pytest.raises(InputError, match=r"is no number; write 9, or 2;16"):
        drawn_area("bunker", "", hole, ASIDE)


def test_what_waits_at_an_evacuation_point_is_kept_with_it() -> None:
    """One of the list, and at an evacuation point alone."""
    edit = drawn_area("evacuation_point", "Gate", "2", ASIDE, evacuation="vehicle")

    assert edit.feature is not None
    told = {"marram": "evacuation_point", "name": "Gate", "holes": "2", "evacuation": "vehicle"}
    assert edit.feature["properties"] == told
    for kind, what in (("bunker", "vehicle"), ("evacuation_point", "tent")):
        with pytest.raises(InputError, match="evacuation point"):
            drawn_area(kind, "", "", ASIDE, evacuation=what)
