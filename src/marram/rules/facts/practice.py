"""Facts about practice before, between and during rounds (Rules 5.2 and 5.5)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class PracticeBefore(Enum):
    """What was done on the course before or between rounds."""

    EXEMPT = "exempt"
    STROKE = "stroke"
    GREEN_TESTED = "green_tested"
    ON_OTHER_DAY = "on_other_day"


class WhenPractised(Enum):
    """When during the round a practice stroke was made."""

    PLAYING_HOLE = "playing_hole"
    BETWEEN_HOLES = "between_holes"
    PLAY_STOPPED = "play_stopped"


class Struck(Enum):
    """What the swing or stroke was."""

    BALL_FOR_PRACTICE = "ball_for_practice"
    COURTESY = "courtesy"
    DECIDED_HOLE = "decided_hole"
    SWING_ONLY = "swing_only"


practised_before = choice(
    "practised_before",
    "What did the player do on the course before or between rounds?",
    {
        PracticeBefore.EXEMPT: "putted or chipped at the first tee or the green just completed, or used a practice area",
        PracticeBefore.STROKE: "made a practice stroke elsewhere on the course",
        PracticeBefore.GREEN_TESTED: "rolled a ball on a green or rubbed it, without a stroke",
        PracticeBefore.ON_OTHER_DAY: "practised only on a day on which the player had no round to play",
    },
    help="Only the player is restricted here, not the caddie.",
    source="5.2",
)
day_of_play_over = yes_no(
    "day_of_play_over",
    "Had the player completed the final round of that day?",
    help="A play-off later that day is still to come, so the day of play is not over.",
    source="5.2b",
)
practice_breach_again = yes_no(
    "practice_breach_again",
    "Is it a further breach that day (until 2022 related acts are one breach; since 2023 each stroke after the first is another)?",
    help="Rubbing one green several times is one breach in either edition.",
    source="5.2b",
)
when_practised = choice(
    "when_practised",
    "When did the player do it?",
    {
        WhenPractised.PLAYING_HOLE: "while playing a hole",
        WhenPractised.BETWEEN_HOLES: "between two holes",
        WhenPractised.PLAY_STOPPED: "while play was suspended or stopped",
    },
    help="Between holes: once one is completed (a side: by both partners, or nothing to gain), before the next stroke.",
    source="5.5, Clarification 5.5b/1",
)
struck = choice(
    "struck",
    "What was the stroke or swing made at, and what for?",
    {
        Struck.BALL_FOR_PRACTICE: "a stroke at a ball the player was not playing the hole with, for practice or for no reason",
        Struck.COURTESY: "a ball sent back to a practice area or to another player, only out of courtesy",
        Struck.DECIDED_HOLE: "playing out a hole whose result was already decided",
        Struck.SWING_ONLY: "a practice swing, not meant to strike a ball; or a tee, cone or pebble was struck",
    },
    help="A plastic or foam practice ball of about the size of a ball counts as a ball.",
    source="5.5a, Clarification 5.5a/1",
)
putt_or_chip_nearby = yes_no(
    "putt_or_chip_nearby",
    "Was it a putt or chip on or near the green just completed, a practice green or the next tee?",
    help="On or near: within a few steps.",
    source="5.5b",
)
practised_from_bunker = yes_no(
    "practised_from_bunker",
    "Was the practice stroke made from a bunker?",
    help="Between holes a practice stroke from a bunker is never allowed.",
    source="5.5b",
)
practice_delayed_play = yes_no(
    "practice_delayed_play",
    "Did the practice unreasonably delay play?",
    help="Were others kept waiting?",
    source="5.5b",
)
practice_allowed_when_stopped = yes_no(
    "practice_allowed_when_stopped",
    "Was it off the course, where the Committee allows it, or as allowed between two holes?",
    help="As between holes: a putt or chip at the green just completed, a practice green or the next tee.",
    source="5.5c",
)
match_stopped_until_another_day = yes_no(
    "match_stopped_until_another_day",
    "Had the players agreed to stop the match until another day?",
    help="Not when the Committee suspended play, nor when play goes on later the same day.",
    source="5.5c",
)
