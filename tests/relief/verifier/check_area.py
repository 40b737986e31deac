"""One drawn area against the limits of its Rule: every place tried, every corner, every measure."""

import numpy as np
import shapely

from tests.relief.verifier import places as tried
from tests.relief.verifier import rule_limits as rules
from tests.relief.verifier.clear_places import taken_region
from tests.relief.verifier.ground import CONDITIONS, LEAST_PATH, MOST_PATH
from tests.relief.verifier.joined import JOINED
from tests.relief.verifier.question import Violation
from tests.relief.verifier.regions import Region, Shape

_BALL = 0.04267 / 2

SLACK = 0.0015
"""Metres: the layer's tolerance (1 mm), the last digit of a drawn corner (0.1 mm) and of a drawn arc (0.1 mm)."""
VERDICTS = 45
"""Places of each area whose verdict is asked for one by one (near limits first), besides all that the picture tells."""


def limits_for(question, ground, option, area, *, ball, crossing):
    """Return the limits of a drawn area, or ``None`` where the map leaves them open."""
    reference = area.reference
    if option["kind"] == "dropping_zone":
        zones = ground.region(ground.course.of_kind("zone"))
        return [rules.inside(zones, "outside the dropping zone", "E-1")]
    place = rules.area_limits(ground, option, ball=ball, crossing=crossing, reference=reference)
    if place is None:
        return None
    found = [*place, *rules.on_course(ground)]
    if option["kind"] == "extended":
        width = 2 * question.club_length
        fairway = area.point("fairway_point")
        found += _as_far_as_drawn(area)
        return [
            rules.corridor(ground.hole, reference, fairway, width),
            rules.not_nearer(ground.hole, reference, "E-5"),
            *found,
        ]
    size = rules.wanted_size(option)
    found.insert(0, rules.within(reference, size * question.club_length))
    found.insert(1, rules.not_nearer(ground.hole, start_of(question, option, reference, ball, crossing)))
    if option["kind"] == "free" and area.footprint is not None and area.marks("shift"):
        window = area.polygon.buffer(0.3).bounds
        taken = taken_region(condition_of(ground, ball, area), area.footprint, window)
        rule = "Definition of nearest point of complete relief"
        found.append(rules.Limit("interference is left", rule, taken.outside, 0))
    return found


def _as_far_as_drawn(area):
    """Where the area goes on beyond the drawing and says so, places at the drawing's rim are left open."""
    if not any("goes_on" in key or "goes on" in key for key in area.properties.get("assumed", [])):
        return []
    low, high = np.reshape(area.polygon.bounds, (2, 2))

    def margins(places, reach):
        inside = np.minimum(places - low, high - places).min(axis=1) - 0.5
        return np.clip(inside, -reach, reach), np.full(len(places), reach)

    return [rules.Limit("beyond the drawing", "", margins)]


def start_of(question, option, reference, ball, crossing):
    """Return the point than which a place must not be nearer the hole.

    Back on the line since 2023 it is the point the line goes through, until then the point chosen on it
    (16.1c(2), 17.1d(2), 19.2b); elsewhere the reference point.
    """
    if option["kind"] == "back_on_the_line" and question.edition >= 2023:
        return crossing if "crossing" in option["reference"] else ball
    return reference


def condition_of(ground, ball, area):
    """Return what relief is taken from: at least what the ball or footprint meets there, at most what is drawn too."""
    drawn = [shapely.Polygon(one.exterior) for one in area.marks("condition")]
    footprint = shapely.transform(area.footprint, lambda points: points + ball)
    return conditions_at(ground, ball, footprint, shapely.union_all(drawn) if drawn else None)


def conditions_at(ground, ball, footprint, drawn=None):
    """Return the region of the conditions met at a ball: where one touches it that one, else those in the way.

    What joins a condition of its own kind is one with it. Relief is taken from one condition at a time, but the
    other ones met may be taken with it (Definition of nearest point of complete relief).
    """
    wrong = [one for one in ground.course.of_kind("green") if one is not ground.own_green]
    groups = [*(ground.course.of_kind(kind) for kind in CONDITIONS), wrong]
    met = []
    for things in groups:
        pairs = [ground.laid(one, LEAST_PATH, MOST_PATH) for one in things]
        for met_by in (shapely.Point(ball).buffer(_BALL), footprint):
            start = [pair for pair in pairs if pair[0].intersects(met_by)]
            if start:
                met.append((met_by is not footprint, _with_joined(start, pairs)))
                break
    if not met:
        return Region.of(drawn if drawn is not None else shapely.Polygon())
    touching = [pairs for touches, pairs in met if touches]
    ways = touching or [pairs for _, pairs in met]
    if drawn is not None:  # of several in the way of stance or swing the player takes whichever one is drawn
        ways = [pairs for pairs in ways if any(low.intersects(drawn) for low, _ in pairs)] or ways
    surely = [low for low, _ in ways[0]]
    perhaps = [high for _, pairs in met for _, high in pairs]
    return Region.of(
        shapely.union_all(surely), shapely.union_all([*perhaps, *([] if drawn is None else [drawn])])
    )


