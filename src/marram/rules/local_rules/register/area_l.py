"""The register of Model Local Rules, area L: scorecards."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "L-1",
        "A softer penalty for hole scores not certified",
        ("3.3b(2)",),
        citation="L-1",
        basis=Basis.PUBLISHED,
        remark="It was added to the 2019 list later; in the first printing area L held what no Local Rule may do.",
    ),
    LocalRule(
        "L-2",
        "The player answers for the handicap on the scorecard",
        ("3.3b(4)",),
        editions=(2023,),
        citation="L-2",
        basis=Basis.PUBLISHED,
    ),
)
