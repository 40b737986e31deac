"""Check a drop: a ball already dropped, against each option it can have been dropped under (Rule 14.3)."""

from collections.abc import Sequence
from typing import TYPE_CHECKING

from marram.errors import InputError
from marram.relief.geometry.outline import XY
from marram.said import said
from marram.services.ground.relief import OptionDrawn

if TYPE_CHECKING:
    from marram.relief.drop import DropCheck


def check_drops(
    drawn: Sequence[OptionDrawn], dropped: XY | None, at_rest: XY | None, drop: int
) -> "dict[int, DropCheck]":
    """Return the check of each option that a ball can be dropped under, by the option's number from 1.

    Args:
        drawn: the options.
        dropped: where the ball first touched the ground; ``None``: nothing was dropped.
        at_rest: where it came to rest; ``None`` where it landed in a wrong place.
        drop: 1 for the first drop that counts, 2 for the second.

    Raises:
        InputError: a resting place is given without the spot first touched, or no such drop counts.
        BadPlace: the ball landed inside and no resting place is given.
    """
    if drop not in (1, 2):
        raise InputError(
            said(
                "Drop number {drop}: only a first and a second drop count; after them a ball is placed.",
                drop=drop,
            )
        )
    if dropped is None:
        if at_rest is not None:
            raise InputError(
                said(
                    "A resting place (at-rest) is given without the spot where the ball first touched the ground (dropped)."
                )
            )
        return {}
    from marram.relief.drop import check_drop  # noqa: PLC0415 - only a ball that was dropped needs it

    return {
        number: check_drop(one.areas[0], dropped, at_rest, drop)
        for number, one in enumerate(drawn, start=1)
        if one.areas and not one.areas[0].is_spot and one.areas[0].radius
    }
