"""How somebody tells it: facts about Local Rules on dropping zones that must be used, zones out of bounds, and temporary lines."""

TOLD: dict[str, str] = {
    "dropping_zone_is_only_option.yes": "By the Local Rule the dropping zone is the only relief beside stroke and distance.",
    "dropping_zone_is_only_option.no": "The Local Rule makes the dropping zone one option among others.",
    "hit_rising_part.yes": "It hit the part of the line that rises from the ground.",
    "hit_rising_part.no": "It hit the part of the line that hangs.",
    "temporary_line_hit_for_certain.yes": "It is virtually certain that the ball hit the temporary line or cable.",
    "temporary_line_hit_for_certain.no": "It is not virtually certain that the ball hit the temporary line or cable.",
    "zone_beyond_boundary_interferes.yes": "It, or something growing or fixed in it, interfered with the intended stance or swing.",
    "zone_beyond_boundary_interferes.no": "It did not interfere with the intended stance or swing.",
    "part_of_young_tree.tree": "The tree itself was in the way.",
    "part_of_young_tree.stake": "Only the stake, the ties or a guard around the tree was in the way.",
    "zone_beyond_boundary_named.yes": "The Local Rule names this area out of bounds as a no play zone.",
    "zone_beyond_boundary_named.no": "The Local Rule does not name this area as a no play zone.",
    "temporary_line_thing": "In the way was {answer}.",
    "temporary_line_thing.fixed": "In the way was a cable, mat or stand that cannot easily be moved without damage.",
}
