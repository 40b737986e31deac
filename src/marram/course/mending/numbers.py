"""Lines of play whose number is written otherwise, or that have none: what tells it, else asked."""

from collections import Counter

from marram.course.fault import Fault
from marram.course.mending.courses import course_name
from marram.course.mending.hole_writing import MOST, read_writing
from marram.course.mending.lines import PIECES, joined, numbers_of
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import LineThing, Setting, drawn
from marram.course.versions.map_edits import Edit
from marram.said import said

AT_TEE = 15.0
"""A tee with a number tells that of a line of play that begins no further from it, metres (own choice)."""

_USUAL = (9, 18, 27, 36)

FEW_NUMBERS = 4
"""So many numbers of holes without a line of play are offered for a line whose number is taken (own choice)."""


def number_hole(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose the number of a line of play: as it is written otherwise, as tee and green tell it, or to be chosen."""
    line = next((one for one in setting.lines if one.ident == fault.feature), None)
    if line is None:
        return None
    written = line.tags.get("ref", "")
    writing = line.writing if line.writing.numbers else read_writing(line.tags.get("name", ""))
    if len(writing.numbers) == 1:
        return _as_written(setting, fault, line, writing.numbers[0], written or line.tags.get("name", ""))
    if writing.numbers:
        return _several(setting, fault, line, writing.numbers, span=writing.span)
    piece = _piece_of(setting, fault, line)
    return piece or _told_by_ground(setting, fault, line) or _chosen(setting, fault, line)


def _numbered(setting: Setting, line: LineThing, number: int) -> Edit:
    name = course_name(setting, line)
    more = {"golf__course__name": name} if name and line.writing.course else {}
    return setting.retag(line.ident, ref=str(number), **more)


def _as_written(
    setting: Setting, fault: Fault, line: LineThing, number: int, written: str
) -> Proposal | None:
    of = said(" of course {course}", course=line.writing.course) if line.writing.course else ""
    choice = Choice(
        said("Take {written!r} as hole {number}{of}", written=written, number=number, of=of),
        (_numbered(setting, line, number),),
    )
    why = said(
        "The number of a hole stands alone in ref; what else is written here names the hole's course, or nothing."
    )
    return offer("number_hole", fault, why, [choice])


def _several(
    setting: Setting, fault: Fault, line: LineThing, numbers: tuple[int, ...], *, span: bool
) -> Proposal | None:
    free = [number for number in numbers if number not in _taken(setting)]
    choices = []
    if len(free) == len(numbers) == 2:
        first, second = numbers
        ident = f"{line.ident}/{second}"
        if ident not in setting.features:
            copied = setting.retag(line.ident, ref=str(second), handicap=None)
            again = Edit("add", ident, {**(copied.feature or {}), "id": ident})
            adds = (said("the line is drawn a second time as hole {second}", second=second),)
            choices.append(
                Choice(
                    said("Use it for both holes, {first} and {second}", first=first, second=second),
                    (_numbered(setting, line, first), again),
                    adds,
                )
            )
    choices += [
        Choice(said("Take it as hole {number}", number=number), (_numbered(setting, line, number),))
        for number in free
    ]
    why = (
        said("Two numbers are written: one hole played twice, or a range that no single line of play can be.")
        if span
        else said("Several numbers are written: one hole played twice, as on nine holes played as eighteen.")
    )
    return offer("number_hole", fault, why, choices)


def _piece_of(setting: Setting, fault: Fault, line: LineThing) -> Proposal | None:
    for other in setting.lines:
        if other.number is None or not other.plain:
            continue
        nearest = min(line.start.distance(other.end), line.end.distance(other.start))
        if nearest > PIECES / 3 or any(green.shape.covers(other.end) for green in setting.greens):
            continue
        made, gap = joined(setting, [line.path, other.path])
        edits = (setting.redraw(other.ident, drawn(setting.plane.outward(made))), *setting.remove(line.ident))
        adds = (
            said("{line} becomes a part of {other}", line=line.ident, other=other.ident),
            said("the gap between them is {gap:.1f} m", gap=gap),
        )
        why = said("It goes on where the line of play of hole {other} ends.", other=other.number)
        return offer(
            "join_pieces",
            fault,
            why,
            [Choice(said("Join it to hole {other}", other=other.number), edits, adds)],
        )
    return None


def _told_by_ground(setting: Setting, fault: Fault, line: LineThing) -> Proposal | None:
    votes: Counter[int] = Counter()
    for green in setting.greens:
        if green.shape.covers(line.end):
            votes.update(numbers_of(green))
    for near, what in ((setting.tees, line.start), (setting.pins, line.end)):
        for thing in near:
            if thing.shape.distance(what) <= AT_TEE:
                votes.update(numbers_of(thing))
    free = [number for number, _ in votes.most_common() if number not in _taken(setting)]
    choices = [
        Choice(said("Take it as hole {number}", number=number), (_numbered(setting, line, number),))
        for number in free[:4]
    ]
    return offer(
        "number_hole", fault, said("The tee, the green or the pin at its ends has this number."), choices
    )


def renumber(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose for one of the lines of play with the same number that of a hole without one, or to do without it."""
    same = [line for line in setting.lines if line.number == fault.hole and line.plain]
    free = without_line(setting)
    if len(same) < 2 or not free:
        return None
    ways = sorted((_away(setting, line, number), line.ident, number) for line in same for number in free)
    by_ident = {line.ident: line for line in same}
    choices = [
        Choice(
            said("Take {line} as hole {number}, which has no line of play", line=ident, number=number),
            (_numbered(setting, by_ident[ident], number),),
        )
        for _, ident, number in ways[:FEW_NUMBERS]
    ]
    choices += [
        Choice(
            said("{line} is no hole of this course: take it off the map", line=line.ident),
            setting.remove(line.ident),
        )
        for line in same
    ]
    why = said(
        "Two lines of play have one number, and another hole has none: perhaps a slip of the pen; those come first that would fit."
    )
    return offer("number_hole", fault, why, choices)


def without_line(setting: Setting) -> list[int]:
    """Return the numbers of holes that have no line of play, up to the last hole of a course of usual size."""
    taken = _taken(setting)
    most = next((one for one in _USUAL if one >= max(len(setting.lines), *taken, 1)), MOST)
    return [number for number in range(1, most + 1) if number not in taken]


def _away(setting: Setting, line: LineThing, number: int) -> float:
    """How far a player would walk from the hole before and to the next; holes unknown on both sides come last."""
    by_number = {one.number: one for one in setting.lines if one.number is not None and one is not line}
    before, after = by_number.get(number - 1), by_number.get(number + 1)
    ways = [one.end.distance(line.start) for one in (before,) if isinstance(one, LineThing)]
    ways += [line.end.distance(one.start) for one in (after,) if isinstance(one, LineThing)]
    return sum(ways) / len(ways) if ways else float("inf")


def _chosen(setting: Setting, fault: Fault, line: LineThing) -> Proposal | None:
    choices = [
        Choice(said("Take it as hole {number}", number=number), (_numbered(setting, line, number),))
        for number in sorted(without_line(setting), key=lambda number: _away(setting, line, number))
    ]
    choices.append(
        Choice(said("It is no hole of this course: take it off the map"), setting.remove(line.ident))
    )
    why = said(
        "Nothing in the map tells its number; the holes that have no line of play yet come first where they would fit."
    )
    return offer("number_hole", fault, why, choices)


def _taken(setting: Setting) -> set[int]:
    return {one.number for one in setting.lines if one.number is not None and one.plain}
