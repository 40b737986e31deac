"""What happens to cards of the invented championship: rulings with penalties, and the few cards that are not as they should be.

Players are named by their number in the field, from 1.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

OUT_IN_FIRST: Mapping[int, str] = {17: "withdrawn", 88: "no_return"}
"""Who ends the first round without a card, and how."""

NOT_CERTIFIED = 46
"""Whose marker has not certified: the Committee is still to say whose fault it was (Rule 3.3b(2))."""
RETURNED_LATE = 131
"""Whose card came in late, the marker having left with it (Rule 3.3b(2))."""
TOO_LOW = 63
"""Who returned a score for hole 9 that was one too low, for no reason that the Rules excuse (Rule 3.3b(3))."""


@dataclass(frozen=True)
class InventedRuling:
    """A ruling of the championship.

    Attributes:
        player: the number of the player.
        round: the round.
        hole: the hole.
        incident: what happened.
        facts: the answers.
        strokes: penalty strokes it comes to.
        settled: what became of it beside the card; empty: not settled yet.
        option: the relief taken.
        at: where the ball lay: degrees north and east.
        doubted: what the referee thought when asking the chief referee again; empty: nobody asked.
        answered: what the chief referee answered, who agreed.
        otherwise: why no penalty was given where one was computed; empty: it was ruled as computed.
    """

    player: int
    round: int
    hole: int
    incident: str
    facts: Mapping[str, str] = field(default_factory=dict)
    strokes: int = 0
    settled: str = "included"
    option: str | None = None
    at: tuple[float, float] | None = None
    doubted: str = ""
    answered: str = ""
    otherwise: str = ""


_MOVED = {
    "cause_known": "yes",
    "area_of_ball": "general_area",
    "movement_accidental": "no",
    "handling_allowed": "no",
}
_SAND = {"ball_and_bunker": "lies_in_it", "sand_touch": "testing"}
_WRONG_BALL = {
    "ball_struck": "wrong",
    "wrong_ball_moving_in_water": "no",
    "wrong_ball_corrected": "yes",
}
_UNPLAYABLE = {
    "area_of_ball": "general_area",
    "spot_of_ball_known": "yes",
    "last_stroke_from_penalty_area": "no",
}
_DELAY = {"delay_reasonable": "no", "delay_breach": "first"}

RULINGS: tuple[InventedRuling, ...] = (
    InventedRuling(3, 1, 2, "ball_moved_by_player", _MOVED, 1, at=(55.005716, 3.998644)),
    InventedRuling(9, 1, 6, "sand_touched", _SAND, 2, at=(55.000712, 3.9961)),
    InventedRuling(
        21,
        1,
        15,
        "unplayable_ball",
        _UNPLAYABLE,
        1,
        option="lateral",
        at=(55.002449, 4.006564),
        doubted="The player holds that the heather is ground under repair. It is not marked.",
        answered="It is not marked, so it is none. As shown.",
    ),
    InventedRuling(34, 1, 11, "wrong_ball_played", _WRONG_BALL, 2, at=(55.006726, 4.000634)),
    InventedRuling(
        52, 1, 4, "unplayable_ball", _UNPLAYABLE, 1, option="stroke_and_distance", at=(55.00482, 3.991313)
    ),
    InventedRuling(70, 1, 18, "unreasonable_delay", _DELAY, 1),
    InventedRuling(77, 1, 7, "ball_moved_by_player", _MOVED, 1, at=(55.003073, 3.993647)),
    InventedRuling(95, 1, 14, "sand_touched", _SAND, 2, at=(55.000697, 4.006896)),
    InventedRuling(104, 1, 12, "ball_moved_by_player", _MOVED, 1, "not_included", at=(55.007307, 4.005702)),
    InventedRuling(
        118,
        1,
        10,
        "unplayable_ball",
        _UNPLAYABLE,
        1,
        option="lateral",
        at=(55.003132, 4.000744),
        doubted="The player asks for three club-lengths. Two, I said.",
        answered="Two club-lengths.",
    ),
    InventedRuling(
        126,
        1,
        13,
        "ball_moved_by_player",
        _MOVED,
        settled="",
        otherwise="A marshal came later who had seen the wind move it, before the player was there.",
    ),
    InventedRuling(140, 1, 1, "unreasonable_delay", _DELAY, 1),
)
"""The rulings of the first round; those of the second are given to whoever is on the course."""

ON_THE_COURSE: tuple[tuple[int, InventedRuling], ...] = (
    (0, InventedRuling(0, 2, 5, "ball_moved_by_player", _MOVED, 1, "", at=(55.001983, 3.990877))),
    (1, InventedRuling(0, 2, 3, "sand_touched", _SAND, 2, "", at=(55.007309, 3.991078))),
)
"""Rulings of the second round: of the groups on the course the place of the group, and its ruling, not settled yet."""
