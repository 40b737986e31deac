"""Write the type of printed documents from that of the desk: its two web fonts joined, in two fixed weights.

Typst reads no compressed web font. Needs fonttools and brotli, which nothing else here does; run it once whenever the
desk's fonts change: ``python scripts/write_paper_fonts.py``.
"""

from pathlib import Path

from fontTools.merge import Merger
from fontTools.ttLib import TTFont
from fontTools.varLib.instancer import instantiateVariableFont

ROOT = Path(__file__).resolve().parents[1] / "src" / "marram"
WEB = ROOT / "desk" / "shell" / "static" / "vendor" / "atkinson"
PAPER = ROOT / "paper" / "fonts"
FAMILY = "Atkinson Hyperlegible Next"
WEIGHTS = {"Regular": 400, "Bold": 700}


def write(style: str, weight: int) -> None:
    """Write one weight."""
    parts = []
    for number, name in enumerate(("latin", "latin-ext")):
        font = TTFont(WEB / f"atkinson-hyperlegible-next-{name}-wght-normal.woff2")
        fixed = instantiateVariableFont(font, {"wght": weight})
        fixed.flavor = None
        for table in ("STAT", "MVAR", "avar", "HVAR"):
            if table in fixed:
                del fixed[table]
        part = PAPER / f"part-{number}.ttf"
        fixed.save(part)
        parts.append(part)
    merged = Merger().merge([str(part) for part in parts])
    for part in parts:
        part.unlink()
    names = merged["name"]
    names.names = [one for one in names.names if one.nameID not in (16, 17, 21, 22, 25)]
    for number, words in (
        (1, FAMILY),
        (2, style),
        (4, f"{FAMILY} {style}"),
        (6, f"{FAMILY.replace(' ', '')}-{style}"),
    ):
        names.setName(words, number, 3, 1, 0x409)
    merged["OS/2"].usWeightClass = weight
    bold = style == "Bold"
    merged["OS/2"].fsSelection = 0x20 if bold else 0x40
    merged["head"].macStyle = 1 if bold else 0
    merged.save(PAPER / f"atkinson-hyperlegible-next-{style.lower()}.ttf")


def main() -> None:
    """Write both weights, with their licence."""
    PAPER.mkdir(exist_ok=True)
    for style, weight in WEIGHTS.items():
        write(style, weight)
    (PAPER / "LICENSE").write_bytes((WEB / "LICENSE").read_bytes())


if __name__ == "__main__":
    main()
