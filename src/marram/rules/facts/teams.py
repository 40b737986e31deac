"""Facts about team competitions (Rule 24)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class TeamAdvice(Enum):
    """How advice was asked for or given in a team competition."""

    ASKED_ADVICE_GIVER = "asked_advice_giver"
    ADVICE_GIVER_STOOD_BEHIND = "advice_giver_stood_behind"
    PLAYING_ADVICE_GIVER = "playing_advice_giver"
    BETWEEN_TEAM_PLAYERS = "between_team_players"
    GIVEN_UNASKED = "given_unasked"


advice_giver_allowed = yes_no(
    "advice_giver_allowed",
    "Is this the person the team has named as advice giver, and is it advice the Local Rule allows?",
    help="Named to the Committee before giving advice. The Local Rule may leave out the line of play on the green.",
    source="24.4a, H-2",
    decided_by=DecidedBy.COMMITTEE,
)
team_advice = choice(
    "team_advice",
    "Who asked for advice or gave it, or stood behind the player?",
    {
        TeamAdvice.ASKED_ADVICE_GIVER: "the player asked a captain, coach or advice giver for advice",
        TeamAdvice.ADVICE_GIVER_STOOD_BEHIND: "a captain, coach or advice giver stood behind the ball on purpose while the stance was taken",
        TeamAdvice.GIVEN_UNASKED: "a captain, coach or advice giver, not playing, told the player something unasked",
        TeamAdvice.PLAYING_ADVICE_GIVER: "the named advice giver was playing too, and was asked or gave advice",
        TeamAdvice.BETWEEN_TEAM_PLAYERS: "two players of the team, both playing, asked or gave advice",
    },
    help="Partners on a side may always advise each other.",
    source="24.4",
)
team_disqualified_for_conduct = yes_no(
    "team_disqualified_for_conduct",
    "Was the player disqualified for failing the standards of a Code of Conduct?",
    help="Rule 1.2b; every other reason counts for the round.",
    source="Clarification 24.2/1",
    decided_by=DecidedBy.COMMITTEE,
)
all_team_scores_count = yes_no(
    "all_team_scores_count",
    "Do the scores of all team members count towards the team's total?",
    help="See the Terms of the Competition: often the best three of four count.",
    source="24.2",
    decided_by=DecidedBy.COMMITTEE,
)
team_members_in_same_group = yes_no(
    "team_members_in_same_group",
    "Were they playing in the same group, as the Local Rule asks?",
    help="It is meant for competitions in which scores count for the team alone.",
    source="24.4c, H-5",
    decided_by=DecidedBy.COMMITTEE,
)
