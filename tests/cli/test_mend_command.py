"""``marram course mend`` lists proposals, mends what is accepted, and leaves the file as it is."""

import json
from pathlib import Path

import pytest

from marram.course import load
from marram.course.versions.map_versions import MapVersions
from tests.cli.running import marram
from tests.course.mending.broken import BREAKS, around, document, features, second_course

BAD = Path(__file__).parents[1] / "bad" / "course"


@pytest.fixture
def broken(tmp_path: Path) -> Path:
    """A map of nine holes with two lines the wrong way, a bow-tie and a hole without par."""
    found = features()
    for name, hole in (("hole_backwards", 2), ("hole_backwards", 7), ("invalid_geometry", 4), ("no_par", 5)):
        BREAKS[name](found, hole)
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document(found)), encoding="utf-8")
    return path


def mend(path: Path, *more: str):
    return marram("course", "mend", str(path), "--maps", str(path.parent / "maps"), *more)


def numbered(path: Path, check: str) -> int:
    """Return the number a proposal for a check has in the list."""
    told = json.loads(mend(path, "--json").out)
    return next(one["number"] for one in told["proposals"] if one["fault"]["check"] == check)


def test_the_list_mends_nothing(broken: Path) -> None:
    """Unasked nothing is saved: every fault with its proposal and reason, and exit 2 while errors are left."""
    found = mend(broken)
    assert found.code == 2
    assert "Turn the line round" in found.out
    assert "b) Keep only the part of" in found.out
    assert not (broken.parent / "maps").exists()


def test_what_is_accepted_is_a_version_and_the_file_stays(broken: Path) -> None:
    """Two kinds accepted one after the other: two versions with who and why; then the map can be used."""
    before = broken.read_bytes()
    first = mend(
        broken,
        "--accept",
        "all-of:turn_line",
        "--who",
        "R. Marker",
        "--why",
        "walked it",
        "--from",
        "2026-05-01",
    )
    assert first.code == 2
    assert first.out.count("Turn the line round") == 2
    bow_tie = numbered(broken, "invalid_geometry")
    second = mend(broken, "--accept", f"{bow_tie}a", "--who", "R. Marker")
    assert (second.code, second.err) == (0, "")
    assert broken.read_bytes() == before
    versions = MapVersions(broken, broken.parent / "maps").versions()
    assert [one.who for one in versions[1:]] == ["R. Marker", "R. Marker"]
    assert versions[1].note.endswith("walked it")
    assert "turn the line round" in versions[1].note


def test_a_copy_is_written_instead_of_a_version(broken: Path) -> None:
    """--output writes a map that opens; no version is kept."""
    copy = broken.parent / "mended.geojson"
    numbers = [
        str(one["number"])
        for one in json.loads(marram("course", "mend", str(broken), "--output", str(copy), "--json").out)[
            "proposals"
        ]
    ]
    accepted = [part for number in numbers for part in ("--accept", f"{number}a")]
    found = marram("course", "mend", str(broken), "--output", str(copy), *accepted)
    assert (found.code, found.err) == (0, "")
    assert list(load(copy).holes) == list(range(1, 10))
    assert not (broken.parent / "maps").exists()


def test_a_choice_is_never_made_for_the_official(broken: Path) -> None:
    """A bow-tie leaves a choice: neither its bare number nor all-of takes one, and both say so."""
    bow_tie = numbered(broken, "invalid_geometry")
    bare = mend(broken, "--accept", str(bow_tie), "--who", "R")
    assert bare.code == 2
    assert f"choose one of {bow_tie}a (Keep both parts)" in bare.err
    every = mend(broken, "--accept", "all-of:untangle", "--who", "R")
    assert "Not accepted: each leaves a choice" in every.out
    assert not (broken.parent / "maps").exists()


