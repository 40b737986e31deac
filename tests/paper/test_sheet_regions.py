"""Pages of sheets for people who hear them: every region to scroll has a name of its own, no heading is empty."""

import re
from datetime import datetime

from marram.course import load
from marram.demo import COURSE
from marram.paper.event.event_report import event_report
from marram.paper.event.pace import GroupPace, RoundPace
from marram.paper.event.referees_sheet import referees_sheet
from marram.paper.event.scorecards import scorecards
from marram.paper.event.starters_sheet import starters_sheet
from marram.paper.sheet_html import event_sheet_html
from tests.paper.events import event, on_paper

NOON = datetime(2025, 6, 21, 12)  # noqa: DTZ001 - the clock of the place


def test_regions_are_told_apart() -> None:
    """Two rounds of one report, and the same people on several sheets of one page."""
    made = on_paper(event([1, 2, 3]))
    pace = [RoundPace(name, (GroupPace(1, 1, NOON, NOON, 250),), 1, 240) for name in ("First", "Second")]
    page = event_sheet_html(
        [
            starters_sheet(made),
            referees_sheet(made, load(COURSE)),
            scorecards(made),
            event_report(made, (), (), pace),
        ]
    )
    names = re.findall(r'role="region" aria-label="([^"]+)"', page)
    assert len(names) == len(set(names)) == 8
    assert "Report of the event · Pace of play: Second" in names
    assert not re.search(r"<th[^>]*>\s*</th>", page)
