"""A hole begun from outside the teeing area in a match: what is played again from there is dropped, not teed.

Rules of Golf, Clarification 6.1b(1)/1: the stroke was not cancelled, so the ball is played again under stroke and
distance from where it was made, which is no teeing area.
"""

from collections.abc import Sequence
from dataclasses import replace

from marram.rules.relief_option import ReliefKind, ReliefOption, Setting
from marram.rules.story.deeds import Deed

STROKE_STANDS = "lost_from_outside_drop_not_tee"
"""The note of a stroke from outside the teeing area that was not cancelled."""


def dropped_where_not_teed(deeds: Sequence[Deed]) -> list[Deed]:
    """Return the acts, with the ball dropped where stroke and distance leads back to such a stroke."""
    found = []
    outside = False
    for deed in deeds:
        again = outside and any(map(_back_to_the_stroke, deed.ruling.relief))
        found.append(_dropped(deed) if again else deed)
        outside = STROKE_STANDS in deed.ruling.notes or (outside and not deed.plays_the_ball)
    return found


def _back_to_the_stroke(option: ReliefOption) -> bool:
    return option.kind is ReliefKind.STROKE_AND_DISTANCE and option.setting is Setting.AS_THE_SPOT_ALLOWS


def _dropped(deed: Deed) -> Deed:
    relief = tuple(
        replace(one, setting=Setting.DROP) if _back_to_the_stroke(one) else one for one in deed.ruling.relief
    )
    ruling = replace(deed.ruling, relief=relief).under("Clarification 6.1b(1)/1")
    return replace(deed, ruling=ruling.note("drop_not_tee_outside"))
