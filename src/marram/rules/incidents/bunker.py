"""Incidents: in a bunker."""

from marram.rules.incidents.incident import Incident

THEME = "In a bunker"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "ball_at_edge_of_bunker",
        "Is the ball in the bunker?",
        "12.1",
        THEME,
        "book.rule_12_bunkers:inside_edge_of_bunker",
        "edge lip grass island sand washed away bank bare ground embedded face outside wall",
    ),
    Incident(
        "sand_touched",
        "Sand in a bunker was touched or smoothed",
        "12.2b",
        THEME,
        "book.rule_12_bunkers:sand_touched",
        "grounded club practice swing backswing rake test footprints lean hit sand temper raked "
        "smoothing grounding swings footprint trap out of bounds anger laid threw dug feet hand "
        "kicked stuck umbrella",
    ),
    Incident(
        "thing_removed_from_bunker",
        "A loose impediment or movable obstruction was removed from the bunker",
        "12.2a",
        THEME,
        "book.rule_12_bunkers:thing_removed_from_bunker",
        "leaf stone twig pine cone rake apple leaves stones bottle cigarette trap ball pulled out "
        "stick acorn feather "
        "fruit half-eaten pear core peel",
    ),
)
