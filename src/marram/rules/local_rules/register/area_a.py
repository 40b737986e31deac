"""The register of Model Local Rules, area A: boundaries."""

from datetime import date

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "A-1",
        "How the boundary of the course is defined",
        ("18.2",),
        definitions=("out of bounds",),
        forms=("A-1.1", "A-1.2", "A-1.3"),
        defines=True,
        reason="It says where the boundary runs; the question whether all of the ball lies beyond it covers that.",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "A-2",
        "Which edge of a wall, a road or another object is the boundary",
        ("18.2",),
        definitions=("out of bounds",),
        forms=("A-2.1", "A-2.2", "A-2.3"),
        citation="A-2",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "A-3",
        "2019 list: beyond a public road through the course; since 2023: a boundary fence treated otherwise",
        ("18.2",),
        definitions=("out of bounds",),
        citation="A-3",
        basis=Basis.PUBLISHED,
        remark="One code, two subjects: the list of 2023 replaced the Local Rule on public roads. "
        "Since then a boundary inside the course (A-4) can serve for a road.",
    ),
    LocalRule(
        "A-4",
        "A boundary inside the course, for every stroke on some holes only",
        ("18.2",),
        definitions=("boundary object",),
        forms=("A-4.1",),
        citation="A-4",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "A-4.2",
        "A boundary inside the course, for strokes from the teeing area of a hole only",
        ("18.2",),
        definitions=("boundary object",),
        editions=(2023,),
        citation="A-4.2",
        since=date(2026, 1, 1),
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "A-5",
        "Stakes that only show a boundary defined by a line or a fence are obstructions",
        definitions=("boundary object",),
        citation="A-5",
        basis=Basis.MEMORY,
    ),
)
