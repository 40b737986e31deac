"""Back on the line: the stretches drawn against the line of the Rule (14.3b(3), 16.1c(2), 17.1d(2), 19.2b, 19.3)."""

import numpy as np
import shapely

from tests.relief.verifier import rule_limits as rules
from tests.relief.verifier.question import Violation

STEP = 0.1
"""Metres between the places tried along the line; the ends of its stretches are tried on both sides besides."""
OFF = 0.0015
THROUGH = 1e-4
"""Metres: how exactly the point is known that the line goes through; behind it the line may turn by as much."""
LOOKED_AT = 120.0
"""Metres behind the point that are tried for stretches left out."""


def check_line(question, ground, option, area, *, ball, crossing):
    """Yield where a line is drawn that is none, or left out where it is one."""
    through = crossing if "crossing" in option["reference"] else ball
    limits = rules.on_course(ground)
    if question.edition >= 2023:  # until then only the area about the point chosen was limited, not the point
        limits += rules.area_limits(ground, option, ball=ball, crossing=crossing, reference=through) or []
    start = np.hypot(*(through - ground.hole))
    towards = (through - ground.hole) / start
    spot = area.reference
    yield from _on_line(ground, spot, towards, start, "the example spot")
    lines = [*area.marks("drop_line"), *area.marks("reference_line")]
    stretches = []
    for line in lines:
        ends = shapely.get_coordinates(line)
        for end in ends:
            yield from _on_line(ground, end, towards, start, "an end of the line")
        behind = np.sort((ends - ground.hole) @ towards - start)
        stretches.append((float(behind[0]), float(behind[-1])))
    if not limits:
        return
    tried = [np.arange(0, LOOKED_AT, STEP)]
    for low, high in stretches:
        tried.append(np.array([low - 0.003, low + 0.003, high - 0.003, high + 0.003]))
        tried.append(np.arange(low, high, max(STEP, (high - low) / 3000)))
    behind = np.concatenate(tried)
    behind = behind[behind > 0.002]
    places = through + behind[:, None] * towards
    strict, lenient, which = rules.least_and_most(limits, places, 1.0)
    drawn = np.zeros(len(behind), dtype=bool)
    for low, high in stretches:
        drawn |= (behind >= low - 1e-4) & (behind <= high + 1e-4)
    wrong = drawn & (lenient < -OFF)
    for index in np.unique(which[wrong]):
        mine = np.flatnonzero(wrong & (which == index))
        limit = limits[index]
        yield Violation(
            f"line {limit.name}",
            f"{len(mine)} places on the line, {-lenient[mine].min():.3f} m beyond ({limit.rule})",
            tuple(places[mine[0]]),
            float(-lenient[mine].min()),
        )
    if question.edition >= 2023:
        longest = max((high for _, high in stretches), default=0.0)
        missed = ~drawn & (strict > OFF) & ((behind < longest) | (ground.bounds is not None))
        if missed.any():
            yield Violation(
                "line left out",
                f"{missed.sum()} places allowed but not drawn",
                tuple(places[missed][0]),
                float(strict[missed].max()),
            )


def _on_line(ground, spot, towards, start, what):
    gone = spot - ground.hole
    off = abs(towards[0] * gone[1] - towards[1] * gone[0])
    if off > OFF + THROUGH * max(0.0, gone @ towards / start - 1):
        yield Violation(
            "off the line", f"{what} lies {off:.4f} m off the line from the hole", tuple(spot), float(off)
        )
    if gone @ towards < start - OFF:
        yield Violation(
            "line nearer the hole",
            f"{what} lies {start - gone @ towards:.4f} m nearer than the point",
            tuple(spot),
        )
