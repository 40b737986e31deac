"""Recommended par by length against the Rules of Handicapping, Appendix F (metres of its Danish edition)."""

import pytest

from marram.course.checks.par_by_length import MEN, WOMEN, recommended_pars


def test_the_published_lengths() -> None:
    """The bounds are those of Appendix F, in the metres it gives."""
    assert MEN == {3: (0, 240), 4: (220, 450), 5: (410, 650), 6: (610, None)}
    assert WOMEN == {3: (0, 200), 4: (180, 380), 5: (340, 550), 6: (520, None)}


@pytest.mark.parametrize(
    ("length", "pars"),
    [
        (100, (3,)),
        (190, (3, 4)),
        (230, (3, 4)),
        (274, (4,)),
        (360, (4, 5)),
        (460, (5,)),
        (560, (5, 6)),
        (700, (6,)),
    ],
)
def test_ranges_overlap_as_published(length, pars) -> None:
    """Where the published ranges of men and women overlap, every par of them is recommended."""
    assert recommended_pars(length) == pars
