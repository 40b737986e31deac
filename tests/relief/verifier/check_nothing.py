"""An option for which nothing was drawn: is there really no place?"""

import numpy as np
import shapely

from tests.relief.verifier import places as tried
from tests.relief.verifier import rule_limits as rules
from tests.relief.verifier.check_area import conditions_at
from tests.relief.verifier.clear_places import meets, nearer_place
from tests.relief.verifier.ground import CONDITIONS
from tests.relief.verifier.question import Violation
from tests.relief.verifier.usual_stance import usual_stance

ROOM = 0.05
"""Metres inside every limit: a place that has so much room cannot be overlooked."""
GRID = 0.1
"""Metres between the places that are tried for a ball on the putting green."""
SEARCHED = 12.0
"""Metres around the ball that are searched for a point of complete relief said not to exist."""


def check_nothing_drawn(question, ground, answer, *, ball, crossing):
    """Yield where a place exists although nothing was drawn."""
    option, kind = answer.option, answer.option["kind"]
    if answer.state == "Crash":
        yield Violation("crash", answer.why)
        return
    if answer.state == "NeedsPlace":
        yield from _needless(ground, answer, ball)
    if answer.state != "NoRelief":
        return
    if answer.why == "no_room" and kind == "lateral":
        about = crossing if crossing is not None else ball
        limits = [
            rules.within(about, rules.wanted_size(option) * question.club_length),
            rules.not_nearer(ground.hole, about),
            *(rules.area_limits(ground, option, ball=ball, crossing=crossing, reference=about) or []),
            *rules.on_course(ground),
        ]
        places, _ = tried.grid(about - 2.4, about + 2.4)
        strict, _, _ = rules.least_and_most(limits, places, 1.0)
        if strict.max() > ROOM:
            yield Violation(
                "no room though there is",
                f"{strict.max():.2f} m inside every limit",
                tuple(places[np.argmax(strict)]),
            )
    elif answer.why == "no_nearest_point":
        yield from _no_nearest_point(question, ground, option, ball, crossing)
    elif answer.why == "no_fairway_point" and not ground.fairways.empty:
        corners = shapely.get_coordinates(ground.fairways.least.geometry)
        least = np.hypot(*(ball - ground.hole))
        far = np.hypot(*(corners - ground.hole).T)
        if ground.area_at(ball) != {None} and far.max() > least + 1.0:
            yield Violation(
                "no fairway point though there is", f"one is {far.max() - least:.1f} m farther from the hole"
            )


def _needless(ground, answer, ball):
    """What the map shows at the ball is not asked for."""
    if "condition" not in answer.why.split(","):
        return
    wrong = not ground.wrong_greens.empty and ground.wrong_greens.inside(ball[None])[0][0] > 0
    if answer.option["citation"].startswith("13.1f") and wrong:
        yield Violation("asks for the wrong green the ball lies on", answer.why)
    # A ball in a no play zone is Rule 16.1f, another incident: Rule 16.1b may ask from which condition it is taken.
    known = [kind for kind in CONDITIONS if kind != "no_play"]
    touched = [ground.region(ground.course.of_kind(kind)).inside(ball[None])[0][0] > 0 for kind in known]
    if sum(touched) == 1 and not answer.option["citation"].startswith("13.1f"):
        yield Violation("asks for the condition the ball lies on", answer.why)


def _no_nearest_point(question, ground, option, ball, crossing):
    required = rules.area_limits(ground, option, ball=ball, crossing=crossing, reference=ball)
    if required is None:
        return
    limits = [*required, *rules.on_course(ground), rules.not_nearer(ground.hole, ball)]
    on_green = ground.area_at(ball, rules.BALL) == {"green"}
    if option["reference"] != "nearest_point":
        strict = _around(limits, ball)
        if strict > ROOM:
            yield Violation(
                "no nearest point though there is", f"a spot {strict:.2f} m inside every limit is near"
            )
        return
    footprint = usual_stance(ball, ground.hole, right_handed=question.right_handed, tall=True)
    conditions = conditions_at(ground, ball, shapely.transform(footprint, lambda points: points + ball))
    if conditions.empty:
        return
    if on_green:
        limits.append(rules.line_of_play(ground.hole, conditions))
        found = _clear_on_grid(conditions, footprint, limits, ball)
    else:
        found = nearer_place(conditions, footprint, limits, ball, SEARCHED)
    if found is not None:
        yield Violation(
            "no nearest point though there is",
            f"a place {found[1]:.2f} m away is clear and allowed",
            tuple(found[0]),
            found[1],
        )


def _clear_on_grid(conditions, footprint, limits, ball):
    """Return a place on a grid of 10 cm that is clear and allowed, and how far it is, or ``None``.

    For a ball on the putting green: whether the line of play is clear has no depth by which squares could be passed over.
    """
    along = np.arange(-SEARCHED, SEARCHED, GRID)
    x, y = np.meshgrid(ball[0] + along, ball[1] + along)
    places = np.column_stack([x.ravel(), y.ravel()])
    for one in limits:
        strict, _, _ = rules.least_and_most([one], places, 1.0)
        places = places[strict > ROOM]
    places = places[~meets(conditions.most.geometry.buffer(ROOM), footprint, places)]
    away = np.hypot(*(places - ball).T)
    return (places[np.argmin(away)], float(away.min())) if len(places) else None


def _around(limits, ball):
    places, _ = tried.grid(ball - 6.0, ball + 6.0)
    strict, _, _ = rules.least_and_most(limits, places, 1.0)
    return float(strict.max())
