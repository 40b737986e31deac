"""The register of Model Local Rules, area I: practice."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "I-1.1",
        "Practice on the course before or between rounds of a match forbidden or limited",
        ("5.2a",),
        citation="I-1.1",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "I-1.2",
        "Practice on the course before or between rounds of stroke play",
        ("5.2b",),
        citation="I-1.2",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "I-2",
        "No practice at the green just completed",
        ("5.5b", "13.1e"),
        citation="I-2",
        basis=Basis.PUBLISHED,
    ),
)
