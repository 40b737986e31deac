"""The register of Model Local Rules, area C: bunkers."""

from marram.rules.local_rules.local_rule import LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "C-1",
        "Where the edge of a bunker runs",
        ("Definitions: bunker",),
        reason="It says what is a bunker; the question where the ball lies covers that.",
    ),
    LocalRule(
        "C-2",
        "Prepared sand as general area, or other sand as a bunker",
        ("Definitions: bunker",),
        reason="It says what is a bunker; the question where the ball lies covers that.",
    ),
    LocalRule(
        "C-3",
        "Material like sand, from bunkers, treated as sand everywhere",
        ("Definitions: loose impediment",),
        reason="It says what is sand; the questions about sand cover that.",
    ),
)
