"""What was made of a case a moment ago, for whoever asks again: a page told twice, its record form, the page of a reload.

It holds for one map and one language, and a case is the same only where everything in it is: nothing here grows old.
"""

from collections import OrderedDict
from collections.abc import Callable
from threading import Lock
from typing import TypeVar

from marram.course.model import Course
from marram.desk.rulings.case_address import CaseAddress
from marram.words.language import language

MOST = 64
"""How much of a kind is held for a map (own choice: more than the officials of a day rule on at once; about 0.1 MB each)."""

Made = TypeVar("Made")
_LOCK = Lock()


def recently(course: Course, case: CaseAddress, make: Callable[[], Made], what: str) -> Made:
    """Return what was made of a case on a map, or make it.

    Args:
        course: the map.
        case: the case.
        make: makes it; what it raises is not held.
        what: the kind of what is made; those who ask for one kind make it alike.
    """
    key = repr(case)
    with _LOCK:
        held: OrderedDict[str, Made] = course.kept.setdefault((recently, what, language()), OrderedDict())
        if key in held:
            held.move_to_end(key)
            return held[key]
    made = make()
    with _LOCK:
        held[key] = made
        while len(held) > MOST:
            held.popitem(last=False)
    return made


__all__ = ["recently"]
