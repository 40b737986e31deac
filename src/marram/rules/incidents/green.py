"""Incidents: on the putting green."""

from marram.rules.incidents.incident import Incident

THEME = "On the putting green"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "green_repaired",
        "The putting green or the hole was repaired",
        "13.1c(2)",
        THEME,
        "book.rule_13_putting_greens:green_repaired",
        "spike mark ball mark pitch mark old hole plug aeration damage hail marks tapped down "
        "plugmark edge shoe hoof animal stone embedded line of play used tee scuff many "
        "sunken",
    ),
    Incident(
        "loose_soil_removed",
        "Sand or loose soil was brushed away",
        "13.1c(1)",
        THEME,
        "book.rule_13_putting_greens:loose_soil_removed",
        "sand soil fringe apron brushed off green line wiped towel",
    ),
    Incident(
        "green_tested",
        "The surface of a green was rubbed, or a ball rolled on it",
        "13.1e",
        THEME,
        "book.rule_13_putting_greens:green_tested",
        "test grain speed practice between holes rolled ball wet wiped hand surface scraped cleaned after",
    ),
    Incident(
        "wrong_green",
        "The ball lies on, or the player would stand on, a wrong green",
        "13.1f",
        THEME,
        "book.rule_13_putting_greens:wrong_green",
        "other green practice green temporary green stance another fringe",
    ),
    Incident(
        "ball_hit_flagstick",
        "The ball hit the flagstick, or the person attending it",
        "13.2",
        THEME,
        "book.rule_13_flagstick:ball_hit_flagstick",
        "pin attended removed leaning flag putt lying chip "
        "putting one-handed holding the flagstick partner held it against orders",
    ),
    Incident(
        "flagstick_moved",
        "A flagstick left in the hole was moved or removed around the stroke",
        "13.2a",
        THEME,
        "book.rule_13_flagstick:flagstick_moved",
        "pin pulled unauthorised attending flag out ball moving without permission took opponent authority "
        "caddie while ball was rolling to avoid hitting it chosen to leave it in",
    ),
    Incident(
        "ball_against_flagstick",
        "The ball came to rest against the flagstick in the hole",
        "13.2c",
        THEME,
        "book.rule_13_flagstick:ball_against_flagstick",
        "pin holed wedged flag leaning resting jammed stuck between lodged removed moved",
    ),
    Incident(
        "ball_in_hole",
        "Is the ball holed?",
        "13.2c",
        THEME,
        "book.rule_13_ball_at_hole:is_ball_holed",
        "in the hole stuck embedded in the side of the hole wall liner lip above bounced out popped out of the cup "
        "at rest below surface definition taken out still moving hole-in-one",
    ),
    Incident(
        "ball_overhung_hole",
        "The ball overhung the hole",
        "13.3",
        THEME,
        "book.rule_13_ball_at_hole:ball_overhung_hole",
        "lip ten seconds wait fell in edge of hole hanging dropped tap overhang overhanging flagstick "
        "removed lifted caught after into opponent knocked",
    ),
)
