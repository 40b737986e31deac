"""Appendix E: how hard a hole is, and in what a table of stroke indexes departs from what is recommended."""

from collections.abc import Sequence
from fractions import Fraction

from marram.handicap.checking import Checking
from marram.said import Said, said

_LOW = 6
"""Indexes up to this one are to lie on no two holes in a row (Appendix E)."""


def difficulty(scratch_value: object, bogey_value: object, par: object) -> Fraction:
    """Return how hard a hole is by its ratings: scratch value and bogey value less twice the par (Appendix E).

    Raises:
        BadHandicap: with every figure that cannot be used.
    """
    checking = Checking()
    scratch = checking.number(said("Scratch value of a hole"), scratch_value, least=1, most=8)
    bogey = checking.number(said("Bogey value of a hole"), bogey_value, least=1, most=10)
    of_hole = checking.whole_number(said("Par of a hole"), par, least=2, most=7)
    checking.done()
    return scratch + bogey - 2 * of_hole


def what_departs(stroke_indexes: Sequence[int]) -> list[Said]:
    """Return in what a table of 18 stroke indexes departs from Appendix E, which recommends and binds nobody.

    Each nine is three triads of holes: odd indexes on one nine and even ones on the other, the lowest of each nine in
    its middle triad, the next lowest (3 or 4) in an outer one, and none of 6 or less on two holes in a row.

    Raises:
        BadHandicap: the table does not give each hole an index of its own.
    """
    checking = Checking()
    indexes = checking.indexes(said("Stroke indexes"), stroke_indexes, 18)
    checking.done()
    found = []
    for name, nine in ((said("front nine"), indexes[:9]), (said("back nine"), indexes[9:])):
        lowest, second = sorted(nine)[:2]
        if len({one % 2 for one in nine}) > 1:
            found.append(
                said("The {nine} has odd and even indexes; Appendix E keeps to one kind.", nine=name)
            )
        if lowest not in nine[3:6]:
            found.append(said("The lowest index of the {nine} is not in its middle three holes.", nine=name))
        if second in nine[3:6]:
            found.append(
                said("The two lowest indexes of the {nine} are both in its middle three holes.", nine=name)
            )
    found.extend(
        said("Holes {first} and {second} in a row have indexes of 6 or less.", first=hole, second=hole + 1)
        for hole in range(1, 18)
        if max(indexes[hole - 1 : hole + 1]) <= _LOW
    )
    return found
