"""Facts about the ball: where it lies, what became of it."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice


class Area(Enum):
    """The areas of the course (Rule 2.2)."""

    TEEING_AREA = "teeing_area"
    GENERAL_AREA = "general_area"
    PENALTY_AREA = "penalty_area"
    BUNKER = "bunker"
    PUTTING_GREEN = "putting_green"


area_of_ball = choice(
    "area_of_ball",
    "In which area of the course did the ball lie?",
    {
        Area.TEEING_AREA: "the teeing area of the hole being played",
        Area.GENERAL_AREA: "the general area",
        Area.PENALTY_AREA: "a penalty area",
        Area.BUNKER: "a bunker",
        Area.PUTTING_GREEN: "the putting green of the hole being played",
    },
    help="A ball touching two areas lies in the first of: penalty area, bunker, putting green.",
    source="2.2c",
    decided_by=DecidedBy.MAP,
)
