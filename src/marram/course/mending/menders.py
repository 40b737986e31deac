"""Which mending is tried for which fault, the surest first."""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace

from marram.course.fault import Fault, Severity
from marram.course.mending import belongings, edges, figures, lines, numbers, places, shapes, unsettled
from marram.course.mending.courses import course_name, which_course, which_outline
from marram.course.mending.proposal import Proposal
from marram.course.mending.setting import Setting
from marram.course.mending.untangling import untangle
from marram.course.mending.waiting import with_waiting

Mender = Callable[[Setting, Fault], Proposal | None]

MENDERS: Mapping[str, tuple[Mender, ...]] = {
    "not_a_feature": (shapes.leave_out,),
    "not_wgs84": (places.transform,),
    "out_of_range": (places.swap, places.turn_back, shapes.leave_out),
    "misplaced": (places.swap, shapes.leave_out),
    "perhaps_swapped": (places.swap_all,),
    "which_course": (which_outline,),
    "unknown_tag": (figures.read_tag, shapes.leave_out),
    "not_a_number": (figures.read_number,),
    "no_geometry": (shapes.take_parts, shapes.leave_out),
    "bad_position": (shapes.read_positions, shapes.leave_out),
    "too_short": (shapes.leave_out,),
    "open_ring": (shapes.close_ring, shapes.leave_out),
    "invalid_geometry": (untangle, shapes.leave_out),
    "doubled_position": (shapes.drop_doubled,),
    "incomplete": (shapes.take_known, shapes.leave_out),
    "point_for_area": (shapes.leave_out,),
    "boundary_gap": (edges.close_boundary,),
    "no_boundary": (edges.outline_is_boundary,),
    "outline_as_boundary": (edges.outline_is_boundary,),
    "area_outside": (edges.fit_boundary,),
    "all_out_of_bounds": (edges.mark_boundary,),
    "hole_not_a_line": (lines.join_pieces, shapes.leave_out),
    "repeated_hole": (lines.one_line, numbers.renumber, numbers.number_hole),
    "hole_backwards": (lines.turn_line,),
    "hole_without_number": (numbers.number_hole,),
    "hole_without_green": (lines.turn_line, lines.end_on_green),
    "hole_off_green": (belongings.pin_off_green,),
    "hole_unknown": (belongings.drop_unknown_hole,),
    "two_greens": (belongings.one_green,),
    "two_pins": (belongings.one_pin,),
    "pin_of_double_green": (belongings.share_pins,),
    "green_of_no_hole": (belongings.name_green,),
    "tee_of_no_hole": (belongings.name_tee,),
    "tee_of_two_holes": (belongings.name_tee,),
    "tee_far_off": (belongings.name_tee,),
    "no_par": (figures.set_par,),
    "unusual_par": (figures.set_par,),
    "two_values": (figures.choose_value,),
    "no_stroke_index": (figures.set_stroke_index,),
    "bad_stroke_index": (figures.set_stroke_index,),
    "repeated_stroke_index": (figures.set_stroke_index,),
    "penalty_area_colour": (figures.set_colour,),
    "coast_backwards": (edges.turn_coast,),
    "water_without_status": (figures.mark_water,),
    "barrier_without_status": (unsettled.settle_barrier,),
    "wetland_without_status": (unsettled.settle_wetland,),
}
"""For each check the mendings, of which the first that has something to propose is shown."""

MANY = 3
"""Of more repeated hole numbers than this, several courses are the likelier reason than lines drawn twice (own choice)."""


def proposals_for(setting: Setting) -> tuple[Proposal, ...]:
    """Return how the faults of a map can be mended, in the order of the faults, each change proposed once."""
    found: dict[tuple[str, ...], Proposal] = {}
    for one in with_waiting(setting, tuple(_with_effect(setting, _proposals(setting)))):
        changes = tuple(choice.mark for choice in one.choices)
        known = found.get(changes)
        found[changes] = one if known is None else _together(known, one)
    return tuple(found.values())


def _together(known: Proposal, other: Proposal) -> Proposal:
    """Return a proposal that answers what another with the same changes answers as well."""
    also = (*known.also, other.fault, *other.also)
    return replace(known, also=also, waiting=(*known.waiting, *other.waiting))


def _proposals(setting: Setting) -> Iterator[Proposal]:
    asked = _course_asked(setting)
    first = [] if asked is None else [asked]
    first += [
        found
        for fault in setting.faults
        if fault.check in {"holes_missing", "no_holes"}
        for found in lines.missing_lines(setting, fault)
    ]
    covered = {id(fault) for one in first for fault in (one.fault, *one.also)}
    for fault in setting.faults:
        yield from (one for one in first if one.fault is fault)
        if id(fault) in covered:
            continue
        for mender in MENDERS.get(fault.check, ()):
            if (found := mender(setting, fault)) is not None:
                covered |= {id(one) for one in found.also}
                yield found
                break


def _with_effect(setting: Setting, proposals: Iterable[Proposal]) -> Iterator[Proposal]:
    """Yield proposals with the choices that change the map: one that leaves it as it is would be offered for ever."""
    for one in proposals:
        choices = tuple(
            choice for choice in one.choices if any(setting.is_change(edit) for edit in choice.edits)
        )
        if choices:
            yield one if len(choices) == len(one.choices) else replace(one, choices=choices)


def _course_asked(setting: Setting) -> Proposal | None:
    """Return the question which of several courses is meant, where hole numbers repeat for no other reason."""
    repeated = [fault for fault in setting.faults if fault.check == "repeated_hole"]
    twice = [fault for fault in repeated if lines.one_line(setting, fault) is not None]
    slips = (
        repeated
        and len(repeated) <= len(numbers.without_line(setting))
        and not any(course_name(setting, line) for line in setting.lines)
    )
    if (twice or slips) and len(repeated) <= MANY:
        return None
    by_ident = {line.ident: line for line in setting.lines}
    written = [
        fault
        for fault in setting.faults
        if fault.check == "hole_without_number"
        and (line := by_ident.get(fault.feature))
        and line.number is not None
    ]
    return which_course(
        setting, sorted([*repeated, *written], key=lambda fault: list(Severity).index(fault.severity))
    )
