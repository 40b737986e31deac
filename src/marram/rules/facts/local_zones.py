"""Facts about Local Rules on dropping zones that must be used, zones out of bounds, and temporary lines."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class TemporaryLine(Enum):
    """What of a power line or cable put up for a competition is in the way (F-22)."""

    MOVABLE = "movable"
    FIXED = "fixed"
    COVERED_TRENCH = "covered_trench"


class PartOfYoungTree(Enum):
    """What of a young staked tree is in the way, where the Local Rule does not make it a no play zone (E-10)."""

    TREE = "tree"
    STAKE = "stake"


dropping_zone_is_only_option = yes_no(
    "dropping_zone_is_only_option",
    "Does the Local Rule make this dropping zone the only relief, beside stroke and distance?",
    help="Both kinds are in force: for this one the notice says whether it is one more option or the only one.",
    source="E-1.3",
    decided_by=DecidedBy.COMMITTEE,
)
zone_beyond_boundary_named = yes_no(
    "zone_beyond_boundary_named",
    "Is this area out of bounds one that the Local Rule names as a no play zone?",
    help="Read the notice; it is marked as a no play zone as well as out of bounds.",
    source="E-9",
    decided_by=DecidedBy.COMMITTEE,
)
zone_beyond_boundary_interferes = yes_no(
    "zone_beyond_boundary_interferes",
    "Does it, or something growing or fixed in it, interfere with the intended stance or swing?",
    help="The ball is in bounds; branches that hang over the boundary count.",
    source="E-9",
    decided_by=DecidedBy.MAP,
)
temporary_line_hit_for_certain = yes_no(
    "temporary_line_hit_for_certain",
    "Is it known or virtually certain (about 95 %) that the ball hit the temporary line or cable?",
    help="One put up for the competition and hung above the ground. Ask all who watched.",
    source="F-22",
)
hit_rising_part = yes_no(
    "hit_rising_part",
    "Did it hit the part of the line that rises from the ground to where it is hung?",
    help="A junction section that goes up a pole or a tower.",
    source="F-22",
)
temporary_line_thing = choice(
    "temporary_line_thing",
    "What of the temporary power line or cable is in the way?",
    {
        TemporaryLine.MOVABLE: "a cable, mat or stand that can easily be moved without damage",
        TemporaryLine.FIXED: "a cable, mat or stand that cannot",
        TemporaryLine.COVERED_TRENCH: "a trench with a cable under the grass",
    },
    help="Try gently whether it moves; never pull at a connection that may be live.",
    source="F-22",
)

part_of_young_tree = choice(
    "part_of_young_tree",
    "Is it the tree itself that is in the way, or only its stake or ties?",
    {
        PartOfYoungTree.TREE: "the tree",
        PartOfYoungTree.STAKE: "only the stake, the ties or a guard around the tree",
    },
    help="Where no Local Rule protects it, the tree is a plant like any other, and its stake is an obstruction.",
    source="E-10",
)
