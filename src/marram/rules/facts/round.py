"""Facts about playing the round: starting, pace, stopping and resuming (Rule 5)."""

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


class BreachWhen(Enum):
    """When something that is penalised hole by hole happened."""

    ONE_HOLE = "one_hole"
    BETWEEN_HOLES = "between_holes"
    SEVERAL_HOLES = "several_holes"


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
    AFTER_STOPPING = "after_stopping"
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
    "By how many minutes was the player late or early?",
    help="From the starting time to when the player was ready there (or made the stroke); 9:05:00 is five minutes.",
    source="5.3a",
    unit="minutes",
    decided_by=DecidedBy.COMMITTEE,
    whole=False,
)
exceptional_circumstances = yes_no(
    "exceptional_circumstances",
    "Does the Committee find that exceptional circumstances kept the player from being on time?",
    help="Helping at an accident or witnessing it, a fire alarm: yes. Traffic, a breakdown, losing the way: normally no.",
    source="5.3a Exception 3",
    decided_by=DecidedBy.COMMITTEE,
)
opponent_off_time_too = yes_no(
    "opponent_off_time_too",
    "Was the opponent off the starting time too, by no more than five minutes?",
    help="Then both lose the hole, and it is tied. An opponent off by more is disqualified.",
    source="5.3a, 3.2a(2)",
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
    "Does a Pace of Play Policy in the Committee's own words set a time limit for a stroke?",
    help="Look at the Local Rules; the model policy with timing is Model Local Rule K-2.",
    source="5.6b(3)",
    decided_by=DecidedBy.COMMITTEE,
)
delay_reasonable = yes_no(
    "delay_reasonable",
    "Was the delay short and for a good reason?",
    help="Help from a referee, illness or injury (about 15 minutes), or a short stop that keeps nobody waiting.",
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
breach_when = choice(
    "breach_when",
    "When did it happen?",
    {
        BreachWhen.ONE_HOLE: "during the play of one hole",
        BreachWhen.BETWEEN_HOLES: "between two holes",
        BreachWhen.SEVERAL_HOLES: "during the play of several holes",
    },
    help="Count every hole on which it happened.",
    source="10.3a, G-4, G-6, H-1",
)
holes_of_breach = number(
    "holes_of_breach",
    "On how many holes did it happen?",
    help="Count each hole during which it went on; between two holes it belongs to the next.",
    source="10.3a, G-4, G-6, H-1",
    unit="holes",
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
    help="Leaving the course for a moment is not stopping; walking off, a long meal or a long shelter from rain is.",
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
        PlayedOn.AFTER_STOPPING: "a further stroke on the hole, after the player had decided to stop there",
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
    "Does the Committee find the player justified in not stopping (or not resuming) when required?",
    help="For instance when the signal could not be heard or understood.",
    source="5.7b Exception",
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
committee_ordered_play = yes_no(
    "committee_ordered_play",
    "Has the Committee found that lightning is no longer a danger, and ordered play to go on?",
    help="Ask the Committee; until then nobody need play who reasonably believes there is danger.",
    source="5.7c, Clarification 5.7c/1",
    decided_by=DecidedBy.COMMITTEE,
)
refused_to_go_on = yes_no(
    "refused_to_go_on",
    "Did the player refuse to go on although the other wanted to?",
    help="The agreement to stop ends as soon as one of them wants to play.",
    source="5.7a",
)
ready_on_resumption = yes_no(
    "ready_on_resumption",
    "Was the player in place, ready to play on at the time set, and not before it?",
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
