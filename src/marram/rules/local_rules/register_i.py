"""The register of Model Local Rules, area I: practice."""

from marram.rules.local_rules.local_rule import LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "I-1.1",
        "No practice on the course before or between rounds of a match",
        ("5.2a",),
        citation="I-1.1",
    ),
    LocalRule(
        "I-1.2",
        "Practice on the course before or between rounds of stroke play",
        ("5.2b",),
        citation="I-1.2",
    ),
    LocalRule(
        "I-2",
        "No practice at the green just completed",
        ("5.5b", "13.1e"),
        citation="I-2",
    ),
)
