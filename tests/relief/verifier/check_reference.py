"""The reference point of an area: where it must be, and for a nearest point that no place allowed is nearer."""

import numpy as np
import shapely

from tests.relief.verifier import rule_limits as rules
from tests.relief.verifier.check_area import SLACK, condition_of
from tests.relief.verifier.clear_places import meets, nearer_place
from tests.relief.verifier.question import Violation

LOW_SWING = 1.2
"""Metres: a whole swing reaches farther than this from the ball (common practice)."""
NEARER = 0.0015
"""Metres by which a place must be nearer than the reference point to count against it."""


def check_reference(question, ground, option, area, *, ball, crossing):
    """Yield what is wrong with the reference point."""
    reference, kind = area.reference, option["kind"]
    if reference is None:
        return
    named = option["reference"]
    if named in {"crossing_point", "line_through_crossing_point"}:
        at = area.point("crossing_point")
        same = ground.left(ball, crossing)
        low, high = (one[0] for one in same.inside(at[None], 10.0))
        off = 0.0 if low <= SLACK <= high + 2 * SLACK else min(abs(low), abs(high))
        if off > SLACK:
            yield Violation(
                "crossing point", f"{off:.3f} m from the edge of the penalty area (17.1d)", tuple(at), off
            )
        moved, least = (
            np.hypot(*(at - crossing)),
            min(abs(one[0]) for one in same.inside(crossing[None], 10.0)),
        )
        if moved > least + SLACK and same.most is same.least:
            yield Violation(
                "crossing point", f"moved {moved:.3f} m, the edge is {least:.3f} m away", tuple(at), moved
            )
    elif named == "previous_stroke":
        if question.previous and area.properties.get("radius_m") is not None:
            yield from _at(reference, ground.flat.metres([question.previous])[0], "previous spot (14.6)")
    elif named in {"ball", "under_ball", "line_through_ball"}:
        spot = area.point("ball")
        yield from _at(spot, ball, "spot of the ball")
    elif kind == "extended":
        yield from _two_points(question, ground, area, ball)
    elif named == "behind_embedded_ball":
        yield from _behind(ground, reference, ball)
    elif named == "nearest_spot_in_general_area":
        yield from _nearest_in_general_area(ground, reference, ball)
    elif named == "nearest_point" and area.footprint is not None:
        yield from _nearest_point(question, ground, option, area, ball=ball, crossing=crossing)


def _at(found, wanted, name):
    if found is not None and np.hypot(*(found - wanted)) > SLACK:
        yield Violation("reference", f"{name}: {np.hypot(*(found - wanted)):.4f} m off", tuple(found))


def _behind(ground, reference, ball):
    """Right behind the ball, on the line from the hole (16.3b): touching it, no farther than a ball."""
    away = np.hypot(*(ball - ground.hole))
    gone = reference - ball
    along = gone @ (ball - ground.hole) / away
    if np.hypot(*gone) > 0.045 or along < -SLACK or abs(np.hypot(*gone) - along) > SLACK:
        yield Violation("reference", "not right behind the ball (16.3b)", tuple(reference))


def _nearest_in_general_area(ground, reference, ball):
    """Since 2023: the nearest spot in the general area, not nearer the hole, to the spot behind (16.3b)."""
    behind = ball + (ball - ground.hole) / np.hypot(*(ball - ground.hole)) * 0.04267 / 2
    limits = [
        *rules.in_area(ground, "general"),
        *rules.on_course(ground),
        rules.not_nearer(ground.hole, behind),
    ]
    _, lenient, which = rules.least_and_most(limits, reference[None], 10.0)
    if lenient[0] < -SLACK:
        yield Violation("reference", f"{limits[which[0]].name} (16.3b)", tuple(reference), float(-lenient[0]))
    away = np.hypot(*(reference - behind))
    step = max(0.02, away / 60)
    x, y = np.meshgrid(np.arange(-away, away, step), np.arange(-away, away, step))
    tried = behind + np.column_stack([x.ravel(), y.ravel()])
    strict, _, _ = rules.least_and_most(limits, tried)
    far = np.hypot(*(tried - behind).T)
    good = (strict > SLACK) & (far < away - NEARER - 0.022)
    if good.any():
        yield Violation(
            "reference not nearest",
            f"a spot {far[good].min():.3f} m away, drawn {away:.3f} m (16.3b)",
            tuple(reference),
            float(away - far[good].min()),
        )


def _nearest_point(question, ground, option, area, *, ball, crossing):
    """The nearest point of complete relief: clear, in the area required, not nearer the hole, and none nearer."""
    point = area.reference
    required = rules.area_limits(ground, option, ball=ball, crossing=crossing, reference=point)
    if required is None:
        return
    limits = [*required, *rules.on_course(ground), rules.not_nearer(ground.hole, ball)]
    conditions = condition_of(ground, ball, area)
    if ground.area_at(ball, rules.BALL) == {"green"}:
        yield from _line_of_play(ground, conditions, point)
        limits.append(rules.line_of_play(ground.hole, conditions))
    _, lenient, which = rules.least_and_most(limits, point[None], 10.0)
    if lenient[0] < -SLACK:
        limit = limits[which[0]]
        yield Violation(
            f"reference {limit.name}",
            f"{-lenient[0]:.4f} m beyond ({limit.rule})",
            tuple(point),
            float(-lenient[0]),
        )
    footprint = area.footprint
    if meets(conditions.least.geometry, footprint, point[None], slack=SLACK)[0]:
        yield Violation(
            "reference interference is left", "lie, stance or swing meets the condition there", tuple(point)
        )
    yield from _sides(question, ground, footprint, ball)
    reach = np.hypot(*shapely.get_coordinates(footprint).T).max()
    things = ground.course.of_kind("obstruction")
    tall = ground.region([one for one in things if {"building", "barrier"} & one.tags.keys()]).least.geometry
    if reach < LOW_SWING and any(
        one.intersection(tall).area > 0.5 * shapely.Polygon(one.exterior).area
        for one in area.marks("condition")
    ):
        yield Violation(
            "tall thing, low swing", f"lie, stance and swing reach {reach:.2f} m at a building or wall"
        )
    away = float(np.hypot(*(point - ball)))
    found = nearer_place(conditions, footprint, limits, ball, away - NEARER)
    if found is not None:
        yield Violation(
            "reference not nearest",
            f"a place {found[1]:.3f} m away is allowed, drawn {away:.3f} m",
            tuple(found[0]),
            away - found[1],
        )


