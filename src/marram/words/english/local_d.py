"""Words for the Model Local Rules of area D: putting greens."""

PROVISIONS: dict[str, str] = {
    "D-4": "Local Rules D-4.1 and D-4.2 keep players from dropping on, or playing from, the fringe of a wrong green.",
    "D-4.1": "By this Local Rule the nearest point of complete relief from a wrong green must be clear of its fringe as well.",
    "D-4.2": "By this Local Rule, since 2023, the fringe belongs to the wrong green: relief from interference by it must be taken.",
    "D-5": "By this Local Rule a practice green, or a temporary green not in use, is no wrong green: the ball is played as it lies, or relief may be taken as from ground under repair, as the Committee has chosen.",
}

NOTES: dict[str, str] = {
    "clear_of_fringe_too": "Find the nearest point that is clear of the green and of the fringe as the Local Rule measures it.",
}
