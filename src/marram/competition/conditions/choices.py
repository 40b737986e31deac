"""What a Committee can choose from when it sets the conditions of a competition."""

from enum import Enum


class Score(Enum):
    """Which scores count."""

    GROSS = "gross"
    NET = "net"


class Variation(Enum):
    """How partners share a ball, where they do not play plain Foursomes (forms adapted by the Committee, Rule 21.5)."""

    GREENSOMES = "greensomes"
    """Both play from the tee, one ball is chosen, and the partner whose ball it is not plays next in turn."""
    GRUESOMES = "gruesomes"
    """As greensomes, but the opponents choose the ball."""
    PINEHURST = "pinehurst"
    """Both play from the tee, each plays the other's ball, then one is chosen and played in turn; also called Chapman."""
    SCRAMBLE = "scramble"
    """All play, one place is chosen, and all play again from there."""


class MaximumBy(Enum):
    """How the maximum for a hole is set (Rule 21.2a)."""

    TIMES_PAR = "times_par"
    STROKES = "strokes"
    NET_OVER_PAR = "net_over_par"
    """Strokes over par besides the handicap strokes of the hole: 2 is net double bogey."""


class Target(Enum):
    """The fixed target score of a hole (Rules 21.1b and 21.3b)."""

    PAR = "par"
    BOGEY = "bogey"


class TieMethod(Enum):
    """How a tie is decided (Committee Procedures 5A(6))."""

    COUNTBACK = "countback"
    """Cards are matched: the last round, then its last nine, six, three holes and last hole, then those of its first nine."""
    LAST_HOLES = "last_holes"
    """As countback, without the holes of the first nine."""
    LAST_TWO_ROUNDS = "last_two_rounds"
    """The last two rounds together, before the last round alone: so a championship over 72 holes was decided (checked against
    its printed scores in tests/competition/test_published_ties.py); the Committee Procedures begin with the last round."""
    HOLE_BY_HOLE = "hole_by_hole"
    """Cards are matched hole by hole, from the last one back; common practice of clubs in Australia after the last three holes
    (checked against printed conditions in tests/competition/test_published_ties.py), not of the Committee Procedures."""
    PLAY_OFF = "play_off"
    LOWER_HANDICAP = "lower_handicap"
    """Who has the lower Playing Handicap; a practice of clubs, not of the Committee Procedures."""
    LOT = "lot"
    """By lot; a practice of clubs, not of the Committee Procedures."""
    SHARED = "shared"


MATCHES_CARDS = frozenset({TieMethod.COUNTBACK, TieMethod.LAST_HOLES, TieMethod.HOLE_BY_HOLE})
"""These compare holes of cards."""

ENDS_EVERY_TIE = frozenset({TieMethod.PLAY_OFF, TieMethod.LOT, TieMethod.SHARED})
"""After these nothing is left to decide."""


class CountbackStrokes(Enum):
    """Which handicap strokes are taken off part of a round, in individual net stroke play and Maximum Score."""

    EXACT_FRACTION = "exact_fraction"
    """One half, one third, one sixth and one eighteenth of the handicap, exactly: Committee Procedures 5A(6), and the
    advice of the unions of Great Britain and Ireland and of Canada on its fractions."""
    ROUNDED_FRACTION = "rounded_fraction"
    """The same fractions, half a stroke and more counted as one and less as none: former advice of the USGA
    (handicap manual, section 9-5)."""
    BY_STROKE_INDEX = "by_stroke_index"
    """The strokes as they fall on these holes by stroke index; an option of some clubs."""


class TeamsBy(Enum):
    """Over what the best scores of a team are counted."""

    ROUND = "round"
    HOLE = "hole"
    EVENT = "event"


class Sex(Enum):
    """For divisions, and for the ratings of a tee."""

    FEMALE = "female"
    MALE = "male"


class ConductPenalty(Enum):
    """A step of a Code of Conduct (Rule 1.2b)."""

    WARNING = "warning"
    ONE_STROKE = "one_stroke"
    GENERAL_PENALTY = "general_penalty"
    DISQUALIFICATION = "disqualification"
