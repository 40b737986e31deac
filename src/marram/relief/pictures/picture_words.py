"""The words on a picture, from the catalogue."""

from collections.abc import Mapping

from marram.course.model import Kind
from marram.relief.areas.construction import Measure, Role
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.tolerance import YARD
from marram.rules.relief_option import ReliefKind
from marram.words import ground
from marram.words.lengths import length_words, near_words, square_feet
from marram.words.place import writing
from marram.words.texts import text

TEE_USED = "relief.teeing_area_used_as_fairway"
"""What is taken for granted where the fairway point lies on a tee: it is named by what it is."""


AT_ONE_PLACE = 0.005
"""Metres: marks nearer each other than this are told as one place; two decimals would say 0.00 (own choice)."""
LEAST_AREA = 0.05
"""Square metres: one decimal would tell a smaller area as none."""


def mark_words(role: Role, area: ReliefArea | None = None) -> str:
    """Return the words for a mark, and for one of an area what it is there."""
    if role is Role.FAIRWAY_POINT and area is not None and TEE_USED in area.assumed:
        return text("relief.mark.tee_point")
    return text(f"relief.mark.{role.value}")


def label_words(role: Role, area: ReliefArea, number: int | None = None, name: str | None = None) -> str:
    """Return the words at a mark of a drawing.

    Args:
        role: what the mark stands for.
        area: the area it belongs to; where that is one spot, the mark says that the ball is placed there.
        number: which of several areas, or ``None`` where there is one.
        name: what tells it apart from the others, if anything.
    """
    words = mark_words(role, area)
    if role is Role.SPOT:
        words = text("relief.label.place_here")
    elif role is Role.PREVIOUS_SPOT and area.is_spot:
        words = text("relief.label.with", words=words, more=text("relief.label.place_here"))
    if number is None or role not in {Role.REFERENCE, Role.SPOT}:
        return words
    words = text("relief.label.numbered", words=words, number=number)
    return text("relief.label.named", words=words, name=name) if name else words


def kind_words(kind: ReliefKind) -> str:
    """Return the words for a kind of relief."""
    return text(f"relief.kind.{kind.value}")


def ground_words(kind: Kind) -> str:
    """Return the words for a mapped area."""
    return ground.ground_words(kind)


def measures_told(area: ReliefArea) -> list[str]:
    """Return the distances of an area in words, without those between two marks at one place."""
    return [
        measure_words(one, area) for one in area.measures if one.bearing is None or one.metres >= AT_ONE_PLACE
    ]


def area_words(area_m2: float) -> str:
    """Return the size of a relief area in words: never as nothing, however little it is."""
    if writing().yards:
        key = "relief.picture.area_least.feet" if area_m2 < LEAST_AREA else "relief.picture.area.feet"
        return text(key, area=square_feet(max(area_m2, LEAST_AREA)))
    if area_m2 < LEAST_AREA:
        return text("relief.picture.area_least", area=LEAST_AREA)
    return text("relief.picture.area", area=area_m2)


def shown_words(said: Mapping[str, str], area_m2: float) -> str:
    """Return what an area is that a picture shows: its kind and measures as said, and its size."""
    if writing().yards:
        key = "relief.picture.shown_least.feet" if area_m2 < LEAST_AREA else "relief.picture.shown_area.feet"
        return text(key, **said, area=square_feet(max(area_m2, LEAST_AREA)))
    if area_m2 < LEAST_AREA:
        return text("relief.picture.shown_least", **said, area=LEAST_AREA)
    return text("relief.picture.shown_area", **said, area=area_m2)


def away_words(words: str, metres: float) -> str:
    """Return what lies outside a picture, with how far it is."""
    if writing().yards:
        return text("relief.label.away.yards", words=words, yards=metres / YARD)
    return text("relief.label.away", words=words, metres=metres)


def assumed_words(key: str) -> str:
    """Return the words for something taken for granted, by its key: ``relief.example_spot``."""
    subject, _, name = key.partition(".")
    return text(f"{subject}.assumed.{name}")


def size_words(club_lengths: float, club_length: float) -> str:
    """Return the size of a relief area in words, in club-lengths and in metres, or in feet and inches."""
    if writing().yards:
        key = "relief.size.1.feet" if club_lengths == 1 else "relief.size.n.feet"
        return text(key, clubs=club_lengths, length=near_words(club_lengths * club_length))
    key = "relief.size.1" if club_lengths == 1 else "relief.size.n"
    return text(key, clubs=club_lengths, metres=club_lengths * club_length)


def measure_words(measure: Measure, area: ReliefArea | None = None) -> str:
    """Return a distance in words, in metres and yards, between the marks of an area if it is given."""
    both = length_words(measure.metres)
    if measure.bearing is None:
        return text("relief.measure.club_lengths", both=both)
    return text(
        "relief.measure.between",
        start=mark_words(measure.start, area),
        end=mark_words(measure.end, area),
        both=both,
        bearing=round(measure.bearing) % 360,
    )
