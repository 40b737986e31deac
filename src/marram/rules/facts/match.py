"""Facts about matches: concessions, telling the opponent, handicaps, the match score (Rule 3.2)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class Conceded(Enum):
    """What was conceded."""

    STROKE = "stroke"
    HOLE = "hole"
    MATCH = "match"
    HOLES_IN_TURN = "holes_in_turn"


class WhoConceded(Enum):
    """How the concession came about."""

    CLEARLY = "clearly"
    MISUNDERSTOOD = "misunderstood"
    BY_CADDIE = "by_caddie"
    CADDIE_LIFTED_BALL = "caddie_lifted_ball"


class WhenAsked(Enum):
    """When the number of strokes was given or asked for."""

    DURING_HOLE = "during_hole"
    AFTER_HOLE = "after_hole"


class DeclaredHandicap(Enum):
    """How the declared handicap differs from the right one."""

    TOO_HIGH = "too_high"
    TOO_LOW = "too_low"


who_conceded = choice(
    "who_conceded",
    "Was it a clear concession by the player (or partner)?",
    {
        WhoConceded.CLEARLY: "yes, by words or a gesture that left no doubt",
        WhoConceded.MISUNDERSTOOD: "no, but the other reasonably took it for one",
        WhoConceded.BY_CADDIE: "no, the caddie tried to concede; the opponent may have lifted the ball",
        WhoConceded.CADDIE_LIFTED_BALL: "no, the caddie tried to concede and lifted the opponent's ball or marker",
    },
    help="Only the player or a partner can concede.",
    source="3.2b(2)",
)
conceded = choice(
    "conceded",
    "What was conceded?",
    {
        Conceded.STROKE: "the opponent's next stroke",
        Conceded.HOLE: "the hole",
        Conceded.MATCH: "the match",
        Conceded.HOLES_IN_TURN: "holes, by an agreement to concede them to each other so as to shorten the match",
    },
    help="A concession can be neither declined nor withdrawn; given while the ball moves it is for the next stroke.",
    source="3.2b(1)",
)
conceded_in_time = yes_no(
    "conceded_in_time",
    "Was the concession in time: before the stroke was made, the hole completed, or the match decided?",
    help="The hole may be conceded before it begins; after its result is decided it is too late.",
    source="3.2b(1)",
)
strokes_right = yes_no(
    "strokes_right",
    "Did the player give the right number of strokes taken?",
    help="Penalty strokes included. No answer counts as a wrong number.",
    source="3.2d(1)",
)
when_strokes_given = choice(
    "when_strokes_given",
    "When was the number of strokes given or asked for?",
    {
        WhenAsked.DURING_HOLE: "while playing the hole",
        WhenAsked.AFTER_HOLE: "after the hole was completed",
    },
    help="It decides until when the mistake can be put right.",
    source="3.2d(1)",
)
strokes_put_right = yes_no(
    "strokes_put_right",
    "Was the number put right before the opponent's next stroke (after a hole: before the next began)?",
    help="A concession of the stroke or hole counts like a stroke. Last hole: before the result is final.",
    source="3.2d(1)",
)
result_misunderstood = yes_no(
    "result_misunderstood",
    "Did the wrong number change the opponent's view of who won, lost or tied the hole?",
    help="After a completed hole a wrong number without that effect is free of penalty.",
    source="3.2d(1) Exception",
)
opponent_knew_penalty = yes_no(
    "opponent_knew_penalty",
    "Did the opponent know of the penalty, for instance by seeing penalty relief taken?",
    help="Ask what the opponent saw.",
    source="3.2d(2) Exception",
)
told_of_penalty_in_time = yes_no(
    "told_of_penalty_in_time",
    "Was the opponent told as soon as reasonably possible, or at least before playing again?",
    help="Consider how far apart the players were. Not knowing of the penalty is no excuse.",
    source="3.2d(2)",
)
score_put_right = yes_no(
    "score_put_right",
    "Was the wrong score found before either player began another hole?",
    help="Last hole: before the result of the match is final.",
    source="3.2d(3)",
)
misled_and_ruling_in_time = yes_no(
    "misled_and_ruling_in_time",
    "Had the opponent given wrong strokes or hidden a penalty, and was a ruling asked for in time?",
    help="See the time limits of Rule 20.1b.",
    source="3.2d(3) Exception",
    decided_by=DecidedBy.COMMITTEE,
)
handicap_put_right = yes_no(
    "handicap_put_right",
    "Was the handicap put right before the opponent's next stroke?",
    help="Handicap strokes in the match follow from the handicaps declared, before the match or during it.",
    source="3.2c(1)",
)
declared_handicap = choice(
    "declared_handicap",
    "Was the handicap (or Handicap Index) declared for the match too high or too low?",
    {
        DeclaredHandicap.TOO_HIGH: "too high",
        DeclaredHandicap.TOO_LOW: "too low",
    },
    help="Compare with the handicap the Terms of the Competition give the player.",
    source="3.2c(1)",
    decided_by=DecidedBy.COMMITTEE,
)
strokes_given_affected = yes_no(
    "strokes_given_affected",
    "Does it change the number of handicap strokes given or received?",
    help="It counts even if no hole it changes has been played yet.",
    source="3.2c(1), Clarification 3.2c(1)/1",
    decided_by=DecidedBy.COMMITTEE,
)
strokes_misapplied_put_right = yes_no(
    "strokes_misapplied_put_right",
    "Was the mistake with the handicap stroke found before either player began another hole?",
    help="Last hole: before the result of the match is final.",
    source="3.2c(2)",
)
