"""What the check of the marking looked at: everything once, with what was found of it."""

import re
from pathlib import Path

import marram.course
from marram.course import check, load
from marram.course.checks.looked_at import CHECKS, Subject, looked_at
from marram.demo import COURSE
from marram.errors import BadCourse

BAD = sorted((Path(__file__).parents[1] / "bad" / "course").glob("*"))
SOURCES = "\n".join(
    path.read_text(encoding="utf-8")
    for path in Path(marram.course.__file__).parents[1].rglob("*.py")
    if path.name != "looked_at.py"
)


def test_a_sound_course_is_told_with_all_that_was_looked_at() -> None:
    """Eighteen holes and greens, the demonstration's two dropping zones, no stake: each with nothing found."""
    told = {one.subject: (one.count, one.found) for one in looked_at(load(COURSE), check(COURSE))}
    assert told.keys() == set(Subject)
    assert {found for _, found in told.values()} == {0}
    assert told[Subject.HOLES] == told[Subject.PUTTING_GREENS] == (18, 0)
    assert (told[Subject.DROPPING_ZONES][0], told[Subject.STAKES][0]) == (2, 0)


def test_every_fault_is_counted_once() -> None:
    """On every bad map that can be loaded the numbers found of all subjects together are its faults."""
    tried = 0
    for path in BAD:
        try:
            course = load(path)
        except BadCourse:
            continue
        faults = check(path)
        assert sum(one.found for one in looked_at(course, faults)) == len(faults), path.name
        tried += bool(faults)
    assert tried > 20


def test_what_is_wrong_with_stakes_is_told_of_stakes() -> None:
    """Each check of the stakes stands under the stakes, and no subject names a check that there is not."""
    stakes = (Path(marram.course.__file__).parent / "checks" / "stake_checks.py").read_text(encoding="utf-8")
    named = set(re.findall(r'"((?:stake|string|corner|two_next)_\w+)"', stakes))
    assert named
    assert named <= set(CHECKS[Subject.STAKES])
    assert [one for checks in CHECKS.values() for one in checks if f'"{one}"' not in SOURCES] == []
