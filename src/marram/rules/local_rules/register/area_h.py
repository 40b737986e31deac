"""The register of Model Local Rules, area H: caddies and advice."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "H-1.1",
        "Caddies forbidden",
        ("10.3a",),
        not_with=("H-1.2", "H-1.3"),
        why_not_with="where every caddie is forbidden, none can be required or chosen",
        citation="H-1.1",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "H-1.2",
        "Certain persons not allowed as caddies",
        ("10.3a",),
        not_with=("H-1.1",),
        why_not_with="where every caddie is forbidden, none can be required or chosen",
        citation="H-1.2",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "H-1.3",
        "Every player must have a caddie",
        ("10.3a",),
        not_with=("H-1.1",),
        why_not_with="where every caddie is forbidden, none can be required or chosen",
        citation="H-1.3",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "H-2",
        "Advice givers of a team",
        ("10.2a", "24.4a"),
        citation="H-2",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "H-3",
        "Who may be team captain",
        ("24.3",),
        defines=True,
        reason="Who may be captain is for the Committee to decide; nothing on the course follows from it.",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "H-4",
        "The advice giver counts as a member of the side",
        ("24.4a",),
        citation="H-4",
        basis=Basis.SECOND_HAND,
        remark="It makes the side answer for all that the advice giver does. A ball that this person moves is "
        "worked out; for other acts rule as if the player had done them.",
    ),
    LocalRule(
        "H-5",
        "Team members in one group may advise each other",
        ("24.4c",),
        discouraged="It is for competitions in which scores count for the team alone.",
        citation="H-5",
        basis=Basis.SECOND_HAND,
    ),
)
