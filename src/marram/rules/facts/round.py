"""Facts about playing the round: starting, pace, practice, stopping and resuming (Rule 5)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, number, yes_no


class OffTime(Enum):
    """How the start missed the starting time."""

    LATE = "late"
    EARLY = "early"


class BreachNumber(Enum):
    """Which breach of the same Rule in the round this is."""

    FIRST = "first"
    SECOND = "second"
    THIRD = "third"


class PracticeBefore(Enum):
    """What was done on the course before or between rounds."""

    EXEMPT = "exempt"
    STROKE = "stroke"
    GREEN_TESTED = "green_tested"


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


class StopReason(Enum):
    """Why the player stopped play."""

    SUSPENDED = "suspended"
    AGREED_IN_MATCH = "agreed_in_match"
    LIGHTNING = "lightning"
    SHORT_PAUSE = "short_pause"
    OTHER = "other"


class Suspension(Enum):
    """The kind of suspension the Committee declared."""

    IMMEDIATE = "immediate"
    NORMAL = "normal"


class PlayedOn(Enum):
    """What the player did after a normal suspension."""

    FINISHED_HOLE = "finished_hole"
    FINISHED_WITHOUT_MARKER = "finished_without_marker"
    BEGAN_HOLE = "began_hole"


class WhyStopped(Enum):
    """Why play had stopped, which settles when it goes on."""

    COMMITTEE = "committee"
    LIGHTNING = "lightning"
    AGREEMENT = "agreement"


class BallWhenStopped(Enum):
    """What became of the ball while play was stopped."""

    LIFTED = "lifted"
    LEFT_IN_PLACE = "left_in_place"
    MOVED = "moved"


ready_when_group_could_start = yes_no(
    "ready_when_group_could_start",
    "Was the whole start delayed, and the player there and ready when the group was able to start?",
    help="Weather, slow play ahead or a ruling may delay a start; then this is what counts.",
    source="5.3a",
)
off_time = choice(
    "off_time",
    "Was the player late or early?",
    {
        OffTime.LATE: "late: not ready to play at the starting point at the starting time",
        OffTime.EARLY: "early: made the first stroke before the starting time",
    },
    help="The starting time is exact: 9:00 means 9:00:00. Use the Committee's clock.",
    source="5.3a",
    decided_by=DecidedBy.COMMITTEE,
)
minutes_off = number(
    "minutes_off",
    "By how many minutes?",
    help="From the starting time to when the player was ready at the starting point (or made the stroke).",
    source="5.3a",
    unit="minutes",
    decided_by=DecidedBy.COMMITTEE,
    whole=False,
)
exceptional_circumstances = yes_no(
    "exceptional_circumstances",
    "Does the Committee find that exceptional circumstances kept the player from being on time?",
    help="An accident one stopped to help at may count; traffic or losing the way normally does not.",
    source="5.3a Exception 3",
    decided_by=DecidedBy.COMMITTEE,
)
group_change_approved = yes_no(
    "group_change_approved",
    "Did the Committee approve the change of group, before or afterwards?",
    help="Ask the Committee; it may also approve a change after the event.",
    source="5.4b",
    decided_by=DecidedBy.COMMITTEE,
)
seconds_for_stroke = number(
    "seconds_for_stroke",
    "How many seconds did the stroke take, once the player could play without interference?",
    help="Start when it is the player's turn and nothing interferes or distracts; stop at the stroke.",
    source="5.6b(1)",
    unit="seconds",
    whole=False,
)
time_limit_in_policy = yes_no(
    "time_limit_in_policy",
    "Does a Pace of Play Policy in force set a time limit for a stroke or a hole?",
    help="Look at the Local Rules and the Terms of the Competition.",
    source="5.6b(3)",
    decided_by=DecidedBy.COMMITTEE,
)
delay_reasonable = yes_no(
    "delay_reasonable",
    "Was the delay short and for a good reason?",
    help="Help from a referee, sudden illness or injury (up to about 15 minutes), or another good reason.",
    source="5.6a",
)
delay_breach = choice(
    "delay_breach",
    "Which unreasonable delay of the player in this round is it?",
    {
        BreachNumber.FIRST: "the first",
        BreachNumber.SECOND: "the second",
        BreachNumber.THIRD: "the third or a later one",
    },
    help="Ask the Committee for delays already penalised in this round.",
    source="5.6a",
)
practised_before = choice(
    "practised_before",
    "What did the player do on the course on the day of the round?",
    {
        PracticeBefore.EXEMPT: "putted or chipped at the first tee or the green just completed, or used a practice area",
        PracticeBefore.STROKE: "made a practice stroke elsewhere on the course",
        PracticeBefore.GREEN_TESTED: "rolled a ball on a green or rubbed it, without a stroke",
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
    "Is it a further breach of this kind that day?",
    help="Since 2023 a second stroke counts as a further breach; before, count separate breaches.",
    source="5.2b",
)
when_practised = choice(
    "when_practised",
    "When was it done?",
    {
        WhenPractised.PLAYING_HOLE: "while playing a hole",
        WhenPractised.BETWEEN_HOLES: "between two holes",
        WhenPractised.PLAY_STOPPED: "while play was suspended or stopped",
    },
    help="Between two holes means after completing one and before the stroke that begins the next.",
    source="5.5",
)
struck = choice(
    "struck",
    "What was it?",
    {
        Struck.BALL_FOR_PRACTICE: "a stroke at a ball, or anything of about that size, for practice",
        Struck.COURTESY: "a ball sent back to a practice area or to another player, only out of courtesy",
        Struck.DECIDED_HOLE: "playing out a hole whose result was already decided",
        Struck.SWING_ONLY: "a swing without meaning to strike a ball, or at a tee, cone or pebble",
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
    help="In a match stopped by agreement only what is allowed between two holes is allowed on the course.",
    source="5.5c",
)
stop_reason = choice(
    "stop_reason",
    "Why did the player stop?",
    {
        StopReason.SUSPENDED: "the Committee suspended play",
        StopReason.AGREED_IN_MATCH: "player and opponent agreed to stop",
        StopReason.LIGHTNING: "the player reasonably believed there was danger from lightning",
        StopReason.SHORT_PAUSE: "left the course or paused for a moment, meaning to go on",
        StopReason.OTHER: "any other reason, such as rain or heat",
    },
    help="Leaving the course is not in itself stopping play.",
    source="5.7a",
)
stopping_delays_competition = yes_no(
    "stopping_delays_competition",
    "Does the agreed stop delay the competition?",
    help="Think of the next round of the draw and of matches behind.",
    source="5.7a",
    decided_by=DecidedBy.COMMITTEE,
)
reported_stop = yes_no(
    "reported_stop",
    "Did the player report it to the Committee as soon as possible?",
    help="Ask when and to whom it was reported.",
    source="5.7a",
)
suspension = choice(
    "suspension",
    "What kind of suspension was it?",
    {
        Suspension.IMMEDIATE: "immediate (imminent danger)",
        Suspension.NORMAL: "normal (darkness, course unplayable)",
    },
    help="The two have different signals; the notice to players names them.",
    source="5.7b",
    decided_by=DecidedBy.COMMITTEE,
)
played_on = choice(
    "played_on",
    "What was played after the signal?",
    {
        PlayedOn.FINISHED_HOLE: "the hole already begun by someone in the group",
        PlayedOn.FINISHED_WITHOUT_MARKER: "the hole already begun, after the marker had stopped and left",
        PlayedOn.BEGAN_HOLE: "a stroke that began another hole",
    },
    help="Players have about two minutes to decide whether to finish the hole.",
    source="5.7b(2)",
)
opponent_stopped = yes_no(
    "opponent_stopped",
    "Did the opponent stop play?",
    help="Once one of them stops, both must.",
    source="5.7b(2)",
)
playing_on_justified = yes_no(
    "playing_on_justified",
    "Does the Committee find that playing on was justified?",
    help="For instance when the signal could not be heard or understood.",
    source="5.7b",
    decided_by=DecidedBy.COMMITTEE,
)
why_play_stopped = choice(
    "why_play_stopped",
    "Why had play stopped?",
    {
        WhyStopped.COMMITTEE: "the Committee had suspended play",
        WhyStopped.LIGHTNING: "the player had stopped because of lightning",
        WhyStopped.AGREEMENT: "player and opponent had agreed to stop",
    },
    help="It decides when play must go on.",
    source="5.7c(2)",
)
ready_on_resumption = yes_no(
    "ready_on_resumption",
    "Was the player in place and ready when play was to go on, and not playing before?",
    help="The place is where play of the hole had stopped, or the next teeing area.",
    source="5.7c(2)",
)
ball_when_stopped = choice(
    "ball_when_stopped",
    "What became of the ball while play was stopped?",
    {
        BallWhenStopped.LIFTED: "it was lifted",
        BallWhenStopped.LEFT_IN_PLACE: "it was left and has not moved",
        BallWhenStopped.MOVED: "it, or the ball-marker, moved or was taken away",
    },
    help="Wind and water count too.",
    source="5.7d",
)
