"""What is marked on the map and needs a Local Rule that is not in force."""

TEXTS: dict[str, str] = {
    "title": "Marked, but not in force:",
    "dropping_zone": (
        "The map has a dropping zone ({names}), but no Local Rule in force lets players use it ({codes}). "
        "No ruling offers it."
    ),
    "no_play_zone": (
        "The map has a no play zone ({names}), but none of the Local Rules in force establishes one ({codes}). "
        "Rulings take it as marked."
    ),
    "unknown": "It is not known which Local Rules are in force. {names}: needs Local Rule {codes}.",
    "here": (
        "A dropping zone is marked for this ({names}). It is not offered: Local Rule {codes} is not in force. "
        "If the notice to players has it, change the conditions."
    ),
    "change": "Change the conditions",
}
