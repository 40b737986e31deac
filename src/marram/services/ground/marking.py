"""Check the marking: what to mend before play, hole by hole, on a map and its sheet."""

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Any

from marram.course.checks.looked_at import LookedAt, looked_at
from marram.course.checks.marking import HoleSheet, marking_sheet
from marram.course.fault import Fault, Severity
from marram.course.loading import examine
from marram.course.model import Course
from marram.course.versions.map_days import checked
from marram.errors import BadCourse
from marram.paper.paper_size import PaperSize
from marram.services.ground.marked import marking_faults, without_local_rule


@dataclass(frozen=True)
class Marking:
    """A map and what was found on it.

    Attributes:
        course: the map.
        faults: what was found.
    """

    course: Course
    faults: list[Fault]

    def sheets(self) -> list[HoleSheet]:
        """Return what to mend, by hole; the course as a whole has no number."""
        return list(marking_sheet(self.course, self.faults))

    def looked_at(self) -> tuple[LookedAt, ...]:
        """Return what was looked at, how many of it there are, and how many faults were found."""
        return looked_at(self.course, self.faults)

    def pdf(self, day: date, paper: PaperSize = PaperSize.A4) -> bytes:
        """Return the marking sheet of a day as PDF, on a paper."""
        from marram.paper.marking_sheet import marking_pdf  # noqa: PLC0415 - the typesetter, only when printed

        return marking_pdf(self.course, self.faults, day=day, paper=paper)


def check_marking(
    source: Path | Mapping[str, Any],
    local_rules: Collection[str] | None = None,
    also: Collection[str] = (),
) -> Marking:
    """Return what there is to mend on a map.

    Args:
        source: the file of the map, or the GeoJSON it holds.
        local_rules: the Local Rules in force, which some markings need; ``None``: not known.
        also: codes that the event adopts beside them.

    Raises:
        BadCourse: the map cannot be used; every fault is listed.
    """
    if isinstance(source, Path):
        course, faults = examine(source)
        errors = [fault.sentence for fault in faults if fault.severity is Severity.ERROR]
        if errors or course is None:
            raise BadCourse(*errors)
    else:
        course, faults = checked(dict(source))
    return Marking(course, [*faults, *marking_faults(course, without_local_rule(course, local_rules, also))])
