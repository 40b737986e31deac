"""Facts about putting a ball back on its spot (Rule 14.2)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no
from marram.rules.facts.ball import Area


class ReplacedBy(Enum):
    """Who put the ball back."""

    PLAYER_OR_LIFTER = "player_or_lifter"
    SOMEONE_ELSE = "someone_else"


class Material(Enum):
    """What the ball lay in or on before its lie was altered."""

    SAND = "sand"
    ANYTHING_ELSE = "anything_else"


class Stays(Enum):
    """Whether a ball stays on the spot where it was placed."""

    YES = "yes"
    NO = "no"
    MOVED_LATER = "moved_later"


original_ball_unavailable = yes_no(
    "original_ball_unavailable",
    "Is the original out of easy reach (not made so on purpose), cut or cracked, played by another, or is play being resumed?",
    help="Out of reach: not to be got back with reasonable effort in a few seconds. A player who threw it away on purpose must get it back.",
    source="14.2a",
)
replaced_by = choice(
    "replaced_by",
    "Who put the ball back?",
    {
        ReplacedBy.PLAYER_OR_LIFTER: "the player, a partner, or whoever had lifted or moved it",
        ReplacedBy.SOMEONE_ELSE: "someone else, such as a caddie who had not lifted or moved it",
    },
    help="A caddie may put back only a ball that the caddie had lifted or moved.",
    source="14.2b(1)",
)
replaced_in_right_way = yes_no(
    "replaced_in_right_way",
    "Was it set down by hand on the spot and let go, so that it stayed?",
    help="Dropping, rolling or pushing it onto the spot is a wrong way.",
    source="14.2b(2)",
)
replaced_on_right_spot = yes_no(
    "replaced_on_right_spot",
    "Was it put back on the required spot (estimated where it was not known)?",
    help="The spot includes the height: on, under or against what the ball lay on, under or against.",
    source="14.2c",
)
ball_marker_left = yes_no(
    "ball_marker_left",
    "Was the ball-marker still at the spot when the stroke was made?",
    help="The ball is in play once replaced, even before the ball-marker is taken away.",
    source="14.1a",
)
lie_altered = yes_no(
    "lie_altered",
    "Was the lie altered when the ball was lifted or moved, or before it was put back (a divot, trodden in)?",
    help="Not for a lie altered while play was stopped: Rule 5.7d covers that.",
    source="14.2d",
)
material_of_lie = choice(
    "material_of_lie",
    "What had the ball lain in?",
    {Material.SAND: "sand (in a bunker or anywhere else)", Material.ANYTHING_ELSE: "anything except sand"},
    help="Sand counts wherever it is on the course.",
    source="14.2d",
)
ball_stays_on_spot = choice(
    "ball_stays_on_spot",
    "Does the ball stay on the spot, at the first or second attempt?",
    {
        Stays.YES: "yes",
        Stays.NO: "no",
        Stays.MOVED_LATER: "it stayed, and later wind, water or gravity moved it",
    },
    help="Set it down a second time before saying no. A ball that came to rest there has stayed.",
    source="14.2e",
)
area_of_placing_spot = choice(
    "area_of_placing_spot",
    "In which area of the course is the spot where the ball had to be placed?",
    {
        Area.TEEING_AREA: "the teeing area of the hole being played",
        Area.GENERAL_AREA: "the general area",
        Area.PENALTY_AREA: "a penalty area",
        Area.BUNKER: "a bunker",
        Area.PUTTING_GREEN: "the putting green of the hole being played",
    },
    help="After two drops: where the second drop first touched the ground.",
    source="14.2e",
    decided_by=DecidedBy.MAP,
)
spot_that_stays_exists = yes_no(
    "spot_that_stays_exists",
    "Is there a spot in that area, not nearer the hole, where the ball will stay?",
    help="Try on the ground; the nearest such spot counts, however far away.",
    source="14.2e",
)
