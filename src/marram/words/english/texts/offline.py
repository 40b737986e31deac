"""The book without a network: the page for the pocket, and the desk out of reach."""

TEXTS: dict[str, str] = {
    "title": "The Rules in the pocket",
    "about": "About this book",
    "about.edition": "Rules of Golf, edition of {edition}, as clarified to {day}.",
    "about.day": "For play on {day}.",
    "about.made": "Made by marram {program}; book {book}.",
    "about.event": "Event: {name}",
    "about.form": "Form of play: {form}",
    "about.local": "Local Rules in force: {codes}",
    "about.local_none": "No Local Rule changes a ruling here.",
    "about.local_open": "The Local Rules are not known here: where one matters, it is asked.",
    "about.notice": "Notice to players",
    "about.pictures": "Nothing is drawn here: where relief is and how far it reaches must be found on the ground.",
    "loading": "The book is being opened.",
    "no_script": "This page needs JavaScript: the questions are put by a script that stands in it.",
    "written": "{path}: {size:.0f} kB, the book of {edition} as of {day}, {incidents} things that can happen.",
}
