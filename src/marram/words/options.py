"""Relief options in words."""

from dataclasses import dataclass

from marram.rules.relief_option import ReliefOption
from marram.words.messages import say, term
from marram.words.penalties import strokes_words


@dataclass(frozen=True, slots=True)
class OptionWords:
    """One relief option in words; ``kind`` is the option's code, for drawing it."""

    kind: str
    title: str
    cost: str
    reference: str
    size: str
    limits: tuple[str, ...]
    how: str
    citation: str


def option_words(option: ReliefOption) -> OptionWords:
    """Return a relief option in words."""
    limits = [term(limit) for limit in option.limits]
    if option.dropped_on_line:
        limits.insert(0, say("TERMS", "dropped_on_line"))
    if option.clear_of_sight:
        limits.append(say("TERMS", "clear_of_sight"))
    return OptionWords(
        option.kind.value,
        term(option.kind),
        strokes_words(option.penalty),
        term(option.reference),
        _size(option.club_lengths),
        tuple(limits),
        term(option.setting),
        option.citation,
    )


def _size(club_lengths: float | None) -> str:
    if club_lengths is None:
        return ""
    key = f"size.{club_lengths:g}"
    words = say("TERMS", key)
    return words if words != key else say("TERMS", "size.n").format(club_lengths=f"{club_lengths:g}")
