"""The register of Model Local Rules, area A: boundaries."""

from marram.rules.local_rules.local_rule import LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "A-1",
        "How the boundary of the course is defined",
        ("18.2", "Definitions: out of bounds"),
        reason="It says where the boundary runs; the question whether all of the ball lies beyond it covers that.",
    ),
    LocalRule(
        "A-2",
        "Which edge of a wall or road is the boundary",
        ("18.2", "Definitions: out of bounds"),
        reason="It says where the boundary runs; the question whether all of the ball lies beyond it covers that.",
    ),
    LocalRule(
        "A-3",
        "In the 2019 list a ball across a public road; since 2023 a boundary fence treated in another way",
        ("18.2", "Definitions: out of bounds"),
        reason="It says which ground is out of bounds; the question whether all of the ball lies beyond the boundary covers that.",
    ),
    LocalRule(
        "A-4",
        "A boundary inside the course, for some holes only",
        ("18.2", "Definitions: boundary object"),
        citation="A-4",
    ),
    LocalRule(
        "A-5",
        "Stakes that only show a boundary are obstructions",
        ("Definitions: boundary object",),
        citation="A-5",
    ),
)
