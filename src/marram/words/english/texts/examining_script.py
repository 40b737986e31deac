"""What the script of a paper on screen says."""

TEXTS: dict[str, str] = {
    "left": "{time} left",
    "over": "The time is over",
    "arrived": "All your answers are at the desk.",
    "waiting.one": "One answer waits on this device.",
    "waiting.several": "{count} answers wait on this device.",
    "answered": "answered",
    "not_kept": "This device keeps nothing for pages. Stay on this page until all your answers are at the desk.",
}
