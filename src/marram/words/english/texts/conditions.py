"""The conditions of the competition: in the bar above each page, and where they are set."""

TEXTS: dict[str, str] = {
    "title": "Conditions of the competition",
    "lead": "They decide which Rules apply. They are kept on this device, and in the address of each case.",
    "day": "Day of play",
    "day.help": "Decides the edition of the Rules: 2019, or 2023 from 1 January 2023. What was ruled before 2019 is shown on the page of an incident for teaching.",
    "form": "Form of play",
    "not_known": "Not known: ask me",
    "sides": "Who plays together",
    "local": "Model Local Rules in force",
    "local.help": "Only what the Committee has adopted; look at the notice to players.",
    "local.adopted": "{adopted} of {all}",
    "local.not_known": "Not known: ask me about each",
    "player": "The player (for drawing relief)",
    "club": "Longest club other than the putter, in metres",
    "club.help": "It is the club-length. Measure the player’s own; 1.15 m is a usual driver.",
    "keep": "Keep these",
    "leave": "Leave as they were",
    # In the bar
    "former": "Former Rules, until {year}",
    "rules": "Rules {year}",
    "clarified": "as clarified up to {day}",
    "form.open": "form of play open",
    "local.open": "Local Rules open",
    "local.none": "no Local Rules",
    "sides.foursomes": "Foursomes",
    "sides.four_ball": "Four-Ball",
}
