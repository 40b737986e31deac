"""Walls, fences and wetlands of which nobody has said what they are for the Rules: asked once for all of a sort, or each."""

from collections.abc import Callable, Sequence

from marram.course.fault import Fault
from marram.course.lies.united import UnitedArea
from marram.course.lies.unsettled import barrier_name
from marram.course.lies.unsettled import unsettled as every_unsettled
from marram.course.mending.figures import COLOURS
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import Setting
from marram.course.model import Kind
from marram.course.versions.map_edits import Edit
from marram.said import Said, counted, joined, said

Retag = Callable[[str], Edit]


def settle_barrier(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask what a wall or fence is: all of its sort on the map at once, or this one alone."""
    every = _unsettled(setting, Kind.BARRIER)
    mine = _with(every, fault)
    if mine is None:
        return None
    sort = mine.pieces[0].feature.tags.get("barrier", "")
    alike = [one for one in every if one.pieces[0].feature.tags.get("barrier", "") == sort]
    name = barrier_name(mine.pieces[0].feature)
    ways: tuple[tuple[Said, Retag], ...] = (
        (
            said("immovable obstruction: free relief"),
            lambda ident: setting.retag(ident, marram="obstruction"),
        ),
        (
            said("boundary object: no free relief"),
            lambda ident: setting.retag(ident, marram="marking", marked_by=sort),
        ),
        (
            said("integral object: no free relief"),
            lambda ident: setting.retag(ident, marram="integral_object"),
        ),
    )
    choices = [
        Choice(joined(": ", _scope(areas, name), status), _edits(setting, areas, retag))
        for areas in ([alike, [mine]] if len(alike) > 1 else [[mine]])
        for status, retag in ways
    ]
    why = said("What stands there decides whether relief is free, and only the Committee can say it.")
    return offer("settle_barrier", fault, why, choices, also=_others(setting, alike, fault))


def settle_wetland(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask whether a wetland is a penalty area, and of which colour, or ground that is only wet."""
    mine = _with(_unsettled(setting, Kind.WETLAND), fault)
    if mine is None:
        return None
    choices = [
        Choice(
            said("It is a {colour} penalty area, its edge as drawn", colour=COLOURS[colour]),
            _edits(setting, [mine], lambda ident, golf=golf: setting.retag(ident, golf=golf)),  # type: ignore[misc]
        )
        for colour, golf in (("red", "lateral_water_hazard"), ("yellow", "water_hazard"))
    ]
    choices.append(
        Choice(
            said("It is wet ground, no penalty area"),
            _edits(setting, [mine], lambda ident: setting.retag(ident, penalty_area="no")),
        )
    )
    why = said("Water that stands is a penalty area, marked or not; ground that is only wet is none.")
    return offer("settle_wetland", fault, why, choices)


def _unsettled(setting: Setting, kind: Kind) -> list[UnitedArea]:
    return (
        [] if setting.course is None else [one for one in every_unsettled(setting.course) if one.kind is kind]
    )


def _with(areas: Sequence[UnitedArea], fault: Fault) -> UnitedArea | None:
    return next((one for one in areas if any(piece.ident == fault.feature for piece in one.features)), None)


def _scope(areas: Sequence[UnitedArea], name: Said) -> Said:
    if len(areas) == 1:
        return said("This {barrier}", barrier=name)
    return counted(
        "All {count} of this sort ({barrier})",
        "All {count} of this sort ({barrier})",
        len(areas),
        barrier=name,
    )


def _edits(setting: Setting, areas: Sequence[UnitedArea], retag: Retag) -> tuple[Edit, ...]:
    idents = dict.fromkeys(piece.ident for area in areas for piece in area.features)
    return tuple(retag(ident) for ident in idents if ident in setting.features)


def _others(setting: Setting, alike: Sequence[UnitedArea], fault: Fault) -> list[Fault]:
    firsts = {area.pieces[0].feature.ident for area in alike}
    return [
        one
        for one in setting.faults
        if one.check == fault.check and one.feature in firsts and one is not fault
    ]
