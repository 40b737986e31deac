"""What the script of the marking page says."""

TEXTS: dict[str, str] = {
    "named": "{ground}: {name}",
    "not_loaded": "The map cannot be loaded. Reload the page; the list goes without it.",
    "chosen": "{number}: {what}.",
    "zoom_in": "Zoom in",
    "zoom_out": "Zoom out",
}
