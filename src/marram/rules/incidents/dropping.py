"""Incidents: dropping, placing and wrong places."""

from marram.rules.incidents.incident import Incident

THEME = "Dropping, placing and wrong places"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "ball_dropped",
        "A ball was dropped and has not been played yet",
        "14.3",
        THEME,
        "book.rule_14_dropping:ball_dropped",
        "drop knee height shoulder relief area rolled out again deflected stopped placed twice dropping it again "
        "by caddie someone else hit foot leg club equipment "
        "stopped deliberately by caddie before it came to rest",
    ),
    Incident(
        "dropped_ball_played",
        "A dropped or placed ball was played after taking relief",
        "14.3b",
        THEME,
        "book.rule_14_dropped_ball_played:dropped_ball_played",
        "drop wrong way shoulder height outside relief area placed instead stroke nearer the hole too far "
        "two club-lengths instead of one stance still on path no complete relief",
    ),
    Incident(
        "dropped_once_more",
        "A further drop was made after one that counted",
        "14.3c",
        THEME,
        "book.rule_14_dropped_ball_played:dropped_once_more",
        "dropped again third drop too often without need",
    ),
    Incident(
        "ball_placed_after_two_drops",
        "After two drops outside the ball was placed; does it stay?",
        "14.3c(2)",
        THEME,
        "book.rule_14_dropping:ball_placed_after_two_drops",
        "second drop first touched place rolls nearest spot",
    ),
    Incident(
        "club_length_measured",
        "A relief area was measured: what is a club-length?",
        "Definitions: club-length",
        THEME,
        "book.rule_14_dropped_ball_played:club_length_measured",
        "club length longest putter driver measure relief area",
    ),
    Incident(
        "ball_set_down",
        "A ball was set down or let go: is it in play?",
        "14.4",
        THEME,
        "book.rule_14_ball_in_play:ball_set_down",
        "in play trial drop test intent",
    ),
    Incident(
        "mistake_in_relief_noticed",
        "A mistake in taking relief was noticed before the ball was played",
        "14.5b",
        THEME,
        "book.rule_14_ball_in_play:mistake_in_relief_noticed",
        "correct mistake change option another rule wrong place not played dropped under wrong rule not allowed there",
    ),
    Incident(
        "played_again_from_previous_spot",
        "A ball is to be played from where the previous stroke was made",
        "14.6",
        THEME,
        "book.rule_14_ball_in_play:played_again_from_previous_spot",
        "stroke and distance replay cancelled previous stroke tee again",
    ),
    Incident(
        "played_from_wrong_place",
        "A ball was played from a wrong place",
        "14.7",
        THEME,
        "book.rule_14_wrong_place:ball_played_from_elsewhere",
        "wrong place serious breach advantage correct next hole not replaced forgot to move marker back",
    ),
    Incident(
        "second_ball_after_wrong_place",
        "After a stroke from a wrong place a second ball was played: which counts?",
        "14.7b",
        THEME,
        "book.rule_14_wrong_place:second_ball_played",
        "two balls report Committee serious breach score counts",
    ),
)
