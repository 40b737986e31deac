"""Relief options in words."""

from dataclasses import dataclass

from marram.rules.relief_option import ReliefKind, ReliefOption
from marram.words.messages import say, term
from marram.words.penalties import count_words, strokes_words


@dataclass(frozen=True, slots=True)
class OptionWords:
    """One relief option in words.

    Attributes:
        kind: the option's code, for drawing it.
        title: what kind of relief it is.
        cost: the penalty strokes it costs.
        reference: what the relief area is measured from.
        size: how far the area reaches; empty where its limits alone say so.
        limits: the limits of the area.
        how: how the ball is put into play.
        citation: the provision that gives it.
    """

    kind: str
    title: str
    cost: str
    reference: str
    size: str
    limits: tuple[str, ...]
    how: str
    citation: str

    @property
    def area(self) -> str:
        """The relief area in one phrase, without its limits."""
        if not self.size:
            return self.reference
        if self.size != say("TERMS", "size.0"):
            return say("TERMS", "area").format(size=self.size, reference=self.reference)
        is_place = self.reference.startswith("where ")
        return self.reference if is_place else say("TERMS", "area.spot").format(reference=self.reference)


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
        term(option.reference, ".dropped" if option.dropped_on_line else ""),
        _size(option),
        tuple(limits),
        term(option.setting),
        option.citation,
    )


def _size(option: ReliefOption) -> str:
    club_lengths = option.club_lengths
    if club_lengths is None:
        return say("TERMS", "size.preferred_lie") if option.kind is ReliefKind.PREFERRED_LIE else ""
    if club_lengths in (0, 1):
        return say("TERMS", f"size.{club_lengths:g}")
    return say("TERMS", "size.n").format(club_lengths=count_words(club_lengths))
