"""Incidents: resolving doubt and disputes."""

from marram.rules.incidents.incident import Incident

THEME = "Resolving doubt and disputes"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "two_balls",
        "A player in doubt played two balls",
        "20.1c(3)",
        THEME,
        "book.rule_20_two_balls:two_balls",
        "uncertain second ball which counts alternate in doubt not sure how to proceed",
    ),
    Incident(
        "one_of_two_balls_picked_up",
        "A player in doubt played two balls, and gave one of them up",
        "20.1c(4)",
        THEME,
        "book.rule_20_two_balls:one_of_two_picked_up",
        "second ball not holed out picked up lifted did not finish with both",
    ),
    Incident(
        "ruling_requested_in_match",
        "A player asks for a ruling: is it in time?",
        "20.1b",
        THEME,
        "book.rule_20_rulings:ruling_requested_in_match",
        "claim match play late protest opponent dispute earlier hole final result",
    ),
    Incident(
        "decided_among_players",
        "The players decided a Rules question among themselves",
        "20.1b(1)",
        THEME,
        "book.rule_20_rulings:decided_among_players",
        "agreement without referee",
    ),
    Incident(
        "breach_by_another_kept_quiet",
        "A player said nothing about another player's breach",
        "20.1c(2)",
        THEME,
        "book.rule_20_rulings:breach_by_another_kept_quiet",
        "protect the field",
    ),
    Incident(
        "referee_disputed",
        "A player disagrees with the referee's ruling",
        "20.2a",
        THEME,
        "book.rule_20_rulings:referee_disputed",
        "second opinion appeal",
    ),
    Incident(
        "seen_only_on_video",
        "Video shows what nobody noticed: does it count?",
        "20.2c",
        THEME,
        "book.rule_20_rulings:seen_only_on_video",
        "naked eye television slow motion replay evidence footage high definition zoom camera",
    ),
    Incident(
        "ruling_was_wrong",
        "A ruling or the Committee was wrong",
        "20.2d",
        THEME,
        "book.rule_20_rulings:ruling_was_wrong",
        "wrong ruling administrative mistake referee gave a wrong ruling player played",
    ),
    Incident(
        "found_after_result",
        "A breach came to light after the result",
        "20.2e",
        THEME,
        "book.rule_20_rulings:found_after_result",
        "closed final late disqualification penalty not added competition over prize giving discovered afterwards",
    ),
    Incident(
        "not_in_the_rules",
        "The situation is not covered by the Rules",
        "20.3",
        THEME,
        "book.rule_20_rulings:not_in_the_rules",
        "equity reasonable fair",
    ),
)
