"""The register of Model Local Rules, area M: players with disabilities."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "M-1",
        "Placing the ball for a wheeled mobility device",
        ("14.2", "25.4"),
        editions=(2023,),
        citation="M-1",
        basis=Basis.PUBLISHED,
    ),
)
