"""Incidents: improving the conditions."""

from marram.rules.incidents.incident import Incident

THEME = "Improving the conditions"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "fixed_object_moved",
        "Something growing or fixed was moved, bent or broken",
        "8.1a(1)",
        THEME,
        "book.rule_08_improving:fixed_object_moved",
        "branch grass bush boundary stake fence tee-marker stance swing improve tree leaves knocked "
        "down broke bent branches out of bounds post rope sign backed into pulled up out removed "
        "white pushed stood practice snapped twig held back tied root long flattened uprooted "
        "sprinkler cover door opened weeds "
        "caddie broke",
    ),
    Incident(
        "object_put_in_position",
        "A loose or movable object was put where it helps the stroke",
        "8.1a(2)",
        THEME,
        "book.rule_08_improving:object_put_in_position",
        "building a stance towel kneel stone rake knees built knelt under stood placed brick jacket "
        "branch propped",
    ),
    Incident(
        "ground_altered",
        "The ground, sand, soil, dew, frost or water was altered before the stroke",
        "8.1a(3)",
        THEME,
        "book.rule_08_improving:ground_altered",
        "divot pitch-mark pressed down smoothed footprint line of play improve lie replaced trod "
        "improved tapped flattened behind ball dew wiped patted turf grass stamped repaired fringe "
        "removed brushed off club scraped dug feet ice trampled tamped pulled up tuft filled",
    ),
    Incident(
        "conditions_worsened",
        "The lie, stance, swing or line of play got worse after the ball came to rest",
        "8.1d",
        THEME,
        "book.rule_08_restoring:conditions_worsened",
        "restore sand splashed pitch-mark bunker shot footprints animal raked lie altered on green "
        "other player pitch mark divot ball landed fringe front dug branch fell damaged another made "
        "wind blew walked caddie",
    ),
    Incident(
        "own_conditions_altered",
        "The player altered other conditions on purpose to affect their own ball or a later stroke",
        "8.2",
        THEME,
        "book.rule_08_deliberate:own_conditions_altered",
        "slope roll back later stroke care for the course branch relief area broke in case before "
        "drop flattened grass where ball may ahead chip pressed smoothed bunker might land",
    ),
    Incident(
        "anothers_conditions_altered",
        "The player altered conditions on purpose to help or hinder another player",
        "8.3",
        THEME,
        "book.rule_08_deliberate:anothers_conditions_altered",
        "improve worsen partner opponent knowledge trampled line spike marks held branch damaged "
        "opponent's putt replaced divot",
    ),
)
