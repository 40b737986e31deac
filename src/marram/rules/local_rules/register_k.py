"""The register of Model Local Rules, area K: pace of play."""

from marram.rules.local_rules.local_rule import LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "K-1",
        "A maximum time for a round or a number of holes",
        ("5.6b(3)",),
        citation="K-1",
    ),
    LocalRule(
        "K-2",
        "Times for holes, and for strokes when out of position",
        ("5.6b(3)",),
        citation="K-2",
    ),
    LocalRule(
        "K-3",
        "Times for holes",
        ("5.6b(3)",),
        citation="K-3",
    ),
    LocalRule(
        "K-4",
        "Times at checkpoints",
        ("5.6b(3)",),
        citation="K-4",
    ),
    LocalRule(
        "K-5",
        "Another scale of penalties for a pace of play policy",
        ("5.6b(3)",),
        reason="It only changes the scale of penalties, which is asked wherever a policy gives one.",
    ),
)
