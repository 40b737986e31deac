"""What stays outside the catalogue, and why.

The list only shrinks: each entry names where its words are seen.
"""

import json
import re
from typing import NamedTuple

from marram.course.model import Course
from marram.demo import EVENT
from tests.words.letters import wide


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
    Outside(
        re.compile(f"(?<=⟦{wide('Not drawn: ')}).*"),
        "Faults are worded where they are found, in layers below or beside the words.",
        "an option that cannot be drawn",
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
    "faults of a map and proposals to mend it (course/checks, course/reading, course/mending; `marram course check` and "
    "`mend`, /map/mend, the tasks of the marking sheet)": "Most are still worded in English where they are found, "
    "without their message: say them with `said` and they are translated wherever they are shown.",
    "faults of what was typed (rules/, services/, relief/, course/versions)": "The same; those of the command line and of "
    "the forms of the desk are done.",
    "`marram course mend`": "Its report is worded in the command itself.",
    "what click and typer say of themselves": "They have catalogues of their own.",
    "the last resort when not even the page of an error can be made": "It rests on nothing, the catalogue included.",
}
"""What no test looks at yet, and why; to be emptied."""
