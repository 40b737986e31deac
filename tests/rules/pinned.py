"""What is pinned of the Rules as encoded: for every incident the days from which it is decided otherwise, and its size then."""

from datetime import date
from pathlib import Path

from marram.rules.editions import EDITIONS
from marram.rules.incidents import INCIDENTS

PINNED = {
    (name, date.fromisoformat(day)): (int(leaves), int(size))
    for line in (Path(__file__).parent / "leaf_counts.txt").read_text(encoding="utf-8").splitlines()
    if not line.startswith("#")
    for name, day, _, leaves, _, size in [line.split()]
}
"""Leaves of the tree and vertices of the graph, by incident and day."""

EVERY = sorted({*PINNED, *((one.name, day) for one in INCIDENTS for day in EDITIONS)})
"""Every incident on each day from which it is decided otherwise: of an edition, or of a Clarification between."""
