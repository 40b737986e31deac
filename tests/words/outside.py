"""What stays outside the catalogue, and why.

The list only shrinks: each entry names where its words are seen.
"""

import json
import re
from typing import NamedTuple

from marram.course.model import Course
from marram.demo import EVENT


class Outside(NamedTuple):
    """Words that are not in the catalogue: a pattern, why, and where they are seen."""

    pattern: re.Pattern[str]
    reason: str
    seen: str


OUTSIDE: tuple[Outside, ...] = (
    Outside(
        re.compile(r"\b(Clarification|Definitions?|former|Exceptions?|Appendix)\b[^⟦⟧<>]*"),
        "A citation names a provision of the published book as that book does.",
        "a number",
    ),
    Outside(
        re.compile(r"back to version \d+.*"),
        "The note of a version is kept as it was written when it was saved, whoever reads it later.",
        "the map after going back",
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


NOT_TRIED: dict[str, str] = {
    "what click and typer say of themselves": "They have catalogues of their own.",
    "what Python's readers of JSON, XML and CSV, and the operating system, say of a file": "It is set into a sentence of "
    "ours as they word it.",
    "the last resort when not even the page of an error can be made": "It rests on nothing, the catalogue included.",
    "that there is no catalogue of the language asked for": "There is no language to say it in.",
    "the note of a version that mends a map, goes back or takes the course file over": "It is kept as it was written.",
    "faults of marram itself (BookError)": "They are for whoever mends marram; the page around them is translated.",
}
"""What no test looks at yet, and why; to be emptied."""
