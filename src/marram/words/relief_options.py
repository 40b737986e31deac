"""Relief options in words."""

from dataclasses import dataclass

from marram.rules.relief_option import Reference, ReliefKind, ReliefOption
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
        area: the relief area in one phrase, without its limits.
        free: whether it costs no penalty stroke.
    """

    kind: str
    title: str
    cost: str
    reference: str
    size: str
    limits: tuple[str, ...]
    how: str
    citation: str
    area: str
    free: bool


PLACES = frozenset(
    {
        Reference.PREVIOUS_STROKE,
        Reference.LAST_STROKE_OUTSIDE_PENALTY_AREA,
        Reference.CROSSING_POINT,
        Reference.PROVISIONAL_BALL,
    }
)
"""References whose words say where, rather than what: no "at" goes before them."""


WITHIN_REACH = "M-1"
"""The Local Rule by which a ball is placed within reach of a wheeled mobility device: no preferred lie, though placed like one."""


def option_words(option: ReliefOption) -> OptionWords:
    """Return a relief option in words."""
    limits = [term(limit) for limit in option.limits]
    if option.dropped_on_line:
        limits.insert(0, say("TERMS", "dropped_on_line"))
    if option.clear_of_sight:
        limits.append(say("TERMS", "clear_of_sight"))
    size = _size(option)
    reference = term(option.reference, ".dropped" if option.dropped_on_line else "")
    return OptionWords(
        option.kind.value,
        _title(option),
        strokes_words(option.penalty),
        reference,
        size,
        tuple(limits),
        term(option.setting),
        option.citation,
        _area(option, size, reference),
        free=not option.penalty,
    )


def _title(option: ReliefOption) -> str:
    if option.reference is Reference.UNDER_EDGE_CROSSED:
        return say("TERMS", "title.under_edge_crossed")
    within_reach = option.kind is ReliefKind.PREFERRED_LIE and option.citation == WITHIN_REACH
    return say("TERMS", "title.within_reach") if within_reach else term(option.kind)


def _area(option: ReliefOption, size: str, reference: str) -> str:
    if not size or (option.club_lengths == 0 and option.reference in PLACES):
        return reference
    key = "area.spot" if option.club_lengths == 0 else "area"
    return say("TERMS", key).format(size=size, reference=reference)


def _size(option: ReliefOption) -> str:
    club_lengths = option.club_lengths
    if club_lengths is None:
        if option.citation == WITHIN_REACH:
            return say("TERMS", "size.within_reach")
        return say("TERMS", "size.preferred_lie") if option.kind is ReliefKind.PREFERRED_LIE else ""
    if club_lengths in (0, 1):
        return say("TERMS", f"size.{club_lengths:g}")
    return say("TERMS", "size.n").format(club_lengths=count_words(club_lengths))
