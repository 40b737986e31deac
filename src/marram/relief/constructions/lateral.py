"""Lateral relief: two club-lengths from a point, not nearer the hole (Rules 17.1d(3) and 19.2c)."""

from dataclasses import replace

from marram.relief.areas.construction import Role
from marram.relief.constructions.around import around
from marram.relief.constructions.opposite_side import opposite_point
from marram.relief.place.answer import Answer, Drawn, NeedsPlace, Place
from marram.relief.place.situation import Situation
from marram.rules.relief_option import Reference, ReliefOption


def lateral(situation: Situation, option: ReliefOption) -> Answer:
    """Draw lateral relief from the crossing point of a penalty area or from the spot of the ball.

    The number of club-lengths is the option's (2; 4 with a wheeled mobility device, Rule 25.4m). Relief on the
    opposite side (Model Local Rule B-2) is measured from the point across, as shown or else as the map has it.
    """
    if option.reference is Reference.OPPOSITE_EDGE:
        across = situation.opposite
        if across is None and situation.entry is not None:
            situation = situation.on_edge()
            across = opposite_point(situation)
            situation = replace(situation, assumed=(*situation.assumed, "relief.opposite_as_mapped"))
        if across is None:
            return NeedsPlace(option, (Place.OPPOSITE_EDGE,))
        situation = replace(situation, entry=across).on_edge()
        assert situation.entry is not None
        return Drawn(option, (around(situation, option, situation.entry),))
    if option.reference is Reference.CROSSING_POINT:
        if situation.entry is None:
            return NeedsPlace(option, (Place.CROSSING_POINT,))
        situation = situation.on_edge()
        assert situation.entry is not None
        return Drawn(option, (around(situation, option, situation.entry, Role.CROSSING_POINT),))
    if situation.ball is None:
        return NeedsPlace(option, (Place.BALL,))
    return Drawn(option, (around(situation, option, situation.ball, Role.BALL),))
