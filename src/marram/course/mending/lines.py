"""Lines of play: turned round, joined from pieces, drawn where tee and green are known, ended on their green."""

from itertools import pairwise

import shapely
from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault
from marram.course.mending.hole_writing import read_writing
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import LineThing, Setting, Thing, drawn, lines_in
from marram.course.reading.shapes import hole_numbers
from marram.said import said

PIECES = 30.0
"""Ends of pieces of one line of play no further apart than this are proposed to be joined, metres (own choice)."""

NEAR_GREEN = 60.0
"""A green no further than this from the end of a line of play is offered as its green, metres (own choice)."""


SAME_PLACE = 0.001
"""A line of play that ends so near to where it would be ended is ended there already, metres (rounding of degrees)."""

WELL_INSIDE = 0.1
"""A middle nearer to the edge of its green than this is no place for a hole, metres (own choice): two parts of a green
that meet in one point have their middle there."""

WITHOUT_LINE = frozenset({"tee_of_no_hole", "tee_of_two_holes", "green_of_no_hole", "hole_unknown"})
"""What is said of a tee or green whose line of play is missing; drawing the line answers it."""


def turn_line(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to turn a line of play round that begins on a green and does not end on one."""
    line = setting.line(fault)
    if line is None or not _on_green(setting, line.start) or _on_green(setting, line.end):
        return None
    shape = setting.shape(line.ident)
    if shape is None:
        return None
    why = said("It begins on a green and ends on none; a line of play runs from the tee to the hole.")
    turned = setting.redraw(line.ident, shape.reverse())
    return offer("turn_line", fault, why, [Choice(said("Turn the line round"), (turned,))])


def end_on_green(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose greens near the end of a line of play that ends on none: to end it there."""
    line = setting.line(fault)
    if line is None or _on_green(setting, line.start):
        return None
    near = sorted(
        (green.shape.distance(line.end), green.ident, green)
        for green in setting.greens
        if green.shape.distance(line.end) <= NEAR_GREEN and not _ended_on(setting, green, line)
    )[:3]
    choices = []
    for distance, ident, green in near:
        target = hole_on(setting, green)
        if target.distance(line.end) < SAME_PLACE:
            continue
        extended = LineString([*_kept(line, green), (target.x, target.y)])
        edit = setting.redraw(line.ident, drawn(setting.plane.outward(extended)))
        words = (
            said("End it on {ident}, {distance:.1f} m away", ident=ident, distance=distance)
            if len(near) > 1
            else said("End it on {ident}", ident=ident)
        )
        choices.append(
            Choice(
                words, (edit,), (said("the green is {distance:.1f} m from its end now", distance=distance),)
            )
        )
    why = said(
        "No other line of play ends on a green so near; the hole lies on the green of its line of play."
    )
    return offer("end_on_green", fault, why, choices)


def _kept(line: LineThing, green: Thing) -> list[tuple[float, ...]]:
    """Return the positions of a line up to where it reaches a green, so that it does not run back."""
    places = list(line.shape.coords)
    inside = next((index for index, at in enumerate(places) if green.shape.covers(Point(at))), len(places))
    return places[: max(inside, 1)]


def hole_on(setting: Setting, green: Thing) -> Point:
    """Return where a hole is taken to be on a green: at its one pin, else in its middle."""
    pins = [pin.shape for pin in setting.pins if green.shape.covers(pin.shape)]
    if len(pins) == 1 and isinstance(pins[0], Point):
        return pins[0]
    middle = green.shape.centroid
    inside = green.shape.covers(middle) and green.shape.boundary.distance(middle) >= WELL_INSIDE
    return middle if inside else green.shape.representative_point()


def _on_green(setting: Setting, place: Point) -> bool:
    return any(green.shape.covers(place) for green in setting.greens)


def _ended_on(setting: Setting, green: Thing, but: Thing) -> bool:
    return any(green.shape.covers(one.end) for one in setting.lines if one.ident != but.ident)


def join_pieces(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose one line of play for a hole drawn as several lines, or as an area."""
    shape = setting.shape(fault.feature) if fault.feature in setting.features else None
    if shape is None:
        return None
    pieces = [line for line in lines_in(setting.plane.inward(shape)) if line.length > 0]
    if len(pieces) > 1:
        made, gap = joined(setting, pieces)
        edit = setting.redraw(fault.feature, drawn(setting.plane.outward(made)))
        adds = (said("the widest gap between its pieces is {gap:.1f} m", gap=gap),)
        why = said("The pieces are one after the other; together they are one line of play.")
        return offer("join_pieces", fault, why, [Choice(said("Join the pieces to one line"), (edit,), adds)])
    if shape.geom_type in {"Polygon", "MultiPolygon"}:
        return _through_area(setting, fault, setting.plane.inward(shape))
    return None


def _through_area(setting: Setting, fault: Fault, area: BaseGeometry) -> Proposal | None:
    area = area if area.is_valid else shapely.make_valid(area)
    number = read_writing(setting.tags(fault.feature).get("ref", "")).numbers
    tees = [tee for tee in setting.tees if area.intersects(tee.shape)]
    tees = tees or [tee for tee in setting.tees if numbers_of(tee) and numbers_of(tee) == number]
    greens = [green for green in setting.greens if area.intersects(green.shape)]
    greens = greens or [
        green for green in setting.greens if numbers_of(green) and numbers_of(green) == number
    ]
    choices = [
        Choice(
            said("Draw it from {back} to {green}", back=_back(tees, green).ident, green=green.ident),
            (setting.redraw(fault.feature, _straight(setting, _back(tees, green), green)),),
            (said("a straight line: bends are to be drawn"),),
        )
        for green in greens[:3]
        if tees
    ]
    why = said("The hole is drawn as an area; its line of play runs from the tee to the green inside it.")
    return offer("draw_line", fault, why, choices)


def joined(setting: Setting, pieces: list[LineString]) -> tuple[LineString, float]:
    """Return one line through pieces that lie one after the other, towards the green, and its widest gap in metres.

    Args:
        setting: the map.
        pieces: the lines, in metres.
    """
    rest = list(lines_in(shapely.line_merge(shapely.union_all(pieces)))) or pieces
    places, gap = list(rest.pop(0).coords), 0.0
    while rest:
        ends = [(Point(places[-1]), False), (Point(places[0]), True)]
        away, line, at_front, turned = min(
            (
                (end.distance(Point(line.coords[0 if not last else -1])), line, front, last)
                for end, front in ends
                for line in rest
                for last in (False, True)
            ),
            key=lambda found: found[0],
        )
        rest.remove(line)
        gap = max(gap, away)
        more = list(line.coords)
        if turned != at_front:
            more.reverse()
        places = [*more, *places] if at_front else [*places, *more]
    once = [places[0], *(after for before, after in pairwise(places) if before != after)]
    made = LineString(once)
    starts, ends_there = _on_green(setting, Point(once[0])), _on_green(setting, Point(once[-1]))
    return (made.reverse() if starts and not ends_there else made), gap


def one_line(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose what to do with two lines of play of one hole: pieces joined, or one of two alternatives kept."""
    line = setting.line(Fault(fault.severity, fault.check, "", "", feature=fault.feature))
    same = [one for one in setting.lines if line and one.ident != line.ident and one.number == line.number]
    if line is None or not line.plain:
        return None
    for other in same:
        if not other.plain:
            continue
        if min(line.start.distance(other.end), line.end.distance(other.start)) <= PIECES and not _alike(
            line, other
        ):
            made, gap = joined(setting, [line.path, other.path])
            edits = (
                setting.redraw(other.ident, drawn(setting.plane.outward(made))),
                *setting.remove(line.ident),
            )
            adds = (
                said("{line} becomes a part of {other}", line=line.ident, other=other.ident),
                said("the gap between them is {gap:.1f} m", gap=gap),
            )
            why = said("One begins where the other ends: they look like two pieces of one line of play.")
            return offer(
                "join_pieces", fault, why, [Choice(said("Join the pieces to one line"), edits, adds)]
            )
        if _alike(line, other):
            kept = sorted((line, other), key=lambda one: one.shape.length, reverse=True)
            choices = [
                Choice(
                    said("Keep {line}, {length:.0f} m", line=one.ident, length=one.shape.length),
                    setting.remove(gone.ident),
                    (said("{gone} goes", gone=gone.ident),),
                )
                for one, gone in zip(kept, reversed(kept), strict=True)
            ]
            why = said(
                "Both end at the same place: they look like two lines of one hole, from different tees perhaps."
            )
            return offer("keep_line", fault, why, choices)
    return None


def _alike(one: LineThing, other: LineThing) -> bool:
    return one.end.distance(other.end) <= PIECES


def missing_lines(setting: Setting, fault: Fault) -> list[Proposal]:
    """Propose a line of play for every hole whose tee and green are on the map by its number, and which has none."""
    present = {number for line in setting.lines for number in line.writing.numbers}
    found = []
    claimed = {number for green in setting.greens for number in numbers_of(green)} - present
    for number in sorted(claimed):
        greens = [green for green in setting.greens if number in numbers_of(green)]
        tees = [tee for tee in setting.tees if number in numbers_of(tee)]
        if len(greens) != 1 or not tees:
            continue
        tee = _back(tees, greens[0])
        ident = f"drawn/line-of-hole-{number}"
        if ident in setting.features:
            continue
        straight = _straight(setting, tee, greens[0])
        edit = setting.add(ident, straight, golf="hole", ref=str(number))
        adds = (said("a straight line from the farthest tee: bends, par and stroke index are to be added"),)
        why = said(
            "Tee {tee} and green {greens} say they belong to hole {number}, which has no line of play.",
            tee=tee.ident,
            greens=greens[0].ident,
            number=number,
        )
        choice = Choice(said("Draw hole {number} from its tee to its green", number=number), (edit,), adds)
        ends = {greens[0].ident, *(one.ident for one in tees)}
        also = [one for one in setting.faults if one.feature in ends and one.check in WITHOUT_LINE]
        found.append(offer("draw_line", fault, why, [choice], also=also, about=str(number)))
    return [one for one in found if one is not None]


def numbers_of(thing: Thing) -> tuple[int, ...]:
    """Return the holes that a green or tee names, by ``holes`` or ``ref``."""
    return hole_numbers(thing.tags.get("holes", "")) or thing.writing.numbers


def _back(tees: list[Thing], green: Thing) -> Thing:
    return max(tees, key=lambda tee: tee.shape.centroid.distance(green.shape.centroid))


def _straight(setting: Setting, tee: Thing, green: Thing) -> BaseGeometry:
    line = LineString([tee.shape.centroid, hole_on(setting, green)])
    return drawn(setting.plane.outward(line))
