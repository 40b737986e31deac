"""Facts about dropping a ball in a relief area (Rule 14.3)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no
from marram.rules.facts.replacing import Stays


class WayOfDropping(Enum):
    """How a ball to be dropped was put into play."""

    RIGHT = "right"
    BY_SOMEONE_ELSE = "by_someone_else"
    NOT_KNEE_HEIGHT = "not_knee_height"
    NOT_STRAIGHT_DOWN = "not_straight_down"
    TOUCHED_BEFORE_GROUND = "touched_before_ground"
    OUTSIDE_RELIEF_AREA = "outside_relief_area"
    PLACED = "placed"


class DropNumber(Enum):
    """Which drop in the right way it was."""

    FIRST = "first"
    SECOND = "second"


class DropsBefore(Enum):
    """What the drops in the right way before a further drop had come to."""

    STAYED = "stayed"
    ONE_OUTSIDE = "one_outside"
    TWO_OUTSIDE = "two_outside"


class Deflection(Enum):
    """What a dropped ball hit after hitting the ground, before it came to rest."""

    NOTHING = "nothing"
    BY_ACCIDENT = "by_accident"
    DELIBERATE_BY_PLAYER = "deliberate_by_player"
    DELIBERATE_BY_OTHER_PLAYER = "deliberate_by_other_player"
    DELIBERATE_BY_OTHER_PERSON = "deliberate_by_other_person"


class MeasuredWith(Enum):
    """What a player measured a club-length with."""

    LONGEST_CLUB = "longest_club"
    PUTTER = "putter"
    SHORTER_CLUB = "shorter_club"
    BY_EYE = "by_eye"


way_of_dropping = choice(
    "way_of_dropping",
    "How was the ball put down?",
    {
        WayOfDropping.RIGHT: "dropped by the player (or partner) straight down from knee height, first touching the relief area",
        WayOfDropping.BY_SOMEONE_ELSE: "dropped by a caddie or anyone else but the partner",
        WayOfDropping.NOT_KNEE_HEIGHT: "dropped from above or below knee height",
        WayOfDropping.NOT_STRAIGHT_DOWN: "thrown, spun or rolled",
        WayOfDropping.TOUCHED_BEFORE_GROUND: "dropped, but it touched the player or equipment before the ground",
        WayOfDropping.OUTSIDE_RELIEF_AREA: "dropped, but it first touched the ground outside the relief area (or not on the line)",
        WayOfDropping.PLACED: "placed, although it had to be dropped",
    },
    help="Knee height: of the player standing, anywhere. Back on the line, since 2023, it must first touch the line.",
    source="14.3b",
)
drop_number = choice(
    "drop_number",
    "Was it the first or the second drop in the right way?",
    {DropNumber.FIRST: "the first", DropNumber.SECOND: "the second"},
    help="Drops in a wrong way, and drops a person deliberately interfered with, are not counted.",
    source="14.3c(2)",
)
ball_in_relief_area = yes_no(
    "ball_in_relief_area",
    "Does it lie (or was it played) in the relief area: not nearer the hole, in the area of the course first touched, with complete relief?",
    help="Measure with the longest club but the putter; any part of the ball inside is in. Complete: no interference left by what free relief was taken from.",
    source="14.3c, Definitions: relief area",
)
deflection_of_drop = choice(
    "deflection_of_drop",
    "After it hit the ground, did anybody or anybody's equipment deflect or stop the dropped ball?",
    {
        Deflection.BY_ACCIDENT: "yes, by accident",
        Deflection.DELIBERATE_BY_PLAYER: "yes, deliberately, the player or caddie",
        Deflection.DELIBERATE_BY_OTHER_PLAYER: "yes, deliberately, another player or that player's caddie",
        Deflection.DELIBERATE_BY_OTHER_PERSON: "yes, deliberately, any other person",
        Deflection.NOTHING: "no",
    },
    help="Deliberate includes an object or person put in place to deflect or stop it.",
    source="14.3d",
)
could_rest_in_relief_area = yes_no(
    "could_rest_in_relief_area",
    "When it was stopped, was there a reasonable chance of the ball coming to rest in the relief area?",
    help="Look at speed and slope: a ball plainly running away has no such chance.",
    source="14.3d Exception",
)
stays_where_first_touched = choice(
    "stays_where_first_touched",
    "Placed where the second drop first touched the ground, does the ball stay, at the first or second attempt?",
    {
        Stays.YES: "yes",
        Stays.NO: "no",
        Stays.MOVED_LATER: "it stayed, and later wind, water or gravity moved it",
    },
    help="Place it twice on that spot before saying no. A ball that came to rest there has stayed.",
    source="14.3c(2)",
)
measured_with = choice(
    "measured_with",
    "What was the relief area measured with?",
    {
        MeasuredWith.LONGEST_CLUB: "the player's longest club other than a putter",
        MeasuredWith.PUTTER: "a putter longer than that club",
        MeasuredWith.SHORTER_CLUB: "a shorter club",
        MeasuredWith.BY_EYE: "nothing; it was estimated",
    },
    help="The length counts from the toe of the club to the butt of the grip, without attachments.",
    source="Definitions: club-length",
)
drops_before = choice(
    "drops_before",
    "What drops in the right way had been made before this further one?",
    {
        DropsBefore.STAYED: "one that came to rest in the relief area",
        DropsBefore.ONE_OUTSIDE: "one, and it came to rest outside",
        DropsBefore.TWO_OUTSIDE: "two, and both came to rest outside",
    },
    help="Drops in a wrong way, and drops a person deliberately interfered with, are not counted.",
    source="14.3c",
)
