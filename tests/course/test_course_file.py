"""The course file beside its versions: a change on disk is noticed, said, and taken over or left out."""

import json

import pytest

from marram.course.versions.map_edits import Edit, EditConflict, by_ident
from marram.course.versions.map_versions import MapVersions, Overlap
from marram.errors import InputError
from tests.course.test_versions_by_day import TODAY, TOMORROW, added, ground, maps, small_map, there

__all__ = ["maps"]


def write(maps: MapVersions, document: dict) -> None:
    maps.course_file.write_text(json.dumps(document), encoding="utf-8")


def with_ground(*idents: str) -> dict:
    document = small_map()
    document["features"] += [ground(ident, place=5 + place) for place, ident in enumerate(idents)]
    return document


def mark(maps: MapVersions) -> str:
    news = maps.file_news()
    assert news is not None
    return news.mark


def test_a_change_of_the_file_changes_no_version_and_is_said(maps: MapVersions) -> None:
    """Version 1 stays what it was when the first edit was saved; the difference is named feature by feature."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    assert maps.file_news() is None
    write(maps, with_ground("f"))

    for one in (maps, MapVersions(maps.course_file, maps.place)):
        news = one.file_news()
        assert news is not None
        assert [(edit.action, edit.ident) for edit in news.edits] == [("add", "f")]
        assert "f" not in by_ident(one.document(1))
    assert there(maps, TODAY) == {"a"}


def test_written_anew_with_the_same_features_it_is_no_news(maps: MapVersions) -> None:
    """Another indent or order of keys is no change of the map."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    maps.course_file.write_text(json.dumps(small_map(), indent=2, sort_keys=True), encoding="utf-8")
    assert maps.file_news() is None


def test_taken_over_it_is_a_version_beside_the_edits_made_here(maps: MapVersions) -> None:
    """Both are on the map from that day, also on what is prepared; afterwards the file is no news."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    maps.save([added("b", place=1)], base=2, who="Ada", in_force_from=TOMORROW)
    write(maps, with_ground("f"))
    saved = maps.settle_file(mark(maps), take=True, who="Bo", in_force_from=TODAY)

    assert saved.note == "changes of the course file taken over"
    assert there(maps, TODAY) == {"a", "f"}
    assert there(maps, TOMORROW) == {"a", "b", "f"}
    assert maps.file_news() is None
    write(maps, with_ground("f", "g"))
    assert [edit.ident for edit in maps.file_news().edits] == ["g"]


def test_left_out_it_is_noted_by_whom_and_no_news_any_more(maps: MapVersions) -> None:
    """The map stays as it is; the list of versions says who left the changes out."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    write(maps, with_ground("f"))
    saved = maps.settle_file(mark(maps), take=False, who="Bo", in_force_from=TODAY)

    assert (saved.who, saved.note, saved.edits) == ("Bo", "changes of the course file left out", ())
    assert there(maps, TODAY) == {"a"}
    assert MapVersions(maps.course_file, maps.place).file_news() is None


@pytest.mark.parametrize(("how", "size"), [(Overlap.KEEP, 0.0001), (Overlap.REPLACE, 0.00002)])
def test_what_was_also_edited_here_is_asked_about(maps: MapVersions, how: Overlap, size: float) -> None:
    """The file and an edit both change one feature: a conflict first, then as it is answered."""
    write(maps, with_ground("f"))
    larger = ground("f", size=0.0001, place=5)
    maps.save([Edit("change", "f", larger)], base=1, who="Ada", in_force_from=TODAY)
    changed = with_ground("f")
    changed["features"][-1] = ground("f", size=0.00002, place=5)
    write(maps, changed)

    with pytest.raises(EditConflict, match="course file changes f, which was also edited here"):
        maps.settle_file(mark(maps), take=True, who="Bo", in_force_from=TODAY)
    maps.settle_file(mark(maps), take=True, who="Bo", in_force_from=TODAY, overlap=how)
    assert by_ident(maps.document_on(TODAY))["f"] == ground("f", size=size, place=5)


def test_a_changed_credit_line_is_said_and_taken_over(maps: MapVersions) -> None:
    """What the file holds beside its features is told by its key, and taken over with them."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    write(maps, small_map() | {"credit": "Surveyed by the greenkeeper"})
    news = maps.file_news()

    assert news is not None
    assert (news.edits, news.beside) == ((), ("credit",))
    maps.settle_file(news.mark, take=True, who="Bo", in_force_from=TODAY)
    assert maps.document_on(TODAY)["credit"] == "Surveyed by the greenkeeper"
    assert there(maps, TODAY) == {"a"}
    assert maps.file_news() is None


def test_changed_again_in_between_it_must_be_looked_at_again(maps: MapVersions) -> None:
    """A decision holds for the changes that were shown, and no others."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    write(maps, with_ground("f"))
    seen = mark(maps)
    write(maps, with_ground("f", "g"))
    with pytest.raises(InputError, match="changed again"):
        maps.settle_file(seen, take=True, who="Bo", in_force_from=TODAY)
    assert maps.latest().number == 2


@pytest.mark.parametrize("content", [None, "{", "[]", '{"features": [1]}'])
def test_a_file_that_is_gone_or_broken_is_said_and_the_versions_go_on(
    maps: MapVersions, content: str | None
) -> None:
    """Nothing depends on the file once versions are kept; what is wrong with it is said all the same."""
    maps.save([added("a")], base=1, who="Ada", in_force_from=TODAY)
    maps.course_file.unlink() if content is None else maps.course_file.write_text(content, encoding="utf-8")
    again = MapVersions(maps.course_file, maps.place)
    news = again.file_news()

    assert news is not None
    assert str(maps.course_file) in news.fault
    assert there(maps, TODAY) == {"a"}
    again.save([added("b", place=1)], base=2, who="Ada", in_force_from=TODAY)
    assert there(maps, TODAY) == {"a", "b"}


def test_before_any_version_a_running_program_stays_with_what_it_read(maps: MapVersions) -> None:
    """The file changes while nothing is kept yet: this program says so; one started later reads the new file."""
    assert "f" not in by_ident(maps.document(1))
    write(maps, with_ground("f"))
    assert [edit.ident for edit in maps.file_news().edits] == ["f"]
    assert MapVersions(maps.course_file, maps.place).file_news() is None
    maps.settle_file(mark(maps), take=True, who="Ada", in_force_from=TODAY)
    assert there(maps, TODAY) == {"f"}