def _line_of_play(ground, conditions, point):
    """For a ball on the putting green the line of play is clear of the condition too (16.1a(1))."""
    line = shapely.LineString([point, ground.hole])
    if shapely.intersects(conditions.least.geometry.buffer(-SLACK), line):
        yield Violation(
            "reference interference is left", "the condition lies on the line of play", tuple(point)
        )


def _sides(question, ground, footprint, ball):
    """The stance is on the player's side: left of the line of play for a right-handed stroke."""
    towards = (ground.hole - ball) / np.hypot(*(ground.hole - ball))
    middle = np.array(footprint.centroid.coords[0])
    left = towards[0] * middle[1] - towards[1] * middle[0]
    if (left > 0) != question.right_handed:
        yield Violation("stance", "on the wrong side of the ball for this player")


def _two_points(question, ground, area, ball):
    """Model Local Rule E-5: the ball's point on the course, the fairway's the nearest to it not nearer the hole."""
    at, fairway = area.reference, area.point("fairway_point")
    if question.boundary is not None:
        given = ground.flat.metres([question.boundary])[0]
        edges = [
            one.least.geometry for one in (ground.bounds, ground.out) if one is not None and not one.empty
        ]
        off = shapely.union_all([shapely.boundary(one) for one in edges]).distance(shapely.Point(given))
        if np.hypot(*(at - given)) > off + SLACK:
            yield Violation(
                "reference",
                f"{np.hypot(*(at - given)):.3f} m from where it crossed the boundary, the edge is {off:.3f} m away",
            )
    else:
        yield from _at(at, ball, "spot of the ball (E-5)")
    if ground.bounds is not None:
        margins = [limit.margins(at[None], 60.0)[1][0] for limit in rules.on_course(ground)]
        if min(margins) < -SLACK:
            yield Violation(
                "reference out of bounds",
                f"the ball reference point lies {-min(margins):.2f} m out (E-5)",
                tuple(at),
                float(-min(margins)),
            )
    least = np.hypot(*(at - ground.hole))
    if np.hypot(*(fairway - ground.hole)) < least - SLACK:
        yield Violation("fairway point nearer the hole", "(E-5)", tuple(fairway))
    if ground.fairways.empty:
        return
    tee = ground.mown_tees.inside(fairway[None])[1][0] if not ground.mown_tees.empty else -1.0
    high = ground.fairways.inside(fairway[None], 60.0)[1][0]
    if high < -SLACK and tee < -SLACK:
        for name, region in (
            ("penalty area", ground.penalty),
            ("bunker", ground.bunkers),
            ("green", ground.green),
            ("green", ground.wrong_greens),
        ):
            if not region.empty and region.inside(fairway[None])[0][0] > SLACK:
                yield Violation(
                    f"fairway point in a {name}", "(E-5: grass of the general area)", tuple(fairway)
                )
                break
        else:
            yield Violation(
                "fairway point not on the fairway",
                f"{-high:.3f} m beyond (E-5)",
                tuple(fairway),
                float(-high),
            )
    away = np.hypot(*(fairway - at))
    near = shapely.intersection(ground.fairways.least.geometry, shapely.Point(at).buffer(max(away, 1.0)))
    tried = _edge_and_inside(near, at, ground.hole, least)
    if len(tried):
        far = np.hypot(*(tried - at).T)
        good = np.hypot(*(tried - ground.hole).T) >= least - 1e-6
        if good.any() and far[good].min() < away - 0.01:
            best = tried[good][np.argmin(far[good])]
            yield Violation(
                "fairway point not nearest",
                f"one is {far[good].min():.2f} m away, drawn {away:.2f} m (E-5)",
                tuple(best),
                float(away - far[good].min()),
            )


def _edge_and_inside(near, ball, hole, least):
    """Places every 2 cm along the edge of fairway, and every 1 cm where the circle about the hole runs over it."""
    found = []
    if near.is_empty:
        return np.empty((0, 2))
    edge = shapely.boundary(near)
    count = int(min(20_000, edge.length / 0.02)) + 2
    found.append(
        shapely.get_coordinates(
            shapely.line_interpolate_point(
                shapely.get_parts(edge)[:, None],
                np.linspace(0, 1, max(2, count // max(1, len(shapely.get_parts(edge)))))[None],
                normalized=True,
            )
        )
    )
    reach = np.hypot(*(ball - hole))
    middle = np.arctan2(*(ball - hole)[::-1])
    spread = min(np.pi, 400 / max(reach, 1.0))
    angles = middle + np.linspace(-spread, spread, int(min(60_000, 2 * spread * reach / 0.01)) + 2)
    arc = hole + (least + 1e-6) * np.column_stack([np.cos(angles), np.sin(angles)])
    found.append(arc[shapely.contains_xy(near, arc[:, 0], arc[:, 1])])
    return np.vstack(found)
