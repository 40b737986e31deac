"""What ``marram course mend`` says."""

TEXTS: dict[str, str] = {
    "usable": "{file} can be used: {errors} to mend, {others} to look at.",
    "not_usable": "{file} cannot be used yet: {errors} to mend, {others} to look at.",
    "mended": "Mended",
    "mended_one": "{where}: {words}",
    "the_map": "the map",
    "in_version": "Version {version} of the map holds it; {file} is left as it was.",
    "in_copy": "{copy} holds it; {file} is left as it was.",
    "to_choose": "Not accepted: each leaves a choice",
    "head.error": "To mend before the map can be used",
    "head.warning": "The map works, but not for everything",
    "head.note": "Worth a look",
    "nothing_definite": "{fault} (Nothing definite can be proposed.)",
    "how": "Accept with --accept NUMBER (3, or 3b where there is a choice) or --accept all-of:KIND; nothing is mended unasked.",
    "numbered": "{number}. {what}",
    "fault": "{what}. [{kind}]",
    "fault_at": "{where}: {what}. [{kind}]",
    "with_more": "{what} ({count} more like it)",
    "up_to": "… to {letter}) {words}",
    "only": "→ {words}",
    "lettered": "{letter}) {words}",
    "brings": "{words} ({adds})",
    # Asking on a terminal
    "ask.single": "y to accept, Enter to leave it, q to stop: ",
    "ask.choice": "{first} to {last} to choose, Enter to leave it, q to stop: ",
    "ask.who": "Who mends it (name or initials)? ",
}
