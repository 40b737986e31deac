"""Incidents: searching and identifying."""

from marram.rules.incidents.incident import Incident

THEME = "Searching and identifying"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "search_improved_conditions",
        "Grass, branches or the like were moved or broken in searching for the ball",
        "7.1a",
        THEME,
        "book.rule_07_search:search_improved_conditions",
        "bent broke trampled bush branch fair search improved grass pulled looking",
    ),
    Incident(
        "sand_moved_in_search",
        "Sand was moved in trying to find or identify the ball",
        "7.1b",
        THEME,
        "book.rule_07_search:sand_moved_in_search",
        "bunker buried plugged covered probed recreate re-create lie looking",
    ),
    Incident(
        "identifying_ball",
        "It must be decided whether a ball found is the player's",
        "7.2",
        THEME,
        "book.rule_07_identifying:identifying_ball",
        "mark brand number identical tree two balls same unmarked binoculars identification could not provisional "
        "up high",
    ),
    Incident(
        "ball_lifted_to_identify",
        "The player lifted or rotated a ball to identify it",
        "7.3",
        THEME,
        "book.rule_07_identifying:ball_lifted_to_identify",
        "marked cleaned rotated announce picked up check own ball without marking opponent's mud necessary",
    ),
    Incident(
        "ball_moved_in_search",
        "The ball was moved while somebody tried to find or identify it",
        "7.4",
        THEME,
        "book.rule_07_search:ball_moved_in_search",
        "kicked trod rough search buried stepped on ball looking leaves trampled found "
        "accidentally searching",
    ),
)
