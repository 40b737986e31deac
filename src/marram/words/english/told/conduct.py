"""How somebody tells it: facts about playing by the Rules: conduct, ignoring a Rule, who acted (Rule 1)."""

TOLD: dict[str, str] = {
    "knew_it_applied.yes": "It was known that the Rule or penalty applied.",
    "knew_it_applied.no": "Nobody knew that the Rule or penalty applied.",
    "played_before_known_wrong.yes": "The stroke had been made before the estimate turned out wrong.",
    "played_before_known_wrong.no": "The estimate turned out wrong before the stroke was made.",
    "reasonable_judgement.yes": "{player} did all that could reasonably be expected to make an accurate estimate.",
    "reasonable_judgement.no": "{player} did not do what could reasonably be expected to make an accurate estimate.",
    "act_of_other.moved_ball": "That person lifted, touched or moved {player}'s ball at rest.",
    "act_of_other.improved_conditions": "That person improved the lie, stance, swing, line of play or relief area of {player}.",
    "act_of_other.other": "That person did something that neither moved a ball nor improved the conditions for {player}.",
    "code_penalty": "What a Code of Conduct in force provides for this: {answer}.",
    "code_penalty.not_covered": "No Code of Conduct in force covers this act.",
    "conduct_finding": "What the Committee has found: {answer}.",
    "how_involved.requested": "It was done at {player}'s request or with {player}'s authority.",
    "how_involved.saw_and_let_happen": "{player} saw it coming, knew it was a breach, and did not try to stop it.",
    "how_involved.neither": "{player} had not asked for it, and could not have stopped it.",
    "someone_had_started.yes": "One of those players had started the round with the agreement still standing.",
    "someone_had_started.called_off": "One of those players had started, but this player had called it off before and told the others.",
    "someone_had_started.no": "None of those players had started the round.",
    "who_ignored": "Who ignored it: {answer}.",
}
