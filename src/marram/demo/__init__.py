"""The invented club, course, event and people that marram is shown and tested with.

``course.geojson`` is drawn by :mod:`marram.demo.draw_course` from :mod:`marram.demo.plan`. The course lies in
the open sea, and no name in this folder belongs to a real club or person.
"""

from pathlib import Path

COURSE: Path = Path(__file__).with_name("course.geojson")
"""The map of the demonstration course."""

EVENT: Path = Path(__file__).with_name("event.json")
"""The demonstration competition: conditions, Local Rules, officials, players, starting times."""

GREENS: Path = Path(__file__).with_name("greens.csv")
"""Elevations of its greens, shaped by :mod:`marram.demo.draw_greens`."""

CHAMPIONSHIP: Path = Path(__file__).with_name("championship.json")
"""The invented championship: 156 players over two rounds with a cut (made by ``marram.services.demonstrating.make_championship``)."""

CHAMPIONSHIP_SCORES: Path = Path(__file__).with_name("championship_scores.json")
"""Its second round's groups and the scores of both rounds."""
