"""Greens, tees and pins that belong to no hole, to two, or say they belong to one far away: asked, never guessed."""

from marram.course.fault import Fault
from marram.course.mending.lines import NEAR_GREEN, hole_on, numbers_of
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import LineThing, Setting, drawn
from marram.course.reading.shapes import hole_numbers
from marram.said import all_of, said

NEAR_TEE = 150.0
"""Lines of play that begin no further than this from a tee of no hole are offered, metres (own choice)."""


def name_green(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask of a green no hole ends on: the green of a hole near it that has none, or a practice green.

    Before any line of play is drawn nobody can tell.
    """
    green = setting.belonging.get(fault.feature)
    if green is None or not setting.lines:
        return None
    near = sorted(
        (
            (line.end.distance(green.shape), line)
            for line in setting.lines
            if line.number in setting.without_green
        ),
        key=lambda found: found[0],
    )
    choices = [
        Choice(
            said(
                "It is the green of hole {line}, {distance:.0f} m from the end of its line",
                line=line.number,
                distance=distance,
            ),
            (setting.retag(green.ident, ref=str(line.number)),),
        )
        for distance, line in near[:3]
        if distance <= NEAR_GREEN
    ]
    practice = setting.retag(green.ident, practice="yes")
    choices.append(
        Choice(said("It is a practice green"), (practice,), (said("it stays a wrong green on every hole"),))
    )
    if not near and fault.check == "green_of_no_hole":
        choices.append(
            Choice(said("It is not part of this course: take it off the map"), setting.remove(green.ident))
        )
    why = said("No line of play ends on it, and it names no hole of this map.")
    return offer("name_green", fault, why, choices)


def name_tee(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask which of the holes that begin near it a tee belongs to, or whether it is not in use."""
    tee = setting.belonging.get(fault.feature)
    if tee is None or not setting.lines:
        return None
    near = sorted(
        ((line.start.distance(tee.shape), line) for line in setting.lines if setting.is_hole(line)),
        key=lambda found: found[0],
    )
    choices = [
        Choice(
            said(
                "It is a tee of hole {line}, {distance:.0f} m from the start of its line",
                line=line.number,
                distance=distance,
            ),
            (setting.retag(tee.ident, ref=str(line.number)),),
        )
        for distance, line in near[:3]
        if distance <= NEAR_TEE
    ]
    if fault.check == "tee_of_two_holes" and len(near) > 1:
        both = sorted({near[0][1].number or 0, near[1][1].number or 0})
        choices.append(
            Choice(
                said("It is a tee of holes {both}", both=all_of(both)),
                (setting.retag(tee.ident, ref=";".join(map(str, both))),),
            )
        )
    golf = tee.tags.get("golf")
    if golf:
        unused = setting.retag(tee.ident, golf=None, disused__golf=golf)
        choices.append(
            Choice(
                said("It is not in use"),
                (unused,),
                (said("marked disused: it stays on the map, but counts for no hole"),),
            )
        )
    why = said(
        "A tee belongs to the hole it is used for, which only the Committee knows where several are near or none is."
    )
    return offer("name_tee", fault, why, choices)


def drop_unknown_hole(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to forget the holes a feature names that the map does not have."""
    if fault.feature not in setting.features or setting.course is None:
        return None
    tags = setting.tags(fault.feature)
    known = setting.course.holes
    changed: dict[str, str | None] = {}
    for key in ("ref", "holes"):
        numbers = hole_numbers(tags.get(key, ""))
        left = [str(number) for number in numbers if number in known]
        if len(left) < len(numbers):
            changed[key] = ";".join(left) or None
    if not changed:
        return None
    choice = Choice(
        said("Forget the holes that are not on the map"), (setting.retag(fault.feature, **changed),)
    )
    return offer(
        "drop_unknown_hole",
        fault,
        said("The map has no such hole; drawn first, it would keep this."),
        [choice],
    )


def one_green(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask which of the greens that say they belong to a hole is in use; the others no longer name it."""
    line = setting.line(fault)
    if line is None or line.number is None:
        return None
    number = line.number
    own = [green for green in setting.greens if number in numbers_of(green) or green.shape.covers(line.end)]
    choices = []
    for green in sorted(own, key=lambda one: one.shape.distance(line.end)):
        edits = []
        for other in own:
            if other.ident != green.ident and number in numbers_of(other):
                key = "holes" if number in hole_numbers(other.tags.get("holes", "")) else "ref"
                rest = ";".join(str(one) for one in numbers_of(other) if one != number) or None
                edits.append(setting.retag(other.ident, **{key: rest}))
        if not green.shape.covers(line.end):
            target = hole_on(setting, green)
            moved = type(line.path)([*list(line.path.coords)[:-1], (target.x, target.y)])
            edits.append(setting.redraw(line.ident, drawn(setting.plane.outward(moved))))
        away = green.shape.distance(line.end)
        where = (
            said("on which its line of play ends")
            if away == 0
            else said("{away:.0f} m from the end of its line", away=away)
        )
        adds = (said("the others are then wrong greens"),)
        choices.append(
            Choice(said("Use {green}, {where}", green=green.ident, where=where), tuple(edits), adds)
        )
    return offer(
        "one_green",
        fault,
        said("A hole has one green in use; another of its greens is a wrong green."),
        choices,
    )


def one_pin(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask which of several pins is the hole's."""
    line = setting.line(fault)
    if line is None:
        return None
    ends = [green for green in setting.greens if green.shape.covers(line.end)]
    own = [pin for pin in setting.pins if pin.number == line.number and pin.number is not None]
    own = own or [
        pin for pin in setting.pins if pin.number is None and any(g.shape.covers(pin.shape) for g in ends)
    ]
    choices = [
        Choice(
            said(
                "The hole is at {pin}, {distance:.1f} m from the end of its line",
                pin=pin.ident,
                distance=pin.shape.distance(line.end),
            ),
            setting.remove(*(other.ident for other in own if other.ident != pin.ident)),
            (said("the other pins go off the map"),),
        )
        for pin in sorted(own, key=lambda pin: pin.shape.distance(line.end))
    ]
    return offer("one_pin", fault, said("A hole is cut at one place."), choices if len(own) > 1 else [])


def share_pins(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose which pin of a double green is whose: each to the line of play that ends nearest."""
    line = setting.line(fault)
    green = next((one for one in setting.greens if line and one.shape.covers(line.end)), None)
    if line is None or green is None:
        return None
    lines = [one for one in setting.lines if one.number is not None and green.shape.covers(one.end)]
    pins = [pin for pin in setting.pins if pin.number is None and green.shape.covers(pin.shape)]
    edits = []
    left: list[LineThing] = list(lines)
    for pin in pins:
        nearest = min(left, key=lambda one: one.end.distance(pin.shape), default=None)
        if nearest is None:
            break
        left.remove(nearest)
        edits.append(setting.retag(pin.ident, ref=str(nearest.number)))
    also = [
        one
        for one in setting.faults
        if one.check == fault.check and one != fault and setting.line(one) in lines
    ]
    choice = Choice(said("Give each pin to the hole whose line ends nearest"), tuple(edits))
    why = said("Holes share this green; each line of play ends at or near its hole.")
    return offer("share_pins", fault, why, [choice], also=also)


def pin_off_green(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose what to do with a hole mapped outside its green: forget the pin, or the green's claim to the hole."""
    line = setting.line(fault)
    if line is None or line.number is None:
        return None
    number = line.number
    choices = [
        Choice(
            said("Take the pin {pin} off the map", pin=pin.ident),
            setting.remove(pin.ident),
            (said("the hole is where the line ends"),),
        )
        for pin in setting.pins
        if pin.number == number
    ]
    for green in setting.greens:
        away = green.shape.distance(line.end)
        if number not in numbers_of(green) or away == 0:
            continue
        if away <= NEAR_GREEN:
            target = hole_on(setting, green)
            moved = type(line.path)([*line.path.coords, (target.x, target.y)])
            edit = setting.redraw(line.ident, drawn(setting.plane.outward(moved)))
            choices.append(Choice(said("Lead the line of play on to {green}", green=green.ident), (edit,)))
        key = "holes" if number in hole_numbers(green.tags.get("holes", "")) else "ref"
        rest = ";".join(str(one) for one in numbers_of(green) if one != number) or None
        words = said("{green}, {away:.0f} m away, is not its green", green=green.ident, away=away)
        choices.append(Choice(words, (setting.retag(green.ident, **{key: rest}),)))
    return offer("pin_off_green", fault, said("A hole is cut in its green."), choices)
