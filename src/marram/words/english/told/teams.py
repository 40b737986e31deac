"""How somebody tells it: facts about team competitions (Rule 24)."""

TOLD: dict[str, str] = {
    "advice_giver_allowed.yes": "The team had named that person as advice giver, and the Local Rule allows the advice.",
    "advice_giver_allowed.no": "That person was not the named advice giver, or the Local Rule does not allow that advice.",
    "all_team_scores_count.yes": "The scores of all team members count towards the team's total.",
    "all_team_scores_count.no": "Not every team member's score counts towards the team's total.",
    "team_disqualified_for_conduct.yes": "{player} was disqualified for failing the standards of a Code of Conduct.",
    "team_disqualified_for_conduct.no": "{player} was not disqualified under a Code of Conduct.",
    "team_members_in_same_group.yes": "They were playing in the same group, as the Local Rule asks.",
    "team_members_in_same_group.no": "They were not playing in the same group.",
    "team_advice.asked_advice_giver": "{player} asked a captain, coach or advice giver for advice.",
    "team_advice.advice_giver_stood_behind": "A captain, coach or advice giver stood behind the ball on purpose while the stance was taken.",
    "team_advice.given_unasked": "A captain, coach or advice giver, who was not playing, gave {player} advice unasked.",
    "team_advice.playing_advice_giver": "{player} asked the named advice giver, who was playing too, for advice.",
    "team_advice.between_team_players": "{player} and another player of the team, both playing, exchanged advice.",
}
