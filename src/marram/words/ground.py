"""The words for kinds of mapped ground and for areas of the course, in one place for every page, command and drawing."""

from enum import Enum

from marram.words.texts import english, text


def ground_words(kind: Enum, where: str = "") -> str:
    """Return the words for a kind of mapped ground.

    Args:
        kind: the kind (:class:`marram.course.model.Kind`); its value is the key.
        where: where they are said, if other words may be used there: ``underfoot`` of the place where a ball lies,
            ``drawn`` in a list of what can be drawn, ``label`` on the map.
    """
    special = f"{kind.value}.{where}"
    return text(f"ground.{special if special in english('ground') else kind.value}")


def named_ground(kind: Enum, name: str, where: str = "") -> str:
    """Return the words for a mapped thing: its kind, and its name if it has one."""
    words = ground_words(kind, where)
    return text("ground.named", ground=words, name=name) if name else words


def area_name(area: Enum | None) -> str:
    """Return an area of the course by its name: ``the general area``; ``None`` is out of bounds."""
    return text(f"ground.name.{area.value if area else 'none'}")


def in_area(area: Enum | None) -> str:
    """Return an area of the course as it ends a sentence: ``in the general area``; ``None`` is out of bounds."""
    return text(f"ground.area.{area.value if area else 'none'}")
