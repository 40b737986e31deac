"""What the script of the mending page says."""

TEXTS: dict[str, str] = {
    "not_drawn": "The map cannot be drawn. The list goes without it.",
    "shown": "{number}: {what}.",
    "shown_all": "{count} places, mended alike.",
    "zoom_in": "Zoom in",
    "zoom_out": "Zoom out",
}
