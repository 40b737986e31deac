"""The register of Model Local Rules, area B: penalty areas."""

from marram.rules.local_rules.local_rule import LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "B-1",
        "How penalty areas are defined, and yellow ones made red",
        ("17", "Definitions: penalty area"),
        reason="It says where a penalty area lies and its colour; the questions about both cover that.",
    ),
    LocalRule(
        "B-2",
        "Relief on the opposite side of a red penalty area (two forms, B-2.1 and B-2.2)",
        ("17.1d",),
        citation="B-2",
    ),
    LocalRule(
        "B-3",
        "Provisional ball for a ball that may be in a penalty area",
        ("17.1", "18.3"),
        citation="B-3",
    ),
    LocalRule(
        "B-4",
        "A ditch or other open watercourse as part of the general area",
        ("Definitions: penalty area",),
        reason="It says what is no penalty area; the question where the ball lies covers that.",
    ),
    LocalRule(
        "B-5",
        "More relief where a penalty area lies beside a bunker",
        ("17.1d",),
        reason="The relief it adds is not worked out; follow the text that the Committee has adopted.",
    ),
)
