"""One answer against the Rules: its size, its reference point, its areas, its line; or why nothing is drawn."""

import numpy as np
import shapely

from tests.relief.verifier import places as tried
from tests.relief.verifier import rule_limits as rules
from tests.relief.verifier.check_area import SLACK, check_places, limits_for
from tests.relief.verifier.check_line import check_line
from tests.relief.verifier.check_nothing import check_nothing_drawn
from tests.relief.verifier.check_reference import check_reference
from tests.relief.verifier.drawn_area import DrawnArea
from tests.relief.verifier.question import Violation


def check_answer(question, ground, answer, counts):
    """Yield every violation of one option's answer."""
    option = answer.option
    ball = ground.flat.metres([question.ball])[0]
    crossing = None if question.crossing is None else ground.flat.metres([question.crossing])[0]
    size = rules.wanted_size(option)
    if (
        size != "unknown"
        and size != option["club_lengths"]
        and not (size is None and not option["club_lengths"])
    ):
        yield Violation(
            "club-lengths", f"{option['citation']}: {option['club_lengths']}, the Rule says {size}"
        )
    if answer.state != "Drawn":
        asked = "width" in answer.why
        if answer.state == "Refused" and not asked:
            yield Violation("refused", answer.why)
        yield from check_nothing_drawn(question, ground, answer, ball=ball, crossing=crossing)
        return
    for number, features in enumerate(answer.features):
        area = DrawnArea(tuple(features), ground.flat)
        counts["areas"] += 1
        faults = list(area.faults_of_rings())
        yield from (Violation("ring", fault) for fault in faults)
        hole = area.point("hole")
        if hole is not None and np.hypot(*(hole - ground.hole)) > SLACK:
            yield Violation("hole", f"drawn {np.hypot(*(hole - ground.hole)):.3f} m from where it is cut")
        reference = area.reference
        if (
            reference is None
            and option["kind"] != "dropping_zone"
            and area.properties.get("radius_m") is not None
        ):
            yield Violation("reference", "no reference point is drawn")
            continue
        yield from _measures(area, answer.measures[number] if answer.measures else ())
        moved = area.point("crossing_point")
        here = moved if moved is not None else crossing
        yield from check_reference(question, ground, option, area, ball=ball, crossing=crossing)
        if faults:
            continue
        if option["kind"] == "back_on_the_line":
            yield from check_line(question, ground, option, area, ball=ball, crossing=here)
        if option["kind"] in {"stroke_and_distance", "replay"} and area.properties.get("radius_m") is None:
            yield from _teeing_area(ground, area)
            continue
        limits = limits_for(question, ground, option, area, ball=ball, crossing=here)
        if limits is None:
            counts["open"] += 1
            continue
        if area.polygon.geom_type == "Point" and area.properties.get("radius_m") != 0:
            yield from _no_more_than_a_point(area, limits)
            continue
        if area.polygon.geom_type == "Point":
            yield from _spot(option, area, limits, ball=ball)
            continue
        yield from check_places(ground, area, limits, answer.accepts[number], counts)


def _measures(area, measures):
    """The tape measures fit the marks they name."""
    for start, end, metres in measures:
        one, other = area.point(start), area.point(end)
        if end == "club_lengths" or one is None or other is None:
            continue
        if abs(np.hypot(*(one - other)) - metres) > SLACK:
            yield Violation(
                "measure", f"{start} to {end}: said {metres:.3f} m, drawn {np.hypot(*(one - other)):.3f} m"
            )
    radius, club, lengths = (
        area.properties.get(name) for name in ("radius_m", "club_length_m", "club_lengths")
    )
    if radius and lengths is not None and abs(radius - club * lengths) > 1e-9:
        yield Violation("measure", f"radius {radius} is not {lengths} of {club}")


def _no_more_than_a_point(area, limits):
    """An area drawn as a point has no room: no place near is well inside every limit."""
    places, _ = tried.grid(area.reference - 2.5, area.reference + 2.5)
    strict, _, _ = rules.least_and_most(limits, places)
    if strict.max() > 0.01:
        yield Violation(
            "drawn as a point though there is room",
            f"{strict.max():.3f} m inside every limit",
            tuple(places[np.argmax(strict)]),
        )


def _spot(option, area, limits, *, ball):
    at = np.array(area.polygon.coords[0])
    rest = [one for one in limits if one.name != "size"]
    if option["kind"] in {"stroke_and_distance", "replay"}:
        if np.hypot(*(at - area.reference)) > SLACK:
            yield Violation("spot", "not where the previous stroke was made")
        return
    if option["kind"] == "under_where_it_came_to_rest" and np.hypot(*(at - ball)) > SLACK:
        yield Violation("spot", "not under the ball")
    _, lenient, which = rules.least_and_most(rest, at[None], 10.0)
    if rest and lenient[0] < -SLACK:
        limit = rest[which[0]]
        yield Violation(
            f"spot {limit.name}", f"{-lenient[0]:.4f} m beyond ({limit.rule})", tuple(at), float(-lenient[0])
        )


def _teeing_area(ground, area):
    """Played from anywhere inside the teeing area (14.6a): all that is drawn is teeing area of this hole."""
    if ground.tees.empty:
        return
    corners = shapely.get_coordinates(area.polygon)
    _, high = ground.tees.inside(corners, 10.0)
    if high.min() < -SLACK:
        worst = int(np.argmin(high))
        yield Violation(
            "drawn not in the teeing area",
            f"a corner {-high[worst]:.3f} m beyond (14.6a)",
            tuple(corners[worst]),
        )
