"""The Local Rules that a Committee can choose on the page of the conditions, each with what it needs marked."""

from dataclasses import dataclass

from marram.course.model import Course
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.local_rules.register import REGISTER
from marram.services.ground.marked import PROVIDED_BY
from marram.words.ground import ground_words
from marram.words.language import translate
from marram.words.local_rules import area_title, time_words
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class Adoptable:
    """One Local Rule on the page.

    Attributes:
        code: its published code.
        title: what it is about.
        notes: when it can be adopted, what it only defines, and what it needs marked on the course.
    """

    code: str
    title: str
    notes: tuple[str, ...]


def by_area(course: Course) -> dict[str, list[Adoptable]]:
    """Return every Local Rule that can be adopted, under the heading of its area, in the order of the list."""
    grouped: dict[str, list[Adoptable]] = {}
    for code, entry in REGISTER.items():
        if code in LOCAL_RULES or entry.defines:
            defines = text("local_rules.defines") if entry.defines and code not in LOCAL_RULES else ""
            notes = tuple(note for note in (time_words(entry), defines, _needs(code, course)) if note)
            title = translate()(entry.title)
            grouped.setdefault(area_title(code), []).append(Adoptable(code, title, notes))
    return grouped


def _needs(code: str, course: Course) -> str:
    """Return what a Local Rule needs marked on the course, and what the map has of it; empty where it needs nothing."""
    for kind, codes in PROVIDED_BY.items():
        if code in codes:
            marked = [one.name or ground_words(kind) for one in course.of(kind)]
            if not marked:
                return text("conditions.local.needs", ground=ground_words(kind))
            return text("conditions.local.has", ground=ground_words(kind), names=", ".join(marked))
    return ""


__all__ = ["Adoptable", "by_area"]
