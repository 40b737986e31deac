"""Building a drawing as a tree of SVG elements, so that no text ever becomes markup and every id is its own."""

from dataclasses import dataclass
from xml.etree import ElementTree as ET

NAMESPACE = "http://www.w3.org/2000/svg"

Node = ET.Element
Attributes = dict[str, str]
"""Attributes of an element, by their SVG names."""


@dataclass(frozen=True, slots=True)
class Ids:
    """The ids of one drawing, so that several can stand in one page.

    Attributes:
        prefix: starts every id.
    """

    prefix: str

    def __call__(self, name: str) -> str:
        """Return the id of something in the drawing."""
        return f"{self.prefix}-{name}"

    def url(self, name: str) -> str:
        """Return what points to a pattern or clip path of the drawing, as the value of ``fill`` or ``clip-path``."""
        return f"url(#{self(name)})"


def root(width: float, height: float, attributes: Attributes | None = None) -> Node:
    """Return the element of a drawing so many units wide and high, shown a pixel to a unit where there is room."""
    return ET.Element(
        "svg",
        {
            "xmlns": NAMESPACE,
            "viewBox": f"0 0 {number(width)} {number(height)}",
            "width": number(width),
            "height": number(height),
            **(attributes or {}),
        },
    )


def add(parent: Node, tag: str, attributes: Attributes | None = None, /, **values: str | float) -> Node:
    """Add an element and return it.

    Args:
        parent: what it is added to.
        tag: its name.
        attributes: attributes by their SVG names.
        values: further attributes; numbers are rounded to a hundredth of a unit, ``_`` stands for ``-``.
    """
    every = dict(attributes or {})
    for name, value in values.items():
        every[name.rstrip("_").replace("_", "-")] = value if isinstance(value, str) else number(value)
    return ET.SubElement(parent, tag, every)


def say(
    parent: Node, tag: str, words: str, attributes: Attributes | None = None, /, **values: str | float
) -> Node:
    """Add an element that holds words and return it."""
    made = add(parent, tag, attributes, **values)
    made.text = words
    return made


def number(value: float) -> str:
    """Return a number as SVG writes it, to a hundredth of a unit."""
    return f"{value:.2f}".rstrip("0").rstrip(".")


def written(node: Node) -> str:
    """Return a drawing as text."""
    return ET.tostring(node, encoding="unicode") + "\n"
