"""Words for Rule 24."""

PROVISIONS: dict[str, str] = {
    "24.4": "In team competitions special provisions on advice apply.",
    "24.4a": "A Local Rule may let a team name an advice giver, who may then be asked; the restrictions on helping still hold.",
    "24.4c": "Team members playing on the course do not advise each other unless they are partners or a Local Rule allows it.",
}

NOTES: dict[str, str] = {}
