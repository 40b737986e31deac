"""The way from a hole to its evacuation points, in words."""

from collections.abc import Sequence

from marram.course.evacuation import WayOut
from marram.words.ground import ground_words
from marram.words.texts import text


def ways_out_words(ways: Sequence[tuple[str, WayOut]]) -> list[str]:
    """Return the ways out of a hole as lines: one where tee and green have the same point and no doubt, else one for each.

    Args:
        ways: as :func:`marram.course.evacuation.ways_out_of_hole` gives them.
    """
    same = len(ways) == 2 and ways[0][1].point is ways[1][1].point
    if same and not any(one.crosses for _, one in ways):
        (_, tee), (_, green) = ways
        both = text("evacuation.way.both", point=_point(tee), tee=tee.metres, green=green.metres)
        return [_planned(both, tee)]
    return [_line(end, one) for end, one in ways]


def _line(end: str, way: WayOut) -> str:
    words = _planned(text(f"evacuation.way.{end}", point=_point(way), metres=way.metres), way)
    if not way.crosses:
        return words
    return text("evacuation.crosses", way=words, ground=", ".join(map(ground_words, way.crosses)))


def _planned(words: str, way: WayOut) -> str:
    return text("evacuation.planned", way=words) if way.planned else words


def _point(way: WayOut) -> str:
    offers = way.offers.value if way.offers else "unsaid"
    return text(f"evacuation.offers.{offers}", point=way.point.name or text("evacuation.unnamed"))
