"""Words for Rule 24."""

PROVISIONS: dict[str, str] = {
    "24.2": "The Committee settles how a team's score is worked out and the other Terms of the Competition.",
    "Clarification 24.2/1": "Where not all scores count for the team, a disqualification is for that round only; one for conduct may be for the round or the whole competition, as the Committee decides.",
    "24.4": "In team competitions special provisions on advice apply.",
    "24.4a": "A Local Rule may let a team name an advice giver, who may then be asked; the restrictions on helping still hold.",
    "24.4b": "An advice giver who plays in the competition must not act as one during their own round; for advice he or she then counts as any other playing team member.",
    "24.4c": "Team members playing on the course do not advise each other unless they are partners or a Local Rule allows it.",
}

NOTES: dict[str, str] = {
    "out_of_this_round_only": "It is for this round only: the player's score does not count, and the player may play in the other rounds.",
    "out_of_whole_competition": "It is for the whole competition.",
    "team_terms_decide": "The Terms of the Competition decide what a missing score means for a team all of whose scores count.",
    "conduct_how_serious": "How serious was the misconduct, and is the player likely to repeat it?",
    "conduct_code_says": "What does the Code of Conduct say about the rounds to come?",
}
