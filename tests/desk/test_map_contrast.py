"""Edges on the map can be seen in bright light: 3 to 1 at least against the ground on either side.

The number is that of WCAG 2.2, success criterion 1.4.11 (non-text contrast); the formula that of its definition of
relative luminance.
"""

import re
from pathlib import Path

import pytest

import marram.desk

STYLE = Path(marram.desk.__file__).parent / "shell" / "static" / "map.css"
LEAST = 3.0
GROUND = ("boundary", "rough", "fairway", "teeing_area", "putting_green", "bunker", "trees", "water", "path")
BESIDE = {
    "boundary": ("boundary",),
    "rough": ("rough", "boundary"),
    "fairway": ("fairway", "rough", "boundary"),
    "teeing_area": ("teeing_area", "rough", "fairway", "boundary"),
    "putting_green": ("putting_green", "fairway", "rough", "boundary"),
    "bunker": ("bunker", "rough", "fairway", "putting_green", "boundary"),
    "trees": ("trees", "rough", "fairway", "boundary"),
    "water": ("water", "rough", "fairway", "boundary"),
    "path": ("path", "rough", "fairway", "boundary"),
}
"""What may lie on either side of an edge."""


def declared(kind: str, name: str) -> str:
    """Return a colour of the style sheet for a kind of ground."""
    rule = re.search(rf"^\.k-{kind} \{{([^}}]*)\}}", STYLE.read_text(encoding="utf-8"), re.MULTILINE)
    assert rule, kind
    colour = re.search(rf"(?:^|[ ;]){name}: (#[0-9a-f]{{6}})", rule[1])
    assert colour, (kind, name)
    return colour[1]


def luminance(colour: str) -> float:
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    lighter, darker = sorted((luminance(one), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def test_the_formula_is_that_of_the_standard() -> None:
    """Black on white is 21 to 1 (WCAG 2.2, contrast ratio)."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21)


@pytest.mark.parametrize("kind", GROUND)
def test_an_edge_stands_out_on_both_sides(kind: str) -> None:
    """The outline of each kind of ground is seen against it and against what may lie beside it."""
    edge = declared(kind, "stroke")
    found = {beside: round(contrast(edge, declared(beside, "fill")), 2) for beside in BESIDE[kind]}

    assert min(found.values()) >= LEAST, found
