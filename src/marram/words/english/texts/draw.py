"""The draw: what the command prints."""

TEXTS: dict[str, str] = {
    "title": "Groups and starting times, by the seed {seed}",
    "group": "{time}, hole {tee}: {players}",
    "clash": "These wishes clash; without any one of them there is a draw:",
    "time": "A starting time is written as 08:00, not as {given}.",
    "places": "A group has one player at least.",
    "calendar.one": "Wrote {count} start to {path}.",
    "calendar.several": "Wrote {count} starts to {path}.",
    "tee": "hole {tee}",
    "start_of": "{event}: {player}",
    "sunset": "{day}: the sun sets at {sunset}. To be home by then in {minutes} minutes, the last group must have started by {last}.",
    "polar_night": "{day}: the sun does not rise there.",
    "no_sunset": "{day}: the sun does not set there.",
    "round": "Round {number}",
    "match": "{first} – {second}",
    "numbered": "{number}  {match}",
    "won": "{match}: {winner}",
    "bye": "bye",
    "open": "open",
}