def _with_joined(start, pairs):
    found, edge = list(start), list(start)
    while edge:
        here = edge.pop()
        for other in pairs:
            if not any(other is one for one in found) and other[0].distance(here[0]) <= JOINED:
                found.append(other)
                edge.append(other)
    return found


def check_places(ground, area, limits, accepts, counts):
    """Yield the places that are wrongly accepted or wrongly refused, by the verdict or by the picture."""
    polygon = area.polygon
    shape = Shape(polygon)
    low, high = np.reshape(polygon.bounds, (2, 2)) + np.array([[-0.1], [0.1]])

    def judge(places, reach):
        strict, lenient, _ = rules.least_and_most(limits, places, reach)
        return strict, lenient, shape.depth(places, reach)

    fine, settled, coarse = tried.graded(low, high, tried.fineness(low, high), judge)
    inside, outside = tried.beside_edge(polygon)
    corners = shapely.get_coordinates(polygon)
    every = np.vstack([fine, coarse, inside, outside, corners])
    strict, lenient, which = rules.least_and_most(limits, every)
    counts["places"] += settled + len(every)
    drawn = shape.holds(every)
    yield from _corners(limits, corners, lenient[-len(corners) :], which[-len(corners) :])
    checked = slice(0, len(every) - len(corners))
    yield from _compare(
        "drawn", limits, every[checked], drawn[checked], strict[checked], lenient[checked], which[checked]
    )
    some = _chosen(strict[checked], lenient[checked], len(fine), len(coarse))
    verdicts = accepts(ground.flat.degrees(every[some]))
    counts["verdicts"] += len(some)
    yield from _compare("accepted", limits, every[some], verdicts, strict[some], lenient[some], which[some])
    at_rest = every[some][::2]
    strict, lenient, which = rules.least_and_most(limits, at_rest, ball=rules.BALL)
    verdicts = accepts(ground.flat.degrees(at_rest), rules.BALL)
    counts["verdicts"] += len(at_rest)
    yield from _compare("ball at rest accepted", limits, at_rest, verdicts, strict, lenient, which)


def _chosen(strict, lenient, fine, coarse):
    """Return which places are asked for one by one: beside the drawn edge, near a limit, and all over."""
    third = VERDICTS // 3
    near = np.argsort(np.minimum(np.abs(strict[:fine] - 2 * SLACK), np.abs(lenient[:fine] + 2 * SLACK)))
    return np.concatenate(
        [
            _thinned(np.arange(fine + coarse, len(strict)), third),
            near[:third],
            fine + _thinned(np.arange(coarse), third),
        ]
    )


def _thinned(indices, count):
    return indices[:: max(1, len(indices) // count)][:count]


def _corners(limits, corners, lenient, which):
    worst = int(np.argmin(lenient))
    if lenient[worst] < -SLACK:
        limit = limits[which[worst]]
        yield Violation(
            f"drawn {limit.name}",
            f"a corner of the area lies {-lenient[worst]:.4f} m beyond ({limit.rule})",
            tuple(corners[worst]),
            float(-lenient[worst]),
        )


def _compare(verb, limits, places, taken, strict, lenient, which):  # noqa: PLR0917
    wrong = taken & (lenient < -SLACK)
    for index in np.unique(which[wrong]):
        mine = np.flatnonzero(wrong & (which == index))
        worst = mine[np.argmin(lenient[mine])]
        limit = limits[index]
        yield Violation(
            f"{verb} {limit.name}",
            f"{len(mine)} places, the worst {-lenient[worst]:.4f} m beyond ({limit.rule})",
            tuple(places[worst]),
            float(-lenient[worst]),
        )
    missed = ~taken & (strict > SLACK)
    if missed.any():
        worst = np.flatnonzero(missed)[np.argmax(strict[missed])]
        yield Violation(
            f"not {verb} though allowed",
            f"{missed.sum()} places, the worst {strict[worst]:.4f} m inside every limit",
            tuple(places[worst]),
            float(strict[worst]),
        )
