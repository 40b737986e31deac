"""An SVG drawing as a PNG picture."""

from importlib.resources import as_file, files
from pathlib import Path
from tempfile import TemporaryDirectory

PIXELS_PER_INCH = 288.0
"""Three pixels to a unit of the drawing (there are 96 to an inch)."""


def png(svg: str) -> bytes:
    """Return an SVG drawing as PNG, on the drawing's own paper, three pixels to a unit, in the type of printed sheets."""
    import typst  # noqa: PLC0415 - only a picture needs it

    with TemporaryDirectory() as folder:
        root = Path(folder)
        (root / "drawing.svg").write_text(svg, encoding="utf-8")
        page = '#set page(width: auto, height: auto, margin: 0pt)\n#image("drawing.svg")\n'
        (root / "main.typ").write_text(page, encoding="utf-8")
        with as_file(files("marram.paper") / "fonts") as fonts:
            picture = typst.compile(
                str(root / "main.typ"),
                root=str(root),
                format="png",
                ppi=PIXELS_PER_INCH,
                font_paths=[str(fonts)],
            )
    assert isinstance(picture, bytes)
    return picture
