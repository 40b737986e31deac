"""What the script of a paper on screen says."""

TEXTS: dict[str, str] = {
    "left": "{time} left",
    "over": "The time is over",
    "arrived": "All your answers are at the desk.",
    "waiting.one": "One answer waits on this device.",
    "waiting.several": "{count} answers wait on this device.",
    "answered": "answered",
    "out_of_reach": "The desk is out of reach. Your answers wait on this device; hand in once it is back.",
    "not_kept": "This device keeps nothing for pages. Stay on this page until all your answers are at the desk.",
}
