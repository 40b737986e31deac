"""The words on a picture, from the catalogue."""

from marram.course.model import Kind
from marram.relief.areas.construction import Measure, Role
from marram.relief.areas.relief_area import ReliefArea
from marram.rules.relief_option import ReliefKind
from marram.words import ground
from marram.words.texts import text


def mark_words(role: Role) -> str:
    """Return the words for a mark."""
    return text(f"relief.mark.{role.value}")


def label_words(role: Role, area: ReliefArea, number: int | None = None, name: str | None = None) -> str:
    """Return the words at a mark of a drawing.

    Args:
        role: what the mark stands for.
        area: the area it belongs to; where that is one spot, the mark says that the ball is placed there.
        number: which of several areas, or ``None`` where there is one.
        name: what tells it apart from the others, if anything.
    """
    words = mark_words(role)
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


def assumed_words(key: str) -> str:
    """Return the words for something taken for granted, by its key: ``relief.example_spot``."""
    subject, _, name = key.partition(".")
    return text(f"{subject}.assumed.{name}")


def size_words(club_lengths: float, club_length: float) -> str:
    """Return the size of a relief area in words, in club-lengths and in metres."""
    key = "relief.size.1" if club_lengths == 1 else "relief.size.n"
    return text(key, clubs=club_lengths, metres=club_lengths * club_length)


def measure_words(measure: Measure) -> str:
    """Return a distance in words, in metres and yards."""
    decimals = 2 if measure.metres < 10 else 1
    both = text(
        "relief.measure.length",
        metres=f"{measure.metres:.{decimals}f}",
        yards=f"{measure.yards:.{decimals}f}",
    )
    if measure.bearing is None:
        return text("relief.measure.club_lengths", both=both)
    return text(
        "relief.measure.between",
        start=mark_words(measure.start),
        end=mark_words(measure.end),
        both=both,
        bearing=round(measure.bearing) % 360,
    )
