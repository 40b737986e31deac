"""The demonstration course as somebody hostile would name it: markup and orders to a terminal in every name."""

import json
from html.parser import HTMLParser
from pathlib import Path

from marram.demo import COURSE

HOSTILE = "\"'><script>alert(1)</script><img src=x onerror=alert(1)>\x1b[31m\u202e"
ORDERS = "\x1b\x9b\u202e"
"""What must never reach a reader as it is."""


def hostile_course(folder: Path) -> Path:
    """Return a file of the demonstration course whose names, identifiers and credit are hostile, each still its own."""
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    for number, feature in enumerate(document["features"]):
        tags = feature["properties"]
        feature["id"] = f"{HOSTILE} {number}"
        tags["name"] = f"{tags.get('name', '')} {HOSTILE}"
        tags["description"] = HOSTILE
    document["attribution"] = document["copyright"] = HOSTILE
    path = folder / "links.geojson"
    path.write_text(json.dumps(document))
    return path


class _Markup(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []
        self._within = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self._within = tag
        self.found += [f"{tag} {name}" for name, value in attrs if name.startswith("on") or value == "x"]

    def handle_data(self, data: str) -> None:
        if self._within == "script" and data.startswith("alert"):
            self.found.append(data)

    def handle_endtag(self, tag: str) -> None:
        self._within = "" if self._within == tag else self._within


def markup_in(page: str) -> list[str]:
    """Return what of hostile names has become elements or attributes of a page of HTML or SVG."""
    reader = _Markup()
    reader.feed(page)
    reader.close()
    return reader.found


def orders_in(text: str) -> set[str]:
    """Return the orders to a terminal, and marks of direction, that stand raw in a text."""
    return set(ORDERS) & set(text)
