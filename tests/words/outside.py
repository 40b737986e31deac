"""What stays outside the catalogue, and why.

The list only shrinks: each entry names where its words are seen, and a test fails once they no longer are.
"""

import json
import re
from typing import NamedTuple

from marram.course.model import Course
from marram.demo import EVENT
from tests.words.letters import wide


class Outside(NamedTuple):
    """Words that are not in the catalogue: a pattern, why, and a page or a command that says them."""

    pattern: re.Pattern[str]
    reason: str
    seen: str


OUTSIDE: tuple[Outside, ...] = (
    Outside(
        re.compile(r"\b(Clarification|Definitions?|former|Exceptions?|Appendix)\b[^⟦⟧<>]*"),
        "A citation names a provision of the published book as that book does.",
        "/case?what=relief_area_size",
    ),
    Outside(
        re.compile(
            r"Within [\d.]+ m of the edge.*|The ball is on a .*|The green of hole .*|Part of the ball .*|This water .*"
            r"|A penalty area of which .*|Unmarked water .*|The map has no boundary.*|The outline of the course .*"
            r"|The middle of a path .*"
        ),
        "Doubts are worded where the map is read, in a layer that stands beside the words.",
        "/ball?hole=9&ball={burn_edge}",
    ),
    Outside(
        re.compile(f"(?<=⟦{wide('Not drawn: ')}).*"),
        "Faults are worded where they are found, in layers below or beside the words.",
        "",
    ),
)


def without_outside(text: str) -> str:
    """Return a text without what is known to stay outside the catalogue."""
    for one in OUTSIDE:
        text = one.pattern.sub("", text)
    return text


def names_of(course: Course) -> set[str]:
    """Return the proper names on pages: of the program, the course, its features and the event."""
    event = json.loads(EVENT.read_text(encoding="utf-8"))
    named = {one.name for one in course.features} | {one.ident for one in course.features}
    notice = event.get("notice_to_players", ())
    return {
        "marram",
        course.name,
        course.credit,
        event.get("name", ""),
        event.get("round", ""),
        *named,
        *notice,
    }