@pytest.mark.parametrize(
    ("given", "said"),
    [
        (("--accept", "99", "--who", "R"), "'99' is no proposal of the list"),
        (("--accept", "all-of:nothing", "--who", "R"), "nothing of this kind is proposed; there is "),
        (("--accept", "all-of:turn_line"), "say who mends the map, with --who"),
        (("--course", "North"), "the map holds one course"),
        (("--ask",), "--ask asks at a terminal, and there is none"),
        (("--list", "--accept", "all-of:turn_line"), "--list only lists"),
        (("--accept", "all-of:turn_line", "--output", "x.geojson"), "give one of them"),
    ],
)
def test_what_cannot_be_accepted_is_said_and_nothing_is_saved(broken: Path, given, said) -> None:
    """Wrong numbers, kinds and options: exit 2, a sentence, no version."""
    found = mend(broken, *given)
    assert (found.code, found.out) == (2, "")
    assert said in found.err
    assert not (broken.parent / "maps").exists()


def test_the_course_is_chosen_by_name(tmp_path: Path) -> None:
    """--course takes one of several courses; a name that fits none or several lists them."""
    found = features(*second_course(label="{} - #2"))
    found["boundary"] = around()
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document(found)), encoding="utf-8")
    copy = tmp_path / "second.geojson"
    taken = marram("course", "mend", str(path), "--course", "#2", "--output", str(copy))
    assert taken.code == 0, taken.err
    assert list(load(copy).holes) == list(range(1, 10))
    assert all(tags.get("golf:course:name") == "#2" for tags in holes_in(copy))
    refused = marram("course", "mend", str(path), "--course", "North", "--output", str(copy))
    assert refused.code == 2
    assert "names none of these: Use 9 holes" in refused.err


def holes_in(path: Path) -> list[dict]:
    found = json.loads(path.read_text())["features"]
    return [one["properties"] for one in found if one["properties"].get("golf") == "hole"]


def test_openstreetmap_data_is_mended_too(tmp_path: Path) -> None:
    """An open relation in OpenStreetMap XML: closed, kept as a version, the XML left alone."""
    path = tmp_path / "links.osm"
    path.write_bytes((BAD / "open_relation.osm").read_bytes())
    found = mend(path, "--accept", "all-of:close_ring", "--who", "R")
    assert (found.code, found.err) == (0, "")
    assert path.read_bytes() == (BAD / "open_relation.osm").read_bytes()


def test_a_file_that_is_no_map_is_said(tmp_path: Path) -> None:
    """Nothing can be mended of what cannot be read: its fault, exit 2, no traceback."""
    found = mend(BAD.parent / "course" / "not_json.geojson", "--json")
    assert found.code == 2
    assert json.loads(found.out)["faults"][0]["check"] == "not_json"
    assert mend(tmp_path / "missing.geojson").code == 2


def test_a_terminal_is_asked_one_by_one(broken: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """With --ask each proposal is asked for: accepted, chosen, left; then who mends it."""
    answers = iter(["b", "y", "", "q", "R. Marker"])
    monkeypatch.setattr("sys.stdin.isatty", lambda: True, raising=False)
    monkeypatch.setattr("builtins.input", lambda _prompt: next(answers))
    found = mend(broken, "--ask")
    assert "Version 2 of the map holds it" in found.out
    (version,) = MapVersions(broken, broken.parent / "maps").versions()[1:]
    assert version.who == "R. Marker"
    assert len(version.edits) == 2


def test_at_a_terminal_the_editor_is_opened_on_the_map(broken: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Unless something is to be listed or mended here: the desk, its first page the places to mend, filled in."""
    served: list[tuple[tuple, dict]] = []
    monkeypatch.setattr("marram.cli.serving.serve", lambda *given, **more: served.append((given, more)))
    monkeypatch.setattr("marram.cli.mending.at_terminal", lambda: True)
    mend(broken, "--list")
    mend(broken, "--json")
    mend(broken, "--accept", "all-of:untangle", "--who", "R")
    assert served == []
    mend(broken, "--who", "R. Marker", "--from", "2026-05-01", "--port", "8377")
    ((given, more),) = served
    assert (given, more["maps"]) == (("127.0.0.1", 8377, broken), broken.parent / "maps")
    assert more["first_page"] == "/map/mend?on=2026-05-01&who=R.+Marker"
