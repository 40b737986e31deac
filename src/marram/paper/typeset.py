"""Setting a document: a Typst template beside this file, its data, and its drawings."""

import json
from collections.abc import Mapping
from importlib.resources import as_file, files
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any


def typeset(template: str, data: Mapping[str, Any], drawings: Mapping[str, str] | None = None) -> bytes:
    """Return a document as PDF.

    Args:
        template: the name of a template in this folder, without its ending.
        data: what the template prints; plain data.
        drawings: SVG documents by name; the template finds each as ``<name>.svg``.
    """
    import typst  # noqa: PLC0415 - only a printed document needs it

    with TemporaryDirectory() as folder:
        root = Path(folder)
        source = (files("marram.paper") / f"{template}.typ").read_text(encoding="utf-8")
        (root / "main.typ").write_text(source, encoding="utf-8")
        (root / "data.json").write_text(json.dumps(data), encoding="utf-8")
        for name, drawing in (drawings or {}).items():
            (root / f"{name}.svg").write_text(drawing, encoding="utf-8")
        with as_file(files("marram.paper") / "fonts") as fonts:
            printed = typst.compile(
                str(root / "main.typ"), root=str(root), font_paths=[str(fonts)], ignore_system_fonts=True
            )
    assert isinstance(printed, bytes)
    return printed
