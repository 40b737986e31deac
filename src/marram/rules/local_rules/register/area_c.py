"""The register of Model Local Rules, area C: bunkers."""

from marram.rules.local_rules.local_rule import Basis, LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = (
    LocalRule(
        "C-1",
        "Where the edge of a bunker runs",
        definitions=("bunker",),
        forms=("C-1.1", "C-1.2", "C-1.3", "C-1.4"),
        defines=True,
        reason="It says what is a bunker; the question where the ball lies covers that.",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "C-2",
        "Prepared sand as general area, or other sand as a bunker",
        definitions=("bunker",),
        forms=("C-2.1", "C-2.2"),
        defines=True,
        reason="It says what is a bunker; the question where the ball lies covers that.",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "C-3",
        "Material like sand, from bunkers, treated as sand everywhere",
        definitions=("loose impediment",),
        defines=True,
        reason="It says what is sand; the questions about sand cover that.",
        basis=Basis.PUBLISHED,
    ),
    LocalRule(
        "C-4",
        "Not described here",
        ("12",),
        editions=(2019,),
        reason="It stood in the list for some of the time of the 2019 edition; its text was not found.",
    ),
)
