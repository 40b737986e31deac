"""The colours of the style sheets, as a theme of the desk has them; and the contrast of two colours."""

import re
from functools import cache
from pathlib import Path

import marram.desk

STATIC = Path(marram.desk.__file__).parent / "shell" / "static"
THEMES = {
    "light": (),
    "dark": ("(prefers-color-scheme: dark)",),
    "more contrast": ("(prefers-contrast: more)",),
    "more contrast, dark": (
        "(prefers-color-scheme: dark)",
        "(prefers-contrast: more)",
        "(prefers-contrast: more) and (prefers-color-scheme: dark)",
    ),
}
"""The blocks of themes.css that hold in each theme, in the order of the file."""


@cache
def blocks() -> dict[str, str]:
    """Return the blocks of themes.css by their media query."""
    found = re.findall(
        r"^@media screen and (.+?) \{\n(.*?)^\}$",
        (STATIC / "themes.css").read_text(encoding="utf-8"),
        re.MULTILINE | re.DOTALL,
    )
    return dict(found)


def sources(theme: str) -> list[str]:
    """Return the style sheets that hold in a theme, the last to be read first."""
    plain = [(STATIC / name).read_text(encoding="utf-8") for name in ("base.css", "map.css")]
    return [*(blocks()[name] for name in reversed(THEMES[theme])), *reversed(plain)]


def declared(selector: str, name: str, theme: str) -> str:
    """Return the colour or share that a rule declares for a property or variable; the theme's own, else the usual one."""
    for source in sources(theme):
        for rule in re.finditer(rf"^ *{re.escape(selector)} \{{([^}}]*)\}}", source, re.MULTILINE):
            colour = re.search(rf"(?:^|[ ;\n]){name}: (#[0-9a-f]{{6}}|#fff\b|[0-9]+%)", rule[1])
            if colour:
                return "#ffffff" if colour[1] == "#fff" else colour[1]
    raise AssertionError((selector, name, theme))


def luminance(colour: str) -> float:
    """Return the relative luminance of WCAG 2.2."""
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio of WCAG 2.2."""
    lighter, darker = sorted((luminance(one), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)
