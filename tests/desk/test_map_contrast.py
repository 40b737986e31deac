"""Edges on the map can be seen in bright light and at night: 3 to 1 at least against the ground on either side, in every theme.

The number is that of WCAG 2.2, success criterion 1.4.11 (non-text contrast); the formula that of its definition of
relative luminance; 4.5 to 1 for text is criterion 1.4.3.
"""

import re

import pytest

from marram.desk.shell.assets import DESK
from tests.desk.styles import THEMES, contrast, declared

LEAST = 3.0
GRASS = ("rough", "fairway", "boundary")
BESIDE = {
    "boundary": ("boundary",),
    "rough": ("rough", "boundary"),
    "fairway": GRASS,
    "teeing_area": ("teeing_area", *GRASS),
    "putting_green": ("putting_green", *GRASS),
    "bunker": ("bunker", "putting_green", *GRASS),
    "trees": ("trees", *GRASS),
    "water": ("water", *GRASS),
    "path": ("path", *GRASS),
    "obstruction": ("obstruction", *GRASS),
    "red_penalty_area": ("red", *GRASS),
    "yellow_penalty_area": ("yellow", *GRASS),
    "ground_under_repair": ("repair", *GRASS),
    "temporary_water": ("temporary", *GRASS),
    "no_play_zone": ("no-play", *GRASS),
    "out_of_bounds": ("out", *GRASS),
    "dropping_zone": ("dropping_zone", *GRASS),
    "barrier": ("barrier", *GRASS),
    "integral_object": ("integral_object", *GRASS),
    "wetland": ("wetland", *GRASS),
    "stake": ("stake", *GRASS),
}
"""What may lie on either side of an edge."""
PATTERNS = {
    "red": ".h-red",
    "yellow": ".h-yellow",
    "repair": ".h-repair",
    "temporary": ".h-water",
    "no-play": ".h-no-play",
    "out": ".h-out",
}
OPTIONS = "abcdef"


def ground(kind: str, theme: str) -> str:
    """Return the colour of a kind of ground, of what lies under its lines where it has a pattern."""
    if kind in PATTERNS:
        return declared(PATTERNS[kind], "--ground", theme)
    return declared(f".k-{kind}", "fill", theme)


def edge_contrast(kind: str, theme: str) -> dict[str, float]:
    """Return the contrast of an edge with what may lie on either side of it."""
    edge = declared(f".k-{kind}", "stroke", theme)
    return {beside: round(contrast(edge, ground(beside, theme)), 2) for beside in BESIDE[kind]}


def test_the_formula_is_that_of_the_standard() -> None:
    """Black on white is 21 to 1 (WCAG 2.2, contrast ratio)."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21)


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("kind", BESIDE)
def test_an_edge_stands_out_on_both_sides(kind: str, theme: str) -> None:
    """The outline of each kind of ground is seen against it and against what may lie beside it."""
    found = edge_contrast(kind, theme)

    assert min(found.values()) >= LEAST, found


def looks_without_a_network() -> dict[str, tuple[str, str]]:
    """Return fill and stroke of each kind of ground on the map that a phone holds, which has one look."""
    style = (DESK / "offline" / "static" / "map_here.css").read_text(encoding="utf-8")
    found = re.findall(r"^\.g-(\w+).* \{ fill: (#\w+); stroke: (#\w+); \}", style, re.MULTILINE)
    return {kind: (six_digits(fill), six_digits(stroke)) for kind, fill, stroke in found}


def six_digits(colour: str) -> str:
    """Return a colour with both digits of each part."""
    return colour if len(colour) == 7 else "#" + "".join(2 * digit for digit in colour[1:])


def test_edges_stand_out_on_the_map_of_a_phone_without_a_network() -> None:
    """Each outline against its own ground and the grass around it; of an evacuation point the fill."""
    looks = looks_without_a_network()
    found = {}
    for kind, (fill, stroke) in looks.items():
        around = {"boundary": (), "rough": ("boundary",)}.get(kind, GRASS)
        seen, own = (fill, ()) if kind == "evacuation_point" else (stroke, (fill,))
        found[kind] = min(contrast(seen, one) for one in (*own, *(looks[one][0] for one in around)))

    assert len(found) > 15
    assert min(found.values()) >= LEAST, found


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("pattern", PATTERNS)
def test_the_lines_of_a_pattern_stand_out(pattern: str, theme: str) -> None:
    """A hatching, not only a colour, tells what an area is; dots are told from their ground by fill or rim."""
    selector = PATTERNS[pattern]
    lines = [declared(selector, "--lines", theme)]
    if pattern == "yellow":
        lines.append(declared(selector, "--dots", theme))
    seen = [contrast(one, declared(selector, "--ground", theme)) for one in lines]

    assert max(seen) >= LEAST, seen


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("option", OPTIONS)
def test_the_outline_of_an_option_stands_out_wherever_it_is_drawn(option: str, theme: str) -> None:
    """A relief area is drawn in the colour of its option, darkened by day; its edge crosses paths, greens, bunkers and trees."""
    tone = declared(":root", f"--option-{option}", theme)
    edge = darkened(tone, declared(":root", "--edge", theme))
    ends_on = (*GRASS, "bunker", "putting_green", "trees", "path", "teeing_area", "red", "yellow")
    found = {one: round(contrast(edge, ground(one, theme)), 2) for one in ends_on}

    assert min(found.values()) >= LEAST, found


@pytest.mark.parametrize("theme", THEMES)
def test_an_evacuation_point_is_seen_by_its_fill(theme: str) -> None:
    """A dot with a light rim, or a dark one at night: its fill stands out against rim and ground."""
    fill = declared(".k-evacuation_point", "fill", theme)
    beside = [declared(".k-evacuation_point", "stroke", theme), *(ground(one, theme) for one in GRASS)]
    found = [round(contrast(fill, one), 2) for one in beside]

    assert min(found) >= LEAST, found


def darkened(colour: str, share: str) -> str:
    """Return a colour of which a share is mixed with black, as ``color-mix(in srgb, …)`` does (CSS Color 5)."""
    part = float(share.removesuffix("%")) / 100
    return "#" + "".join(f"{round(int(colour[at : at + 2], 16) * part):02x}" for at in (1, 3, 5))


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize(
    ("text", "behind"),
    [
        *(
            (text, behind)
            for text in ("--ink", "--soft")
            for behind in ("--paper", "--card", "--sand", "--grass-light")
        ),
        *(
            (text, behind)
            for text in ("--grass", "--sea", "--rust")
            for behind in ("--paper", "--card", "--sand")
        ),
        *(("--on-tone", f"--option-{option}") for option in OPTIONS),
        ("--ink", "--caution"),
        ("--ink", "--rust-light"),
        ("--ink", "--field"),
        ("--on-tone", "--grass"),
    ],
)
def test_words_of_the_page_are_read_in_every_theme(text: str, behind: str, theme: str) -> None:
    """4.5 to 1 at least for every colour of text on what may lie behind it."""
    found = contrast(declared(":root", text, theme), declared(":root", behind, theme))

    assert found >= 4.5, found
