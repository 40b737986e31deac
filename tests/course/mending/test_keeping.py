"""A map mended version by version: what is told of each, which map is used meanwhile, and how much is left."""

import json
from datetime import date

import pytest

from marram.course.mending.keeping import ToMend, draft_on, keep_mended, newest_usable, note_of, to_mend
from marram.course.versions.map_versions import MapVersions
from tests.course.mending.broken import BREAKS, document, features

DAY = date(2025, 6, 21)
OPEN = range(1, 6)
"""Holes whose greens are left open."""
ALL = ("hole_backwards", "open_ring")


@pytest.fixture
def maps(tmp_path):
    """Versions of a map with five greens left open and one line of play the wrong way round."""
    found = features()
    for hole in OPEN:
        BREAKS["open_ring"](found, hole)
    BREAKS["hole_backwards"](found, 7)
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document(found)), encoding="utf-8")
    return MapVersions(path, tmp_path / "maps")


def first_choices(maps, *checks):
    """Return the first choice of each proposal for some checks, as accepted."""
    draft = draft_on(maps, DAY)
    return [(one, one.choices[0]) for one in draft.proposals if one.fault.check in checks]


def test_each_place_is_told_while_there_are_few(maps) -> None:
    """Four mendings or fewer stand in the note one by one, with the reason given for them."""
    note = note_of(first_choices(maps, "open_ring")[:2], " looked at on the ground ")

    assert note.count("close it with a straight line") == 2
    assert note.endswith("; looked at on the ground")


def test_many_mendings_are_counted_by_their_kind(maps) -> None:
    """Five alike and one other: the kinds, the commonest first, with how often."""
    note = note_of(first_choices(maps, *ALL))

    assert note.startswith("mended close it with a straight line (5 times), turn the line round")


def test_the_errors_left_are_counted_until_none_is(maps) -> None:
    """Six errors, then one, then none: mended in two versions, the first of which cannot be played on yet."""
    assert to_mend(None) == ToMend(0)
    assert to_mend(maps) == ToMend(len(OPEN) + 1)
    two = keep_mended(maps, first_choices(maps, "open_ring"), who="A. Marker", in_force_from=DAY)
    assert two.number == 2
    assert to_mend(maps) == ToMend(1)
    keep_mended(maps, first_choices(maps, *ALL), who="A. Marker", in_force_from=DAY, why="done")
    assert to_mend(maps) == ToMend(0)


def test_a_map_without_lines_of_play_is_said_to_serve(tmp_path) -> None:
    """Its greens and the rest are whole: rulings ask for the flagstick, so it is not called unusable."""
    without_lines = {ident: one for ident, one in features().items() if not ident.startswith("line")}
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document(without_lines)), encoding="utf-8")
    found = to_mend(MapVersions(path, tmp_path / "maps"))

    assert found.errors
    assert found.serves


def test_the_newest_usable_map_is_used_meanwhile(maps) -> None:
    """While no version can be used, what could be read of the file; afterwards the mended version."""
    assert list(newest_usable(maps).holes) == list(range(1, 10))
    assert 1 not in {one.number for one in newest_usable(maps).holes.values() if one.green is not None}
    keep_mended(maps, first_choices(maps, *ALL), who="A. Marker", in_force_from=DAY)
    assert newest_usable(maps).hole(1).green is not None


def test_where_nothing_can_be_read_the_map_is_empty(tmp_path) -> None:
    """A file without one thing that can be read gives a course without holes, not a failure."""
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document({})), encoding="utf-8")

    assert not newest_usable(MapVersions(path, tmp_path / "maps")).holes
