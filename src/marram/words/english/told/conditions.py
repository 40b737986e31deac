"""How somebody tells it: the conditions of the competition: date of play, form of play, Local Rules in force."""

TOLD: dict[str, str] = {
    "sides": "They play like this: {answer}.",
}
