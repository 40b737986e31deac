"""The register of Model Local Rules, area H: caddies and advice."""

from marram.rules.local_rules.local_rule import LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule("H-1.1", "Caddies forbidden", ("10.3a",), not_with=("H-1.2", "H-1.3"), citation="H-1.1"),
    LocalRule(
        "H-1.2", "Certain persons not allowed as caddies", ("10.3a",), not_with=("H-1.1",), citation="H-1.2"
    ),
    LocalRule("H-1.3", "Every player must have a caddie", ("10.3a",), not_with=("H-1.1",), citation="H-1.3"),
    LocalRule("H-2", "Advice givers of a team", ("10.2a", "24.4a"), citation="24.4a"),
    LocalRule(
        "H-3",
        "Who may be team captain, and how the captain may act",
        ("24.3",),
        reason="Who may be captain is for the Committee to decide; nothing is to be computed.",
    ),
    LocalRule(
        "H-4",
        "The advice giver counts as a member of the side",
        ("24.4a",),
        reason="It makes the side answer for the advice giver's acts: rule on the act as if a member of the side had done it.",
    ),
    LocalRule("H-5", "Team members in one group may advise each other", ("24.4c",), citation="24.4c"),
)
