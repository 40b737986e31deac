"""The register of Model Local Rules, area B: penalty areas."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "B-1",
        "How penalty areas are defined, and yellow ones played as red",
        ("17",),
        definitions=("penalty area",),
        forms=tuple(f"B-1.{number}" for number in range(1, 8)),
        defines=True,
        reason="It says where a penalty area lies and its colour; the questions about both cover that.",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "B-2",
        "Relief on the opposite side of a red penalty area",
        ("17.1d",),
        forms=("B-2.1", "B-2.2"),
        discouraged="It is for places where relief under Rule 17.1d alone would be unfair or hardly possible, not for every red penalty area.",
        citation="B-2",
        basis=Basis.SECOND_HAND,
    ),
    LocalRule(
        "B-3",
        "Provisional ball for a ball that may be in a penalty area",
        ("17.1", "18.3"),
        discouraged="It is for penalty areas where the players cannot well see from the tee what became of the ball.",
        citation="B-3",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "B-4",
        "A ditch or other open watercourse that is no penalty area",
        ("17",),
        definitions=("penalty area",),
        forms=("B-4.1", "B-4.2"),
        citation="B-4",
        basis=Basis.SECOND_HAND,
    ),
    LocalRule(
        "B-5",
        "More relief where a penalty area lies beside a bunker",
        ("17.1d",),
        reason="Only its title was found, and neither the reference point nor the cost of the relief it adds.",
    ),
)
