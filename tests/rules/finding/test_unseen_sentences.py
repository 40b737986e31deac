"""Sentences by writers who saw neither titles, keywords nor training sentences find their incident (written for this, 2026)."""

from marram.rules.finding import find
from tests.rules.finding.unseen import unseen


def share(most: int) -> float:
    told = [(sentence, acts[0]) for sentence, acts in unseen() if len(acts) == 1]
    found = [bool(meant & {one.name for one in find(sentence).incidents[:most]}) for sentence, meant in told]
    return sum(found) / len(found)


def test_the_incident_is_first_in_three_of_four_and_among_three_in_nine_of_ten() -> None:
    """At least 75 % first, 92 % among three, 98 % among the twelve offered; figures of each release: training/measure_unseen.py."""
    assert share(1) >= 0.75
    assert share(3) >= 0.92
    assert share(12) >= 0.98
