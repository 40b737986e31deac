"""Words for Rule 1."""

PROVISIONS: dict[str, str] = {
    "1.2a": "Golfers are expected to be honest, considerate to others and careful with the course. This Rule itself has one sanction only: the Committee may disqualify for serious misconduct.",
    "1.2b": "The Committee may set its own standards in a Code of Conduct adopted as a Local Rule, with the penalties named there.",
    "1.3b(1)": "A player who knowingly does not apply a penalty, and players who agree to ignore a Rule or penalty they know applies, are disqualified.",
    "1.3b(2)": "Where a spot, point, line, area or distance must be estimated, a careful and prompt judgement is accepted, even if evidence after the stroke shows it to be wrong.",
    "1.3c(1)": "A player answers for own acts and the caddie's, for acts of others done at the player's request, and for acts the player knowingly lets happen.",
    "1.3c(4)": "Breaches that belong together cost one penalty, the highest; in particular, not replacing a ball moved in breach of Rule 9.4 costs the general penalty in total.",
}

NOTES: dict[str, str] = {
    "conduct_warning": "Give the warning or sanction that the Code of Conduct names, and record it: the next breach may cost more.",
    "misconduct_far_from_norm": "Is it conduct so alien to the game that nothing less than removal from the competition will do?",
    "misconduct_likely": "Points to it: damaging a green on purpose, shifting tee-markers or boundary stakes to one's own taste, throwing a club at somebody, disturbing others on purpose, breaching Rules knowingly for a big gain, foul abuse again and again, a dishonest handicap.",
    "misconduct_unlikely": "Hardly enough: slamming a club into the ground with little damage, a club thrown at one's bag that hits somebody unintentionally, disturbing another player through carelessness.",
    "misconduct_no_lesser_penalty": "Without a Code of Conduct there is no penalty between none and disqualification; even serious misconduct may first be met with a warning that a repeat will disqualify.",
    "misconduct_of_others": "A player is not to be penalised under a Code for family, friends or spectators; for a caddie only if the Code says so.",
    "apply_the_penalty_itself": "Apply the penalty of the Rule that was breached, if it is not too late.",
    "others_who_agreed_are_out": "Those who held to the agreement and started, or let another start, are disqualified.",
    "call_off_agreement_before_start": "Tell the players to call the agreement off before any of them starts; otherwise all are disqualified.",
    "act_of_outside_influence": "Treat it as the act of an outside influence (or of the other player) and rule on what it did to the ball or the course.",
    "as_if_player_had_acted": "Rule on the act as if the player had done it: choose the incident that describes the act.",
    "estimate_anew": "Use the right spot, point, line or distance.",
}
