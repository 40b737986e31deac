"""What the scripts of the map on a case's page say."""

TEXTS: dict[str, str] = {
    "named": "{ground}: {name}",
    "zoom_in": "Zoom in",
    "zoom_out": "Zoom out",
    "key": "Key",
    "key.line_of_play": "Line of play",
    "out": "out",
    "moved": "moved {metres} m onto the edge",
    "tap": "Tap {place}",
    "tap_again": "Tap again to move it",
    "asking": "Asking the phone …",
    "elsewhere": "The phone is not on this course. Tap the map instead.",
    "here": "The phone is here, to about {metres} m. Stand at the place and use the cross; or move the cross to it.",
    "no_position": "The phone gave no position ({fault}). Tap the map instead.",
}
