"""Incidents: what only a Local Rule allows, forbids or defines."""

from marram.rules.incidents.incident import Incident

THEME = "Local Rules: course, equipment and conduct"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "beyond_internal_boundary",
        "The ball lies beyond a boundary inside the course",
        "A-4",
        THEME,
        "local_rules.area_a:beyond_internal_boundary",
        "internal out of bounds stakes other hole dogleg",
    ),
    Incident(
        "stake_in_the_way",
        "A white stake inside the course is in the way",
        "A-5",
        THEME,
        "local_rules.area_a:stake_in_the_way",
        "internal out of bounds black top boundary object",
    ),
    Incident(
        "provisional_for_penalty_area",
        "A ball was played provisionally because the original may be in a penalty area",
        "B-3",
        THEME,
        "local_rules.area_b_provisional:provisional_for_penalty_area",
        "provisional water blind pond",
    ),
    Incident(
        "club_limited",
        "A club is not on a list, has old grooves or is too long",
        "G-1",
        THEME,
        "local_rules.area_g:club_limited",
        "driver head list grooves 46 inches length",
    ),
    Incident(
        "ball_limited",
        "A ball is not on the list, or of another model than before",
        "G-3",
        THEME,
        "local_rules.area_g:ball_limited",
        "one ball rule brand model conforming list",
    ),
    Incident(
        "rode_during_round",
        "A player or caddie rode during the round",
        "G-6",
        THEME,
        "local_rules.area_g:rode_during_round",
        "cart buggy motorized transportation shuttle buggy ban ride",
    ),
    Incident(
        "shoes_worn",
        "A player wore shoes with spikes or soles that may be barred",
        "G-7",
        THEME,
        "local_rules.area_g:shoes_worn",
        "metal spikes footwear",
    ),
    Incident(
        "caddie_against_local_rule",
        "A player had a caddie, or none, against a Local Rule",
        "H-1",
        THEME,
        "local_rules.area_h:caddie_against_local_rule",
        "parent junior caddie forbidden required caddy no caddies",
    ),
    Incident(
        "water_swept_from_green",
        "Temporary water was swept off the putting green",
        "J-2",
        THEME,
        "local_rules.area_j:water_swept_from_green",
        "squeegee roller rain puddle line",
    ),
    Incident(
        "group_over_time",
        "A group took longer than the pace of play policy allows",
        "K-1",
        THEME,
        "local_rules.area_k:group_over_time",
        "slow play checkpoint out of position time limit",
    ),
    Incident(
        "placed_for_wheeled_device",
        "A player with a wheeled mobility device wants to place the ball within reach",
        "M-1",
        THEME,
        "local_rules.area_m:placed_for_wheeled_device",
        "wheelchair disability placing",
    ),
)
