"""Incidents: loose impediments and movable obstructions."""

from marram.rules.incidents.incident import Incident

THEME = "Loose impediments and movable obstructions"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "natural_thing_removed",
        "A loose impediment, sand or another natural thing was removed",
        "15.1",
        THEME,
        "book.rule_15_loose_impediments:natural_thing_removed",
        "leaf stone twig loose impediment sand soil dew ball moved goose droppings ant hill snow ice "
        "boulder heavy spectators helped break off branch acorn cone worm insect spider web "
        "banana skin fruit peel saliva",
    ),
    Incident(
        "artificial_thing_removed",
        "A rake, stake or other artificial object was removed",
        "15.2a(1)",
        THEME,
        "book.rule_15_movable_obstructions:artificial_thing_removed",
        "movable obstruction rake stake bottle flagstick tee-marker ball moved rolled range ball stray abandoned ball "
        "hose board sign "
        "ball leaning against movable stake of penalty area",
    ),
    Incident(
        "ball_in_or_on_movable_obstruction",
        "The ball lies in or on a movable obstruction, or cannot be found there",
        "15.2",
        THEME,
        "book.rule_15_movable_obstructions:ball_in_or_on_movable_obstruction",
        "bag towel bin crate not found under free relief",
    ),
    Incident(
        "helping_ball",
        "A ball at rest might help somebody's play",
        "15.3a",
        THEME,
        "book.rule_15_helping_interfering:helping_ball_at_rest",
        "backstop backstopping assist near the hole agreement leave lift asked refused",
    ),
    Incident(
        "interfering_ball",
        "A player's ball might interfere with another player's play",
        "15.3b",
        THEME,
        "book.rule_15_helping_interfering:interfering_ball_at_rest",
        "lift please in the way stance swing line distract asked refused to lift "
        "interfering ball lifted then cleaned",
    ),
    Incident(
        "ball_marker_in_the_way",
        "A ball-marker might help or interfere",
        "15.3c",
        THEME,
        "book.rule_15_helping_interfering:ball_marker_in_the_way",
        "move marker clubhead coin back line of putt",
    ),
)
