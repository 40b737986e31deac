"""The draw: what the command prints."""

TEXTS: dict[str, str] = {
    "title": "Groups and starting times, by the seed {seed}",
    "group": "{time}, hole {tee}: {players}",
    "clash": "These wishes clash; without any one of them there is a draw:",
    "time": "A starting time is written as 08:00, not as {given}.",
    "places": "A group has one player at least.",
}
