"""The frame around every page of the desk, the map in it, and the page of an error."""

TEXTS: dict[str, str] = {
    "page_title": "{title} · marram",
    "skip": "Skip to the case",
    "brand": "marram: start a new case",
    "footer": "marram advises; the referee and the Committee decide.",
    "credit": "Map: {credit}.",
    "the_course": "the course",
    "course": "Course",
    "map_of": "Map of {course}",
    "map_keys": "Map of {course}. Arrow keys move it, plus and minus zoom.",
    "at_cross": "At the cross",
    "at_cross.where": "in the middle of the map",
    "at_phone": "My position",
    "cancel": "Cancel",
    "map_needs_script": "The map needs JavaScript. Everything else works without it: choose the hole, and marram asks what the map would have told.",
    "local_rules": "Local Rules",
    "change": "Change",
    "change.what": "the conditions of the competition",
    "map_version": "Map version {number}, in force from {since}, saved by {who}.",
    "holes_cut": "Holes as set for {day}, version {number}, saved by {who}.",
    "map_version.file": "Map version {number}, the map as its file holds it.",
    "here.no_play_zone": "The map shows a no play zone here.",
    "here.wrong_green": "The ball lies on a wrong green: relief must be taken.",
    "rule": "Rule {citation}",
    "local_rule": "Model Local Rule {citation}",
    "metres": "{metres} m",
    "yards": "{yards} yd",
    "hole": "Hole",
    "hole_number": "Hole {number}",
    "par": "par {par}",
    "back_to_course": "Back to the course",
    # Errors
    "guard.host": (
        "The desk is not known by this name. Open it by the address that it said when it was started; another name "
        "it is reached by is given with --allow-host."
    ),
    "guard.origin": (
        "Another site asked the desk to save something; nothing was saved. If it was you, open the desk itself and "
        "save there."
    ),
    "guard.size": "More was sent at once than the desk takes; nothing was saved. Send less at a time.",
    "guard.json": "What is sent to this address must be JSON, with the content type application/json.",
    "out_of_reach": "The desk cannot be reached. What you chose is kept here and sent as soon as it can be.",
    "map_not_here": "The map has not arrived. The rest works without it; it is fetched again by itself.",
    "map_again": "Fetch the map now",
    "error.title": "This page cannot be shown",
    "error.no_page": "There is no such page",
    "error.not_used": "This cannot be used",
    "error.book": "{fault} Please report it; the referee decides without marram.",
    "error.failure": "marram failed here; please report it with the address of this page. The referee decides without it.",
    "error.no_address": "There is no page {path}. Go back to the course and start from there.",
}
